#include "core/store/book_data.h"

#include <QFile>

// A static library's resources are taken in by name; the macro must stand outside any namespace.
static void useResources()
{
    Q_INIT_RESOURCE(data_format);
}

namespace wainscot {

QString dataFormat()
{
    useResources();
    QFile file(QStringLiteral(":/store/data_format.txt"));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

} // namespace wainscot
