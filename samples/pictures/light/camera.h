// A pinhole camera with slight barrel distortion. World: metres, z up.
#pragma once

#include "samples/pictures/light/math.h"

namespace wainscot::samples {

struct Ray {
    Vec3 origin, dir;
    float pixelAngle = 0; // radians per rendered pixel, for texture filtering
};

struct Camera {
    Vec3 position{0, -1.5f, 1.2f};
    Vec3 target{0, 0, 0};
    float fovDegrees = 60; // across the picture's width
    float rollDegrees = 0;
    float distortion = 0.012f;
};

// The camera prepared for one picture size.
class Projector {
public:
    Projector(const Camera& camera, int width, int height)
        : m_origin(camera.position)
        , m_forward(normalize(camera.target - camera.position))
        , m_halfWidth(float(width) * 0.5f)
        , m_halfHeight(float(height) * 0.5f)
        , m_tan(std::tan(camera.fovDegrees * kPi / 360.0f))
        , m_bend(camera.distortion)
    {
        const Vec3 right = normalize(cross(m_forward, Vec3{0, 0, 1})), up = cross(right, m_forward);
        const float roll = camera.rollDegrees * kPi / 180.0f;
        m_right = right * std::cos(roll) + up * std::sin(roll);
        m_up = up * std::cos(roll) - right * std::sin(roll);
    }
    Ray ray(float x, float y) const
    {
        const float u = (x - m_halfWidth) / m_halfWidth, v = (m_halfHeight - y) / m_halfWidth;
        const float scale = m_tan * (1.0f + m_bend * (u * u + v * v));
        return {m_origin,
            normalize(m_forward + m_right * (u * scale) + m_up * (v * scale)),
            m_tan / m_halfWidth};
    }

private:
    Vec3 m_origin, m_forward, m_right, m_up;
    float m_halfWidth, m_halfHeight, m_tan, m_bend;
};

} // namespace wainscot::samples
