// Where the small copies of a book's pictures are kept: apart from the book, because they can be
// made again and are not worth carrying.
#pragma once

#include <QString>

namespace wainscot {

[[nodiscard]] QString proxiesFolderOf(const QString& bookFolder);

} // namespace wainscot
