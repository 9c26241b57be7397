// The drawer: what is listed, found, marked and starred.
#include <QLineEdit>
#include <QScrollBar>

#include <gmock/gmock.h>

#include "app/ui/session/piece_edits.h"
#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

using ::testing::Each;
using ::testing::SizeIs;

QStringList wordsListed(WindowAtWork& at)
{
    QStringList words;
    for (const DrawerRow& row : at.compose().drawer().rows()) {
        if (row.what == DrawerRow::What::Words)
            words << row.text;
    }
    return words;
}

ChildId childCalled(WindowAtWork& at, const QString& name)
{
    return childByName(at.book(), name)->id;
}

TEST(DrawerOf, ListsWordsByQuestionAndFindsThem)
{
    WindowAtWork at;
    EXPECT_THAT(wordsListed(at), SizeIs(8));
    at.key(Qt::Key_F, Qt::ControlModifier);
    at.type(QStringLiteral("STRAW sun"));
    EXPECT_EQ(wordsListed(at), QStringList{QStringLiteral("The sun drinks it with a straw.")});
    auto* field = qobject_cast<QLineEdit*>(QApplication::focusWidget());
    ASSERT_NE(field, nullptr);
    field->setText(QStringLiteral("str\u00e1w"));
    at.settle();
    EXPECT_THAT(wordsListed(at), SizeIs(1));
    field->clear();
    at.settle();
    EXPECT_THAT(wordsListed(at), SizeIs(8));
}

// A book is opened, and another place is gone to before the list is made.
TEST(DrawerOf, GivesEverySlipItsRoomWhenItWasFilledUnseen)
{
    WindowAtWork at;
    MainWindow other;
    other.resize(1024, 600);
    other.show();
    ASSERT_TRUE(other.openBook(at.session().folder()));
    other.go(Place::Gather);
    at.settle();
    other.go(Place::Compose);
    at.settle();
    int slips = 0;
    for (const DrawerRow& row : other.compose().drawer().rows()) {
        if (row.what != DrawerRow::What::Words)
            continue;
        const DrawerEntry* entry = other.compose().drawer().entryFor(row.item);
        ASSERT_NE(entry, nullptr);
        EXPECT_GE(entry->height(), 2 * entry->fontMetrics().height()) << row.text.toStdString();
        ++slips;
    }
    EXPECT_EQ(slips, 8);
}

TEST(DrawerOf, NarrowsByChildQuestionWallAndStar)
{
    WindowAtWork at;
    at.propose();
    DrawerFilter filter;
    filter.child = childCalled(at, QStringLiteral("Kofi Lind"));
    at.compose().drawer().setFilter(filter);
    EXPECT_THAT(wordsListed(at), SizeIs(3));
    filter.prompt = QStringLiteral("wonder");
    at.compose().drawer().setFilter(filter);
    EXPECT_EQ(wordsListed(at), QStringList{QStringLiteral("Who gets the water from my boots?")});
    filter = {};
    filter.notOnWall = true;
    at.compose().drawer().setFilter(filter);
    for (const Piece& piece : at.pieces()) {
        if (const Quote* quote = at.book().quotes.find(piece.quote)) {
            EXPECT_FALSE(wordsListed(at).contains(quote->words));
        }
    }
    filter = {};
    filter.starred = true;
    at.compose().drawer().setFilter(filter);
    EXPECT_THAT(wordsListed(at), SizeIs(0));
}

TEST(DrawerOf, StarsBySpeakingOneKeyAndSaysSo)
{
    WindowAtWork at;
    DrawerEntry* slip = nullptr;
    for (const DrawerRow& row : at.compose().drawer().rows()) {
        if (row.what == DrawerRow::What::Words && slip == nullptr)
            slip = at.compose().drawer().entryFor(row.item);
    }
    ASSERT_NE(slip, nullptr);
    slip->setFocus();
    at.key(Qt::Key_Asterisk);
    EXPECT_TRUE(slip->isStarred());
    EXPECT_TRUE(slip->accessibleName().contains(QStringLiteral("Starred")));
    EXPECT_TRUE(slip->hasFocus()) << "the list keeps its place";
    at.key(Qt::Key_Asterisk);
    EXPECT_FALSE(slip->isStarred());
}

TEST(DrawerOf, ListsByGroupWhatWasPutTogether)
{
    WindowAtWork at;
    EditBuilder builder(at.book(), QStringLiteral("Group"));
    Group group;
    group.id = builder.newId<Group>();
    group.experience = at.session().experience()->id;
    group.label = QStringLiteral("Somebody takes it");
    group.quotes = {at.book().quotes.rows().begin()->first};
    builder.put(group);
    ASSERT_TRUE(at.session().perform(builder.take()));
    DrawerFilter filter;
    filter.byGroup = true;
    at.compose().drawer().setFilter(filter);
    QStringList sections;
    for (const DrawerRow& row : at.compose().drawer().rows()) {
        if (row.what == DrawerRow::What::Section)
            sections << row.text;
    }
    EXPECT_EQ(sections,
        (QStringList{QStringLiteral("Somebody takes it"), QStringLiteral("On their own")}));
}

TEST(DrawerOf, ShowsWhatAnAdultSawAndPutsItOnThePanel)
{
    WindowAtWork at;
    at.propose();
    EditBuilder builder(at.book(), QStringLiteral("Observation"));
    Observation seen;
    seen.id = builder.newId<Observation>();
    seen.experience = at.session().experience()->id;
    seen.words = QStringLiteral("Nobody stepped into the puddle before it had been drawn.");
    builder.put(seen);
    ASSERT_TRUE(at.session().perform(builder.take()));
    at.compose().drawer().show(DrawerItem::Kind::Note);
    const DrawerItem item{DrawerItem::Kind::Observation, seen.id.number()};
    ASSERT_NE(at.compose().drawer().entryFor(item), nullptr);
    at.compose().drawer().entryFor(item)->setFocus();
    at.key(Qt::Key_Return);
    EXPECT_EQ(at.piece(at.canvas().inHand()).text, seen.words);
}

TEST(DrawerOf, SaysWhereAThingHangsAndGoesThere)
{
    WindowAtWork at;
    at.propose();
    const PieceId quote = at.first(PieceKind::Quote);
    const DrawerItem item{DrawerItem::Kind::Quote, at.piece(quote).quote.number()};
    DrawerEntry* slip = at.compose().drawer().entryFor(item);
    ASSERT_NE(slip, nullptr);
    EXPECT_TRUE(slip->accessibleName().contains(QStringLiteral("on panel 1")));
    Q_EMIT at.compose().drawer().shownWanted(item);
    EXPECT_EQ(at.canvas().inHand(), quote);
}

TEST(DrawerOf, AsksForTheSmallPicturesOnlyOfWhatIsNear)
{
    WindowAtWork at;
    EditBuilder builder(at.book(), QStringLiteral("Many"));
    for (int i = 0; i < 500; ++i) {
        Picture picture;
        picture.id = builder.newId<Picture>();
        picture.experience = at.session().experience()->id;
        picture.sha256 = QStringLiteral("%1").arg(i, 64, 10, QLatin1Char('0'));
        picture.format = QStringLiteral("jpeg");
        picture.fileName = QStringLiteral("%1.jpg").arg(i);
        picture.size = {4000, 3000};
        builder.put(picture);
    }
    ASSERT_TRUE(at.session().perform(builder.take()));
    at.compose().drawer().show(DrawerItem::Kind::Picture);
    at.settle();
    EXPECT_GT(at.compose().drawer().rows().size(), 500U);
    const auto entries = at.compose().drawer().findChildren<ThingEntry*>();
    EXPECT_LE(entries.size(), 70);
    // The end of the list is there for the keyboard and the wheel, piece by piece.
    auto* bar = at.compose().drawer().findChild<QScrollArea*>()->verticalScrollBar();
    for (int i = 0; i < 20; ++i) {
        bar->setValue(bar->maximum());
        at.settle();
    }
    EXPECT_GT(at.compose().drawer().findChildren<ThingEntry*>().size(), 500);
}

} // namespace
} // namespace wainscot::ui
