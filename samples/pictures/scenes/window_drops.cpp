// Looking out through raindrops on a pane.
#include <QPainter>

#include "samples/pictures/light/film.h"
#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/parallel.h"
#include "samples/pictures/light/random.h"
#include "samples/pictures/light/texture.h"
#include "samples/pictures/scenes/scenes.h"

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

// The pane seen from inside, with the yard behind it; x to the right, y down, in pane heights.
class Pane {
public:
    Pane(float aspect, std::uint32_t seed)
        : m_yard(textureFromImage(paintRainyYard(seed), Texture::Edge::Clamp))
        , m_aspect(aspect)
        , m_seed(seed)
    {
    }

    [[nodiscard]] Vec3 light(Vec2 p) const
    {
        const float u = 0.5f + (p.x / m_aspect - 0.5f) * 0.9f, v = 0.5f + (p.y - 0.5f) * 0.9f;
        const Vec3 behind = blurred(u, v);
        DropHit drop;
        const float track = tracks(p, drop);
        dropLayer(p, 0.10f, 0.38f, 0.08f, 0.36f, m_seed + 11, drop);
        dropLayer(p, 0.038f, 0.55f, 0.12f, 0.36f, m_seed + 12, drop);
        if (track < 0.5f) {
            dropLayer(p, 0.017f, 0.62f, 0.10f, 0.34f, m_seed + 13, drop);
            dropLayer(p, 0.008f, 0.55f, 0.10f, 0.30f, m_seed + 14, drop);
        } else {
            dropLayer(p, 0.012f, 0.30f, 0.15f, 0.40f, m_seed + 15, drop);
        }
        // A breath of mist on the glass between the drops.
        const float mist = (1 - track)
            * (0.10f + 0.16f * clamp01(0.5f + fbm2(p.x * 3, p.y * 3, 4, m_seed + 9)))
            * (0.6f + 0.8f * p.y);
        const Vec3 misty = mix(behind, Vec3{0.66f, 0.69f, 0.72f}, mist);
        if (drop.height <= 0)
            return misty;
        return mix(misty, inside(drop, behind), smoothstep(1.0f, 0.93f, drop.rim));
    }

private:
    [[nodiscard]] Vec3 yard(float u, float v, float lod) const
    {
        const Texel t = m_yard.sample(clamp01(u), clamp01(v), lod);
        return Vec3{t.v[0], t.v[1], t.v[2]};
    }

    [[nodiscard]] Vec3 blurred(float u, float v) const // five taps smooth the blocky mip
    {
        const float o = 0.018f, lod = 5.2f;
        return (yard(u, v, lod) * 2 + yard(u + o, v + o, lod) + yard(u - o, v + o, lod)
                   + yard(u + o, v - o, lod) + yard(u - o, v - o, lod))
            * (1.0f / 6);
    }

    // How far a drop that ran down has wiped the fine spray away here, and the drop at its end.
    float tracks(Vec2 p, DropHit& drop) const
    {
        float track = 0;
        for (int k = 0; k < 6; ++k) {
            const float column = float(k) * 7;
            const float tx = m_aspect
                * (0.08f + 0.17f * float(k) + 0.07f * unit(hash32(m_seed + std::uint32_t(k))));
            const float end = 0.25f + 0.7f * unit(hash32(m_seed + 40u + std::uint32_t(k)));
            const auto wander = [&](float y) {
                return tx + 0.012f * noise2(y * 5, column, m_seed)
                    + 0.005f * noise2(y * 19, column, m_seed + 1);
            };
            const float half = 0.0065f + 0.002f * noise2(p.y * 11, float(k), m_seed + 2);
            if (p.y < end)
                track = std::max(
                    track, smoothstep(half * 1.3f, half * 0.8f, std::fabs(p.x - wander(p.y))));
            Vec2 d = (p - Vec2{wander(end), end}) * (1.0f / 0.014f);
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
        return track;
    }

    // The drop is a strong lens: the yard appears upside down in it.
    [[nodiscard]] Vec3 inside(const DropHit& drop, Vec3 behind) const
    {
        const float du = 0.5f - drop.slope.x * 0.30f, dv = 0.46f - drop.slope.y * 0.30f;
        Vec3 c = yard(du, dv, drop.size > 0.008f ? 1.5f : 3.0f);
        const float edge = smoothstep(0.72f, 1.0f, drop.rim);
        c = mix(c, behind, 0.25f);
        c = c * (1 - 0.6f * edge * (0.45f + 0.55f * clamp01(-drop.local.y + 0.3f)));
        c += Vec3{1, 1, 1}
            * (0.25f * smoothstep(0.2f, 0.95f, drop.local.y) * smoothstep(1.0f, 0.8f, drop.rim));
        const Vec2 glint = drop.local - Vec2{-0.28f, -0.38f};
        c += Vec3{1.1f, 1.1f, 1.1f} * smoothstep(0.15f, 0.08f, length(glint))
            * (drop.size > 0.004f ? 0.8f : 0.3f);
        return c;
    }

    Texture m_yard;
    float m_aspect;
    std::uint32_t m_seed;
};

} // namespace

QImage windowDrops(QSize size, std::uint32_t seed)
{
    LightBuffer buffer;
    buffer.width = size.width() / 2;
    buffer.height = size.height() / 2;
    buffer.pixels.resize(size_t(buffer.width) * size_t(buffer.height));
    const Pane pane(float(buffer.width) / float(buffer.height), seed);
    parallelRows(buffer.height, [&](int row) {
        for (int x = 0; x < buffer.width; ++x) {
            Sample& s = buffer.at(x, row);
            s.color =
                pane.light({float(x) / float(buffer.height), float(row) / float(buffer.height)});
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

} // namespace wainscot::samples
