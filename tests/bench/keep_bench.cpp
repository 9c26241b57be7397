// A term's file of a fourth and of the whole of 1,000 photos. Each is a process of its own, so that
// its CPU and peak memory can be told. Fails when memory is above its limit, or when four times
// the pages take more than four times the CPU, with a margin.
//   bench_keep [--quick]      quick: a tenth of everything
#include "app/jobs/keep_job.h"
#include "core/store/originals.h"
#include "tests/support/media_pictures.h"

#include <QCryptographicHash>
#include <QDir>
#include <QFileInfo>
#include <QGuiApplication>

#include <cstdio>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

namespace {

using namespace wainscot;

constexpr int kPhotos = 1000;
constexpr int kPhotosInExperience = 25;
constexpr int kQuotesInExperience = 78;
constexpr double kMostMemoryMb = 200;
constexpr double kMostGrowth = 1.15; // of CPU by page, from a fourth to the whole
constexpr double kQuickGrowth = 1.4; // the same with --quick, where starting up counts for more

// One photo of 12 megapixels under many names: reading and shrinking it costs the same each time,
// and the folder stays small.
QString nameOf(int number)
{
    return QString::fromLatin1(
        QCryptographicHash::hash(QByteArray::number(number), QCryptographicHash::Sha256).toHex());
}

void makePhotos(const QString& folder, int count)
{
    const Originals originals(folder);
    QDir().mkpath(folder);
    const QString source = folder + QStringLiteral("/photo.jpg");
    if (!QFileInfo::exists(source))
        test::writeFile(source, test::jpegOf(test::noisePhoto(4000, 3000, 7), 90));
    for (int i = 0; i < count; ++i) {
        const QString path = originals.pathOf(nameOf(i));
        QDir().mkpath(QFileInfo(path).path());
        ::link(QFile::encodeName(source).constData(), QFile::encodeName(path).constData());
    }
}

Book bookOf(int photos)
{
    Book book;
    book.info.title = QStringLiteral("Sparrows");
    PromptSet prompts = defaultPromptSet();
    prompts.id = book.promptSets.newId();
    book.promptSets.put(prompts);
    for (int i = 0; i < 26; ++i) {
        Child child;
        child.id = book.children.newId();
        child.name = QStringLiteral("Child %1").arg(QChar(u'A' + i));
        child.shownAs = child.name;
        child.permissions = Permissions::all();
        book.children.put(child);
    }
    for (int i = 0; i < photos; ++i) {
        if (i % kPhotosInExperience == 0) {
            Experience experience;
            experience.id = book.experiences.newId();
            experience.title = QStringLiteral("Where does the water go, %1").arg(i);
            experience.on = QDate(2025, 9, 1).addDays(i / 10);
            experience.promptSet = prompts.id;
            experience.interpretation =
                QStringLiteral("They came back to it on three days. ").repeated(40);
            book.experiences.put(experience);
            for (int k = 0; k < kQuotesInExperience; ++k) {
                Quote quote;
                quote.id = book.quotes.newId();
                quote.experience = experience.id;
                quote.child = ChildId(1 + k % 26);
                quote.prompt = prompts.prompts[static_cast<std::size_t>(k) / 26].key;
                quote.words =
                    QStringLiteral("The water goes under the stone %1 and sleeps.").arg(k);
                book.quotes.put(quote);
            }
        }
        Picture picture;
        picture.id = book.pictures.newId();
        picture.experience = ExperienceId(book.experiences.lastNumber());
        picture.sha256 = nameOf(i);
        picture.format = QStringLiteral("jpeg");
        picture.size = {4000, 3000};
        picture.people = {true, {}};
        picture.caption = QStringLiteral("Photo %1: the edge at ten.").arg(i);
        book.pictures.put(picture);
    }
    return book;
}

int write(const QString& folder, int photos)
{
    KeepJob job;
    job.from = QDate(2025, 9, 1);
    job.to = QDate(2026, 7, 31);
    job.file = folder + QStringLiteral("/term.pdf");
    job.picturesFolder = folder;
    const auto outcome = job.run(bookOf(photos), {});
    if (!outcome) {
        std::fprintf(stderr, "%s\n", qPrintable(outcome.error().detail));
        return 1;
    }
    std::printf("%d\n", outcome->pages);
    return 0;
}

struct Cost {
    int pages = 0;
    double cpu = 0; // seconds
    double memoryMb = 0;
};

// This program again for so many photos, and what it took.
Cost costOf(const QString& folder, int photos)
{
    int ends[2];
    if (pipe(ends) != 0)
        return {};
    const QByteArray place = QFile::encodeName(folder);
    const QByteArray number = QByteArray::number(photos);
    const pid_t child = fork();
    if (child == 0) {
        dup2(ends[1], STDOUT_FILENO);
        execl("/proc/self/exe", "bench_keep", place.constData(), number.constData(), nullptr);
        _exit(127);
    }
    close(ends[1]);
    char said[32] = {};
    const ssize_t length = ::read(ends[0], said, sizeof said - 1);
    close(ends[0]);
    int status = 0;
    rusage used{};
    if (child < 0 || wait4(child, &status, 0, &used) != child || length <= 0)
        return {};
    const auto seconds = [](timeval t) { return double(t.tv_sec) + double(t.tv_usec) / 1e6; };
    return {QByteArray(said).trimmed().toInt(),
        seconds(used.ru_utime) + seconds(used.ru_stime),
        double(used.ru_maxrss) / 1024};
}

} // namespace

int main(int argc, char** argv)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() == 3)
        return write(arguments[1], arguments[2].toInt());
    const bool quick = arguments.contains(QStringLiteral("--quick"));
    const int photos = quick ? kPhotos / 10 : kPhotos;
    const QString folder = QCoreApplication::applicationDirPath() + QStringLiteral("/keep-photos");
    makePhotos(folder, photos);
    const Cost part = costOf(folder, photos / 4);
    const Cost whole = costOf(folder, photos);
    if (part.pages == 0 || whole.pages == 0) {
        std::fprintf(stderr, "a file was not written\n");
        return 1;
    }
    const double growth = (whole.cpu / whole.pages) / (part.cpu / part.pages);
    for (const Cost& cost : {part, whole})
        std::printf("%4d pages  cpu %6.2f s  peak %4.0f MB\n", cost.pages, cost.cpu, cost.memoryMb);
    std::printf("cpu by page %.3f of the shorter file's (at most %.2f), peak %.0f MB (at most "
                "%.0f)\n",
        growth,
        quick ? kQuickGrowth : kMostGrowth,
        whole.memoryMb,
        kMostMemoryMb);
    const bool kept =
        growth <= (quick ? kQuickGrowth : kMostGrowth) && whole.memoryMb < kMostMemoryMb;
    return kept ? 0 : 1;
}
