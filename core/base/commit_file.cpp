#include "core/base/commit_file.h"

#include <QSaveFile>

#include <unistd.h>

namespace wainscot {

bool commitWhole(QSaveFile& file)
{
    if (!file.flush() || ::fsync(file.handle()) != 0) {
        file.cancelWriting();
        return false;
    }
    return file.commit();
}

} // namespace wainscot
