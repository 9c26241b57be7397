// Templates as constraints beyond days and drawing, a teacher's own, and how a page is used.
#include "layout/engine/advice.h"
#include "layout/engine/form.h"
#include "tests/support/engine_documents.h"

#include <gtest/gtest.h>

namespace wainscot::engine {
namespace {

// A document put together by hand, in the type of a classroom wall.
struct Sheet {
    explicit Sheet(Format format, const char* plan)
    {
        request.page = pageFor(format);
        request.plan = plan;
    }

    Item& text(Kind kind, const std::string& words, int group = 0, int side = 0)
    {
        Item item;
        item.id = ItemId(request.items.size()) + 1;
        item.kind = kind;
        item.group = group;
        item.side = side;
        FakeText type{words};
        if (kind == Kind::Title)
            type = {words, 26, 37, 15, 0, 0, 6, 26, 0};
        else if (kind == Kind::Quote)
            type = {words, 13.6, 24.8, 8.8, 16, 0, 14, 32, 0};
        else if (kind == Kind::Interpretation)
            type = {words, 8.7, 17, 5.9, 0, 10.5, 26, 50, 0};
        else if (kind == Kind::Label || kind == Kind::Credits)
            type = {words, 5.6, 10.9, 3.8, 0, 0, 20, 52, 0};
        measurer.set(item.id, type);
        request.items.push_back(item);
        return request.items.back();
    }

    Item& picture(int group, int importance = 1)
    {
        Item& item = text(Kind::Photo, "", group);
        item.picture = PictureShape{{6000, 4000}, 0.7, 0.7};
        item.importance = importance;
        return item;
    }

    Arrangement arranged()
    {
        Outcome outcome = arrange(request, measurer);
        if (auto* found = std::get_if<Arrangement>(&outcome))
            return *found;
        ADD_FAILURE() << "no arrangement";
        return {};
    }

    Request request;
    FakeMeasurer measurer;
};

const Placement& placeOf(const Arrangement& page, ItemId id)
{
    for (const Placement& one : page.items)
        if (one.id == id)
            return one;
    static const Placement none;
    ADD_FAILURE() << "not placed: " << id;
    return none;
}

TEST(VoicesPlan, PictureLeftTwoColumnsOfQuotesAndTheRightOneARowLower)
{
    Sheet sheet(Format::A1Portrait, "voices");
    sheet.text(Kind::Title, "Where does it go?");
    sheet.picture(0, 3);
    for (int k = 0; k < 7; ++k)
        sheet.text(Kind::Quote, "It climbs in the air but so small");
    const ItemId note = sheet.text(Kind::Interpretation, "We asked everyone on one wet day.").id;
    const Arrangement page = sheet.arranged();
    EXPECT_TRUE(page.droppedWishes.empty());
    EXPECT_EQ(placeOf(page, 1).at.w, 12);
    EXPECT_EQ(placeOf(page, 2).at.x, 0);
    EXPECT_EQ(placeOf(page, 2).at.w, 7);
    EXPECT_EQ(placeOf(page, note).at.x, 0);
    EXPECT_EQ(placeOf(page, note).at.w, 5);
    Mm left(1e9);
    Mm right(1e9);
    for (const Placement& one : page.items) {
        const bool quote = sheet.request.items[std::size_t(one.id - 1)].kind == Kind::Quote;
        if (quote && one.at.w == 6)
            (one.at.x == 0 ? left : right) = std::min(one.at.x == 0 ? left : right, one.cell.y);
    }
    EXPECT_NEAR((right - left).value(), sheet.request.page.rowUnit.value(), 1e-6);
}

TEST(EveningPlan, PairsStandLevelAndARowThatStarvesThePictureIsLeftOut)
{
    Sheet sheet(Format::A1Portrait, "evening");
    for (const int side : {1, 2})
        sheet.text(Kind::Title, "Where does it go?", 0, side);
    sheet.picture(0, 3);
    for (const int side : {1, 2})
        sheet.text(Kind::Context, "One puddle stayed after the rain. Would it be there?", 0, side);
    for (int row = 1; row <= 3; ++row) {
        sheet.text(Kind::Quote, "My wet hand went off the wall", row, 1).optional = row > 1;
        sheet.picture(row).optional = row > 1;
        sheet.text(Kind::Quote, "My wet hand went off the wall", row, 2).optional = row > 1;
    }
    for (const int side : {1, 2})
        sheet.text(Kind::Invitation, "What water do you remember? Write it here.", 0, side);
    const Arrangement page = sheet.arranged();
    EXPECT_EQ(placeOf(page, 1).cell.bottom(), placeOf(page, 2).cell.bottom());
    EXPECT_EQ(placeOf(page, 1).at.w, 6);
    EXPECT_EQ(placeOf(page, 3).at.w, 12);
    EXPECT_EQ(placeOf(page, 6).at.y, placeOf(page, 8).at.y);
    EXPECT_EQ(placeOf(page, 7).at.x, 5);
    EXPECT_EQ(page.leftOut.size() % 3, 0U) << "a row goes as a whole";
    for (const DroppedWish& wish : page.droppedWishes)
        EXPECT_EQ(wish.what, WishAbout::OptionalPieces);
}

TEST(ThreadPlan, PicturesStandOnOneLineAndDaysBelowIt)
{
    Sheet sheet(Format::A1Landscape, "thread");
    sheet.text(Kind::Title, "Who drinks the puddle?");
    sheet.text(Kind::Context, "Three meetings, two children.");
    sheet.text(Kind::Credits, "Words as spoken and read back.");
    std::vector<ItemId> pictures;
    std::vector<ItemId> labels;
    for (int meeting = 1; meeting <= 3; ++meeting) {
        pictures.push_back(sheet.picture(meeting, meeting == 3 ? 3 : 1).id);
        labels.push_back(sheet.text(Kind::Label, "Tuesday", meeting).id);
        sheet.text(Kind::Quote, "The worm is full of it", meeting);
    }
    const ItemId after = sheet.text(Kind::Interpretation, "Yuki let a good idea go.").id;
    const Arrangement page = sheet.arranged();
    EXPECT_TRUE(page.droppedWishes.empty());
    for (std::size_t k = 1; k < 3; ++k) {
        EXPECT_NEAR((placeOf(page, pictures[k]).picture.bottom()
                        - placeOf(page, pictures[0]).picture.bottom())
                        .value(),
            0,
            1e-6);
        EXPECT_NEAR(
            (placeOf(page, labels[k]).cell.y - placeOf(page, labels[0]).cell.y).value(), 0, 1e-6);
        EXPECT_GT(placeOf(page, labels[k]).cell.x, placeOf(page, labels[k - 1]).cell.x);
    }
    EXPECT_GT(placeOf(page, after).cell.x, placeOf(page, labels.back()).cell.x);
    EXPECT_GE(placeOf(page, after).cell.y, placeOf(page, labels.back()).cell.y);
    const double thread = placeOf(page, labels[0]).cell.y / sheet.request.page.size.height;
    EXPECT_GT(thread, 0.5);
    EXPECT_LT(thread, 0.62);
}

TEST(DoorPlan, OnePictureAcrossAndTwoVoicesLevelBelow)
{
    Sheet sheet(Format::A2Portrait, "door");
    sheet.text(Kind::Title, "Where does it go?");
    sheet.picture(0, 3);
    sheet.text(Kind::Quote, "It climbs in the air but so small");
    sheet.text(Kind::Quote, "Nobody took it");
    const ItemId next = sheet.text(Kind::Interpretation, "Two jars, one with a lid.").id;
    const ItemId credits = sheet.text(Kind::Credits, "3 to 6 November.").id;
    const Arrangement page = sheet.arranged();
    EXPECT_TRUE(page.droppedWishes.empty());
    EXPECT_EQ(placeOf(page, 2).at.w, 12);
    EXPECT_EQ(placeOf(page, 3).at.y, placeOf(page, 4).at.y);
    EXPECT_EQ(placeOf(page, 4).at.x, 6);
    EXPECT_EQ(placeOf(page, credits).at.x, 8);
    EXPECT_GT(placeOf(page, next).at.y, placeOf(page, 3).at.y);
}

TEST(BeforePlan, ThenSmallAtTheStartAndNowLargeBesideIt)
{
    for (const Format format : {Format::A1Landscape, Format::A2Portrait}) {
        Sheet sheet(format, "before");
        sheet.text(Kind::Title, "Where does it go?");
        const ItemId then = sheet.text(Kind::Label, "Monday, 2 November", 1).id;
        const ItemId small = sheet.picture(1).id;
        const ItemId first = sheet.text(Kind::Quote, "It is round", 1).id;
        const ItemId now = sheet.text(Kind::Label, "Thursday, 12 November").id;
        const ItemId large = sheet.picture(0, 3).id;
        const ItemId left = sheet.text(Kind::Quote, "Nobody took it").id;
        const ItemId right = sheet.text(Kind::Quote, "It climbs in the air").id;
        sheet.text(Kind::Credits, "2 to 12 November.");
        const Arrangement page = sheet.arranged();
        const bool upright = format == Format::A2Portrait;
        EXPECT_TRUE(page.droppedWishes.empty());
        EXPECT_EQ(placeOf(page, then).at.x, 0);
        EXPECT_LT(placeOf(page, then).at.y, placeOf(page, small).at.y);
        EXPECT_LT(placeOf(page, small).at.y, placeOf(page, first).at.y);
        EXPECT_EQ(placeOf(page, large).at.w, upright ? 7 : 8);
        EXPECT_LT(placeOf(page, now).at.y, placeOf(page, large).at.y);
        EXPECT_LT(placeOf(page, large).at.y, placeOf(page, left).at.y);
        EXPECT_EQ(placeOf(page, left).at.x == placeOf(page, right).at.x, upright)
            << "below each other on an upright sheet";
        EXPECT_GE(
            placeOf(page, large).picture.areaMm2(), 2 * placeOf(page, small).picture.areaMm2())
            << "one picture leads";
    }
}

TEST(QuestionsPlan, OneBelowTheOtherBesideTheChildsPicture)
{
    for (const Format format : {Format::A1Landscape, Format::A2Portrait}) {
        Sheet sheet(format, "questions");
        sheet.text(Kind::Title, "Where does it go?");
        const ItemId picture = sheet.picture(0, 3).id;
        std::vector<ItemId> asked;
        for (int i = 0; i < 3; ++i)
            asked.push_back(sheet.text(Kind::Quote, "Does it know the way back?").id);
        sheet.text(Kind::Credits, "3 to 6 November.");
        const Arrangement page = sheet.arranged();
        EXPECT_TRUE(page.droppedWishes.empty());
        EXPECT_EQ(placeOf(page, picture).at.x, 0);
        for (std::size_t i = 1; i < asked.size(); ++i) {
            EXPECT_EQ(placeOf(page, asked[i]).at.x, placeOf(page, asked[0]).at.x);
            EXPECT_GT(placeOf(page, asked[i]).at.y, placeOf(page, asked[i - 1]).at.y);
        }
    }
}

TEST(Form, OfAPageGivesThatPageAgain)
{
    const auto document = makeDays(-1, 4, Format::A1Landscape);
    Outcome first = arrange(document->request, document->text);
    ASSERT_TRUE(std::holds_alternative<Arrangement>(first));
    const auto& before = std::get<Arrangement>(first);
    Request request = document->request;
    request.plan.clear();
    Form form{"mine", {}};
    for (const Placement& one : before.items) {
        const Item& item = document->request.items[std::size_t(one.id - 1)];
        FormPlace place;
        place.kind = item.kind;
        place.group = item.group;
        place.column = one.at.x;
        place.columns = one.at.w;
        place.rows = double(one.at.h) / request.page.rows;
        place.dominant = item.importance >= 3;
        form.places.push_back(place);
    }
    request.form = form;
    Outcome again = arrange(request, document->text);
    ASSERT_TRUE(std::holds_alternative<Arrangement>(again));
    const auto& after = std::get<Arrangement>(again);
    EXPECT_TRUE(after.droppedWishes.empty());
    for (const Placement& one : before.items) {
        EXPECT_EQ(placeOf(after, one.id).at.x, one.at.x) << one.id;
        EXPECT_EQ(placeOf(after, one.id).at.w, one.at.w) << one.id;
    }
}

TEST(Form, LeavesOptionalPiecesOutBeforeAnyOtherWish)
{
    Sheet sheet(Format::A3Landscape, "");
    for (int k = 0; k < 4; ++k)
        sheet.text(Kind::Quote, "It climbs in the air but so small you cannot see it climbing");
    FormPlace place;
    place.columns = 6;
    sheet.request.form = Form{"mine", {place, place, place, place}};
    sheet.request.form->places[1].optional = true;
    const Arrangement page = sheet.arranged();
    if (page.leftOut.empty()) {
        EXPECT_EQ(page.items.size(), 4U);
    } else {
        EXPECT_EQ(page.leftOut.front(), 2);
        EXPECT_EQ(page.droppedWishes.front().what, WishAbout::OptionalPieces);
    }
}

TEST(PageUse, CountsWhiteAndItsLargestRectangle)
{
    PageSpec page = pageFor(Format::A1Landscape);
    Arrangement arrangement;
    Placement half;
    half.id = 1;
    half.at = {0, 0, 0, 6, page.rows};
    half.cell = page.cell(half.at);
    arrangement.items.push_back(half);
    const PageUse use = pageUse(arrangement, page);
    EXPECT_NEAR(use.white, 0.5, 1e-9);
    EXPECT_NEAR(use.hole, 0.5, 1e-9);
    EXPECT_EQ(use.holeColumns, 6);
    EXPECT_EQ(use.holeRows, page.rows);
    EXPECT_TRUE(isSparse(use));
}

TEST(PageUse, TellsRoomInSheetsOfPaper)
{
    EXPECT_EQ(a4Sheets(1), 0.5);
    EXPECT_EQ(a4Sheets(210 * 297), 1);
    EXPECT_EQ(a4Sheets(2.2 * 210 * 297), 2.5);
}

} // namespace
} // namespace wainscot::engine
