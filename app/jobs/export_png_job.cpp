#include "app/jobs/export_job.h"

#include "app/jobs/drawn_display.h"
#include "core/media/bake.h"
#include "core/store/originals.h"
#include "layout/screen/painter.h"

#include <QFileInfo>
#include <QImageWriter>
#include <QSaveFile>

#include <cmath>

namespace wainscot {

namespace {

// Pictures straight from their originals through the one baking function.
class BakedPictures final : public PictureProvider {
public:
    explicit BakedPictures(const QString& folder)
        : m_originals(folder)
    {
    }
    ProvidedPicture picture(const ClearedPicture& picture, SizePx wanted) override
    {
        const PictureRecipe recipe{m_originals.pathOf(picture.sha256),
            picture.format,
            picture.orientation,
            picture.size,
            picture.visible,
            picture.treatment};
        Result<QImage> baked = bakeImage(recipe, wanted);
        if (!baked) {
            m_error = baked.error();
            return {};
        }
        return {std::move(baked).value(), picture.visible};
    }
    [[nodiscard]] const std::optional<Error>& error() const { return m_error; }

private:
    Originals m_originals;
    std::optional<Error> m_error;
};

// OUT.png, then OUT-2.png, OUT-3.png.
QString fileOfPanel(const QString& file, int number)
{
    if (number == 1)
        return file;
    const QFileInfo info(file);
    const QString suffix = info.suffix().isEmpty() ? QString() : QLatin1Char('.') + info.suffix();
    return file.left(file.size() - suffix.size()) + QStringLiteral("-%1").arg(number) + suffix;
}

Result<> writePng(const QImage& image, int dpi, const QString& path)
{
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return Error{ErrorCode::CannotWrite, path, file.errorString()};
    QImage sized = image;
    sized.setDotsPerMeterX(static_cast<int>(std::lround(dpi / kMmPerInch * 1000)));
    sized.setDotsPerMeterY(sized.dotsPerMeterX());
    QImageWriter writer(&file, "png");
    if (!writer.write(sized))
        return Error{ErrorCode::CannotWrite, path, writer.errorString()};
    if (!file.commit())
        return Error{ErrorCode::CannotWrite, path, file.errorString()};
    return Done{};
}

} // namespace

Result<ExportOutcome> ExportPngJob::run(const Book& book, const JobRun& run) const
{
    if (dpi < 10 || dpi > 600) {
        return Error{ErrorCode::WrongUse,
            QStringLiteral("%1 dpi").arg(dpi),
            QStringLiteral("a picture has 10 to 600 dots an inch")};
    }
    const Result<DrawnDisplay> drawn = drawDisplay(book, display, run.today);
    if (!drawn)
        return drawn.error();
    if (drawn->panels.empty()) {
        return Error{ErrorCode::Refused,
            QStringLiteral("\"%1\"").arg(display),
            QStringLiteral("it has no panel yet; arrange it first")};
    }
    ExportOutcome outcome;
    outcome.leftOut = drawn->leftOut();
    for (const DrawnPanel& panel : drawn->panels) {
        if (run.cancelled())
            return stoppedByPerson();
        run.report(QStringLiteral("Drawing panel %1").arg(panel.cleared.number()),
            panel.cleared.number(),
            static_cast<int>(drawn->panels.size()));
        BakedPictures pictures(picturesFolder);
        const Result<QImage> image = toImage(panel.list, DotsPerInch(dpi), pictures);
        if (!image)
            return pictures.error() ? *pictures.error() : image.error();
        const QString path = fileOfPanel(file, panel.cleared.number());
        if (const Result<> written = writePng(*image, dpi, path); !written)
            return written.error();
        outcome.files.append(path);
        ++outcome.pages;
    }
    return outcome;
}

} // namespace wainscot
