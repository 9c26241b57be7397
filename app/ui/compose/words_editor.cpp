#include "app/ui/compose/words_editor.h"

#include <QKeyEvent>
#include <QMimeData>
#include <QVBoxLayout>

#include "app/ui/compose/reading_line.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

// Pasted text comes without any form of its own, a caption's without line breaks.
class PlainField : public QPlainTextEdit {
public:
    bool oneParagraph = false;

protected:
    void insertFromMimeData(const QMimeData* source) override
    {
        if (!source->hasText())
            return;
        textCursor().insertText(oneParagraph ? source->text().simplified() : source->text());
    }
};

} // namespace

WordsEditor::WordsEditor(QWidget* parent)
    : Card(Tone::Field, parent)
    , m_field(new PlainField)
    , m_reading(new Label({}, 0.85, QFont::Normal, true))
{
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(2, 2, 2, air(1));
    column->setSpacing(0);
    m_field->setFont(interfaceFont(1.05));
    m_field->setFrameShape(QFrame::NoFrame);
    m_field->setTabChangesFocus(true);
    m_field->document()->setDocumentMargin(air(2));
    m_field->viewport()->setAutoFillBackground(false);
    m_field->installEventFilter(this);
    column->addWidget(m_field, 1);
    m_reading->setContentsMargins(air(2), 0, air(2), 0);
    m_reading->setObjectName(QStringLiteral("reading"));
    m_reading->setToolTip(readingLimits());
    column->addWidget(m_reading);
    auto* hint = new Label(tr("Enter: done. Esc: as it was."), 0.85, QFont::Normal, true);
    hint->setContentsMargins(air(2), 0, air(2), 0);
    column->addWidget(hint);
    connect(m_field, &QPlainTextEdit::textChanged, this, [this] {
        tellReading();
        if (!m_beginning)
            Q_EMIT written(text());
    });
    hide();
}

void WordsEditor::begin(const Piece& piece, const QString& name, const QString& language)
{
    m_piece = piece.id;
    m_language = language;
    m_oneParagraph =
        isPicture(piece.kind) || piece.kind == PieceKind::Title || piece.kind == PieceKind::Label;
    static_cast<PlainField*>(m_field)->oneParagraph = m_oneParagraph;
    m_beginning = true;
    m_field->setPlainText(piece.text);
    m_beginning = false;
    tellReading(); // the text may be the one that stood here before
    m_field->setAccessibleName(tr("Write: %1").arg(name));
    m_field->selectAll();
    show();
    raise();
    m_field->setFocus();
}

void WordsEditor::tellReading()
{
    m_reading->setText(readingLine(text(), m_language, !m_oneParagraph));
}

QString WordsEditor::text() const
{
    return m_field->toPlainText();
}

void WordsEditor::place(const QRectF& piece, const QRect& room)
{
    const int width = qBound(scaled(260), int(piece.width()), scaled(460));
    const int height = scaled(m_oneParagraph ? 102 : 184);
    int top = int(piece.bottom()) + air(2);
    if (top + height > room.bottom())
        top = qMax(room.top(), int(piece.top()) - height - air(2));
    const int left =
        qBound(room.left(), int(piece.left()), qMax(room.left(), room.right() - width));
    setGeometry(left, top, width, height);
}

bool WordsEditor::eventFilter(QObject* watched, QEvent* event)
{
    if (watched != m_field)
        return Card::eventFilter(watched, event);
    if (event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        if (isVisible() && reason != Qt::PopupFocusReason && reason != Qt::ActiveWindowFocusReason)
            Q_EMIT finished();
        return false;
    }
    if (event->type() != QEvent::KeyPress)
        return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool enter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (key->key() == Qt::Key_Escape) {
        Q_EMIT putBack();
        return true;
    }
    // Shift+Enter begins a new paragraph where the piece may have several.
    if (enter && (m_oneParagraph || !key->modifiers().testFlag(Qt::ShiftModifier))) {
        Q_EMIT finished();
        return true;
    }
    return false;
}

} // namespace wainscot::ui
