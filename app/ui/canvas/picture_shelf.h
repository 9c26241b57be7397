// Pictures for the screen in two sizes, baked off the window's thread and kept in memory.
#pragma once

#include <QCache>
#include <QImage>
#include <QObject>
#include <QSet>
#include <QThreadPool>

#include <functional>
#include <memory>

#include "core/media/proxies.h"
#include "core/model/experience.h"
#include "layout/screen/painter.h"

namespace wainscot::ui {

class PictureShelf : public QObject, public PictureProvider {
    Q_OBJECT
public:
    explicit PictureShelf(QObject* parent = nullptr);
    ~PictureShelf() override;

    // Where the original of a SHA-256 lies and where its small copies are kept; forgets what was
    // loaded.
    void setPaths(std::function<QString(const QString& sha256)> pathOf, const QString& cache);

    // The whole picture in the nearest size at hand; a better one is asked for and announced.
    [[nodiscard]] ProvidedPicture picture(const ClearedPicture& picture, SizePx wanted) override;
    [[nodiscard]] QImage thumbnail(const Picture& picture);
    [[nodiscard]] int askedSoFar() const { return m_askedSoFar; } // pictures read, for measurement
    // Waits until everything asked for is there: for tests and for printing the screen.
    void waitForAll();

Q_SIGNALS:
    void loaded(const QString& sha256);

private:
    struct Wanted {
        QString sha256;
        QString format;
        SizePx size;
        int orientation = 1;
        Treatment treatment;
        [[nodiscard]] QString key(ProxySize proxy) const;
    };
    [[nodiscard]] QImage nearest(const Wanted& wanted, ProxySize size);
    void ask(const Wanted& wanted, ProxySize size);
    void take(const QString& key, const QString& sha256, int round, const QImage& image);

    std::function<QString(const QString&)> m_pathOf;
    std::shared_ptr<Proxies> m_proxies;
    QCache<QString, QImage> m_images; // cost in KiB
    QSet<QString> m_asked;
    QSet<QString> m_failed;
    int m_askedSoFar = 0;
    int m_round = 0; // counts folders, so that late answers for an earlier book are dropped
    QThreadPool m_workers;
};

} // namespace wainscot::ui
