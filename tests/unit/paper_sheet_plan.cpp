#include "layout/paper/sheets.h"

#include <gtest/gtest.h>

namespace wainscot {

namespace {

constexpr SizeMm kA4{Mm(210), Mm(297)};
constexpr SizeMm kA3{Mm(297), Mm(420)};
constexpr SizeMm kLetter{inches(8.5), inches(11)};

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

TEST(SheetName, CountsRowsByLettersAndColumnsByNumbers)
{
    EXPECT_EQ(sheetName(0, 0), QStringLiteral("A1"));
    EXPECT_EQ(sheetName(2, 1), QStringLiteral("B3"));
    EXPECT_EQ(sheetName(0, 25), QStringLiteral("Z1"));
    EXPECT_EQ(sheetName(0, 26), QStringLiteral("AA1"));
}

} // namespace wainscot
