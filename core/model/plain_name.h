// A name as it can be shown: nothing in it that is not seen.
#pragma once

#include <QString>

namespace wainscot {

// Without control characters, marks that turn the direction of writing (Unicode UAX #9, 2), and
// what takes no room (zero-width space, byte order mark), of which one name could hide in another
// or turn a line round; spaces as in simplified(). The joiners that scripts need stay.
[[nodiscard]] QString plainName(const QString& name);

} // namespace wainscot
