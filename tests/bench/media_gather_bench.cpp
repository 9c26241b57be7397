// Gathering photos: CPU of the thumbnail and proxy of every photo against vipsthumbnail making the
// same sizes, and the wall time of two workers against one. Prints ratios; asserts on CPU only when
// asked for the whole measurement.
//   bench_gather [--quick]      quick: six photos instead of sixty
#include "core/media/intake.h"
#include "core/media/proxies.h"
#include "tests/support/media_pictures.h"

#include <QCoreApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QFileInfo>
#include <QTemporaryDir>

#include <array>
#include <cstdio>

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
    double cpu = 0;
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

} // namespace

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
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
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    std::printf("peak memory                     %.0f MB\n", double(usage.ru_maxrss) / 1024);
    return ratio <= 1 ? 0 : 1;
}
