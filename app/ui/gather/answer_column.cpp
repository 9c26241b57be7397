#include "app/ui/gather/answer_column.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QPixmap>
#include <QStyle>

#include "app/ui/gather/prompt_sign.h"
#include "app/ui/kit/tokens.h"
#include "app/ui/kit/voice_mark.h"
#include "app/ui/kit/words_slip.h"
#include "core/base/in_words.h"

namespace wainscot::ui {

namespace {

// A question that is not in hand: a line to go to it, its text where the slips begin.
class QuestionLine : public QAbstractButton {
public:
    QuestionLine(const QString& question, bool quiet)
        : m_quiet(quiet)
    {
        setText(question);
        setAccessibleName(AnswerColumn::tr("Go to the question: %1").arg(question));
        setFont(interfaceFont(1.05, QFont::DemiBold));
        setCursor(Qt::PointingHandCursor);
        setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    }
    [[nodiscard]] QSize sizeHint() const override
    {
        return {scaled(200), qMax(26, fontMetrics().height() + air(1))};
    }

protected:
    void paintEvent(QPaintEvent* /*event*/) override
    {
        QPainter painter(this);
        painter.setPen(m_quiet && !underMouse() ? tokens().quiet : tokens().ink);
        painter.drawText(rect(),
            int(QStyle::visualAlignment(layoutDirection(), Qt::AlignLeading) | Qt::AlignVCenter
                | Qt::AlignAbsolute),
            fontMetrics().elidedText(text(), Qt::ElideRight, width()));
        if (hasFocus())
            drawFocusRing(painter, rect());
    }

private:
    bool m_quiet;
};

// px of small copies at 10 pt text
constexpr QSize kAttached(96, 48); // the sheet or drawing of an answer
constexpr QSize kBeside(108, 72); // what stands beside a question
constexpr int kSignSide = 34;

} // namespace

QString howGiven(const Quote& quote)
{
    QStringList parts{capitalised(inWords(quote.telling))};
    parts << (quote.dictation == Dictation::Exact ? AnswerColumn::tr("Exact words")
                                                  : AnswerColumn::tr("Worked up together"));
    if (quote.readBack)
        parts << AnswerColumn::tr("Read back");
    if (!quote.scribe.isEmpty())
        parts << AnswerColumn::tr("Taken down by %1").arg(quote.scribe);
    return parts.join(QStringLiteral(". ")) + QLatin1Char('.');
}

QString aboutChild(const Child& child, QDate on)
{
    QStringList parts;
    const auto months = child.born ? ageInMonths(*child.born, on) : std::nullopt;
    if (months)
        parts << ageNotation(*months);
    if (!child.languages.isEmpty())
        parts << child.languages;
    return parts.isEmpty() ? QString() : parts.join(QStringLiteral(". ")) + QLatin1Char('.');
}

AnswerColumn::AnswerColumn(
    Session& session, CaptureDesk& desk, PictureShelf& shelf, QWidget* parent)
    : QWidget(parent)
    , m_session(session)
    , m_desk(desk)
    , m_shelf(shelf)
    , m_editor(new AnswerEditor(desk, this))
{
    m_editor->hide(); // until a child is asked something
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    connect(&m_desk, &CaptureDesk::moved, this, &AnswerColumn::showDraft);
    connect(&m_desk, &CaptureDesk::changed, this, &AnswerColumn::showAttached);
    connect(&m_shelf, &PictureShelf::loaded, this, [this] {
        if (!m_waits)
            return;
        m_waits = false;
        build();
        showAttached();
    });
}

std::vector<const Quote*> AnswerColumn::kept(const Prompt& prompt) const
{
    std::vector<const Quote*> quotes;
    const Experience* experience = m_session.experience();
    const Child* child = m_desk.child();
    if (experience == nullptr || child == nullptr)
        return quotes;
    for (const Quote* quote : quotesOf(m_session.book(), experience->id)) {
        if (quote->child == child->id && quote->id != m_desk.draft().quote
            && quote->prompt.compare(prompt.key, Qt::CaseInsensitive) == 0)
            quotes.push_back(quote);
    }
    return quotes;
}

const NoAnswer* AnswerColumn::reason(const Prompt& prompt) const
{
    for (const auto& [id, missing] : m_session.book().noAnswers.rows()) {
        if (m_session.experience() != nullptr && missing.experience == m_session.experience()->id
            && m_desk.child() != nullptr && missing.child == m_desk.child()->id
            && (missing.prompt.isEmpty() || missing.prompt == prompt.key))
            return &missing;
    }
    return nullptr;
}

QStringList AnswerColumn::shape() const
{
    QStringList all{m_desk.child() != nullptr ? m_desk.child()->name : QString(),
        QString::number(m_desk.promptAt())};
    for (const Prompt& prompt : m_desk.answers().prompts) {
        all << prompt.text << nameOf(prompt.sign) << QString::number(prompt.picture.number());
        for (const Quote* quote : kept(prompt))
            all << quote->words + howGiven(*quote);
        if (const NoAnswer* why = reason(prompt))
            all << nameOf(why->why) + why->note;
    }
    return all;
}

void AnswerColumn::refresh()
{
    if (shape() != m_shape)
        build();
    m_editor->refreshStates();
}

void AnswerColumn::showDraft()
{
    build();
    m_editor->showDraft();
    showAttached();
}

void AnswerColumn::showAttached()
{
    const CaptureDesk::Draft& draft = m_desk.draft();
    m_editor->setAttached(
        pixmapOf(draft.drawing.isValid() ? draft.drawing : draft.sheet, kAttached));
}

QPixmap AnswerColumn::pixmapOf(PictureId id, QSize room)
{
    const Picture* picture = m_session.book().pictures.find(id);
    if (picture == nullptr)
        return {};
    const QImage image = m_shelf.thumbnail(*picture);
    if (image.isNull()) {
        m_waits = true;
        return {};
    }
    return QPixmap::fromImage(image.scaled(QSize(scaled(room.width()), scaled(room.height())),
        Qt::KeepAspectRatio,
        Qt::SmoothTransformation));
}

void AnswerColumn::build()
{
    m_shape = shape();
    const bool hadFocus = m_editor->field().hasFocus();
    m_editor->setParent(this); // or it would go with what is thrown away
    if (m_content != nullptr) {
        layout()->removeWidget(m_content);
        m_content->hide();
        m_content->deleteLater(); // one of its slips may be the sender
    }
    m_content = new QWidget;
    m_column = new QVBoxLayout(m_content);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_column->setSpacing(air(2));
    layout()->addWidget(m_content);
    const Child* child = m_desk.child();
    if (child == nullptr)
        return;
    auto* head = new QHBoxLayout;
    head->setSpacing(air(4));
    auto* name = new Label(displayName(*child), 2.1, QFont::DemiBold);
    name->setWordWrap(false);
    head->addWidget(name, 0, Qt::AlignBottom);
    auto* about = new OneLine(1.0, QFont::Normal, true);
    about->setText(aboutChild(*child, m_session.today()));
    about->setContentsMargins(0, 0, 0, air(1));
    head->addWidget(about, 1, Qt::AlignBottom);
    m_column->addLayout(head);
    int at = 0;
    for (const Prompt& prompt : m_desk.answers().prompts)
        addPrompt(at++, prompt);
    m_column->addStretch();
    m_column->addWidget(
        new Label(tr("Type what is said, as it is said. Nothing is suggested, finished or "
                     "corrected."),
            0.9,
            QFont::Normal,
            true));
    m_editor->setVisible(true);
    if (hadFocus)
        m_editor->field().setFocus(Qt::OtherFocusReason);
}

void AnswerColumn::addPrompt(int at, const Prompt& prompt)
{
    const bool current = at == m_desk.promptAt();
    const auto quotes = kept(prompt);
    const NoAnswer* why = reason(prompt);
    m_column->addSpacing(air(1));
    if (current) {
        addQuestion(prompt);
    } else {
        auto* question = new QuestionLine(prompt.text, quotes.empty());
        connect(question, &QAbstractButton::clicked, this, [this, at] {
            m_desk.goTo(m_desk.child()->id, at);
        });
        m_column->addWidget(question);
    }
    for (const Quote* quote : quotes)
        addKept(*quote);
    if (why != nullptr && quotes.empty()) {
        const QString day =
            why->on ? QLocale().toString(*why->on, QLocale::ShortFormat) : QString();
        m_column->addWidget(
            new Label(why->why == WhyNoAnswer::Passes ? tr("Passes for now. Asked on %1.").arg(day)
                                                      : tr("%1 Noted on %2.").arg(why->note, day),
                0.95,
                QFont::Normal,
                true));
    }
    if (current)
        m_column->addWidget(m_editor);
    else if (quotes.empty() && why == nullptr)
        m_column->addWidget(new Rule);
}

// With what stands beside it for a child who does not read; it can be pointed at.
void AnswerColumn::addQuestion(const Prompt& prompt)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(air(3));
    auto* beside = new QLabel;
    const QPixmap picture = pixmapOf(prompt.picture, kBeside);
    if (!picture.isNull())
        beside->setPixmap(picture);
    else if (prompt.sign != PromptSign::None)
        beside->setPixmap(signPixmap(prompt.sign, scaled(kSignSide), devicePixelRatioF()));
    if (beside->pixmap().isNull())
        beside->hide();
    row->addWidget(beside);
    row->addWidget(new Label(prompt.text, 1.25, QFont::DemiBold), 1);
    m_column->addLayout(row);
}

void AnswerColumn::addKept(const Quote& quote)
{
    auto* slip = new WordsSlip(quote.words, howGiven(quote), 1.35);
    slip->setToolTip(tr("Enter: take these words up again"));
    const Translation* english =
        translationOf(m_session.book(), quote.id, m_session.book().info.language);
    if (english != nullptr)
        slip->setAside(english->text);
    else if (!quote.firstWords.isEmpty())
        slip->setAside(tr("First said: %1").arg(quote.firstWords));
    slip->setPicture(pixmapOf(quote.drawing.isValid() ? quote.drawing : quote.sheet, kAttached));
    connect(slip, &WordsSlip::clicked, this, [this, id = quote.id] { m_desk.takeUp(id); });
    m_column->addWidget(slip);
}

} // namespace wainscot::ui
