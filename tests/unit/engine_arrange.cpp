// What the engine answers: plans, wishes, pins, and why something cannot be done.
#include "layout/engine/cost.h"
#include "layout/engine/reading.h"
#include "tests/support/engine_documents.h"

#include <gmock/gmock.h>

#include <cmath>

namespace wainscot::engine {
namespace {

using testing::ElementsAre;

Arrangement arranged(const Request& request, const TextMeasurer& text)
{
    Outcome outcome = arrange(request, text);
    if (auto* found = std::get_if<Arrangement>(&outcome))
        return *found;
    ADD_FAILURE() << "no arrangement, obstacle " << int(std::get<Failure>(outcome).what);
    return {};
}

Failure refused(const Request& request, const TextMeasurer& text)
{
    Outcome outcome = arrange(request, text);
    if (auto* failed = std::get_if<Failure>(&outcome))
        return *failed;
    ADD_FAILURE() << "an arrangement was found where there is none";
    return {};
}

const Placement& placeOf(const Arrangement& arrangement, ItemId id)
{
    for (const Placement& one : arrangement.items)
        if (one.id == id)
            return one;
    static const Placement none;
    ADD_FAILURE() << "not placed: " << id;
    return none;
}

ItemId firstOf(const Document& document, Kind kind)
{
    for (const Item& item : document.request.items)
        if (item.kind == kind)
            return item.id;
    return 0;
}

TEST(EngineCost, LogarithmAgreesWithTheLibraryToTenDigits)
{
    for (double x = 1e-4; x < 1e4; x *= 1.37)
        EXPECT_NEAR(steadyLog(x), std::log(x), 1e-10);
}

TEST(EngineReading, ThreeGroupsSideBySideAreReadOneAfterTheOther)
{
    // Label and photo of two days; a plain row-first reader would take both labels first.
    const std::vector<GridRect> cells = {
        {0, 0, 0, 3, 1}, {0, 0, 1, 3, 6}, {0, 3, 0, 3, 1}, {0, 3, 1, 3, 6}};
    EXPECT_EQ(orderInversions(cells, {1, 1, 2, 2}), 0);
    EXPECT_EQ(orderInversions(cells, {0, 0, 0, 0}), 1);
    EXPECT_THAT(rowFirstOrder(cells), ElementsAre(0, 2, 1, 3));
    EXPECT_EQ(leftEdges(cells), 2);
}

TEST(DaysPlan, FourDaysOnA1TakeTheTemplatesPlaces)
{
    const auto document = makeDays(-1, 4, Format::A1Landscape);
    const Arrangement page = arranged(document->request, document->text);
    EXPECT_EQ(page.pages, 1);
    EXPECT_TRUE(page.droppedWishes.empty());
    EXPECT_EQ(page.orderInversions, 0);
    const GridRect title = placeOf(page, firstOf(*document, Kind::Title)).at;
    EXPECT_EQ(title.x, 0);
    EXPECT_EQ(title.y, 0);
    EXPECT_EQ(title.w, 4);
    const Placement& dominant = placeOf(page, firstOf(*document, Kind::Photo));
    EXPECT_EQ(dominant.at.x, 4);
    EXPECT_EQ(dominant.at.y, 0);
    EXPECT_EQ(dominant.at.w, 5);
    EXPECT_NEAR(dominant.at.h, 15, 2);
    const double share = dominant.picture.areaMm2() / (841.0 * 594.0);
    EXPECT_GT(share, 0.12);
    EXPECT_LT(share, 0.20);
    // Credits close the title's column level with the dominant picture's cell.
    const Placement& credits = placeOf(page, firstOf(*document, Kind::Credits));
    EXPECT_EQ(credits.at.y + credits.at.h, dominant.at.y + dominant.at.h);
    EXPECT_NEAR((credits.cell.bottom() - document->request.page.cell(dominant.at).bottom()).value(),
        0,
        1e-9);
    // Day 1 stands beside the dominant picture, the others below one hairline across the page.
    for (const Item& item : document->request.items) {
        if (item.group == 0)
            continue;
        EXPECT_EQ(placeOf(page, item.id).at.w, 3);
        EXPECT_EQ(placeOf(page, item.id).at.y < dominant.at.h, item.group == 1);
    }
    ASSERT_EQ(page.groupChanges.size(), 1U);
    const PageSpec& spec = document->request.page;
    EXPECT_NEAR((page.groupChanges[0].width - spec.width(12)).value(), 0, 1e-9);
    const Mm firstLine = spec.margin + (dominant.at.h + 1) * spec.rowUnit;
    EXPECT_NEAR((firstLine - page.groupChanges[0].y).value(), 0.65 * spec.rowUnit.value(), 1e-9);
}

TEST(DaysPlan, DominantPictureIsTwiceTheNextWhereThePlanHolds)
{
    for (const Format format : {Format::A1Landscape,
             Format::A1Portrait,
             Format::A3Landscape,
             Format::A2Portrait,
             Format::Poster24x36})
        for (int days = 1; days <= 4; ++days) {
            SCOPED_TRACE(testing::Message() << "format " << int(format) << ", days " << days);
            const auto document = makeDays(days, days, format);
            const Arrangement page = arranged(document->request, document->text);
            double largest = 0;
            double next = 0;
            for (const Placement& one : page.items) {
                const double area = one.picture.isEmpty() ? 0 : one.picture.areaMm2();
                next = std::max(next, std::min(area, largest));
                largest = std::max(largest, area);
            }
            if (page.pages == 1 && page.droppedWishes.empty()) {
                EXPECT_GE(largest / next, 2.0);
            }
        }
}

TEST(DaysPlan, WorksWithoutCreditsAndAdultText)
{
    const auto document = makeDays(3, 3, Format::A1Landscape, false, false);
    const Arrangement page = arranged(document->request, document->text);
    EXPECT_EQ(page.items.size(), document->request.items.size());
    EXPECT_TRUE(page.droppedWishes.empty());
}

TEST(DaysPlan, FiveDaysAreArrangedFreelyAndItSaysWhy)
{
    const auto document = makeDays(2, 5, Format::A1Landscape);
    const Arrangement page = arranged(document->request, document->text);
    EXPECT_THAT(page.droppedWishes,
        ElementsAre(DroppedWish{WishAbout::Plan, WishReason::TooManyGroups, "days", 4, 5, {}}));
    EXPECT_EQ(page.items.size(), document->request.items.size());
}

TEST(DaysPlan, PictureAndWordsChangePlacesFromDayToDay)
{
    const auto document = makeDays(-1, 4, Format::A1Landscape);
    const Arrangement page = arranged(document->request, document->text);
    for (std::size_t k = 1; k < page.items.size(); ++k) {
        const auto item = [&](std::size_t at) {
            return document->request.items[std::size_t(page.items[at].id - 1)];
        };
        if (item(k - 1).kind == Kind::Label) {
            const bool wordsFirst = item(k).group % 2 == 0;
            EXPECT_EQ(item(k).kind, wordsFirst ? Kind::Quote : Kind::Photo);
        }
    }
}

TEST(DaysPlan, ArrangingAgainAroundAPinnedPictureKeepsThePlan)
{
    const auto document = makeDays(-1, 4, Format::A1Landscape);
    const Arrangement before = arranged(document->request, document->text);
    Request request = document->request;
    for (Item& item : request.items) {
        item.previous = placeOf(before, item.id).at;
        if (item.importance >= 3)
            item.pinned = placeOf(before, item.id).at;
    }
    const Arrangement after = arranged(request, document->text);
    EXPECT_TRUE(after.droppedWishes.empty());
    for (const Placement& one : before.items)
        EXPECT_EQ(placeOf(after, one.id).at, one.at) << "piece " << one.id;
    EXPECT_EQ(after.groupChanges, before.groupChanges);
}

TEST(DrawingPlan, SampleAtTopLeftWordsBesideNoteAndCreditsAtTheFoot)
{
    const auto document = makeDrawing(1, Format::A3Landscape);
    const Arrangement page = arranged(document->request, document->text);
    const PageSpec& spec = document->request.page;
    const Placement& sample = placeOf(page, firstOf(*document, Kind::Work));
    EXPECT_EQ(sample.at.x, 0);
    EXPECT_EQ(sample.at.y, 0);
    EXPECT_EQ(sample.at.w, 8);
    EXPECT_DOUBLE_EQ(sample.keep, 1);
    const double share = sample.picture.areaMm2() / (420.0 * 297.0);
    EXPECT_GT(share, 0.28);
    EXPECT_LT(share, 0.42);
    const Placement& words = placeOf(page, firstOf(*document, Kind::Quote));
    EXPECT_EQ(words.at.x, 8);
    EXPECT_NEAR((words.cell.x - spec.cell(words.at).x - spec.gutter).value(), 0, 1e-9);
    const Mm foot = spec.margin + spec.height(spec.rows);
    const Placement& note = placeOf(page, firstOf(*document, Kind::Interpretation));
    EXPECT_EQ(note.at.x, 0);
    EXPECT_NEAR((note.cell.bottom() - foot).value(), 0, 1e-9);
    const Placement& credits = placeOf(page, firstOf(*document, Kind::Credits));
    EXPECT_EQ(credits.at.x, 8);
    EXPECT_NEAR((credits.cell.bottom() - foot).value(), 0, 1e-9);
}

TEST(Plans, UnknownNameIsSaid)
{
    auto document = makeDocument(4, 9, Format::A1Landscape);
    document->request.plan = "spiral";
    const Arrangement page = arranged(document->request, document->text);
    EXPECT_THAT(page.droppedWishes,
        ElementsAre(DroppedWish{WishAbout::Plan, WishReason::NoSuchPlan, "spiral", 0, 0, {}}));
}

TEST(EngineFailure, AWordWiderThanThePageIsNamed)
{
    auto document = makeDocument(4, 9, Format::A1Landscape);
    const ItemId title = firstOf(*document, Kind::Title);
    FakeText text = document->text.text(title);
    text.words = std::string(80, 'w');
    document->text.set(title, text);
    const Failure failed = refused(document->request, document->text);
    EXPECT_EQ(failed.what, Obstacle::WordTooWide);
    EXPECT_THAT(failed.items, ElementsAre(title));
}

TEST(EngineFailure, APictureOfTooFewPixelsIsNamed)
{
    auto document = makeDocument(4, 9, Format::A1Landscape);
    const ItemId photo = firstOf(*document, Kind::Photo);
    for (Item& item : document->request.items)
        if (item.id == photo)
            item.picture->size = {60, 40};
    const Failure failed = refused(document->request, document->text);
    EXPECT_EQ(failed.what, Obstacle::PictureTooFewPixels);
    EXPECT_THAT(failed.items, ElementsAre(photo));
}

TEST(EngineFailure, TooMuchForOnePageSaysHowMuchRoomIsMissing)
{
    auto document = makeDocument(6, 60, Format::A3Landscape);
    document->request.pages = 1;
    const Failure failed = refused(document->request, document->text);
    EXPECT_EQ(failed.what, Obstacle::TooMuchForPages);
    EXPECT_FALSE(failed.items.empty());
    EXPECT_GT(failed.missingMm2, 420.0 * 297.0) << "sixty pieces need several such pages";
    document->request.pages.reset();
    EXPECT_GT(arranged(document->request, document->text).pages, 1);
}

TEST(EngineFailure, OverlappingPinsAreNamed)
{
    auto document = makeDocument(4, 9, Format::A1Landscape);
    auto& items = document->request.items;
    items[3].pinned = GridRect{0, 0, 4, 6, 10};
    items[4].pinned = GridRect{0, 4, 8, 6, 10};
    const Failure failed = refused(document->request, document->text);
    EXPECT_EQ(failed.what, Obstacle::PinsOverlap);
    EXPECT_THAT(failed.items, ElementsAre(items[3].id, items[4].id));
}

TEST(EngineFailure, ACancelledRequestSaysSo)
{
    auto document = makeDocument(4, 20, Format::A1Landscape);
    const std::atomic<bool> cancel{true};
    document->request.cancel = &cancel;
    EXPECT_EQ(refused(document->request, document->text).what, Obstacle::Cancelled);
}

TEST(EngineIndent, IsKeptWhereTheLinesBeginUnlessThatIsAtTheMargin)
{
    const auto document = makeDrawing(1, Format::A3Landscape, true);
    Request& request = document->request;
    request.plan.clear();
    const PageSpec& page = request.page;
    for (const bool fromRight : {false, true})
        for (const int x : {0, 6}) {
            for (Item& item : request.items)
                if (item.indent > Mm(0)) {
                    item.fromRight = fromRight;
                    item.pinned = GridRect{0, x, 0, 6, page.rows};
                }
            const RectMm cell = placeOf(arranged(request, document->text), 2).cell;
            const RectMm room = page.cell({0, x, 0, 6, page.rows});
            const bool atMargin = fromRight == (x == 6);
            const Mm kept = fromRight ? room.right() - cell.right() : cell.x - room.x;
            EXPECT_NEAR(kept.value(), atMargin ? 0 : page.gutter.value(), 1e-9)
                << (fromRight ? "from the right" : "from the left") << ", column " << x;
        }
}

TEST(EngineWishes, SpansAndPlacesAreKept)
{
    auto document = makeDocument(8, 9, Format::A1Landscape);
    Item& adult = document->request.items[7];
    ASSERT_EQ(adult.kind, Kind::Interpretation);
    adult.wish.minColumns = 6;
    adult.wish.maxColumns = 6;
    adult.wish.firstColumn = 6;
    const Arrangement page = arranged(document->request, document->text);
    EXPECT_EQ(placeOf(page, adult.id).at.x, 6);
    EXPECT_EQ(placeOf(page, adult.id).at.w, 6);
}

TEST(EnginePages, AForcedBreakBeginsAPage)
{
    auto document = makeDocument(8, 12, Format::A1Landscape);
    auto& items = document->request.items;
    for (Item& item : items)
        item.group = 0;
    items[6].breakBefore = true;
    const Arrangement display = arranged(document->request, document->text);
    EXPECT_EQ(placeOf(display, items[5].id).at.page + 1, placeOf(display, items[6].id).at.page);
}

TEST(EngineStability, AHeavyPriceOnMovingKeepsPiecesWhereTheyWere)
{
    auto document = makeDocument(8, 12, Format::A1Landscape);
    const Arrangement before = arranged(document->request, document->text);
    for (Item& item : document->request.items)
        item.previous = placeOf(before, item.id).at;
    const Arrangement after = arranged(document->request, document->text);
    for (const Placement& one : before.items)
        EXPECT_EQ(placeOf(after, one.id).at, one.at);
    EXPECT_EQ(after.cost.stability, 0);
}

} // namespace
} // namespace wainscot::engine
