// The numbers behind a page, on places made by hand.
#include "layout/engine/explain.h"
#include "tests/support/fake_measurer.h"

#include <gtest/gtest.h>

namespace wainscot::engine {
namespace {

struct MadePage {
    MadePage()
    {
        request.page.size = {Mm(600), Mm(400)};
        request.page.margin = Mm(20);
        request.page.gutter = Mm(10);
        request.page.rows = 37;
        request.page.rowUnit = Mm(10);
        request.page.minPpi = 50;
        request.pages = 1;
        add(1, Kind::Photo, {0, 0, 0, 6, 20}, {Mm(20), Mm(20), Mm(275), Mm(190)});
        add(2, Kind::Photo, {0, 6, 0, 3, 10}, {Mm(305), Mm(20), Mm(110), Mm(90)});
        add(3, Kind::Quote, {0, 6, 12, 3, 6}, {});
    }

    void add(ItemId id, Kind kind, const GridRect& at, const RectMm& picture)
    {
        Item item;
        item.id = id;
        item.kind = kind;
        FakeText words;
        if (kind == Kind::Photo)
            item.picture = PictureShape{{4000, 3000}, 0.7, 0.7};
        else
            words.words = "It got smaller.";
        text.set(id, words);
        request.items.push_back(item);
        Placement place;
        place.id = id;
        place.at = at;
        place.cell = request.page.cell(at);
        place.picture = picture;
        page.push_back(place);
    }

    PageReasons reasons() { return explain(request, page, text); }

    Request request;
    std::vector<Placement> page;
    FakeMeasurer text;
};

TEST(Explain, SaysWhatOfAPictureIsCut)
{
    MadePage made;
    const PageReasons reasons = made.reasons();
    // 4 : 3 shown as 275 : 190: less height than it has.
    EXPECT_EQ(reasons.pieces[0].crop, CropSide::TopAndBottom);
    EXPECT_NEAR(reasons.pieces[0].cropShare, 1 - (4.0 / 3) / (275.0 / 190), 1e-12);
    // Shown as 110 : 90: less width.
    EXPECT_EQ(reasons.pieces[1].crop, CropSide::LeftAndRight);
    EXPECT_NEAR(reasons.pieces[1].cropShare, 1 - (110.0 / 90) / (4.0 / 3), 1e-12);
    EXPECT_EQ(reasons.pieces[2].crop, CropSide::None);
    made.page[0].picture.height = made.page[0].picture.width * 3 / 4;
    EXPECT_EQ(made.reasons().pieces[0].crop, CropSide::None);
}

TEST(Explain, SaysWhichPictureLeadsAndByHowMuch)
{
    const PageReasons reasons = MadePage().reasons();
    EXPECT_NEAR(reasons.pieces[0].leads, 275.0 * 190 / (110 * 90), 1e-9);
    EXPECT_EQ(reasons.pieces[1].leads, 0);
    EXPECT_EQ(reasons.pieces[2].leads, 0);
}

TEST(Explain, MeasuresSizeByWhatWasAimedAt)
{
    MadePage made;
    const double before = made.reasons().pieces[1].sizeByAim;
    ASSERT_GT(before, 0);
    made.page[1].picture.width = made.page[1].picture.width / 2;
    EXPECT_NEAR(made.reasons().pieces[1].sizeByAim, before / 2, 1e-9);
    EXPECT_EQ(made.reasons().pieces[2].sizeByAim, 0);
}

TEST(Explain, NamesTheMatesOfAGroupAndTheWayToThem)
{
    MadePage made;
    made.request.items[1].group = made.request.items[2].group = 7;
    const PageReasons reasons = made.reasons();
    EXPECT_TRUE(reasons.pieces[0].mates.empty());
    EXPECT_EQ(reasons.pieces[1].mates, std::vector<ItemId>{3});
    // Rows 0 to 9 end at 110 mm (a gutter less than ten rows), row 12 begins at 140 mm.
    EXPECT_NEAR(reasons.pieces[1].toMates.value(), 30, 1e-9);
    EXPECT_EQ(reasons.pieces[2].mates, std::vector<ItemId>{2});
}

TEST(Explain, KnowsWhatIsPinnedAndCountsEdges)
{
    MadePage made;
    made.request.items[0].pinned = made.page[0].at;
    const PageReasons reasons = made.reasons();
    EXPECT_TRUE(reasons.pieces[0].pinned);
    EXPECT_FALSE(reasons.pieces[1].pinned);
    EXPECT_EQ(reasons.leftEdges, 2);
    EXPECT_EQ(reasons.orderInversions, 0);
    EXPECT_EQ(reasons.pieces[0].cost.total(), 0) << "a hand's choice has no price";
}

TEST(Explain, SumsWhatThePiecesCost)
{
    const PageReasons reasons = MadePage().reasons();
    std::int64_t sum = 0;
    for (const PieceReasons& one : reasons.pieces)
        sum += one.cost.total();
    EXPECT_EQ(sum, reasons.cost.total());
    EXPECT_GT(reasons.cost.total(), 0);
}

TEST(Explain, CountsWhiteThatNothingTouches)
{
    MadePage made;
    const double before = made.reasons().white;
    made.page.pop_back();
    EXPECT_GT(made.reasons().white, before);
    EXPECT_LT(made.reasons().white, 1);
}

} // namespace
} // namespace wainscot::engine
