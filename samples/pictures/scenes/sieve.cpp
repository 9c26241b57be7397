// A sieve on the sand pit with what stayed in it.
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

// The sieve with its pebbles, standing on the sand at the origin.
class Sieve {
public:
    explicit Sieve(std::uint32_t seed)
        : m_pebbles(sievedPebbles(seed))
    {
    }

    [[nodiscard]] float distance(Vec3 p) const
    {
        int index = 0;
        return std::min(ringDistance(p), pebbleDistance(p, index));
    }

    bool hit(const Ray& ray, const PuddleGround& ground, const SkyDome& sky, Sample& out) const
    {
        const auto map = [this](Vec3 p) { return distance(p); };
        float near = 0, far = 0, t = 0;
        if (!m_bounds.hit(ray, near, far))
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
        int pebble = -1;
        if (pebbleDistance(p, pebble) >= ringDistance(p))
            pebble = -1;
        const Vec3 toSun = ground.light.sunDir;
        const float open = (0.45f + 0.55f * ambientOpenness(map, p, n, 0.02f))
            * (0.55f + 0.45f * smoothstep(0.0f, 0.03f, p.z));
        const float sunlit =
            dot(n, toSun) < 0 ? 0.0f : softShadow(map, p + n * 0.0012f, toSun, 0.25f, 0.02f);
        const Outdoors around{ground.light, sky, Vec3{0.5f, 0.4f, 0.28f}};
        out.color = lightSolid(finish(p, pebble), n, ray.dir, around, open, sunlit);
        out.depth = t;
        out.part = std::uint8_t(pebble >= 0 ? 60 + pebble : 50);
        return true;
    }

    // How much of the sun reaches the sand: past the rim, and through the wire.
    [[nodiscard]] float sunAt(Vec2 p, Vec3 toSun) const
    {
        if (length(p - Vec2{0.1f, -0.02f}) > 0.36f)
            return 1.0f;
        const Vec3 from{p.x, p.y, 0.001f};
        const auto map = [this](Vec3 q) { return distance(q); };
        float lit = length(p) < kRing + 0.03f ? softShadow(map, from, toSun, 0.3f, 0.02f)
                                              : softShadow(ringDistance, from, toSun, 0.3f, 0.02f);
        const Vec2 through = p + Vec2{toSun.x, toSun.y} * (kMeshLift / toSun.z);
        if (length(through) < kRing)
            lit *= 0.66f;
        return lit;
    }

private:
    // `index` is the nearest pebble; as it was when none is near.
    float pebbleDistance(Vec3 p, int& index) const
    {
        float best = 1e9f;
        const float outside = std::max(std::sqrt(p.x * p.x + p.y * p.y) - 0.100f, p.z - 0.034f);
        if (outside > 0.004f)
            return outside;
        for (size_t i = 0; i < m_pebbles.size(); ++i) {
            const Pebble& b = m_pebbles[i];
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
    }

    [[nodiscard]] Finish finish(Vec3 p, int index) const
    {
        if (index >= 0) {
            return {m_pebbles[size_t(index)].color
                    * (0.85f + 0.4f * fbm3(p.x * 300, p.y * 300, p.z * 300, 3, 5)),
                0.25f,
                4.5f,
                20,
                0};
        }
        if (p.x > kRing + 0.012f) {
            const float grain = noise3(p.x * 60, p.y * 700, p.z * 700, 8);
            return {srgb(0xb4834e) * (0.9f + 0.25f * grain), 0.3f, 4, 30, 0};
        }
        const float brushed = noise3(p.x * 20, p.y * 20, p.z * 400, 9);
        return {srgb(0x9aa0a4) * (0.8f + 0.1f * brushed), 2.2f, 3, 60, 0};
    }

    std::vector<Pebble> m_pebbles;
    Bounds m_bounds{{0.06f, 0, 0.02f}, 0.225f};
};

// The wire lies flat and is drawn like something lying on the ground.
Overlay wireAt(Vec2 p, float footprint)
{
    constexpr float kPitch = 0.0030f, kWire = 0.00055f;
    const Vec2 q = rotate(p, 0.5f);
    const float wx = std::fabs(q.x / kPitch - std::round(q.x / kPitch)) * kPitch,
                wy = std::fabs(q.y / kPitch - std::round(q.y / kPitch)) * kPitch;
    const float soft = std::max(0.00008f, footprint * 0.6f);
    const float ax = smoothstep(kWire + soft, kWire - soft, wx),
                ay = smoothstep(kWire + soft, kWire - soft, wy);
    Overlay over;
    over.alpha = std::max(ax, ay);
    const float weave = 0.85f + 0.3f * std::sin((ax > ay ? q.y : q.x) / kPitch * kPi);
    over.color = Vec3{0.40f, 0.41f, 0.42f} * weave;
    over.gloss = 0.8f;
    over.shadow = 0.25f;
    return over;
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
    const Sieve sieve(seed + 3);
    ground.extraHeight = [&](Vec2 p) {
        return 0.014f * fbm2(p.x * 5, p.y * 5, 3, seed + 8)
            + 0.006f * noise2(p.x * 18, p.y * 18, seed + 9);
    };
    ground.object = [&](const Ray& ray, Sample& out) { return sieve.hit(ray, ground, sky, out); };
    ground.sunVisible = [&](Vec2 p) { return sieve.sunAt(p, ground.light.sunDir); };
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
        return over.alpha > 0.5f || length(p) > kRing ? over : wireAt(p, footprint);
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

} // namespace wainscot::samples
