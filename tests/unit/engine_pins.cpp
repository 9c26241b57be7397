// Divisions of a page around pins, exact places, and what a teacher asks of sizes.
#include "layout/engine/divide.h"
#include "layout/engine/pins.h"
#include "tests/support/engine_documents.h"

#include <gmock/gmock.h>

namespace wainscot::engine {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

// Four rectangles in a ring round a hole of 4 x 8 cells, on 12 x 32.
std::vector<GridRect> pinwheel()
{
    return {{0, 0, 4, 8, 8}, {0, 8, 4, 4, 16}, {0, 4, 20, 8, 8}, {0, 0, 12, 4, 16}};
}

Arrangement arranged(const Request& request, const TextMeasurer& text)
{
    Outcome outcome = arrange(request, text);
    EXPECT_TRUE(std::holds_alternative<Arrangement>(outcome));
    if (auto* arrangement = std::get_if<Arrangement>(&outcome))
        return *arrangement;
    return {};
}

const Placement& placeOf(const Arrangement& arrangement, ItemId id)
{
    for (const Placement& one : arrangement.items)
        if (one.id == id)
            return one;
    static const Placement none;
    ADD_FAILURE() << "item " << id << " is not placed";
    return none;
}

TEST(EngineDivide, StraightCutsPartAGridButNoPinwheel)
{
    const std::vector<GridRect> tiles{{0, 0, 0, 6, 8}, {0, 6, 0, 6, 8}, {0, 0, 8, 12, 8}};
    EXPECT_TRUE(partable(tiles));
    EXPECT_FALSE(partable(pinwheel()));
}

TEST(EngineDivide, APinwheelIsPartedByARing)
{
    const GridRect page{0, 0, 0, 12, 32};
    const std::vector<Ring> rings = ringsIn(page, pinwheel());
    ASSERT_FALSE(rings.empty());
    for (const Ring& ring : rings) {
        int cells = 0;
        for (const GridRect& one : ring)
            cells += one.w * one.h;
        EXPECT_EQ(cells, page.w * page.h) << "the five tile the page";
    }
}

TEST(EngineDivide, JoinedBlocksCanBePartedAndHoldAllPins)
{
    const std::vector<GridRect> joined = joinedBlocks(pinwheel());
    EXPECT_TRUE(partable(joined));
    for (const GridRect& pin : pinwheel())
        EXPECT_TRUE(std::any_of(joined.begin(), joined.end(), [&](const GridRect& block) {
            return contains(block, pin);
        }));
}

TEST(EngineDivide, OverlappingCellsBecomeOneBlock)
{
    EXPECT_THAT(
        withoutOverlaps({{0, 0, 0, 4, 4}, {0, 3, 3, 4, 4}}), ElementsAre(GridRect{0, 0, 0, 7, 7}));
}

TEST(EnginePins, APlaceOffTheGridCoversTheCellsItTouches)
{
    const PageSpec page = pageFor(Format::A1Landscape);
    const GridRect cell{0, 3, 4, 4, 6};
    EXPECT_EQ(coveredCells(page, page.cell(cell), page.gutter), cell);
    const RectMm moved = page.cell(cell).movedBy(0.5 * page.gutter, Mm(0));
    EXPECT_EQ(coveredCells(page, moved, page.gutter), (GridRect{0, 3, 4, 5, 6}));
    const RectMm alittle = page.cell(cell).movedBy(0.2 * page.gutter, 0.2 * page.gutter);
    EXPECT_EQ(coveredCells(page, alittle, page.gutter), cell) << "most of the gutter is left";
}

TEST(EnginePins, APinwheelOfPinsIsGoneAroundAndSaid)
{
    auto document = makeDocument(4, 12, Format::A1Landscape);
    document->request.pages = 1;
    auto& items = document->request.items;
    const std::vector<GridRect> ring{
        {0, 2, 10, 5, 6}, {0, 7, 10, 3, 9}, {0, 5, 19, 5, 5}, {0, 2, 16, 3, 8}};
    ASSERT_FALSE(partable(ring));
    for (std::size_t k = 0; k < ring.size(); ++k)
        items[3 + k].pinned = ring[k];
    const Arrangement page = arranged(document->request, document->text);
    EXPECT_TRUE(page.fallback);
    EXPECT_EQ(page.items.size(), items.size());
    for (std::size_t k = 0; k < ring.size(); ++k)
        EXPECT_EQ(placeOf(page, items[3 + k].id).at, ring[k]);
}

TEST(EnginePins, StraightCutsAreNoFallback)
{
    auto document = makeDocument(4, 12, Format::A1Landscape);
    document->request.items[3].pinned = GridRect{0, 0, 10, 4, 8};
    EXPECT_FALSE(arranged(document->request, document->text).fallback);
}

TEST(EnginePins, APinInMillimetresStaysToTheHundredth)
{
    auto document = makeDocument(6, 9, Format::A1Landscape);
    const RectMm place{Mm(301.237), Mm(222.229), Mm(180.611), Mm(140.007)};
    Item& pinned = document->request.items[3];
    pinned.pinnedAt = place;
    const Arrangement page = arranged(document->request, document->text);
    EXPECT_EQ(placeOf(page, pinned.id).cell, place);
    for (const Placement& one : page.items)
        if (one.id != pinned.id && one.at.page == 0) {
            EXPECT_TRUE(intersection(one.cell, place).isEmpty()) << one.id;
        }
}

TEST(EnginePins, PinsThatShareCellsButDoNotTouchAreNoObstacle)
{
    auto document = makeDocument(6, 9, Format::A1Landscape);
    auto& items = document->request.items;
    items[3].pinnedAt = RectMm{Mm(40), Mm(250), Mm(150), Mm(100)};
    items[4].pinnedAt = RectMm{Mm(192), Mm(250), Mm(150), Mm(100)};
    const Arrangement page = arranged(document->request, document->text);
    EXPECT_EQ(placeOf(page, items[3].id).cell, *items[3].pinnedAt);
    EXPECT_EQ(placeOf(page, items[4].id).cell, *items[4].pinnedAt);
}

TEST(EnginePins, OverlappingPlacesNameTheTwo)
{
    auto document = makeDocument(6, 9, Format::A1Landscape);
    auto& items = document->request.items;
    items[3].pinnedAt = RectMm{Mm(40), Mm(250), Mm(150), Mm(100)};
    items[5].pinnedAt = RectMm{Mm(189.5), Mm(250), Mm(150), Mm(100)};
    const Outcome outcome = arrange(document->request, document->text);
    const auto* failed = std::get_if<Failure>(&outcome);
    ASSERT_NE(failed, nullptr);
    EXPECT_EQ(failed->what, Obstacle::PinsOverlap);
    EXPECT_THAT(failed->items, ElementsAre(items[3].id, items[5].id));
}

TEST(EnginePins, ThatLeaveTooLittleRoomSayHowMuchIsMissing)
{
    auto document = makeDocument(4, 12, Format::A1Landscape);
    document->request.pages = 1;
    auto& items = document->request.items;
    items[3].pinned = GridRect{0, 0, 4, 12, 26};
    const Outcome outcome = arrange(document->request, document->text);
    const auto* failed = std::get_if<Failure>(&outcome);
    ASSERT_NE(failed, nullptr);
    EXPECT_EQ(failed->what, Obstacle::TooMuchForPages);
    EXPECT_GT(failed->missingMm2, 0);
}

TEST(EnginePins, APinnedDominantPictureStaysTheLargest)
{
    auto document = makeDocument(4, 12, Format::A1Landscape);
    document->request.pages = 1;
    for (Item& item : document->request.items)
        item.importance = item.picture && item.importance >= 3 ? 1 : item.importance;
    const auto first = std::find_if(document->request.items.begin(),
        document->request.items.end(),
        [](const Item& item) { return item.kind == Kind::Photo; });
    ASSERT_NE(first, document->request.items.end());
    first->importance = 3;
    first->pinned = GridRect{0, 4, 8, 5, 13};
    const ItemId lead = first->id;
    const Arrangement page = arranged(document->request, document->text);
    const auto area = [](const Placement& one) {
        return one.picture.width.value() * one.picture.height.value();
    };
    for (const Placement& one : page.items)
        if (one.id != lead) {
            EXPECT_LT(area(one), 0.62 * area(placeOf(page, lead))) << one.id;
        }
}

TEST(EngineSizes, TextAndPinsSayWhyTheyStay)
{
    auto document = makeDocument(4, 10, Format::A1Landscape);
    document->request.pages = 1;
    auto& items = document->request.items;
    items[1].wish.scale = 1.6;
    ASSERT_FALSE(items[1].picture);
    const auto picture =
        std::find_if(items.begin(), items.end(), [](const Item& item) { return item.picture; });
    picture->pinned = GridRect{0, 4, 8, 4, 10};
    picture->wish.scale = 0.5;
    const Arrangement page = arranged(document->request, document->text);
    EXPECT_THAT(page.unmetWishes,
        ::testing::UnorderedElementsAre(UnmetWish{items[1].id, UnmetWish::Why::TextKeepsItsSize},
            UnmetWish{picture->id, UnmetWish::Why::Pinned}));
}

TEST(EngineSizes, WithoutWishesNothingIsUnmet)
{
    const auto document = makeDocument(4, 10, Format::A1Landscape);
    EXPECT_THAT(arranged(document->request, document->text).unmetWishes, IsEmpty());
}

} // namespace
} // namespace wainscot::engine
