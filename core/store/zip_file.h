// One ZIP file, written or read from its beginning to its end. Private to core/store.
#pragma once

#include "core/base/result.h"

#include <QString>

#include <functional>
#include <memory>
#include <optional>

class QIODevice;

namespace wainscot {

// Takes pieces of an entry's content one after the other; an error ends the reading.
using TakeBytes = std::function<Result<>(const char* bytes, qint64 count)>;

class ZipWriter {
public:
    // REQUIRES: the device is open and outlives the writer
    explicit ZipWriter(QIODevice& to);
    ~ZipWriter();
    ZipWriter(const ZipWriter&) = delete;
    ZipWriter& operator=(const ZipWriter&) = delete;

    // An entry of exactly `bytes`; its content follows by `write`. Pictures are packed already.
    Result<> begin(const QString& name, qint64 bytes, bool compress);
    Result<> write(const char* bytes, qint64 count);
    Result<> finish(); // nothing counts before

private:
    struct State;
    std::unique_ptr<State> m_state;
};

struct ZipEntry {
    QString name;
    bool isFile = false; // not a folder, a link or a device
};

class ZipReader {
public:
    // REQUIRES: as above
    explicit ZipReader(QIODevice& from);
    ~ZipReader();
    ZipReader(const ZipReader&) = delete;
    ZipReader& operator=(const ZipReader&) = delete;

    // Nothing after the last one. Damaged when the file is no ZIP archive or breaks off.
    Result<std::optional<ZipEntry>> next();
    Result<> read(const TakeBytes& take); // the content of the entry `next` came to

private:
    struct State;
    std::unique_ptr<State> m_state;
};

} // namespace wainscot
