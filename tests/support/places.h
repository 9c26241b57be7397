#pragma once

#include <QString>

namespace wainscot {

// Where a file of tests/data lies; `path` begins below that folder.
QString testData(const char* path);
// Where a file of this project lies; `path` begins at its top.
QString sourceFile(const char* path);

} // namespace wainscot
