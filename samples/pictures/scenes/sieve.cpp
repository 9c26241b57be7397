// A sieve on the sand pit with what stayed in it, and the yard as a panorama.
#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"
#include "samples/pictures/scenes/leaves.h"
#include "samples/pictures/scenes/scenes.h"
#include "samples/pictures/scenes/solid.h"

namespace wainscot::samples {
namespace {

constexpr float kRing = 0.105f, kRingHeight = 0.045f, kMeshLift = 0.012f;

float ringDistance(Vec3 p)
{
    const float radial = length(Vec2{p.x, p.y}) - kRing;
    const Vec2 q{
        std::fabs(radial) - 0.0022f, std::fabs(p.z - kRingHeight * 0.5f) - kRingHeight * 0.5f};
    float d = length(Vec2{std::max(q.x, 0.f), std::max(q.y, 0.f)})
        + std::min(0.0f, std::max(q.x, q.y)) - 0.0008f;
    d = std::min(d, torus(p - Vec3{0, 0, kRingHeight}, kRing, 0.0036f));
    // Handle towards +x.
    d = smoothMin(d,
        capsule(p,
            {kRing, 0.0f, kRingHeight * 0.75f},
            {kRing + 0.15f, 0.012f, kRingHeight * 0.9f},
            0.009f,
            0.0115f),
        0.006f);
    return d;
}

struct Pebble {
    Vec3 at, radii;
    float turn;
    Vec3 color;
};

std::vector<Pebble> sievedPebbles(std::uint32_t seed)
{
    Rng rng(seed);
    std::vector<Pebble> pebbles;
    for (int i = 0; i < 34; ++i) {
        const float a = rng.range(0, 6.28f), r = 0.088f * std::sqrt(rng.uniform()),
                    s = rng.range(0.0035f, 0.010f);
        const Vec3 radii{
            s * rng.range(0.9f, 1.5f), s * rng.range(0.8f, 1.1f), s * rng.range(0.55f, 0.85f)};
        static const Vec3 colors[] = {srgb(0x8d867c),
            srgb(0xa89a86),
            srgb(0x6c6864),
            srgb(0xc4b8a2),
            srgb(0x7d5e48),
            srgb(0x9c8f8a)};
        pebbles.push_back({{r * std::cos(a), r * std::sin(a), kMeshLift + radii.z * 0.9f},
            radii,
            rng.range(0, 3.1f),
            colors[rng.index(6)] * rng.range(0.75f, 1.1f)});
    }
    return pebbles;
}

} // namespace

QImage sieveOnSand(QSize size, std::uint32_t seed)
{
    const GroundMaterial sand(GroundMaterial::Kind::Sand, seed);
    QImage scenery = SkyDome::emptyScenery();
    {
        QPainter painter(&scenery);
        paintBareTree(painter,
            {scenery.width() * 0.4, double(scenery.height())},
            TreeStyle{44, 300, 10, 28, QColor(46, 40, 36)},
            seed + 6);
    }
    const SkyDome sky(Weather::Clear, scenery, 0.6f, seed + 20);
    PuddleGround ground(sand, sky);
    ground.shape = {{0, 0}, {9, 9}, 0, 0.0f, 0, 0, 0, seed, true};
    ground.tint = {1.25f, 1.02f, 0.74f};
    ground.light.sunDir = normalize(Vec3{-0.7f, 0.45f, 0.62f});
    ground.light.sun = {2.3f, 2.1f, 1.75f};
    ground.light.sky = {0.42f, 0.52f, 0.70f};
    const std::vector<Pebble> pebbles = sievedPebbles(seed + 3);
    const auto pebbleDistance = [&](Vec3 p, int& index) {
        float best = 1e9f;
        const float outside = std::max(std::sqrt(p.x * p.x + p.y * p.y) - 0.100f, p.z - 0.034f);
        if (outside > 0.004f)
            return outside;
        for (size_t i = 0; i < pebbles.size(); ++i) {
            const Pebble& b = pebbles[i];
            const Vec3 off = p - b.at;
            if (dot(off, off) > 0.0009f) {
                best = std::min(best, std::sqrt(dot(off, off)) - 0.016f);
                continue;
            }
            const Vec2 q = rotate({off.x, off.y}, b.turn);
            const float d = ellipsoid({q.x, q.y, off.z}, b.radii) * 0.8f;
            if (d < best) {
                best = d;
                index = int(i);
            }
        }
        return best;
    };
    const auto map = [&](Vec3 p) {
        int i;
        return std::min(ringDistance(p), pebbleDistance(p, i));
    };
    const Bounds bounds{{0.06f, 0, 0.02f}, 0.225f};
    const auto bumps = [&](Vec2 p) {
        return 0.014f * fbm2(p.x * 5, p.y * 5, 3, seed + 8)
            + 0.006f * noise2(p.x * 18, p.y * 18, seed + 9);
    };
    ground.extraHeight = bumps;
    ground.object = [&](const Ray& ray, Sample& out) {
        float near, far, t;
        if (!bounds.hit(ray, near, far))
            return false;
        if (ray.dir.z < 0) { // only the slab between ground and rim matters
            near = std::max(near, (0.062f - ray.origin.z) / ray.dir.z);
            far = std::min(far, -ray.origin.z / ray.dir.z + 0.01f);
        }
        if (!march(map, ray, near, far, t, 60))
            return false;
        const Vec3 p = ray.origin + ray.dir * t;
        if (p.z < 0)
            return false;
        const Vec3 n = mapNormal(map, p, 0.0004f);
        int index = -1;
        const bool isPebble = pebbleDistance(p, index) < ringDistance(p);
        Finish m;
        if (isPebble) {
            m = {pebbles[size_t(index)].color
                    * (0.85f + 0.4f * fbm3(p.x * 300, p.y * 300, p.z * 300, 3, 5)),
                0.25f,
                4.5f,
                20,
                0};
        } else if (p.x > kRing + 0.012f) {
            const float grain = noise3(p.x * 60, p.y * 700, p.z * 700, 8);
            m = {srgb(0xb4834e) * (0.9f + 0.25f * grain), 0.3f, 4, 30, 0};
        } else {
            m = {srgb(0x9aa0a4) * (0.8f + 0.1f * noise3(p.x * 20, p.y * 20, p.z * 400, 9)),
                2.2f,
                3,
                60,
                0};
        }
        const float open = (0.45f + 0.55f * ambientOpenness(map, p, n, 0.02f))
            * (0.55f + 0.45f * smoothstep(0.0f, 0.03f, p.z));
        const float sunlit = dot(n, ground.light.sunDir) < 0
            ? 0.0f
            : softShadow(map, p + n * 0.0012f, ground.light.sunDir, 0.25f, 0.02f);
        out.color =
            lightSolid(m, n, ray.dir, ground.light, sky, open, sunlit, Vec3{0.5f, 0.4f, 0.28f});
        out.depth = t;
        out.part = std::uint8_t(isPebble ? 60 + index : 50);
        return true;
    };
    ground.sunVisible = [&](Vec2 p) {
        if (length(p - Vec2{0.1f, -0.02f}) > 0.36f)
            return 1.0f;
        const Vec3 from{p.x, p.y, 0.001f};
        float lit = length(p) < kRing + 0.03f
            ? softShadow(map, from, ground.light.sunDir, 0.3f, 0.02f)
            : softShadow(ringDistance, from, ground.light.sunDir, 0.3f, 0.02f);
        const Vec2 through = p
            + Vec2{ground.light.sunDir.x, ground.light.sunDir.y}
                * (kMeshLift / ground.light.sunDir.z);
        if (length(through) < kRing)
            lit *= 0.66f;
        return lit;
    };
    ground.occlusion = [&](Vec2 p) {
        return length(p - Vec2{0.06f, 0}) > 0.25f
            ? 1.0f
            : clamp01(0.45f + 14.0f * ringDistance({p.x, p.y, 0.012f}));
    };
    LeafLitter litter(seed + 40);
    litter.scatter({-0.5f, -0.35f}, {0.5f, 0.6f}, 7, 0.04f, 0.06f, seed + 44);
    litter.add({{-0.03f, 0.03f}, 0.6f, 0.05f, 3, srgb(0xb08a34), 0.5f});
    litter.add({{0.04f, -0.04f}, 2.4f, 0.055f, 1, srgb(0x8a5a34), -0.6f});
    ground.overlay = [&](Vec2 p, float footprint) {
        Overlay over = litter.at(p, footprint);
        over.gloss *= 0.2f;
        if (over.alpha > 0.5f || length(p) > kRing)
            return over;
        constexpr float kPitch = 0.0030f, kWire = 0.00055f;
        const Vec2 q = rotate(p, 0.5f);
        const float wx = std::fabs(q.x / kPitch - std::round(q.x / kPitch)) * kPitch,
                    wy = std::fabs(q.y / kPitch - std::round(q.y / kPitch)) * kPitch;
        const float soft = std::max(0.00008f, footprint * 0.6f);
        const float ax = smoothstep(kWire + soft, kWire - soft, wx),
                    ay = smoothstep(kWire + soft, kWire - soft, wy);
        over.alpha = std::max(ax, ay);
        const float weave = 0.85f + 0.3f * std::sin((ax > ay ? q.y : q.x) / kPitch * kPi);
        over.color = Vec3{0.40f, 0.41f, 0.42f} * weave;
        over.gloss = 0.8f;
        over.shadow = 0.25f;
        return over;
    };
    Camera camera{{0.02f, -0.36f, 0.36f}, {0.045f, 0.0f, 0.012f}, 50, 3.0f};
    ground.prepare();
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return ground.shade(r); });
    Film film;
    film.exposure = 0.85f;
    film.contrast = 1.15f;
    film.focus = 0.50f;
    film.lensBlur = 0.010f;
    film.whiteBalance = {1.02f, 1.0f, 0.97f};
    return develop(buffer, size.width(), size.height(), film, seed);
}

QImage yardPanorama(QSize size, std::uint32_t seed)
{
    const GroundMaterial asphalt(GroundMaterial::Kind::Asphalt, seed);
    QImage scenery = SkyDome::emptyScenery();
    QPainter painter(&scenery);
    const double w = scenery.width(), h = scenery.height();
    Rng rng(seed);
    painter.setRenderHint(QPainter::Antialiasing);
    paintBareTree(
        painter, {w * 0.30, h * 0.975}, TreeStyle{34, 190, 10, 28, QColor(66, 58, 52)}, seed + 2);
    paintHouse(painter, {w * 0.56, h * 0.79, w * 0.36, h * 0.22}, QColor(176, 160, 142), seed);
    painter.setPen(Qt::NoPen);
    paintHedge(painter, {0, h * 0.925, w * 0.56, h * 0.085}, seed + 7);
    for (double x = 0; x < w * 0.57; x += 7.5) { // slatted fence
        const int tone = 70 + rng.index(24);
        painter.fillRect(QRectF(x, h * 0.962 + rng.range(-1, 1), 6, h * 0.04),
            QColor(tone + 8, tone, tone - 12));
    }
    painter.fillRect(QRectF(0, h * 0.972, w * 0.57, 3), QColor(88, 82, 74));
    painter.fillRect(
        QRectF(w * 0.56, h * 0.988, w * 0.36, h * 0.02), QColor(112, 110, 106)); // plinth
    paintHedge(painter, {w * 0.92, h * 0.94, w * 0.08, h * 0.07}, seed + 8);
    paintBareTree(
        painter, {w * 0.08, h * 0.99}, TreeStyle{36, 200, 10, 28, QColor(58, 50, 45)}, seed + 3);
    paintBareTree(
        painter, {w * 0.50, h * 0.985}, TreeStyle{30, 170, 10, 28, QColor(64, 56, 50)}, seed + 4);
    painter.end();
    const SkyDome sky(Weather::Breaking, scenery, 0.75f, seed + 20);
    PuddleGround ground(asphalt, sky);
    ground.shape = {
        {-0.3f, 5.2f}, {3.1f, 1.35f}, 0.05f, 0.06f, 0.0f, 0.012f, 1.1f, seed + 4, false};
    ground.light.sky = {0.95f, 1.0f, 1.08f};
    ground.overallWet = 0.6f;
    ground.breeze = 0.002f;
    ground.extraHeight = [&](Vec2 p) { // smaller puddles around
        return -0.03f * smoothstep(0.30f, 0.50f, fbm2(p.x * 0.5f + 3, p.y * 0.5f, 3, seed + 9));
    };
    LeafLitter litter(seed + 40);
    litter.scatter({-3.1f, 1.8f}, {3.1f, 3.1f}, 60, 0.07f, 0.11f, seed + 43);
    ground.overlay = [&](Vec2 p, float footprint) { return litter.at(p, footprint); };
    Camera camera{{0, -0.4f, 1.35f}, {0, 4.0f, 1.0f}, 86, 0.4f};
    ground.prepare();
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return ground.shade(r); });
    Film film;
    film.exposure = 2.0f;
    film.contrast = 1.12f;
    film.vignette = 0.15f;
    return develop(buffer, size.width(), size.height(), film, seed);
}

} // namespace wainscot::samples
