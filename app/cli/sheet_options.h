// What several commands are told of sheets of paper: --sheets, --overlap, --margin, --no-white.
#pragma once

#include "app/cli/arguments.h"
#include "app/jobs/export_job.h"

namespace wainscot::cli {

// REQUIRES: --sheets is there
[[nodiscard]] Result<SheetWishes> sheetsFrom(const Arguments& arguments);

} // namespace wainscot::cli
