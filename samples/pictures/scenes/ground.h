// Ground materials as tiling relief textures.
#pragma once

#include <cstdint>

#include "samples/pictures/light/texture.h"

namespace wainscot::samples {

struct GroundPoint {
    float height = 0; // metres, about 0 .. relief
    Vec2 slope;
    float albedo = 0;
};

class GroundMaterial {
public:
    enum class Kind { Asphalt, Soil, Sand, Stone };
    // zoom < 1 shrinks the pattern, for close-ups.
    GroundMaterial(Kind kind, std::uint32_t seed, float zoom = 1);

    // footprint: size of one picture element on the ground, metres.
    GroundPoint at(Vec2 p, float footprint) const;
    float relief() const { return m_relief; }

private:
    Texture m_tile;
    float m_size = 0.6f; // metres covered by the tile
    float m_relief = 0.003f;
};

} // namespace wainscot::samples
