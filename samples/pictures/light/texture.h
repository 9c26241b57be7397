// Float textures with mip levels, filled from a function or from a QImage.
#pragma once

#include <QImage>

#include <vector>

#include "samples/pictures/light/math.h"
#include "samples/pictures/light/parallel.h"

namespace wainscot::samples {

struct Texel {
    float v[4];
};

class Texture {
public:
    enum class Edge { Clamp, Repeat };

    Texture() = default;
    Texture(int width, int height, Edge edge)
        : m_edge(edge)
    {
        m_levels.push_back({width, height, std::vector<Texel>(size_t(width) * size_t(height))});
    }

    int width() const { return m_levels[0].width; }
    int height() const { return m_levels[0].height; }
    Texel& at(int x, int y) { return m_levels[0].texels[size_t(y) * size_t(width()) + size_t(x)]; }
    const Texel& at(int x, int y) const
    {
        return m_levels[0].texels[size_t(y) * size_t(width()) + size_t(x)];
    }

    // fn(x, y) -> Texel for every texel of level 0.
    template <class Fn> void fill(Fn&& fn)
    {
        parallelRows(height(), [&](int y) {
            for (int x = 0; x < width(); ++x)
                at(x, y) = fn(x, y);
        });
    }
    void buildMips();

    // u, v in 0..1; lod in mip levels (0 = full resolution).
    Texel sample(float u, float v, float lod) const;

private:
    struct Level {
        int width = 0, height = 0;
        std::vector<Texel> texels;
    };
    Texel bilinear(const Level& level, float u, float v) const;

    std::vector<Level> m_levels;
    Edge m_edge = Edge::Clamp;
};

// Red, green, blue as linear light in v[0..2], alpha in v[3].
Texture textureFromImage(const QImage& image, Texture::Edge edge);

// Replaces v[1], v[2] of a repeating texture by the slope of v[0]
// (v[0] and the texel spacing both in metres).
void storeSlopes(Texture& texture, float metresPerTexel);

} // namespace wainscot::samples
