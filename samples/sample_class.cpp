#include "samples/sample_class.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include "samples/invented.h"
#include "samples/sample_pictures.h"
#include "samples/sample_texts.h"

// A static library's resources are taken in by name; the macro must stand outside any namespace.
static void useResources()
{
    Q_INIT_RESOURCE(class);
}

namespace wainscot::samples {

namespace {

Result<> writeText(const QString& path, const QString& text)
{
    QSaveFile file(path);
    const QByteArray bytes = text.toUtf8();
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.commit())
        return Error{ErrorCode::CannotWrite, path, file.errorString()};
    return Done{};
}

QString resource(const char* name)
{
    QFile file(QStringLiteral(":/samples/") + QLatin1String(name));
    return file.open(QIODevice::ReadOnly) ? QString::fromUtf8(file.readAll()) : QString();
}

// The rows of a photos.csv for the files there are, in the text's order.
QString rowsFor(const QString& photosCsv, const std::vector<SamplePicture>& pictures)
{
    QString kept;
    const QStringList lines = photosCsv.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    for (const QString& line : lines) {
        const QString file = line.section(QLatin1Char(','), 0, 0);
        bool wanted = kept.isEmpty(); // the header
        for (const SamplePicture& picture : pictures)
            wanted = wanted || picture.file == file;
        if (wanted)
            kept += line + QLatin1Char('\n');
    }
    for (const SamplePicture& picture : pictures) {
        if (!photosCsv.contains(picture.file))
            kept += picture.file + QStringLiteral(",,none,photo,\n");
    }
    return kept;
}

// Pictures stay only if the same wish made them.
bool madeBefore(const QString& folder, const QString& wishText)
{
    QFile file(folder + QStringLiteral("/.made"));
    return file.open(QIODevice::ReadOnly) && QString::fromUtf8(file.readAll()) == wishText;
}

Result<> makePictures(const QString& folder,
    const std::vector<SamplePicture>& pictures,
    const Wish& wish,
    const OnProgress& onProgress,
    const std::atomic<bool>* cancel)
{
    const QString wishText =
        QStringLiteral("form 1, seed %1, %2").arg(wish.seed).arg(wish.small ? 1 : 0);
    const bool keep = madeBefore(folder, wishText);
    if (const auto noted = writeText(folder + QStringLiteral("/.made"), wishText); !noted)
        return noted.error();
    int done = 0;
    for (const SamplePicture& picture : pictures) {
        if (cancel != nullptr && cancel->load())
            return Error{ErrorCode::Cancelled, folder, {}};
        if (onProgress)
            onProgress(picture.file, done, static_cast<int>(pictures.size()));
        ++done;
        const QString path = folder + QLatin1Char('/') + picture.file;
        if (keep && QFileInfo(path).size() > 0)
            continue;
        if (const auto written = makePicture(path, picture, wish.small); !written)
            return written.error();
    }
    return Done{};
}

Result<> writeLists(const QString& folder, const Wish& wish, SampleClass& sample)
{
    QString children = resource("children.csv");
    QString quotes = resource("quotes.csv");
    if (wish.children) {
        const InventedClass invented = inventClass(wish.seed, *wish.children);
        children = invented.childrenCsv;
        quotes = invented.quotesCsv;
        sample.experiences.resize(1); // the drawing belongs to a child of the usual class
        sample.stars.clear();
    }
    sample.childrenFile = folder + QStringLiteral("/children.csv");
    if (const auto written = writeText(sample.childrenFile, children); !written)
        return written.error();
    SampleExperience& puddle = sample.experiences.front();
    puddle.quotesFile = folder + QStringLiteral("/quotes.csv");
    puddle.picturesFolder = folder + QStringLiteral("/pictures");
    if (const auto written = writeText(puddle.quotesFile, quotes); !written)
        return written.error();
    if (sample.experiences.size() < 2)
        return Done{};
    SampleExperience& drawing = sample.experiences.back();
    drawing.quotesFile = folder + QStringLiteral("/drawing/quotes.csv");
    drawing.picturesFolder = folder + QStringLiteral("/drawing/pictures");
    return writeText(drawing.quotesFile, resource("drawing_quotes.csv"));
}

} // namespace

Result<SampleClass> writeSample(const QString& folder,
    const Wish& wish,
    const OnProgress& onProgress,
    const std::atomic<bool>* cancel)
{
    useResources();
    for (const char* part : {"/pictures", "/drawing/pictures"}) {
        if (!QDir().mkpath(folder + QLatin1String(part)))
            return Error{ErrorCode::CannotWrite, folder, {}};
    }
    SampleClass sample = sampleTexts();
    if (const auto written = writeLists(folder, wish, sample); !written)
        return written.error();
    const std::vector<SamplePicture> pictures = puddlePictures(wish);
    for (const SampleExperience& telling : sample.experiences) {
        const bool first = telling.quotesFile == sample.experiences.front().quotesFile;
        const std::vector<SamplePicture> wanted = first ? pictures : drawingPictures(wish);
        const QString rows = rowsFor(resource(first ? "photos.csv" : "drawing_photos.csv"), wanted);
        if (const auto listed =
                writeText(telling.picturesFolder + QStringLiteral("/photos.csv"), rows);
            !listed)
            return listed.error();
        if (const auto made =
                makePictures(telling.picturesFolder, wanted, wish, onProgress, cancel);
            !made)
            return made.error();
    }
    return sample;
}

} // namespace wainscot::samples
