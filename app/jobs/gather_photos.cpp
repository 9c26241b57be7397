// Taking in a folder of pictures with what its photos.csv says about them.
#include "app/jobs/gather.h"

#include "app/jobs/gather_common.h"
#include "app/jobs/gather_scan.h"
#include "core/base/csv.h"
#include "core/base/says.h"
#include "core/media/intake.h"
#include "core/store/originals.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <map>
#include <set>

namespace wainscot {

namespace {

const QString kListName = QStringLiteral("photos.csv");

class PhotoReader {
public:
    PhotoReader(const Book& book, const GatherPhotosJob& job)
        : m_book(book)
        , m_edit(book, Says::tr("Gather pictures"))
        , m_for(experienceFor(book, m_edit, job.experience, job.on))
    {
        for (const auto& [id, picture] : book.pictures.rows()) {
            if (!picture.display.isValid())
                m_known.emplace(std::pair(picture.experience, picture.sha256), picture);
        }
    }

    // The list says who is in a picture; without one nobody has looked at any.
    void useList(const CsvTable& list)
    {
        m_list = list.file;
        for (const SkippedRow& row : unreadableRows(list))
            m_outcome.skipped.push_back(row);
        for (const CsvRow& row : list.rows) {
            const QString file = row.cell(QStringLiteral("file"));
            if (file.isEmpty())
                m_outcome.skipped.push_back(skippedRow(list, row, Says::tr("there is no file")));
            else if (!m_rows.try_emplace(file.toCaseFolded(), row).second)
                m_outcome.skipped.push_back(
                    skippedRow(list, row, Says::tr("%1 is in an earlier row already").arg(file)));
        }
        m_says.kind = list.has(QStringLiteral("kind"));
        m_says.caption = list.has(QStringLiteral("caption"));
        m_says.by = list.has(QStringLiteral("by"));
        m_says.children = list.has(QStringLiteral("children"));
    }

    // Answers whether the original has to be kept in the book.
    bool take(const FileVerdict& file)
    {
        auto row = m_rows.find(file.name.toCaseFolded());
        if (row == m_rows.end())
            row = m_rows.find(file.scan.toCaseFolded());
        const CsvRow* said = row == m_rows.end() ? nullptr : &row->second;
        if (said != nullptr)
            m_used.insert(row->first);
        if (file.verdict == Verdict::Refused) {
            leaveOut(file.name, file.says);
            return false;
        }
        const auto key = std::pair(m_for.experience.id, file.facts.sha256);
        const auto known = m_known.find(key);
        Picture picture = known == m_known.end() ? newPicture(file) : known->second;
        picture.look = file.facts.look;
        if (said != nullptr)
            describe(picture, *said);
        if (known == m_known.end()) {
            picture.id = m_edit.newId<Picture>();
            ++m_outcome.added;
            if (!file.says.isEmpty())
                m_outcome.remarks << file.says;
        } else if (m_taken.count(file.facts.sha256) > 0) {
            m_outcome.skipped.push_back({0,
                file.name,
                Says::tr("%1 is the same picture as %2.").arg(file.name, picture.fileName)});
            return false;
        } else if (!(picture == known->second)) {
            ++m_outcome.updated;
        }
        m_taken.insert(file.facts.sha256);
        m_known[key] = picture;
        m_edit.put(picture);
        return true;
    }

    void leaveOut(const QString& file, const QString& why)
    {
        m_outcome.skipped.push_back({0, file, why});
    }

    void tellUnusedRows()
    {
        for (const auto& [name, row] : m_rows) {
            if (m_used.count(name) > 0)
                continue;
            m_outcome.skipped.push_back({row.row,
                m_list,
                Says::tr("%1, row %2: there is no picture \"%3\" in the folder.")
                    .arg(m_list)
                    .arg(row.row)
                    .arg(row.cell(QStringLiteral("file")))});
        }
    }

    GatherOutcome finish()
    {
        m_outcome.edit = m_edit.take();
        return std::move(m_outcome);
    }

private:
    Picture newPicture(const FileVerdict& file) const
    {
        Picture picture;
        picture.experience = m_for.experience.id;
        picture.sha256 = file.facts.sha256;
        picture.format = file.facts.format;
        picture.fileName = file.name;
        picture.size = file.facts.size;
        picture.orientation = file.facts.orientation;
        picture.captured = file.facts.captured;
        return picture;
    }

    void describe(Picture& picture, const CsvRow& row)
    {
        if (m_says.caption)
            picture.caption = row.cell(QStringLiteral("caption"));
        if (m_says.by)
            picture.by = row.cell(QStringLiteral("by"));
        const QString kind = row.cell(QStringLiteral("kind"));
        if (m_says.kind && !kind.isEmpty()) {
            if (const auto known = pictureKindFromName(kind))
                picture.kind = *known;
            else
                tell(row,
                    Says::tr("\"%1\" is no kind of picture (photo or work); %2 is "
                             "taken as a photo")
                        .arg(kind, picture.fileName));
        }
        if (m_says.children)
            picture.people = peopleIn(row, picture.fileName);
    }

    // Blank = nobody has looked. A name nobody knows leaves the picture unlooked at too: someone
    // who is not in the book is in it.
    People peopleIn(const CsvRow& row, const QString& file)
    {
        People people;
        const QStringList names =
            partsOf(row.cell(QStringLiteral("children")), QStringLiteral(";\n"));
        if (names.isEmpty())
            return people;
        people.lookedAt = true;
        if (names.size() == 1
            && names.front().compare(QLatin1String("none"), Qt::CaseInsensitive) == 0)
            return people;
        for (const QString& name : names) {
            const Child* child = childCalled(m_book, name);
            if (child == nullptr) {
                people.lookedAt = false;
                tell(row,
                    Says::tr("no child of this book is called \"%1\"; %2 stays cleared "
                             "for no audience until somebody has looked")
                        .arg(name, file));
            } else if (std::find(people.children.begin(), people.children.end(), child->id)
                == people.children.end()) {
                people.children.push_back(child->id);
            }
        }
        return people;
    }

    void tell(const CsvRow& row, const QString& why)
    {
        m_outcome.skipped.push_back(
            {row.row, m_list, Says::tr("%1, row %2: %3.").arg(m_list).arg(row.row).arg(why)});
    }

    struct Stated {
        bool caption = false;
        bool children = false;
        bool kind = false;
        bool by = false;
    };
    const Book& m_book;
    EditBuilder m_edit;
    GatheredExperience m_for;
    std::map<std::pair<ExperienceId, QString>, Picture> m_known;
    std::map<QString, CsvRow> m_rows;
    std::set<QString> m_used;
    std::set<QString> m_taken;
    QString m_list;
    Stated m_says;
    GatherOutcome m_outcome;
};

// Takes what was looked at, and keeps the originals.
class Keeper {
public:
    Keeper(PhotoReader& reader, const QString& picturesFolder, const JobRun& run)
        : m_reader(reader)
        , m_originals(picturesFolder)
        , m_run(run)
    {
    }

    Result<> takePicture(const FileVerdict& file)
    {
        if (!m_reader.take(file))
            return Done{};
        const Result<QString> copied = m_originals.keep(file.path);
        if (!copied)
            return copied.error();
        if (*copied != file.facts.sha256) {
            return Error{
                ErrorCode::CannotRead, file.name, Says::tr("it changed while it was being read")};
        }
        return Done{};
    }

    Result<> takeScan(const FileVerdict& scan)
    {
        return takePagesOf(
            scan.path,
            m_run,
            kMostScanPages,
            [&](const ScannedPage& page) {
                FileVerdict file = verdictOn(page.path, page.name);
                file.scan = scan.name;
                return takePicture(file);
            },
            [&](const QString& why) { m_reader.leaveOut(scan.name, why); });
    }

private:
    PhotoReader& m_reader;
    Originals m_originals;
    const JobRun& m_run;
};

Result<FolderGathering> lookAt(const QString& place, const JobRun& run)
{
    FolderOptions options;
    options.cancel = run.cancel;
    options.progress = [&run](int done, int total) {
        run.report(Says::tr("Looking at pictures"), done, total);
    };
    if (QFileInfo(place).isFile())
        return inspectFiles({place}, options);
    return inspectFolder(place, options);
}

} // namespace

Result<GatherOutcome> GatherPhotosJob::run(const Book& book, const JobRun& run) const
{
    PhotoReader reader(book, *this);
    const QString list = QDir(folder).filePath(kListName);
    if (QFileInfo(list).isFile()) {
        const Result<CsvTable> table = readCsv(list);
        if (!table)
            return table.error();
        if (!table->has(QStringLiteral("file")))
            return lacksColumn(*table, QStringLiteral("file"));
        reader.useList(*table);
    }
    const Result<FolderGathering> files = lookAt(folder, run);
    if (!files)
        return files.error();
    if (files->cancelled)
        return stoppedByPerson();
    Keeper keeper(reader, picturesFolder, run);
    int kept = 0;
    for (const FileVerdict& file : files->files) {
        if (run.cancelled())
            return stoppedByPerson();
        run.report(Says::tr("Keeping pictures"), ++kept, static_cast<int>(files->files.size()));
        const Result<> taken =
            file.verdict == Verdict::Scan ? keeper.takeScan(file) : keeper.takePicture(file);
        if (!taken)
            return taken.error();
    }
    reader.tellUnusedRows();
    return reader.finish();
}

} // namespace wainscot
