// A sheet of paper that takes strokes. Colours multiply, as pigments do.
#pragma once

#include <QImage>

#include <cstdint>
#include <vector>

#include "samples/pictures/light/math.h"

namespace wainscot::samples {

enum class Tool { Crayon, FeltPen, Pencil };

struct Stroke {
    std::vector<Vec2> points; // pixels
    Vec3 pigment; // linear transmittance of a full layer
    float width = 30; // pixels
    float pressure = 0.8f; // 0..1
    Tool tool = Tool::Crayon;
};

class Paper {
public:
    Paper(int width, int height, Vec3 sheet, std::uint32_t seed);
    int width() const { return m_width; }
    int height() const { return m_height; }

    void draw(const Stroke& stroke);
    QImage scan(float shading) const; // as a flatbed scanner sees it
    QImage flat() const; // evenly lit, for use as a texture

private:
    float tooth(int x, int y) const { return m_tooth[size_t(y & 511) * 512 + size_t(x & 511)]; }

    int m_width, m_height;
    std::uint32_t m_seed;
    std::uint32_t m_strokes = 0;
    std::vector<Vec3> m_pixels;
    std::vector<float> m_load; // scratch: how much the current stroke leaves
    std::vector<float> m_tooth;
};

} // namespace wainscot::samples
