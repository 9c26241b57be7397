#include "core/store/pack_list.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>
#include <QSet>

namespace wainscot {

namespace {

constexpr int kFormat = 1;
const QString kFormatKey = QStringLiteral("wainscot_pack");
const QString kPartsKey = QStringLiteral("parts");
const QString kNameKey = QStringLiteral("name");
const QString kBytesKey = QStringLiteral("bytes");
const QString kShaKey = QStringLiteral("sha256");
constexpr qint64 kLargestPart = 1LL << 40;

bool isSha256(const QString& text)
{
    static const QRegularExpression digits(QStringLiteral("\\A[0-9a-f]{64}\\z"));
    return digits.match(text).hasMatch();
}

// Nothing else is ever written to a disk: no path that climbs, no name of the packer's choosing.
bool isPartOfABook(const PackedPart& part)
{
    return isSha256(part.sha256) && part.bytes >= 0 && part.bytes <= kLargestPart
        && (part.name == kPackedBookName || part.name == packedPictureName(part.sha256));
}

} // namespace

QString packedPictureName(const QString& sha256)
{
    return QStringLiteral("pictures/%1/%2").arg(sha256.left(2), sha256);
}

qint64 PackList::bytes() const
{
    qint64 sum = 0;
    for (const PackedPart& part : parts)
        sum += part.bytes;
    return sum;
}

QByteArray PackList::toJson() const
{
    QJsonArray all;
    for (const PackedPart& part : parts) {
        all.append(QJsonObject{
            {kNameKey, part.name}, {kBytesKey, double(part.bytes)}, {kShaKey, part.sha256}});
    }
    return QJsonDocument(QJsonObject{{kFormatKey, kFormat}, {kPartsKey, all}}).toJson();
}

Result<PackList> PackList::fromJson(const QByteArray& json, const QString& file)
{
    const auto damaged = [&](const QString& why) { return Error{ErrorCode::Damaged, file, why}; };
    const QJsonObject root = QJsonDocument::fromJson(json).object();
    if (!root[kFormatKey].isDouble())
        return damaged(QStringLiteral("it is no packed book"));
    if (root[kFormatKey].toInt() > kFormat)
        return Error{ErrorCode::TooNew, file, {}};
    PackList list;
    QSet<QString> names;
    for (const auto& value : root[kPartsKey].toArray()) {
        const QJsonObject one = value.toObject();
        const PackedPart part{
            one[kNameKey].toString(), qint64(one[kBytesKey].toDouble(-1)), one[kShaKey].toString()};
        if (!isPartOfABook(part) || names.contains(part.name))
            return damaged(QStringLiteral("its list names what is no part of a book"));
        names.insert(part.name);
        list.parts.push_back(part);
    }
    if (list.parts.empty() || list.parts.front().name != kPackedBookName)
        return damaged(QStringLiteral("there is no book in it"));
    return list;
}

} // namespace wainscot
