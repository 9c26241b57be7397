// A heap cloud over tiled roofs.
#include <QPainterPath>

#include "samples/pictures/light/film.h"
#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"
#include "samples/pictures/scenes/scenes.h"
#include "samples/pictures/scenes/sky.h"

namespace wainscot::samples {
namespace {

// Density of a heap cloud; x, y in picture widths, y up.
float cloudDensity(float x, float y, int octaves, std::uint32_t seed)
{
    const float dx = (x - 0.52f) / 0.34f, dy = (y - 0.47f) / 0.165f;
    const float flat =
        smoothstep(-1.0f, -0.55f, dy + 0.25f * noise2(x * 14, 2, seed)); // level base
    float body = 1.05f - std::sqrt(dx * dx + (dy > 0 ? dy * dy * 0.8f : dy * dy));
    body = std::max(body, 0.62f - length(Vec2{(x - 0.16f) / 0.22f, (y - 0.60f) / 0.07f}));
    body = std::max(body, 0.55f - length(Vec2{(x - 0.93f) / 0.2f, (y - 0.62f) / 0.09f}));
    const float wx = noise2(x * 5, y * 5, seed + 1) * 0.03f,
                wy = noise2(x * 5 + 7, y * 5, seed + 2) * 0.03f;
    // Billows: ridges folded upwards give the cauliflower outline.
    float billow = 0, amplitude = 0.5f, f = 7;
    for (int i = 0; i < octaves; ++i) {
        billow += amplitude
            * (1.0f
                - 2.0f
                    * std::fabs(noise2((x + wx) * f, (y + wy) * f, seed + 10u + std::uint32_t(i))));
        amplitude *= 0.46f;
        f *= 2.05f;
    }
    return (body * 1.25f + 0.46f * billow - 0.16f) * flat;
}

void paintRoof(QPainter& painter,
    const QPolygonF& quad,
    QColor base,
    int rows,
    int columns,
    std::uint32_t seed)
{
    Rng rng(seed);
    QTransform place;
    QTransform::quadToQuad(
        QPolygonF({QPointF(0, 0), QPointF(columns, 0), QPointF(columns, rows), QPointF(0, rows)}),
        quad,
        place);
    painter.save();
    QPainterPath outline;
    outline.addPolygon(quad);
    painter.setClipPath(outline);
    painter.setTransform(place, true);
    painter.fillRect(QRectF(-1, -1, columns + 2, rows + 2), base.darker(150));
    painter.setPen(Qt::NoPen);
    for (int r = 0; r < rows; ++r)
        for (int c = -1; c <= columns; ++c) {
            const double x = c + (r % 2 ? 0.5 : 0.0);
            const int tone = 92 + rng.index(22) - (rng.uniform() < 0.06f ? 22 : 0);
            QColor tile = tone > 100 ? base.lighter(tone) : base.darker(200 - tone);
            tile.setRed(std::clamp(tile.red() + rng.index(14) - 7, 0, 255));
            QLinearGradient shade(x, 0, x + 1, 0); // curved pantiles
            shade.setColorAt(0, tile.darker(140));
            shade.setColorAt(0.35, tile.lighter(108));
            shade.setColorAt(1, tile.darker(122));
            painter.setBrush(shade);
            painter.drawRoundedRect(QRectF(x + 0.03, r, 0.95, 0.92), 0.2, 0.12);
        }
    painter.restore();
}

QImage paintRoofs(QSize size, std::uint32_t seed)
{
    QImage image(size, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    const double w = size.width(), h = size.height();
    paintBareTree(painter,
        {w * 0.93, h * 0.99},
        TreeStyle{22, h * 0.11, 10, 28, QColor(52, 46, 42)},
        seed + 3);
    paintBareTree(painter,
        {w * 0.02, h * 0.97},
        TreeStyle{18, h * 0.09, 9, 30, QColor(60, 54, 50)},
        seed + 4);
    // Far house.
    painter.fillRect(QRectF(w * 0.60, h * 0.83, w * 0.30, h * 0.2), QColor(202, 190, 168));
    for (int i = 0; i < 3; ++i) {
        painter.fillRect(QRectF(w * (0.645 + 0.085 * i), h * 0.885, w * 0.034, h * 0.085),
            QColor(214, 210, 202));
        painter.fillRect(
            QRectF(w * (0.648 + 0.085 * i), h * 0.889, w * 0.028, h * 0.077), QColor(78, 84, 90));
        painter.fillRect(QRectF(w * (0.6608 + 0.085 * i), h * 0.889, w * 0.0024, h * 0.077),
            QColor(214, 210, 202));
    }
    paintRoof(painter,
        QPolygonF({QPointF(w * 0.63, h * 0.735),
            QPointF(w * 0.87, h * 0.735),
            QPointF(w * 0.92, h * 0.845),
            QPointF(w * 0.58, h * 0.845)}),
        QColor(112, 82, 72),
        14,
        44,
        seed + 5);
    painter.fillRect(QRectF(w * 0.70, h * 0.685, w * 0.028, h * 0.07), QColor(122, 78, 62));
    painter.fillRect(QRectF(w * 0.696, h * 0.682, w * 0.036, h * 0.012), QColor(150, 146, 140));
    // Near roof across the lower left.
    paintRoof(painter,
        QPolygonF({QPointF(-w * 0.05, h * 0.765),
            QPointF(w * 0.44, h * 0.80),
            QPointF(w * 0.66, h * 1.06),
            QPointF(-w * 0.1, h * 1.06)}),
        QColor(146, 88, 68),
        13,
        34,
        seed + 6);
    painter.setPen(QPen(QColor(140, 72, 52), h * 0.012, Qt::SolidLine, Qt::RoundCap));
    for (int i = 0; i < 17; ++i) { // ridge tiles
        const double a = i / 17.0, b = (i + 0.86) / 17.0;
        painter.drawLine(QPointF(w * (-0.05 + 0.49 * a), h * (0.763 + 0.035 * a)),
            QPointF(w * (-0.05 + 0.49 * b), h * (0.763 + 0.035 * b)));
    }
    painter.fillRect(QRectF(w * 0.17, h * 0.675, w * 0.052, h * 0.13), QColor(134, 84, 66));
    painter.fillRect(QRectF(w * 0.207, h * 0.675, w * 0.015, h * 0.13), QColor(88, 54, 44));
    painter.setPen(QPen(QColor(92, 58, 46, 120), 2));
    for (int i = 0; i < 13; ++i)
        painter.drawLine(QPointF(w * 0.17, h * (0.685 + i * 0.0095)),
            QPointF(w * 0.222, h * (0.685 + i * 0.0095)));
    painter.fillRect(QRectF(w * 0.164, h * 0.668, w * 0.064, h * 0.014), QColor(172, 168, 160));
    // An aerial.
    painter.setPen(QPen(QColor(70, 72, 76), 4));
    painter.drawLine(QPointF(w * 0.335, h * 0.79), QPointF(w * 0.337, h * 0.66));
    painter.setPen(QPen(QColor(70, 72, 76), 2.5));
    for (int i = 0; i < 6; ++i)
        painter.drawLine(QPointF(w * (0.322 + 0.001 * i), h * (0.667 + 0.011 * i)),
            QPointF(w * (0.352 - 0.001 * i), h * (0.664 + 0.011 * i)));
    return image;
}

} // namespace

QImage cloudOverRoofs(QSize size, std::uint32_t seed)
{
    LightBuffer buffer;
    buffer.width = size.width() / 2;
    buffer.height = size.height() / 2;
    buffer.pixels.resize(size_t(buffer.width) * size_t(buffer.height));
    const QImage roofs =
        paintRoofs({buffer.width, buffer.height}, seed).convertToFormat(QImage::Format_ARGB32);
    float linear[256];
    for (int i = 0; i < 256; ++i)
        linear[i] = std::pow(float(i) / 255.0f, 2.2f);
    const Vec2 toSun{-0.035f, 0.045f};
    parallelRows(buffer.height, [&](int row) {
        for (int x = 0; x < buffer.width; ++x) {
            const float u = float(x) / float(buffer.width),
                        v = float(buffer.height - row) / float(buffer.width);
            const float rise = clamp01((v - 0.12f) / 0.63f);
            Vec3 c =
                mix(Vec3{0.60f, 0.76f, 0.95f}, Vec3{0.10f, 0.27f, 0.66f}, std::pow(rise, 0.75f));
            const float haze = 0.35f * clamp01(0.45f + fbm2(u * 2.5f + 5, v * 7, 4, seed + 60))
                * (1 - 0.5f * rise);
            c = mix(c, Vec3{0.95f, 0.97f, 1.0f}, haze * haze * 1.4f);
            const float d = cloudDensity(u, v, 6, seed);
            if (d > 0) {
                float thick = 0;
                for (int k = 1; k <= 3; ++k)
                    thick += std::max(0.0f,
                        cloudDensity(u + toSun.x * float(k) * 0.45f,
                            v + toSun.y * float(k) * 0.45f,
                            4,
                            seed));
                const float lit = std::exp(-thick * 0.85f);
                const float base = smoothstep(0.30f, 0.55f, v);
                Vec3 cloud = mix(Vec3{0.40f, 0.45f, 0.54f}, Vec3{0.60f, 0.66f, 0.74f}, base);
                cloud = mix(cloud, Vec3{1.18f, 1.14f, 1.07f}, lit);
                c = mix(c, cloud, smoothstep(0.0f, 0.32f, d));
            }
            const QRgb p = reinterpret_cast<const QRgb*>(roofs.constScanLine(row))[x];
            if (qAlpha(p)) {
                const float grime = 1.0f + 0.35f * fbm2(u * 60, v * 90, 4, seed + 61)
                    + 0.25f * fbm2(u * 6, v * 6, 3, seed + 62);
                const Vec3 roof =
                    Vec3{linear[qRed(p)], linear[qGreen(p)], linear[qBlue(p)]} * (0.95f * grime);
                c = mix(c, roof, float(qAlpha(p)) / 255.0f);
            }
            Sample& s = buffer.at(x, row);
            s.color = c;
            s.depth = 100;
        }
    });
    Film film;
    film.exposure = 0.95f;
    film.contrast = 1.15f;
    film.vignette = 0.35f;
    film.glare = 0.06f;
    return develop(std::move(buffer), size.width(), size.height(), film, seed);
}

} // namespace wainscot::samples
