// What all targets share: promises, and a place for files.
#include "tests/fuzz/targets.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QTemporaryDir>

#include <cstdio>
#include <cstdlib>

namespace wainscot::fuzz {

void must(bool holds, const char* promise)
{
    if (holds)
        return;
    std::fprintf(stderr, "broken promise: %s\n", promise);
    std::abort();
}

QByteArray view(const std::uint8_t* bytes, std::size_t count)
{
    return QByteArray::fromRawData(reinterpret_cast<const char*>(bytes), qsizetype(count));
}

QString place()
{
    static const QTemporaryDir folder(
        (QFileInfo(QStringLiteral("/dev/shm")).isWritable() ? QStringLiteral("/dev/shm")
                                                            : QDir::tempPath())
        + QStringLiteral("/wainscot-fuzz-XXXXXX"));
    return folder.path();
}

void put(const QString& path, const std::uint8_t* bytes, std::size_t count)
{
    QFile file(path);
    must(file.open(QIODevice::WriteOnly | QIODevice::Truncate), "a place to write");
    file.write(reinterpret_cast<const char*>(bytes), qint64(count));
}

} // namespace wainscot::fuzz
