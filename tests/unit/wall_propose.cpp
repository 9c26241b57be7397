// Proposed places on walls that can be worked out by hand.
#include "layout/wall/propose.h"

#include <gtest/gtest.h>

namespace wainscot::wall {
namespace {

constexpr SizeMm kWall{Mm(6000), Mm(2700)};
constexpr SizeMm kPanel{Mm(600), Mm(800)};

TEST(Propose, CentresEqualGapsOnTheEyes)
{
    const auto places = proposePlaces({kWall, {kPanel, kPanel}, {}, Mm(1000)});
    ASSERT_TRUE(places[0] && places[1]);
    EXPECT_EQ(*places[0], (RectMm{Mm(2300), Mm(1300), Mm(600), Mm(800)}));
    EXPECT_EQ(*places[1], (RectMm{Mm(3100), Mm(1300), Mm(600), Mm(800)}));
}

TEST(Propose, KeepsTheDoorClear)
{
    const RectMm door{Mm(250), Mm(650), Mm(950), Mm(2050)};
    const auto places = proposePlaces({kWall, {kPanel, kPanel, kPanel}, {door}, Mm(1000)});
    ASSERT_TRUE(places[0] && places[1] && places[2]);
    EXPECT_EQ(places[0]->x, Mm(2500));
    EXPECT_EQ(places[2]->right(), Mm(4700));
}

TEST(Propose, NarrowsTheGapBeforeItPartsThePanels)
{
    const SizeMm wall{Mm(1300), Mm(2700)};
    const auto close = proposePlaces({wall, {kPanel, kPanel}, {}, Mm(1000)});
    ASSERT_TRUE(close[0] && close[1]);
    EXPECT_EQ(close[1]->x - close[0]->right(), Mm(100));
    const RectMm pillar{Mm(900), Mm(0), Mm(200), Mm(2700)};
    const auto parted = proposePlaces({{Mm(2000), Mm(2700)}, {kPanel, kPanel}, {pillar}, Mm(1000)});
    ASSERT_TRUE(parted[0] && parted[1]);
    EXPECT_EQ(parted[0]->x, Mm(150));
    EXPECT_EQ(parted[1]->x, Mm(1250));
}

TEST(Propose, StaysAboveTheFloorAndLeavesOutWhatDoesNotFit)
{
    const SizeMm tall{Mm(600), Mm(1400)};
    const SizeMm taller{Mm(600), Mm(2800)};
    const auto places = proposePlaces({kWall, {tall, taller}, {}, Mm(500)});
    ASSERT_TRUE(places[0]);
    EXPECT_EQ(places[0]->bottom(), kWall.height);
    EXPECT_FALSE(places[1]);
    EXPECT_TRUE(proposePlaces({kWall, {}, {}, Mm(500)}).empty());
}

} // namespace
} // namespace wainscot::wall
