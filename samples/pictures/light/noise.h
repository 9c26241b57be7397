// Lattice noise. A period > 0 makes the pattern tile after that many cells.
#pragma once

#include <cstdint>

namespace wainscot::samples {

float noise2(float x, float y, std::uint32_t seed, int period = 0); // -1..1, smooth
float noise3(float x, float y, float z, std::uint32_t seed); // -1..1, smooth
float fbm2(float x, float y, int octaves, std::uint32_t seed, int period = 0);
float fbm3(float x, float y, float z, int octaves, std::uint32_t seed);

struct CellHit {
    float f1; // distance to the nearest point
    float f2; // distance to the second nearest
    std::uint32_t cell; // random number of the nearest cell
    float dx, dy; // offset from that point
};
CellHit cells2(float x, float y, std::uint32_t seed, int period = 0);

} // namespace wainscot::samples
