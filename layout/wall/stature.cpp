#include "layout/wall/stature.h"

#include <QtGlobal>

#include <algorithm>
#include <array>
#include <cmath>

namespace wainscot::wall {

namespace {

// cdc.gov/growthcharts/data/zscore/statage.csv, every sixth row.
constexpr std::array<StatureRow, 21> kRows{
    StatureRow{
        36.5, {-0.390918369, 95.27359106, 0.04053412}, {0.54198094, 94.21335709, 0.042017509}},
    StatureRow{
        42.5, {0.326530126, 99.00254338, 0.040848042}, {0.377878239, 97.6484807, 0.042621565}},
    StatureRow{
        48.5, {0.827636736, 102.5104735, 0.041344257}, {0.225705996, 101.033927, 0.043259907}},
    StatureRow{
        54.5, {1.133652119, 105.8812823, 0.041955723}, {0.075698881, 104.4634511, 0.043816701}},
    StatureRow{
        60.5, {1.266367398, 109.1751441, 0.042593311}, {-0.057729947, 107.9566031, 0.044276588}},
    StatureRow{
        66.5, {1.255402281, 112.4295761, 0.043180513}, {-0.159197885, 111.4875806, 0.044652942}},
    StatureRow{
        72.5, {1.137442868, 115.6608862, 0.043673359}, {-0.219069129, 115.0054978, 0.044963636}},
    StatureRow{
        78.5, {0.954853043, 118.8668123, 0.044069112}, {-0.234772114, 118.4496481, 0.045226249}},
    StatureRow{
        84.5, {0.753244292, 122.0305342, 0.044403374}, {-0.210210748, 121.7616844, 0.045460702}},
    StatureRow{
        90.5, {0.575908038, 125.1259182, 0.044735646}, {-0.15435722, 124.8956114, 0.04569445}},
    StatureRow{
        96.5, {0.455267507, 128.1237104, 0.045127088}, {-0.079283065, 127.8262759, 0.045968169}},
    StatureRow{
        102.5, {0.404778262, 130.9982857, 0.045618459}, {0.002744306, 130.5573839, 0.046340046}},
    StatureRow{
        108.5, {0.415687443, 133.7344759, 0.046217028}, {0.08414848, 133.1303527, 0.04688401}},
    StatureRow{
        114.5, {0.461030578, 136.3342577, 0.046896817}, {0.169805275, 135.634186, 0.047670085}},
    StatureRow{
        120.5, {0.505564115, 138.8234114, 0.047610108}, {0.284748919, 138.2111552, 0.048704503}},
    StatureRow{
        126.5, {0.518588072, 141.2581515, 0.048304259}, {0.46917993, 141.0396832, 0.049812203}},
    StatureRow{
        132.5, {0.487939275, 143.7303663, 0.048937694}, {0.744289752, 144.2609497, 0.050524236}},
    StatureRow{
        138.5, {0.434576385, 146.3665278, 0.049488934}, {1.062474568, 147.8423918, 0.050207825}},
    StatureRow{
        144.5, {0.420919142, 149.3088178, 0.049947823}, {1.303044695, 151.4865636, 0.048599314}},
    StatureRow{
        150.5, {0.531951655, 152.6623878, 0.050273285}, {1.358162799, 154.755501, 0.046198356}},
    StatureRow{
        155.5, {0.757379106, 155.7642086, 0.050350423}, {1.269304678, 156.9644258, 0.044215488}},
};

constexpr double kEyesToStature = 0.92;
constexpr double kMonthsPerYear = 12;
constexpr int kYoungest = 3;
constexpr int kOldest = 12;

Mm eyesOf(double centimetres)
{
    return Mm(centimetres * 10 * kEyesToStature);
}

} // namespace

std::span<const StatureRow> statureRows()
{
    return kRows;
}

double centimetresAt(const Lms& row, double z)
{
    if (row.l == 0)
        return row.m * std::exp(row.s * z);
    return row.m * std::pow(1 + row.l * row.s * z, 1 / row.l);
}

EyeBand childrensEyes(int fromYears, int toYears)
{
    const int youngest = std::clamp(std::min(fromYears, toYears), kYoungest, kOldest);
    const int oldest = std::clamp(std::max(fromYears, toYears), kYoungest, kOldest);
    double low = 0;
    double high = 0;
    double sum = 0;
    int count = 0;
    for (const StatureRow& row : kRows) {
        const double years = row.months / kMonthsPerYear;
        if (years < youngest || years >= oldest + 1)
            continue;
        const double least =
            std::min(centimetresAt(row.boys, kFifth), centimetresAt(row.girls, kFifth));
        low = count == 0 ? least : std::min(low, least);
        high = std::max(
            {high, centimetresAt(row.boys, kNinetyFifth), centimetresAt(row.girls, kNinetyFifth)});
        sum += (row.boys.m + row.girls.m) / 2;
        ++count;
    }
    return {eyesOf(low),
        eyesOf(sum / count),
        eyesOf(high),
        QT_TRANSLATE_NOOP("Says",
            "0.92 x stature, 5th to 95th percentile, CDC growth charts 2000 (an estimate)")};
}

EyeBand grownUpsEyes()
{
    return {Mm(1405),
        Mm(1570),
        Mm(1745),
        QT_TRANSLATE_NOOP("Says",
            "British women, 5th percentile, to men, 95th, floor to inner corner of the eye "
            "(a university's notes on anthropometry)")};
}

} // namespace wainscot::wall
