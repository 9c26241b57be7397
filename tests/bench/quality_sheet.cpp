#include "tests/bench/quality_sheet.h"

#include "layout/screen/painter.h"
#include "samples/pictures/catalogue.h"

#include <QDir>
#include <QPainter>

#include <map>

namespace wainscot::engine {

namespace {

using namespace wainscot::walls;

constexpr int kPageWidth = 560; // pixels
constexpr int kGap = 18;
constexpr int kTextHeight = 46;

// Scenes of the sample class cut to each picture's shape, with the marked part outlined.
class Scenes final : public PictureProvider {
public:
    ProvidedPicture picture(const ClearedPicture& picture, SizePx) override
    {
        const auto count = samples::catalogue().size();
        QImage image = cutTo(scene(std::size_t(picture.id.number() * 7) % count), picture.size);
        if (picture.mustStay) {
            QPainter painter(&image);
            painter.setPen(QPen(Qt::yellow, 3));
            painter.drawRect(QRectF(picture.mustStay->x * image.width(),
                picture.mustStay->y * image.height(),
                picture.mustStay->width * image.width(),
                picture.mustStay->height * image.height()));
        }
        return {image, {}};
    }

private:
    const QImage& scene(std::size_t at)
    {
        const auto [found, isNew] = m_scenes.try_emplace(at);
        if (isNew) {
            const samples::Entry& entry = samples::catalogue()[at];
            found->second =
                entry.make(entry.size.scaled(480, 480, Qt::KeepAspectRatioByExpanding), entry.seed)
                    .convertToFormat(QImage::Format_RGB32);
        }
        return found->second;
    }

    static QImage cutTo(const QImage& scene, SizePx shape)
    {
        QSize size(600, qMax(1, qRound(600 / shape.aspect())));
        const QImage large = scene.scaled(size, Qt::KeepAspectRatioByExpanding);
        return large.copy((large.width() - size.width()) / 2,
            (large.height() - size.height()) / 2,
            size.width(),
            size.height());
    }

    std::map<std::size_t, QImage> m_scenes;
};

QString missed(const PageQuality& page)
{
    QString out;
    for (const StyleTest& test : styleTests())
        if (!page.passed.at(test.number))
            out += QStringLiteral(" %1").arg(test.number);
    return QStringLiteral("misses:%1\nholes %2, edges %3, dominant %4, imbalance %5, white %6")
        .arg(out.isEmpty() ? QStringLiteral(" none") : out)
        .arg(page.holes)
        .arg(page.leftEdges)
        .arg(page.dominance, 0, 'f', 2)
        .arg(page.imbalance, 0, 'f', 2)
        .arg(page.white, 0, 'f', 2);
}

// The pages of one method, one below the other.
QImage column(const Sheet& sheet, const Judged& judged)
{
    static Scenes scenes;
    std::vector<DisplayList> lists;
    const Quality quality = qualityOf(sheet, judged.layout, &lists);
    const SizeMm panel = sheet.style().grid.panel;
    const int high = qRound(kPageWidth * (panel.height / panel.width));
    const int each = high + kTextHeight + kGap;
    QImage out(kPageWidth, qMax(1, each * int(lists.size())), QImage::Format_RGB32);
    out.fill(QColor(0xb8, 0xb8, 0xb8));
    QPainter painter(&out);
    for (std::size_t page = 0; page < lists.size(); ++page) {
        const auto image = toImage(
            lists[page], DotsPerInch(2 * kPageWidth / (panel.width.value() / kMmPerInch)), scenes);
        const int top = each * int(page);
        if (image)
            painter.drawImage(QRect(0, top, kPageWidth, high),
                image->scaled(kPageWidth, high, Qt::IgnoreAspectRatio, Qt::SmoothTransformation));
        painter.drawText(QRect(0, top + high + 2, kPageWidth, kTextHeight),
            QStringLiteral("%1, page %2; %3")
                .arg(judged.layout.method)
                .arg(page + 1)
                .arg(missed(quality.pages[page])));
    }
    return out;
}

} // namespace

void drawContactSheet(const QString& folder, const Sheet& sheet, std::span<const Judged> judged)
{
    QDir().mkpath(folder);
    std::vector<QImage> columns;
    int high = 0;
    for (const Judged& one : judged) {
        columns.push_back(column(sheet, one));
        high = qMax(high, columns.back().height());
    }
    QImage out(int(columns.size()) * (kPageWidth + kGap) + kGap, high + 50, QImage::Format_RGB32);
    out.fill(QColor(0xb8, 0xb8, 0xb8));
    QPainter painter(&out);
    painter.drawText(QRect(kGap, 6, out.width(), 30), sheet.document().name);
    for (std::size_t k = 0; k < columns.size(); ++k)
        painter.drawImage(kGap + int(k) * (kPageWidth + kGap), 36, columns[k]);
    out.save(QDir(folder).filePath(
        QStringLiteral("%1.png").arg(sheet.document().number, 2, 10, QLatin1Char('0'))));
}

} // namespace wainscot::engine
