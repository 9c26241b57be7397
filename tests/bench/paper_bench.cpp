// Exporting 60 photos of 12 to 24 megapixels on six A1 panels, against the same pages through
// QPdfWriter with full images. Each way is a process of its own, so that its CPU and its peak
// memory can be told. Prints ratios; fails when one is above its limit. The same photos
// straightened, covered and in even light may take as much memory; their CPU is told. Cut into A4
// sheets a panel's file may hardly grow. An archive of the photos untouched, one a page, is set
// beside img2pdf, which does nothing else; its limits count in the full form only. Wall time with
// two workers against one counts in the full form only, and means something only while nothing else
// runs.
//   bench_paper [--quick]      quick: one panel of ten photos, a looser limit on CPU
#include "layout/paper/original_pictures.h"
#include "layout/paper/pdf_file.h"
#include "tests/support/media_pictures.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QGuiApplication>
#include <QImageReader>
#include <QPainter>
#include <QPdfWriter>

#include <array>
#include <cstdio>
#include <map>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

using namespace wainscot;

constexpr SizeMm kA1{Mm(594), Mm(841)};
constexpr int kPhotosAPanel = 10;
constexpr double kMostCpu = 0.35; // of QPdfWriter's
constexpr double kGuardCpu = 0.8; // the same with --quick, where starting up counts for more
constexpr double kMostMemoryMb = 150;
constexpr double kMostBytes = 0.25; // of the originals'
constexpr double kMostSheets = 1.02; // the file on A4 sheets against the panel's own
constexpr double kMostWall = 0.65; // of one worker's wall time, with two
constexpr double kMostArchiveCpu = 1.0; // of img2pdf's
constexpr double kMostArchiveMemory = 0.3; // of img2pdf's

// Five pictures are made; the others are the same ones with another comment, so other files.
QStringList photosIn(const QString& folder, int count)
{
    constexpr std::array<std::array<int, 2>, 5> sizes{
        {{4000, 3000}, {4608, 3456}, {5184, 3456}, {5472, 3648}, {6000, 4000}}};
    QDir().mkpath(folder);
    QStringList paths;
    std::array<QByteArray, sizes.size()> made;
    for (int i = 0; i < count; ++i) {
        paths << QStringLiteral("%1/p%2.jpg").arg(folder).arg(i, 2, 10, QChar(u'0'));
        if (QFileInfo::exists(paths.back()))
            continue;
        const std::size_t kind = static_cast<std::size_t>(i) % sizes.size();
        if (made[kind].isEmpty())
            made[kind] = test::jpegOf(test::noisePhoto(sizes[kind][0], sizes[kind][1], 7), 90);
        test::writeFile(paths.back(), test::withSegment(made[kind], 0xfe, QByteArray::number(i)));
    }
    return paths;
}

// 180 x 135 mm each, less where the photo is wider.
RectMm placeOf(int index, SizePx size)
{
    const int onPanel = index % kPhotosAPanel;
    const int row = onPanel / 3;
    const Mm width(180);
    return {Mm(20.0 + 188 * (onPanel % 3)), Mm(60.0 + 190 * row), width, width / size.aspect()};
}

// All that can be done to a photo, leaning by a tenth of its height.
Treatment treatedFor(SizePx size)
{
    Treatment treatment;
    treatment.covered = {{{0.4, 0.3, 0.1, 0.15}, Cover::Mosaic}};
    treatment.straightening = Straightening{{{{0.05, 0.1}, {0.95, 0}, {1, 0.9}, {0, 1}}}, size};
    treatment.evenLight = true;
    return treatment;
}

enum class Way { Panels, Treated, OneWorker, Sheets, Archive };

std::vector<DisplayList> listsOf(const QStringList& photos, bool treated)
{
    std::vector<DisplayList> lists;
    for (int i = 0; i < photos.size(); ++i) {
        if (i % kPhotosAPanel == 0) {
            DisplayList& list = lists.emplace_back();
            list.size = kA1;
            list.elements.push_back({Role::Document, -1, {}, {}, {}, {}});
        }
        const QSize pixels = QImageReader(photos[i]).size();
        ClearedPicture picture;
        picture.id = PictureId(i + 1);
        picture.sha256 = photos[i];
        picture.format = QStringLiteral("jpeg");
        picture.size = {pixels.width(), pixels.height()};
        if (treated) {
            picture.treatment = treatedFor(picture.size);
            picture.size = straightenedSize(
                picture.treatment.straightening->corners, picture.treatment.straightening->from);
        }
        DisplayList& list = lists.back();
        const RectMm place = placeOf(i, picture.size);
        list.elements.push_back({Role::Figure, 0, {}, {}, {}, place});
        list.marks.push_back(
            {static_cast<int>(list.elements.size()) - 1, {}, PlacedPicture{picture, place}});
    }
    return lists;
}

// One photo a page, as large as its pixels at 300 an inch, so that it can stay as it is.
std::vector<DisplayList> archiveOf(const QStringList& photos)
{
    std::vector<DisplayList> lists = listsOf(photos, false);
    std::vector<DisplayList> pages;
    for (DisplayList& list : lists) {
        for (const Mark& mark : list.marks) {
            PlacedPicture placed = std::get<PlacedPicture>(mark.shape);
            DisplayList& page = pages.emplace_back();
            page.size = {Mm(placed.picture.size.width * kMmPerInch / 300),
                Mm(placed.picture.size.height * kMmPerInch / 300)};
            placed.place = {Mm(0), Mm(0), page.size.width, page.size.height};
            page.elements = {
                {Role::Document, -1, {}, {}, {}, {}}, {Role::Figure, 0, {}, {}, {}, placed.place}};
            page.marks.push_back({1, {}, placed});
        }
    }
    return pages;
}

int writeOurs(const QStringList& photos, const QString& out, Way way)
{
    const std::vector<DisplayList> lists =
        way == Way::Archive ? archiveOf(photos) : listsOf(photos, way == Way::Treated);
    OriginalPictures source([](const ClearedPicture& picture) { return picture.sha256; });
    PaperOptions options;
    options.workers = way == Way::OneWorker ? 1 : 2;
    const auto report = way == Way::Sheets
        ? pdf::writeSheetsOf(out, lists, source, options, SheetOptions{{Mm(210), Mm(297)}})
        : pdf::writePages(out, lists, source, options);
    if (!report)
        std::fprintf(stderr, "%s\n", qPrintable(report.error().detail));
    return report ? 0 : 1;
}

int writeWithQt(const QStringList& photos, const QString& out)
{
    QPdfWriter writer(out);
    writer.setPageSize(
        QPageSize(QSizeF(kA1.width.value(), kA1.height.value()), QPageSize::Millimeter));
    writer.setPageMargins(QMarginsF(0, 0, 0, 0));
    QPainter painter(&writer);
    const double dots = writer.resolution() / kMmPerInch;
    for (int i = 0; i < photos.size(); ++i) {
        if (i > 0 && i % kPhotosAPanel == 0)
            writer.newPage();
        const QImage image(photos[i]);
        const RectMm r = placeOf(i, {image.width(), image.height()});
        painter.drawImage(QRectF(r.x.value() * dots,
                              r.y.value() * dots,
                              r.width.value() * dots,
                              r.height.value() * dots),
            image);
    }
    return painter.end() ? 0 : 1;
}

struct Cost {
    double cpu = 0; // seconds
    double wall = 0; // seconds
    double memoryMb = 0;
    bool ok = false;
};

// A program and what it took. A name without a path is looked for as the shell does.
Cost costOf(const QStringList& command)
{
    std::vector<QByteArray> bytes;
    for (const QString& word : command)
        bytes.push_back(word.toLocal8Bit());
    std::vector<char*> words;
    words.reserve(bytes.size() + 1);
    for (QByteArray& word : bytes)
        words.push_back(word.data());
    words.push_back(nullptr);
    QElapsedTimer timer;
    timer.start();
    const pid_t child = fork();
    if (child == 0) {
        execvp(words.front(), words.data());
        _exit(127);
    }
    int status = 0;
    rusage used{};
    if (child < 0 || wait4(child, &status, 0, &used) != child)
        return {};
    const auto seconds = [](timeval t) { return double(t.tv_sec) + double(t.tv_usec) / 1e6; };
    return {seconds(used.ru_utime) + seconds(used.ru_stime),
        double(timer.elapsed()) / 1000,
        double(used.ru_maxrss) / 1024,
        WIFEXITED(status) && WEXITSTATUS(status) == 0};
}

// This program again with a way to write.
Cost costOf(const char* program, const char* way, const QString& folder, int count)
{
    return costOf({QString::fromLocal8Bit(program),
        QString::fromLatin1(way),
        folder,
        QString::number(count)});
}

double megabytes(const QStringList& files)
{
    double sum = 0;
    for (const QString& file : files)
        sum += double(QFileInfo(file).size()) / 1e6;
    return sum;
}

// False when a limit that counts is not kept.
bool compareArchive(
    const char* program, const QString& folder, const QStringList& photos, bool quick)
{
    const QString theirs = folder + QStringLiteral("/img2pdf.pdf");
    const Cost archive = costOf(program, "--archive", folder, int(photos.size()));
    const Cost img2pdf =
        costOf(QStringList{QStringLiteral("img2pdf"), QStringLiteral("--output"), theirs} + photos);
    if (!archive.ok || !img2pdf.ok) {
        std::fprintf(stderr, "an archive failed; is img2pdf installed?\n");
        return false;
    }
    const double cpu = archive.cpu / img2pdf.cpu;
    const double memory = archive.memoryMb / img2pdf.memoryMb;
    const double bytes = megabytes({folder + QStringLiteral("/archive.pdf")});
    std::printf("img2pdf     cpu %6.2f s  peak %5.0f MB  file %6.1f MB\n",
        img2pdf.cpu,
        img2pdf.memoryMb,
        megabytes({theirs}));
    std::printf("archive     cpu %6.2f s  peak %5.0f MB  file %6.1f MB\n",
        archive.cpu,
        archive.memoryMb,
        bytes);
    std::printf("archive cpu ratio %.3f (at most %.2f), memory ratio %.3f (at most %.2f)\n",
        cpu,
        kMostArchiveCpu,
        memory,
        kMostArchiveMemory);
    const bool untouched = bytes >= megabytes(photos) && bytes < 1.01 * megabytes(photos);
    return untouched && (quick || (cpu <= kMostArchiveCpu && memory <= kMostArchiveMemory));
}

int compare(const char* program, const QString& folder, int count, bool quick)
{
    const QStringList photos = photosIn(folder, count);
    const Cost ours = costOf(program, "--ours", folder, count);
    const Cost qt = costOf(program, "--qt", folder, count);
    const Cost treated = costOf(program, "--treated", folder, count);
    const Cost alone = costOf(program, "--one-worker", folder, count);
    const Cost sheets = costOf(program, "--sheets", folder, count);
    if (!ours.ok || !qt.ok || !treated.ok || !alone.ok || !sheets.ok) {
        std::fprintf(stderr, "a way to write failed\n");
        return 1;
    }
    const double originals = megabytes(photos);
    const double bytes = megabytes({folder + QStringLiteral("/ours.pdf")});
    const double cpu = ours.cpu / qt.cpu;
    std::printf("photos %d, originals %.1f MB\n", count, originals);
    std::printf("QPdfWriter  cpu %6.2f s  peak %5.0f MB  file %6.1f MB\n",
        qt.cpu,
        qt.memoryMb,
        megabytes({folder + QStringLiteral("/qt.pdf")}));
    std::printf(
        "paper       cpu %6.2f s  peak %5.0f MB  file %6.1f MB\n", ours.cpu, ours.memoryMb, bytes);
    std::printf("treated     cpu %6.2f s  peak %5.0f MB\n", treated.cpu, treated.memoryMb);
    std::printf("cpu ratio %.3f (at most %.2f), memory %.0f MB (at most %.0f), "
                "bytes of originals %.3f (at most %.2f)\n",
        cpu,
        kMostCpu,
        ours.memoryMb,
        kMostMemoryMb,
        bytes / originals,
        kMostBytes);
    const double grown = megabytes({folder + QStringLiteral("/sheets.pdf")}) / bytes;
    const double wall = ours.wall / alone.wall;
    std::printf(
        "on A4 sheets %.4f of the panels' file (at most %.2f), two workers %.2f of one's wall "
        "time (at most %.2f)\n",
        grown,
        kMostSheets,
        wall,
        kMostWall);
    const double mostCpu = quick ? kGuardCpu : kMostCpu;
    const bool kept = cpu <= mostCpu && ours.memoryMb < kMostMemoryMb
        && treated.memoryMb < kMostMemoryMb && bytes < kMostBytes * originals
        && grown <= kMostSheets && (quick || wall <= kMostWall);
    const bool archiveKept = compareArchive(program, folder, photos, quick);
    return kept && archiveKept ? 0 : 1;
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 4) {
        const QString& folder = arguments[2];
        const QStringList photos = photosIn(folder, arguments[3].toInt());
        const QString name = arguments[1].mid(2);
        const QString out = folder + QLatin1Char('/') + name + QStringLiteral(".pdf");
        const std::map<QString, Way> ways{{QStringLiteral("ours"), Way::Panels},
            {QStringLiteral("treated"), Way::Treated},
            {QStringLiteral("one-worker"), Way::OneWorker},
            {QStringLiteral("sheets"), Way::Sheets},
            {QStringLiteral("archive"), Way::Archive}};
        const auto way = ways.find(name);
        return way == ways.end() ? writeWithQt(photos, out) : writeOurs(photos, out, way->second);
    }
    const bool quick = arguments.contains(QStringLiteral("--quick"));
    const QString folder = QCoreApplication::applicationDirPath() + QStringLiteral("/paper-photos");
    return compare("/proc/self/exe", folder, quick ? kPhotosAPanel : 6 * kPhotosAPanel, quick);
}
