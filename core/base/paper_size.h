// Sizes of paper by name or by measure. Always upright: the shorter side is the width.
#pragma once

#include "core/base/geometry.h"
#include "core/base/result.h"

#include <QString>
#include <QStringList>

namespace wainscot {

// "A0".."A5" (ISO 216), "Letter", "Legal", "Tabloid" (US), in any letter case, or a measure in
// inches or millimetres: "24x36in", "600x900mm". Each side from 25 mm to 5080 mm, the longest a
// PDF page may be (14,400 units; ISO 19005-2, 6.1.13). WrongUse otherwise, saying what is known.
Result<SizeMm> paperSizeFromText(const QString& text);

// The known names, largest ISO size first.
[[nodiscard]] QStringList paperSizeNames();

// The name of a size either way up, within 0.5 mm; otherwise "600 × 900 mm".
[[nodiscard]] QString nameOfPaper(SizeMm size);

} // namespace wainscot
