// Where a passphrase comes from: never from the command line, which every program can read.
#pragma once

#include "core/base/result.h"

#include <QString>

namespace wainscot::cli {

// WAINSCOT_PASSPHRASE where it is set; else a line of standard input, asked for without showing it
// (twice for a new phrase) where a person sits there. WrongUse when there is none.
[[nodiscard]] Result<QString> passphrase(bool isNew);

} // namespace wainscot::cli
