#include "layout/engine/cost.h"

#include <cmath>

namespace wainscot::engine {

Cost toCost(double units)
{
    const double scaled = units * kUnit + 0.5;
    if (scaled >= double(kNever))
        return kNever;
    const Cost cut = Cost(scaled); // towards zero; the next line makes it the floor
    return double(cut) > scaled ? cut - 1 : cut;
}

double steadyLog(double x)
{
    constexpr double kLn2 = 0.693147180559945309417;
    constexpr double kHalfRoot = 0.707106781186547524401;
    constexpr double kParts[] = {
        1.0 / 17, 1.0 / 15, 1.0 / 13, 1.0 / 11, 1.0 / 9, 1.0 / 7, 1.0 / 5, 1.0 / 3, 1.0};
    int exponent = 0;
    double mantissa = std::frexp(x, &exponent); // exact; 0.5 <= mantissa < 1
    if (mantissa < kHalfRoot) {
        mantissa *= 2;
        --exponent;
    }
    // ln m = 2 artanh((m - 1) / (m + 1)); the argument stays below 0.172.
    const double z = (mantissa - 1) / (mantissa + 1);
    const double square = z * z;
    double sum = 0;
    for (const double part : kParts)
        sum = sum * square + part;
    return 2 * z * sum + exponent * kLn2;
}

} // namespace wainscot::engine
