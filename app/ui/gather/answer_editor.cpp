#include "app/ui/gather/answer_editor.h"

#include <QHBoxLayout>
#include <QLineEdit>
#include <QPixmap>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr std::array kTellings{
    Telling::Said, Telling::Wrote, Telling::Drew, Telling::Signed, Telling::Pointed};
constexpr std::array kIcons{Icon::Said, Icon::Wrote, Icon::Drew, Icon::Signed, Icon::Pointed};

} // namespace

AnswerEditor::AnswerEditor(CaptureDesk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_field(new AnswerField)
    , m_first(new Label({}, 1.0, QFont::Normal, true))
    , m_rover(new Rover(this))
    , m_exact(new QCheckBox(tr("Exact words")))
    , m_readBack(new QCheckBox)
    , m_sheet(new Button(Button::Form::Word, tr("Add the sheet"), Icon::Photo))
    , m_passes(new Button(Button::Form::Word, tr("Passes for now"), Icon::Passes))
    , m_whyNot(new Button(Button::Form::Word, tr("Note why not"), Icon::Note))
    , m_lines(new QBoxLayout(QBoxLayout::LeftToRight))
    , m_reason(new QWidget)
    , m_reasonLine(new QLineEdit)
    , m_attached(new QLabel)
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(air(2));
    column->addWidget(m_first);
    column->addWidget(m_field);
    makeChips(*column);
    makeTicks(*column);
    makeReason(*column);
    connect(m_field, &QPlainTextEdit::textChanged, this, [this] {
        if (!m_showing)
            m_desk.write(m_field->toPlainText());
    });
    connect(m_field, &AnswerField::enterPressed, &m_desk, &CaptureDesk::keepAndNextPrompt);
    connect(&m_desk, &CaptureDesk::changed, this, &AnswerEditor::refreshStates);
}

void AnswerEditor::makeChips(QBoxLayout& column)
{
    const std::array<QString, 5> names{
        tr("Said"), tr("Wrote"), tr("Drew"), tr("Signed"), tr("Pointed")};
    auto* row = new QHBoxLayout;
    row->setSpacing(air(1.5));
    QVector<QWidget*> stops;
    for (std::size_t i = 0; i < kTellings.size(); ++i) {
        auto* chip = new Button(Button::Form::Chip, names[i], kIcons[i]);
        chip->setCheckable(true);
        chip->setAutoExclusive(true);
        chip->setToolTip(tr("Alt+%1").arg(i + 1));
        connect(chip, &Button::clicked, this, [this, telling = kTellings[i]] {
            m_desk.setTelling(telling);
        });
        m_chips[i] = chip;
        row->addWidget(chip);
        stops << chip;
    }
    m_rover->setMembers(stops);
    row->addStretch();
    m_attached->setAccessibleName(tr("The sheet"));
    row->addWidget(m_attached);
    column.addLayout(row);
}

void AnswerEditor::makeTicks(QBoxLayout& column)
{
    auto* row = new QHBoxLayout;
    row->setSpacing(air(4));
    m_exact->setToolTip(tr("Off: made into sentences together with the child. Both are kept."));
    connect(m_exact, &QCheckBox::clicked, &m_desk, &CaptureDesk::setExact);
    connect(m_readBack, &QCheckBox::clicked, &m_desk, &CaptureDesk::setReadBack);
    connect(m_sheet, &Button::clicked, this, &AnswerEditor::pictureAsked);
    m_passes->setToolTip(tr("Asked, did not want to; not the same as not asked"));
    connect(m_passes, &Button::clicked, &m_desk, &CaptureDesk::passes);
    connect(m_whyNot, &Button::clicked, this, &AnswerEditor::askWhyNot);
    row->addWidget(m_exact);
    row->addWidget(m_readBack);
    row->addStretch();
    auto* actions = new QHBoxLayout;
    actions->setSpacing(air(4));
    for (Button* button : {m_sheet, m_passes, m_whyNot}) {
        button->setMayShrink(true);
        actions->addWidget(button);
    }
    actions->addStretch();
    m_lines->setSpacing(air(2));
    m_lines->addLayout(row);
    m_lines->addLayout(actions, 1);
    column.addLayout(m_lines);
}

void AnswerEditor::makeReason(QBoxLayout& column)
{
    auto* row = new QHBoxLayout(m_reason);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(air(2));
    m_reasonLine->setTextMargins(air(1), 0, air(1), 0);
    m_reasonLine->setPlaceholderText(tr("Why there is no answer: away this week"));
    m_reasonLine->setAccessibleName(tr("Why there is no answer"));
    auto* keep = new Button(Button::Form::Plain, tr("Keep the note"));
    connect(m_reasonLine, &QLineEdit::returnPressed, this, &AnswerEditor::keepNote);
    connect(keep, &Button::clicked, this, &AnswerEditor::keepNote);
    row->addWidget(m_reasonLine, 1);
    row->addWidget(keep);
    m_reason->hide();
    column.addWidget(m_reason);
}

void AnswerEditor::askWhyNot()
{
    m_reasonLine->clear();
    m_reason->show();
    m_reasonLine->setFocus(Qt::OtherFocusReason);
}

void AnswerEditor::keepNote()
{
    const QString note = m_reasonLine->text().trimmed();
    if (note.isEmpty())
        return;
    m_reason->hide();
    m_desk.noteWhyNot(note);
    m_field->setFocus(Qt::OtherFocusReason);
}

void AnswerEditor::setAttached(const QPixmap& picture)
{
    m_attached->setPixmap(picture);
    m_attached->setVisible(!picture.isNull());
}

void AnswerEditor::showDraft()
{
    m_showing = true;
    m_field->setPlainText(m_desk.draft().words);
    m_field->moveCursor(QTextCursor::End);
    m_showing = false;
    m_reason->hide();
    refreshStates();
}

void AnswerEditor::refreshStates()
{
    const CaptureDesk::Draft& draft = m_desk.draft();
    const Child* child = m_desk.child();
    const QString name = child != nullptr ? displayName(*child) : QString();
    const QString asked = m_desk.prompt() != nullptr ? m_desk.prompt()->text : QString();
    m_field->setAccessibleName(tr("Take words down: %1. %2").arg(name, asked));
    for (std::size_t i = 0; i < kTellings.size(); ++i)
        m_chips[i]->setChecked(draft.telling == kTellings[i]);
    m_exact->setChecked(draft.exact);
    m_readBack->setChecked(draft.readBack);
    m_readBack->setText(tr("Read back to %1").arg(name));
    fold();
    const bool drew = draft.telling == Telling::Drew;
    m_sheet->setText(drew ? tr("Add the drawing") : tr("Add the sheet"));
    m_sheet->updateGeometry();
    m_first->setVisible(!draft.exact);
    m_first->setText(draft.firstWords.isEmpty()
            ? tr("First said: nothing yet. Now write it together.")
            : tr("First said: %1").arg(draft.firstWords));
    const bool undone = m_field->toPlainText() != draft.words;
    if (undone && !m_showing) { // exact words came back
        m_showing = true;
        m_field->setPlainText(draft.words);
        m_field->moveCursor(QTextCursor::End);
        m_showing = false;
    }
}

// What can be done stands beside the ticks, or below them where there is no room for all its words.
void AnswerEditor::fold()
{
    int needed = 2 * air(4);
    for (const QWidget* one :
        std::initializer_list<const QWidget*>{m_exact, m_readBack, m_sheet, m_passes, m_whyNot})
        needed += one->sizeHint().width() + air(4);
    m_lines->setDirection(needed > width() ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void AnswerEditor::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fold();
}

} // namespace wainscot::ui
