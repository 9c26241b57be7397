#include "app/jobs/gather_files.h"

#include "core/media/intake.h"
#include "core/model/wall_photo.h"
#include "core/store/originals.h"

#include <QFileInfo>

#include <algorithm>

namespace wainscot {

namespace {

// Where the pictures go.
ExperienceId experienceOf(const GatherFilesJob& job, const Book& book)
{
    const Display* display = book.displays.find(job.ofWall);
    return display != nullptr ? display->experience : job.experience;
}

std::vector<const Picture*> thereAlready(const GatherFilesJob& job, const Book& book)
{
    return job.ofWall.isValid() ? wallPhotosOf(book, job.ofWall) : picturesOf(book, job.experience);
}

Picture pictureOf(
    const GatherFilesJob& job, const QString& path, const PictureFacts& facts, QDate today)
{
    Picture picture;
    picture.display = job.ofWall;
    picture.panelsLegible = job.panelsLegible;
    if (job.ofWall.isValid())
        picture.hungOn = job.on.value_or(facts.captured ? facts.captured->local.date() : today);
    picture.kind = job.kind;
    picture.people = job.people;
    picture.sha256 = facts.sha256;
    picture.format = facts.format;
    picture.fileName = QFileInfo(path).fileName();
    picture.size = facts.size;
    picture.orientation = facts.orientation;
    picture.captured = facts.captured;
    picture.look = facts.look;
    return picture;
}

} // namespace

Result<GatheredFiles> GatherFilesJob::run(const Book& book, const JobRun& run) const
{
    const ExperienceId into = experienceOf(*this, book);
    if (!book.experiences.contains(into))
        return Error{ErrorCode::NotFound, {}, QStringLiteral("there is no such experience")};
    std::map<QString, PictureId> known; // by SHA-256
    for (const Picture* picture : thereAlready(*this, book))
        known.emplace(picture->sha256, picture->id);
    GatheredFiles gathered;
    EditBuilder edit(book, QStringLiteral("Gather pictures"));
    const Originals originals(picturesFolder);
    int at = 0;
    for (const QString& file : files) {
        if (run.cancelled())
            return stoppedByPerson();
        run.report(QStringLiteral("Keeping pictures"), ++at, int(files.size()));
        const QString name = QFileInfo(file).fileName();
        const Result<PictureFacts> facts = inspectPicture(file);
        if (!facts) {
            gathered.outcome.skipped.push_back(
                {0, name, QStringLiteral("%1 %2.").arg(name, facts.error().detail)});
            continue;
        }
        const auto [place, isNew] = known.try_emplace(facts->sha256, PictureId());
        if (isNew) {
            const Result<QString> kept = originals.keep(file);
            if (!kept)
                return kept.error();
            if (*kept != facts->sha256)
                return Error{ErrorCode::CannotRead,
                    name,
                    QStringLiteral("it changed while it was being read")};
            Picture picture = pictureOf(*this, file, *facts, run.today);
            picture.id = edit.newId<Picture>();
            picture.experience = into;
            edit.put(picture);
            place->second = picture.id;
            ++gathered.outcome.added;
        }
        gathered.pictures.push_back(place->second);
    }
    gathered.outcome.edit = edit.take();
    return gathered;
}

} // namespace wainscot
