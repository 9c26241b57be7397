#include "app/jobs/export_job.h"

#include "app/jobs/drawn_display.h"
#include "app/jobs/made_files.h"
#include "app/jobs/sentences.h"
#include "core/base/commit_file.h"
#include "core/base/says.h"
#include "core/media/bake.h"
#include "core/store/originals.h"
#include "layout/screen/painter.h"
#include "layout/screen/piece_picture.h"

#include <QImageWriter>
#include <QSaveFile>

#include <algorithm>

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

// What is written is a fresh image of pixels: nothing an original carried comes along.
Result<> write(const QImage& image, PictureForm form, const QString& path)
{
    constexpr int kJpegQuality = 92; // letters stay clean; common practice, no source
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return Error{ErrorCode::CannotWrite, path, file.errorString()};
    QImageWriter writer(&file, form == PictureForm::Jpeg ? "jpeg" : "png");
    if (form == PictureForm::Jpeg)
        writer.setQuality(kJpegQuality);
    if (!writer.write(image))
        return Error{ErrorCode::CannotWrite, path, writer.errorString()};
    if (!commitWhole(file))
        return Error{ErrorCode::CannotWrite, path, file.errorString()};
    return Done{};
}

Result<> sizeMakesSense(const ExportPictureJob& job)
{
    if (job.width == 0 && (job.dpi < 10 || job.dpi > 600)) {
        return Error{ErrorCode::WrongUse,
            QStringLiteral("%1 dpi").arg(job.dpi),
            Says::tr("a picture has 10 to 600 dots an inch")};
    }
    if (job.width != 0 && (job.width < 16 || job.width > 20'000)) {
        return Error{ErrorCode::WrongUse,
            QStringLiteral("%1 px").arg(job.width),
            Says::tr("a picture is 16 to 20,000 pixels wide")};
    }
    return Done{};
}

DotsPerInch resolutionOf(const ExportPictureJob& job, const DisplayList& list)
{
    return DotsPerInch(
        job.width > 0 ? job.width * kMmPerInch / list.size.width.value() : double(job.dpi));
}

// The panel a piece is on; null = its audience may not see it.
const DrawnPanel* panelWith(const DrawnDisplay& drawn, PieceId piece)
{
    for (const DrawnPanel& panel : drawn.panels) {
        const auto& pieces = panel.cleared.pieces();
        if (std::any_of(pieces.begin(), pieces.end(), [&](const ClearedPiece& one) {
                return one.id == piece;
            }))
            return &panel;
    }
    return nullptr;
}

Result<> drawTo(const QString& path, const DisplayList& list, const ExportPictureJob& job)
{
    BakedPictures pictures(job.picturesFolder);
    const Result<QImage> image = toImage(list, resolutionOf(job, list), pictures);
    if (!image)
        return pictures.error() ? *pictures.error() : image.error();
    return write(*image, job.form, path);
}

Result<ExportOutcome> exportPiece(
    const Book& book, const DrawnDisplay& drawn, const ExportPictureJob& job, QDate today)
{
    constexpr Mm kAir{5};
    const QString name = Says::tr("The piece %1").arg(job.piece.number());
    const Piece* own = book.pieces.find(job.piece);
    const Panel* on = own != nullptr ? book.panels.find(own->panel) : nullptr;
    if (on == nullptr || on->display != drawn.display.id)
        return Error{ErrorCode::NotFound, name, Says::tr("this display has no such piece")};
    ExportOutcome outcome;
    outcome.leftOut = drawn.leftOut();
    std::erase_if(outcome.leftOut, [&](const LeftOut& left) { return left.piece != job.piece; });
    const DrawnPanel* panel = panelWith(drawn, job.piece);
    if (panel == nullptr) {
        return Error{ErrorCode::Refused,
            name,
            outcome.leftOut.empty() ? Says::tr("its audience may not see it")
                                    : outcome.leftOut.front().why};
    }
    const DisplayList alone = pieceAlone(panel->list, job.piece, kAir);
    if (alone.size.isEmpty())
        return Error{ErrorCode::Refused, name, Says::tr("nothing of it is drawn yet")};
    if (const Result<> written = drawTo(job.file, alone, job); !written)
        return written.error();
    outcome.files.append(job.file);
    outcome.pages = 1;
    outcome.made = madeFileOf(book,
        drawn.display,
        {panel->cleared},
        MadeFileKind::PanelPictures,
        job.file,
        today,
        job.piece);
    return outcome;
}

} // namespace

Result<ExportOutcome> ExportPictureJob::run(const Book& book, const JobRun& run) const
{
    if (const Result<> sized = sizeMakesSense(*this); !sized)
        return sized.error();
    const Result<DrawnDisplay> drawn = drawDisplay(book, display, run.today);
    if (!drawn)
        return drawn.error();
    if (piece.isValid())
        return exportPiece(book, *drawn, *this, run.today);
    if (drawn->panels.empty()) {
        return Error{
            ErrorCode::Refused, quoted(display), Says::tr("it has no panel yet; arrange it first")};
    }
    ExportOutcome outcome;
    outcome.leftOut = drawn->leftOut();
    outcome.made = madeFileOf(
        book, drawn->display, drawn->clearedPanels(), MadeFileKind::PanelPictures, file, run.today);
    for (const DrawnPanel& panel : drawn->panels) {
        if (run.cancelled())
            return stoppedByPerson();
        run.report(Says::tr("Drawing panel %1").arg(panel.cleared.number()),
            panel.cleared.number(),
            static_cast<int>(drawn->panels.size()));
        const QString path = fileOfPanel(file, panel.cleared.number());
        if (const Result<> written = drawTo(path, panel.list, *this); !written)
            return written.error();
        outcome.files.append(path);
        ++outcome.pages;
    }
    return outcome;
}

} // namespace wainscot
