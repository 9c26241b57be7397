#include "samples/pictures/scenes/puddle.h"

#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"

namespace wainscot::samples {

float PuddleGround::bareBowl(Vec2 p) const
{
    const Vec2 q = rotate(p - shape.center, -shape.angle);
    const float x = q.x / shape.radii.x, y = q.y / shape.radii.y;
    const float r = std::sqrt(x * x + y * y);
    const float wobble = 0.42f * fbm2(p.x * 2.2f, p.y * 2.2f, 3, shape.seed)
        + 0.16f * fbm2(p.x * 9, p.y * 9, 3, shape.seed + 5);
    float h = (r - 1.0f + shape.raggedness * wobble) * shape.slope;
    if (h > shape.slope)
        h = shape.slope + 0.25f * (h - shape.slope);
    return h;
}

float PuddleGround::bowl(Vec2 p) const
{
    return bareBowl(p) + (extraHeight ? extraHeight(p) : 0.0f);
}

void PuddleGround::prepare()
{
    constexpr int kSize = 640;
    m_slow = Texture(kSize, kSize, Texture::Edge::Clamp);
    m_slow.fill([&](int x, int y) {
        const Vec2 p = shape.center
            + Vec2{(float(x) + 0.5f) / kSize * 2 - 1, (float(y) + 0.5f) / kSize * 2 - 1} * kMapHalf;
        return Texel{{bareBowl(p),
            fbm2(p.x * 1.7f + 3, p.y * 1.7f, 4, 17),
            fbm2(p.x * 6, p.y * 6, 3, 18),
            0}};
    });
}

PuddleGround::Slow PuddleGround::slowShapes(Vec2 p) const
{
    const Vec2 q = (p - shape.center) * (0.5f / kMapHalf);
    if (std::fabs(q.x) < 0.499f && std::fabs(q.y) < 0.499f) {
        const Texel t = m_slow.sample(q.x + 0.5f, q.y + 0.5f, 0);
        return {t.v[0], t.v[1], t.v[2]};
    }
    return {
        bareBowl(p), fbm2(p.x * 1.7f + 3, p.y * 1.7f, 3, 17), noise2(p.x * 6, p.y * 6, 18) * 0.5f};
}

Vec2 PuddleGround::rippleSlope(Vec2 p, float footprint) const
{
    Vec2 slope{0, 0};
    for (const Ring& ring : rings) {
        const Vec2 d = p - ring.center;
        const float reach = ring.radius + 2.2f * ring.width;
        const float d2 = dot(d, d);
        if (d2 > reach * reach)
            continue;
        const float distance = std::sqrt(d2) + 1e-6f;
        const float t = (distance - ring.radius) / ring.width;
        if (t < -2.5f)
            continue;
        const float k = 2 * kPi / ring.wavelength;
        const float fade = clamp01(ring.wavelength / (footprint * 2.5f) - 0.5f);
        const float s =
            ring.amplitude * k * std::exp(-t * t) * std::cos(k * (distance - ring.radius)) * fade;
        slope = slope + d * (s / distance);
    }
    if (breeze > 0) {
        const float gust = breeze * (0.6f + 0.8f * noise2(p.x * 1.3f, p.y * 1.3f, 41));
        slope.x += gust * noise2(p.x * 26 + p.y * 5, p.y * 40, 42);
        slope.y += gust * noise2(p.x * 26 + p.y * 5, p.y * 40, 43);
    }
    return slope;
}

// All that is known about a spot of ground before light falls on it.
struct PuddleGround::Spot {
    Vec2 p;
    float footprint = 0;
    GroundPoint ground{};
    Overlay over;
    float wet = 0; // 0..1
    float film = -1; // metres of water above the grain tops; below 0 = none
    Vec3 normal; // of the ground
    Vec3 surface; // of what lies on it
    Vec3 albedo;
    float gloss = 0;

    // Paint soaks in between the grains; a leaf or a string covers them.
    void lay(float relief)
    {
        albedo = albedo * (1.0f - over.shadow * (1 - over.alpha));
        float a = over.alpha;
        if (over.grip > 0) {
            const float high =
                smoothstep(0.25f, 0.75f, ground.height / relief + 0.35f * over.alpha - 0.1f);
            a *= mix(1.0f, high, over.grip);
        }
        albedo = mix(albedo, over.color, a);
        if (over.grip < 0.5f) {
            const Vec3 lying = normalize(Vec3{-over.slope.x, -over.slope.y, 1});
            surface = normalize(mix(normal, lying, a));
            gloss = over.gloss * a;
            wet *= 1 - a;
        }
    }
};

PuddleGround::Spot PuddleGround::spotAt(Vec2 p, float footprint) const
{
    Spot spot;
    spot.p = p;
    spot.footprint = footprint;
    GroundPoint& g = spot.ground = m_material.at(p, footprint);
    const Slow slow = slowShapes(p);
    const float extra = extraHeight ? extraHeight(p) : 0.0f;
    const float base = slow.bowl + extra;
    const float dampEdge = shape.damp * (1.0f + 0.7f * slow.dampNoise);
    const float damp =
        shape.dry ? 0.0f : smoothstep(dampEdge, dampEdge * 0.45f, base - shape.level);
    spot.wet = clamp01(std::max(damp, overallWet * clamp01(0.7f + 1.1f * slow.patch)));
    if (overlay)
        spot.over = overlay(p, footprint);
    if (extraHeight) { // prints and joints tilt the surface too
        const float e = std::max(0.0015f, footprint);
        const float keep = flatten ? 1.0f - 0.8f * flatten(p) : 1.0f;
        g.height *= keep;
        g.slope = g.slope * keep
            + Vec2{extraHeight({p.x + e, p.y}) - extra, extraHeight({p.x, p.y + e}) - extra}
                * (1.0f / e);
    }
    spot.film = shape.dry ? -1.0f : shape.level - base - g.height;
    spot.normal = normalize(Vec3{-g.slope.x * exaggeration, -g.slope.y * exaggeration, 1});
    spot.surface = spot.normal;
    spot.albedo = tint * (g.albedo * (1.0f + 0.35f * slow.patch));
    spot.albedo =
        spot.albedo * (1.0f / (1.0f + 110.0f * std::max(0.0f, -extra))); // hollows see less sky
    spot.albedo = mix(spot.albedo, spot.albedo * Vec3{0.42f, 0.41f, 0.40f}, spot.wet);
    return spot;
}

Vec3 PuddleGround::groundLight(const Spot& spot, Vec3 view) const
{
    const GroundPoint& g = spot.ground;
    const Vec3 albedo = spot.albedo;
    const Vec3 normal = spot.surface;
    const Vec2 p = spot.p;
    const float cavity = 0.55f + 0.45f * clamp01(g.height / m_material.relief() * 1.6f);
    const float open = occlusion ? occlusion(p) : 1.0f;
    const float tilt =
        0.78f + 0.22f * normal.z + 0.25f * (normal.x * light.sunDir.x + normal.y * light.sunDir.y);
    Vec3 sum = albedo * light.sky * (cavity * open * tilt);
    const float visible = sunVisible ? sunVisible(p) : 1.0f;
    const float cosSun = std::max(0.0f, dot(normal, light.sunDir));
    sum += albedo * light.sun * (cosSun * visible * (0.5f + 0.5f * cavity));
    const float shine = std::max(spot.wet * 0.85f, spot.gloss);
    if (shine > 0.02f) {
        const Vec3 n = normalize(mix(normal, Vec3{0, 0, 1}, spot.wet * 0.25f));
        Vec3 r = reflect(view, n);
        r.z = std::fabs(r.z);
        const float f = fresnel(std::max(0.0f, -dot(view, n)), 0.03f) * shine;
        sum += m_sky.light(r, 6.2f - 2.0f * spot.gloss) * (f * open * 0.9f);
        if (light.sun.x > 0) {
            const float facing = dot(n, normalize(light.sunDir - view));
            if (facing > 0.9f)
                sum += light.sun * (std::pow(facing, 70.0f) * shine * visible * 0.30f);
        }
    }
    return sum;
}

// Standing water: what shines up through it plus what it mirrors.
Vec3 PuddleGround::waterLight(const Spot& spot, const Ray& ray) const
{
    const GroundPoint& g = spot.ground;
    const Vec2 slope = rippleSlope(spot.p, spot.footprint);
    const float thin = smoothstep(0.0f, 0.0008f, spot.film);
    const Vec3 n = normalize(Vec3{
        -slope.x - g.slope.x * 0.15f * (1 - thin), -slope.y - g.slope.y * 0.15f * (1 - thin), 1});
    Vec3 r = reflect(ray.dir, n);
    r.z = std::max(0.01f, r.z);
    const float f = fresnel(std::max(0.0f, -dot(ray.dir, n)), 0.02f);
    Vec3 mirrored = m_sky.light(r, spot.footprint > 0.002f ? 1.0f : 0.0f);
    Sample seen;
    if (object && object({Vec3{spot.p.x, spot.p.y, 0.001f}, r, ray.pixelAngle}, seen)) {
        mirrored = seen.color;
    } else {
        const float facing = dot(r, light.sunDir);
        if (facing > 0.99f)
            mirrored += light.sun * (25.0f * thin * std::pow(facing, 2500.0f));
    }
    Spot bed = spot;
    bed.albedo = spot.albedo * Vec3{0.8f, 0.8f, 0.8f};
    bed.surface = normalize(mix(spot.surface, Vec3{0, 0, 1}, 0.3f));
    bed.wet = 0;
    bed.gloss = 0;
    const float veil = 1.0f - std::exp(-spot.film * murk);
    const Vec3 below =
        mix(groundLight(bed, ray.dir), waterTint * luminance(light.sky + light.sun * 0.5f), veil);
    return below * (1 - f) + mirrored * f;
}

Sample PuddleGround::shade(const Ray& ray) const
{
    Sample out;
    if (object && object(ray, out))
        return out;
    if (ray.dir.z > -0.004f) {
        out.color = m_sky.light(ray.dir);
        out.depth = 1000;
        return out;
    }
    const float t = -ray.origin.z / ray.dir.z;
    const Vec2 p{ray.origin.x + ray.dir.x * t, ray.origin.y + ray.dir.y * t};
    out.depth = t;
    Spot spot = spotAt(p, ray.pixelAngle * t * (0.5f + 0.5f / std::max(0.12f, -ray.dir.z)));
    const Overlay& over = spot.over;
    if (spot.film <= 0 || (over.floats && over.alpha > 0.5f)) {
        spot.lay(m_material.relief());
        out.color = groundLight(spot, ray.dir);
        out.part = over.alpha > 0.5f ? over.part : std::uint8_t(0);
        return out;
    }
    if (over.floats)
        spot.albedo = spot.albedo * (1.0f - over.shadow);
    else
        spot.lay(m_material.relief());
    out.color = waterLight(spot, ray);
    return out;
}

std::vector<Ring> rainRings(Vec2 center, Vec2 spread, int count, std::uint32_t seed)
{
    Rng rng(seed);
    std::vector<Ring> rings;
    for (int i = 0; i < count; ++i) {
        const Vec2 at{
            center.x + rng.range(-1, 1) * spread.x, center.y + rng.range(-1, 1) * spread.y};
        const float age = rng.uniform();
        const float radius = 0.006f + 0.10f * age;
        rings.push_back(
            {at, radius, 0.00042f * (1.15f - age), 0.011f + 0.008f * age, 0.008f + 0.018f * age});
        if (age > 0.35f) // a smaller inner ring from the splash jet falling back
            rings.push_back({at, radius * 0.45f, 0.0002f * (1.1f - age), 0.010f, 0.010f});
    }
    return rings;
}

} // namespace wainscot::samples
