// What stands on the screen of a meeting.
#include "app/ui/listen/meeting_run.h"

#include <QHBoxLayout>
#include <QLocale>
#include <QResizeEvent>

#include <algorithm>

#include "app/jobs/meeting_edits.h"
#include "app/ui/listen/answer_slip.h"
#include "app/ui/listen/idea_in_turn.h"
#include "app/ui/listen/seat.h"
#include "app/ui/listen/who_answers.h"

namespace wainscot::ui {

namespace {

constexpr int kMostOthers = 3;
constexpr int kMostReplies = 2;
constexpr int kNarrow = 1150; // px at 10 pt text: only the idea in turn and its answers

QHBoxLayout* rowOn(QWidget* widget, double across, double down)
{
    auto* row = new QHBoxLayout(widget);
    row->setContentsMargins(air(across), air(down), air(across), air(down));
    row->setSpacing(air(3));
    return row;
}

class WordsLabel : public Label {
public:
    WordsLabel(const QString& words, double relative, const QColor& colour)
        : Label(words)
    {
        setFont(wordsFont(relative));
        QPalette own = palette();
        own.setColor(QPalette::WindowText, colour);
        setPalette(own);
    }
};

QString ordinal(std::size_t place)
{
    static const QStringList words{MeetingRun::tr("First"),
        MeetingRun::tr("Second"),
        MeetingRun::tr("Third"),
        MeetingRun::tr("Fourth"),
        MeetingRun::tr("Fifth"),
        MeetingRun::tr("Sixth")};
    return place < std::size_t(words.size()) ? words[int(place)]
                                             : QStringLiteral("%1.").arg(place + 1);
}

} // namespace

void MeetingRun::fill()
{
    m_field->setParent(nullptr);
    if (m_content != nullptr) {
        m_column->removeWidget(m_content);
        m_content->hide();
        m_content->deleteLater(); // one of its buttons may be the sender
    }
    m_seats.clear();
    m_content = new QWidget(this);
    auto* column = new QVBoxLayout(m_content);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(makeTop());
    column->addWidget(new Rule);
    column->addWidget(makeMiddle(), 1);
    column->addWidget(new Rule);
    column->addWidget(makeSeats());
    column->addWidget(new Rule);
    column->addWidget(makeFoot());
    m_column->addWidget(m_content);
    m_content->show();
    if (m_writing)
        m_field->setFocus();
}

QWidget* MeetingRun::makeTop()
{
    auto* ground = new Ground(Ground::Tone::Window);
    auto* row = rowOn(ground, 6, 2);
    auto* heading = new QLabel(
        tr("Meeting on %1").arg(QLocale().toString(meeting().on, QStringLiteral("dddd"))));
    heading->setFont(interfaceFont(1.0, QFont::DemiBold));
    row->addWidget(heading);
    m_when = new OneLine(1.0, QFont::Normal, true);
    row->addWidget(m_when, 1);
    tellTime();
    const bool wide = width() >= scaled(kNarrow);
    const auto command = [&](const QString& text, Icon icon, const QString& key, int code) {
        auto* button = new Button(Button::Form::Word, text, icon);
        button->setKeyHint(key);
        button->setWordless(!wide);
        button->setFocusPolicy(Qt::NoFocus);
        connect(button, &Button::clicked, this, [this, code] { commandKey(code); });
        row->addWidget(button);
        return button;
    };
    command(tr("What we agree on"), Icon::Agree, QStringLiteral("F2"), Qt::Key_F2);
    command(tr("What we do not agree on"), Icon::Disagree, QStringLiteral("F5"), Qt::Key_F5);
    command(tr("Someone changed their mind"), Icon::ChangedMind, QStringLiteral("F3"), Qt::Key_F3);
    const auto& carried = meeting().carriedOver;
    const bool isCarried =
        std::find(carried.begin(), carried.end(), groupInTurn()) != carried.end();
    command(isCarried ? tr("Talk about it today") : tr("Carry to another day"),
        Icon::AnotherDay,
        QStringLiteral("F4"),
        Qt::Key_F4);
    Button* light = command(tokens().dark ? tr("Dark on light") : tr("Light on dark"),
        Icon::Lamp,
        QStringLiteral("F10"),
        Qt::Key_F10);
    light->setWordless(true);
    return ground;
}

void MeetingRun::tellTime()
{
    const int minutes = int(m_since.elapsed() / 60'000);
    m_when->setText(tr("%1 of %2. %3.")
                        .arg(ordinal(m_group),
                            counted(int(meeting().groups.size()), tr("one group"), tr("%1 groups")),
                            counted(minutes, tr("1 minute"), tr("%1 minutes"))));
}

QWidget* MeetingRun::makeMiddle()
{
    auto* middle = new QWidget;
    auto* column = new QVBoxLayout(middle);
    column->setContentsMargins(air(14), air(4), air(14), air(3));
    column->setSpacing(air(2));
    const Book& book = m_session.book();
    const Group* group = book.groups.find(groupInTurn());
    const auto& carried = meeting().carriedOver;
    const bool isCarried =
        std::find(carried.begin(), carried.end(), groupInTurn()) != carried.end();
    const QString label = group != nullptr ? group->label : tr("No group is planned");
    column->addWidget(new WordsLabel(
        isCarried ? tr("%1 (for another day)").arg(label) : label, 1.8, tokens().accent));
    auto* idea = new IdeaInTurn;
    const Quote* quote = book.quotes.find(ideaInTurn());
    if (quote != nullptr)
        idea->setIdea(quote->words, whoAnswers(book, *quote));
    column->addWidget(idea, 1);
    if (width() >= scaled(kNarrow))
        column->addWidget(makeOthers());
    if (QWidget* replies = makeReplies()) {
        column->addWidget(new Rule);
        column->addWidget(replies);
    }
    return middle;
}

QWidget* MeetingRun::makeOthers()
{
    auto* others = new QWidget;
    auto* row = rowOn(others, 0, 0);
    row->setSpacing(air(7));
    const Book& book = m_session.book();
    const std::vector<QuoteId> all = ideas();
    int shown = 0;
    // Those that come after the idea in turn, round the group.
    for (std::size_t step = 1; step < all.size() && shown < kMostOthers; ++step) {
        const Quote* quote = book.quotes.find(all[(m_idea + step) % all.size()]);
        if (quote == nullptr || quote->repliesTo.isValid())
            continue;
        auto* one = new QVBoxLayout;
        one->setSpacing(0);
        one->addWidget(new WordsLabel(quote->words.simplified(), 1.7, tokens().ink));
        one->addWidget(new WordsLabel(nameOf(quote->child), 1.2, tokens().quiet));
        one->addStretch(1);
        row->addLayout(one, 1);
        ++shown;
    }
    return others;
}

QWidget* MeetingRun::makeReplies()
{
    const Book& book = m_session.book();
    std::vector<const Quote*> today;
    for (const QuoteId id : ideas()) {
        const Quote* quote = book.quotes.find(id);
        if (quote != nullptr && quote->meeting == m_meeting)
            today.push_back(quote);
    }
    std::sort(
        today.begin(), today.end(), [](const Quote* a, const Quote* b) { return a->id < b->id; });
    if (today.empty())
        return nullptr;
    auto* replies = new QWidget;
    auto* column = new QVBoxLayout(replies);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(1));
    column->addWidget(
        new Label(tr("What was answered to this today"), 0.95, QFont::DemiBold, true));
    auto* row = new QHBoxLayout;
    row->setSpacing(air(3));
    const std::size_t first = today.size() > kMostReplies ? today.size() - kMostReplies : 0;
    for (std::size_t at = first; at < today.size(); ++at) {
        auto* slip =
            new AnswerSlip(today[at]->id, today[at]->words, whoAnswers(book, *today[at]), 1.2);
        slip->setMovable(false);
        slip->setFocusPolicy(Qt::NoFocus);
        connect(slip, &AnswerSlip::clicked, this, [this, id = today[at]->id] {
            const std::vector<QuoteId> all = ideas();
            m_idea = std::size_t(std::find(all.begin(), all.end(), id) - all.begin());
            fill();
        });
        row->addWidget(slip, 1, Qt::AlignTop);
    }
    if (today.size() == 1)
        row->addStretch(1);
    column->addLayout(row);
    return replies;
}

QWidget* MeetingRun::makeSeats()
{
    auto* ground = new Ground(Ground::Tone::Window);
    auto* column = new QVBoxLayout(ground);
    column->setContentsMargins(air(6), air(2), air(6), air(2));
    column->setSpacing(air(1));
    auto* line = new QHBoxLayout;
    m_prompt = new Label(tr("Who is speaking? Press the child's letter, type, Enter."),
        1.0,
        QFont::Normal,
        !m_writing);
    line->addWidget(m_prompt, 1);
    const std::set<ChildId> spoken = spokenIn(m_session.book(), m_meeting);
    const int open = int(m_session.book().children.size()) - int(spoken.size());
    auto* missing = new QLabel(tr("Not yet spoken: %1").arg(open));
    missing->setFont(interfaceFont(1.0, QFont::DemiBold));
    line->addWidget(missing);
    column->addLayout(line);
    column->addWidget(m_field);
    m_field->setVisible(m_writing.has_value());
    auto* seats = new QWidget;
    auto* row = new QHBoxLayout(seats);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(1));
    const auto letters = seatLetters(m_session.book());
    for (const auto& [id, child] : m_session.book().children.rows()) {
        const auto letter = letters.find(id);
        auto* seat = new Seat(id,
            displayName(child),
            letter != letters.end() ? letter->second : QChar(),
            spoken.count(id) > 0);
        connect(seat, &Seat::clicked, this, [this, id = id] { childCalled(id); });
        row->addWidget(seat);
        m_seats << seat;
    }
    column->addWidget(seats);
    seats->setVisible(!m_writing);
    return ground;
}

QWidget* MeetingRun::makeFoot()
{
    auto* ground = new Ground(Ground::Tone::Window);
    auto* row = rowOn(ground, 4, 2);
    const Book& book = m_session.book();
    const auto name = [&book, this](std::size_t at) {
        const Group* group =
            at < meeting().groups.size() ? book.groups.find(meeting().groups[at]) : nullptr;
        return group != nullptr ? group->label : QString();
    };
    int ideasBegun = 0;
    int replies = 0;
    for (const QuoteId id : ideas()) {
        const Quote* quote = book.quotes.find(id);
        ideasBegun += quote != nullptr && !quote->repliesTo.isValid() ? 1 : 0;
        replies += quote != nullptr && quote->meeting == m_meeting ? 1 : 0;
    }
    auto* sentences = new QVBoxLayout;
    auto* done = new OneLine(1.0, QFont::DemiBold);
    done->setText(tr("%1: %2, %3 today.")
                      .arg(name(m_group),
                          counted(ideasBegun, tr("1 idea"), tr("%1 ideas")),
                          counted(replies, tr("1 answer"), tr("%1 answers"))));
    auto* hint = new OneLine(0.88, QFont::Normal, true);
    hint->setText(tr("Arrow keys: another idea. Esc ends the meeting. Everything said is kept."));
    sentences->setSpacing(air(0.5));
    sentences->addStretch(1);
    sentences->addWidget(done);
    sentences->addWidget(hint);
    sentences->addStretch(1);
    row->addLayout(sentences, 1);
    const auto step = [&](Button::Form form, const QString& text, const QString& key, int code) {
        auto* button = new Button(form, text);
        button->setKeyHint(key);
        button->setFocusPolicy(Qt::NoFocus);
        connect(button, &Button::clicked, this, [this, code] { commandKey(code); });
        row->addWidget(button);
    };
    if (m_group > 0)
        step(Button::Form::Plain,
            tr("Back: %1").arg(name(m_group - 1)),
            QStringLiteral("F8"),
            Qt::Key_F8);
    const bool last = m_group + 1 >= meeting().groups.size();
    step(Button::Form::Main,
        last ? tr("End the meeting") : tr("Next group: %1").arg(name(m_group + 1)),
        QStringLiteral("F9"),
        Qt::Key_F9);
    return ground;
}

void MeetingRun::resizeEvent(QResizeEvent* event)
{
    const int narrow = scaled(kNarrow);
    if ((event->oldSize().width() >= narrow) != (width() >= narrow))
        fill();
}

} // namespace wainscot::ui
