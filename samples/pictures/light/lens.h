// What a lens does to light: blur out of focus, and glare around what is very bright.
#pragma once

#include <vector>

#include "samples/pictures/light/film.h"

namespace wainscot::samples {

// The buffer's light, out of focus as `film` says; the buffer's depths are used up.
std::vector<Vec3> lensBlurred(LightBuffer& buffer, const Film& film);

// Mixes a wide soft halo into the pixels; amount 0..1.
void applyGlare(std::vector<Vec3>& pixels, int width, int height, float amount);

} // namespace wainscot::samples
