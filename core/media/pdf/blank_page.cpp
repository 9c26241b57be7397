#include "core/media/pdf/blank_page.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <vector>

namespace wainscot {

namespace {

constexpr double kMmPerInch = 25.4;
constexpr double kSpotMm = 0.5;
constexpr double kMarginMm = 3.0;
// Levels of 255. The mean over a spot of a hard pencil's line on copied paper differs by 6 and
// more, that of paper's grain and of JPEG's noise by less than 2. Own measurements, no source.
constexpr int kMarkLevels = 4;
constexpr int kSpotsOfDust = 4; // one square millimetre
// Darker is no paper but paint, or a lid left open: kept.
constexpr int kDarkestPaper = 128;
constexpr int kAround = 12; // spots to each side that tell the paper's tone

// The mean of each channel over every spot, within the margin.
struct Spots {
    int columns = 0;
    int rows = 0;
    std::vector<int> mean; // three for each spot, times 16
};

Spots spotsOf(const QImage& page, double dpi)
{
    const int side = std::max(1, int(std::lround(dpi * kSpotMm / kMmPerInch)));
    const int margin = int(std::lround(dpi * kMarginMm / kMmPerInch));
    // A slip smaller than its margins is looked at whole.
    const bool small = page.width() <= 4 * margin || page.height() <= 4 * margin;
    const int from = small ? 0 : margin;
    Spots spots;
    spots.columns = (page.width() - 2 * from) / side;
    spots.rows = (page.height() - 2 * from) / side;
    if (spots.columns < 1 || spots.rows < 1)
        return {};
    std::vector<int> sums(std::size_t(spots.columns) * 3);
    spots.mean.reserve(sums.size() * std::size_t(spots.rows));
    for (int row = 0; row < spots.rows; ++row) {
        std::fill(sums.begin(), sums.end(), 0);
        for (int y = 0; y < side; ++y) {
            const auto* line =
                reinterpret_cast<const QRgb*>(page.constScanLine(from + row * side + y)) + from;
            for (int x = 0; x < spots.columns * side; ++x) {
                int* sum = sums.data() + std::ptrdiff_t(x / side) * 3;
                sum[0] += qRed(line[x]);
                sum[1] += qGreen(line[x]);
                sum[2] += qBlue(line[x]);
            }
        }
        for (const int sum : sums)
            spots.mean.push_back(sum * 16 / (side * side));
    }
    return spots;
}

// The middle tone of the spots around: a mark is rarer than paper there, or it is seen at its rim.
int toneAround(const Spots& spots, int column, int row, int channel, std::vector<int>& tones)
{
    tones.clear();
    for (int y = std::max(0, row - kAround); y <= std::min(spots.rows - 1, row + kAround); y += 3) {
        for (int x = std::max(0, column - kAround);
             x <= std::min(spots.columns - 1, column + kAround);
             x += 3) {
            tones.push_back(
                spots.mean[(std::size_t(y) * std::size_t(spots.columns) + std::size_t(x)) * 3
                    + std::size_t(channel)]);
        }
    }
    const auto middle = tones.begin() + std::ptrdiff_t(tones.size() / 2);
    std::nth_element(tones.begin(), middle, tones.end());
    return *middle;
}

} // namespace

bool isBlankPage(const QImage& image, double dpi)
{
    const Spots spots = spotsOf(image.convertToFormat(QImage::Format_RGB32), dpi);
    if (spots.mean.empty())
        return false;
    std::vector<int> tones;
    int marks = 0;
    // The tone changes slowly: it is asked for every block of four by four spots.
    for (int row = 0; row < spots.rows; row += 4) {
        for (int column = 0; column < spots.columns; column += 4) {
            int paper[3] = {};
            for (int channel = 0; channel < 3; ++channel)
                paper[channel] = toneAround(spots, column, row, channel, tones);
            if (*std::min_element(paper, paper + 3) < kDarkestPaper * 16)
                return false;
            for (int y = row; y < std::min(row + 4, spots.rows); ++y) {
                for (int x = column; x < std::min(column + 4, spots.columns); ++x) {
                    const int* mean =
                        spots.mean.data() + (std::ptrdiff_t(y) * spots.columns + x) * 3;
                    const bool marked = std::abs(mean[0] - paper[0]) >= kMarkLevels * 16
                        || std::abs(mean[1] - paper[1]) >= kMarkLevels * 16
                        || std::abs(mean[2] - paper[2]) >= kMarkLevels * 16;
                    marks += int(marked);
                }
            }
            if (marks > kSpotsOfDust)
                return false;
        }
    }
    return true;
}

} // namespace wainscot
