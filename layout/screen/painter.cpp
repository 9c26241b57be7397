#include "layout/screen/painter.h"

#include <QGlyphRun>
#include <QPainter>
#include <QPainterPath>

#include <cmath>
#include <optional>

#include "layout/typeset/mark_place.h"

namespace wainscot {

namespace {

constexpr double kMmPerUnit = kMmPerInch / kPtPerInch / kUnitsPerPt;
// A0 at 300 dpi is 140 million pixels. Qt's raster engine draws no further than 32767 pixels out.
constexpr double kLargestSide = 32767;
constexpr double kMostPixels = 400e6;
constexpr QRgb kNotThereYet = 0xffe9ecec; // a calm tone in the place of a picture

QRectF toRect(const RectMm& rect)
{
    return {rect.x.value(), rect.y.value(), rect.width.value(), rect.height.value()};
}

// Device pixels for one millimetre, along and across the painter's present transform.
double pixelsPerMm(const QPainter& painter)
{
    const QTransform t = painter.combinedTransform();
    const double area = std::abs(t.m11() * t.m22() - t.m12() * t.m21());
    return std::sqrt(area) * painter.device()->devicePixelRatioF();
}

class Player {
public:
    Player(QPainter& painter, PictureProvider& pictures, PaintPurpose purpose)
        : m_painter(painter)
        , m_pictures(pictures)
        , m_purpose(purpose)
        , m_pixelsPerMm(pixelsPerMm(painter))
    {
    }

    void play(const Fill& fill, PieceId)
    {
        m_painter.fillRect(toRect(fill.rect), QColor::fromRgb(fill.colour));
    }

    void play(const Disc& disc, PieceId)
    {
        const QPointF centre(disc.centre.x.value(), disc.centre.y.value());
        QPainterPath shape;
        shape.addEllipse(centre, disc.radius.value(), disc.radius.value());
        const double inner = (disc.radius - disc.ring).value();
        if (disc.ring > Mm())
            shape.addEllipse(centre, inner, inner); // odd-even: what lies inside twice is empty
        m_painter.fillPath(shape, QColor::fromRgb(disc.colour));
    }

    void play(const Shape& shape, PieceId)
    {
        QPainterPath area = shape.area;
        area.setFillRule(Qt::WindingFill);
        m_painter.fillPath(area, QColor::fromRgb(shape.colour));
    }

    void play(const GlyphRun& run, PieceId)
    {
        m_painter.save();
        m_painter.translate(run.origin.x.value(), run.origin.y.value());
        m_painter.scale(kMmPerUnit, kMmPerUnit);
        m_painter.setPen(QColor::fromRgb(run.colour));
        QGlyphRun glyphs;
        glyphs.setRawFont(run.font);
        glyphs.setGlyphIndexes({run.glyphs.begin(), run.glyphs.end()});
        glyphs.setPositions({run.positions.begin(), run.positions.end()});
        glyphs.setRightToLeft(run.rightToLeft);
        m_painter.drawGlyphRun({0, 0}, glyphs);
        m_painter.restore();
    }

    void play(const PlacedPicture& placed, PieceId piece)
    {
        const SizePx wanted{
            std::max(1, static_cast<int>(std::ceil(placed.place.width.value() * m_pixelsPerMm))),
            std::max(1, static_cast<int>(std::ceil(placed.place.height.value() * m_pixelsPerMm)))};
        const ProvidedPicture provided = m_pictures.picture(placed.picture, wanted);
        if (provided.image.isNull() || provided.part.width <= 0 || provided.part.height <= 0) {
            m_painter.fillRect(toRect(placed.place), QColor::fromRgb(kNotThereYet));
            if (m_purpose == PaintPurpose::Output && !m_missing)
                m_missing = QStringLiteral("picture %1 (piece %2)")
                                .arg(placed.picture.id.number())
                                .arg(piece.number());
            return;
        }
        m_painter.drawImage(
            toRect(placed.place), provided.image, source(provided, placed.picture.visible));
    }

    [[nodiscard]] const std::optional<QString>& missing() const { return m_missing; }

private:
    // The visible part, in pixels of an image that may itself be a part.
    static QRectF source(const ProvidedPicture& provided, const RectFraction& visible)
    {
        const double across = provided.image.width() / provided.part.width;
        const double down = provided.image.height() / provided.part.height;
        const QRectF part((visible.x - provided.part.x) * across,
            (visible.y - provided.part.y) * down,
            visible.width * across,
            visible.height * down);
        return part.intersected(QRectF(provided.image.rect()));
    }

    QPainter& m_painter;
    PictureProvider& m_pictures;
    PaintPurpose m_purpose;
    double m_pixelsPerMm;
    std::optional<QString> m_missing;
};

// What a mark may cover, generously: glyphs reach at most two ems around their line.
RectMm reachOf(const Mark& mark)
{
    if (const auto place = placeOf(mark))
        return *place;
    const auto& run = std::get<GlyphRun>(mark.shape);
    double left = 0;
    double right = 0;
    for (const QPointF& at : run.positions) {
        left = std::min(left, at.x());
        right = std::max(right, at.x());
    }
    const Mm em(run.sizeUnits * kMmPerUnit);
    return RectMm{
        run.origin.x + Mm(left * kMmPerUnit), run.origin.y, Mm((right - left) * kMmPerUnit), Mm(0)}
        .grown(2 * em);
}

} // namespace

Result<> paint(QPainter& painter,
    const DisplayList& list,
    PictureProvider& pictures,
    PaintPurpose purpose,
    const RectMm& part)
{
    painter.save();
    painter.setRenderHints(
        QPainter::Antialiasing | QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform);
    Player player(painter, pictures, purpose);
    for (const Mark& mark : list.marks) {
        if (!part.isEmpty() && intersection(reachOf(mark), part).isEmpty())
            continue;
        std::visit([&](const auto& shape) { player.play(shape, mark.piece); }, mark.shape);
    }
    painter.restore();
    if (player.missing())
        return Error{ErrorCode::CannotRead, *player.missing(), {}};
    return Done{};
}

Result<QImage> toImage(const DisplayList& list, DotsPerInch resolution, PictureProvider& pictures)
{
    const double scale = resolution.value() / kMmPerInch;
    const double across = std::round(list.size.width.value() * scale);
    const double down = std::round(list.size.height.value() * scale);
    const QString asked = QStringLiteral("%1 dpi").arg(resolution.value());
    // Written so that a resolution that is not a number is refused, too.
    if (!(across >= 1 && down >= 1 && across <= kLargestSide && down <= kLargestSide
            && across * down <= kMostPixels))
        return Error{ErrorCode::WrongUse, asked, {}};
    const int width = static_cast<int>(across);
    const int height = static_cast<int>(down);
    QImage image(width, height, QImage::Format_RGB32);
    if (image.isNull())
        return Error{ErrorCode::WrongUse, asked, QStringLiteral("image too large")};
    image.fill(Qt::white);
    const int dotsPerMetre = static_cast<int>(std::lround(resolution.value() / kMmPerInch * 1000));
    image.setDotsPerMeterX(dotsPerMetre);
    image.setDotsPerMeterY(dotsPerMetre);
    QPainter painter(&image);
    painter.scale(width / list.size.width.value(), height / list.size.height.value());
    const Result<> painted = paint(painter, list, pictures, PaintPurpose::Output);
    painter.end();
    if (!painted)
        return painted.error();
    return image;
}

} // namespace wainscot
