#include "core/voice/words/resources.h"

#include <QFile>

// A static library's resources are taken in by name; the macro must stand outside any namespace.
static void useResources()
{
    Q_INIT_RESOURCE(words);
}

namespace wainscot {

QByteArray wordResource(const char* name)
{
    useResources();
    QFile file(QStringLiteral(":/words/") + QLatin1String(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace wainscot
