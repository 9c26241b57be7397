// Small upright and treated copies of originals for the screen, made once and kept in a cache
// folder.
#pragma once

#include "core/base/result.h"
#include "core/media/bake.h"

#include <QImage>
#include <QString>

#include <array>
#include <mutex>

namespace wainscot {

enum class ProxySize {
    Thumbnail, // fits 320 x 320 px
    Screen, // fits 1600 x 1600 px
};

[[nodiscard]] int longestSidePx(ProxySize size);

// Safe to share between threads. The files can be thrown away at any time: what is missing or
// damaged is made again from the original.
class Proxies {
public:
    // The folder is made when first needed.
    explicit Proxies(QString folder);

    // The picture at that size, from the cache or made now (both sizes in one decode).
    // `sha256` names the original; `whole` says where it lies and how it is turned.
    // Errors: CannotRead, Damaged (the original); CannotWrite (the cache)
    Result<QImage> picture(const QString& sha256, const PictureRecipe& whole, ProxySize size) const;

    struct Made {
        bool damaged = false; // the original has damage, yet could be read
        bool wasThere = false; // nothing had to be made, so `damaged` is not known
    };
    // Sees to it that both files exist.
    Result<Made> make(const QString& sha256, const PictureRecipe& whole) const;

    // Only what is in the cache, at the cost of decoding a small JPEG; null when it is not there.
    // Turned or treated otherwise it is another picture: a copy made before is never shown for it.
    [[nodiscard]] QImage cached(
        const QString& sha256, const PictureRecipe& whole, ProxySize size) const;
    [[nodiscard]] QString pathOf(
        const QString& sha256, const PictureRecipe& whole, ProxySize size) const;

    // Removes every copy, as erasing a picture from a book needs. Making a copy that covers a
    // region removes those that were made without.
    void forget(const QString& sha256) const;

private:
    Result<Made> makeLocked(const QString& sha256, const PictureRecipe& whole) const;
    void removeAll(const QString& sha256, const QString& exceptVariant) const; // "" = no exception

    QString m_folder;
    // Two workers never make the same picture at once; different pictures rarely wait.
    mutable std::array<std::mutex, 16> m_locks;
};

} // namespace wainscot
