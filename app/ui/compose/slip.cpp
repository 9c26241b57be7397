#include "app/ui/compose/slip.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QDrag>
#include <QKeyEvent>
#include <QMimeData>
#include <QMouseEvent>
#include <QPainter>
#include <QStyle>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/opening_mark.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

int hangingRoom() // for the quotation mark
{
    return air(4.5);
}

} // namespace

DrawerEntry::DrawerEntry(DrawerItem item, QWidget* parent)
    : QAbstractButton(parent)
    , m_item(item)
{
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
}

void DrawerEntry::describe(const QString& name)
{
    m_name = name;
    sayName();
}

void DrawerEntry::sayName()
{
    QString name = m_name;
    for (const QString& mark : {m_forbidden, m_used, m_isStarred ? tr("Starred") : QString()}) {
        if (!mark.isEmpty())
            name += QStringLiteral(". ") + mark;
    }
    setAccessibleName(name);
    update();
}

void DrawerEntry::setUsed(const QString& where)
{
    m_used = where;
    sayName();
}

void DrawerEntry::setForbidden(const QString& mark, const QString& why)
{
    m_forbidden = mark;
    setToolTip(why);
    setAccessibleDescription(why);
    setCursor(mark.isEmpty() ? Qt::PointingHandCursor : Qt::ArrowCursor);
    sayName();
}

void DrawerEntry::setStarred(bool starred)
{
    m_isStarred = starred;
    updateGeometry();
    sayName();
}

void DrawerEntry::contextMenuEvent(QContextMenuEvent* event)
{
    Q_EMIT menuAsked(event->globalPos());
}

void DrawerEntry::paintStar(QPainter& painter) const
{
    if (!m_isStarred)
        return;
    const int side = scaled(15);
    const QRect place(width() - side - air(1), air(1), side, side);
    drawIcon(painter,
        Icon::Star,
        QStyle::visualRect(layoutDirection(), rect(), place),
        tokens().accent,
        tokens().accent);
}

void DrawerEntry::mousePressEvent(QMouseEvent* event)
{
    m_pressedAt = event->pos();
    QAbstractButton::mousePressEvent(event);
}

void DrawerEntry::mouseMoveEvent(QMouseEvent* event)
{
    const bool far =
        (event->pos() - m_pressedAt).manhattanLength() >= QApplication::startDragDistance();
    if (!event->buttons().testFlag(Qt::LeftButton) || !far || isForbidden())
        return;
    setDown(false);
    auto* drag = new QDrag(this);
    auto* mime = new QMimeData;
    mime->setData(QString::fromLatin1(kDrawerMime), toBytes(m_item));
    drag->setMimeData(mime);
    drag->setPixmap(grab());
    drag->setHotSpot(QPoint(-scaled(8), -scaled(8)));
    drag->exec(Qt::CopyAction);
}

void DrawerEntry::mouseDoubleClickEvent(QMouseEvent* event)
{
    QAbstractButton::mouseDoubleClickEvent(event);
    Q_EMIT wanted(m_item);
}

void DrawerEntry::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        Q_EMIT wanted(m_item);
    else if (event->key() == Qt::Key_Asterisk)
        Q_EMIT starAsked(m_item);
    else
        QAbstractButton::keyPressEvent(event);
}

void DrawerEntry::enterEvent(QEnterEvent* event)
{
    QAbstractButton::enterEvent(event);
    update();
}

void DrawerEntry::leaveEvent(QEvent* event)
{
    QAbstractButton::leaveEvent(event);
    update();
}

void DrawerEntry::paintFoot(QPainter& painter, const QRect& place, const QString& who) const
{
    const Tokens& t = tokens();
    const QFont font = interfaceFont(0.85);
    const QFontMetrics metrics(font);
    painter.setFont(font);
    const auto at = [&](Qt::Alignment side) {
        return int(QStyle::visualAlignment(layoutDirection(), side) | Qt::AlignVCenter
            | Qt::AlignAbsolute);
    };
    const QRect shown = QStyle::visualRect(layoutDirection(), rect(), place);
    const QString mark = m_forbidden.isEmpty() ? m_used : m_forbidden;
    const int markWidth = mark.isEmpty() ? 0 : metrics.horizontalAdvance(mark) + scaled(20);
    painter.setPen(t.quiet);
    painter.drawText(shown,
        at(Qt::AlignLeading),
        metrics.elidedText(who, Qt::ElideRight, place.width() - markWidth));
    if (mark.isEmpty())
        return;
    painter.setPen(m_forbidden.isEmpty() ? t.quiet : t.look);
    painter.drawText(shown, at(Qt::AlignTrailing), mark);
    if (m_forbidden.isEmpty())
        return;
    const QRect sign(place.right() - metrics.horizontalAdvance(mark) - scaled(17),
        place.center().y() - scaled(7),
        scaled(14),
        scaled(14));
    drawIcon(painter,
        Icon::NotAllowed,
        QStyle::visualRect(layoutDirection(), rect(), sign),
        t.look,
        t.look);
}

Slip::Slip(DrawerItem item, const QString& words, const QString& who, QWidget* parent)
    : DrawerEntry(item, parent)
    , m_words(words)
    , m_who(who)
{
    describe(who + QStringLiteral(": ") + words.simplified());
    // A slip takes its direction from its words, not from the interface.
    setLayoutDirection(words.isRightToLeft() ? Qt::RightToLeft : Qt::LeftToRight);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
}

int Slip::heightForWidth(int width) const
{
    const QRect text =
        QFontMetrics(wordsFont())
            .boundingRect(
                QRect(0, 0, width - hangingRoom() - endRoom(), 10000), Qt::TextWordWrap, m_words);
    return text.height() + QFontMetrics(interfaceFont(0.85)).height() + air(3.5);
}

int Slip::endRoom() const
{
    return isStarred() ? scaled(16) + air(1) : air(2);
}

QSize Slip::sizeHint() const
{
    return {scaled(220), heightForWidth(width() > scaled(100) ? width() : scaled(220))};
}

QSize Slip::minimumSizeHint() const
{
    return {scaled(120), sizeHint().height()};
}

void Slip::paintEvent(QPaintEvent* /*event*/)
{
    const Tokens& t = tokens();
    QPainter painter(this);
    painter.setLayoutDirection(layoutDirection()); // or a full stop lands at the wrong end
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(underMouse() && !isForbidden() ? t.edge : t.line, 1));
    painter.setBrush(used().isEmpty() ? t.slip : t.window);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 2, 2);

    const auto visual = [this](const QRect& r) {
        return QStyle::visualRect(layoutDirection(), rect(), r);
    };
    paintOpeningMark(painter, *this, {0, air(0.6), hangingRoom() - air(0.6), scaled(24)});
    const int footHeight = QFontMetrics(interfaceFont(0.85)).height();
    const QRect words(hangingRoom(),
        air(1.5),
        width() - hangingRoom() - endRoom(),
        height() - air(2.5) - footHeight);
    painter.setFont(wordsFont());
    painter.setPen(isForbidden() ? t.quiet : t.ink);
    painter.drawText(visual(words),
        int(QStyle::visualAlignment(layoutDirection(), Qt::AlignLeading) | Qt::AlignTop
            | Qt::AlignAbsolute)
            | Qt::TextWordWrap,
        m_words);
    paintFoot(painter,
        QRect(hangingRoom(),
            height() - footHeight - air(1),
            width() - hangingRoom() - air(2),
            footHeight),
        m_who);
    paintStar(painter);
    if (hasFocus())
        drawFocusRing(painter, rect());
}

ThingEntry::ThingEntry(DrawerItem item,
    const QString& heading,
    const QString& second,
    bool hasPicture,
    QWidget* parent)
    : DrawerEntry(item, parent)
    , m_heading(heading)
    , m_second(second)
    , m_hasPicture(hasPicture)
{
    describe(second.isEmpty() ? heading : heading + QStringLiteral(": ") + second);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

void ThingEntry::setPicture(const QImage& picture)
{
    if (picture.isNull())
        return;
    m_picture = QPixmap::fromImage(picture);
    update();
}

QSize ThingEntry::sizeHint() const
{
    const int lines = QFontMetrics(interfaceFont()).height() * (m_hasPicture ? 2 : 1)
        + QFontMetrics(interfaceFont(0.85)).height() + air(3);
    return {scaled(220), qMax(lines, m_hasPicture ? scaled(66) : 0)};
}

QSize ThingEntry::minimumSizeHint() const
{
    return {scaled(120), sizeHint().height()};
}

void ThingEntry::paintEvent(QPaintEvent* /*event*/)
{
    const Tokens& t = tokens();
    QPainter painter(this);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
    painter.setPen(QPen(underMouse() && !isForbidden() ? t.edge : t.line, 1));
    painter.setBrush(used().isEmpty() ? t.card : t.window);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    int start = air(2.5);
    if (m_hasPicture) {
        const QRect frame = QStyle::visualRect(layoutDirection(),
            rect(),
            QRect(air(1.5), air(1.5), scaled(82), height() - 2 * air(1.5)));
        painter.fillRect(frame, t.line);
        if (!m_picture.isNull()) {
            const QSize fitted = m_picture.size().scaled(frame.size(), Qt::KeepAspectRatio);
            QRect place(QPoint(), fitted);
            place.moveCenter(frame.center());
            painter.setOpacity(isForbidden() ? 0.45 : 1.0);
            painter.drawPixmap(place, m_picture);
            painter.setOpacity(1.0);
        }
        start = air(1.5) + scaled(82) + air(2);
    }
    const int footHeight = QFontMetrics(interfaceFont(0.85)).height();
    const QRect text(start, air(1.5), width() - start - air(2), height() - footHeight - air(2.5));
    painter.setFont(interfaceFont());
    painter.setPen(isForbidden() ? t.quiet : t.ink);
    painter.drawText(QStyle::visualRect(layoutDirection(), rect(), text),
        int(QStyle::visualAlignment(layoutDirection(), Qt::AlignLeading) | Qt::AlignTop
            | Qt::AlignAbsolute)
            | Qt::TextWordWrap,
        m_hasPicture ? m_heading
                     : fontMetrics().elidedText(m_heading, Qt::ElideRight, text.width()));
    paintFoot(painter,
        QRect(start, height() - footHeight - air(1), width() - start - air(2), footHeight),
        m_second);
    paintStar(painter);
    if (hasFocus())
        drawFocusRing(painter, rect());
}

} // namespace wainscot::ui
