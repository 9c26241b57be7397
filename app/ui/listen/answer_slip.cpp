#include "app/ui/listen/answer_slip.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QDrag>
#include <QKeyEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QPainter>
#include <QStyle>
#include <QTextLayout>

#include <cmath>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/opening_mark.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

AnswerSlip::AnswerSlip(
    QuoteId quote, const QString& words, const QString& foot, double relative, QWidget* parent)
    : QAbstractButton(parent)
    , m_quote(quote)
    , m_words(words)
    , m_foot(foot)
    , m_relative(relative)
{
    setFocusPolicy(Qt::StrongFocus);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setCursor(Qt::OpenHandCursor);
    // A slip takes its direction from its words, not from the interface.
    setLayoutDirection(words.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
    sayName();
}

void AnswerSlip::sayName()
{
    QString name = m_foot + QStringLiteral(": ") + m_words.simplified();
    if (!m_state.isEmpty())
        name += QStringLiteral(". ") + m_state;
    setAccessibleName(name);
}

void AnswerSlip::setShared(const std::vector<WordSpan>& shared)
{
    m_shared = shared;
    update();
}

void AnswerSlip::setLifted(bool lifted)
{
    m_isLifted = lifted;
    update();
}

void AnswerSlip::setMovable(bool movable)
{
    m_isMovable = movable;
    setCursor(movable ? Qt::OpenHandCursor : Qt::ArrowCursor);
}

void AnswerSlip::setQuiet(bool quiet)
{
    m_isQuiet = quiet;
    update();
}

void AnswerSlip::setState(const QString& state)
{
    m_state = state;
    sayName();
}

void AnswerSlip::setHeld(const QString& foot, const QStringList& all)
{
    m_held = foot;
    m_state = all.join(QStringLiteral(". "));
    setToolTip(all.join(QLatin1Char('\n')));
    sayName();
    update();
}

int AnswerSlip::scaledWidth()
{
    return scaled(160);
}

int AnswerSlip::hangingRoom() const
{
    return int(air(4.5) * std::max(1.0, m_relative * 0.9));
}

int AnswerSlip::layOut(QTextLayout& layout, int width) const
{
    QList<QTextLayout::FormatRange> underlined;
    for (const WordSpan& span : m_shared) {
        QTextLayout::FormatRange one;
        one.start = span.start;
        one.length = span.length;
        one.format.setFontUnderline(true);
        underlined << one;
    }
    layout.setText(m_words);
    layout.setFont(wordsFont(m_relative));
    layout.setFormats(underlined);
    QTextOption option(Qt::AlignLeading);
    option.setTextDirection(layoutDirection());
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout.setTextOption(option);
    layout.beginLayout();
    double height = 0;
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
        line.setLineWidth(width);
        line.setPosition(QPointF(0, height));
        height += line.height();
    }
    layout.endLayout();
    return int(std::ceil(height));
}

int AnswerSlip::heightForWidth(int width) const
{
    QTextLayout layout;
    const int words = layOut(layout, std::max(20, width - hangingRoom() - air(2)));
    return words + QFontMetrics(interfaceFont(0.85)).height() + air(3.5);
}

QSize AnswerSlip::sizeHint() const
{
    return {scaled(236), heightForWidth(std::max(width(), scaled(236)))};
}

void AnswerSlip::resizeEvent(QResizeEvent* event)
{
    QAbstractButton::resizeEvent(event);
    if (event->oldSize().width() != event->size().width())
        updateGeometry(); // its words take another height
}

void AnswerSlip::paintEvent(QPaintEvent* /*event*/)
{
    const Tokens& t = tokens();
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection());
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(m_isLifted ? QPen(t.hand, 2) : QPen(underMouse() ? t.edge : t.line, 1));
    painter.setBrush(m_isQuiet ? t.window : t.slip);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 2, 2);
    const auto visual = [this](const QRect& place) {
        return QStyle::visualRect(layoutDirection(), rect(), place);
    };
    paintOpeningMark(painter,
        *this,
        {0, air(0.6), hangingRoom() - air(0.6), int(scaled(24) * m_relative)},
        m_relative);
    const QRect words(hangingRoom(), air(1.5), width() - hangingRoom() - air(2), height());
    QTextLayout layout;
    layOut(layout, words.width());
    painter.setPen(m_isQuiet ? t.quiet : t.ink);
    layout.draw(&painter, visual(words).topLeft());
    const int foot = QFontMetrics(interfaceFont(0.85)).height();
    paintFoot(painter,
        QRect(hangingRoom(), height() - foot - air(1), width() - hangingRoom() - air(2), foot));
    if (hasFocus() && !m_isLifted)
        drawFocusRing(painter, rect());
}

// Who and what was asked at the start; by whom it is held at the end, hung from a nail.
void AnswerSlip::paintFoot(QPainter& painter, const QRect& place) const
{
    const Tokens& t = tokens();
    const QFontMetrics metrics(interfaceFont(0.85));
    const auto flags = [this](Qt::Alignment side) {
        return int(QStyle::visualAlignment(layoutDirection(), side) | Qt::AlignVCenter
            | Qt::AlignAbsolute);
    };
    const auto visual = [this](const QRect& part) {
        return QStyle::visualRect(layoutDirection(), rect(), part);
    };
    painter.setFont(interfaceFont(0.85));
    painter.setPen(t.quiet);
    int room = place.width();
    if (!m_held.isEmpty()) {
        const int nail = scaled(11);
        const QString held = metrics.elidedText(m_held, Qt::ElideRight, room * 3 / 5 - nail);
        const int wide = metrics.horizontalAdvance(held);
        const QRect end(place.right() + 1 - wide, place.top(), wide, place.height());
        painter.drawText(visual(end), flags(Qt::AlignTrailing), held);
        const QRect before(end.left() - nail, place.top(), nail, place.height());
        painter.save();
        painter.setPen(Qt::NoPen);
        painter.setBrush(t.accent);
        painter.drawEllipse(QRectF(visual(before)).center(), scaled(4) / 2.0, scaled(4) / 2.0);
        painter.restore();
        room -= wide + nail + air(1.5);
    }
    painter.drawText(visual(QRect(place.left(), place.top(), room, place.height())),
        flags(Qt::AlignLeading),
        metrics.elidedText(m_foot, Qt::ElideRight, room));
}

void AnswerSlip::keyPressEvent(QKeyEvent* event)
{
    const bool steers = event->key() == Qt::Key_Up || event->key() == Qt::Key_Down
        || event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter
        || event->key() == Qt::Key_Escape || event->key() == Qt::Key_Space;
    if (m_isLifted && steers)
        Q_EMIT keyInHand(event->key());
    else if (event->key() == Qt::Key_Space && m_isMovable)
        Q_EMIT liftAsked(m_quote);
    else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

void AnswerSlip::mousePressEvent(QMouseEvent* event)
{
    m_pressedAt = event->pos();
    QAbstractButton::mousePressEvent(event);
}

void AnswerSlip::mouseMoveEvent(QMouseEvent* event)
{
    const bool far =
        (event->pos() - m_pressedAt).manhattanLength() >= QApplication::startDragDistance();
    if (m_isMovable && far && event->buttons().testFlag(Qt::LeftButton))
        startDrag();
}

void AnswerSlip::startDrag()
{
    setDown(false);
    auto* drag = new QDrag(this);
    auto* mime = new QMimeData;
    mime->setData(QString::fromLatin1(kAnswerMime), QByteArray::number(m_quote.number()));
    drag->setMimeData(mime);
    drag->setPixmap(grab());
    drag->setHotSpot(m_pressedAt);
    drag->exec(Qt::MoveAction);
}

void AnswerSlip::contextMenuEvent(QContextMenuEvent* event)
{
    Q_EMIT menuAsked(m_quote, event->globalPos());
}

void AnswerSlip::enterEvent(QEnterEvent* event)
{
    QAbstractButton::enterEvent(event);
    update();
}

void AnswerSlip::leaveEvent(QEvent* event)
{
    QAbstractButton::leaveEvent(event);
    update();
}

} // namespace wainscot::ui
