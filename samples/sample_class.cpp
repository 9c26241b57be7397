#include "samples/sample_class.h"

#include <QFile>

#include "core/base/csv.h"
#include "samples/invented.h"
#include "samples/made_files.h"
#include "samples/sample_pictures.h"
#include "samples/sample_texts.h"

// A static library's resources are taken in by name; the macro must stand outside any namespace.
static void useResources()
{
    Q_INIT_RESOURCE(class);
}

namespace wainscot::samples {

namespace {

const QString kFile = QStringLiteral("file");
const QString kCaption = QStringLiteral("caption");
const QString kChildren = QStringLiteral("children");
const QString kKind = QStringLiteral("kind");
const QString kBy = QStringLiteral("by");

QByteArray resource(const char* name)
{
    QFile file(QStringLiteral(":/samples/") + QLatin1String(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

// One experience on its way into the folder.
struct Part {
    SampleExperience* experience = nullptr;
    QString under; // "" or "drawing/", inside the sample folder
    QString quotes; // text of quotes.csv
    QByteArray photos; // text of the class's own photos.csv
    std::vector<SamplePicture> pictures;
};

QString quoted(QString cell)
{
    if (cell.contains(QLatin1Char(',')) || cell.contains(QLatin1Char('"')))
        return QLatin1Char('"') + cell.replace(QLatin1Char('"'), QStringLiteral("\"\""))
            + QLatin1Char('"');
    return cell;
}

// The children of the usual class stand in the pictures; in an invented class others take their
// places, and where there are too few, nobody does.
QString peopleIn(const QString& cell, const QStringList& usual, const QStringList& invented)
{
    const auto at = usual.indexOf(cell);
    if (at < 0 || invented == usual)
        return cell;
    return at < invented.size() ? invented[at] : QStringLiteral("none");
}

QStringList namesIn(const QByteArray& childrenCsv)
{
    QStringList names;
    if (const auto table = parseCsv(childrenCsv, QStringLiteral("children.csv"))) {
        for (const CsvRow& row : table->rows)
            names.append(row.cell(QStringLiteral("name")));
    }
    return names;
}

// A row for each picture there is. A further picture of a scene says who and what it shows, but
// nobody has written a caption for it.
Result<QString> photoRows(const Part& part, const QStringList& usual, const QStringList& names)
{
    const auto table = parseCsv(part.photos, QStringLiteral("photos.csv"));
    if (!table)
        return table.error();
    QHash<QString, CsvRow> byFile;
    for (const CsvRow& row : table->rows)
        byFile.insert(row.cell(kFile), row);
    QString text = table->columns.join(QLatin1Char(',')) + QLatin1Char('\n');
    for (const SamplePicture& picture : part.pictures) {
        const CsvRow row = byFile.value(picture.like.isEmpty() ? picture.file : picture.like);
        const QStringList cells{picture.file,
            picture.like.isEmpty() ? row.cell(kCaption) : QString(),
            peopleIn(row.cell(kChildren), usual, names),
            row.cell(kKind),
            row.cell(kBy)};
        for (int i = 0; i < cells.size(); ++i)
            text += quoted(cells[i]) + QLatin1Char(i + 1 < cells.size() ? ',' : '\n');
    }
    return text;
}

Result<> makePictures(MadeFiles& made,
    const Part& part,
    const Wish& wish,
    const OnProgress& onProgress,
    const std::atomic<bool>* cancel)
{
    QStringList wanted{part.under + QStringLiteral("pictures/photos.csv")};
    int done = 0;
    for (const SamplePicture& picture : part.pictures) {
        if (cancel != nullptr && cancel->load())
            return Error{ErrorCode::Cancelled, made.pathOf(part.under), {}};
        if (onProgress)
            onProgress(picture.file, done, static_cast<int>(part.pictures.size()));
        ++done;
        wanted.append(part.under + QStringLiteral("pictures/") + picture.file);
        const auto put = made.putMade(wanted.back(),
            recipeOf(picture, wish),
            [&](const QString& path) { return makePicture(path, picture, wish); });
        if (!put)
            return put;
    }
    return made.removeOthers(part.under + QStringLiteral("pictures"), wanted);
}

// The lists of a part, and where they are.
Result<> writeLists(
    MadeFiles& made, const Part& part, const QStringList& usual, const QStringList& names)
{
    const QString quotes = part.under + QStringLiteral("quotes.csv");
    const QString photos = part.under + QStringLiteral("pictures/photos.csv");
    const auto rows = photoRows(part, usual, names);
    if (!rows)
        return rows.error();
    part.experience->quotesFile = made.pathOf(quotes);
    part.experience->picturesFolder = made.pathOf(part.under + QStringLiteral("pictures"));
    if (const auto put = made.putText(quotes, part.quotes); !put)
        return put;
    return made.putText(photos, *rows);
}

} // namespace

Result<SampleClass> writeSample(const QString& folder,
    const Wish& wish,
    const OnProgress& onProgress,
    const std::atomic<bool>* cancel)
{
    useResources();
    auto made = MadeFiles::openIn(folder);
    if (!made)
        return made.error();
    SampleClass sample = sampleTexts();
    QByteArray children = resource("children.csv");
    const QStringList usual = namesIn(children);
    QString quotes = QString::fromUtf8(resource("quotes.csv"));
    if (wish.children) {
        const InventedClass invented = inventClass(wish.seed, *wish.children);
        children = invented.childrenCsv.toUtf8();
        quotes = invented.quotesCsv;
        sample.experiences.resize(1); // the drawing belongs to a child of the usual class
        sample.stars.clear();
        sample.languages.clear();
        sample.translations.clear();
        sample.meetings.clear(); // they speak of the usual children
    }
    std::vector<Part> parts{
        {&sample.experiences.front(), {}, quotes, resource("photos.csv"), puddlePictures(wish)}};
    if (sample.experiences.size() > 1) {
        parts.push_back({&sample.experiences[1],
            QStringLiteral("thread/"),
            QString::fromUtf8(resource("thread_quotes.csv")),
            resource("thread_photos.csv"),
            threadPictures(wish)});
        parts.push_back({&sample.experiences.back(),
            QStringLiteral("drawing/"),
            QString::fromUtf8(resource("drawing_quotes.csv")),
            resource("drawing_photos.csv"),
            drawingPictures(wish)});
    }
    const QString childrenFile = QStringLiteral("children.csv");
    sample.childrenFile = made->pathOf(childrenFile);
    if (const auto put = made->putText(childrenFile, QString::fromUtf8(children)); !put)
        return put.error();
    for (const Part& part : parts) {
        if (const auto put = writeLists(*made, part, usual, namesIn(children)); !put)
            return put.error();
        if (const auto put = makePictures(*made, part, wish, onProgress, cancel); !put)
            return put.error();
    }
    return sample;
}

} // namespace wainscot::samples
