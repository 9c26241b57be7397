// At what height people's eyes are, and how sharp they see: presets, each with its source.
#pragma once

#include "core/base/quantity.h"

#include <span>

namespace wainscot::wall {

struct EyesPreset {
    const char* name = ""; // stable, for settings
    Mm height; // of the eyes above the floor
    const char* source = "";
};
// Youngest first, the last one seated.
[[nodiscard]] std::span<const EyesPreset> eyesPresets();

struct SightPreset {
    const char* name = ""; // stable, for settings
    double acuity = 1; // decimal: 1 resolves one arcminute, 0.5 two
    const char* source = "";
};
// Sharpest first.
[[nodiscard]] std::span<const SightPreset> sightPresets();

} // namespace wainscot::wall
