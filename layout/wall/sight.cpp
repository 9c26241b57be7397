#include "layout/wall/sight.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wainscot::wall {

namespace {

constexpr double kArcminutesPerRadian = 180 * 60 / std::numbers::pi;
constexpr double kEasyArcminutes = 16;
constexpr double kLetterArcminutes = 5; // five strokes of one arcminute
constexpr double kSharpEnough = 0.7; // acuity down to which limits for usual sight hold
constexpr double kCyclesPerDegree = 30; // of strokes of one arcminute
constexpr double kThrough = 0.1; // contrast at the limit of resolution

} // namespace

double arcminutesOf(Mm height, PointMm at, const SizeMm& panel, const Standing& standing)
{
    const double across = (at.x - panel.width / 2).value();
    const double above = (standing.middle + panel.height / 2 - at.y - standing.eyes).value();
    const double away = std::hypot(standing.distance.value(), across);
    const double half = height.value() / 2;
    return (std::atan2(above + half, away) - std::atan2(above - half, away)) * kArcminutesPerRadian;
}

double easyFrom(double acuity)
{
    return kEasyArcminutes * std::max(1.0, kSharpEnough / acuity);
}

double goneBelow(double acuity)
{
    return kLetterArcminutes / acuity;
}

Legibility legibilityOf(double capArcminutes, double acuity)
{
    if (capArcminutes < goneBelow(acuity))
        return Legibility::Gone;
    return capArcminutes < easyFrom(acuity) ? Legibility::Effort : Legibility::Easy;
}

double blurArcminutes(double acuity)
{
    // exp(-2 pi^2 s^2 f^2) = a tenth, f in cycles per arcminute
    const double frequency = kCyclesPerDegree * acuity / 60;
    return std::sqrt(-std::log(kThrough) / 2) / (std::numbers::pi * frequency);
}

double addedBlurArcminutes(double acuity, double magnified)
{
    const double wanted = blurArcminutes(acuity) * magnified;
    const double own = blurArcminutes(1);
    return wanted > own ? std::sqrt(wanted * wanted - own * own) : 0;
}

Tangent seen(Mm across, Mm above, const Standing& standing)
{
    // The picture stands upright on the line of sight, which rises or falls to the middle.
    const double rise = (standing.middle - standing.eyes).value();
    const double length = std::hypot(standing.distance.value(), rise);
    const double along = standing.distance.value() / length;
    const double up = rise / length;
    const double height = (above - standing.eyes).value();
    const double depth = standing.distance.value() * along + height * up;
    const double upwards = height * along - standing.distance.value() * up;
    return {across.value() / depth, -upwards / depth};
}

std::array<Tangent, 4> cornersOf(const SizeMm& panel, const Standing& standing)
{
    const Mm half = panel.width / 2;
    const Mm top = standing.middle + panel.height / 2;
    const Mm foot = standing.middle - panel.height / 2;
    return {seen(-half, top, standing),
        seen(half, top, standing),
        seen(half, foot, standing),
        seen(-half, foot, standing)};
}

} // namespace wainscot::wall
