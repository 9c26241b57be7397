// The share of a wall that is covered, wall by wall, and how long its runs are.
#include "layout/wall/cover.h"

#include <gmock/gmock.h>

#include <set>
#include <string>

namespace wainscot::wall {
namespace {

constexpr SizeMm kWall{Mm(4000), Mm(2500)};

const CoverLimit& limit(const std::string& name)
{
    for (const CoverLimit& one : coverLimits()) {
        if (one.name == name)
            return one;
    }
    ADD_FAILURE() << "no limit " << name;
    return coverLimits().front();
}

TEST(Cover, FailsAWallThoughTheMeanOfTwoPasses)
{
    const Covered bare{kWall, {{Mm(0), Mm(500), Mm(500), Mm(1000)}}};
    const Covered full{kWall, {{Mm(0), Mm(500), Mm(3500), Mm(1000)}}};
    EXPECT_NEAR(coveredShare(bare), 0.05, 1e-12);
    EXPECT_NEAR(coveredShare(full), 0.35, 1e-12);
    const double mean = (coveredShare(bare) + coveredShare(full)) / 2;
    EXPECT_LE(mean, limit("20").share + 1e-9);
    EXPECT_TRUE(keepsLimit(bare, limit("20")));
    EXPECT_FALSE(keepsLimit(full, limit("20")));
    EXPECT_TRUE(keepsLimit(full, limit("50")));
}

TEST(Cover, TakesTheLimitItselfForKept)
{
    const Covered exact{kWall, {{Mm(100), Mm(100), Mm(2000), Mm(1000)}}};
    EXPECT_TRUE(keepsLimit(exact, limit("20")));
    const Covered over{kWall, {{Mm(100), Mm(100), Mm(2001), Mm(1000)}}}; // 20.01 %
    EXPECT_FALSE(keepsLimit(over, limit("20")));
}

TEST(Cover, CountsWhatOverlapsOnceAndNothingBesideTheWall)
{
    const RectMm panel{Mm(1000), Mm(1000), Mm(1000), Mm(1000)};
    EXPECT_DOUBLE_EQ(coveredAreaMm2({kWall, {panel, panel}}), 1e6);
    EXPECT_DOUBLE_EQ(coveredAreaMm2({kWall, {panel, panel.movedBy(Mm(500), Mm(250))}}), 1.625e6);
    EXPECT_DOUBLE_EQ(coveredAreaMm2({kWall, {panel.movedBy(Mm(2500), Mm(0))}}), 0.5e6);
    EXPECT_DOUBLE_EQ(coveredAreaMm2({kWall, {panel.movedBy(Mm(5000), Mm(0))}}), 0);
    EXPECT_EQ(coveredShare({SizeMm{}, {panel}}), 0);
}

TEST(Cover, JoinsWhatHangsCloserThanTheGap)
{
    const auto panel = [](double left, double width) {
        return RectMm{Mm(left), Mm(900), Mm(width), Mm(600)};
    };
    const SizeMm wall{Mm(9000), Mm(2500)};
    const Runs runs =
        runsOf({wall, {panel(5000, 600), panel(0, 1000), panel(1200, 2000)}}, runLimit().apart);
    EXPECT_EQ(runs.widest, Mm(3200));
    EXPECT_EQ(runs.leastGap, Mm(1800));
    EXPECT_GT(runs.widest, runLimit().widest);
    // A metre is far enough.
    const Runs apart = runsOf({wall, {panel(0, 2500), panel(3500, 2500)}}, runLimit().apart);
    EXPECT_EQ(apart.widest, Mm(2500));
    EXPECT_EQ(apart.leastGap, Mm(1000));
    EXPECT_EQ(runsOf({wall, {}}, runLimit().apart).widest, Mm(0));
}

TEST(Cover, NamesASourceForEveryLimit)
{
    std::set<std::string> names;
    double before = 0;
    for (const CoverLimit& one : coverLimits()) {
        EXPECT_TRUE(names.insert(one.name).second) << one.name;
        EXPECT_THAT(one.source, testing::Not(testing::StrEq("")));
        EXPECT_GE(one.share, before);
        before = one.share;
    }
}

} // namespace
} // namespace wainscot::wall
