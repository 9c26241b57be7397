// Indoors by a window: a jug, a funnel and a cup with water.
#include "samples/pictures/light/film.h"
#include "samples/pictures/light/noise.h"
#include "samples/pictures/scenes/scenes.h"
#include "samples/pictures/scenes/solid.h"
#include "samples/pictures/scenes/table.h"

namespace wainscot::samples {
namespace {

enum Part { kJug = 1, kJugRim, kFunnel, kCup, kWater };

float revolve(Vec3 p, float r)
{
    return length(Vec2{p.x, p.y}) - r;
}

float jugDistance(Vec3 p, int& part)
{
    const float away = std::max(length(Vec2{p.x, p.y}) - 0.115f, p.z - 0.19f);
    if (away > 0.02f) {
        part = kJug;
        return away;
    }
    // Enamel jug: belly, neck, flared lip with a spout towards -x.
    const float z = p.z;
    const float belly = 0.058f - 0.013f * smoothstep(0.06f, 0.135f, z)
        + 0.008f * smoothstep(0.14f, 0.175f, z) + 0.004f * std::sin(clamp01(z / 0.08f) * kPi);
    const float angle = std::atan2(p.y, -p.x);
    const float spout = 0.022f * std::exp(-angle * angle * 14) * smoothstep(0.115f, 0.175f, z);
    const float wall = std::fabs(revolve(p, belly + spout)) - 0.0016f;
    float jug = std::max(wall * 0.8f, std::max(z - 0.172f - 0.25f * spout, 0.002f - z));
    jug = std::min(jug, std::max(revolve(p, belly), std::fabs(z - 0.004f) - 0.003f));
    const Vec3 h{p.x - 0.057f, p.y, z - 0.095f};
    const Vec3 handleAxis{h.x * 0.88f, h.z, h.y}; // ring in the x-z plane
    float handle =
        torus({handleAxis.x, handleAxis.y * 0.72f, handleAxis.z * 0.8f}, 0.040f, 0.0056f);
    handle = std::max(handle, -h.x - 0.006f);
    jug = smoothMin(jug, handle, 0.01f);
    part = kJug;
    const float rim = std::max(std::fabs(revolve(p, belly + spout + 0.001f)) - 0.0030f,
                          std::fabs(z - 0.1725f - 0.25f * spout) - 0.003f)
        * 0.8f;
    if (rim < jug) {
        part = kJugRim;
        return rim;
    }
    return jug;
}

float funnelDistance(Vec3 p)
{
    // Lying mouth down, stem up.
    const float z = p.z, away = std::max(length(Vec2{p.x, p.y}) - 0.068f, z - 0.137f);
    if (away > 0.02f)
        return away;
    const float r = z < 0.075f ? mix(0.062f, 0.010f, z / 0.075f)
                               : mix(0.010f, 0.0068f, clamp01((z - 0.075f) / 0.06f));
    const float radial = length(Vec2{p.x, p.y});
    float d = (std::fabs(radial - r) - 0.0011f) * 0.72f;
    d = std::max(d, std::max(z - 0.135f, -z));
    d = std::min(d, torus(p - Vec3{0, 0, 0.003f}, 0.0635f, 0.0028f));
    const float ribs = std::max(std::fabs(std::fabs(p.x) * 0.7f - std::fabs(p.y) * 0.7f) - 0.0009f,
        std::max(radial - r - 0.0035f, z - 0.07f));
    return std::min(d, std::max(ribs, 0.004f - z));
}

float cupDistance(Vec3 p)
{
    const float z = p.z, away = std::max(length(Vec2{p.x, p.y}) - 0.045f, z - 0.088f);
    if (away > 0.02f)
        return away;
    const float r = 0.031f + 0.010f * z / 0.085f;
    const float d = (std::fabs(length(Vec2{p.x, p.y}) - r) - 0.0012f) * 0.95f;
    float cup = std::max(d, std::max(z - 0.085f, -z));
    cup = std::min(cup, std::max(length(Vec2{p.x, p.y}) - r, std::fabs(z - 0.003f) - 0.002f));
    return std::min(cup, torus(p - Vec3{0, 0, 0.085f}, 0.041f, 0.0019f));
}

const Vec3 kJugAt{0.035f, 0.045f, 0}, kFunnelAt{-0.145f, 0.055f, 0}, kCupAt{0.165f, -0.055f, 0};

float stillLife(Vec3 p, int& part)
{
    float d = jugDistance(p - kJugAt, part);
    const float funnel = funnelDistance(p - kFunnelAt);
    if (funnel < d) {
        d = funnel;
        part = kFunnel;
    }
    const float cup = cupDistance(p - kCupAt);
    if (cup < d) {
        d = cup;
        part = kCup;
    }
    const Vec3 w = p - kCupAt;
    const float water = std::max(length(Vec2{w.x, w.y}) - 0.038f, std::fabs(w.z - 0.06f) - 0.001f);
    if (water < d) {
        d = water;
        part = kWater;
    }
    return d;
}

// The far wall, out of focus: plaster with a shelf and coloured shapes.
Vec3 farWall(Vec3 o, Vec3 d)
{
    const float t = (1.6f - o.y) / std::max(0.05f, d.y);
    const float x = o.x + d.x * t, z = o.z + d.z * t;
    Vec3 c = mix(Vec3{0.50f, 0.48f, 0.44f}, Vec3{0.16f, 0.145f, 0.13f}, smoothstep(-1.2f, 1.3f, x));
    const auto box = [&](float x0, float x1, float z0, float z1, Vec3 color) {
        if (x > x0 && x < x1 && z > z0 && z < z1)
            c = color * (0.5f + 0.5f * smoothstep(1.2f, -0.8f, x));
    };
    box(-0.35f, 0.95f, 0.16f, 0.19f, {0.34f, 0.22f, 0.12f});
    box(-0.28f, -0.12f, 0.19f, 0.42f, {0.42f, 0.10f, 0.08f});
    box(-0.10f, 0.03f, 0.19f, 0.36f, {0.60f, 0.55f, 0.42f});
    box(0.10f, 0.34f, 0.19f, 0.31f, {0.10f, 0.22f, 0.38f});
    box(0.42f, 0.55f, 0.19f, 0.47f, {0.46f, 0.36f, 0.10f});
    box(0.60f, 0.82f, 0.19f, 0.38f, {0.16f, 0.28f, 0.15f});
    box(-0.9f, -0.5f, 0.2f, 0.8f, {0.62f, 0.60f, 0.55f});
    return c;
}

float stillLifeDistance(Vec3 p)
{
    int part = 0;
    return stillLife(p, part);
}

// What a solid's surface is made of, indoors.
struct Surface {
    Vec3 albedo;
    float gloss = 1;
    float soft = 0.02f; // how blurred it mirrors the room
    float through = 0; // light that comes through thin plastic
};

class StillLife {
public:
    explicit StillLife(std::uint32_t seed)
        : m_seed(seed)
    {
    }

    [[nodiscard]] Sample shade(const Ray& ray) const { return trace(ray, true); }

private:
    // `mirrors` = the table shows what stands on it; not again in the mirrored picture itself.
    [[nodiscard]] Sample trace(const Ray& ray, bool mirrors) const
    {
        const float tableT = ray.dir.z < -1e-4f ? -ray.origin.z / ray.dir.z : 1e9f;
        float near = 0, far = 0, t = 0;
        if (m_bounds.hit(ray, near, far)
            && march(stillLifeDistance, ray, near, std::min(far, tableT), t))
            return solid(ray, t);
        const Vec3 p = ray.origin + ray.dir * tableT;
        if (tableT > 50 || p.y > 0.55f)
            return {farWall(ray.origin, ray.dir), 2.4f, 1};
        return {table(ray, p, tableT, mirrors), tableT, 2};
    }

    [[nodiscard]] Surface surfaceOf(int part, Vec3 p, Vec3& n) const
    {
        Surface m;
        switch (part) {
        case kJug: {
            const float chip = smoothstep(0.70f,
                0.74f,
                fbm3(p.x * 90, p.y * 90, p.z * 90, 3, m_seed)
                    + 0.25f * smoothstep(0.02f, 0.0f, p.z));
            m.albedo = mix(Vec3{0.80f, 0.79f, 0.75f}, Vec3{0.05f, 0.05f, 0.06f}, chip);
            n = normalize(
                n + Vec3{1, 1, 1} * (0.012f * noise3(p.x * 60, p.y * 60, p.z * 60, m_seed + 1)));
            break;
        }
        case kJugRim:
            m.albedo = srgb(0x1f3d7a);
            break;
        case kFunnel:
            m.albedo = srgb(0xd8442e);
            m.soft = 0.12f;
            m.through = 0.35f;
            m.gloss = 0.8f;
            break;
        case kCup:
            m.albedo = srgb(0x3f8fa8);
            m.soft = 0.15f;
            m.through = 0.3f;
            m.gloss = 0.8f;
            break;
        default:
            m.albedo = srgb(0x4f93a6) * 0.7f;
            m.gloss = 1.2f;
            break;
        }
        return m;
    }

    [[nodiscard]] Sample solid(const Ray& ray, float t) const
    {
        const Vec3 p = ray.origin + ray.dir * t;
        int part = 0;
        stillLife(p, part);
        Vec3 n = mapNormal(stillLifeDistance, p, 0.0004f);
        if (dot(n, ray.dir) > 0)
            n = -n;
        const Surface m = surfaceOf(part, p, n);
        const float open = ambientOpenness(stillLifeDistance, p, n, 0.05f)
            * (0.5f + 0.5f * smoothstep(0.0f, 0.06f, p.z + 0.03f * n.z));
        const float facing = dot(n, m_light.dir);
        const float lit = facing < -0.25f
            ? 0.0f
            : softShadow(stillLifeDistance, p + n * 0.0015f, m_light.dir, 0.35f, 0.22f);
        const float wrap = clamp01((facing + 0.25f) / 1.25f);
        const Vec3 bounce = Vec3{0.30f, 0.21f, 0.13f} * (0.5f - 0.5f * n.z);
        Vec3 c =
            m.albedo * (m_light.room * open + bounce * open * 0.7f + m_light.color * (wrap * lit));
        c += m.albedo * m_light.color * (m.through * clamp01(-facing * 0.8f + 0.1f) * 0.6f);
        const float f = fresnel(std::max(0.0f, -dot(n, ray.dir)), 0.045f) * m.gloss;
        c = c * (1 - f)
            + m_light.reflectedRoom(reflect(ray.dir, n), m.soft) * (f * (0.3f + 0.7f * open));
        return {c, t, std::uint8_t(40 + part)};
    }

    [[nodiscard]] Vec3 table(const Ray& ray, Vec3 p, float t, bool mirrors) const
    {
        const float clear = stillLifeDistance(p + Vec3{0, 0, 0.012f});
        TableView view{ray.dir, ray.pixelAngle * t / std::max(0.2f, -ray.dir.z)};
        view.open = clamp01(0.35f + 9 * clear);
        float near = 0, far = 0, s = 0;
        if (m_bounds.hit({p, m_light.dir, 0}, near, far)) {
            view.lit =
                softShadow(stillLifeDistance, p + Vec3{0, 0, 0.001f}, m_light.dir, 0.5f, 0.22f);
        }
        const Vec3 wood = tableLight(p, view, m_light, true, m_seed);
        if (!mirrors || clear >= 0.12f)
            return wood;
        const Vec3 r = normalize(Vec3{ray.dir.x, ray.dir.y, -ray.dir.z});
        const Ray bounce{p + Vec3{0, 0, 0.0005f}, r, ray.pixelAngle * 4};
        if (!m_bounds.hit(bounce, near, far)
            || !march(stillLifeDistance, bounce, near, std::min(far, 0.25f), s, 40))
            return wood;
        const float f = 0.5f * fresnel(-ray.dir.z, 0.05f) * std::exp(-s * 14);
        return mix(wood, trace(bounce, false).color, f);
    }

    WindowLight m_light;
    Bounds m_bounds{{0.01f, 0.02f, 0.085f}, 0.265f};
    std::uint32_t m_seed;
};

} // namespace

QImage jugAndFunnel(QSize size, std::uint32_t seed)
{
    const StillLife scene(seed);
    Camera camera{{-0.03f, -0.66f, 0.27f}, {0.005f, 0.02f, 0.072f}, 42, 1.0f};
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return scene.shade(r); });
    Film film;
    film.exposure = 0.95f;
    film.contrast = 1.2f;
    film.focus = 0.70f;
    film.lensBlur = 0.014f;
    film.vignette = 0.4f;
    film.glare = 0.08f;
    film.grain = 1.3f;
    film.whiteBalance = {1.05f, 1.0f, 0.93f};
    return develop(buffer, size.width(), size.height(), film, seed);
}

} // namespace wainscot::samples
