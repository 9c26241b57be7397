#include "layout/screen/blur.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace wainscot {

namespace {

using Light = std::array<float, 3>;

double toLight(double value)
{
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

double fromLight(double light)
{
    return light <= 0.0031308 ? light * 12.92 : 1.055 * std::pow(light, 1 / 2.4) - 0.055;
}

const std::array<float, 256>& lights()
{
    static const auto table = [] {
        std::array<float, 256> made{};
        for (std::size_t i = 0; i < made.size(); ++i)
            made[i] = float(toLight(double(i) / 255));
        return made;
    }();
    return table;
}

// A value of light in 4,096 steps back to one of 256.
uchar toByte(float light)
{
    static const auto table = [] {
        std::array<uchar, 4097> made{};
        for (std::size_t i = 0; i < made.size(); ++i)
            made[i] = uchar(std::lround(fromLight(double(i) / 4096) * 255));
        return made;
    }();
    return table[std::size_t(std::lround(std::clamp(light, 0.0F, 1.0F) * 4096))];
}

// One half of the bell, the middle first; all of it sums to 1.
std::vector<float> bell(double sigma)
{
    std::vector<float> half;
    double sum = 0;
    const int reach = std::max(1, int(std::ceil(sigma * 3)));
    for (int i = 0; i <= reach; ++i) {
        const double weight = std::exp(-i * i / (2 * sigma * sigma));
        half.push_back(float(weight));
        sum += i == 0 ? weight : 2 * weight;
    }
    for (float& weight : half)
        weight = float(weight / sum);
    return half;
}

// Blurs `count` pixels from `at`, each `step` after the one before.
void blurLine(Light* at, int count, std::ptrdiff_t step, const std::vector<float>& half)
{
    thread_local std::vector<Light> line;
    line.resize(std::size_t(count));
    for (int i = 0; i < count; ++i)
        line[std::size_t(i)] = at[i * step];
    const auto pixel = [&](int i) -> const Light& {
        return line[std::size_t(std::clamp(i, 0, count - 1))];
    };
    for (int i = 0; i < count; ++i) {
        Light& out = at[i * step];
        for (std::size_t c = 0; c < 3; ++c)
            out[c] = half[0] * pixel(i)[c];
        for (int k = 1; k < int(half.size()); ++k)
            for (std::size_t c = 0; c < 3; ++c)
                out[c] += half[std::size_t(k)] * (pixel(i - k)[c] + pixel(i + k)[c]);
    }
}

} // namespace

QImage blurredLight(const QImage& image, double sigmaPx)
{
    if (image.isNull() || sigmaPx < 0.2)
        return image;
    QImage out = image.convertToFormat(QImage::Format_RGB32);
    const int wide = out.width();
    const int high = out.height();
    std::vector<Light> pixels(std::size_t(wide) * std::size_t(high));
    for (int y = 0; y < high; ++y) {
        const auto* row = reinterpret_cast<const QRgb*>(out.constScanLine(y));
        for (int x = 0; x < wide; ++x)
            pixels[std::size_t(y) * std::size_t(wide) + std::size_t(x)] = {
                lights()[std::size_t(qRed(row[x]))],
                lights()[std::size_t(qGreen(row[x]))],
                lights()[std::size_t(qBlue(row[x]))]};
    }
    const std::vector<float> half = bell(sigmaPx);
    for (int y = 0; y < high; ++y)
        blurLine(&pixels[std::size_t(y) * std::size_t(wide)], wide, 1, half);
    for (int x = 0; x < wide; ++x)
        blurLine(&pixels[std::size_t(x)], high, wide, half);
    for (int y = 0; y < high; ++y) {
        auto* row = reinterpret_cast<QRgb*>(out.scanLine(y));
        for (int x = 0; x < wide; ++x) {
            const Light& light = pixels[std::size_t(y) * std::size_t(wide) + std::size_t(x)];
            row[x] = qRgb(toByte(light[0]), toByte(light[1]), toByte(light[2]));
        }
    }
    return out;
}

} // namespace wainscot
