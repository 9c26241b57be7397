#include "samples/pictures/scenes/table.h"

#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"

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

} // namespace

Vec3 WindowLight::reflectedRoom(Vec3 r, float soft) const
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

Vec3 tableLight(
    Vec3 p, const TableView& view, const WindowLight& light, bool spilt, std::uint32_t seed)
{
    const Vec2 q{p.x, p.y};
    Vec3 albedo = tableColor(q, view.footprint, seed);
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
        * (light.room * view.open
            + light.color
                * (std::max(0.0f, dot(wet > 0 ? Vec3{0, 0, 1} : n, light.dir)) * view.lit));
    const float f = fresnel(std::max(0.0f, -dot(view.along, n)), 0.04f) * gloss;
    c = c * (1 - f)
        + light.reflectedRoom(reflect(view.along, n), soft) * (f * (0.35f + 0.65f * view.open));
    return c;
}

} // namespace wainscot::samples
