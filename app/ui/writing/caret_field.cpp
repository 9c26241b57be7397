#include "app/ui/writing/caret_field.h"

#include <QApplication>
#include <QMimeData>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr double kCaretPx = 2;
constexpr int kReachPx = 6; // the caret and its lines may stand a little outside the words

} // namespace

CaretField::CaretField(QWidget* parent)
    : QPlainTextEdit(parent)
{
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setTabChangesFocus(true);
    setAutoFillBackground(false);
    viewport()->setAutoFillBackground(false);
    viewport()->setCursor(Qt::IBeamCursor);
    setAcceptDrops(false);
    setUndoRedoEnabled(true);
    connect(this, &QPlainTextEdit::textChanged, this, &CaretField::shownTextChanged);
    connect(this, &QPlainTextEdit::cursorPositionChanged, this, &CaretField::restartBlinking);
    connect(this, &QPlainTextEdit::selectionChanged, this, [this] { viewport()->update(); });
    hide();
}

void CaretField::begin(const QString& text, bool oneParagraph)
{
    m_oneParagraph = oneParagraph;
    m_preedit.clear();
    m_doubtful.clear();
    m_wishedX.reset();
    setPlainText(text);
    document()->clearUndoRedoStacks();
    selectAll();
}

QString CaretField::shownText() const
{
    QString text = toPlainText();
    text.insert(textCursor().position(), m_preedit);
    return text;
}

int CaretField::shownOffset(int position) const
{
    return position > textCursor().position() ? position + int(m_preedit.size()) : position;
}

void CaretField::setLines(CaretMap lines, const ViewMap& view, const QRectF& least)
{
    m_lines = std::move(lines);
    m_view = view;
    const QRectF room = least | m_view.toPx(m_lines.bounds());
    setGeometry(room.toAlignedRect().adjusted(-kReachPx, -kReachPx, kReachPx, kReachPx));
    viewport()->update();
}

QRectF CaretField::toPx(const RectMm& rect) const
{
    return m_view.toPx(rect).translated(-QPointF(pos()));
}

QRectF CaretField::caretRect() const
{
    const int at = textCursor().position() + int(m_preedit.size());
    const QRectF line = toPx(m_lines.caretAt(at));
    return {line.left() - kCaretPx / 2, line.top(), kCaretPx, line.height()};
}

int CaretField::positionAt(QPointF px) const
{
    return m_lines.offsetAt(m_view.toMm(px + QPointF(pos())));
}

void CaretField::putCaretAt(QPointF parentPx)
{
    moveCaret(positionAt(parentPx - QPointF(pos())), false);
}

void CaretField::setDoubtful(std::vector<TextRange> stretches)
{
    if (m_doubtful == stretches)
        return;
    m_doubtful = std::move(stretches);
    viewport()->update();
}

void CaretField::moveCaret(int position, bool select)
{
    QTextCursor cursor = textCursor();
    cursor.setPosition(qBound(0, position, int(toPlainText().size())),
        select ? QTextCursor::KeepAnchor : QTextCursor::MoveAnchor);
    setTextCursor(cursor);
    restartBlinking();
}

void CaretField::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(viewport());
    painter.setRenderHint(QPainter::Antialiasing);
    const QColor hand(kHandOnPaper);
    const QTextCursor cursor = textCursor();
    if (cursor.hasSelection()) {
        QColor tint = hand;
        tint.setAlpha(60);
        const int from = shownOffset(cursor.selectionStart());
        for (const RectMm& part : m_lines.between(from, shownOffset(cursor.selectionEnd())))
            painter.fillRect(toPx(part), tint);
    }
    if (!m_preedit.isEmpty()) {
        painter.setPen(QPen(hand, 1.2));
        const int from = cursor.position();
        for (const RectMm& part : m_lines.between(from, from + int(m_preedit.size()))) {
            const QRectF box = toPx(part);
            painter.drawLine(box.bottomLeft(), box.bottomRight());
        }
    }
    painter.setPen(QPen(QColor(kHandOnPaper), 1.6, Qt::DotLine, Qt::RoundCap));
    for (const TextRange& doubt : m_doubtful) {
        const int from = shownOffset(doubt.start);
        for (const RectMm& part : m_lines.between(from, from + doubt.length)) {
            const QRectF box = toPx(part);
            painter.drawLine(box.bottomLeft(), box.bottomRight());
        }
    }
    if (m_caretShown && hasFocus())
        painter.fillRect(caretRect(), hand);
}

void CaretField::restartBlinking()
{
    m_caretShown = true;
    const int flash = QApplication::cursorFlashTime();
    if (flash > 0 && hasFocus())
        m_blink.start(flash / 2, this);
    else
        m_blink.stop();
    viewport()->update();
}

void CaretField::timerEvent(QTimerEvent* event)
{
    if (event->timerId() != m_blink.timerId()) {
        QPlainTextEdit::timerEvent(event);
        return;
    }
    m_caretShown = !m_caretShown;
    viewport()->update();
}

void CaretField::focusInEvent(QFocusEvent* event)
{
    QPlainTextEdit::focusInEvent(event);
    restartBlinking();
}

void CaretField::focusOutEvent(QFocusEvent* event)
{
    QPlainTextEdit::focusOutEvent(event);
    m_blink.stop();
    viewport()->update();
}

// The field breaks its text at other places than the panel, so lines are asked of the panel.
bool CaretField::moveByLine(const QKeyEvent& event)
{
    const bool select = event.modifiers().testFlag(Qt::ShiftModifier);
    if ((event.modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) != Qt::NoModifier)
        return false;
    const int at = textCursor().position();
    switch (event.key()) {
    case Qt::Key_Up:
    case Qt::Key_Down: {
        if (!m_wishedX)
            m_wishedX = m_lines.caretAt(at).x;
        const Mm x = *m_wishedX;
        moveCaret(m_lines.offsetInLine(at, event.key() == Qt::Key_Up ? -1 : 1, x), select);
        m_wishedX = x;
        return true;
    }
    case Qt::Key_Home:
        moveCaret(m_lines.lineStart(at), select);
        return true;
    case Qt::Key_End:
        moveCaret(m_lines.lineEnd(at), select);
        return true;
    default:
        return false;
    }
}

void CaretField::keyPressEvent(QKeyEvent* event)
{
    if (event->key() != Qt::Key_Up && event->key() != Qt::Key_Down)
        m_wishedX.reset();
    if (isComposing() || !moveByLine(*event))
        QPlainTextEdit::keyPressEvent(event);
}

void CaretField::mousePressEvent(QMouseEvent* event)
{
    if (event->button() != Qt::LeftButton)
        return;
    m_wishedX.reset();
    m_selecting = true;
    moveCaret(positionAt(event->position()), event->modifiers().testFlag(Qt::ShiftModifier));
}

void CaretField::mouseMoveEvent(QMouseEvent* event)
{
    if (m_selecting)
        moveCaret(positionAt(event->position()), true);
}

void CaretField::mouseReleaseEvent(QMouseEvent* event)
{
    m_selecting = m_selecting && event->button() != Qt::LeftButton;
}

void CaretField::mouseDoubleClickEvent(QMouseEvent* event)
{
    moveCaret(positionAt(event->position()), false);
    QTextCursor cursor = textCursor();
    cursor.select(QTextCursor::WordUnderCursor);
    setTextCursor(cursor);
}

void CaretField::wheelEvent(QWheelEvent* event)
{
    Q_EMIT wheeled(event);
}

void CaretField::inputMethodEvent(QInputMethodEvent* event)
{
    m_preedit = event->preeditString();
    QPlainTextEdit::inputMethodEvent(event);
    Q_EMIT shownTextChanged();
}

QVariant CaretField::inputMethodQuery(Qt::InputMethodQuery query) const
{
    if (query == Qt::ImCursorRectangle || query == Qt::ImAnchorRectangle)
        return caretRect();
    return QPlainTextEdit::inputMethodQuery(query);
}

// Pasted text comes without any form of its own, a caption's without line breaks.
void CaretField::insertFromMimeData(const QMimeData* source)
{
    if (source->hasText())
        textCursor().insertText(m_oneParagraph ? source->text().simplified() : source->text());
}

} // namespace wainscot::ui
