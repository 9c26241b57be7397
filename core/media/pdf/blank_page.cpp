#include "core/media/pdf/blank_page.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstdlib>
#include <vector>

namespace wainscot {

namespace {

constexpr double kMmPerInch = 25.4;
constexpr double kSpotMm = 0.5;
constexpr double kMarginMm = 3.0;
constexpr int kSpotsOfDust = 4; // one square millimetre
constexpr int kAround = 12; // spots to each side that tell the paper's tone
constexpr int kBlock = 4; // that many spots each way share a tone: it changes slowly
constexpr int kFine = 16; // parts of a level

// A mark differs from the paper by six times the page's own grain, but no less than the first and
// no more than the second, in levels of 255: light, then red and blue against it, which JPEG keeps
// less exactly. The line of a hard pencil differs by 8 and more in its spots. Own measurements on
// generated pages, no source.
constexpr std::array<int, 3> kFaintest{4 * kFine, 8 * kFine, 8 * kFine};
constexpr std::array<int, 3> kPlainest{8 * kFine, 16 * kFine, 16 * kFine};
// Darker is no paper but paint, or a lid left open.
constexpr int kDarkestPaper = 128 * kFine;

// Light, red minus light, blue minus light.
using Tone = std::array<std::int16_t, 3>;

struct Spots {
    int columns = 0;
    int rows = 0;
    std::vector<Tone> tones;
    [[nodiscard]] std::size_t at(int column, int row) const
    {
        return std::size_t(row) * std::size_t(columns) + std::size_t(column);
    }
};

// The mean colour of every spot within the margin.
Spots spotsOf(const QImage& page, double dpi)
{
    const int side = std::max(1, int(std::lround(dpi * kSpotMm / kMmPerInch)));
    const int margin = int(std::lround(dpi * kMarginMm / kMmPerInch));
    // A slip smaller than its margins is looked at whole.
    const bool small = page.width() <= 4 * margin || page.height() <= 4 * margin;
    const int from = small ? 0 : margin;
    Spots spots;
    spots.columns = std::max(0, (page.width() - 2 * from) / side);
    spots.rows = std::max(0, (page.height() - 2 * from) / side);
    std::vector<std::array<int, 3>> sums(std::size_t(spots.columns));
    spots.tones.reserve(sums.size() * std::size_t(spots.rows));
    for (int row = 0; row < spots.rows; ++row) {
        std::fill(sums.begin(), sums.end(), std::array<int, 3>{});
        for (int y = 0; y < side; ++y) {
            const auto* line =
                reinterpret_cast<const QRgb*>(page.constScanLine(from + row * side + y)) + from;
            for (int x = 0; x < spots.columns * side; ++x) {
                auto& sum = sums[std::size_t(x / side)];
                sum[0] += qRed(line[x]);
                sum[1] += qGreen(line[x]);
                sum[2] += qBlue(line[x]);
            }
        }
        for (const auto& sum : sums) {
            const auto mean = [&](int total) { return total * kFine / (side * side); };
            const int light = mean(2 * sum[0] + 5 * sum[1] + sum[2]) / 8;
            spots.tones.push_back({std::int16_t(light),
                std::int16_t(mean(sum[0]) - light),
                std::int16_t(mean(sum[2]) - light)});
        }
    }
    return spots;
}

// The middle tone of the spots around: a mark is rarer than paper there, or it is seen at its rim.
Tone toneAround(const Spots& spots, int column, int row, std::vector<std::int16_t>& some)
{
    Tone tone{};
    for (std::size_t part = 0; part < tone.size(); ++part) {
        some.clear();
        for (int y = std::max(0, row - kAround); y <= std::min(spots.rows - 1, row + kAround);
             y += 3) {
            for (int x = std::max(0, column - kAround);
                 x <= std::min(spots.columns - 1, column + kAround);
                 x += 3)
                some.push_back(spots.tones[spots.at(x, y)][part]);
        }
        const auto middle = some.begin() + std::ptrdiff_t(some.size() / 2);
        std::nth_element(some.begin(), middle, some.end());
        tone[part] = *middle;
    }
    return tone;
}

// Turns every tone into how far it is from the paper's. False where there is no paper.
bool takePaperAway(Spots& spots)
{
    const Spots seen = spots;
    std::vector<std::int16_t> some;
    for (int row = 0; row < spots.rows; row += kBlock) {
        for (int column = 0; column < spots.columns; column += kBlock) {
            const Tone paper = toneAround(seen, column, row, some);
            if (paper[0] + std::min({0, int(paper[1]), int(paper[2])}) < kDarkestPaper)
                return false;
            for (int y = row; y < std::min(row + kBlock, spots.rows); ++y) {
                for (int x = column; x < std::min(column + kBlock, spots.columns); ++x) {
                    Tone& tone = spots.tones[spots.at(x, y)];
                    for (std::size_t part = 0; part < tone.size(); ++part)
                        tone[part] = std::int16_t(std::abs(tone[part] - paper[part]));
                }
            }
        }
    }
    return true;
}

// Six times the grain: a median distance of 1 is a standard deviation of 1.48.
int leastMark(const Spots& distances, std::size_t part)
{
    std::vector<std::int16_t> all;
    all.reserve(distances.tones.size());
    for (const Tone& tone : distances.tones)
        all.push_back(tone[part]);
    const auto middle = all.begin() + std::ptrdiff_t(all.size() / 2);
    std::nth_element(all.begin(), middle, all.end());
    return std::clamp(*middle * 9, kFaintest[part], kPlainest[part]);
}

} // namespace

bool isBlankPage(const QImage& image, double dpi)
{
    Spots spots = spotsOf(image.convertToFormat(QImage::Format_RGB32), dpi);
    if (spots.tones.empty() || !takePaperAway(spots))
        return false;
    const std::array<int, 3> least{leastMark(spots, 0), leastMark(spots, 1), leastMark(spots, 2)};
    const auto marks =
        std::count_if(spots.tones.begin(), spots.tones.end(), [&](const Tone& distance) {
            return distance[0] >= least[0] || distance[1] >= least[1] || distance[2] >= least[2];
        });
    return marks <= kSpotsOfDust;
}

} // namespace wainscot
