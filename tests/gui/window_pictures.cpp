// window_pictures FOLDER [VARIANT...]: every place of the window on the small sample class, to be
// looked at: light and dark, three sizes of window, large text, from right to left, in Spanish. For
// each variant its pictures and one sheet of all of them. Nothing is compared.
#include <QApplication>
#include <QDir>
#include <QElapsedTimer>
#include <QPainter>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <QTranslator>

#include <cstdio>

#include "app/jobs/guide_book.h"
#include "app/ui/canvas/canvas_access.h"
#include "app/ui/frame/book_sheet.h"
#include "app/ui/frame/main_window.h"
#include "app/ui/kit/style.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {
namespace {

struct Variant {
    const char* name;
    QSize size;
    bool dark = false;
    double points = 10;
    bool fromRight = false;
    bool spanish = false;
};

const std::vector<Variant>& variants()
{
    static const std::vector<Variant> all{{"light-1366", {1366, 768}},
        {"dark-1366", {1366, 768}, true},
        {"light-1024", {1024, 600}},
        {"dark-1024", {1024, 600}, true},
        {"light-1920", {1920, 1080}},
        {"dark-1920", {1920, 1080}, true},
        {"large-1366", {1366, 768}, false, 15},
        {"large-dark-1920", {1920, 1080}, true, 15},
        {"right-1366", {1366, 768}, false, 10, true},
        {"spanish-1366", {1366, 768}, false, 10, false, true},
        {"spanish-1024", {1024, 600}, false, 10, false, true}};
    return all;
}

class Album {
public:
    Album(const QString& folder, const Variant& variant)
        : m_folder(QDir(folder).filePath(QLatin1String(variant.name)))
    {
        QDir().mkpath(m_folder);
    }
    void take(QWidget& widget, const QString& name)
    {
        const QPixmap picture = widget.grab();
        picture.save(QDir(m_folder).filePath(name + QStringLiteral(".png")));
        m_all.push_back({name, picture});
    }
    // All pictures side by side, four in a row.
    void writeSheet() const
    {
        constexpr int kAcross = 4;
        constexpr int kWide = 640;
        constexpr int kGap = 24;
        constexpr int kHigh = 400;
        const int rows = (int(m_all.size()) + kAcross - 1) / kAcross;
        QImage sheet(kAcross * (kWide + kGap) + kGap,
            rows * (kHigh + 2 * kGap) + kGap,
            QImage::Format_RGB32);
        sheet.fill(QColor(0x80, 0x80, 0x80));
        QPainter painter(&sheet);
        painter.setRenderHint(QPainter::SmoothPixmapTransform);
        painter.setPen(Qt::white);
        for (std::size_t i = 0; i < m_all.size(); ++i) {
            const QPoint corner(kGap + int(i) % kAcross * (kWide + kGap),
                kGap + int(i) / kAcross * (kHigh + 2 * kGap));
            const QSize shown = m_all[i].second.size().scaled(kWide, kHigh, Qt::KeepAspectRatio);
            painter.drawPixmap(QRect(corner + QPoint(0, kGap), shown), m_all[i].second);
            painter.drawText(corner + QPoint(0, kGap - 6), m_all[i].first);
        }
        sheet.save(m_folder + QStringLiteral(".png"));
    }

private:
    QString m_folder;
    std::vector<std::pair<QString, QPixmap>> m_all;
};

void settle(MainWindow& window)
{
    for (int round = 0; round < 2; ++round) {
        window.work().waitForEnd();
        for (int i = 0; i < 8; ++i)
            QApplication::processEvents();
        window.compose().shelf().waitForAll();
    }
    for (int i = 0; i < 8; ++i)
        QApplication::processEvents();
}

PieceId firstOf(MainWindow& window, PieceKind kind)
{
    for (const CanvasPiece& piece : window.compose().canvas().content().pieces) {
        if (piece.piece.kind == kind)
            return piece.piece.id;
    }
    return {};
}

// What opens over the panel is asked for by its action, as a menu would.
void takeOver(MainWindow& window, Album& album, QAction* action, const QString& name)
{
    action->trigger();
    settle(window);
    QThread::msleep(30); // live pictures are painted one after another
    settle(window);
    for (int i = 0; i < 40; ++i) {
        QThread::msleep(5);
        QApplication::processEvents();
    }
    album.take(window, name);
    QKeyEvent escape(QEvent::KeyPress, Qt::Key_Escape, Qt::NoModifier);
    if (QWidget* focus = QApplication::focusWidget())
        QApplication::sendEvent(focus, &escape);
    settle(window);
}

void takeGather(MainWindow& window, Album& album)
{
    window.go(Place::Gather);
    const std::array names{"class", "ask", "words", "seen", "pictures", "heard"};
    for (int part = 0; part < kGatherParts; ++part) {
        window.gather().go(GatherPart(part));
        settle(window);
        album.take(window,
            QStringLiteral("1%1 gather %2")
                .arg(part + 1)
                .arg(QLatin1String(names.at(std::size_t(part)))));
    }
}

void takeListen(MainWindow& window, Album& album)
{
    window.go(Place::Listen);
    for (const auto& [task, name] : {std::pair(ListenPlace::Task::Groups, "21 listen groups"),
             std::pair(ListenPlace::Task::Meetings, "22 listen meetings"),
             std::pair(ListenPlace::Task::LookingBack, "23 listen looking back")}) {
        window.listen().show(task);
        settle(window);
        album.take(window, QLatin1String(name));
    }
}

void takeCompose(MainWindow& window, Album& album)
{
    window.go(Place::Compose);
    settle(window);
    album.take(window, QStringLiteral("31 compose"));
    Canvas& canvas = window.compose().canvas();
    const auto takeInHand = [&](PieceKind kind) {
        const PieceId piece = firstOf(window, kind);
        QTest::mouseClick(&canvas, Qt::LeftButton, {}, canvas.pieceRect(piece).center().toPoint());
        settle(window);
    };
    takeInHand(PieceKind::Photo);
    album.take(window, QStringLiteral("32 compose photo in hand"));
    takeInHand(PieceKind::Quote);
    album.take(window, QStringLiteral("33 compose words in hand"));
    Desk& desk = window.compose().desk();
    PieceIds quotes;
    for (const CanvasPiece& piece : canvas.content().pieces) {
        if (piece.piece.kind == PieceKind::Quote)
            quotes.push_back(piece.piece.id);
    }
    desk.setTogether(quotes, true);
    desk.setLocked(true);
    settle(window);
    album.take(window, QStringLiteral("39 compose wishes"));
    while (window.session().canUndo())
        window.session().undo();
    settle(window);
    const ComposePlace::Actions& actions = window.compose().actions();
    takeOver(window, album, actions.kinds, QStringLiteral("34 compose kinds"));
    takeOver(window, album, actions.colours, QStringLiteral("35 compose colours"));
    takeOver(window, album, actions.history, QStringLiteral("36 compose history"));
    takeOver(window, album, actions.stepBack, QStringLiteral("37 compose step back"));
    window.compose().stage().stepBack().close();
    takeInHand(PieceKind::Photo);
    takeOver(window, album, actions.treat, QStringLiteral("38 compose picture"));
}

void takeHang(MainWindow& window, Album& album)
{
    window.go(Place::Hang);
    for (const auto& [task, name] : {std::pair(HangPlace::Task::Check, "41 hang check"),
             std::pair(HangPlace::Task::Wall, "42 hang wall"),
             std::pair(HangPlace::Task::Print, "43 hang print")}) {
        window.hang().setTask(task);
        settle(window);
        album.take(window, QLatin1String(name));
    }
}

void takeKeep(MainWindow& window, Album& album)
{
    window.go(Place::Keep);
    (void)QTest::qWaitFor([&window] { return window.keep().file().pages() > 0; }, 20000);
    for (const auto& [task, name] : {std::pair(KeepPlace::Task::Term, "51 keep term"),
             std::pair(KeepPlace::Task::Away, "52 keep away")}) {
        window.keep().setTask(task);
        settle(window);
        album.take(window, QLatin1String(name));
    }
}

void takeEmpty(const Variant& variant, Album& album)
{
    const QTemporaryDir folder;
    MainWindow window;
    window.resize(variant.size);
    window.show();
    settle(window);
    album.take(window, QStringLiteral("01 no book"));
    window.beginBook(folder.filePath(QStringLiteral("book")), QStringLiteral("The Wrens"));
    settle(window);
    for (const Place place : {Place::Gather, Place::Listen, Place::Compose, Place::Hang}) {
        window.go(place);
        settle(window);
        album.take(window, QStringLiteral("0%1 empty place").arg(int(place) + 2));
    }
}

void takeAll(const Variant& variant, const QString& book, const QString& folder)
{
    setTokens(variant.dark ? darkTokens() : lightTokens());
    QApplication::setPalette(paletteFor(tokens()));
    QFont font = QApplication::font();
    font.setPointSizeF(variant.points);
    QApplication::setFont(font);
    QApplication::setLayoutDirection(variant.fromRight ? Qt::RightToLeft : Qt::LeftToRight);
    QTranslator words;
    if (variant.spanish && words.load(QStringLiteral(":/languages/wainscot_es.qm")))
        QCoreApplication::installTranslator(&words);
    Album album(folder, variant);
    takeEmpty(variant, album);
    {
        MainWindow window;
        window.resize(variant.size);
        window.show();
        QApplication::setActiveWindow(&window);
        if (!window.openBook(book))
            return;
        settle(window);
        takeGather(window, album);
        takeListen(window, album);
        takeCompose(window, album);
        takeHang(window, album);
        takeKeep(window, album);
        BookSheet about(window.session(), &window);
        about.show();
        settle(window);
        album.take(about, QStringLiteral("59 name and language"));
        about.hide();
        window.showFirstSteps();
        QElapsedTimer patience;
        patience.start();
        while (!window.firstSteps()->hasPicture(kFirstSteps.back()) && patience.elapsed() < 60000)
            QApplication::processEvents(QEventLoop::WaitForMoreEvents);
        for (const FirstStep step : kFirstSteps) {
            window.firstSteps()->show(step);
            settle(window);
            album.take(*window.firstSteps(), QStringLiteral("6%1 first steps").arg(int(step) + 1));
        }
    }
    QCoreApplication::removeTranslator(&words);
    album.writeSheet();
}

int run(const QStringList& arguments)
{
    if (arguments.size() < 2) {
        std::fputs("window_pictures FOLDER [VARIANT...]\n", stderr);
        return 2;
    }
    const QTemporaryDir folder;
    const Result<QString> book = GuideBookJob{folder.path()}.run({});
    if (!book)
        return 3;
    const QStringList wanted = arguments.mid(2);
    for (const Variant& variant : variants()) {
        if (!wanted.isEmpty() && !wanted.contains(QLatin1String(variant.name)))
            continue;
        takeAll(variant, *book, arguments.at(1));
        std::printf("%s\n", variant.name);
        std::fflush(stdout);
    }
    return 0;
}

} // namespace
} // namespace wainscot::ui

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    QApplication::setStyle(new wainscot::ui::WindowStyle);
    wainscot::ui::installCanvasAccess();
    return wainscot::ui::run(QApplication::arguments());
}
