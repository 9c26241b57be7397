// Marching and shading of signed-distance solids.
#pragma once

#include "samples/pictures/light/camera.h"
#include "samples/pictures/light/math.h"
#include "samples/pictures/scenes/puddle.h"
#include "samples/pictures/scenes/sky.h"

namespace wainscot::samples {

// Distance helpers; all lengths in metres.
inline float smoothMin(float a, float b, float k)
{
    const float h = std::max(k - std::fabs(a - b), 0.0f) / k;
    return std::min(a, b) - h * h * k * 0.25f;
}
inline float smoothMax(float a, float b, float k)
{
    return -smoothMin(-a, -b, k);
}
inline float capsule(Vec3 p, Vec3 a, Vec3 b, float ra, float rb)
{
    const Vec3 pa = p - a, ba = b - a;
    const float h = clamp01(dot(pa, ba) / dot(ba, ba));
    return length(pa - ba * h) - mix(ra, rb, h);
}
inline float torus(Vec3 p, float ring, float tube) // axis z
{
    const float q = length(Vec2{p.x, p.y}) - ring;
    return std::sqrt(q * q + p.z * p.z) - tube;
}
inline float roundBox(Vec3 p, Vec3 half, float r)
{
    const Vec3 q{
        std::fabs(p.x) - half.x + r, std::fabs(p.y) - half.y + r, std::fabs(p.z) - half.z + r};
    const Vec3 o{std::max(q.x, 0.f), std::max(q.y, 0.f), std::max(q.z, 0.f)};
    return length(o) + std::min(std::max(q.x, std::max(q.y, q.z)), 0.0f) - r;
}
inline float ellipsoid(Vec3 p, Vec3 r)
{
    const float k0 = length(Vec3{p.x / r.x, p.y / r.y, p.z / r.z});
    const float k1 = length(Vec3{p.x / (r.x * r.x), p.y / (r.y * r.y), p.z / (r.z * r.z)});
    return k0 * (k0 - 1.0f) / std::max(1e-6f, k1);
}

struct Bounds {
    Vec3 center;
    float radius = 0;
    bool hit(const Ray& ray, float& near, float& far) const
    {
        const Vec3 oc = ray.origin - center;
        const float b = dot(oc, ray.dir), c = dot(oc, oc) - radius * radius, disc = b * b - c;
        if (disc <= 0)
            return false;
        const float root = std::sqrt(disc);
        near = std::max(0.0f, -b - root);
        far = -b + root;
        return far > near;
    }
};

// A capsule that encloses part of a solid; tells cheaply whether a ray comes near.
struct Hull {
    Vec3 a, b;
    float radius = 0;
    bool touches(const Ray& ray, float& near, float& far) const
    {
        const Vec3 u = b - a, w = ray.origin - a;
        const float uu = dot(u, u), ud = dot(u, ray.dir), uw = dot(u, w), dw = dot(ray.dir, w);
        const float denominator = uu - ud * ud;
        const float s = clamp01(denominator > 1e-9f ? (uw - ud * dw) / denominator : 0.0f);
        const float t = s * ud - dw; // closest approach along the ray
        const Vec3 gap = w + ray.dir * t - u * s;
        if (dot(gap, gap) > radius * radius)
            return false;
        const float reach = 1.2f * radius + std::fabs(ud);
        near = std::min(near, std::max(0.0f, t - reach));
        far = std::max(far, t + reach);
        return far > 0;
    }
};

template <class Map>
bool march(const Map& map, const Ray& ray, float near, float far, float& t, int steps = 90)
{
    t = near;
    for (int i = 0; i < steps; ++i) {
        const float d = map(ray.origin + ray.dir * t);
        if (d < 0.0002f + 0.3f * ray.pixelAngle * t)
            return true;
        t += d * 0.9f;
        if (t > far)
            return false;
    }
    return false;
}

template <class Map> Vec3 mapNormal(const Map& map, Vec3 p, float e)
{
    const Vec3 a{1, -1, -1}, b{-1, -1, 1}, c{-1, 1, -1}, d{1, 1, 1};
    return normalize(
        a * map(p + a * e) + b * map(p + b * e) + c * map(p + c * e) + d * map(p + d * e));
}

template <class Map> float ambientOpenness(const Map& map, Vec3 p, Vec3 n, float reach)
{
    float blocked = 0, weight = 1;
    for (int i = 1; i <= 4; ++i) {
        const float h = reach * float(i) * 0.25f;
        blocked += weight * std::max(0.0f, h - map(p + n * h)) / reach;
        weight *= 0.75f;
    }
    return clamp01(1.0f - 1.3f * blocked);
}

// 0 in shade .. 1 lit; softness is roughly the light's angular radius.
template <class Map>
float softShadow(const Map& map, Vec3 p, Vec3 toLight, float reach, float softness)
{
    float lit = 1, t = reach * 0.012f;
    for (int i = 0; i < 16 && t < reach; ++i) {
        const float d = map(p + toLight * t);
        lit = std::min(lit, 0.5f + 0.5f * d / (softness * t));
        if (lit <= 0)
            return 0;
        t += std::clamp(d, reach * 0.025f, reach * 0.2f);
    }
    lit = clamp01(lit);
    return lit * lit * (3 - 2 * lit);
}

struct Finish {
    Vec3 albedo;
    float gloss = 0; // weight of the mirrored sky, on top of Fresnel
    float blur = 4; // mip level of the mirrored sky
    float spark = 60; // exponent of the sun's highlight
    float sheen = 0; // light scattered at grazing angles, for cloth
};

struct Outdoors {
    const Daylight& light;
    const SkyDome& sky;
    Vec3 bounce; // light thrown up by the ground
};

// Outdoor light on a solid; `open` is how much of the sky it sees, `sunlit` how much of the sun:
// sky from above, bounce from below, sun, reflection.
inline Vec3 lightSolid(
    const Finish& m, Vec3 n, Vec3 view, const Outdoors& around, float open, float sunlit)
{
    const Daylight& light = around.light;
    const Vec3 bounce = around.bounce;
    const float up = 0.5f + 0.5f * n.z;
    const float lean = 1.0f + 0.22f * (n.x * light.sunDir.x + n.y * light.sunDir.y);
    Vec3 c = m.albedo * mix(bounce, light.sky * lean, up) * open;
    c += m.albedo * light.sun * (std::max(0.0f, dot(n, light.sunDir)) * sunlit);
    const float cosView = std::max(0.0f, -dot(n, view));
    if (m.gloss > 0) {
        Vec3 r = reflect(view, n);
        const Vec3 seen = r.z > 0 ? around.sky.light(r, m.blur) : bounce * 0.35f;
        const float f = fresnel(cosView, 0.04f) * m.gloss;
        c = c * (1 - f) + seen * (f * (0.3f + 0.7f * open));
        const Vec3 half = normalize(light.sunDir - view);
        c +=
            light.sun * (m.gloss * 0.7f * sunlit * std::pow(std::max(0.0f, dot(n, half)), m.spark));
    }
    if (m.sheen > 0)
        c += m.albedo * light.sky * (m.sheen * std::pow(1 - cosView, 3.0f) * open);
    return c;
}

} // namespace wainscot::samples
