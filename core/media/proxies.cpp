#include "core/media/proxies.h"

#include "core/base/commit_file.h"
#include "core/media/jpeg_segments.h"
#include "core/media/jpeg_writer.h"
#include "core/media/orientation.h"
#include "core/media/resample.h"
#include "core/media/treat.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

namespace wainscot {

namespace {

constexpr int kThumbnailPx = 320;
constexpr int kScreenPx = 1600;
constexpr JpegStyle kThumbnailStyle{82, false};
constexpr JpegStyle kScreenStyle{85, false};

SizePx boxOf(ProxySize size)
{
    return {longestSidePx(size), longestSidePx(size)};
}

Result<Done> save(const QString& path, const QByteArray& bytes)
{
    QDir().mkpath(QFileInfo(path).path());
    QSaveFile file(path); // appears whole or not at all
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !commitWhole(file))
        return Error{ErrorCode::CannotWrite, QFileInfo(path).fileName(), file.errorString()};
    return Done{};
}

// Whether a file of ours is still as written: JPEG from its start to its end of image.
bool isWhole(const QString& path)
{
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.size() < 4)
        return false;
    const QByteArray start = file.read(3);
    return start == QByteArrayLiteral("\xff\xd8\xff") && file.seek(file.size() - 2)
        && file.read(2) == QByteArrayLiteral("\xff\xd9");
}

// How a picture is turned and treated, for the names of its copies.
QString variantOf(const PictureRecipe& whole)
{
    const QString turned = QString::number(whole.orientation);
    if (whole.treatment.isNothing())
        return turned;
    const QString treated = QStringLiteral("%1 %2x%3")
                                .arg(textOf(whole.treatment))
                                .arg(whole.size.width)
                                .arg(whole.size.height);
    const QByteArray hash =
        QCryptographicHash::hash(treated.toUtf8(), QCryptographicHash::Sha256).first(12);
    return turned + QLatin1Char('.') + QString::fromLatin1(hash.toHex());
}

} // namespace

int longestSidePx(ProxySize size)
{
    return size == ProxySize::Thumbnail ? kThumbnailPx : kScreenPx;
}

Proxies::Proxies(QString folder)
    : m_folder(std::move(folder))
{
}

QString Proxies::pathOf(const QString& sha256, const PictureRecipe& whole, ProxySize size) const
{
    return QStringLiteral("%1/%2/%3-%4-%5.jpg")
        .arg(m_folder, sha256.left(2), sha256, variantOf(whole))
        .arg(longestSidePx(size));
}

QImage Proxies::cached(const QString& sha256, const PictureRecipe& whole, ProxySize size) const
{
    QFile file(pathOf(sha256, whole, size));
    if (!file.open(QIODevice::ReadOnly))
        return {};
    const QByteArray bytes = file.readAll();
    const auto header = readJpegHeader(bytes);
    if (!header || !header->hasScan || header->size.isEmpty()
        || std::max(header->size.width, header->size.height) > longestSidePx(size))
        return {};
    const SizePx pixels = header->size;
    auto rows = openJpegRows(bytes, {{0, 0, pixels.width, pixels.height}, pixels, false});
    if (!rows)
        return {};
    const auto image = toImage(**rows);
    return image && !(*rows)->damaged() ? *image : QImage();
}

Result<QImage> Proxies::picture(
    const QString& sha256, const PictureRecipe& whole, ProxySize size) const
{
    if (QImage image = cached(sha256, whole, size); !image.isNull())
        return image;
    const auto at = static_cast<std::size_t>(qHash(sha256)) % m_locks.size();
    const std::lock_guard guard(m_locks[at]);
    if (QImage image = cached(sha256, whole, size); !image.isNull())
        return image; // another worker was faster
    if (const auto made = makeLocked(sha256, whole); !made)
        return made.error();
    QImage image = cached(sha256, whole, size);
    if (image.isNull()) {
        return Error{ErrorCode::CannotWrite,
            QFileInfo(pathOf(sha256, whole, size)).fileName(),
            QStringLiteral("cannot be read back")};
    }
    return image;
}

Result<Proxies::Made> Proxies::make(const QString& sha256, const PictureRecipe& whole) const
{
    const auto at = static_cast<std::size_t>(qHash(sha256)) % m_locks.size();
    const std::lock_guard guard(m_locks[at]);
    if (isWhole(pathOf(sha256, whole, ProxySize::Thumbnail))
        && isWhole(pathOf(sha256, whole, ProxySize::Screen)))
        return Made{false, true};
    return makeLocked(sha256, whole);
}

Result<Proxies::Made> Proxies::makeLocked(const QString& sha256, const PictureRecipe& whole) const
{
    const auto picture = openPicture(whole.path);
    if (!picture)
        return picture.error();
    const SizePx upright = Turning(whole.orientation).upright(picture->header.stored);
    const SizePx treated = treatedSize(whole, upright);
    TreatRequest request;
    request.part = {0, 0, treated.width, treated.height};
    request.size = fitted(treated, boxOf(ProxySize::Screen));
    request.yCbCr = true;
    auto rows = renderTreated(*picture, whole, request);
    if (!rows)
        return about(whole.path, rows.error());
    auto pixels = takeAll(**rows);
    if (!pixels)
        return about(whole.path, pixels.error());
    const Made made{(*rows)->damaged(), false};
    const PixelForm kind = (*rows)->kind();
    rows->reset(); // what the decoder held is free before anything is written

    const auto screen = writeJpeg(*rowsOf(*pixels, request.size, kind), kScreenStyle);
    const SizePx small = fitted(treated, boxOf(ProxySize::Thumbnail));
    const auto thumbnail = writeJpeg(
        *resampled(rowsOf(*std::move(pixels), request.size, kind), small), kThumbnailStyle);
    if (!screen || !thumbnail)
        return about(whole.path, screen ? thumbnail.error() : screen.error());
    if (const auto saved = save(pathOf(sha256, whole, ProxySize::Screen), *screen); !saved)
        return saved.error();
    if (const auto saved = save(pathOf(sha256, whole, ProxySize::Thumbnail), *thumbnail); !saved)
        return saved.error();
    if (!whole.treatment.covered.empty())
        removeAll(sha256, variantOf(whole));
    return made;
}

void Proxies::forget(const QString& sha256) const
{
    removeAll(sha256, {});
}

void Proxies::removeAll(const QString& sha256, const QString& exceptVariant) const
{
    QDir folder(QStringLiteral("%1/%2").arg(m_folder, sha256.left(2)));
    const QString kept = QStringLiteral("%1-%2-").arg(sha256, exceptVariant);
    for (const QString& name : folder.entryList({sha256 + QStringLiteral("-*")}, QDir::Files)) {
        if (exceptVariant.isEmpty() || !name.startsWith(kept))
            folder.remove(name);
    }
}

} // namespace wainscot
