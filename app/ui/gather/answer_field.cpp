#include "app/ui/gather/answer_field.h"

#include <QKeyEvent>
#include <QMimeData>
#include <QPainter>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

AnswerField::AnswerField(QWidget* parent)
    : QPlainTextEdit(parent)
{
    setFont(wordsFont(1.75));
    setFrameShape(QFrame::NoFrame);
    setTabChangesFocus(true);
    document()->setDocumentMargin(air(3));
    viewport()->setAutoFillBackground(false);
    // A child's words are not for a program to complete or to correct.
    setInputMethodHints(Qt::ImhNoPredictiveText | Qt::ImhNoAutoUppercase | Qt::ImhMultiLine);
    setFixedHeight(fontMetrics().lineSpacing() * 3 + 2 * air(3) + air(2));
}

bool AnswerField::event(QEvent* event)
{
    // An empty field has nothing of its own to undo: then the window undoes the last answer.
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool undo = key->matches(QKeySequence::Undo) && !document()->isUndoAvailable();
        const bool redo = key->matches(QKeySequence::Redo) && !document()->isRedoAvailable();
        if (undo || redo) {
            event->ignore();
            return false;
        }
    }
    return QPlainTextEdit::event(event);
}

void AnswerField::keyPressEvent(QKeyEvent* event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    const auto modifiers = event->modifiers() & ~Qt::KeypadModifier;
    if (enter && modifiers == Qt::NoModifier) {
        Q_EMIT enterPressed();
        return;
    }
    if (enter && modifiers == Qt::ShiftModifier) {
        insertPlainText(QStringLiteral("\n"));
        return;
    }
    QPlainTextEdit::keyPressEvent(event);
}

void AnswerField::insertFromMimeData(const QMimeData* source)
{
    if (source->hasText())
        textCursor().insertText(source->text());
}

void AnswerField::paintEvent(QPaintEvent* event)
{
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(hasFocus() ? tokens().accent : tokens().edge, hasFocus() ? 2 : 1));
    painter.setBrush(tokens().field);
    painter.drawRoundedRect(QRectF(viewport()->rect()).adjusted(1, 1, -1, -1), 3, 3);
    painter.end();
    QPlainTextEdit::paintEvent(event);
}

} // namespace wainscot::ui
