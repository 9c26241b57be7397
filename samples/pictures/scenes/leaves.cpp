#include "samples/pictures/scenes/leaves.h"

#include <QPainter>
#include <QPainterPath>

#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"

namespace wainscot::samples {
namespace {

constexpr int kPixels = 512;

// Half outlines from stalk to tip, x to the right, y up, in leaf lengths.
const std::vector<std::vector<QPointF>>& halfOutlines()
{
    static const std::vector<std::vector<QPointF>> outlines = {
        {{0, .12},
            {.10, .14},
            {.22, .06},
            {.26, .13},
            {.38, .20},
            {.30, .27},
            {.34, .33},
            {.49, .40},
            {.42, .47},
            {.46, .60},
            {.36, .57},
            {.31, .63},
            {.22, .54},
            {.14, .52},
            {.17, .70},
            {.12, .76},
            {.14, .84},
            {.06, .88},
            {0, .99}},
        {{0, .08},
            {.12, .14},
            {.22, .24},
            {.27, .37},
            {.285, .50},
            {.26, .63},
            {.20, .76},
            {.11, .88},
            {0, .98}},
        {{0, .08},
            {.06, .12},
            {.15, .18},
            {.11, .25},
            {.14, .29},
            {.25, .34},
            {.19, .42},
            {.21, .48},
            {.32, .55},
            {.24, .62},
            {.24, .67},
            {.30, .75},
            {.20, .80},
            {.16, .86},
            {.15, .93},
            {0, .98}},
        {{0, .14},
            {.18, .16},
            {.30, .24},
            {.34, .33},
            {.30, .45},
            {.22, .60},
            {.13, .76},
            {0, .97}},
    };
    return outlines;
}

QPainterPath leafPath(int kind)
{
    const auto& half = halfOutlines()[size_t(kind)];
    const bool lobed = kind == 0;
    const auto at = [](QPointF p, int side) {
        return QPointF((0.5 + side * p.x()) * kPixels, (1.0 - p.y()) * kPixels);
    };
    QPainterPath path(at(half.front(), 1));
    const auto run = [&](int side, bool forward) {
        for (size_t k = 1; k < half.size(); ++k) {
            const size_t i = forward ? k : half.size() - 1 - k,
                         before = forward ? k - 1 : half.size() - k;
            const QPointF a = at(half[before], side), b = at(half[i], side);
            const QPointF out = QPointF(b.y() - a.y(), a.x() - b.x())
                * (side * (lobed ? -0.04 : 0.10)) * (forward ? 1 : -1);
            // Saw teeth along smooth-edged leaves, straight edges on lobed ones.
            if (kind == 1 || kind == 3) {
                for (int t = 1; t <= 3; ++t) {
                    path.lineTo(a + (b - a) * (t / 3.0 - 0.08) + out * 0.5);
                    path.lineTo(a + (b - a) * (t / 3.0));
                }
            } else {
                path.quadTo((a + b) * 0.5 + out, b);
            }
        }
    };
    run(1, true);
    run(-1, false);
    path.closeSubpath();
    return path;
}

QImage paintLeaf(int kind, std::uint32_t seed)
{
    QImage image(kPixels, kPixels, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    const QPainterPath path = leafPath(kind);
    painter.setPen(QPen(QColor(150, 120, 88), 9, Qt::SolidLine, Qt::RoundCap));
    QPainterPath stalk(QPointF(0.5 * kPixels, 0.88 * kPixels));
    stalk.quadTo(QPointF(0.49 * kPixels, 0.95 * kPixels), QPointF(0.52 * kPixels, 0.995 * kPixels));
    painter.drawPath(stalk);
    painter.fillPath(path, QColor(196, 190, 184));
    painter.setClipPath(path);
    Rng rng(seed);
    for (int i = 0; i < 260; ++i) { // blotches, darker towards the rim
        const double x = rng.uniform() * kPixels, y = rng.uniform() * kPixels, r = rng.range(3, 34);
        const int tone = rng.uniform() < 0.5f ? 255 : 60;
        painter.setPen(Qt::NoPen);
        painter.setBrush(QColor(tone, tone - 10, tone - 30 < 0 ? 0 : tone - 30, rng.index(26) + 5));
        painter.drawEllipse(QPointF(x, y), r, r * rng.range(0.5f, 1.3f));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(QColor(70, 50, 40, 90), 12));
    painter.drawPath(path);
    const auto vein = [&](QPointF a, QPointF b, double w) {
        painter.setPen(QPen(QColor(80, 62, 50, 120), w + 3, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(a + QPointF(2, 2), b + QPointF(2, 2));
        painter.setPen(QPen(QColor(236, 222, 196, 190), w, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(a, b);
    };
    const QPointF base(0.5 * kPixels, 0.88 * kPixels), tip(0.5 * kPixels, 0.03 * kPixels);
    vein(base, tip, 5);
    if (kind == 0) {
        for (double side : {-1.0, 1.0}) {
            vein(base, QPointF((0.5 + side * 0.45) * kPixels, 0.44 * kPixels), 4);
            vein(base, QPointF((0.5 + side * 0.34) * kPixels, 0.80 * kPixels), 3);
            for (int k = 1; k < 4; ++k) {
                const QPointF from = base
                    + (QPointF((0.5 + side * 0.45) * kPixels, 0.44 * kPixels) - base) * (k * 0.24);
                vein(from, from + QPointF(side * 20, -60), 1.6);
                vein(from, from + QPointF(side * 60, 4), 1.6);
            }
        }
    }
    for (int k = 0; k < 8; ++k)
        for (double side : {-1.0, 1.0}) {
            const QPointF from = base + (tip - base) * (0.08 + k * 0.11);
            vein(from, from + QPointF(side * 150, -120), 2.2);
        }
    return image;
}

} // namespace

LeafLitter::LeafLitter(std::uint32_t seed)
    : m_cells(size_t(kGrid) * kGrid)
{
    for (int kind = 0; kind < 4; ++kind)
        m_shapes.push_back(
            textureFromImage(paintLeaf(kind, seed + std::uint32_t(kind)), Texture::Edge::Clamp));
}

void LeafLitter::add(const Leaf& leaf)
{
    const int index = int(m_leaves.size());
    m_leaves.push_back(leaf);
    const float reach = leaf.size * 0.75f + 0.02f;
    const auto cell = [](float v) {
        return std::clamp(int(std::floor(v / kCell)) + kGrid / 2, 0, kGrid - 1);
    };
    for (int y = cell(leaf.center.y - reach); y <= cell(leaf.center.y + reach); ++y)
        for (int x = cell(leaf.center.x - reach); x <= cell(leaf.center.x + reach); ++x)
            m_cells[size_t(y) * kGrid + size_t(x)].push_back(index);
}

void LeafLitter::scatter(
    Vec2 from, Vec2 to, int count, float minSize, float maxSize, std::uint32_t seed)
{
    static const Vec3 tints[] = {srgb(0xd0a040),
        srgb(0xb87038),
        srgb(0x8a5e3c),
        srgb(0x96442e),
        srgb(0xa8944a),
        srgb(0x7a5638),
        srgb(0x9a6a3c)};
    Rng rng(seed);
    for (int i = 0; i < count; ++i) {
        Leaf leaf;
        leaf.center = {rng.range(from.x, to.x), rng.range(from.y, to.y)};
        leaf.angle = rng.range(0, 2 * kPi);
        leaf.kind = rng.uniform() < 0.45f ? 0 : 1 + rng.index(3);
        leaf.size = rng.range(minSize, maxSize)
            * (leaf.kind == 0        ? 1.25f
                    : leaf.kind == 3 ? 0.7f
                                     : 1.0f);
        leaf.tint = tints[rng.index(7)] * rng.range(0.7f, 1.25f);
        leaf.curl = rng.range(-0.8f, 0.8f);
        add(leaf);
    }
}

bool LeafLitter::sampleLeaf(const Leaf& leaf, Vec2 p, float footprint, Texel& out, Vec2& uv) const
{
    const Vec2 q = rotate(p - leaf.center, -leaf.angle) * (1.0f / leaf.size);
    const float bend = 0.12f * leaf.curl * (q.y * q.y); // the midrib is rarely straight
    uv = {q.x + bend + 0.5f, 0.5f - q.y};
    if (uv.x < 0 || uv.y < 0 || uv.x > 1 || uv.y > 1)
        return false;
    const float lod = std::log2(std::max(1.0f, footprint / leaf.size * kPixels));
    out = m_shapes[size_t(leaf.kind)].sample(uv.x, uv.y, lod);
    return out.v[3] > 0.01f;
}

Overlay LeafLitter::at(Vec2 p, float footprint) const
{
    Overlay over;
    const int cx = int(std::floor(p.x / kCell)) + kGrid / 2,
              cy = int(std::floor(p.y / kCell)) + kGrid / 2;
    if (cx < 0 || cy < 0 || cx >= kGrid || cy >= kGrid)
        return over;
    const std::vector<int>& cell = m_cells[size_t(cy) * kGrid + size_t(cx)];
    float shade = 0;
    for (size_t k = cell.size(); k-- > 0;) {
        const Leaf& leaf = m_leaves[size_t(cell[k])];
        Texel t{};
        Vec2 uv;
        if (sampleLeaf(leaf, p, footprint, t, uv) && t.v[3] > 0.45f) {
            const float inv = 1.0f / t.v[3];
            const float mottle =
                1.0f + 0.5f * fbm2(uv.x * 9 + float(cell[k]) * 3.7f, uv.y * 9, 3, 71);
            over.color = Vec3{t.v[0], t.v[1], t.v[2]} * leaf.tint
                * (inv * 1.05f * mottle * (1 - 0.55f * shade));
            over.alpha = smoothstep(0.45f, 0.6f, t.v[3]);
            const float side = uv.x - 0.5f;
            const Vec2 local{1.6f * leaf.curl * side
                    + 0.34f * noise2(uv.x * 7, uv.y * 7, std::uint32_t(cell[k])),
                0.7f * leaf.curl * (0.5f - uv.y)
                    + 0.34f * noise2(uv.x * 7 + 40, uv.y * 7, std::uint32_t(cell[k]))};
            over.slope = rotate(local, leaf.angle);
            over.gloss = 1.5f;
            over.floats = true;
            over.part = std::uint8_t(10 + cell[k] % 200);
            over.shadow = 0;
            return over;
        }
        // Not covered here: is this leaf just up-light, throwing soft shade?
        if (sampleLeaf(
                leaf, p + Vec2{-0.004f, 0.006f}, std::max(footprint, leaf.size * 0.03f), t, uv))
            shade = std::max(shade, t.v[3]);
    }
    over.shadow = 0.75f * shade;
    return over;
}

} // namespace wainscot::samples
