#include "app/ui/sight/walk_line.h"

#include <QLocale>
#include <QMouseEvent>
#include <QPainter>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kNearest = 500;
constexpr int kFarthest = 8000;
constexpr int kStep = 250;

} // namespace

WalkLine::WalkLine(QWidget* parent)
    : QAbstractSlider(parent)
{
    setOrientation(Qt::Horizontal);
    setRange(kNearest, kFarthest);
    setSingleStep(kStep);
    setPageStep(1000);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setAccessibleName(tr("How far from the wall, in millimetres"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(this, &QAbstractSlider::valueChanged, this, qOverload<>(&QWidget::update));
}

QSize WalkLine::sizeHint() const
{
    return {scaled(400), scaled(44)};
}

double WalkLine::xOf(int mm) const
{
    const double pad = scaled(24);
    const double along = pad + (width() - 2 * pad) * mm / double(kFarthest);
    return layoutDirection() == Qt::RightToLeft ? width() - along : along;
}

void WalkLine::walkTo(double x)
{
    const double pad = scaled(24);
    const double along = layoutDirection() == Qt::RightToLeft ? width() - x : x;
    const double mm = (along - pad) / (width() - 2 * pad) * kFarthest;
    setValue(qRound(mm / kStep) * kStep);
}

void WalkLine::paintEvent(QPaintEvent* /*event*/)
{
    const Tokens& t = tokens();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double y = scaled(13);
    painter.setPen(QPen(t.edge, 1.5));
    painter.drawLine(QPointF(xOf(0), y), QPointF(xOf(kFarthest), y));
    painter.drawLine(QPointF(xOf(0), y - 8), QPointF(xOf(0), y + 8)); // the wall
    painter.setFont(interfaceFont(0.85));
    for (int metre = 0; metre * 1000 <= kFarthest; ++metre) {
        const double x = xOf(metre * 1000);
        painter.setPen(QPen(t.edge, 1));
        painter.drawLine(QPointF(x, y - 3), QPointF(x, y + 3));
        painter.setPen(t.quiet);
        const QString name = metre == 0 ? tr("wall") : tr("%1 m").arg(QLocale().toString(metre));
        painter.drawText(
            QRectF(x - scaled(30), y + 9, scaled(60), scaled(20)), Qt::AlignHCenter, name);
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(t.accent);
    painter.drawEllipse(QPointF(xOf(value()), y), 6, 6);
    if (hasFocus())
        drawFocusRing(painter, QRectF(xOf(value()) - 11, y - 11, 22, 22));
}

void WalkLine::mousePressEvent(QMouseEvent* event)
{
    walkTo(event->position().x());
}

void WalkLine::mouseMoveEvent(QMouseEvent* event)
{
    if (event->buttons().testFlag(Qt::LeftButton))
        walkTo(event->position().x());
}

void WalkLine::wheelEvent(QWheelEvent* event)
{
    setValue(value() - (event->angleDelta().y() > 0 ? kStep : -kStep));
    event->accept();
}

} // namespace wainscot::ui
