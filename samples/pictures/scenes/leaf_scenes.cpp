// Ground seen from close by: leaves, a string round the puddle, prints in mud.
#include <QPainterPath>

#include <array>

#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"
#include "samples/pictures/scenes/leaves.h"
#include "samples/pictures/scenes/scenes.h"

namespace wainscot::samples {
namespace {

QImage hedgeScenery(std::uint32_t seed)
{
    QImage scenery = SkyDome::emptyScenery();
    QPainter painter(&scenery);
    const double w = scenery.width(), h = scenery.height();
    paintHedge(painter, {0, h * 0.90, w, h * 0.11}, seed);
    paintBareTree(painter, {w * 0.3, h}, TreeStyle{40, 300, 10, 28, QColor(40, 34, 30)}, seed + 5);
    paintBareTree(painter, {w * 0.75, h}, TreeStyle{32, 240, 9, 30, QColor(50, 44, 40)}, seed + 6);
    return scenery;
}

// The closed line where the bowl reaches a height, by bearing from the centre.
class RimLine {
public:
    RimLine(const PuddleGround& ground, float height, float outside, std::uint32_t seed)
        : m_center(ground.shape.center)
    {
        for (int i = 0; i < kSteps; ++i) {
            const float a = float(i) * 2 * kPi / kSteps;
            float r = 0.02f;
            while (r < 2 && ground.bowl(m_center + Vec2{std::cos(a), std::sin(a)} * r) < height)
                r += 0.003f;
            m_radius[size_t(i)] =
                r + outside * (1.0f + 0.8f * noise2(std::cos(a) * 3, std::sin(a) * 3, seed));
        }
        for (int pass = 0; pass < 60; ++pass) { // a string does not take sharp corners
            const auto before = m_radius;
            for (int i = 0; i < kSteps; ++i)
                m_radius[size_t(i)] =
                    (before[size_t((i + kSteps - 1) % kSteps)] + before[size_t(i)] * 2
                        + before[size_t((i + 1) % kSteps)])
                    * 0.25f;
        }
        float length = 0;
        for (int i = 0; i <= kSteps; ++i) {
            m_length[size_t(i)] = length;
            length += std::hypot(m_radius[size_t((i + 1) % kSteps)] - m_radius[size_t(i % kSteps)],
                m_radius[size_t(i % kSteps)] * 2 * kPi / kSteps);
        }
    }
    // Signed distance across the line and distance along it.
    void locate(Vec2 p, float& across, float& along) const
    {
        const Vec2 d = p - m_center;
        const float turn = std::atan2(d.y, d.x) / (2 * kPi), t = (turn - std::floor(turn)) * kSteps;
        const int i = std::min(int(t), kSteps - 1);
        const float f = t - float(i), a = m_radius[size_t(i)],
                    b = m_radius[size_t((i + 1) % kSteps)];
        const float radius = mix(a, b, f), steep = (b - a) / (radius * 2 * kPi / kSteps);
        across = (length(d) - radius) / std::sqrt(1 + steep * steep);
        along = mix(m_length[size_t(i)], m_length[size_t(i) + 1], f);
    }

private:
    static constexpr int kSteps = 360;
    Vec2 m_center;
    std::array<float, kSteps> m_radius{};
    std::array<float, kSteps + 1> m_length{};
};

Overlay woolString(const RimLine& line, Vec2 p, Vec2 toSun)
{
    constexpr float kRadius = 0.0042f;
    Overlay over;
    float across = 0, along = 0;
    line.locate(p, across, along);
    const float fuzz = kRadius
        * (1.0f + 0.16f * noise2(along * 900, across * 400, 5) + 0.1f * noise2(along * 60, 3, 6));
    const float t = across / fuzz;
    if (std::fabs(t) < 1) {
        const float twist = std::sin(along * 2 * kPi / 0.0085f + t * 1.9f);
        const float fibre = noise2(along * 700 + t * 3, t * 5, 7);
        over.color = srgb(0xc22a2c) * (0.62f + 0.3f * twist + 0.25f * fibre + 0.25f * (1 - t * t));
        over.alpha = smoothstep(1.0f, 0.85f, std::fabs(t));
        over.part = 9;
        over.floats = true;
        over.gloss = 0.05f;
        return over;
    }
    line.locate(p + toSun * 0.004f, across, along);
    over.shadow = 0.62f * smoothstep(kRadius * 1.5f, kRadius * 0.5f, std::fabs(across));
    return over;
}

// Depth of a boot print, 0..1, as a picture: toe up.
Texture paintSole()
{
    QImage image(256, 512, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::black);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    QPainterPath sole;
    sole.moveTo(128, 30);
    sole.cubicTo(215, 30, 228, 150, 205, 240);
    sole.cubicTo(190, 300, 196, 330, 200, 400);
    sole.cubicTo(200, 470, 165, 490, 130, 490);
    sole.cubicTo(90, 490, 62, 465, 66, 400);
    sole.cubicTo(72, 330, 66, 300, 48, 240);
    sole.cubicTo(25, 150, 50, 30, 128, 30);
    painter.fillPath(sole, QColor(165, 165, 165));
    painter.setClipPath(sole);
    painter.setPen(QPen(QColor(255, 255, 255), 15, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    for (int y = 20; y < 290; y += 40)
        painter.drawPolyline(QPolygonF({QPointF(30, y + 34),
            QPointF(80, y),
            QPointF(128, y + 34),
            QPointF(176, y),
            QPointF(226, y + 34)}));
    for (int y = 360; y < 500; y += 36)
        painter.drawLine(QPointF(50, y), QPointF(216, y));
    painter.end();
    Texture texture = textureFromImage(image, Texture::Edge::Clamp);
    return texture;
}

struct Print {
    Vec2 at;
    float angle, size;
    bool left;
};

float printDepth(const Texture& sole, const std::vector<Print>& prints, Vec2 p)
{
    float height = 0;
    for (const Print& print : prints) {
        Vec2 q = rotate(p - print.at, -print.angle) * (1.0f / print.size);
        if (std::fabs(q.x) > 0.45f || std::fabs(q.y) > 0.75f)
            continue;
        if (print.left)
            q.x = -q.x;
        const float u = q.x / 0.5f + 0.5f, v = 0.5f - q.y;
        const float sharp = sole.sample(u, v, 2.3f).v[0], soft = sole.sample(u, v, 4.6f).v[0];
        const float inside = clamp01(sharp * 1.6f);
        height += print.size * 4
            * (-0.010f * sharp - 0.004f * inside + 0.012f * soft * (1 - inside)); // pushed-up rim
    }
    return height == 0 ? 0
                       : height
            * (1.0f + 0.5f * noise2(p.x * 38, p.y * 38, 21)
                + 0.25f * noise2(p.x * 130, p.y * 130, 22));
}

} // namespace

QImage wetLeaves(QSize size, std::uint32_t seed)
{
    const GroundMaterial stone(GroundMaterial::Kind::Stone, seed);
    const SkyDome sky(Weather::Overcast, hedgeScenery(seed), 0.5f, seed + 20);
    PuddleGround ground(stone, sky);
    ground.shape = {
        {-0.32f, 0.28f}, {0.36f, 0.25f}, 0.6f, 0.012f, 0.0f, 0.02f, 1.0f, seed + 4, false};
    ground.light.sky = {0.95f, 0.98f, 1.02f};
    ground.overallWet = 0.85f;
    ground.tint = {1.0f, 0.96f, 0.90f};
    ground.extraHeight = [](Vec2 p) { // joints between slabs
        const Vec2 q = rotate(p, 0.35f);
        const float row = std::floor(q.y / 0.3f);
        const float x = q.x / 0.4f + 0.5f * std::fmod(std::fabs(row), 2.0f), y = q.y / 0.3f;
        const float edge =
            std::min(std::fabs(x - std::round(x)) * 0.4f, std::fabs(y - std::round(y)) * 0.3f);
        return -0.0035f * smoothstep(0.009f, 0.001f, edge + 0.002f * noise2(p.x * 60, p.y * 60, 8));
    };
    LeafLitter litter(seed + 40);
    litter.scatter({-0.75f, -0.5f}, {0.75f, 0.9f}, 120, 0.05f, 0.10f, seed + 41);
    ground.overlay = [&](Vec2 p, float footprint) { return litter.at(p, footprint); };
    Camera camera{{0.03f, -0.42f, 0.50f}, {0.0f, 0.06f, 0.0f}, 54, 3.0f};
    ground.prepare();
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return ground.shade(r); });
    Film film;
    film.exposure = 1.75f;
    film.contrast = 1.2f;
    film.saturation = 1.05f;
    film.focus = 0.78f;
    film.lensBlur = 0.009f;
    return develop(buffer, size.width(), size.height(), film, seed);
}

QImage stringAroundPuddle(QSize size, std::uint32_t seed)
{
    const GroundMaterial asphalt(GroundMaterial::Kind::Asphalt, seed);
    const SkyDome sky(Weather::Breaking, hedgeScenery(seed), 0.5f, seed + 23);
    PuddleGround ground(asphalt, sky);
    ground.shape = {
        {0.0f, 0.12f}, {0.46f, 0.34f}, 0.4f, 0.03f, -0.004f, 0.008f, 0.9f, seed + 4, false};
    ground.light.sunDir = normalize(Vec3{0.75f, 0.4f, 0.55f});
    ground.light.sun = {1.9f, 1.75f, 1.5f};
    ground.light.sky = {0.5f, 0.58f, 0.72f};
    const RimLine rim(ground, 0.001f, 0.014f, seed + 50);
    LeafLitter litter(seed + 40);
    litter.scatter({-0.9f, -0.5f}, {0.9f, 1.2f}, 13, 0.05f, 0.08f, seed + 47);
    const Vec2 toSun{ground.light.sunDir.x, ground.light.sunDir.y};
    ground.overlay = [&](Vec2 p, float footprint) {
        const Overlay wool = woolString(rim, p, toSun);
        return wool.alpha > 0 || wool.shadow > 0.02f ? wool : litter.at(p, footprint);
    };
    Camera camera{{-0.12f, -0.82f, 0.78f}, {0.0f, 0.10f, 0.0f}, 54, -3.0f};
    ground.prepare();
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return ground.shade(r); });
    Film film;
    film.exposure = 1.3f;
    film.contrast = 1.15f;
    film.focus = 1.2f;
    film.lensBlur = 0.004f;
    film.whiteBalance = {1.03f, 1.0f, 0.95f};
    return develop(buffer, size.width(), size.height(), film, seed);
}

QImage mudPrints(QSize size, std::uint32_t seed)
{
    const GroundMaterial soil(GroundMaterial::Kind::Soil, seed);
    const SkyDome sky(Weather::Breaking, hedgeScenery(seed), 0.5f, seed + 22);
    PuddleGround ground(soil, sky);
    ground.shape = {
        {0.6f, 0.9f}, {0.5f, 0.4f}, 0.4f, 0.006f, -0.0085f, 0.1f, 1.0f, seed + 4, false};
    ground.light.sunDir = normalize(Vec3{-0.8f, 0.5f, 0.45f});
    ground.light.sun = {1.2f, 1.12f, 0.98f};
    ground.light.sky = {0.6f, 0.66f, 0.78f};
    ground.tint = {1.25f, 0.95f, 0.66f};
    ground.waterTint = {0.12f, 0.085f, 0.05f};
    ground.murk = 90;
    ground.overallWet = 0.5f;
    const Texture sole = paintSole();
    Rng rng(seed + 9);
    std::vector<Print> prints;
    prints.reserve(8);
    for (int i = 0; i < 5; ++i)
        prints.push_back(
            {{-0.22f + 0.06f * float(i) + (i % 2 ? 0.075f : -0.075f) + rng.range(-0.02f, 0.02f),
                 -0.46f + 0.30f * float(i)},
                -0.12f + rng.range(-0.15f, 0.15f),
                0.30f,
                i % 2 == 0});
    prints.push_back({{0.27f, 0.10f}, 0.8f, 0.27f, false});
    ground.extraHeight = [&](Vec2 p) { return printDepth(sole, prints, p); };
    ground.flatten = [&](Vec2 p) { return clamp01(-140.0f * printDepth(sole, prints, p)); };
    Camera camera{{0.05f, -0.72f, 0.86f}, {0.0f, -0.02f, 0.0f}, 44, -2.0f};
    ground.prepare();
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return ground.shade(r); });
    Film film;
    film.exposure = 1.9f;
    film.contrast = 1.15f;
    film.focus = 1.05f;
    film.lensBlur = 0.005f;
    film.whiteBalance = {1.03f, 1.0f, 0.95f};
    return develop(buffer, size.width(), size.height(), film, seed);
}

} // namespace wainscot::samples
