// Small vector maths used by every scene.
#pragma once

#include <algorithm>
#include <cmath>

namespace wainscot::samples {

constexpr float kPi = 3.14159265f;

struct Vec2 {
    float x = 0, y = 0;
};
inline Vec2 operator+(Vec2 a, Vec2 b)
{
    return {a.x + b.x, a.y + b.y};
}
inline Vec2 operator-(Vec2 a, Vec2 b)
{
    return {a.x - b.x, a.y - b.y};
}
inline Vec2 operator*(Vec2 a, float s)
{
    return {a.x * s, a.y * s};
}
inline float dot(Vec2 a, Vec2 b)
{
    return a.x * b.x + a.y * b.y;
}
inline float length(Vec2 a)
{
    return std::sqrt(dot(a, a));
}
inline Vec2 rotate(Vec2 p, float angle)
{
    const float c = std::cos(angle), s = std::sin(angle);
    return {c * p.x - s * p.y, s * p.x + c * p.y};
}

struct Vec3 {
    float x = 0, y = 0, z = 0;
    Vec3& operator+=(Vec3 b)
    {
        x += b.x;
        y += b.y;
        z += b.z;
        return *this;
    }
};
inline Vec3 operator+(Vec3 a, Vec3 b)
{
    return {a.x + b.x, a.y + b.y, a.z + b.z};
}
inline Vec3 operator-(Vec3 a, Vec3 b)
{
    return {a.x - b.x, a.y - b.y, a.z - b.z};
}
inline Vec3 operator-(Vec3 a)
{
    return {-a.x, -a.y, -a.z};
}
inline Vec3 operator*(Vec3 a, float s)
{
    return {a.x * s, a.y * s, a.z * s};
}
inline Vec3 operator*(float s, Vec3 a)
{
    return a * s;
}
inline Vec3 operator*(Vec3 a, Vec3 b)
{
    return {a.x * b.x, a.y * b.y, a.z * b.z};
}
inline float dot(Vec3 a, Vec3 b)
{
    return a.x * b.x + a.y * b.y + a.z * b.z;
}
inline Vec3 cross(Vec3 a, Vec3 b)
{
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline float length(Vec3 a)
{
    return std::sqrt(dot(a, a));
}
inline Vec3 normalize(Vec3 a)
{
    return a * (1.0f / std::max(1e-12f, length(a)));
}
inline Vec3 reflect(Vec3 d, Vec3 n)
{
    return d - n * (2.0f * dot(d, n));
}

// Refracts d at a surface with normal n; returns false on total reflection.
inline bool refract(Vec3 d, Vec3 n, float eta, Vec3& out)
{
    const float c = -dot(d, n);
    const float k = 1.0f - eta * eta * (1.0f - c * c);
    if (k < 0)
        return false;
    out = d * eta + n * (eta * c - std::sqrt(k));
    return true;
}

inline float clamp01(float v)
{
    return std::min(1.0f, std::max(0.0f, v));
}
inline float mix(float a, float b, float t)
{
    return a + (b - a) * t;
}
inline Vec3 mix(Vec3 a, Vec3 b, float t)
{
    return a + (b - a) * t;
}
inline Vec2 mix(Vec2 a, Vec2 b, float t)
{
    return a + (b - a) * t;
}
inline float smoothstep(float a, float b, float v)
{
    const float t = clamp01((v - a) / (b - a));
    return t * t * (3.0f - 2.0f * t);
}
inline float luminance(Vec3 c)
{
    return 0.2126f * c.x + 0.7152f * c.y + 0.0722f * c.z;
}

// To the nearest whole number, for values that are not negative.
inline int nearest(float v)
{
    constexpr float half = 0.5f;
    return int(v + half);
}

// atan2 to about 1e-5 rad, several times faster than the library's.
inline float quickAtan2(float y, float x)
{
    const float ax = std::fabs(x), ay = std::fabs(y);
    const float q = std::min(ax, ay) / std::max(1e-20f, std::max(ax, ay)), s = q * q;
    float a = q
        * (0.99997726f
            + s
                * (-0.33262347f
                    + s
                        * (0.19354346f
                            + s * (-0.11643287f + s * (0.05265332f - 0.01172120f * s)))));
    if (ay > ax)
        a = 0.5f * kPi - a;
    if (x < 0)
        a = kPi - a;
    return y < 0 ? -a : a;
}

// Fresnel reflectance by Schlick; f0 = 0.02 is water, 0.04 glass and plastic.
inline float fresnel(float cosTheta, float f0)
{
    const float m = clamp01(1.0f - cosTheta);
    const float m2 = m * m;
    return f0 + (1.0f - f0) * m2 * m2 * m;
}

// An sRGB colour given as 0xRRGGBB, as linear light.
inline Vec3 srgb(unsigned rgb)
{
    const auto lin = [](unsigned v) { return std::pow(float(v & 255u) / 255.0f, 2.2f); };
    return {lin(rgb >> 16), lin(rgb >> 8), lin(rgb)};
}

} // namespace wainscot::samples
