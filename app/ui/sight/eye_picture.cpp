#include "app/ui/sight/eye_picture.h"

#include <QPainter>
#include <QPainterPath>

#include <cmath>
#include <numbers>

#include "app/ui/canvas/screen_size.h"
#include "app/ui/compose/panel_picture.h"
#include "app/ui/kit/icons.h"
#include "app/ui/kit/tokens.h"
#include "layout/screen/blur.h"

namespace wainscot::ui {

namespace {

constexpr double kArcminute = std::numbers::pi / (180 * 60); // radians, nearly its tangent
constexpr double kHalfWallMm = 20'000; // farther than any view reaches

QPolygonF cornersIn(const RectMm& rect)
{
    return {{rect.x.value(), rect.y.value()},
        {rect.right().value(), rect.y.value()},
        {rect.right().value(), rect.bottom().value()},
        {rect.x.value(), rect.bottom().value()}};
}

} // namespace

EyePicture::EyePicture(PictureProvider& pictures, QWidget* parent)
    : QWidget(parent)
    , m_pictures(pictures)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void EyePicture::setView(
    const DisplayList* list, const wall::Standing& standing, const std::vector<SeenText>& texts)
{
    m_list = list;
    m_standing = standing;
    m_texts = texts;
    refreshPictures();
}

void EyePicture::setFilling(bool filling)
{
    m_filling = filling;
    refreshPictures();
}

void EyePicture::refreshPictures()
{
    m_wall = {};
    update();
}

void EyePicture::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    refreshPictures();
}

double EyePicture::magnified() const
{
    if (m_list == nullptr || m_list->size.isEmpty())
        return 1;
    const auto corners = wall::cornersOf(m_list->size, m_standing);
    double wide = 0;
    double high = 0;
    for (const wall::Tangent& corner : corners) {
        wide = std::max(wide, 2 * std::abs(corner.x));
        high = std::max(high, 2 * std::abs(corner.y));
    }
    const double perTangent = kScreenDistanceMm * pixelsPerMm(*this);
    const double margin = 2 * air(4);
    const double room = std::min(
        (width() - margin) / (wide * perTangent), (height() - margin) / (high * perTangent));
    return m_filling ? room : std::min(1.0, room);
}

double EyePicture::pixelsPerTangent() const
{
    return kScreenDistanceMm * pixelsPerMm(*this) * magnified();
}

QPointF EyePicture::at(Mm across, Mm above) const
{
    const wall::Tangent seen = wall::seen(across, above, m_standing);
    const double scale = pixelsPerTangent();
    return {width() / 2.0 + seen.x * scale, height() / 2.0 + seen.y * scale};
}

QTransform EyePicture::panelTransform() const
{
    const SizeMm size = m_list->size;
    QTransform transform;
    QTransform::quadToQuad(
        cornersIn({Mm(0), Mm(0), size.width, size.height}), panelOutline(), transform);
    return transform;
}

QPolygonF EyePicture::panelOutline() const
{
    if (m_list == nullptr)
        return {};
    QPolygonF outline;
    const double scale = pixelsPerTangent();
    for (const wall::Tangent& corner : wall::cornersOf(m_list->size, m_standing))
        outline << QPointF(width() / 2.0 + corner.x * scale, height() / 2.0 + corner.y * scale);
    return outline;
}

// What is under the wall's foot, where it is in view.
void EyePicture::paintFloor(QPainter& painter) const
{
    const QPointF left = at(Mm(-kHalfWallMm), Mm(0));
    const QPointF right = at(Mm(kHalfWallMm), Mm(0));
    if (left.y() > height())
        return;
    painter.fillRect(QRectF(0, left.y(), width(), height() - left.y()), tokens().window);
    painter.setPen(QPen(tokens().edge, 1));
    painter.drawLine(left, right);
}

void EyePicture::paintPanel(QPainter& painter, double pixelRatio) const
{
    const QPolygonF outline = panelOutline();
    const double wide =
        std::max(std::hypot(outline[1].x() - outline[0].x(), outline[1].y() - outline[0].y()),
            std::hypot(outline[2].x() - outline[3].x(), outline[2].y() - outline[3].y()));
    const QPixmap panel = panelPicture(*m_list, qMax(1, qCeil(wide)), pixelRatio, m_pictures);
    QTransform transform;
    QTransform::quadToQuad(
        QPolygonF(QList<QPointF>{{0, 0},
            {panel.deviceIndependentSize().width(), 0},
            {panel.deviceIndependentSize().width(), panel.deviceIndependentSize().height()},
            {0, panel.deviceIndependentSize().height()}}),
        outline,
        transform);
    painter.save();
    painter.setTransform(transform, true);
    painter.drawPixmap(0, 0, panel);
    painter.restore();
}

QPixmap EyePicture::seenWall() const
{
    const double ratio = devicePixelRatioF();
    QImage wall(size() * ratio, QImage::Format_RGB32);
    wall.setDevicePixelRatio(ratio);
    wall.fill(tokens().wall);
    {
        QPainter painter(&wall);
        painter.setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
        paintFloor(painter);
        paintPanel(painter, ratio);
    }
    const double arcminutes = wall::addedBlurArcminutes(m_standing.acuity, magnified());
    // The blur is told in the picture as it lies before the reader.
    const double pixelsPerArcminute = kScreenDistanceMm * pixelsPerMm(*this) * kArcminute;
    QImage seen = blurredLight(wall, arcminutes * pixelsPerArcminute * ratio);
    seen.setDevicePixelRatio(ratio);
    return QPixmap::fromImage(seen);
}

void EyePicture::paintMarks(QPainter& painter) const
{
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    const Tokens light = lightTokens(); // on paper, whatever the window's colours
    const QTransform onto = panelTransform();
    for (const SeenText& text : m_texts) {
        if (text.legibility == wall::Legibility::Easy)
            continue;
        const bool gone = text.legibility == wall::Legibility::Gone;
        const QPolygonF around = onto.map(cornersIn(text.place.grown(text.cap * 0.6)));
        // Lost: a frame. Hard: a broken line beside it, where a line begins.
        QPainterPath mark;
        if (gone) {
            mark.addPolygon(around);
            mark.closeSubpath();
        } else {
            mark.moveTo(around[0]);
            mark.lineTo(around[3]);
        }
        painter.setPen(QPen(Qt::white, 3.5));
        painter.drawPath(mark);
        painter.setPen(gone ? QPen(light.stop, 1.5) : QPen(light.look, 2, Qt::DashLine));
        painter.drawPath(mark);
    }
}

void EyePicture::paintEvent(QPaintEvent* /*event*/)
{
    QPainter painter(this);
    if (m_list == nullptr) {
        painter.fillRect(rect(), tokens().wall);
        return;
    }
    if (m_wall.isNull())
        m_wall = seenWall();
    painter.drawPixmap(0, 0, m_wall);
    paintMarks(painter);
}

} // namespace wainscot::ui
