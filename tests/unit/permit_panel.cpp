#include "core/permit/cleared.h"
#include "tests/support/class_book.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <type_traits>

namespace wainscot {

namespace {

// What has not passed the rules cannot be printed: nobody else can make one.
static_assert(!std::is_default_constructible_v<ClearedPanel>);
static_assert(!std::is_constructible_v<ClearedPanel, Panel>);

class PanelForTheHall : public ::testing::Test {
protected:
    [[nodiscard]] ClearedPanel cleared()
    {
        return PermissionRules(m_made.book, m_made.at(m_hall), kTestDay)
            .clear(m_made.panelOf(m_hall));
    }
    void setQuote(QuoteId id, Telling telling, Dictation dictation)
    {
        Quote quote = *m_made.book.quotes.find(id);
        quote.telling = telling;
        quote.dictation = dictation;
        m_made.book.quotes.put(quote);
    }

    ClassBook m_made;
    DisplayId m_hall = m_made.display(Audience::Building);
    ChildId m_ines = m_made.child(
        "Ines", only(Audience::Building, {Permission::Photo, Permission::Words, Permission::Work}));
};

TEST_F(PanelForTheHall, ListsNamesTakenOutOfEachPieceOnce)
{
    const PieceId text =
        m_made.hang(m_hall, PieceKind::Context, QStringLiteral("Ines and Ines again"));
    const ClearedPanel panel = cleared();
    ASSERT_EQ(panel.leftOut().size(), 1U);
    EXPECT_EQ(panel.leftOut().front().what, QStringLiteral("name"));
    EXPECT_EQ(panel.leftOut().front().id, m_ines.number());
    EXPECT_EQ(panel.leftOut().front().piece, text);
    EXPECT_EQ(panel.pieces().front().text, QStringLiteral("A child and a child again"));
}

TEST_F(PanelForTheHall, TakesNamesOutOfItsTitlesToo)
{
    Display display = m_made.at(m_hall);
    display.name = QStringLiteral("Ines at the puddle");
    m_made.book.displays.put(display);
    m_made.hang(m_hall, PieceKind::Title, QStringLiteral("What Ines found"));
    const ClearedPanel panel = cleared();
    EXPECT_EQ(panel.title(), QStringLiteral("What a child found"));
    EXPECT_EQ(panel.display().name, QStringLiteral("A child at the puddle"));
}

TEST_F(PanelForTheHall, SaysAPictureByItsCaptionOrItsKind)
{
    const PictureId photo = m_made.picture(PictureKind::Photo, {true, {m_ines}});
    m_made.hang(m_hall, photo, QStringLiteral("Ines pours"));
    m_made.hang(m_hall, m_made.picture(PictureKind::Work, {true, {m_ines}}));
    const ClearedPanel panel = cleared();
    EXPECT_EQ(panel.pieces().at(0).picture->alternative, QStringLiteral("A child pours"));
    EXPECT_EQ(panel.pieces().at(0).text, QStringLiteral("A child pours"));
    EXPECT_EQ(panel.pieces().at(1).picture->alternative, QStringLiteral("Work sample"));
}

TEST_F(PanelForTheHall, ShowsOfAPhotoOnlyWhatItsFrameHolds)
{
    const PieceId id = m_made.hang(m_hall, m_made.picture(PictureKind::Photo, {true, {m_ines}}));
    Piece piece = *m_made.book.pieces.find(id);
    piece.picturePlace = {Mm(0), Mm(0), Mm(100), Mm(100)}; // square, of a 4:3 picture
    m_made.book.pieces.put(piece);
    const RectFraction visible = cleared().pieces().front().picture->visible;
    EXPECT_DOUBLE_EQ(visible.width, 0.75);
    EXPECT_DOUBLE_EQ(visible.height, 1);
}

TEST_F(PanelForTheHall, NeverCutsWhatAChildMade)
{
    const PieceId id = m_made.hang(m_hall, m_made.picture(PictureKind::Work, {true, {m_ines}}));
    Piece piece = *m_made.book.pieces.find(id);
    piece.picturePlace = {Mm(0), Mm(0), Mm(100), Mm(100)};
    piece.framing.zoom = 3;
    m_made.book.pieces.put(piece);
    EXPECT_EQ(cleared().pieces().front().picture->visible, RectFraction());
}

TEST_F(PanelForTheHall, SaysHowWordsWereGivenOnlyWhereReadersWouldGuessWrong)
{
    const QuoteId quote = m_made.quote(m_ines, QStringLiteral("it melted"));
    m_made.hang(m_hall, quote);
    EXPECT_EQ(cleared().pieces().front().status, QString());
    setQuote(quote, Telling::Drew, Dictation::Exact);
    EXPECT_EQ(cleared().pieces().front().status, QStringLiteral("drawn"));
    setQuote(quote, Telling::Said, Dictation::WorkedUp);
    EXPECT_EQ(cleared().pieces().front().status, QStringLiteral("worked up together"));
    setQuote(quote, Telling::Signed, Dictation::WorkedUp);
    EXPECT_EQ(cleared().pieces().front().status, QStringLiteral("signed, worked up together"));
}

TEST_F(PanelForTheHall, TellsWhatIsNoLongerInTheBook)
{
    Piece piece;
    piece.id = PieceId(50);
    piece.panel = m_made.panelOf(m_hall).id;
    piece.kind = PieceKind::Photo;
    piece.picture = PictureId(77);
    m_made.book.pieces.put(piece);
    const ClearedPanel panel = cleared();
    EXPECT_TRUE(panel.pieces().empty());
    ASSERT_EQ(panel.leftOut().size(), 1U);
    EXPECT_EQ(panel.leftOut().front().what, QStringLiteral("photo"));
}

TEST_F(PanelForTheHall, KeepsTheReadingOrder)
{
    const PieceId first = m_made.hang(m_hall, PieceKind::Title, QStringLiteral("Ice"));
    const PieceId second = m_made.hang(m_hall, PieceKind::Context, QStringLiteral("We froze it."));
    Piece moved = *m_made.book.pieces.find(first);
    moved.order = 99;
    m_made.book.pieces.put(moved);
    const ClearedPanel panel = cleared();
    EXPECT_EQ(panel.pieces().at(0).id, second);
    EXPECT_EQ(panel.pieces().at(1).id, first);
}

TEST_F(PanelForTheHall, ReckonsWithPhotosThatAreOnlyBeingTried)
{
    Child ines = m_made.at(m_ines);
    ines.permissions.set(Permission::FirstName, Audience::Building, true);
    m_made.book.children.put(ines);
    m_made.hang(m_hall, m_made.quote(m_ines, QStringLiteral("it melted")));
    EXPECT_EQ(cleared().pieces().front().name, QStringLiteral("Ines"));

    std::vector<Piece> tried{*piecesOf(m_made.book, m_made.panelOf(m_hall).id).front()};
    Piece photo;
    photo.kind = PieceKind::Photo;
    photo.picture = m_made.picture(PictureKind::Photo, {true, {m_ines}});
    photo.order = 100;
    tried.push_back(photo);
    const PermissionRules rules(m_made.book, m_made.at(m_hall), kTestDay);
    const ClearedPanel panel = rules.clear(m_made.panelOf(m_hall), tried);
    EXPECT_EQ(panel.pieces().front().name, QStringLiteral("a child"));
}

} // namespace

} // namespace wainscot
