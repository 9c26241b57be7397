// The window as a whole: books, places, paper, names.
#include <QAccessible>
#include <QApplication>
#include <QFile>
#include <QMenu>
#include <QPrinter>

#include <algorithm>
#include <map>

#include <gmock/gmock.h>

#include "app/ui/frame/tab_order.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

bool isControl(QAccessible::Role role)
{
    return role == QAccessible::PushButton || role == QAccessible::CheckBox
        || role == QAccessible::RadioButton || role == QAccessible::EditableText
        || role == QAccessible::ComboBox || role == QAccessible::MenuItem
        || role == QAccessible::Graphic || role == QAccessible::Canvas;
}

struct Names {
    int controls = 0;
    QStringList nameless;
};

void collect(QAccessibleInterface* at, Names& names, int depth = 0)
{
    if (at == nullptr || depth > 20 || at->state().invisible)
        return;
    const bool separator = at->role() == QAccessible::Separator;
    if (isControl(at->role()) && !separator) {
        ++names.controls;
        if (at->text(QAccessible::Name).trimmed().isEmpty())
            names.nameless << QString::fromLatin1(
                at->object() != nullptr ? at->object()->metaObject()->className() : "?");
    }
    for (int i = 0; i < at->childCount(); ++i)
        collect(at->child(i), names, depth + 1);
}

TEST(Window, HasNoControlWithoutAName)
{
    WindowAtWork at;
    at.propose();
    at.clickOn(at.first(PieceKind::Photo));
    for (int place = 0; place < kPlaces; ++place) {
        at.window().go(static_cast<Place>(place));
        at.settle();
        Names names;
        collect(QAccessible::queryAccessibleInterface(&at.window()), names);
        EXPECT_GT(names.controls, 8);
        EXPECT_THAT(names.nameless, ::testing::IsEmpty()) << "place " << place;
    }
}

// However late a page was built: rail, page, sill, and each control once.
// The judge of the panel answers half a second after an edit; what was announced stays all the
// same.
TEST(Window, KeepsWhatWasAnnouncedUntilAnotherPlace)
{
    WindowAtWork at;
    at.propose();
    Sill& sill = at.window().sill();
    const QString before = sill.said();
    sill.announce(QStringLiteral("Sent to the printer."));
    sill.say(QStringLiteral("One panel."), QStringLiteral("Nothing is missing."));
    EXPECT_EQ(sill.said(), QStringLiteral("Sent to the printer."));
    at.window().go(Place::Keep);
    at.settle();
    EXPECT_NE(sill.said(), QStringLiteral("Sent to the printer."));
    EXPECT_NE(sill.said(), before);
}

TEST(Window, ShowsWhatWasSaidMeanwhileOnceSomebodyWorksOn)
{
    WindowAtWork at;
    at.propose();
    Sill& sill = at.window().sill();
    sill.announce(QStringLiteral("Sent to the printer."));
    sill.say(QStringLiteral("One panel."), QStringLiteral("Nothing is missing."));
    QTest::keyClick(&at.window(), Qt::Key_Shift);
    EXPECT_EQ(sill.said(), QStringLiteral("Sent to the printer.")) << "nobody has read it yet";
    QTest::qWait(4200);
    sill.say(QStringLiteral("One panel."), QStringLiteral("Nothing is missing."));
    EXPECT_EQ(sill.said(), QStringLiteral("Sent to the printer."));
    QTest::keyClick(&at.window(), Qt::Key_Shift);
    EXPECT_EQ(sill.said(), QStringLiteral("Nothing is missing."));
}

TEST(Window, IsWalkedByTabFromTheRailToTheSill)
{
    WindowAtWork at;
    at.propose();
    for (const Place place :
        {Place::Gather, Place::Listen, Place::Compose, Place::Hang, Place::Keep}) {
        at.window().go(place);
        at.settle();
        QWidget* first = nextStop(at.window(), nullptr, true);
        ASSERT_NE(first, nullptr);
        first->setFocus();
        QVector<QWidget*> walked{first};
        const auto areaOf = [&](const QWidget* stop) {
            return at.window().rail().isAncestorOf(stop) ? 0
                : at.window().sill().isAncestorOf(stop)  ? 2
                                                         : 1;
        };
        for (int i = 0; i < 500; ++i) {
            at.key(Qt::Key_Tab);
            QWidget* now = QApplication::focusWidget();
            ASSERT_NE(now, nullptr);
            if (now == first)
                break;
            ASSERT_FALSE(walked.contains(now)) << now->metaObject()->className();
            EXPECT_GE(areaOf(now), areaOf(walked.back())) << now->metaObject()->className();
            walked << now;
        }
        EXPECT_EQ(QApplication::focusWidget(), first) << "round";
        EXPECT_EQ(areaOf(walked.back()), 2);
        at.key(Qt::Key_Backtab);
        EXPECT_EQ(QApplication::focusWidget(), walked.back());
    }
}

TEST(Window, TellsEveryPieceOfThePanelByKindAndContent)
{
    WindowAtWork at;
    at.propose();
    QAccessibleInterface* panel = QAccessible::queryAccessibleInterface(&at.canvas());
    ASSERT_NE(panel, nullptr);
    ASSERT_EQ(panel->childCount(), int(at.canvas().content().pieces.size()));
    for (int i = 0; i < panel->childCount(); ++i) {
        const CanvasPiece& piece = at.canvas().content().pieces[std::size_t(i)];
        QAccessibleInterface* said = panel->child(i);
        EXPECT_EQ(said->role(),
            isPicture(piece.piece.kind) ? QAccessible::Graphic : QAccessible::StaticText);
        EXPECT_FALSE(said->text(QAccessible::Name).isEmpty());
        EXPECT_EQ(panel->indexOfChild(said), i);
        EXPECT_EQ(said->parent(), panel);
    }
    const PieceId photo = at.first(PieceKind::Photo);
    EXPECT_TRUE(at.canvas().find(photo)->name.startsWith(QStringLiteral("Photo: ")));
}

TEST(Window, MakesAPdfOfThePanel)
{
    WindowAtWork at;
    at.propose();
    const QString file = at.file(QStringLiteral("out.pdf"));
    at.window().exportPdf(file);
    at.settle();
    QFile pdf(file);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.read(5) == "%PDF-");
    EXPECT_GT(pdf.size(), 5000);
}

TEST(Window, PrintsThePanelThroughTheSystem)
{
    WindowAtWork at;
    at.propose();
    QPrinter printer(QPrinter::ScreenResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(at.file(QStringLiteral("printed.pdf")));
    EXPECT_TRUE(at.window().printTo(printer));
    EXPECT_GT(QFile(at.file(QStringLiteral("printed.pdf"))).size(), 5000);
}

TEST(Window, OpensTheBookAgainAsItWasLeft)
{
    WindowAtWork at;
    at.propose();
    const auto pieces = at.pieces();
    // The same window lets go of the first book when it opens another.
    at.window().beginBook(at.file(QStringLiteral("second")), QStringLiteral("Other"));
    EXPECT_TRUE(at.book().pieces.isEmpty());
    ASSERT_TRUE(at.window().openBook(at.file(QStringLiteral("book"))));
    at.settle();
    EXPECT_EQ(at.pieces(), pieces);
    EXPECT_FALSE(at.session().isReadOnly());
}

TEST(Window, SaysWhyABookCannotBeOpenedAndKeepsTheOneThatIs)
{
    WindowAtWork at;
    EXPECT_FALSE(at.window().openBook(at.file(QStringLiteral("nowhere"))));
    EXPECT_EQ(at.book().children.size(), 3U);
}

TEST(Window, StartsWithoutABookAndSaysHowToBegin)
{
    MainWindow window;
    window.resize(1366, 768);
    window.show();
    QApplication::processEvents();
    EXPECT_EQ(window.sill().nextStep(), QStringLiteral("Begin a book"));
    EXPECT_FALSE(window.rail().isVisible());
    Names names;
    collect(QAccessible::queryAccessibleInterface(&window), names);
    EXPECT_THAT(names.nameless, ::testing::IsEmpty());
}

TEST(Window, FitsASmallScreen)
{
    WindowAtWork at({1024, 600});
    at.propose();
    EXPECT_LE(at.window().minimumSizeHint().width(), 1024);
    EXPECT_LE(at.window().minimumSizeHint().height(), 600);
    EXPECT_EQ(at.window().size(), QSize(1024, 600));
}

TEST(Window, CarriesABookAwayAndOpensItElsewhere)
{
    WindowAtWork at;
    at.propose();
    const Book before = at.book();
    const QString file = at.file(QStringLiteral("carried.zip"));
    at.window().packBook(file);
    at.settle();
    ASSERT_TRUE(QFile::exists(file));
    at.window().unpackBook(file, at.file(QStringLiteral("elsewhere")));
    at.settle();
    EXPECT_EQ(at.session().folder(), at.file(QStringLiteral("elsewhere")));
    EXPECT_EQ(at.book().pieces.size(), before.pieces.size());
    EXPECT_EQ(at.book().quotes.size(), before.quotes.size());
    at.window().unpackBook(file, at.file(QStringLiteral("elsewhere")));
    at.settle();
    EXPECT_EQ(at.session().folder(), at.file(QStringLiteral("elsewhere"))) << "refused, still open";
}

// A menu that is too high breaks into columns.
TEST(Window, HasNoMenuHigherThanASmallScreen)
{
    WindowAtWork at;
    at.propose();
    const QList<QMenu*> menus = at.window().findChildren<QMenu*>();
    EXPECT_GE(menus.size(), 8);
    for (const QMenu* menu : menus)
        EXPECT_LE(menu->sizeHint().height(), 600) << menu->title().toStdString();
}

TEST(Window, HasNoKeyForTwoThings)
{
    WindowAtWork at;
    std::map<QString, QString> does;
    for (const QWidget* widget :
        {static_cast<const QWidget*>(&at.canvas()), static_cast<const QWidget*>(&at.compose())}) {
        for (const QAction* action : widget->actions()) {
            for (const QKeySequence& key : action->shortcuts()) {
                const auto [known, isNew] = does.try_emplace(key.toString(), action->text());
                EXPECT_TRUE(isNew || known->second == action->text())
                    << key.toString().toStdString() << ": " << known->second.toStdString()
                    << " and " << action->text().toStdString();
            }
        }
    }
    EXPECT_GT(does.size(), 20U);
}

TEST(Window, CutsPanelsIntoSheets)
{
    WindowAtWork at;
    at.propose();
    const QString file = at.file(QStringLiteral("sheets.pdf"));
    at.window().exportSheets(file, QStringLiteral("A4"));
    at.settle();
    QFile pdf(file);
    ASSERT_TRUE(pdf.open(QIODevice::ReadOnly));
    EXPECT_TRUE(pdf.read(5).startsWith("%PDF-"));
}

TEST(Window, ErasesAChildOnlyWhenPicturesOfOthersMayGo)
{
    WindowAtWork at;
    at.propose();
    const Child child = at.book().children.rows().begin()->second;
    int quotes = 0;
    bool shared = false;
    for (const auto& [id, quote] : at.book().quotes.rows())
        quotes += quote.child == child.id ? 1 : 0;
    ASSERT_GT(quotes, 0);
    for (const auto& [id, picture] : at.book().pictures.rows()) {
        const auto& seen = picture.people.children;
        shared = shared
            || (seen.size() > 1 && std::find(seen.begin(), seen.end(), child.id) != seen.end());
    }
    at.window().eraseChild(child.name, SharedPictures::Ask);
    EXPECT_EQ(at.book().children.contains(child.id), shared);
    at.window().eraseChild(child.name, SharedPictures::Delete);
    EXPECT_FALSE(at.book().children.contains(child.id));
    for (const auto& [id, quote] : at.book().quotes.rows())
        EXPECT_NE(quote.child, child.id);
    EXPECT_FALSE(at.session().canUndo());
    at.settle();
}

TEST(Window, LeavesCoveredPicturesToTheOthersWhenAChildIsErased)
{
    WindowAtWork at;
    const Child child = at.book().children.rows().begin()->second;
    const Child other = at.book().children.rows().rbegin()->second;
    Picture shared = at.book().pictures.rows().begin()->second;
    shared.people = {true, {child.id, other.id}};
    EditBuilder edit(at.book(), QStringLiteral("Cover"));
    shared.treatment.covered = {{{0.1, 0.1, 0.3, 0.3}, Cover::Mosaic, true}};
    edit.put(shared);
    ASSERT_TRUE(at.session().perform(edit.take()));
    at.window().eraseChild(child.name, SharedPictures::KeepCovered);
    at.window().work().waitForEnd();
    at.settle();
    EXPECT_FALSE(at.book().children.contains(child.id));
    const Picture* kept = at.book().pictures.find(shared.id);
    ASSERT_NE(kept, nullptr);
    EXPECT_NE(kept->sha256, shared.sha256);
    EXPECT_TRUE(kept->treatment.covered.empty());
    EXPECT_FALSE(QFile::exists(at.session().originalPath(shared.sha256)));
    for (const auto& [id, picture] : at.book().pictures.rows()) {
        const auto& seen = picture.people.children;
        EXPECT_EQ(std::count(seen.begin(), seen.end(), child.id), 0);
    }
}

// Where the whole screen is scaled instead, it has so many pixels less.
TEST(Window, FitsASmallScreenThatIsScaled)
{
    WindowAtWork at(QSize(910, 490));
    at.propose();
    at.clickOn(at.first(PieceKind::Photo));
    for (int place = 0; place < kPlaces; ++place) {
        at.window().go(static_cast<Place>(place));
        at.settle();
        EXPECT_LE(at.window().width(), 910) << "place " << place;
        EXPECT_LE(at.window().height(), 490) << "place " << place;
    }
}

// The system's text half as large again, on the smallest screen there is to be served.
TEST(Window, FitsASmallScreenWithLargeText)
{
    const QFont usual = QApplication::font();
    QFont large = usual;
    large.setPointSizeF(15);
    QApplication::setFont(large);
    {
        WindowAtWork at;
        at.propose();
        at.clickOn(at.first(PieceKind::Photo));
        for (int place = 0; place < kPlaces; ++place) {
            at.window().go(static_cast<Place>(place));
            at.settle();
            EXPECT_LE(at.window().minimumSizeHint().width(), 1366) << "place " << place;
            EXPECT_LE(at.window().minimumSizeHint().height(), 740) << "place " << place;
        }
    }
    QApplication::setFont(usual);
}

} // namespace
} // namespace wainscot::ui
