// Looking out: raindrops on a pane, and a cloud over roofs.
#include <QPainterPath>

#include "samples/pictures/light/film.h"
#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"
#include "samples/pictures/scenes/scenes.h"
#include "samples/pictures/scenes/sky.h"

namespace wainscot::samples {
namespace {

// A rainy yard as a small painting; only ever seen blurred or through drops.
QImage paintRainyYard(std::uint32_t seed)
{
    QImage image(1024, 1024, QImage::Format_ARGB32_Premultiplied);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    QLinearGradient sky(0, 0, 0, 560);
    sky.setColorAt(0, QColor(196, 206, 216));
    sky.setColorAt(1, QColor(228, 230, 228));
    painter.fillRect(image.rect(), sky);
    Rng rng(seed);
    painter.setPen(Qt::NoPen);
    painter.fillRect(QRectF(560, 330, 480, 330), QColor(150, 110, 88)); // a brick house
    painter.setBrush(QColor(84, 60, 56));
    painter.drawPolygon(
        QPolygonF({QPointF(530, 335), QPointF(640, 220), QPointF(1040, 220), QPointF(1040, 335)}));
    for (int r = 0; r < 2; ++r)
        for (int c = 0; c < 4; ++c)
            painter.fillRect(QRectF(600 + c * 105, 370 + r * 130, 48, 76),
                (r + c) % 3 ? QColor(70, 80, 92) : QColor(248, 214, 140));
    for (int i = 0; i < 420; ++i) { // shrubs and a tree still in leaf
        const bool tree = i < 200;
        const double x = tree ? 210 + rng.gauss() * 90 : rng.uniform() * 1024,
                     y = tree ? 330 + rng.gauss() * 90 : 600 + rng.gauss() * 28;
        painter.setBrush(tree ? QColor(120 + rng.index(80), 96 + rng.index(50), 30 + rng.index(30))
                              : QColor(44 + rng.index(40), 70 + rng.index(40), 40 + rng.index(24)));
        painter.drawEllipse(QPointF(x, y), 26, 22);
    }
    painter.fillRect(QRectF(196, 420, 24, 220), QColor(52, 42, 36));
    painter.fillRect(QRectF(0, 650, 1024, 374), QColor(96, 98, 100)); // wet asphalt
    for (int i = 0; i < 26; ++i) {
        painter.setBrush(QColor(190, 198, 206, 120));
        painter.drawEllipse(QPointF(rng.uniform() * 1024, 690 + rng.uniform() * 300),
            60 + rng.uniform() * 120,
            8 + rng.uniform() * 14);
    }
    painter.setBrush(QColor(150, 52, 46)); // something red left outside
    painter.drawEllipse(QPointF(330, 700), 26, 20);
    return image;
}

struct DropHit {
    float height = 0; // 0 outside
    Vec2 slope; // of the unit cap
    float rim = 0; // 0 centre .. 1 edge
    float size = 0;
    Vec2 local;
};

// Drops of one size class on a jittered grid; x, y in pane units (height 1).
void dropLayer(
    Vec2 p, float cell, float keep, float minSize, float maxSize, std::uint32_t seed, DropHit& best)
{
    const int cx = int(std::floor(p.x / cell)), cy = int(std::floor(p.y / cell));
    for (int j = -1; j <= 1; ++j)
        for (int i = -1; i <= 1; ++i) {
            const std::uint32_t h = hashCell(cx + i, cy + j, seed);
            if (unit(h) > keep)
                continue;
            const float size =
                cell * mix(minSize, maxSize, unit(hash32(h + 1u)) * unit(hash32(h + 5u)));
            const Vec2 center{(float(cx + i) + 0.2f + 0.6f * unit(hash32(h + 2u))) * cell,
                (float(cy + j) + 0.2f + 0.6f * unit(hash32(h + 3u))) * cell};
            Vec2 d = (p - center) * (1.0f / size);
            if (std::fabs(d.x) > 1.6f || std::fabs(d.y) > 1.6f)
                continue;
            d.y *= d.y < 0 ? 0.80f : 1.05f; // heavier below
            const float wobble = 1.0f
                + 0.26f * noise2(center.x * 99 + d.x * 0.9f, center.y * 99 + d.y * 0.9f, seed + 3);
            const float r = length(d) * wobble;
            if (r >= 1)
                continue;
            const float height = std::sqrt(1 - r * r) * size;
            if (height > best.height) {
                best.height = height;
                best.slope = d * (wobble / std::sqrt(std::max(0.03f, 1 - r * r)));
                best.rim = r;
                best.size = size;
                best.local = d;
            }
        }
}

} // namespace

QImage windowDrops(QSize size, std::uint32_t seed)
{
    const Texture yard = textureFromImage(paintRainyYard(seed), Texture::Edge::Clamp);
    LightBuffer buffer;
    buffer.width = size.width() / 2;
    buffer.height = size.height() / 2;
    buffer.pixels.resize(size_t(buffer.width) * size_t(buffer.height));
    const float aspect = float(buffer.width) / float(buffer.height);
    const auto light = [&](float u, float v, float lod) {
        const Texel t = yard.sample(clamp01(u), clamp01(v), lod);
        return Vec3{t.v[0], t.v[1], t.v[2]};
    };
    const auto blurred = [&](float u, float v) { // five taps smooth the blocky mip
        const float o = 0.018f;
        return (light(u, v, 5.2f) * 2 + light(u + o, v + o, 5.2f) + light(u - o, v + o, 5.2f)
                   + light(u + o, v - o, 5.2f) + light(u - o, v - o, 5.2f))
            * (1.0f / 6);
    };
    parallelRows(buffer.height, [&](int row) {
        for (int x = 0; x < buffer.width; ++x) {
            const Vec2 p{float(x) / float(buffer.height), float(row) / float(buffer.height)};
            const float u = 0.5f + (p.x / aspect - 0.5f) * 0.9f, v = 0.5f + (p.y - 0.5f) * 0.9f;
            Vec3 c = blurred(u, v);
            // Tracks: drops that ran down wiped the fine spray away.
            float track = 0;
            DropHit drop;
            for (int k = 0; k < 6; ++k) {
                const float tx = aspect
                    * (0.08f + 0.17f * float(k) + 0.07f * unit(hash32(seed + std::uint32_t(k))));
                const float end = 0.25f + 0.7f * unit(hash32(seed + 40u + std::uint32_t(k)));
                const float wander = tx + 0.012f * noise2(p.y * 5, float(k) * 7, seed)
                    + 0.005f * noise2(p.y * 19, float(k) * 7, seed + 1);
                const float half = 0.0065f + 0.002f * noise2(p.y * 11, float(k), seed + 2);
                if (p.y < end)
                    track = std::max(
                        track, smoothstep(half * 1.3f, half * 0.8f, std::fabs(p.x - wander)));
                const float endX = tx + 0.012f * noise2(end * 5, float(k) * 7, seed)
                    + 0.005f * noise2(end * 19, float(k) * 7, seed + 1);
                Vec2 d = (p - Vec2{endX, end}) * (1.0f / 0.014f);
                d.y *= d.y < 0 ? 0.6f : 1.0f;
                const float r = length(d);
                if (r < 1) {
                    drop.height = 0.02f * std::sqrt(1 - r * r);
                    drop.slope = d * (1.0f / std::sqrt(std::max(0.03f, 1 - r * r)));
                    drop.rim = r;
                    drop.size = 0.014f;
                    drop.local = d;
                }
            }
            dropLayer(p, 0.10f, 0.38f, 0.08f, 0.36f, seed + 11, drop);
            dropLayer(p, 0.038f, 0.55f, 0.12f, 0.36f, seed + 12, drop);
            if (track < 0.5f) {
                dropLayer(p, 0.017f, 0.62f, 0.10f, 0.34f, seed + 13, drop);
                dropLayer(p, 0.008f, 0.55f, 0.10f, 0.30f, seed + 14, drop);
            } else {
                dropLayer(p, 0.012f, 0.30f, 0.15f, 0.40f, seed + 15, drop);
            }
            // A breath of mist on the glass between the drops.
            const float mist = (1 - track)
                * (0.10f + 0.16f * clamp01(0.5f + fbm2(p.x * 3, p.y * 3, 4, seed + 9)))
                * (0.6f + 0.8f * p.y);
            c = mix(c, Vec3{0.66f, 0.69f, 0.72f}, mist);
            if (drop.height > 0) {
                // The drop is a strong lens: the yard appears upside down in it.
                const float du = 0.5f - drop.slope.x * 0.30f, dv = 0.46f - drop.slope.y * 0.30f;
                Vec3 inside = light(du, dv, drop.size > 0.008f ? 1.5f : 3.0f);
                const float edge = smoothstep(0.72f, 1.0f, drop.rim);
                inside = mix(inside, blurred(u, v), 0.25f);
                inside =
                    inside * (1 - 0.6f * edge * (0.45f + 0.55f * clamp01(-drop.local.y + 0.3f)));
                inside += Vec3{1, 1, 1}
                    * (0.25f * smoothstep(0.2f, 0.95f, drop.local.y)
                        * smoothstep(1.0f, 0.8f, drop.rim));
                const Vec2 glint = drop.local - Vec2{-0.28f, -0.38f};
                inside += Vec3{1.1f, 1.1f, 1.1f} * smoothstep(0.15f, 0.08f, length(glint))
                    * (drop.size > 0.004f ? 0.8f : 0.3f);
                c = mix(c, inside, smoothstep(1.0f, 0.93f, drop.rim));
            }
            Sample& s = buffer.at(x, row);
            s.color = c;
            s.depth = 0.6f;
        }
    });
    Film film;
    film.exposure = 0.72f;
    film.contrast = 1.3f;
    film.saturation = 1.1f;
    film.vignette = 0.4f;
    film.glare = 0.10f;
    film.grain = 1.2f;
    film.whiteBalance = {0.96f, 1.0f, 1.05f};
    return develop(std::move(buffer), size.width(), size.height(), film, seed);
}

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
