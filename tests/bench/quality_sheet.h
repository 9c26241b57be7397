// Contact sheets: one document laid out three ways, drawn by the real painter, with what it fails.
#pragma once

#include "tests/support/wall_quality.h"

#include <array>

namespace wainscot::engine {

// Writes FOLDER/<number>.png; makes the folder.
void drawContactSheet(
    const QString& folder, const walls::Sheet& sheet, const std::array<walls::Judged, 3>& judged);

} // namespace wainscot::engine
