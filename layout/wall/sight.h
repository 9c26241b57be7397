// What an eye makes out on a wall from where it stands: angles, the blur of weaker sight, and
// whether letters can be read.
#pragma once

#include "core/base/geometry.h"

#include <array>

namespace wainscot::wall {

// Somebody in front of the middle of a panel, looking at that middle.
struct Standing {
    Mm distance = Mm(2000); // of the eyes from the wall, 300 and more
    Mm eyes = Mm(1000); // above the floor
    Mm middle = Mm(1200); // of the panel, above the floor
    double acuity = 1; // decimal acuity, above 0 to 2
    friend bool operator==(const Standing&, const Standing&) = default;
};

// How tall something upright on the panel appears, in arcminutes. `at`: its middle, from the
// panel's upper left corner. Exact also beside and above the line of sight.
[[nodiscard]] double arcminutesOf(
    Mm height, PointMm at, const SizeMm& panel, const Standing& standing);

enum class Legibility {
    Easy,
    Effort, // capitals below 16 arcminutes
    Gone, // capitals below five: the letters themselves are lost
};
// Both limits grow as sight weakens. Sources: 16 arcminutes NUREG-0700 rev. 2, 1.3.1-4, taken to
// hold down to acuity 0.7 and in proportion below (DIN 1450:2013-04); five arcminutes divided by
// the acuity = the letter that decimal acuity is measured with (1.45 mm at 1 m for acuity 1).
[[nodiscard]] Legibility legibilityOf(double capArcminutes, double acuity);
[[nodiscard]] double easyFrom(double acuity); // arcminutes of a capital
[[nodiscard]] double goneBelow(double acuity); // arcminutes of a capital

// Standard deviation, in arcminutes, of the Gaussian that blurs as this acuity does: it lets a
// tenth of the contrast through at 30 x acuity cycles per degree, where the strokes of the limiting
// letter repeat. The tenth is common practice for the limit of resolution, no source.
[[nodiscard]] double blurArcminutes(double acuity);
// The blur to add to a picture that a person of acuity 1 looks at, when the picture shows
// everything `magnified` times as large as it appears from where one stands: that person's own eye
// adds the rest. Arcminutes in the picture.
[[nodiscard]] double addedBlurArcminutes(double acuity, double magnified);

// The panel's corners where the eye sees them, as tangents from the line of sight (x to the right,
// y downwards): upper left, upper right, lower right, lower left. Times a distance they are the
// picture on a plane at that distance.
struct Tangent {
    double x = 0;
    double y = 0;
};
[[nodiscard]] std::array<Tangent, 4> cornersOf(const SizeMm& panel, const Standing& standing);
// A point of the wall, `across` from the panel's middle and `above` the floor.
[[nodiscard]] Tangent seen(Mm across, Mm above, const Standing& standing);

} // namespace wainscot::wall
