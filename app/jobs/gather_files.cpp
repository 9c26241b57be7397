#include "app/jobs/gather_files.h"

#include "app/jobs/gather_scan.h"
#include "core/base/says.h"
#include "core/media/intake.h"
#include "core/model/wall_photo.h"
#include "core/store/originals.h"

#include <QFileInfo>

#include <map>

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

class FileTaker {
public:
    FileTaker(const GatherFilesJob& job, const Book& book, ExperienceId into, const JobRun& run)
        : m_job(job)
        , m_into(into)
        , m_run(run)
        , m_originals(job.picturesFolder)
        , m_edit(book, Says::tr("Gather pictures"))
    {
        for (const Picture* picture : thereAlready(job, book))
            m_known.emplace(picture->sha256, picture->id);
    }

    Result<> take(const QString& file)
    {
        const std::size_t before = m_gathered.pictures.size();
        const QString name = QFileInfo(file).fileName();
        const Result<> taken = isPdfFile(file) ? takeScan(file, name) : takePicture(file, name);
        if (m_gathered.pictures.size() > before)
            m_gathered.firsts.push_back(m_gathered.pictures[before]);
        return taken;
    }

    GatheredFiles finish()
    {
        m_gathered.outcome.edit = m_edit.take();
        return std::move(m_gathered);
    }

private:
    Result<> takeScan(const QString& file, const QString& name)
    {
        return takePagesOf(
            file,
            m_run,
            m_job.mostPages,
            [&](const ScannedPage& page) { return takePicture(page.path, page.name); },
            [&](const QString& why) {
                m_gathered.outcome.skipped.push_back({0, name, why});
            });
    }

    Result<> takePicture(const QString& path, const QString& name)
    {
        const FileVerdict file = verdictOn(path, name);
        if (file.verdict == Verdict::Refused) {
            m_gathered.outcome.skipped.push_back({0, name, file.says});
            return Done{};
        }
        const auto [place, isNew] = m_known.try_emplace(file.facts.sha256, PictureId());
        if (isNew) {
            const Result<QString> kept = m_originals.keep(path);
            if (!kept)
                return kept.error();
            if (*kept != file.facts.sha256)
                return Error{
                    ErrorCode::CannotRead, name, Says::tr("it changed while it was being read")};
            Picture picture = pictureOf(file);
            picture.id = m_edit.newId<Picture>();
            m_edit.put(picture);
            place->second = picture.id;
            ++m_gathered.outcome.added;
            if (!file.says.isEmpty())
                m_gathered.outcome.remarks << file.says;
        }
        m_gathered.pictures.push_back(place->second);
        return Done{};
    }

    [[nodiscard]] Picture pictureOf(const FileVerdict& file) const
    {
        const PictureFacts& facts = file.facts;
        Picture picture;
        picture.experience = m_into;
        picture.display = m_job.ofWall;
        picture.panelsLegible = m_job.panelsLegible;
        if (m_job.ofWall.isValid())
            picture.hungOn =
                m_job.on.value_or(facts.captured ? facts.captured->local.date() : m_run.today);
        picture.kind = m_job.kind;
        picture.people = m_job.people;
        picture.sha256 = facts.sha256;
        picture.format = facts.format;
        picture.fileName = file.name;
        picture.size = facts.size;
        picture.orientation = facts.orientation;
        picture.captured = facts.captured;
        picture.look = facts.look;
        return picture;
    }

    const GatherFilesJob& m_job;
    ExperienceId m_into;
    const JobRun& m_run;
    Originals m_originals;
    EditBuilder m_edit;
    std::map<QString, PictureId> m_known; // by SHA-256
    GatheredFiles m_gathered;
};

} // namespace

Result<GatheredFiles> GatherFilesJob::run(const Book& book, const JobRun& run) const
{
    const ExperienceId into = experienceOf(*this, book);
    if (!book.experiences.contains(into))
        return Error{ErrorCode::NotFound, {}, Says::tr("there is no such experience")};
    FileTaker taker(*this, book, into, run);
    int at = 0;
    for (const QString& file : files) {
        if (run.cancelled())
            return stoppedByPerson();
        run.report(Says::tr("Keeping pictures"), ++at, int(files.size()));
        if (const Result<> taken = taker.take(file); !taken)
            return taken.error();
    }
    return taker.finish();
}

} // namespace wainscot
