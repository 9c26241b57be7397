// Where this operating system keeps dictionaries.
#include <QCoreApplication>
#include <QDir>
#include <QStandardPaths>

#include "app/ui/writing/spelling.h"

namespace wainscot::ui {

QStringList dictionaryFolders()
{
    // DICPATH is what hunspell's own program reads.
    QStringList folders =
        qEnvironmentVariable("DICPATH").split(QDir::listSeparator(), Qt::SkipEmptyParts);
    folders << QCoreApplication::applicationDirPath() + QStringLiteral("/dictionaries");
    folders << QStandardPaths::locateAll(QStandardPaths::GenericDataLocation,
        QStringLiteral("hunspell"),
        QStandardPaths::LocateDirectory);
#ifdef Q_OS_MACOS
    folders << QDir::homePath() + QStringLiteral("/Library/Spelling")
            << QStringLiteral("/Library/Spelling");
#endif
    return folders;
}

} // namespace wainscot::ui
