#include "app/ui/canvas/incoming.h"

#include <QFileInfo>
#include <QMimeData>
#include <QUrl>

namespace wainscot::ui {

namespace {

constexpr std::pair<const char*, DrawerItem::Kind> kKinds[] = {
    {"quote", DrawerItem::Kind::Quote},
    {"picture", DrawerItem::Kind::Picture},
    {"note", DrawerItem::Kind::Note},
    {"observation", DrawerItem::Kind::Observation},
};

// By the name only: the gather job looks at the bytes and says what it cannot take.
bool looksLikePicture(const QString& path)
{
    static const QStringList known{QStringLiteral("jpg"),
        QStringLiteral("jpeg"),
        QStringLiteral("png"),
        QStringLiteral("webp"),
        QStringLiteral("tif"),
        QStringLiteral("tiff"),
        QStringLiteral("heic"),
        QStringLiteral("heif"),
        QStringLiteral("pdf")}; // scanned
    return known.contains(QFileInfo(path).suffix().toLower());
}

} // namespace

QByteArray toBytes(DrawerItem item)
{
    for (const auto& [name, kind] : kKinds) {
        if (kind == item.kind)
            return QByteArray(name) + ' ' + QByteArray::number(qint64(item.id));
    }
    return {};
}

std::optional<DrawerItem> drawerItemFrom(const QByteArray& bytes)
{
    const QList<QByteArray> parts = bytes.split(' ');
    if (parts.size() != 2)
        return std::nullopt;
    for (const auto& [name, kind] : kKinds) {
        if (parts[0] == name)
            return DrawerItem{kind, parts[1].toLongLong()};
    }
    return std::nullopt;
}

bool Incoming::isEmpty() const
{
    return !item && pieces.isEmpty() && !isPicture() && text.trimmed().isEmpty();
}

Incoming incomingFrom(const QMimeData& mime, bool whole)
{
    Incoming incoming;
    incoming.item = drawerItemFrom(mime.data(QString::fromLatin1(kDrawerMime)));
    incoming.pieces = mime.data(QString::fromLatin1(kPiecesMime));
    for (const QUrl& url : mime.urls()) {
        if (url.isLocalFile() && looksLikePicture(url.toLocalFile()))
            incoming.files << url.toLocalFile();
    }
    incoming.hasImage = mime.hasImage();
    if (whole && incoming.hasImage && incoming.files.isEmpty())
        incoming.image = qvariant_cast<QImage>(mime.imageData());
    // A file manager offers paths as text too; they are nobody's words.
    if (mime.hasText() && !mime.hasUrls())
        incoming.text = mime.text();
    return incoming;
}

} // namespace wainscot::ui
