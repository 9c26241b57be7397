// Blur as an eye blurs: in light, not in the numbers of a picture.
#pragma once

#include <QImage>

namespace wainscot {

// A Gaussian of the given standard deviation (px), applied to linear light (sRGB decoded, IEC
// 61966-2-1). Edges are continued outwards. Below 0.2 px the picture comes back as it is.
[[nodiscard]] QImage blurredLight(const QImage& image, double sigmaPx);

} // namespace wainscot
