// Exporting 60 photos of 12 to 24 megapixels on six A1 panels, against the same pages through
// QPdfWriter with full images. Each way is a process of its own, so that its CPU and its peak
// memory can be told. Prints ratios; fails when one is above its limit. The same photos
// straightened, covered and in even light may take as much memory; their CPU is told.
//   bench_paper [--quick]      quick: one panel of ten photos, a looser limit on CPU
#include "layout/paper/original_pictures.h"
#include "layout/paper/pdf_file.h"
#include "tests/support/media_pictures.h"

#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>
#include <QImageReader>
#include <QPainter>
#include <QPdfWriter>

#include <array>
#include <cstdio>

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

int writeOurs(const QStringList& photos, const QString& out, bool treated)
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
    OriginalPictures source([](const ClearedPicture& picture) { return picture.sha256; });
    const auto report = pdf::writePages(out, lists, source, {});
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
    double memoryMb = 0;
    bool ok = false;
};

// This program again with a way to write, and what it took.
Cost costOf(const char* program, const char* way, const QString& folder, int count)
{
    const QByteArray place = folder.toLocal8Bit();
    const QByteArray number = QByteArray::number(count);
    const pid_t child = fork();
    if (child == 0) {
        execl(program, program, way, place.constData(), number.constData(), nullptr);
        _exit(127);
    }
    int status = 0;
    rusage used{};
    if (child < 0 || wait4(child, &status, 0, &used) != child)
        return {};
    const auto seconds = [](timeval t) { return double(t.tv_sec) + double(t.tv_usec) / 1e6; };
    return {seconds(used.ru_utime) + seconds(used.ru_stime),
        double(used.ru_maxrss) / 1024,
        WIFEXITED(status) && WEXITSTATUS(status) == 0};
}

double megabytes(const QStringList& files)
{
    double sum = 0;
    for (const QString& file : files)
        sum += double(QFileInfo(file).size()) / 1e6;
    return sum;
}

int compare(const char* program, const QString& folder, int count, bool quick)
{
    const QStringList photos = photosIn(folder, count);
    const Cost ours = costOf(program, "--ours", folder, count);
    const Cost qt = costOf(program, "--qt", folder, count);
    const Cost treated = costOf(program, "--treated", folder, count);
    if (!ours.ok || !qt.ok || !treated.ok) {
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
    const double mostCpu = quick ? kGuardCpu : kMostCpu;
    const bool kept = cpu <= mostCpu && ours.memoryMb < kMostMemoryMb
        && treated.memoryMb < kMostMemoryMb && bytes < kMostBytes * originals;
    return kept ? 0 : 1;
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
        const bool treated = arguments[1] == QLatin1String("--treated");
        return treated || arguments[1] == QLatin1String("--ours")
            ? writeOurs(photos,
                folder + (treated ? QStringLiteral("/treated.pdf") : QStringLiteral("/ours.pdf")),
                treated)
            : writeWithQt(photos, folder + QStringLiteral("/qt.pdf"));
    }
    const bool quick = arguments.contains(QStringLiteral("--quick"));
    const QString folder = QCoreApplication::applicationDirPath() + QStringLiteral("/paper-photos");
    return compare("/proc/self/exe", folder, quick ? kPhotosAPanel : 6 * kPhotosAPanel, quick);
}
