// The light on a photographed page: found from a small copy, then divided out.
#pragma once

#include "core/media/page_part.h"

#include <QImage>

#include <array>
#include <vector>

namespace wainscot {

// How bright bare paper would be at every place of a page. Bare paper is what lies on the upper
// envelope of all three colours: a plane is fitted to the logarithms of the brightest pixels of
// each of 24 x 24 fields, again and again, with ever less weight for what lies under it (reweighted
// least squares with one-sided weights; the method is general, the numbers are ours). Fields that
// are grey like paper, and not darker than 0.7 of it, then show how the light differs from the
// plane; between them it settles smoothly. So a crayoned sky is no shadow, whatever its size; large
// parts in light grey may be taken for one, and a hard-edged shadow leaves a seam. Light
// multiplies; sRGB's curve is near enough to a power that dividing its values undoes it.
class PageLight {
public:
    // `small`: the whole page, at some hundred pixels a side. REQUIRES: not a null image
    explicit PageLight(const QImage& small);

    // Brightness of paper, 0..255; x and y 0..1 of the page.
    [[nodiscard]] double at(int channel, double x, double y) const;
    // What a channel is multiplied with, so that paper comes out white; at most kMostGain.
    [[nodiscard]] double gain(int channel, double x, double y) const;
    static constexpr double kMostGain = 4;
    static constexpr double kPaperWhite = 250; // what bare paper becomes, of 255

    static constexpr int kFields = 24; // along each side

private:
    std::array<std::vector<double>, 3> m_paper; // logarithms, by field
};

// Rows of the page in even light. REQUIRES: source is grey or RGB
[[nodiscard]] std::unique_ptr<RowSource> evened(
    std::unique_ptr<RowSource> source, const PagePart& part, const PageLight& light);

} // namespace wainscot
