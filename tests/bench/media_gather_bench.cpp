// Gathering photos: CPU of the thumbnail and proxy of every photo against vipsthumbnail making the
// same sizes, and the wall time of two workers against one. Baking them for paper: CPU against
// QPdfWriter with full images, and memory with two workers. Prints ratios; fails when CPU or memory
// is above its limit.
//   bench_gather [--quick]      quick: six photos instead of sixty
#include "core/media/bake.h"
#include "core/media/intake.h"
#include "core/media/proxies.h"
#include "tests/support/media_pictures.h"

#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QFileInfo>
#include <QGuiApplication>
#include <QPainter>
#include <QPdfWriter>
#include <QTemporaryDir>

#include <algorithm>
#include <array>
#include <atomic>
#include <cstdio>
#include <thread>

#include <sys/resource.h>

namespace {

using namespace wainscot;

double cpuSeconds(int who)
{
    rusage usage{};
    getrusage(who, &usage);
    const auto seconds = [](timeval t) { return double(t.tv_sec) + double(t.tv_usec) / 1e6; };
    return seconds(usage.ru_utime) + seconds(usage.ru_stime);
}

// Photos of 12 to 24 megapixels. Five are made, the others are the same picture with another
// comment: another file to us and to the rival, at the same work.
QStringList photosIn(const QString& folder, int count)
{
    constexpr std::array<std::array<int, 2>, 5> sizes{
        {{4000, 3000}, {4608, 3456}, {5184, 3456}, {5472, 3648}, {6000, 4000}}};
    QDir().mkpath(folder);
    QStringList paths;
    std::array<QByteArray, sizes.size()> made;
    for (int i = 0; i < count; ++i) {
        const QString path = QStringLiteral("%1/p%2.jpg").arg(folder).arg(i, 2, 10, QChar(u'0'));
        paths << path;
        if (QFileInfo::exists(path))
            continue;
        const std::size_t kind = std::size_t(i) % sizes.size();
        if (made[kind].isEmpty())
            made[kind] = test::jpegOf(test::noisePhoto(sizes[kind][0], sizes[kind][1], 7), 90);
        test::writeFile(path, test::withSegment(made[kind], 0xfe, QByteArray::number(i)));
    }
    return paths;
}

struct Cost {
    double cpu = 0; // seconds; negative = something failed
    double wall = 0;
};

Cost gather(const QString& folder, int workers)
{
    const QTemporaryDir cache;
    const Proxies proxies(cache.path());
    FolderOptions options;
    options.workers = workers;
    options.proxies = &proxies;
    QElapsedTimer timer;
    timer.start();
    const double before = cpuSeconds(RUSAGE_SELF);
    const auto result = inspectFolder(folder, options);
    Cost cost{cpuSeconds(RUSAGE_SELF) - before, double(timer.elapsed()) / 1000};
    for (const FileVerdict& file : result->files) {
        if (file.verdict != Verdict::Accepted)
            cost.cpu = -1; // must not count as a measurement
    }
    return cost;
}

Cost proxiesOnly(const QStringList& paths)
{
    const QTemporaryDir cache;
    const Proxies proxies(cache.path());
    QElapsedTimer timer;
    timer.start();
    const double before = cpuSeconds(RUSAGE_SELF);
    int failures = 0;
    for (const QString& path : paths) {
        PictureRecipe recipe;
        recipe.path = path;
        recipe.format = QStringLiteral("jpeg");
        failures += proxies.make(QFileInfo(path).baseName(), recipe) ? 0 : 1;
    }
    const Cost cost{cpuSeconds(RUSAGE_SELF) - before, double(timer.elapsed()) / 1000};
    return failures == 0 ? cost : Cost{-1, -1};
}

Cost rival(const QStringList& paths)
{
    const QTemporaryDir out;
    QElapsedTimer timer;
    timer.start();
    const double before = cpuSeconds(RUSAGE_CHILDREN);
    bool ok = true;
    for (const int side : {320, 1600}) {
        ok &= test::run(QStringLiteral("vipsthumbnail"),
            QStringList{QStringLiteral("--size"),
                QStringLiteral("%1x%1>").arg(side),
                QStringLiteral("-o"),
                QStringLiteral("%1/%s-%2.jpg[Q=85]").arg(out.path()).arg(side)}
                + paths);
    }
    const Cost cost{cpuSeconds(RUSAGE_CHILDREN) - before, double(timer.elapsed()) / 1000};
    return ok ? cost : Cost{-1, -1};
}

// At 300 ppi in a place of 180 x 135 mm.
constexpr SizePx kPlace{2126, 1594};

Cost bake(const QStringList& paths)
{
    // Memory from here on only: the photos were made before.
    test::writeFile(QStringLiteral("/proc/self/clear_refs"), "5");
    const double before = cpuSeconds(RUSAGE_SELF);
    std::atomic<qsizetype> next = 0;
    std::atomic<int> failures = 0;
    const auto work = [&] {
        for (qsizetype i = next++; i < paths.size(); i = next++) {
            PictureRecipe recipe;
            recipe.path = paths[i];
            failures += bakeJpeg(recipe, kPlace) ? 0 : 1;
        }
    };
    std::thread other(work);
    work();
    other.join();
    return {failures == 0 ? cpuSeconds(RUSAGE_SELF) - before : -1, 0};
}

// The plain way: full images through QPdfWriter, each in the same place on a page of its own.
double plainBake(const QStringList& paths)
{
    const QTemporaryDir out;
    const double before = cpuSeconds(RUSAGE_SELF);
    QPdfWriter writer(out.filePath(QStringLiteral("plain.pdf")));
    writer.setResolution(300);
    QPainter painter(&writer);
    for (qsizetype i = 0; i < paths.size(); ++i) {
        if (i > 0)
            writer.newPage();
        const QImage image(paths[i]);
        const QSize place = image.size().scaled(kPlace.width, kPlace.height, Qt::KeepAspectRatio);
        painter.drawImage(QRect(QPoint(0, 0), place), image);
    }
    painter.end();
    return cpuSeconds(RUSAGE_SELF) - before;
}

double peakMegabytes()
{
    // /proc reports no size, so it is read in one piece.
    QFile file(QStringLiteral("/proc/self/status"));
    const QByteArray status = file.open(QIODevice::ReadOnly) ? file.read(8192) : QByteArray();
    const qsizetype at = status.indexOf("VmHWM:");
    return at < 0 ? 1e9 : status.mid(at + 6).trimmed().split(' ').first().toDouble() / 1024;
}

} // namespace

int main(int argc, char** argv)
{
    const QGuiApplication application(argc, argv);
    // One thread each for both: CPU is compared, not how it is spread.
    qputenv("VIPS_CONCURRENCY", "1");
    const bool quick = application.arguments().contains(QLatin1String("--quick"));
    const int count = quick ? 6 : 60;
    const QString folder =
        QStringLiteral("%1/bench_photos_%2").arg(QCoreApplication::applicationDirPath()).arg(count);
    const QStringList paths = photosIn(folder, count);

    const Cost ours = proxiesOnly(paths);
    const Cost theirs = rival(paths);
    const Cost one = gather(folder, 1);
    const Cost two = gather(folder, 2);
    if (ours.cpu <= 0 || theirs.cpu <= 0 || one.cpu <= 0 || two.cpu <= 0) {
        std::fputs("a photo could not be gathered: nothing was measured\n", stderr);
        return 1;
    }
    const double ratio = ours.cpu / theirs.cpu;
    std::printf("photos                          %d\n", count);
    std::printf("thumbnail + proxy, CPU          %.3f s each\n", ours.cpu / count);
    std::printf("vipsthumbnail, CPU              %.3f s each\n", theirs.cpu / count);
    std::printf("ratio (at most 1)               %.2f\n", ratio);
    std::printf("whole gathering, CPU            %.3f s each\n", one.cpu / count);
    std::printf("two workers / one, wall         %.2f (at most 0.65 on a quiet machine)\n",
        two.wall / one.wall);
    std::printf("two workers / one, CPU          %.2f\n", two.cpu / one.cpu);
    const Cost baked = bake(paths);
    const double peak = peakMegabytes();
    // The plain way is slow enough that ten photos tell its cost.
    const QStringList few = paths.first(std::min<qsizetype>(10, paths.size()));
    const double bakeRatio = baked.cpu / count / (plainBake(few) / double(few.size()));
    std::printf("baking for paper, CPU           %.3f s each\n", baked.cpu / count);
    std::printf(
        "baking / QPdfWriter, CPU        %.2f (guarded at 0.7; the export is measured apart)\n",
        bakeRatio);
    std::printf("peak memory, two workers        %.0f MB (at most 150)\n", peak);
    return ratio <= 1 && baked.cpu > 0 && bakeRatio <= 0.7 && peak <= 150 ? 0 : 1;
}
