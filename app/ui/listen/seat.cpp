#include "app/ui/listen/seat.h"

#include <QPainter>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

Seat::Seat(ChildId child, const QString& name, QChar letter, bool hasSpoken, QWidget* parent)
    : QAbstractButton(parent)
    , m_child(child)
    , m_letter(letter)
    , m_hasSpoken(hasSpoken)
{
    setText(name);
    setFocusPolicy(Qt::NoFocus); // letters are the keys of the seats
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    setAccessibleName(hasSpoken ? tr("%1, has spoken, key %2").arg(name).arg(letter)
                                : tr("%1, has not yet spoken, key %2").arg(name).arg(letter));
}

QSize Seat::sizeHint() const
{
    return {scaled(88), scaled(50)};
}

QSize Seat::minimumSizeHint() const
{
    return {scaled(34), scaled(50)};
}

void Seat::paintEvent(QPaintEvent* /*event*/)
{
    const Tokens& t = tokens();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(m_hasSpoken ? t.line : t.edge, 1));
    painter.setBrush(m_hasSpoken ? t.window : t.slip);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
    const QFont name = interfaceFont(0.95, m_hasSpoken ? QFont::Normal : QFont::DemiBold);
    painter.setFont(name);
    painter.setPen(m_hasSpoken ? t.quiet : t.ink);
    const QRect upper(2, 2, width() - 4, height() / 2);
    painter.drawText(upper,
        Qt::AlignCenter,
        QFontMetrics(name).elidedText(text(), Qt::ElideRight, upper.width()));
    painter.setFont(interfaceFont(0.85));
    const int middle = width() / 2;
    const int below = height() * 3 / 4 - 2;
    painter.drawText(QRect(middle - scaled(22), height() / 2, scaled(20), height() / 2 - 4),
        Qt::AlignCenter,
        m_letter);
    painter.setPen(QPen(m_hasSpoken ? t.accent : t.edge, 1.6));
    painter.setBrush(m_hasSpoken ? QBrush(t.accent) : QBrush(Qt::NoBrush));
    painter.drawEllipse(QPointF(middle + scaled(8), below), scaled(8) / 2.0, scaled(8) / 2.0);
}

} // namespace wainscot::ui
