#include "layout/engine/cost.h"

#include <cmath>

namespace wainscot::engine {

Cost toCost(double units)
{
    const double scaled = std::floor(units * kUnit + 0.5);
    return scaled >= double(kNever) ? kNever : Cost(scaled);
}

double steadyLog(double x)
{
    constexpr double kLn2 = 0.693147180559945309417;
    constexpr double kHalfRoot = 0.707106781186547524401;
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
    for (int k = 17; k >= 1; k -= 2)
        sum = sum * square + 1.0 / k;
    return 2 * z * sum + exponent * kLn2;
}

} // namespace wainscot::engine
