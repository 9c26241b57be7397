// A plastered wall with the prints of one wet hand, the oldest nearly dry.
#include <array>

#include "samples/pictures/light/film.h"
#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"
#include "samples/pictures/scenes/ground.h"
#include "samples/pictures/scenes/scenes.h"

namespace wainscot::samples {
namespace {

constexpr float kHand = 0.128f; // wrist to middle fingertip of a small hand, metres
constexpr float kPlinth = -0.185f; // bricks below this height, plaster above

struct Print {
    Vec2 at; // middle of the palm on the wall: x to the right, y up
    float turn;
    float dryness; // 0 just made .. 1 gone
};

// Where a finger lies on a left hand of length 1, from its root to its tip.
struct Finger {
    Vec2 root, tip;
    float radius = 0;
};
constexpr std::array<Finger, 5> kFingers{{
    {{-0.17f, 0.10f}, {-0.30f, 0.42f}, 0.058f},
    {{-0.07f, 0.16f}, {-0.12f, 0.54f}, 0.062f},
    {{0.06f, 0.16f}, {0.07f, 0.57f}, 0.064f},
    {{0.18f, 0.11f}, {0.26f, 0.47f}, 0.061f},
    {{0.16f, -0.16f}, {0.45f, 0.10f}, 0.070f},
}};

float blob(Vec2 p, Vec2 centre, Vec2 radii)
{
    const Vec2 d = p - centre;
    return smoothstep(1.12f, 0.70f, length(Vec2{d.x / radii.x, d.y / radii.y}));
}

// How firmly skin of a hand of length 1 touches at p, 0..1. Fingertips and the heel press hardest;
// the hollow of the palm and the creases of the joints hardly touch.
float touch(Vec2 p)
{
    float firm = 0;
    for (const Finger& finger : kFingers) {
        const Vec2 along = finger.tip - finger.root, from = p - finger.root;
        const float s = clamp01(dot(from, along) / dot(along, along));
        const float side = length(from - along * s) / finger.radius;
        const float crease = 0.45f * std::exp(-260.0f * (s - 0.36f) * (s - 0.36f))
            + 0.35f * std::exp(-320.0f * (s - 0.70f) * (s - 0.70f));
        const float pad = 0.72f + 0.28f * smoothstep(0.65f, 0.95f, s) - crease;
        firm = std::max(firm, smoothstep(1.08f, 0.62f, side) * pad);
    }
    firm = std::max(firm, 0.92f * blob(p, {0.0f, 0.10f}, {0.27f, 0.13f}));
    firm = std::max(firm, blob(p, {-0.13f, -0.10f}, {0.16f, 0.27f}));
    firm = std::max(firm, 0.95f * blob(p, {0.13f, -0.12f}, {0.17f, 0.24f}));
    firm = std::max(firm, 0.85f * blob(p, {0.0f, -0.25f}, {0.20f, 0.11f}));
    const float hollow =
        blob(p, {0.03f, -0.05f}, {0.17f, 0.20f}) * (0.7f + 0.6f * noise2(p.x * 9, p.y * 7, 5));
    return firm * (1 - 0.55f * clamp01(hollow));
}

// Drops that ran down from the heel of a fresh print.
float runs(Vec2 p, std::uint32_t seed)
{
    float wet = 0;
    for (std::uint32_t i = 0; i < 3; ++i) {
        const float x = -0.15f + 0.13f * float(i) + 0.05f * unit(hash32(seed + i));
        const float end = -0.50f - 0.38f * unit(hash32(seed + 9u + i));
        const float wander = x + 0.012f * noise2(p.y * 9, float(i) * 5, seed);
        const float half = 0.011f + 0.004f * noise2(p.y * 7, float(i) * 3, seed + 1);
        const Vec2 bead{(p.x - wander) / 0.019f, (p.y - end) / 0.030f};
        wet = std::max(wet, smoothstep(1.2f, 0.7f, length(bead)));
        if (p.y < -0.2f && p.y > end)
            wet = std::max(wet, smoothstep(half * 1.5f, half * 0.7f, std::fabs(p.x - wander)));
    }
    return wet;
}

class Wall {
public:
    explicit Wall(std::uint32_t seed)
        : m_plaster(GroundMaterial::Kind::Stone, seed, 0.8f)
        , m_seed(seed)
    {
        Rng rng(seed);
        for (size_t i = 0; i < m_prints.size(); ++i) {
            m_prints[i] = {{-0.255f + 0.17f * float(i), rng.range(-0.018f, 0.028f)},
                rng.range(-0.17f, 0.13f),
                0.80f - 0.25f * float(i)};
        }
    }

    [[nodiscard]] Sample shade(const Ray& ray) const
    {
        Sample out;
        const float t = -ray.origin.y / ray.dir.y;
        const Vec2 p{ray.origin.x + ray.dir.x * t, ray.origin.z + ray.dir.z * t};
        const float footprint = ray.pixelAngle * t;
        out.depth = t;
        GroundPoint ground = m_plaster.at(p, footprint);
        Vec3 albedo = plaster(p, ground);
        float recess = 0;
        if (p.y < kPlinth) {
            albedo = brick(p, ground, recess);
            out.part = 1;
        }
        const float wet = wetness(p);
        albedo = mix(albedo, albedo * Vec3{0.34f, 0.33f, 0.32f}, wet);
        out.color = light(albedo, ground, ray.dir, wet, recess, p);
        return out;
    }

private:
    // Old render: trowel marks, a few stains from above, hairline shading of its grains.
    [[nodiscard]] Vec3 plaster(Vec2 p, GroundPoint& ground) const
    {
        const float trowel = fbm2(p.x * 7 + p.y * 3, p.y * 13, 4, m_seed + 3);
        const float stain = clamp01(0.2f + fbm2(p.x * 9, p.y * 1.1f + 4, 3, m_seed + 4))
            * smoothstep(-0.1f, 0.5f, p.y);
        ground.slope = ground.slope * 0.55f
            + Vec2{fbm2(p.x * 30, p.y * 55, 2, m_seed + 5), fbm2(p.x * 30, p.y * 55, 2, m_seed + 6)}
                * 0.16f;
        return Vec3{0.60f, 0.53f, 0.43f} * (0.80f + 0.95f * (ground.albedo - 0.16f))
            * (1 + 0.16f * trowel - 0.22f * stain);
    }

    [[nodiscard]] Vec3 brick(Vec2 p, const GroundPoint& ground, float& recess) const
    {
        constexpr float course = 0.083f, stretcher = 0.25f, joint = 0.006f;
        const float row = std::floor((kPlinth - p.y) / course);
        const float x = p.x + (int(row) % 2 == 0 ? 0.0f : stretcher / 2) + 10 * stretcher;
        const float column = std::floor(x / stretcher);
        const float wobble = 0.0022f * noise2(p.x * 60, p.y * 60, m_seed + 7);
        const float right = x - column * stretcher, down = kPlinth - p.y - row * course;
        const float edge =
            std::min(std::min(right, stretcher - right), std::min(down, course - down)) + wobble;
        recess = smoothstep(joint * 1.25f, joint * 0.6f, edge);
        const float tone = unit(hashCell(int(column), int(row), m_seed + 8));
        const Vec3 clay = mix(srgb(0x7a4a3c), srgb(0x9a6450), tone)
            * (0.35f + 1.7f * ground.albedo + 0.2f * fbm2(p.x * 40, p.y * 40, 3, m_seed + 9));
        return mix(clay, Vec3{0.40f, 0.38f, 0.34f} * (0.5f + 2.2f * ground.albedo), recess);
    }

    [[nodiscard]] float wetness(Vec2 p) const
    {
        float wet = 0;
        for (size_t i = 0; i < m_prints.size(); ++i) {
            const Print& print = m_prints[i];
            const Vec2 q = rotate(p - print.at, -print.turn) * (1 / kHand);
            if (std::fabs(q.x) > 0.62f || q.y > 0.75f || q.y < -1.0f)
                continue;
            float held = touch(q);
            if (i + 1 == m_prints.size())
                held = std::max(held, 0.8f * runs(q, m_seed + 50));
            if (held <= 0)
                continue;
            // A print dries from its thin edges inwards, in blotches.
            const float blotch = fbm2(p.x * 75, p.y * 75, 3, m_seed + 20)
                + 0.35f * fbm2(p.x * 260, p.y * 260, 2, m_seed + 21);
            const float left = held + 0.38f * blotch * (0.35f + print.dryness);
            const float damp =
                smoothstep(0.62f * print.dryness, 0.62f * print.dryness + 0.34f, left);
            wet = std::max(wet, damp * (1.0f - 0.58f * print.dryness));
        }
        return wet;
    }

    [[nodiscard]] Vec3 light(
        Vec3 albedo, const GroundPoint& ground, Vec3 view, float wet, float recess, Vec2 p) const
    {
        const Vec3 sun = normalize(Vec3{-0.74f, -0.36f, 0.56f});
        const float tilt = 1 - 0.5f * recess;
        const Vec3 n = normalize(Vec3{-ground.slope.x * tilt, -1, -ground.slope.y * tilt});
        // The branches of a tree somewhere to the left take some of the sun away.
        const float leaves = fbm2(p.x * 2.6f - p.y * 1.9f, p.y * 2.2f + p.x, 4, m_seed + 30);
        const float visible = 0.35f + 0.65f * smoothstep(-0.22f, 0.10f, leaves);
        const float sill = 1 - 0.35f * smoothstep(0.035f, 0.0f, std::fabs(p.y - kPlinth + 0.02f));
        Vec3 sum = albedo * Vec3{0.50f, 0.56f, 0.66f} * (sill * (1 - 0.55f * recess));
        sum += albedo * Vec3{2.3f, 2.1f, 1.75f}
            * (std::max(0.0f, dot(n, sun)) * visible * (1 - 0.6f * recess));
        if (wet > 0.05f) {
            const float facing = std::max(0.0f, dot(n, normalize(sun - view)));
            sum += Vec3{1, 1, 1} * (wet * (0.012f + 0.16f * visible * std::pow(facing, 40.0f)));
        }
        return sum;
    }

    GroundMaterial m_plaster;
    std::uint32_t m_seed;
    std::array<Print, 4> m_prints{};
};

} // namespace

QImage wetHands(QSize size, std::uint32_t seed)
{
    const Wall wall(seed);
    const Camera camera{{0.09f, -0.74f, 0.055f}, {0.0f, 0.0f, -0.02f}, 55, 0.9f};
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return wall.shade(r); });
    Film film;
    film.exposure = 0.78f;
    film.contrast = 1.15f;
    film.saturation = 0.92f;
    film.focus = 0.74f;
    film.lensBlur = 0.002f;
    film.vignette = 0.32f;
    return develop(buffer, size.width(), size.height(), film, seed);
}

} // namespace wainscot::samples
