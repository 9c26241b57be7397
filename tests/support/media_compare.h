// How far two pictures lie apart.
#pragma once

#include <QImage>

#include <algorithm>
#include <cstdlib>

namespace wainscot::test {

[[nodiscard]] inline int difference(QRgb a, QRgb b)
{
    return std::max({std::abs(qRed(a) - qRed(b)),
        std::abs(qGreen(a) - qGreen(b)),
        std::abs(qBlue(a) - qBlue(b))});
}

// The largest difference in the middles of the four quarters; the pictures may differ in size.
[[nodiscard]] inline int worstQuarterDifference(const QImage& a, const QImage& b)
{
    int worst = 0;
    for (const double x : {0.25, 0.75}) {
        for (const double y : {0.25, 0.75}) {
            const auto at = [&](const QImage& image) {
                return image.pixel(int(x * image.width()), int(y * image.height()));
            };
            worst = std::max(worst, difference(at(a), at(b)));
        }
    }
    return worst;
}

[[nodiscard]] inline double meanDifference(const QImage& a, const QImage& b)
{
    if (a.size() != b.size())
        return 255;
    double sum = 0;
    for (int y = 0; y < a.height(); ++y) {
        for (int x = 0; x < a.width(); ++x)
            sum += difference(a.pixel(x, y), b.pixel(x, y));
    }
    return sum / (double(a.width()) * a.height());
}

} // namespace wainscot::test
