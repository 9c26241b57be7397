// A file that appears whole or not at all.
#pragma once

class QSaveFile;

namespace wainscot {

// Gives a written file its name once all of it is on the disk. QSaveFile's own commit does not
// tell when the last part could not be written or forced out, and would name a file cut short.
// False leaves what stood under the name as it was.
[[nodiscard]] bool commitWhole(QSaveFile& file);

} // namespace wainscot
