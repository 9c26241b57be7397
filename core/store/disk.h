// Makes sure that what was written is on the disk. Private to core/store.
#pragma once

#include <QString>

namespace wainscot {

// False when the system could not promise it.
[[nodiscard]] bool syncFile(const QString& path);

// A new name is only safe once its folder is on the disk too.
[[nodiscard]] bool syncFolder(const QString& folder);

// POSIX rename: replaces at once, so nobody ever sees half a file under its name. Synced.
[[nodiscard]] bool renameSafely(const QString& from, const QString& to);

} // namespace wainscot
