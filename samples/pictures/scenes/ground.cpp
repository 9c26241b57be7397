#include "samples/pictures/scenes/ground.h"

#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"

namespace wainscot::samples {
namespace {

constexpr int kTexels = 1024;

struct Relief {
    float height; // 0..1
    float albedo;
};

// Crushed stone in bitumen, worn flat on top.
Relief asphalt(float u, float v, std::uint32_t seed)
{
    Relief r{0, 0.055f};
    const int periods[2] = {64, 128};
    for (int i = 0; i < 2; ++i) {
        const int period = periods[i];
        const CellHit c =
            cells2(u * float(period), v * float(period), seed + std::uint32_t(i) * 31u, period);
        const float keep = unit(c.cell), tone = unit(hash32(c.cell + 5u)),
                    tilt = unit(hash32(c.cell + 9u)) - 0.5f;
        if (keep < 0.3f)
            continue;
        const float gap = c.f2 - c.f1;
        const float body = smoothstep(0.06f, 0.30f, gap) * (0.6f + 0.4f * keep);
        const float top = (i == 0 ? 1.0f : 0.62f) * body
            * (0.85f + 0.5f * tilt * c.dx + 0.3f * (tone - 0.5f) * c.dy);
        if (top > r.height) {
            r.height = top;
            const float stone = 0.085f + 0.13f * tone * tone + (keep > 0.97f ? 0.12f : 0.0f);
            r.albedo = mix(0.05f, stone, smoothstep(0.1f, 0.5f, body));
        }
    }
    const float fine = fbm2(u * 200, v * 200, 2, seed + 77, 200);
    r.height += 0.16f * fine;
    r.albedo *= 1.0f + 0.5f * fine;
    return r;
}

// Crumbly earth with a few small pebbles.
Relief soil(float u, float v, std::uint32_t seed)
{
    const float lumps = fbm2(u * 14, v * 14, 6, seed, 14);
    const CellHit crumbs = cells2(u * 60, v * 60, seed + 3, 60);
    const CellHit pebbles = cells2(u * 24, v * 24, seed + 4, 24);
    Relief r{0.45f + 0.75f * lumps + 0.07f * smoothstep(0.7f, 0.0f, crumbs.f1), 0.085f};
    r.albedo *= 0.75f + 0.5f * unit(crumbs.cell) + 0.5f * lumps;
    const float size = 0.10f + 0.22f * unit(hash32(pebbles.cell + 1u));
    if (unit(pebbles.cell) > 0.86f && pebbles.f1 < size) {
        r.height += 0.5f * std::sqrt(1.0f - pebbles.f1 * pebbles.f1 / (size * size)) * size * 3;
        r.albedo = 0.12f + 0.2f * unit(hash32(pebbles.cell + 2u));
    }
    return r;
}

Relief sand(float u, float v, std::uint32_t seed)
{
    const float waves = fbm2(u * 8, v * 8, 5, seed, 8);
    const CellHit grain = cells2(u * 230, v * 230, seed + 5, 230);
    const CellHit coarse = cells2(u * 70, v * 70, seed + 6, 70);
    Relief r{0.5f + 0.5f * waves + 0.12f * smoothstep(0.6f, 0.1f, grain.f1), 0.30f};
    r.albedo *= 0.65f + 0.6f * unit(grain.cell);
    if (unit(coarse.cell) > 0.88f && coarse.f1 < 0.28f) {
        r.height += 0.35f * (1 - coarse.f1 / 0.28f);
        r.albedo = 0.1f + 0.35f * unit(hash32(coarse.cell));
    }
    return r;
}

// Weathered slab: fine pits, speckles and lichen-like blotches.
Relief stone(float u, float v, std::uint32_t seed)
{
    const float broad = fbm2(u * 6, v * 6, 6, seed, 6);
    const float fine = fbm2(u * 110, v * 110, 3, seed + 9, 110);
    const CellHit pits = cells2(u * 48, v * 48, seed + 11, 48);
    Relief r{0.5f + 0.4f * broad + 0.2f * fine, 0.20f};
    if (unit(pits.cell) > 0.7f)
        r.height -= 0.35f * smoothstep(0.35f, 0.0f, pits.f1);
    r.albedo *= 0.9f + 0.22f * broad + 0.7f * fine;
    const CellHit speck = cells2(u * 150, v * 150, seed + 12, 150);
    r.albedo *= 0.82f + 0.4f * unit(speck.cell);
    return r;
}

} // namespace

GroundMaterial::GroundMaterial(Kind kind, std::uint32_t seed, float zoom)
    : m_tile(kTexels, kTexels, Texture::Edge::Repeat)
{
    static constexpr float kSizes[] = {0.42f, 0.8f, 0.5f, 0.6f};
    static constexpr float kReliefs[] = {0.0017f, 0.016f, 0.006f, 0.004f};
    m_size = kSizes[int(kind)] * zoom;
    m_relief = kReliefs[int(kind)] * zoom;
    m_tile.fill([&](int x, int y) {
        const float u = (float(x) + 0.5f) / kTexels, v = (float(y) + 0.5f) / kTexels;
        Relief r{};
        switch (kind) {
        case Kind::Asphalt:
            r = asphalt(u, v, seed);
            break;
        case Kind::Soil:
            r = soil(u, v, seed);
            break;
        case Kind::Sand:
            r = sand(u, v, seed);
            break;
        case Kind::Stone:
            r = stone(u, v, seed);
            break;
        }
        return Texel{{r.height * m_relief, 0, 0, r.albedo}};
    });
    storeSlopes(m_tile, m_size / kTexels);
    m_tile.buildMips();
}

GroundPoint GroundMaterial::at(Vec2 p, float footprint) const
{
    const float lod = std::max(0.0f, std::log2(std::max(1e-6f, footprint * kTexels / m_size)));
    // Two turned copies, chosen by slow noise, hide the repetition.
    const float pick = smoothstep(-0.12f, 0.12f, noise2(p.x * 3.1f, p.y * 3.1f, 991));
    GroundPoint out{0, {0, 0}, 0};
    const auto add = [&](float angle, Vec2 shift, float weight) {
        if (weight <= 0.001f)
            return;
        const Vec2 q = rotate(p, angle) * (1.0f / m_size) + shift;
        const Texel t = m_tile.sample(q.x, q.y, lod);
        const Vec2 slope = rotate({t.v[1], t.v[2]}, -angle);
        out.height += t.v[0] * weight;
        out.slope = out.slope + slope * weight;
        out.albedo += t.v[3] * weight;
    };
    add(0.0f, {0.0f, 0.0f}, 1 - pick);
    add(0.9f, {0.37f, 0.71f}, pick);
    return out;
}

} // namespace wainscot::samples
