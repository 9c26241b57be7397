// Whether a scanned page has anything on it.
#pragma once

#include <QImage>

namespace wainscot {

// True only when not even a faint mark is found: a child's light pencil must never pass for paper.
// Marks are looked for in spots of half a millimetre that are darker or lighter than the paper
// around them; the paper's own tone, a slow shadow across it and its grain do not count, nor do
// specks of dust (less than a square millimetre in all) and the outermost 3 mm, where scanners show
// the edge of the sheet.
// `image` is opaque and has `dpi` pixels an inch, 20 or more.
[[nodiscard]] bool isBlankPage(const QImage& image, double dpi);

} // namespace wainscot
