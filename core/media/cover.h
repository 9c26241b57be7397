// Covering regions of a picture for good: what was there is replaced, not veiled.
#pragma once

#include "core/media/page_part.h"
#include "core/model/treatment.h"

#include <QImage>

#include <array>
#include <vector>

namespace wainscot {

using ColourBytes = std::array<double, 3>; // red, green, blue of sRGB, 0..255

// What stands in the place of a region: nine colours at most, each the mean of a ninth of it, so
// that nothing finer is left than a third of the region. Worked out once from a small copy, the
// same for every size in which the picture is shown.
class CoverPatches {
public:
    CoverPatches(const CoveredRegion& region, const QImage& small);

    [[nodiscard]] const RectFraction& region() const { return m_region; }
    [[nodiscard]] bool isOval() const { return m_oval; }
    // Colour at a place of the region, 0..1 across and down it.
    [[nodiscard]] ColourBytes at(double across, double down) const;

private:
    [[nodiscard]] const ColourBytes& patch(int x, int y) const;

    RectFraction m_region;
    bool m_oval = false;
    int m_across = 1;
    int m_down = 1;
    double m_edge = 1; // share of a patch over which one colour becomes the next
    std::vector<ColourBytes> m_colours;
};

// Rows of the upright picture with the regions replaced. They reach as far beyond each region as
// shrinking has mixed its pixels with their neighbours (two pixels, see resample.h).
// REQUIRES: source is grey or RGB
[[nodiscard]] std::unique_ptr<RowSource> covered(
    std::unique_ptr<RowSource> source, const PagePart& part, std::vector<CoverPatches> patches);

} // namespace wainscot
