// Lengths as a person writes them: "1.5m", "3 mm", "59in".
#pragma once

#include "core/base/quantity.h"
#include "core/base/result.h"

#include <QString>

namespace wainscot {

// A number of 0 or more (decimal point or comma) and a unit: mm, cm, m, in. The unit must be
// there, so that nobody prints in the wrong one. WrongUse otherwise, with what was expected.
Result<Mm> lengthFromText(const QString& text);

} // namespace wainscot
