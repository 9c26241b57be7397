#include "layout/paper/sheets.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace wainscot {

namespace {

constexpr SizeMm kA4{Mm(210), Mm(297)};
constexpr SizeMm kA3{Mm(297), Mm(420)};
constexpr SizeMm kLetter{inches(8.5), inches(11)};
constexpr SizeMm kTabloid{inches(11), inches(17)};

struct Case {
    SizeMm panel;
    SizeMm paper;
    double overlap;
    int columns;
    int rows;
};

} // namespace

// n = ceil((W - o) / (t - o)) each way, t = sheet - 2 x 7 mm, worked out by hand for the usual
// panels; the way round with fewer sheets, upright if both need as many.
TEST(PlanSheets, TakesTheWayRoundWithFewerSheets)
{
    const Case cases[]{
        {{Mm(297), Mm(420)}, kA4, 10, 2, 2},
        {{Mm(420), Mm(594)}, kA4, 10, 2, 4},
        {{Mm(594), Mm(841)}, kA4, 10, 3, 5},
        {{Mm(594), Mm(841)}, kA4, 0, 4, 3},
        {{Mm(841), Mm(1189)}, kA4, 10, 5, 5},
        {{Mm(841), Mm(1189)}, kA4, 0, 3, 7},
        {{inches(11), inches(17)}, kLetter, 10, 2, 2},
        {{inches(18), inches(24)}, kLetter, 10, 2, 4},
        {{inches(24), inches(36)}, kLetter, 10, 3, 5},
        {{inches(36), inches(48)}, kLetter, 10, 5, 5},
        {{inches(22), inches(28)}, kLetter, 10, 3, 3},
        {{Mm(420), Mm(594)}, kA3, 10, 2, 2},
        {{Mm(594), Mm(841)}, kA3, 10, 2, 4},
        {{Mm(841), Mm(1189)}, kA3, 10, 4, 3},
        {{Mm(594), Mm(841)}, kTabloid, 10, 2, 4},
        {{inches(24), inches(36)}, kTabloid, 10, 2, 4},
    };
    for (const Case& c : cases) {
        const Result<SheetPlan> plan = planSheets(c.panel, {c.paper, Mm(c.overlap), Mm(7)});
        ASSERT_TRUE(plan.ok());
        EXPECT_EQ(plan->columns, c.columns) << c.panel.width.value() << " " << c.overlap;
        EXPECT_EQ(plan->rows, c.rows) << c.panel.width.value() << " " << c.overlap;
    }
}

TEST(PlanSheets, ReachesBothEndsOfThePanelWithTheOverlapBetween)
{
    const Result<SheetPlan> plan = planSheets({Mm(841), Mm(594)}, {kA4, Mm(12), Mm(5)});
    ASSERT_TRUE(plan.ok());
    for (int column = 0; column < plan->columns; ++column) {
        const RectMm area = plan->area(column, 0);
        EXPECT_LE(area.width, plan->part.width);
        EXPECT_GT(area.width, Mm(12)) << "a sheet shows nothing of its own";
        if (column > 0) {
            EXPECT_NEAR((plan->area(column - 1, 0).right() - area.x).value(), 12, 1e-9);
        }
    }
    EXPECT_DOUBLE_EQ(plan->area(plan->columns - 1, 0).right().value(), 841);
    EXPECT_DOUBLE_EQ(plan->area(0, plan->rows - 1).bottom().value(), 594);
}

// A panel a little wider than two sheets would leave a strip of 4 mm for the third.
TEST(PlanSheets, LeaveNoNarrowStripForTheLastColumn)
{
    const SheetOptions options{kA4};
    const Mm part = kA4.width - 2 * options.margin;
    const Mm step = part - options.overlap;
    const SizeMm panel{step + part + Mm(4), Mm(270)};
    const Result<SheetPlan> plan = planSheets(panel, options);
    ASSERT_TRUE(plan.ok());
    ASSERT_EQ(plan->columns, 3);
    EXPECT_NEAR((panel.width - plan->lefts[2]).value(), 30, 1e-9);
    EXPECT_NEAR((plan->area(1, 0).right() - plan->lefts[2]).value(), 10, 1e-9);
    EXPECT_DOUBLE_EQ(plan->area(2, 0).right().value(), panel.width.value());
    for (double width = 200; width < 1300; width += 1) {
        const Result<SheetPlan> any = planSheets({Mm(width), Mm(270)}, options);
        ASSERT_TRUE(any.ok());
        for (std::size_t i = 1; i < any->lefts.size(); ++i) {
            EXPECT_GE((any->lefts[i] - any->lefts[i - 1]).value(), 30 - 1e-9) << width;
            EXPECT_LE((any->lefts[i] - any->lefts[i - 1]).value(), step.value() + 1e-9) << width;
        }
        EXPECT_GE(width - any->lefts.back().value(), 30 - 1e-9) << width;
        EXPECT_LE(width - any->lefts.back().value(), part.value() + 1e-9) << width;
    }
}

TEST(PlanSheets, TakesPaperGivenEitherWayRound)
{
    const Result<SheetPlan> plan = planSheets({Mm(594), Mm(841)}, {{Mm(297), Mm(210)}});
    ASSERT_TRUE(plan.ok());
    EXPECT_EQ(plan->count(), 15);
    EXPECT_EQ(plan->sheet, (SizeMm{Mm(297), Mm(210)}));
}

TEST(PlanSheets, RefusesMarginsThatLeaveNoPaper)
{
    const Result<SheetPlan> plan = planSheets({Mm(594), Mm(841)}, {kA4, Mm(50), Mm(80)});
    ASSERT_FALSE(plan.ok());
    EXPECT_EQ(plan.error().code, ErrorCode::WrongUse);
    EXPECT_TRUE(plan.error().subject.contains(QStringLiteral("210")));
}

TEST(PlanSheets, RefusesHundredsOfSheets)
{
    EXPECT_FALSE(planSheets({Mm(5000), Mm(5000)}, {kA4, Mm(10), Mm(7)}).ok());
}

namespace {

DisplayList with(const std::vector<RectMm>& pictures, bool marked)
{
    DisplayList list;
    for (const RectMm& place : pictures) {
        ClearedPicture picture;
        picture.visible = {0.1, 0.1, 0.8, 0.8};
        if (marked)
            picture.mustStay = RectFraction{0.4, 0.4, 0.2, 0.2};
        list.marks.push_back({-1, {}, PlacedPicture{picture, place}});
    }
    return list;
}

bool cuts(const SheetPlan& plan, const RectMm& part)
{
    const auto inside = [](const std::vector<Mm>& seams, Mm from, Mm to) {
        return std::any_of(
            seams.begin() + 1, seams.end(), [&](Mm at) { return at > from && at < to; });
    };
    return inside(plan.lefts, part.x, part.right()) || inside(plan.tops, part.y, part.bottom());
}

} // namespace

TEST(QuietSeams, GoAroundTheMarkedPartOfAPicture)
{
    const Result<SheetPlan> plan = planSheets({Mm(841), Mm(594)}, {kA4});
    ASSERT_TRUE(plan.ok());
    // The marked part lies around the second seam and is 12 mm wide.
    const Mm seam = plan->lefts[2];
    const RectMm place{seam - Mm(26), Mm(40), Mm(48), Mm(48)};
    const RectMm part{place.x + Mm(18), place.y + Mm(18), Mm(12), Mm(12)};
    ASSERT_TRUE(cuts(*plan, part));
    const SheetPlan quiet = withQuietSeams(*plan, with({place}, true));
    EXPECT_FALSE(cuts(quiet, part));
    EXPECT_EQ(quiet.count(), plan->count());
}

// What is left of the last column is slack for every seam: 90 mm of it go around a part that is far
// wider than the overlap.
TEST(QuietSeams, UseWhatTheLastColumnWouldLeaveEmpty)
{
    const Result<SheetPlan> plan = planSheets({Mm(460), Mm(190)}, {kA4});
    ASSERT_TRUE(plan.ok());
    ASSERT_EQ(plan->columns, 2);
    const Mm seam = plan->lefts[1];
    const RectMm place{seam - Mm(60), Mm(40), Mm(90), Mm(90)};
    const RectMm part{place.x + Mm(5), place.y + Mm(5), Mm(80), Mm(80)};
    DisplayList list = with({place}, true);
    auto& picture = std::get<PlacedPicture>(list.marks.front().shape).picture;
    picture.visible = {};
    picture.mustStay = RectFraction{5.0 / 90, 5.0 / 90, 80.0 / 90, 80.0 / 90};
    ASSERT_TRUE(cuts(*plan, part));
    const SheetPlan quiet = withQuietSeams(*plan, list);
    EXPECT_FALSE(cuts(quiet, part));
    EXPECT_LT(quiet.lefts[1], place.x) << "the picture is whole too";
    EXPECT_GE((quiet.lefts[1] + quiet.part.width).value(), 460) << "and the panel";
    // Nothing is printed far under the next sheet.
    EXPECT_NEAR(quiet.area(0, 0).right().value(), quiet.lefts[1].value() + 10, 1e-9);
}

// With one seam, every whole millimetre can be tried by hand: where one of them cuts nothing, the
// seam cuts nothing.
TEST(QuietSeams, FindAWayThroughWhereThereIsOne)
{
    std::mt19937 random(20261130);
    const auto any = [&random](int from, int to) {
        return double(std::uniform_int_distribution(from, to)(random));
    };
    int ways = 0;
    int moved = 0;
    for (int i = 0; i < 400; ++i) {
        const SizeMm panel{Mm(any(290, 550)), Mm(180)};
        const Result<SheetPlan> plan = planSheets(panel, {kA4});
        ASSERT_TRUE(plan.ok());
        if (plan->columns != 2 || plan->rows != 1)
            continue;
        std::vector<RectMm> pictures;
        for (double x = any(0, 60); x < panel.width.value() - 20; x += any(40, 130))
            pictures.push_back({Mm(x), Mm(any(5, 90)), Mm(any(20, 100)), Mm(60)});
        const double usual = plan->lefts[1].value();
        bool isThere = false;
        for (double at = usual - std::floor(usual) - 1; at < panel.width.value(); at += 1) {
            SheetPlan tried = *plan;
            tried.lefts[1] = Mm(at);
            const bool holds = at >= 30 && at <= plan->part.width.value() - 5
                && at + plan->part.width.value() >= panel.width.value()
                && panel.width.value() - at >= 30;
            const bool quiet = std::none_of(pictures.begin(), pictures.end(), [&](RectMm one) {
                return cuts(tried, {one.x - Mm(1), one.y, one.width + Mm(2), one.height});
            });
            isThere = isThere || (holds && quiet);
        }
        if (!isThere)
            continue;
        ++ways;
        const SheetPlan quiet = withQuietSeams(*plan, with(pictures, i % 2 == 0));
        moved += quiet.lefts != plan->lefts ? 1 : 0;
        for (const RectMm& one : pictures)
            EXPECT_FALSE(cuts(quiet, one)) << i;
    }
    EXPECT_GT(ways, 40);
    EXPECT_GT(moved, 20);
}

// A picture in the first column alone: the other sheets have nothing on them, and it is known.
TEST(QuietSeams, TellWhichSheetsStayWhite)
{
    const Result<SheetPlan> plan = planSheets({Mm(841), Mm(594)}, {kA4});
    ASSERT_TRUE(plan.ok());
    EXPECT_FALSE(plan->isWhite(1, 0)) << "not looked at yet";
    DisplayList list = with({{Mm(20), Mm(20), Mm(100), Mm(560)}}, false);
    list.marks.insert(
        list.marks.begin(), {-1, {}, Fill{{Mm(0), Mm(0), Mm(841), Mm(594)}, 0xffffffff}});
    const SheetPlan quiet = withQuietSeams(*plan, list);
    for (int row = 0; row < quiet.rows; ++row) {
        for (int column = 0; column < quiet.columns; ++column)
            EXPECT_EQ(quiet.isWhite(column, row), column > 0) << row << " " << column;
    }
    EXPECT_EQ(quiet.whiteCount(), quiet.count() - quiet.rows);
    std::get<Fill>(list.marks.front().shape).colour = 0xfffaf8f0;
    EXPECT_EQ(withQuietSeams(*plan, list).whiteCount(), 0) << "a tinted ground is printed";
}

// Whatever hangs where: all of the panel is on the sheets, each reaches under the next by 5 mm and
// shows something of its own, and no seam has moved where there is nothing to avoid.
TEST(QuietSeams, KeepThePanelWholeAndTheFlaps)
{
    std::mt19937 random(20261129);
    const auto any = [&random](double from, double to) {
        return std::uniform_real_distribution(from, to)(random);
    };
    for (int i = 0; i < 300; ++i) {
        const SizeMm panel{Mm(any(150, 1300)), Mm(any(150, 1300))};
        const Mm overlap(any(5, 30));
        const Result<SheetPlan> plan = planSheets(panel, {kA4, overlap, Mm(7)});
        ASSERT_TRUE(plan.ok());
        EXPECT_EQ(withQuietSeams(*plan, {}).lefts, plan->lefts);
        std::vector<RectMm> pictures;
        for (int k = 0; k < 12; ++k)
            pictures.push_back({Mm(any(0, panel.width.value())),
                Mm(any(0, panel.height.value())),
                Mm(any(10, 300)),
                Mm(any(10, 300))});
        const SheetPlan quiet = withQuietSeams(*plan, with(pictures, i % 2 == 0));
        EXPECT_EQ(quiet.lefts.front(), Mm(0));
        EXPECT_EQ(quiet.tops.front(), Mm(0));
        for (std::size_t c = 1; c < quiet.lefts.size(); ++c) {
            EXPECT_LE((quiet.lefts[c] - quiet.lefts[c - 1]).value(),
                (plan->part.width - Mm(5)).value() + 1e-6);
            EXPECT_GE((quiet.lefts[c] - quiet.lefts[c - 1]).value(), 30 - 1e-6);
        }
        EXPECT_GE((quiet.lefts.back() + plan->part.width).value(), panel.width.value() - 1e-6);
        EXPECT_GE((quiet.tops.back() + plan->part.height).value(), panel.height.value() - 1e-6);
        for (int column = 0; column + 1 < quiet.columns; ++column) {
            const auto next = static_cast<std::size_t>(column) + 1;
            EXPECT_GE((quiet.area(column, 0).right() - quiet.lefts[next]).value(), 5 - 1e-6);
        }
    }
}

TEST(SheetName, CountsRowsByLettersAndColumnsByNumbers)
{
    EXPECT_EQ(sheetName(0, 0), QStringLiteral("A1"));
    EXPECT_EQ(sheetName(2, 1), QStringLiteral("B3"));
    EXPECT_EQ(sheetName(0, 25), QStringLiteral("Z1"));
    EXPECT_EQ(sheetName(0, 26), QStringLiteral("AA1"));
}

} // namespace wainscot
