// Asphalt puddles: reflections, rain, and the chalk investigation.
#include <QPainterPath>

#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"
#include "samples/pictures/scenes/puddle.h"
#include "samples/pictures/scenes/scenes.h"

namespace wainscot::samples {
namespace {

QImage treesAndHouse(std::uint32_t seed, bool house)
{
    QImage scenery = SkyDome::emptyScenery();
    QPainter painter(&scenery);
    const double w = scenery.width(), h = scenery.height();
    if (house)
        paintHouse(
            painter, {w * 0.60, h * 0.74, w * 0.34, h * 0.27}, QColor(176, 158, 132), seed + 3);
    TreeStyle far{24, 170, 8, 28, QColor(70, 66, 62)};
    paintBareTree(painter, {w * 0.12, h + 10}, far, seed + 1);
    paintBareTree(painter, {w * 0.86, h + 10}, far, seed + 2);
    TreeStyle near{58, 330, 11, 27, QColor(34, 29, 26)};
    paintBareTree(painter, {w * 0.40, h + 40}, near, seed + 6);
    return scenery;
}

struct ChalkLine {
    QColor color;
    double scale; // outline size against the puddle's rim
    double width; // metres
};

// Hand-drawn outlines at several sizes, as a picture covering `rect` of the ground.
Texture paintChalk(const PuddleGround& ground,
    const QRectF& rect,
    const std::vector<ChalkLine>& lines,
    std::uint32_t seed)
{
    constexpr int kPixels = 1536;
    QImage image(
        kPixels, int(kPixels * rect.height() / rect.width()), QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    const double scale = kPixels / rect.width();
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    Rng rng(seed);
    for (const ChalkLine& line : lines) {
        // March outwards along each bearing until the bowl reaches the wanted height.
        std::vector<QPointF> outline;
        constexpr int kBearings = 120;
        for (int i = 0; i <= kBearings + 4; ++i) {
            const float a = float(i % kBearings) * 2 * kPi / kBearings;
            float r = 0.02f;
            while (r < 2.5f
                && ground.bowl({ground.shape.center.x + r * std::cos(a),
                       ground.shape.center.y + r * std::sin(a)})
                    < float(line.scale))
                r += 0.004f;
            r += 0.012f + 0.012f * noise2(float(i) * 0.11f, float(line.scale) * 900, seed);
            const float x = ground.shape.center.x + r * std::cos(a),
                        y = ground.shape.center.y + r * std::sin(a);
            outline.push_back({(x - rect.left()) * scale, (y - rect.top()) * scale});
        }
        const double w = line.width * scale;
        for (size_t i = 2; i + 2 < outline.size(); ++i) {
            const auto mean = [&](size_t k) {
                return (outline[k - 2] + outline[k - 1] + outline[k] + outline[k + 1]
                           + outline[k + 2])
                    / 5.0;
            };
            if (i + 3 >= outline.size())
                break;
            QColor c = line.color;
            c.setAlphaF(
                std::clamp(0.72 + 0.2 * double(noise2(float(i) * 0.3f, 2, seed + 9)), 0.3, 1.0));
            painter.setPen(QPen(c,
                w * (0.9 + 0.25 * double(noise2(float(i) * 0.21f, 7, seed))),
                Qt::SolidLine,
                Qt::RoundCap));
            painter.drawLine(mean(i), mean(i + 1));
        }
    }
    painter.end();
    return textureFromImage(image, Texture::Edge::Clamp);
}

Overlay chalkAt(const Texture& chalk, const QRectF& rect, Vec2 p, float footprint)
{
    Overlay over;
    const float u = (p.x - float(rect.left())) / float(rect.width()),
                v = (p.y - float(rect.top())) / float(rect.height());
    if (u < 0 || v < 0 || u > 1 || v > 1)
        return over;
    const float lod =
        std::log2(std::max(1.0f, footprint * float(chalk.width()) / float(rect.width())));
    const Texel t = chalk.sample(u, v, lod);
    if (t.v[3] < 0.01f)
        return over;
    const float inv = 1.0f / std::max(0.05f, t.v[3]);
    over.color =
        Vec3{std::min(1.f, t.v[0] * inv), std::min(1.f, t.v[1] * inv), std::min(1.f, t.v[2] * inv)}
        * 0.85f;
    over.alpha = t.v[3];
    over.grip = 0.95f;
    return over;
}

// Leafless twigs between the sun and the ground.
Texture twigShadow(std::uint32_t seed)
{
    QImage image(1024, 1024, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    TreeStyle style{30, 210, 9, 30, Qt::black};
    paintBareTree(painter, {300, 1060}, style, seed);
    painter.end();
    return textureFromImage(image, Texture::Edge::Clamp);
}

} // namespace

QImage puddleWithBranches(QSize size, std::uint32_t seed)
{
    const GroundMaterial asphalt(GroundMaterial::Kind::Asphalt, seed);
    const SkyDome sky(Weather::Breaking, treesAndHouse(seed, true), 0.55f, seed + 20);
    PuddleGround ground(asphalt, sky);
    ground.shape = {
        {0.05f, 0.55f}, {1.05f, 0.85f}, 0.2f, 0.03f, 0.0f, 0.008f, 1.0f, seed + 4, false};
    ground.light.sky = {0.95f, 1.0f, 1.08f};
    ground.overallWet = 0.55f;
    ground.rings = {{{-0.18f, 0.42f}, 0.16f, 0.0006f, 0.022f, 0.03f},
        {{-0.18f, 0.42f}, 0.06f, 0.0004f, 0.016f, 0.02f},
        {{0.42f, 0.9f}, 0.09f, 0.0005f, 0.02f, 0.02f}};
    Camera camera{{0.0f, -1.15f, 0.78f}, {0.02f, 0.30f, 0.0f}, 58, -1.2f};
    ground.prepare();
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return ground.shade(r); });
    Film film;
    film.exposure = 2.7f;
    film.contrast = 1.2f;
    film.saturation = 1.08f;
    film.focus = 1.9f;
    film.lensBlur = 0.0022f;
    return develop(buffer, size.width(), size.height(), film, seed);
}

QImage puddleRaindrops(QSize size, std::uint32_t seed)
{
    const GroundMaterial asphalt(GroundMaterial::Kind::Asphalt, seed);
    const SkyDome sky(Weather::Overcast, treesAndHouse(seed, false), 0.5f, seed + 20);
    PuddleGround ground(asphalt, sky);
    ground.shape = {{0.0f, 0.15f}, {0.8f, 0.62f}, 0.5f, 0.03f, 0.0f, 0.01f, 1.0f, seed + 4, false};
    ground.overallWet = 0.95f;
    ground.breeze = 0.002f;
    ground.rings = rainRings({0, 0.1f}, {0.55f, 0.5f}, 64, seed + 8);
    Camera camera{{0.05f, -0.66f, 0.42f}, {0.0f, -0.10f, 0.0f}, 50, 1.5f};
    ground.prepare();
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return ground.shade(r); });
    Film film;
    film.exposure = 2.9f;
    film.contrast = 1.3f;
    film.saturation = 0.95f;
    film.focus = 0.72f;
    film.lensBlur = 0.005f;
    film.whiteBalance = {0.97f, 1.0f, 1.04f};
    return develop(buffer, size.width(), size.height(), film, seed);
}

namespace {

QImage chalkPicture(QSize size,
    std::uint32_t seed,
    float level,
    bool dry,
    const std::vector<ChalkLine>& lines,
    float sunTurn,
    const Camera& camera)
{
    const GroundMaterial asphalt(GroundMaterial::Kind::Asphalt, seed);
    const SkyDome sky(Weather::Clear, treesAndHouse(seed + 1, true), 0.7f, seed + 21);
    PuddleGround ground(asphalt, sky);
    ground.shape = {
        {0.0f, 0.1f}, {0.78f, 0.52f}, 0.15f, 0.030f, level, 0.006f, 1.0f, seed + 4, dry};
    ground.light.sunDir = normalize(Vec3{std::cos(sunTurn), std::sin(sunTurn), 0.62f});
    ground.light.sun = Vec3{2.5f, 2.3f, 1.95f};
    ground.light.sky = Vec3{0.42f, 0.52f, 0.72f};
    const QRectF rect(-1.4, -1.2, 2.8, 2.6);
    const Texture chalk = paintChalk(ground, rect, lines, seed + 30);
    const Texture twigs = twigShadow(seed + 31);
    ground.overlay = [&](Vec2 p, float footprint) { return chalkAt(chalk, rect, p, footprint); };
    ground.sunVisible = [&](Vec2 p) {
        const float u = (p.x + 1.7f) / 3.0f, v = 1.0f - (p.y + 0.6f) / 3.0f;
        return 1.0f - 0.85f * twigs.sample(u, v, 1.8f + 1.2f * clamp01(1 - v)).v[3];
    };
    ground.prepare();
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return ground.shade(r); });
    Film film;
    film.exposure = 1.35f;
    film.contrast = 1.15f;
    film.focus = length(camera.position - camera.target);
    film.lensBlur = 0.0015f;
    film.whiteBalance = {1.02f, 1.0f, 0.97f};
    return develop(buffer, size.width(), size.height(), film, seed);
}

const QColor kWhite(244, 242, 236), kBlue(120, 168, 226), kPink(240, 150, 176),
    kYellow(246, 222, 110);

} // namespace

QImage chalkFirstDay(QSize size, std::uint32_t seed)
{
    const Camera camera{{-0.1f, -1.35f, 1.12f}, {0.0f, 0.05f, 0.0f}, 58, 2.0f};
    return chalkPicture(size, seed, 0.0f, false, {{kWhite, 0.0005, 0.017}}, 2.2f, camera);
}

QImage chalkShrinking(QSize size, std::uint32_t seed)
{
    const Camera camera{{0.22f, -1.10f, 1.40f}, {0.03f, 0.08f, 0.0f}, 57, -2.5f};
    return chalkPicture(size,
        seed,
        -0.0125f,
        false,
        {{kWhite, 0.0005, 0.015}, {kBlue, -0.0045, 0.017}, {kPink, -0.0105, 0.016}},
        2.6f,
        camera);
}

QImage puddleGone(QSize size, std::uint32_t seed)
{
    const Camera camera{{0.0f, -1.1f, 1.7f}, {0.0f, 0.1f, 0.0f}, 52, 1.0f};
    return chalkPicture(size,
        seed,
        -0.03f,
        true,
        {{kWhite, 0.0005, 0.014},
            {kBlue, -0.0045, 0.016},
            {kPink, -0.0105, 0.015},
            {kYellow, -0.017, 0.017}},
        1.2f,
        camera);
}

} // namespace wainscot::samples
