// Opening a book of 2,000 photos and one of 20 that has the same first panel: CPU until the panel
// shows, pictures read, and memory, each in processes of their own, in one run.
#include <QApplication>
#include <QDir>
#include <QImage>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <sys/resource.h>

#include <algorithm>
#include <cstdio>

#include "app/ui/frame/main_window.h"
#include "app/ui/kit/style.h"
#include "app/ui/kit/tokens.h"
#include "core/store/book_store.h"
#include "core/store/originals.h"

namespace wainscot {
namespace {

constexpr int kRuns = 7;
constexpr int kOnPanel = 6;

double cpuSeconds()
{
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    const auto seconds = [](const timeval& t) {
        return double(t.tv_sec) + 1e-6 * double(t.tv_usec);
    };
    return seconds(usage.ru_utime) + seconds(usage.ru_stime);
}

// Originals that differ in their bytes: some follow the end of the picture, where no reader looks.
QString original(const QString& folder, const QByteArray& jpeg, int number)
{
    const QString path = folder + QStringLiteral("/%1.jpg").arg(number);
    QFile file(path);
    if (file.open(QIODevice::WriteOnly))
        file.write(jpeg + QByteArray::number(number));
    return path;
}

QByteArray somePhoto(const QString& folder)
{
    QImage image(3000, 2000, QImage::Format_RGB32);
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x)
            image.setPixel(x, y, qRgb((x / 9 + y) & 255, (x + y / 7) & 255, (x / 5) & 255));
    }
    const QString path = folder + QStringLiteral("/photo.jpg");
    image.save(path, "JPG", 60);
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

bool makeBook(const QString& folder, int photos)
{
    const QTemporaryDir work;
    auto store = BookStore::create(folder, {QStringLiteral("Sparrows"), {}});
    if (!store)
        return false;
    const Originals originals((*store)->picturesFolder());
    const QByteArray jpeg = somePhoto(work.path());
    EditBuilder edit((*store)->book(), QStringLiteral("Photos"));
    Experience experience;
    experience.id = edit.newId<Experience>();
    experience.title = QStringLiteral("Where does the puddle go?");
    edit.put(experience);
    Display display;
    display.id = edit.newId<Display>();
    display.experience = experience.id;
    display.name = QStringLiteral("Hallway");
    display.panelSize = {Mm(594), Mm(841)};
    edit.put(display);
    Panel panel;
    panel.id = edit.newId<Panel>();
    panel.display = display.id;
    edit.put(panel);
    for (int i = 0; i < photos; ++i) {
        const Result<QString> kept = originals.keep(original(work.path(), jpeg, i));
        if (!kept)
            return false;
        Picture picture;
        picture.id = edit.newId<Picture>();
        picture.experience = experience.id;
        picture.sha256 = *kept;
        picture.format = QStringLiteral("jpeg");
        picture.fileName = QStringLiteral("IMG_%1.jpg").arg(i);
        picture.caption = QStringLiteral("The string from yesterday, day %1").arg(i);
        picture.size = {3000, 2000};
        picture.people.lookedAt = true;
        edit.put(picture);
        if (i >= kOnPanel)
            continue;
        Piece piece;
        piece.id = edit.newId<Piece>();
        piece.panel = panel.id;
        piece.kind = PieceKind::Photo;
        piece.picture = picture.id;
        piece.text = picture.caption;
        piece.order = i + 1;
        piece.cell = {Mm(33 + i % 2 * 270), Mm(120 + i / 2 * 220), Mm(255), Mm(200)};
        piece.picturePlace = {piece.cell.x, piece.cell.y, Mm(255), Mm(170)};
        edit.put(piece);
    }
    return (*store)->history().perform(edit.take()).ok();
}

// One opening in this process: "CPU seconds, pictures read, peak KiB".
int openOnce(const QString& book)
{
    ui::MainWindow window;
    window.resize(1366, 768);
    window.show();
    QApplication::processEvents();
    const double start = cpuSeconds();
    if (!window.openBook(book))
        return 1;
    ui::ComposePlace& compose = window.compose();
    do
        QApplication::processEvents();
    while (compose.canvas().takeWork().pixels == 0);
    compose.shelf().waitForAll(); // the pictures of the panel
    QApplication::processEvents();
    const double cpu = cpuSeconds() - start;
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    std::printf("%.6f %d %ld\n", cpu, compose.shelf().askedSoFar(), usage.ru_maxrss);
    return compose.canvas().content().pieces.size() == kOnPanel ? 0 : 1;
}

struct Opening {
    double cpu = 0;
    int read = 0;
    double mebibytes = 0;
};

Opening measure(const QString& program, const QString& book)
{
    std::vector<double> cpu;
    Opening opening;
    for (int run = -1; run < kRuns; ++run) { // the first makes the small copies and does not count
        QProcess child;
        child.start(program, {QStringLiteral("--open"), book});
        child.waitForFinished(-1);
        const QList<QByteArray> said = child.readAllStandardOutput().trimmed().split(' ');
        if (said.size() != 3 || run < 0)
            continue;
        cpu.push_back(said[0].toDouble());
        opening.read = said[1].toInt();
        opening.mebibytes = std::max(opening.mebibytes, said[2].toDouble() / 1024);
    }
    if (cpu.empty())
        return opening;
    std::sort(cpu.begin(), cpu.end());
    opening.cpu = cpu[cpu.size() / 2];
    return opening;
}

int compare(const QString& program)
{
    const QTemporaryDir place;
    Opening all[2];
    const int photos[2] = {20, 2000};
    for (int i = 0; i < 2; ++i) {
        const QString book = place.filePath(QString::number(photos[i]));
        if (!makeBook(book, photos[i])) {
            std::fprintf(stderr, "the book could not be made\n");
            return 1;
        }
        all[i] = measure(program, book);
        std::printf("%4d photos: %.1f ms CPU until the panel shows, %d pictures read, %.0f MiB\n",
            photos[i],
            all[i].cpu * 1000,
            all[i].read,
            all[i].mebibytes);
    }
    const double ratio = all[0].cpu > 0 ? all[1].cpu / all[0].cpu : 0;
    std::printf("work ratio 2,000 : 20 = %.2f (limit 1.5), memory limit 300 MiB\n", ratio);
    const bool good =
        ratio > 0 && ratio <= 1.5 && all[1].read == all[0].read && all[1].mebibytes < 300;
    return good ? 0 : 1;
}

} // namespace
} // namespace wainscot

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    using namespace wainscot::ui;
    QApplication::setStyle(new WindowStyle);
    QApplication::setPalette(paletteFor(tokens()));
    const QStringList arguments = QApplication::arguments();
    if (arguments.size() == 3 && arguments[1] == QStringLiteral("--open"))
        return wainscot::openOnce(arguments[2]);
    return wainscot::compare(QApplication::applicationFilePath());
}
