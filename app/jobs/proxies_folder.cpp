#include "app/jobs/proxies_folder.h"

#include <QCryptographicHash>
#include <QDir>
#include <QStandardPaths>

namespace wainscot {

QString proxiesFolderOf(const QString& bookFolder)
{
    const QByteArray name = QCryptographicHash::hash(
        QDir(bookFolder).absolutePath().toUtf8(), QCryptographicHash::Sha256);
    return QStandardPaths::writableLocation(QStandardPaths::GenericCacheLocation)
        + QStringLiteral("/wainscot/") + QString::fromLatin1(name.toHex().left(16));
}

} // namespace wainscot
