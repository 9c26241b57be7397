#include "core/media/resample.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <numeric>

namespace wainscot {
namespace {

template <class Value> std::vector<std::uint8_t> picture(SizePx size, PixelForm form, Value value)
{
    std::vector<std::uint8_t> pixels;
    for (int y = 0; y < size.height; ++y) {
        for (int x = 0; x < size.width; ++x) {
            for (int c = 0; c < channelsOf(form); ++c)
                pixels.push_back(static_cast<std::uint8_t>(value(x, y, c)));
        }
    }
    return pixels;
}

template <class Value>
std::vector<std::uint8_t> shrunk(SizePx from, SizePx to, PixelForm form, Value value)
{
    auto result = takeAll(*resampled(rowsOf(picture(from, form, value), from, form), to));
    return result ? *result : std::vector<std::uint8_t>();
}

TEST(Resample, KeepsAPlainColourExactly)
{
    for (const PixelForm form : {PixelForm::Grey, PixelForm::Rgb, PixelForm::Cmyk}) {
        for (const SizePx to : {SizePx{1, 1}, SizePx{7, 5}, SizePx{99, 60}}) {
            const auto out =
                shrunk({100, 61}, to, form, [](int, int, int c) { return 40 + 50 * c; });
            ASSERT_EQ(out.size(), std::size_t(to.width * to.height * channelsOf(form)));
            for (std::size_t i = 0; i < out.size(); ++i)
                EXPECT_EQ(out[i], 40 + 50 * int(i % std::size_t(channelsOf(form))));
        }
    }
}

TEST(Resample, KeepsARampInItsPlace)
{
    // A shift of a quarter pixel would show as one level.
    const auto out = shrunk({240, 8}, {60, 2}, PixelForm::Grey, [](int x, int, int) { return x; });
    ASSERT_EQ(out.size(), 120U);
    for (int x = 4; x < 56; ++x)
        EXPECT_NEAR(out[std::size_t(x)], 4 * x + 1.5, 0.51) << x;
}

TEST(Resample, TurnsAFineCheckIntoItsMean)
{
    const auto out = shrunk({200, 200}, {50, 50}, PixelForm::Rgb, [](int x, int y, int) {
        return (x + y) % 2 == 0 ? 0 : 255;
    });
    for (const std::uint8_t value : out)
        EXPECT_NEAR(value, 127.5, 3);
}

TEST(Resample, CountsEverySourcePixel)
{
    // One bright pixel, wherever it lies, must leave the same light behind.
    double least = 1e9;
    double most = 0;
    for (int at = 20; at < 40; ++at) {
        const auto out = shrunk({60, 60}, {9, 9}, PixelForm::Grey, [&](int x, int y, int) {
            return x / 6 == at / 6 && y / 6 == 5 ? 255 : 0;
        });
        const double sum = std::accumulate(out.begin(), out.end(), 0.0);
        least = std::min(least, sum);
        most = std::max(most, sum);
    }
    EXPECT_GT(least, 0);
    EXPECT_LT(most / least, 1.2);
}

} // namespace
} // namespace wainscot
