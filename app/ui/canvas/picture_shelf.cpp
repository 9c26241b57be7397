#include "app/ui/canvas/picture_shelf.h"

namespace wainscot::ui {

namespace {

constexpr int kMostKiB = 192 * 1024; // about forty large pictures

} // namespace

QString PictureShelf::Wanted::key(ProxySize proxy) const
{
    return QStringLiteral("%1/%2/%3/%4")
        .arg(sha256)
        .arg(longestSidePx(proxy))
        .arg(orientation)
        .arg(textOf(treatment));
}

PictureShelf::PictureShelf(QObject* parent)
    : QObject(parent)
    , m_images(kMostKiB)
{
    m_workers.setMaxThreadCount(2);
}

PictureShelf::~PictureShelf()
{
    m_workers.clear();
    m_workers.waitForDone();
}

void PictureShelf::setPaths(std::function<QString(const QString&)> pathOf, const QString& cache)
{
    m_workers.clear();
    ++m_round;
    m_pathOf = std::move(pathOf);
    m_proxies = std::make_shared<Proxies>(cache);
    m_images.clear();
    m_asked.clear();
    m_failed.clear();
}

ProvidedPicture PictureShelf::picture(const ClearedPicture& picture, SizePx wanted)
{
    // `wanted` covers the visible part; the shelf holds whole pictures.
    const double whole = qMax(wanted.width / qMax(0.01, picture.visible.width),
        wanted.height / qMax(0.01, picture.visible.height));
    const bool small = whole <= longestSidePx(ProxySize::Thumbnail) * 1.2;
    const ProxySize size = small ? ProxySize::Thumbnail : ProxySize::Screen;
    return {
        nearest(
            {picture.sha256, picture.format, picture.size, picture.orientation, picture.treatment},
            size),
        {}};
}

QImage PictureShelf::thumbnail(const Picture& picture)
{
    return nearest(
        {picture.sha256, picture.format, picture.size, picture.orientation, picture.treatment},
        ProxySize::Thumbnail);
}

QImage PictureShelf::nearest(const Wanted& wanted, ProxySize size)
{
    if (const QImage* image = m_images.object(wanted.key(size)))
        return *image;
    ask(wanted, size);
    const ProxySize other = size == ProxySize::Thumbnail ? ProxySize::Screen : ProxySize::Thumbnail;
    const QImage* image = m_images.object(wanted.key(other));
    return image != nullptr ? *image : QImage();
}

void PictureShelf::ask(const Wanted& wanted, ProxySize size)
{
    const QString key = wanted.key(size);
    if (!m_pathOf || m_asked.contains(key) || m_failed.contains(key))
        return;
    m_asked.insert(key);
    ++m_askedSoFar;
    const PictureRecipe whole{m_pathOf(wanted.sha256),
        wanted.format,
        wanted.orientation,
        wanted.size,
        {},
        wanted.treatment};
    const int round = m_round;
    m_workers.start([this, whole, size, key, sha = wanted.sha256, round, proxies = m_proxies] {
        const Result<QImage> made = proxies->picture(sha, whole, size);
        const QImage image = made.ok() ? *made : QImage();
        QMetaObject::invokeMethod(
            this,
            [this, key, sha, round, image] { take(key, sha, round, image); },
            Qt::QueuedConnection);
    });
}

void PictureShelf::take(const QString& key, const QString& sha256, int round, const QImage& image)
{
    if (round != m_round)
        return;
    m_asked.remove(key);
    if (image.isNull()) {
        m_failed.insert(key);
        return;
    }
    const auto kiB = qMax<qsizetype>(1, image.sizeInBytes() / 1024);
    m_images.insert(key, new QImage(image), kiB);
    Q_EMIT loaded(sha256);
}

void PictureShelf::waitForAll()
{
    m_workers.waitForDone();
}

} // namespace wainscot::ui
