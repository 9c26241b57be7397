#include "tests/support/places.h"

namespace wainscot {

// The folder is told to this file alone, so that a build in another folder can reuse all others.
QString sourceFile(const char* path)
{
    return QStringLiteral(WAINSCOT_SOURCE_DIR "/") + QString::fromUtf8(path);
}

QString testData(const char* path)
{
    return sourceFile("tests/data/") + QString::fromUtf8(path);
}

} // namespace wainscot
