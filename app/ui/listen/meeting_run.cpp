#include "app/ui/listen/meeting_run.h"

#include <QKeyEvent>
#include <QPainter>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

#include "app/jobs/meeting_edits.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/listen/seat.h"

namespace wainscot::ui {

MeetingRun::MeetingRun(Session& session, MeetingId meeting, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_meeting(meeting)
    , m_windowTokens(tokens())
    , m_column(new QVBoxLayout(this))
    , m_field(new QLineEdit)
{
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Meeting"));
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(0);
    m_field->setFont(wordsFont(1.75));
    m_field->setTextMargins(air(2), 0, air(2), 0);
    m_field->setAccessibleName(tr("What is said"));
    m_since.start();
    auto* minute = new QTimer(this);
    connect(minute, &QTimer::timeout, this, &MeetingRun::tellTime);
    minute->start(20'000);
    connect(&m_session, &Session::changed, this, [this] {
        if (m_session.book().meetings.contains(m_meeting))
            fill();
    });
    fill();
}

MeetingRun::~MeetingRun()
{
    setTokens(m_windowTokens);
}

const Meeting& MeetingRun::meeting() const
{
    return *m_session.book().meetings.find(m_meeting);
}

GroupId MeetingRun::groupInTurn() const
{
    const auto& groups = meeting().groups;
    return m_group < groups.size() ? groups[m_group] : GroupId();
}

std::vector<QuoteId> MeetingRun::ideas() const
{
    const Book& book = m_session.book();
    const Group* group = book.groups.find(groupInTurn());
    if (group == nullptr)
        return {};
    std::vector<QuoteId> begun;
    for (const QuoteId quote : meeting().readOut) {
        if (std::find(group->quotes.begin(), group->quotes.end(), quote) != group->quotes.end())
            begun.push_back(quote);
    }
    if (begun.empty())
        begun = group->quotes;
    std::vector<QuoteId> all = begun;
    for (const QuoteId quote : begun) {
        for (const Reply& reply : threadUnder(book, quote))
            all.push_back(reply.quote);
    }
    return all;
}

QuoteId MeetingRun::ideaInTurn() const
{
    const std::vector<QuoteId> all = ideas();
    return all.empty() ? QuoteId() : all[std::min(m_idea, all.size() - 1)];
}

QString MeetingRun::nameOf(ChildId child) const
{
    const Child* found = m_session.book().children.find(child);
    return found != nullptr ? displayName(*found) : QString();
}

QString MeetingRun::whoSaid(QuoteId quote) const
{
    const Quote* found = m_session.book().quotes.find(quote);
    return found != nullptr ? nameOf(found->child) : QString();
}

void MeetingRun::goToGroup(int step)
{
    const int last = int(meeting().groups.size()) - 1;
    const int to = int(m_group) + step;
    if (to > last) {
        end();
        return;
    }
    m_group = std::size_t(std::max(0, to));
    m_idea = 0;
    fill();
}

void MeetingRun::goToIdea(int step)
{
    const int last = int(ideas().size()) - 1;
    m_idea = std::size_t(std::clamp(int(m_idea) + step, 0, std::max(0, last)));
    fill();
}

void MeetingRun::carryOver()
{
    const auto& carried = meeting().carriedOver;
    const bool isCarried =
        std::find(carried.begin(), carried.end(), groupInTurn()) != carried.end();
    m_session.perform(carryOverEdit(m_session.book(),
        m_meeting,
        groupInTurn(),
        !isCarried,
        isCarried ? tr("Kept a group for today") : tr("Carried a group to another day")));
}

void MeetingRun::switchLight()
{
    setTokens(tokens().dark ? lightTokens() : darkTokens());
    setPalette(paletteFor(tokens()));
    fill();
}

void MeetingRun::childCalled(ChildId child)
{
    if (m_asksWhoChanged) {
        beginWriting({MeetingNoteKind::ChangedMind, child},
            tr("%1 changed their mind. What does %1 think now?").arg(nameOf(child)));
        return;
    }
    const Quote* idea = m_session.book().quotes.find(ideaInTurn());
    beginWriting({std::nullopt, child},
        idea != nullptr && idea->child == child
            ? tr("%1 thinks on. Enter keeps it, Esc leaves it.").arg(nameOf(child))
            : tr("%1 answers %2. Enter keeps it, Esc leaves it.")
                  .arg(nameOf(child), whoSaid(ideaInTurn())));
}

void MeetingRun::beginWriting(const Writing& writing, const QString& prompt)
{
    m_asksWhoChanged = false;
    m_writing = writing;
    m_field->setFont(writing.note ? interfaceFont(1.4) : wordsFont(1.75));
    m_field->clear();
    fill();
    m_prompt->setText(prompt);
    m_field->setFocus();
}

void MeetingRun::askWhoChanged()
{
    m_asksWhoChanged = true;
    m_prompt->setText(tr("Who changed their mind? Press the child's letter."));
}

void MeetingRun::endWriting(bool keep)
{
    if (!m_writing)
        return;
    const Writing writing = *m_writing;
    const QString words = m_field->text().trimmed();
    m_writing.reset();
    setFocus();
    if (!keep || words.isEmpty()) {
        fill();
        return;
    }
    if (writing.note)
        m_session.perform(meetingNoteEdit(m_session.book(),
            m_meeting,
            {*writing.note, words, groupInTurn(), writing.child},
            tr("A note of the meeting")));
    else
        m_session.perform(replyEdit(m_session.book(),
            m_meeting,
            ideaInTurn(),
            writing.child,
            words,
            tr("%1's answer").arg(nameOf(writing.child))));
}

void MeetingRun::end()
{
    endWriting(true);
    if (!meeting().done)
        m_session.perform(heldEdit(m_session.book(), m_meeting, tr("Held the meeting")));
    setTokens(m_windowTokens);
    Q_EMIT ended();
}

bool MeetingRun::commandKey(int key)
{
    switch (key) {
    case Qt::Key_F2:
        endWriting(true);
        beginWriting({MeetingNoteKind::Agreement, {}}, tr("What do we agree on?"));
        return true;
    case Qt::Key_F5:
        endWriting(true);
        beginWriting({MeetingNoteKind::Disagreement, {}}, tr("What do we not agree on?"));
        return true;
    case Qt::Key_F3:
        endWriting(true);
        askWhoChanged();
        return true;
    case Qt::Key_F4:
        carryOver();
        return true;
    case Qt::Key_F8:
        endWriting(true);
        goToGroup(-1);
        return true;
    case Qt::Key_F9:
        endWriting(true);
        goToGroup(1);
        return true;
    case Qt::Key_F10:
        switchLight();
        return true;
    default:
        return false;
    }
}

bool MeetingRun::event(QEvent* event)
{
    // The window's own keys are not for a meeting; undo is.
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool undoes =
            key->modifiers().testFlag(Qt::ControlModifier) && key->key() == Qt::Key_Z;
        if (!undoes) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

void MeetingRun::keyPressEvent(QKeyEvent* event)
{
    const int key = event->key();
    if (commandKey(key))
        return;
    if (m_writing) {
        if (key == Qt::Key_Escape || key == Qt::Key_Return || key == Qt::Key_Enter)
            endWriting(key != Qt::Key_Escape);
        return;
    }
    const bool leftToRight = layoutDirection() == Qt::LeftToRight;
    if (key == Qt::Key_Escape)
        end();
    else if (key == Qt::Key_Down || key == (leftToRight ? Qt::Key_Right : Qt::Key_Left))
        goToIdea(1);
    else if (key == Qt::Key_Up || key == (leftToRight ? Qt::Key_Left : Qt::Key_Right))
        goToIdea(-1);
    else {
        const QString typed = event->text().toUpper();
        for (const auto& [child, letter] : seatLetters(m_session.book())) {
            if (typed == QString(letter))
                childCalled(child);
        }
    }
}

void MeetingRun::paintEvent(QPaintEvent* event)
{
    QPainter(this).fillRect(event->rect(), tokens().field);
}

} // namespace wainscot::ui
