// The published percentiles of stature come back from the table's formula.
#include "layout/wall/stature.h"

#include <gtest/gtest.h>

#include <array>

namespace wainscot::wall {
namespace {

struct Published {
    double months;
    double boys5, boys50, boys95;
    double girls5, girls50, girls95;
};
// Percentiles as the CDC prints them, centimetres.
constexpr std::array<Published, 21> kPublished{
    Published{36.5, 89.20472611, 95.27359106, 101.9323762, 87.80528157, 94.21335709, 100.8275527},
    Published{42.5, 92.4999858, 99.00254338, 105.8060983, 90.95114701, 97.6484807, 104.6443859},
    Published{48.5, 95.58070273, 102.5104735, 109.5219891, 94.04022021, 101.033927, 108.4237579},
    Published{54.5, 98.53958366, 105.8812823, 113.1555037, 97.18028656, 104.4634511, 112.2483051},
    Published{60.5, 101.4523027, 109.1751441, 116.7549954, 100.3890853, 107.9566031, 116.1301284},
    Published{66.5, 104.3690418, 112.4295761, 120.3449993, 103.6367221, 111.4875806, 120.03622},
    Published{72.5, 107.3099116, 115.6608862, 123.9297176, 106.8701003, 115.0054978, 123.9086035},
    Published{78.5, 110.2649049, 118.8668123, 127.4969382, 110.0285133, 118.4496481, 127.6811055},
    Published{84.5, 113.1991118, 122.0305342, 131.0226304, 113.054628, 121.7616844, 131.2935761},
    Published{90.5, 116.0629074, 125.1259182, 134.4762655, 115.9026074, 124.8956114, 134.7038082},
    Published{96.5, 118.8052553, 128.1237104, 137.8267001, 118.5443251, 127.8262759, 137.8974887},
    Published{102.5, 121.3871973, 130.9982857, 141.0483813, 120.9748035, 130.5573839, 140.8967672},
    Published{108.5, 123.7927752, 133.7344759, 144.1277605, 123.2186111, 133.1303527, 143.7674316},
    Published{114.5, 126.035825, 136.3342577, 147.0699143, 125.3393004, 135.634186, 146.6214882},
    Published{120.5, 128.1624542, 138.8234114, 149.9053151, 127.4524005, 138.2111552, 149.6043767},
    Published{126.5, 130.2495672, 141.2581515, 152.6960355, 129.7346372, 141.0396832, 152.8473131},
    Published{132.5, 132.3990267, 143.7303663, 155.5385858, 132.4013028, 144.2609497, 156.3754566},
    Published{138.5, 134.7252055, 146.3665278, 158.5562242, 135.6003795, 147.8423918, 160.0213216},
    Published{144.5, 137.3326017, 149.3088178, 161.8686162, 139.2235689, 151.4865636, 163.4554684},
    Published{150.5, 140.2831346, 152.6623878, 165.5302497, 142.8282787, 154.755501, 166.3618445},
    Published{155.5, 142.9954591, 155.7642086, 168.7922681, 145.4325259, 156.9644258, 168.2723104},
};

TEST(Stature, GivesThePublishedPercentiles)
{
    ASSERT_EQ(statureRows().size(), kPublished.size());
    constexpr double kClose = 1e-6;
    for (std::size_t i = 0; i < kPublished.size(); ++i) {
        const StatureRow& row = statureRows()[i];
        const Published& known = kPublished.at(i);
        ASSERT_EQ(row.months, known.months);
        EXPECT_NEAR(centimetresAt(row.boys, kFifth), known.boys5, kClose) << row.months;
        EXPECT_NEAR(centimetresAt(row.boys, 0), known.boys50, kClose) << row.months;
        EXPECT_NEAR(centimetresAt(row.boys, kNinetyFifth), known.boys95, kClose) << row.months;
        EXPECT_NEAR(centimetresAt(row.girls, kFifth), known.girls5, kClose) << row.months;
        EXPECT_NEAR(centimetresAt(row.girls, 0), known.girls50, kClose) << row.months;
        EXPECT_NEAR(centimetresAt(row.girls, kNinetyFifth), known.girls95, kClose) << row.months;
    }
}

TEST(Stature, HasAnExponentialWhereTheTableIsNotSkewed)
{
    EXPECT_NEAR(centimetresAt({0, 100, 0.04}, 1), 104.08107741923882, 1e-9);
    EXPECT_NEAR(centimetresAt({1e-9, 100, 0.04}, 1), 104.08107741923882, 1e-4);
}

TEST(Stature, GrowsTheEyesWithTheAge)
{
    for (int years = 3; years < 12; ++years) {
        const EyeBand band = childrensEyes(years, years);
        EXPECT_LT(band.low, band.middle);
        EXPECT_LT(band.middle, band.high);
        EXPECT_LT(band.middle, childrensEyes(years + 1, years + 1).middle);
    }
    const EyeBand class4to6 = childrensEyes(4, 6);
    EXPECT_EQ(class4to6.low, childrensEyes(4, 4).low);
    EXPECT_EQ(class4to6.high, childrensEyes(6, 6).high);
    EXPECT_EQ(childrensEyes(6, 4).middle, class4to6.middle);
    EXPECT_EQ(childrensEyes(0, 2).middle, childrensEyes(3, 3).middle);
    // 0.92 of 94.04 cm, the 5th percentile of girls of four.
    EXPECT_NEAR(class4to6.low.value(), 865.2, 0.1);
}

} // namespace
} // namespace wainscot::wall
