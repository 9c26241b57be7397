#include "samples/pictures/scenes/sky.h"

#include <QPainterPath>
#include <QtMath>

#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"

namespace wainscot::samples {
namespace {

class Tree {
public:
    Tree(QPainter& painter, const TreeStyle& style, Rng& rng)
        : m_painter(painter)
        , m_style(style)
        , m_rng(rng)
    {
    }

    void grow(QPointF from, double angle, double length, double width, int depth)
    {
        if (depth == 0 || width < 0.5)
            return;
        QPointF at = from;
        const int parts = depth > 5 ? 6 : 3;
        double a = angle;
        for (int i = 0; i < parts; ++i) {
            a += m_rng.gauss() * 5.0
                + (depth < 5 ? (a < -90 ? 1.2 : -1.2) : 0); // twigs bend to the light
            const QPointF to = at
                + QPointF(std::cos(qDegreesToRadians(a)), std::sin(qDegreesToRadians(a)))
                    * (length / parts);
            const double w = width * (1.0 - 0.35 * (i + 1) / parts);
            m_painter.setPen(QPen(m_style.color, w, Qt::SolidLine, Qt::RoundCap));
            m_painter.drawLine(at, to);
            at = to;
            if (depth > 2 && i > 0 && m_rng.uniform() < 0.45f)
                growTwig(at, a, length, w, depth);
        }
        fork(at, a, length, width, depth);
    }

private:
    // One statement for each number drawn: the order of arguments is the compiler's.
    void growTwig(QPointF at, double angle, double length, double width, int depth)
    {
        const double side = m_rng.uniform() < 0.5f ? -1 : 1;
        const double turn = m_rng.range(25, 65);
        const double shorter = m_rng.range(0.4f, 0.7f);
        grow(at, angle + side * turn, length * shorter, width * 0.45, depth - 2);
    }

    void fork(QPointF at, double angle, double length, double width, int depth)
    {
        const int forks = m_rng.uniform() < 0.25f ? 3 : 2;
        for (int i = 0; i < forks; ++i) {
            const double side = forks == 2 ? (i ? 1 : -1) : i - 1;
            const double spread = m_style.spread * m_rng.range(0.5f, 1.2f);
            const double drift = m_rng.gauss() * 4;
            const double shorter = m_rng.range(0.68f, 0.88f);
            const double thinner = m_rng.range(0.52f, 0.68f);
            grow(at, angle + side * spread + drift, length * shorter, width * thinner, depth - 1);
        }
    }

    QPainter& m_painter;
    const TreeStyle& m_style;
    Rng& m_rng;
};

} // namespace

Vec3 skyLight(Weather weather, float azimuth, float elevation, std::uint32_t seed)
{
    const float rise = std::sin(std::max(0.0f, elevation));
    // Clouds lie on a plane above us, so they crowd together near the horizon.
    const float reach = 1.6f / (rise + 0.18f);
    const float x = std::sin(azimuth) * reach * std::cos(elevation),
                y = std::cos(azimuth) * reach * std::cos(elevation);
    const float warpX = noise2(x * 0.9f, y * 0.9f, seed + 7),
                warpY = noise2(x * 0.9f + 9, y * 0.9f, seed + 8);
    const float n = fbm2(x * 1.1f + warpX * 0.6f, y * 1.1f + warpY * 0.6f, 6, seed);
    const float inner = fbm2(x * 1.1f + 0.13f, y * 1.1f + 0.21f, 4, seed);
    const Vec3 blue =
        mix(Vec3{0.62f, 0.78f, 0.98f}, Vec3{0.16f, 0.34f, 0.72f}, std::pow(rise, 0.55f));
    const Vec3 bright{1.25f, 1.24f, 1.22f}, grey{0.50f, 0.53f, 0.58f};
    switch (weather) {
    case Weather::Overcast: {
        const float t = smoothstep(-0.45f, 0.5f, n);
        return mix(grey * 0.95f, bright * 0.85f, t) * (0.75f + 0.3f * rise);
    }
    case Weather::Breaking: {
        const float cover = smoothstep(-0.12f, 0.22f, n);
        const float shade = smoothstep(-0.25f, 0.35f, n - 0.7f * inner);
        return mix(blue, mix(grey, bright * 1.1f, 0.25f + 0.75f * shade), cover);
    }
    case Weather::Clear: {
        const float cover = 0.75f * smoothstep(0.12f, 0.45f, n);
        return mix(blue * 1.05f, bright, cover);
    }
    }
    return blue;
}

SkyDome::SkyDome(Weather weather, const QImage& scenery, float sceneryLight, std::uint32_t seed)
    : m_texture(kWidth, kHeight, Texture::Edge::Clamp)
{
    constexpr int kCoarse = 4;
    Texture sky(kWidth / kCoarse, kHeight / kCoarse, Texture::Edge::Clamp);
    sky.fill([&](int x, int y) {
        const float azimuth = (float(x) / float(sky.width()) * 2 - 1) * kHalfSpan;
        const float elevation = (1 - float(y) / float(sky.height())) * kPi * 0.5f;
        const Vec3 c = skyLight(weather, azimuth, elevation, seed);
        return Texel{{c.x, c.y, c.z, 1}};
    });
    float linear[256];
    for (int i = 0; i < 256; ++i)
        linear[i] = std::pow(float(i) / 255.0f, 2.2f) * sceneryLight;
    const QImage front = scenery.convertToFormat(QImage::Format_ARGB32);
    m_texture.fill([&](int x, int y) {
        Texel t = sky.sample((float(x) + 0.5f) / kWidth, (float(y) + 0.5f) / kHeight, 0);
        const QRgb p = reinterpret_cast<const QRgb*>(front.constScanLine(y))[x];
        const float a = float(qAlpha(p)) / 255.0f;
        t.v[0] = mix(t.v[0], linear[qRed(p)], a);
        t.v[1] = mix(t.v[1], linear[qGreen(p)], a);
        t.v[2] = mix(t.v[2], linear[qBlue(p)], a);
        return t;
    });
    m_texture.buildMips();
    const Texel mean = m_texture.sample(0.5f, 0.4f, 20);
    m_average = {mean.v[0], mean.v[1], mean.v[2]};
}

Vec3 SkyDome::light(Vec3 dir, float lod) const
{
    float azimuth = quickAtan2(dir.x, dir.y) / kHalfSpan; // -1..1 inside the painted span
    if (azimuth > 1) // mirrored outside
        azimuth = 2 - azimuth;
    else if (azimuth < -1)
        azimuth = -2 - azimuth;
    const float elevation =
        quickAtan2(std::max(0.0f, dir.z), std::sqrt(dir.x * dir.x + dir.y * dir.y)) / (kPi * 0.5f);
    const Texel t = m_texture.sample(0.5f + 0.5f * azimuth, 1.0f - elevation, lod);
    return {t.v[0], t.v[1], t.v[2]};
}

QImage SkyDome::emptyScenery()
{
    QImage image(kWidth, kHeight, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    return image;
}

void paintBareTree(QPainter& painter, QPointF foot, const TreeStyle& style, std::uint32_t seed)
{
    Rng rng(seed);
    painter.setRenderHint(QPainter::Antialiasing);
    const double lean = rng.gauss() * 4;
    Tree(painter, style, rng).grow(foot, -90 + lean, style.length, style.trunkWidth, style.depth);
}

void paintHouse(QPainter& painter, const QRectF& rect, QColor wall, std::uint32_t seed)
{
    Rng rng(seed);
    painter.setRenderHint(QPainter::Antialiasing);
    QLinearGradient face(rect.topLeft(), rect.bottomLeft());
    face.setColorAt(0, wall.darker(118)); // under the eaves
    face.setColorAt(0.08, wall);
    face.setColorAt(1, wall.darker(122)); // splashed and damp at the foot
    painter.fillRect(rect, face);
    painter.setPen(Qt::NoPen);
    for (int i = 0; i < 300; ++i) { // uneven plaster
        painter.setBrush(QColor(rng.index(2) ? 255 : 40, 60, 50, 7));
        painter.drawEllipse(QPointF(rect.left() + rng.uniform() * rect.width(),
                                rect.top() + rng.uniform() * rect.height()),
            rng.range(8, 50),
            rng.range(6, 40));
    }
    QLinearGradient slope(rect.topLeft() - QPointF(0, 90), rect.topLeft());
    slope.setColorAt(0, QColor(84, 62, 56));
    slope.setColorAt(1, QColor(112, 80, 68));
    painter.setBrush(slope);
    painter.drawPolygon(QPolygonF({rect.topLeft() + QPointF(-20, 4),
        rect.topLeft() + QPointF(40, -90),
        rect.topRight() + QPointF(-40, -90),
        rect.topRight() + QPointF(20, 4)}));
    painter.setBrush(QColor(96, 98, 98));
    painter.drawRect(QRectF(rect.left() - 20, rect.top(), rect.width() + 40, 7)); // gutter
    painter.drawRect(
        QRectF(rect.left() + rect.width() * 0.03, rect.top(), 6, rect.height())); // downpipe
    const int columns = std::max(2, int(rect.width() / 92));
    const int rows = std::max(1, int(rect.height() / 118));
    for (int r = 0; r < rows; ++r)
        for (int c = 0; c < columns; ++c) {
            const double w = rect.width() / columns, h = rect.height() / rows;
            const QRectF window(
                rect.left() + (c + 0.30) * w, rect.top() + (r + 0.25) * h, w * 0.42, h * 0.52);
            painter.fillRect(window.adjusted(-4, -4, 4, 4), QColor(206, 203, 196));
            QLinearGradient pane(window.topLeft(), window.bottomRight()); // sky in the glass
            const int tone = 52 + rng.index(36);
            pane.setColorAt(0, QColor(tone + 40, tone + 46, tone + 52));
            pane.setColorAt(0.5, QColor(tone, tone + 4, tone + 8));
            pane.setColorAt(1, QColor(tone - 22, tone - 20, tone - 18));
            painter.fillRect(window, pane);
            if (rng.uniform() < 0.4f)
                painter.fillRect(QRectF(window.left(),
                                     window.top(),
                                     window.width(),
                                     window.height() * rng.range(0.2f, 0.5f)),
                    QColor(196, 190, 178, 190)); // blind
            painter.fillRect(QRectF(window.center().x() - 1.5, window.top(), 3, window.height()),
                QColor(206, 203, 196));
            painter.fillRect(QRectF(window.left() - 7, window.bottom() + 4, window.width() + 14, 5),
                QColor(150, 146, 140));
        }
}

void paintHedge(QPainter& painter, const QRectF& rect, std::uint32_t seed)
{
    Rng rng(seed);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(34, 42, 28));
    painter.drawRect(rect.adjusted(0, 10, 0, 0));
    const int count = int(rect.width() * rect.height() / 26);
    for (int i = 0; i < count; ++i) { // lighter leaves towards the top
        const double t = rng.uniform(), x = rect.left() + rng.uniform() * rect.width();
        const double wave =
            7 * noise2(float(x) * 0.012f, 1, seed) + 4 * noise2(float(x) * 0.06f, 2, seed);
        const double light = (1 - t) * 30 + 14 * noise2(float(x) * 0.03f, float(t) * 3, seed + 1)
            + rng.range(-14, 14);
        painter.setBrush(QColor(std::clamp(int(46 + light), 16, 140),
            std::clamp(int(54 + light), 20, 150),
            std::clamp(int(34 + light * 0.6), 14, 110)));
        painter.drawEllipse(QPointF(x, rect.top() + wave + t * rect.height()),
            rng.range(2, 5),
            rng.range(1.5f, 3.5f));
    }
}

} // namespace wainscot::samples
