// What a packed book consists of: names, sizes and SHA-256 of its parts. Private to core/store.
#pragma once

#include "core/base/result.h"

#include <QByteArray>
#include <QString>

#include <vector>

namespace wainscot {

inline const QString kPackListName = QStringLiteral("wainscot-pack.json"); // always first
inline const QString kPackedBookName = QStringLiteral("book.wainscot");
inline constexpr qint64 kLargestPackList = 64LL * 1024 * 1024;

struct PackedPart {
    QString name; // "book.wainscot" or "pictures/ab/ab12..."
    qint64 bytes = 0;
    QString sha256;
    [[nodiscard]] bool isPicture() const { return name != kPackedBookName; }
};

struct PackList {
    std::vector<PackedPart> parts; // the database first
    [[nodiscard]] qint64 bytes() const;
    [[nodiscard]] int pictures() const { return int(parts.size()) - 1; }
    [[nodiscard]] QByteArray toJson() const;
    // Damaged when it is no such list or names anything a book does not have; TooNew.
    static Result<PackList> fromJson(const QByteArray& json, const QString& file);
};

[[nodiscard]] QString packedPictureName(const QString& sha256);

} // namespace wainscot
