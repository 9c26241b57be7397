// Whatever the wall: proposed panels stay on it, off what is kept clear, and off each other.
#include "layout/wall/propose.h"

#include <gtest/gtest.h>

#include <random>

namespace wainscot::wall {
namespace {

Mm between(std::mt19937& random, int least, int most)
{
    return Mm(double(least + int(random() % unsigned(most - least + 1))));
}

HangingWish randomWish(std::mt19937& random)
{
    HangingWish wish;
    wish.wall = {between(random, 800, 9000), between(random, 600, 3200)};
    wish.centre = between(random, 0, 2500);
    for (unsigned i = random() % 8; i > 0; --i)
        wish.panels.push_back({between(random, 100, 1200), between(random, 100, 900)});
    for (unsigned i = random() % 5; i > 0; --i) {
        wish.keepClear.push_back({between(random, -300, 9000),
            between(random, -300, 3000),
            between(random, 0, 1200),
            between(random, 0, 2200)});
    }
    return wish;
}

TEST(ProposeProperty, OverlapsNothingAndStaysOnTheWall)
{
    constexpr Mm kClose(1e-6);
    int placed = 0;
    for (unsigned seed = 1; seed <= 2000; ++seed) {
        std::mt19937 random(seed);
        const HangingWish wish = randomWish(random);
        const auto places = proposePlaces(wish);
        ASSERT_EQ(places.size(), wish.panels.size());
        for (std::size_t i = 0; i < places.size(); ++i) {
            if (!places[i])
                continue;
            ++placed;
            const RectMm& here = *places[i];
            ASSERT_EQ(here.size(), wish.panels[i]) << "seed " << seed;
            ASSERT_GE(here.x, -kClose) << "seed " << seed;
            ASSERT_GE(here.y, -kClose) << "seed " << seed;
            ASSERT_LE(here.right(), wish.wall.width + kClose) << "seed " << seed;
            ASSERT_LE(here.bottom(), wish.wall.height + kClose) << "seed " << seed;
            for (const RectMm& zone : wish.keepClear)
                ASSERT_TRUE(intersection(here.grown(-kClose), zone).isEmpty()) << "seed " << seed;
            for (std::size_t j = 0; j < i; ++j) {
                ASSERT_TRUE(!places[j] || places[j]->right() + Mm(50) <= here.x + kClose)
                    << "order and gap, seed " << seed;
            }
        }
    }
    EXPECT_GT(placed, 3000) << "it would be no test without proposals";
}

} // namespace
} // namespace wainscot::wall
