// How tall children are, and where their eyes are, by age: CDC growth charts 2000 (US Centers for
// Disease Control and Prevention, stature for age, both sexes). Larger than a class, and measured
// in one country, so it is where to begin and not what a class measures.
#pragma once

#include "core/base/quantity.h"

#include <span>

namespace wainscot::wall {

// The three numbers by which a row of the table gives every percentile.
struct Lms {
    double l = 1; // skewness; negative for some ages
    double m = 0; // the median, centimetres
    double s = 0; // spread
};
struct StatureRow {
    double months = 0; // of age
    Lms boys;
    Lms girls;
};
// Every half year from 36.5 to 150.5 months, and 155.5.
[[nodiscard]] std::span<const StatureRow> statureRows();

// X = M (1 + L S z)^(1/L), or M exp(S z) when L is 0, in centimetres; z in standard deviations.
[[nodiscard]] double centimetresAt(const Lms& row, double z);
inline constexpr double kFifth = -1.6448536269514722; // z of the 5th percentile
inline constexpr double kNinetyFifth = 1.6448536269514722;

// Eyes of those who stand: the lowest 5th percentile, the middle, the highest 95th.
struct EyeBand {
    Mm low;
    Mm middle;
    Mm high;
    const char* source = "";
};
// Of children from one age to another, both in whole years, both sexes together. An age counts
// until the day before the next; ages beyond 3 to 12 count as the nearest of these. No table of
// children's eye heights was read: 0.92 of the stature is an estimate.
[[nodiscard]] EyeBand childrensEyes(int fromYears, int toYears);
[[nodiscard]] EyeBand grownUpsEyes();

} // namespace wainscot::wall
