// The covered area of any wall is what counting its squares gives.
#include "layout/wall/cover.h"

#include <gtest/gtest.h>

#include <random>

namespace wainscot::wall {
namespace {

constexpr int kSquare = 10; // mm; all panels lie on this grid, so counting is exact

RectMm randomPanel(std::mt19937& random, const SizeMm& wall)
{
    const auto upTo = [&random](double mm) {
        return Mm(double(random() % unsigned(mm / kSquare + 1)) * kSquare);
    };
    // Some reach beyond the wall, some have no size.
    return {upTo(wall.width.value() * 1.2) - wall.width * 0.1,
        upTo(wall.height.value() * 1.2) - wall.height * 0.1,
        upTo(900),
        upTo(900)};
}

double counted(const Covered& covered)
{
    double squares = 0;
    for (double y = kSquare / 2.0; y < covered.wall.height.value(); y += kSquare) {
        for (double x = kSquare / 2.0; x < covered.wall.width.value(); x += kSquare) {
            for (const RectMm& panel : covered.panels) {
                if (panel.contains({Mm(x), Mm(y)})) {
                    ++squares;
                    break;
                }
            }
        }
    }
    return squares * kSquare * kSquare;
}

TEST(CoverProperty, IsTheCountOfTheSquares)
{
    for (unsigned seed = 1; seed <= 300; ++seed) {
        std::mt19937 random(seed);
        Covered covered;
        covered.wall = {
            Mm(double(100 * (5 + random() % 30))), Mm(double(100 * (5 + random() % 20)))};
        for (unsigned i = random() % 9; i > 0; --i)
            covered.panels.push_back(randomPanel(random, covered.wall));
        ASSERT_NEAR(coveredAreaMm2(covered), counted(covered), 1e-3) << "seed " << seed;
        ASSERT_GE(coveredShare(covered), 0) << "seed " << seed;
        ASSERT_LE(coveredShare(covered), 1 + 1e-12) << "seed " << seed;
    }
}

} // namespace
} // namespace wainscot::wall
