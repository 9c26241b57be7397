// Contact sheets: one document laid out in several ways, drawn by the real painter, with what it
// fails.
#pragma once

#include "tests/support/wall_quality.h"

#include <span>

namespace wainscot::engine {

// Writes FOLDER/<number>.png; makes the folder.
void drawContactSheet(
    const QString& folder, const walls::Sheet& sheet, std::span<const walls::Judged> judged);

} // namespace wainscot::engine
