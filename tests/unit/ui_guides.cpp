// Guides, distances, rulers, alignment: plain numbers.
#include "app/ui/canvas/guides.h"
#include "app/ui/canvas/ruler.h"
#include "app/ui/session/align.h"

#include <gmock/gmock.h>

namespace wainscot::ui {
namespace {

using ::testing::SizeIs;

RectMm box(double x, double y, double width, double height)
{
    return {Mm(x), Mm(y), Mm(width), Mm(height)};
}

TEST(Guides, AreWhereEdgesAndMiddlesMeet)
{
    const auto guides = guidesFor(box(10, 100, 50, 20), {box(10, 10, 30, 20)}, Mm(0.2));
    ASSERT_THAT(guides, SizeIs(1));
    EXPECT_EQ(guides[0].along, Qt::Vertical);
    EXPECT_EQ(guides[0].at, Mm(10));
    EXPECT_EQ(guides[0].from, Mm(10));
    EXPECT_EQ(guides[0].to, Mm(120));
    EXPECT_THAT(guidesFor(box(10, 100, 50, 20), {box(11, 10, 30, 20)}, Mm(0.2)), SizeIs(0));
}

TEST(Guides, DrawALineSharedByThreeOnce)
{
    const auto guides =
        guidesFor(box(10, 100, 50, 20), {box(10, 10, 30, 21), box(10, 200, 20, 33)}, Mm(0.2));
    ASSERT_THAT(guides, SizeIs(1));
    EXPECT_EQ(guides[0].from, Mm(10));
    EXPECT_EQ(guides[0].to, Mm(233));
}

TEST(Guides, SnapTheNearestEdgeAndNothingFurther)
{
    const RectMm snapped =
        snappedToOthers(box(10.8, 53, 50, 20), {box(10, 10, 30, 20), box(300, 300, 9, 9)}, Mm(1));
    EXPECT_EQ(snapped.x, Mm(10));
    EXPECT_EQ(snapped.y, Mm(53));
}

TEST(Distances, AreToTheNearestNeighbourOrThePaper)
{
    const auto distances = distancesFor(
        box(50, 50, 20, 20), {box(10, 55, 25, 5), box(55, 90, 5, 5)}, {Mm(200), Mm(150)});
    ASSERT_THAT(distances, SizeIs(4));
    EXPECT_EQ(distances[0].length(), Mm(15)); // to the piece at the left
    EXPECT_EQ(distances[1].length(), Mm(130)); // to the paper's right
    EXPECT_EQ(distances[2].length(), Mm(50));
    EXPECT_EQ(distances[3].length(), Mm(20));
}

TEST(Rulers, KeepTheirNumbersApart)
{
    for (const bool inches : {false, true}) {
        for (double scale = 0.06; scale < 45; scale *= 1.3) {
            const auto ticks = ticksFor(Mm(841), scale, inches);
            double last = -1000;
            for (const Tick& tick : ticks) {
                if (tick.rank != 0)
                    continue;
                EXPECT_GE((tick.at.value() - last) * scale, 39.9) << scale << ' ' << inches;
                last = tick.at.value();
                EXPECT_FALSE(tick.label.isEmpty());
            }
        }
    }
}

TEST(Rulers, CountInTheirUnit)
{
    const auto millimetres = ticksFor(Mm(100), 1, false);
    EXPECT_EQ(millimetres.front().label, QStringLiteral("0"));
    EXPECT_EQ(millimetres.back().label, QStringLiteral("100"));
    const auto inches = ticksFor(Mm(254), 2, true);
    EXPECT_EQ(inches.back().label, QStringLiteral("10"));
    EXPECT_EQ(lengthText(Mm(12.5), false), QStringLiteral("12.5 mm"));
    EXPECT_EQ(lengthText(Mm(25.4), true), QStringLiteral("1.00 in"));
}

TEST(Align, BringsTheOthersToTheFirst)
{
    const std::vector<RectMm> cells{box(10, 10, 20, 20), box(50, 60, 10, 40)};
    EXPECT_EQ(aligned(cells, Line::Left)[1], box(10, 60, 10, 40));
    EXPECT_EQ(aligned(cells, Line::Centre)[1], box(15, 60, 10, 40));
    EXPECT_EQ(aligned(cells, Line::Right)[1], box(20, 60, 10, 40));
    EXPECT_EQ(aligned(cells, Line::Top)[1], box(50, 10, 10, 40));
    EXPECT_EQ(aligned(cells, Line::Middle)[1], box(50, 0, 10, 40));
    EXPECT_EQ(aligned(cells, Line::Foot)[1], box(50, -10, 10, 40));
    for (const Line line : {Line::Left, Line::Top, Line::Foot})
        EXPECT_EQ(aligned(cells, line)[0], cells[0]);
}

TEST(Spread, KeepsTheOuterTwoAndTheOrderOfWhatIsGiven)
{
    const std::vector<RectMm> cells{box(100, 0, 20, 5), box(0, 0, 10, 5), box(12, 0, 30, 5)};
    const auto even = spread(cells, Qt::Horizontal);
    EXPECT_EQ(even[1].x, Mm(0));
    EXPECT_EQ(even[0].x, Mm(100));
    EXPECT_EQ(even[2].x, Mm(40)); // 10 + 30 room, 30 wide, 30 room
    EXPECT_EQ(spread({cells[0], cells[1]}, Qt::Horizontal)[0], cells[0]);
}

} // namespace
} // namespace wainscot::ui
