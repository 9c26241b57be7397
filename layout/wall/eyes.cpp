#include "layout/wall/eyes.h"

#include <array>

namespace wainscot::wall {

namespace {

// No measured table of children's eye heights was at hand: 0.92 of the mean stature.
constexpr auto kChildren =
    "0.92 x mean stature of both sexes, CDC growth charts 2000 (an estimate)";
constexpr auto kAdults =
    "mean of British men (1630 mm) and women (1505 mm), floor to inner corner of the eye";
constexpr auto kSeated = "common practice, no source";

constexpr std::array<EyesPreset, 5> kEyes{
    EyesPreset{"three", Mm(870), kChildren},
    EyesPreset{"five", Mm(1000), kChildren},
    EyesPreset{"eight", Mm(1180), kChildren},
    EyesPreset{"adult", Mm(1570), kAdults},
    EyesPreset{"seated", Mm(1200), kSeated},
};

constexpr auto kUsual = "one arcminute: the definition of decimal acuity 1";
constexpr auto kDin = "the steps of DIN 1450:2013-04 (0.7; type x 1.4 for 0.5, x 1.75 for 0.4)";

constexpr std::array<SightPreset, 4> kSights{
    SightPreset{"usual", 1.0, kUsual},
    SightPreset{"somewhat weaker", 0.7, kDin},
    SightPreset{"weaker", 0.5, kDin},
    SightPreset{"much weaker", 0.4, kDin},
};

} // namespace

std::span<const EyesPreset> eyesPresets()
{
    return kEyes;
}

std::span<const SightPreset> sightPresets()
{
    return kSights;
}

} // namespace wainscot::wall
