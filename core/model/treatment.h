// What was done to a photographed page or a face, told so that it can be done again from the
// untouched original: part of a picture's recipe.
#pragma once

#include "core/base/geometry.h"

#include <QString>

#include <array>
#include <optional>
#include <vector>

namespace wainscot {

// Four points of an upright picture, as one goes round: top left, top right, bottom right, bottom
// left of what lies between them.
using Corners = std::array<PointFraction, 4>;

// A page photographed from the side, made a rectangle again.
struct Straightening {
    Corners corners; // of the upright picture
    SizePx from; // the upright picture's size before it was straightened
    friend bool operator==(const Straightening&, const Straightening&) = default;
};

enum class Cover {
    Blur, // the region's large patches of colour, flowing into one another
    Mosaic, // the same patches with soft edges
    Flat, // one colour
};

// A region nobody shall recognise anything in. It counts from the upright picture before it is
// straightened, so that no later step can uncover it.
struct CoveredRegion {
    RectFraction region;
    Cover cover = Cover::Flat;
    bool oval = false; // only what lies in the ellipse that fills the region
    friend bool operator==(const CoveredRegion&, const CoveredRegion&) = default;
};

// Done in this order: cover, straighten, even out the light.
struct Treatment {
    std::vector<CoveredRegion> covered;
    std::optional<Straightening> straightening;
    bool evenLight = false; // of a photographed page
    [[nodiscard]] bool isNothing() const { return covered.empty() && !straightening && !evenLight; }
    friend bool operator==(const Treatment&, const Treatment&) = default;
};

// Whether four corners go round a region that can be straightened: inside the picture, clockwise,
// no dent, and no side shorter than a twentieth of the picture.
[[nodiscard]] bool canStraighten(const Corners& corners, SizePx upright);

// The size of the page between the corners, in pixels of the upright picture. Its shape is that of
// the page itself, seen by a camera with square pixels whose axis went through the middle of the
// picture (Zhang and He, Whiteboard Scanning and Image Enhancement, Microsoft Research
// MSR-TR-2003-39, section 3; formulas from memory, checked by projecting pages of known shape).
// Where sides are parallel in the picture a usual focal length is assumed, 0.6 of the diagonal. No
// side comes out shorter than the longer one of the two that show it.
[[nodiscard]] SizePx straightenedSize(const Corners& corners, SizePx upright);

// Turned a quarter clockwise with its picture.
[[nodiscard]] PointFraction quarterTurned(PointFraction point);
[[nodiscard]] RectFraction quarterTurned(const RectFraction& rect);
[[nodiscard]] Treatment quarterTurned(const Treatment& treatment);
// The EXIF orientation (1..8) of the same stored pixels after a further quarter turn clockwise.
[[nodiscard]] int quarterTurned(int orientation);

// One line for storage and for naming cached pixels; "" for no treatment. Equal treatments have
// equal lines.
[[nodiscard]] QString textOf(const Treatment& treatment);
[[nodiscard]] std::optional<Treatment> treatmentFromText(const QString& text);

} // namespace wainscot
