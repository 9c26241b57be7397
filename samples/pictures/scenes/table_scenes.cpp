// Indoors by a window: jug, funnel and cups; and a drawing on the table.
#include "samples/pictures/drawings/drawings.h"
#include "samples/pictures/light/film.h"
#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"
#include "samples/pictures/light/texture.h"
#include "samples/pictures/scenes/scenes.h"
#include "samples/pictures/scenes/solid.h"

namespace wainscot::samples {
namespace {

// Oiled beech boards along x.
Vec3 tableColor(Vec2 p, float footprint, std::uint32_t seed)
{
    const float board = std::floor(p.y / 0.095f);
    const float shift = unit(hash32(std::uint32_t(int(board) + 100) + seed)) * 9;
    const float x = p.x + shift, y = p.y + shift * 0.37f;
    const float rings = std::sin((y * 210 + 5.0f * fbm2(x * 1.6f, y * 16, 3, seed + 1)) * 1.0f);
    const float grain = footprint < 0.002f ? noise2(x * 26, y * 900, seed + 2) : 0;
    const float fleck =
        footprint < 0.001f ? smoothstep(0.45f, 0.7f, noise2(x * 130, y * 1400, seed + 3)) : 0;
    Vec3 c = mix(srgb(0xbd9c74), srgb(0xa6825a), 0.5f + 0.28f * rings + 0.25f * grain);
    c = c * (0.92f + 0.16f * unit(hash32(std::uint32_t(int(board) + 300) + seed)))
        * (1 - 0.28f * fleck);
    const float seam = std::fabs(p.y / 0.095f - std::round(p.y / 0.095f)) * 0.095f;
    return c * (1 - 0.65f * smoothstep(0.0011f, 0.0004f, seam));
}

// A tall window to the left; soft light falls off into the room.
struct WindowLight {
    Vec3 dir = normalize(Vec3{-0.82f, 0.25f, 0.52f});
    Vec3 color{1.75f, 1.8f, 1.9f};
    Vec3 room{0.26f, 0.245f, 0.225f};

    // What a mirror pointing along r sees.
    Vec3 reflectedRoom(Vec3 r, float soft) const
    {
        const float u = std::atan2(r.y, -r.x), v = std::asin(std::clamp(r.z, -1.0f, 1.0f));
        const auto edge = [&](float d) { return smoothstep(-soft, soft, d); };
        float pane = edge(0.42f - std::fabs(u - 0.15f)) * edge(0.34f - std::fabs(v - 0.52f));
        pane *= 1 - edge(0.025f - std::fabs(u - 0.15f)) * 0.85f; // glazing bars
        pane *= 1 - edge(0.022f - std::fabs(v - 0.56f)) * 0.85f;
        const Vec3 wall =
            mix(Vec3{0.16f, 0.145f, 0.13f}, Vec3{0.34f, 0.33f, 0.31f}, clamp01(0.5f - 0.5f * r.x));
        return wall + Vec3{7.5f, 7.9f, 8.4f} * pane;
    }
};

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

// Drops spilt on the table: 0 outside, else height; slope out.
float spill(Vec2 p, Vec2& slope, std::uint32_t seed)
{
    const auto height = [&](Vec2 q) {
        float h = 0;
        const auto lens = [&](Vec2 c, float r, float squash, std::uint32_t s) {
            Vec2 d = (q - c) * (1.0f / r);
            d.y *= squash;
            const float e = length(d) + 0.22f * noise2(q.x * 30 + c.x * 50, q.y * 30, s);
            if (e < 1)
                h = std::max(h, std::sqrt(1 - e * e) * std::min(r * 0.35f, 0.0022f));
        };
        lens({-0.035f, -0.085f}, 0.034f, 1.5f, seed + 1);
        lens({0.035f, -0.105f}, 0.017f, 1.2f, seed + 2);
        lens({-0.095f, -0.10f}, 0.011f, 1.1f, seed + 3);
        lens({0.075f, -0.085f}, 0.006f, 1.0f, seed + 4);
        lens({-0.005f, -0.125f}, 0.0055f, 1.0f, seed + 5);
        lens({-0.125f, -0.075f}, 0.0045f, 1.0f, seed + 6);
        return h;
    };
    const float h = height(p);
    if (h <= 0)
        return 0;
    const float e = 0.0006f;
    slope = {(height({p.x + e, p.y}) - h) / e, (height({p.x, p.y + e}) - h) / e};
    return h;
}

Vec3 shadeTable(Vec3 p,
    Vec3 view,
    float footprint,
    float lit,
    float open,
    const WindowLight& light,
    bool spilt,
    std::uint32_t seed)
{
    const Vec2 q{p.x, p.y};
    Vec3 albedo = tableColor(q, footprint, seed);
    Vec2 slope{0, 0};
    const float wet = spilt ? spill(q, slope, seed + 20) : 0.0f;
    Vec3 n{0.015f * noise2(p.x * 20, p.y * 300, seed + 4),
        0.03f * noise2(p.x * 30, p.y * 500, seed + 5),
        1};
    float gloss = 0.55f, soft = 0.22f;
    if (wet > 0) {
        albedo = albedo * 0.62f;
        n = {-slope.x, -slope.y, 1};
        gloss = 1.1f;
        soft = 0.03f;
    }
    n = normalize(n);
    Vec3 c = albedo
        * (light.room * open
            + light.color * (std::max(0.0f, dot(wet > 0 ? Vec3{0, 0, 1} : n, light.dir)) * lit));
    const float f = fresnel(std::max(0.0f, -dot(view, n)), 0.04f) * gloss;
    c = c * (1 - f) + light.reflectedRoom(reflect(view, n), soft) * (f * (0.35f + 0.65f * open));
    return c;
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

} // namespace

QImage jugAndFunnel(QSize size, std::uint32_t seed)
{
    const WindowLight light;
    const auto map = [](Vec3 p) {
        int part;
        return stillLife(p, part);
    };
    const Bounds bounds{{0.01f, 0.02f, 0.085f}, 0.265f};
    const auto shade = [&](const Ray& ray, auto&& self, int depth) -> Sample {
        Sample out;
        float near, far, t;
        const float tableT = ray.dir.z < -1e-4f ? -ray.origin.z / ray.dir.z : 1e9f;
        if (bounds.hit(ray, near, far) && march(map, ray, near, std::min(far, tableT), t)) {
            const Vec3 p = ray.origin + ray.dir * t;
            int part = 0;
            stillLife(p, part);
            Vec3 n = mapNormal(map, p, 0.0004f);
            if (dot(n, ray.dir) > 0)
                n = -n;
            Vec3 albedo;
            float gloss = 1, soft = 0.02f, through = 0;
            switch (part) {
            case kJug: {
                const float chip = smoothstep(0.70f,
                    0.74f,
                    fbm3(p.x * 90, p.y * 90, p.z * 90, 3, seed)
                        + 0.25f * smoothstep(0.02f, 0.0f, p.z));
                albedo = mix(Vec3{0.80f, 0.79f, 0.75f}, Vec3{0.05f, 0.05f, 0.06f}, chip);
                n = normalize(
                    n + Vec3{1, 1, 1} * (0.012f * noise3(p.x * 60, p.y * 60, p.z * 60, seed + 1)));
                break;
            }
            case kJugRim:
                albedo = srgb(0x1f3d7a);
                break;
            case kFunnel:
                albedo = srgb(0xd8442e);
                soft = 0.12f;
                through = 0.35f;
                gloss = 0.8f;
                break;
            case kCup:
                albedo = srgb(0x3f8fa8);
                soft = 0.15f;
                through = 0.3f;
                gloss = 0.8f;
                break;
            default:
                albedo = srgb(0x4f93a6) * 0.7f;
                gloss = 1.2f;
                break;
            }
            const float open = ambientOpenness(map, p, n, 0.05f)
                * (0.5f + 0.5f * smoothstep(0.0f, 0.06f, p.z + 0.03f * n.z));
            const float lit = dot(n, light.dir) < -0.25f
                ? 0.0f
                : softShadow(map, p + n * 0.0015f, light.dir, 0.35f, 0.22f);
            const float wrap = clamp01((dot(n, light.dir) + 0.25f) / 1.25f);
            const Vec3 bounce = Vec3{0.30f, 0.21f, 0.13f} * (0.5f - 0.5f * n.z);
            Vec3 c =
                albedo * (light.room * open + bounce * open * 0.7f + light.color * (wrap * lit));
            c +=
                albedo * light.color * (through * clamp01(-dot(n, light.dir) * 0.8f + 0.1f) * 0.6f);
            const float f = fresnel(std::max(0.0f, -dot(n, ray.dir)), 0.045f) * gloss;
            c = c * (1 - f)
                + light.reflectedRoom(reflect(ray.dir, n), soft) * (f * (0.3f + 0.7f * open));
            out.color = c;
            out.depth = t;
            out.part = std::uint8_t(40 + part);
            return out;
        }
        const Vec3 p = ray.origin + ray.dir * tableT;
        if (tableT > 50 || p.y > 0.55f) {
            out.color = farWall(ray.origin, ray.dir);
            out.depth = 2.4f;
            out.part = 1;
            return out;
        }
        const float clear = map(p + Vec3{0, 0, 0.012f});
        const float open = clamp01(0.35f + 9 * clear);
        float from, to;
        const float lit = bounds.hit({p, light.dir, 0}, from, to)
            ? softShadow(map, p + Vec3{0, 0, 0.001f}, light.dir, 0.5f, 0.22f)
            : 1.0f;
        out.color = shadeTable(p,
            ray.dir,
            ray.pixelAngle * tableT / std::max(0.2f, -ray.dir.z),
            lit,
            open,
            light,
            true,
            seed);
        if (depth == 0 && clear < 0.12f) { // the oiled wood mirrors what stands on it
            const Vec3 r = normalize(Vec3{ray.dir.x, ray.dir.y, -ray.dir.z});
            Ray bounce{p + Vec3{0, 0, 0.0005f}, r, ray.pixelAngle * 4};
            float a, b, s;
            if (bounds.hit(bounce, a, b) && march(map, bounce, a, std::min(b, 0.25f), s, 40)) {
                const Sample seen = self(bounce, self, 1);
                out.color = mix(
                    out.color, seen.color, 0.5f * fresnel(-ray.dir.z, 0.05f) * std::exp(-s * 14));
            }
        }
        out.depth = tableT;
        out.part = 2;
        return out;
    };
    Camera camera{{-0.03f, -0.66f, 0.27f}, {0.005f, 0.02f, 0.072f}, 42, 1.0f};
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return shade(r, shade, 0); });
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

QImage drawingSunDrinks(QSize size, std::uint32_t seed)
{
    const Texture sheet =
        textureFromImage(flatSunDrawing({2480, 1754}, seed), Texture::Edge::Clamp);
    const WindowLight light;
    constexpr float kHalfX = 0.1485f, kHalfY = 0.105f;
    const auto shade = [&](const Ray& ray) {
        Sample out;
        const float t = -ray.origin.z / ray.dir.z;
        const Vec3 p = ray.origin + ray.dir * t;
        const float footprint = ray.pixelAngle * t / std::max(0.2f, -ray.dir.z);
        const Vec2 q = rotate({p.x, p.y}, 0.16f);
        // The sheet curls up at two corners: lighter there, with a shadow beside.
        const float curl = smoothstep(0.6f, 1.5f, q.x / kHalfX - q.y / kHalfY)
            + 0.7f * smoothstep(0.9f, 1.7f, q.y / kHalfY - q.x / kHalfX);
        const float bx = std::fabs(q.x) - kHalfX, by = std::fabs(q.y) - kHalfY;
        // Window light from the left, broken by the glazing bar's soft shadow.
        const float fall = 0.30f + 0.95f * smoothstep(0.28f, -0.32f, p.x + 0.25f * p.y);
        const float bar =
            1 - 0.30f * std::exp(-std::pow((p.x + 0.45f * p.y - 0.05f) / 0.030f, 2.0f));
        const float photographer =
            1 - 0.38f * smoothstep(0.22f, 0.0f, length(Vec2{(p.x - 0.13f) * 0.8f, p.y + 0.20f}));
        const float lit = fall * bar * photographer;
        out.depth = t;
        if (bx < 0 && by < 0) {
            const float u = q.x / (2 * kHalfX) + 0.5f, v = 0.5f - q.y / (2 * kHalfY);
            const Texel s =
                sheet.sample(u, v, std::log2(std::max(1.0f, footprint * 2480 / 0.297f)));
            const float buckle =
                noise2(q.x * 9, q.y * 7, seed + 3) + 0.4f * noise2(q.x * 30, q.y * 26, seed + 4);
            const float tilt = 1 + 0.05f * buckle + 0.14f * curl;
            out.color = Vec3{s.v[0], s.v[1], s.v[2]}
                * (light.room * 1.3f + light.color * (0.60f * lit * tilt));
            out.part = 5;
            return out;
        }
        const float away = length(Vec2{std::max(0.0f, bx), std::max(0.0f, by)});
        const float shadow = 1 - 0.5f * smoothstep(0.004f + 0.018f * curl, 0.0f, away);
        out.color = shadeTable(p,
            ray.dir,
            footprint,
            0.75f * lit * shadow,
            0.55f + 0.45f * shadow,
            light,
            false,
            seed);
        out.part = 6;
        return out;
    };
    Camera camera{{0.07f, -0.29f, 0.33f}, {0.005f, -0.012f, 0.0f}, 52, -4.0f};
    const LightBuffer buffer = traceScene(camera, size.width(), size.height(), 2, shade);
    Film film;
    film.exposure = 0.95f;
    film.contrast = 1.1f;
    film.focus = 0.42f;
    film.lensBlur = 0.008f;
    film.vignette = 0.4f;
    film.grain = 1.4f;
    film.whiteBalance = {1.06f, 1.0f, 0.90f};
    return develop(buffer, size.width(), size.height(), film, seed);
}

} // namespace wainscot::samples
