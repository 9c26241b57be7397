// How far two colours stand apart for the eye.
#pragma once

#include <QRgb>

namespace wainscot::check {

// Relative luminance of an sRGB colour, 0..1 (W3C WCAG 2, definition of relative luminance).
[[nodiscard]] double luminance(QRgb colour);

// (L1 + 0.05) / (L2 + 0.05), the lighter first: 1..21 (W3C WCAG 2, definition of contrast ratio).
[[nodiscard]] double contrast(QRgb one, QRgb other);

} // namespace wainscot::check
