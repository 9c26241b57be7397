#include "app/jobs/covered_copies.h"

#include "core/media/bake.h"
#include "core/store/originals.h"

#include <QFile>

namespace wainscot {

namespace {

// Covers count from the upright picture before it is straightened, so only they are burnt in; what
// was done after them is done again from the new file.
Result<CoveredCopy> coveredCopy(
    const Picture& picture, ChildId child, const QString& original, const QString& file)
{
    PictureRecipe recipe;
    recipe.path = original;
    recipe.format = picture.format;
    recipe.orientation = picture.orientation;
    recipe.size =
        picture.treatment.straightening ? picture.treatment.straightening->from : picture.size;
    recipe.treatment.covered = picture.treatment.covered;
    const auto baked = bakeJpeg(recipe, recipe.size);
    if (!baked)
        return baked.error();
    QFile out(file);
    if (!out.open(QIODevice::WriteOnly) || out.write(baked->bytes) != baked->bytes.size()
        || !out.flush())
        return Error{ErrorCode::CannotWrite, file, out.errorString()};
    out.close();
    const auto sha256 = Originals::sha256Of(file);
    if (!sha256)
        return sha256.error();
    CoveredCopy copy{picture, picture, file};
    copy.picture.sha256 = *sha256;
    copy.picture.format = QStringLiteral("jpeg");
    copy.picture.orientation = 1;
    copy.picture.treatment.covered.clear();
    copy.picture.look.reset(); // it was looked at without its covers
    std::erase(copy.picture.people.children, child);
    return copy;
}

} // namespace

Result<std::vector<CoveredCopy>> coveredCopies(const std::vector<Picture>& pictures,
    ChildId child,
    const std::function<QString(const QString& sha256)>& pathOf,
    const QString& folder,
    const JobRun& run)
{
    std::vector<CoveredCopy> copies;
    for (const Picture& picture : pictures) {
        if (run.cancelled())
            return stoppedByPerson();
        if (!isCovered(picture))
            continue;
        run.report(QStringLiteral("Covering %1 for good").arg(picture.fileName));
        auto copy = coveredCopy(picture,
            child,
            pathOf(picture.sha256),
            QStringLiteral("%1/%2.jpg").arg(folder).arg(picture.id.number()));
        if (!copy)
            return copy.error();
        copies.push_back(std::move(*copy));
    }
    return copies;
}

} // namespace wainscot
