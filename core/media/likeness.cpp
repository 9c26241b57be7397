#include "core/media/likeness.h"

#include <QImage>

#include <algorithm>
#include <array>
#include <bitset>
#include <cmath>
#include <numeric>

namespace wainscot {

namespace {

constexpr int kSide = 32; // of the means that are transformed
constexpr int kLow = 8; // frequencies kept each way
constexpr int kBlack = 8;
constexpr int kWhite = 247;
// Two pictures of one burst differ in light by more than this only when one is badly exposed.
constexpr int kLostPermille = 60;

using Means = std::array<std::int64_t, std::size_t(kSide) * kSide>;

// Light of the picture, 8 bits a pixel, rows one behind the other.
struct Light {
    int width = 0;
    int height = 0;
    std::vector<std::uint8_t> pixels;
    [[nodiscard]] int at(int x, int y) const
    {
        return pixels[static_cast<std::size_t>(y) * static_cast<std::size_t>(width)
            + static_cast<std::size_t>(x)];
    }
};

Light lightOf(const QImage& image)
{
    Light light{image.width(), image.height(), {}};
    light.pixels.reserve(static_cast<std::size_t>(light.width) * std::size_t(light.height));
    for (int y = 0; y < light.height; ++y) {
        for (int x = 0; x < light.width; ++x) {
            const QRgb colour = image.pixel(x, y);
            // ITU-R BT.601, in 1/256.
            const int sum = 77 * qRed(colour) + 150 * qGreen(colour) + 29 * qBlue(colour);
            light.pixels.push_back(static_cast<std::uint8_t>(sum / 256));
        }
    }
    return light;
}

// Means in 1/16 levels over equal parts; a picture smaller than that repeats pixels.
Means meansOf(const Light& light)
{
    Means means{};
    const auto bounds = [](int part, int size) {
        const int first = part * size / kSide;
        return std::pair(first, std::max(first + 1, (part + 1) * size / kSide));
    };
    for (int v = 0; v < kSide; ++v) {
        const auto [top, bottom] = bounds(v, light.height);
        for (int u = 0; u < kSide; ++u) {
            const auto [left, right] = bounds(u, light.width);
            std::int64_t sum = 0;
            for (int y = top; y < bottom; ++y) {
                for (int x = left; x < right; ++x)
                    sum += light.at(x, y);
            }
            means[static_cast<std::size_t>(v) * kSide + static_cast<std::size_t>(u)] =
                16 * sum / ((bottom - top) * (right - left));
        }
    }
    return means;
}

// cos((2x + 1) f pi / 64) in 1/16384, for x of 32 and f of 8.
const std::array<std::array<std::int64_t, kSide>, kLow>& cosines()
{
    static const auto table = [] {
        std::array<std::array<std::int64_t, kSide>, kLow> made{};
        for (int f = 0; f < kLow; ++f) {
            for (int x = 0; x < kSide; ++x) {
                const double turn = (2 * x + 1) * f * std::acos(-1.0) / (2.0 * kSide);
                made[std::size_t(f)][std::size_t(x)] = std::llround(16384 * std::cos(turn));
            }
        }
        return made;
    }();
    return table;
}

std::uint64_t hashOf(const Light& light)
{
    const Means means = meansOf(light);
    const auto& cosine = cosines();
    std::array<std::array<std::int64_t, kSide>, kLow> across{}; // by frequency, then row
    for (std::size_t f = 0; f < kLow; ++f) {
        for (std::size_t y = 0; y < kSide; ++y) {
            for (std::size_t x = 0; x < kSide; ++x)
                across[f][y] += means[y * kSide + x] * cosine[f][x];
        }
    }
    std::array<std::int64_t, std::size_t(kLow) * kLow> low{};
    for (std::size_t g = 0; g < kLow; ++g) {
        for (std::size_t f = 0; f < kLow; ++f) {
            for (std::size_t y = 0; y < kSide; ++y)
                low[g * kLow + f] += across[f][y] / 16384 * cosine[g][y];
        }
    }
    auto sorted = low;
    const auto middle = sorted.begin() + sorted.size() / 2;
    std::nth_element(sorted.begin(), middle, sorted.end());
    std::uint64_t hash = 0;
    for (std::size_t i = 0; i < low.size(); ++i)
        hash |= std::uint64_t(low[i] > *middle) << i;
    return hash;
}

int sharpnessOf(const Light& light)
{
    std::int64_t sum = 0;
    std::int64_t squares = 0;
    for (int y = 1; y + 1 < light.height; ++y) {
        for (int x = 1; x + 1 < light.width; ++x) {
            const int laplacian = light.at(x - 1, y) + light.at(x + 1, y) + light.at(x, y - 1)
                + light.at(x, y + 1) - 4 * light.at(x, y);
            sum += laplacian;
            squares += std::int64_t(laplacian) * laplacian;
        }
    }
    const std::int64_t count =
        std::int64_t(std::max(0, light.width - 2)) * std::max(0, light.height - 2);
    if (count == 0)
        return 0;
    return static_cast<int>((squares - sum * sum / count) / count);
}

bool isOneBurst(const Picture& a, const Picture& b)
{
    if (!a.look || !b.look || a.kind != b.kind || a.experience != b.experience)
        return false;
    const int bits = differenceOf(*a.look, *b.look);
    if (bits <= kCopyBits)
        return true;
    if (!a.captured || !b.captured)
        return false;
    const qint64 apart = qAbs(a.captured->local.secsTo(b.captured->local));
    return apart <= kBurstSeconds && bits <= kBurstBits;
}

} // namespace

PictureLook lookOf(const QImage& upright)
{
    const Light light = lightOf(upright);
    PictureLook look;
    look.hash = hashOf(light);
    look.sharpness = sharpnessOf(light);
    const auto count = static_cast<std::int64_t>(light.pixels.size());
    const auto share = [&](auto isLost) {
        const auto lost = std::count_if(light.pixels.begin(), light.pixels.end(), isLost);
        return static_cast<int>(1000 * lost / count);
    };
    look.dark = share([](int value) { return value < kBlack; });
    look.bright = share([](int value) { return value > kWhite; });
    look.lightness = static_cast<int>(
        std::accumulate(light.pixels.begin(), light.pixels.end(), std::int64_t(0)) / count);
    return look;
}

int differenceOf(const PictureLook& a, const PictureLook& b)
{
    return static_cast<int>(std::bitset<64>(a.hash ^ b.hash).count());
}

std::map<PictureId, int> burstsOf(const std::vector<const Picture*>& pictures)
{
    std::vector<int> burst(pictures.size());
    std::iota(burst.begin(), burst.end(), 1);
    for (std::size_t a = 0; a < pictures.size(); ++a) {
        for (std::size_t b = 0; b < a; ++b) {
            if (burst[a] != burst[b] && isOneBurst(*pictures[a], *pictures[b]))
                std::replace(burst.begin(), burst.end(), int(burst[a]), int(burst[b]));
        }
    }
    std::map<PictureId, int> numbers;
    for (std::size_t at = 0; at < pictures.size(); ++at) {
        if (std::count(burst.begin(), burst.end(), burst[at]) > 1)
            numbers[pictures[at]->id] = burst[at];
    }
    return numbers;
}

bool isProposedBefore(const Picture& a, const Picture& b)
{
    if (a.stars != b.stars)
        return a.stars > b.stars;
    const PictureLook one = a.look.value_or(PictureLook());
    const PictureLook other = b.look.value_or(PictureLook());
    // In steps, so that a trifle of a highlight does not outweigh sharpness.
    const int lost = (one.dark + one.bright) / kLostPermille;
    const int otherLost = (other.dark + other.bright) / kLostPermille;
    if (lost != otherLost)
        return lost < otherLost;
    if (one.sharpness != other.sharpness)
        return one.sharpness > other.sharpness;
    return a.id < b.id;
}

} // namespace wainscot
