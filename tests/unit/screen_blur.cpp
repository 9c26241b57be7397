#include "layout/screen/blur.h"

#include <cmath>

#include <gmock/gmock.h>

namespace wainscot {
namespace {

double lightOf(QRgb pixel)
{
    const double value = qGreen(pixel) / 255.0;
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

TEST(Blur, LeavesAnEvenPictureAsItIs)
{
    for (const int grey : {0, 1, 40, 128, 254, 255}) {
        QImage even(40, 30, QImage::Format_RGB32);
        even.fill(qRgb(grey, grey, grey));
        EXPECT_EQ(blurredLight(even, 4), even) << grey;
    }
}

TEST(Blur, SpreadsAnEdgeAsTheErrorFunction)
{
    QImage edge(121, 9, QImage::Format_RGB32);
    edge.fill(Qt::black);
    for (int y = 0; y < 9; ++y)
        for (int x = 61; x < 121; ++x)
            edge.setPixel(x, y, qRgb(255, 255, 255));
    const double sigma = 6;
    const QImage seen = blurredLight(edge, sigma);
    for (const int x : {48, 55, 60, 61, 66, 73}) {
        // The edge lies between the pixels 60 and 61.
        const double wanted = 0.5 * (1 + std::erf((x - 60.5) / (sigma * std::sqrt(2.0))));
        EXPECT_NEAR(lightOf(seen.pixel(x, 4)), wanted, 0.02) << x;
    }
}

TEST(Blur, KeepsTheLightOfAPoint)
{
    QImage point(61, 61, QImage::Format_RGB32);
    point.fill(Qt::black);
    for (int y = 28; y < 33; ++y)
        for (int x = 28; x < 33; ++x)
            point.setPixel(x, y, qRgb(255, 255, 255));
    const QImage seen = blurredLight(point, 2);
    double sum = 0;
    for (int y = 0; y < 61; ++y)
        for (int x = 0; x < 61; ++x)
            sum += lightOf(seen.pixel(x, y));
    EXPECT_NEAR(sum, 25, 0.8);
}

TEST(Blur, TakesAPictureThatIsSharpEnoughAsItIs)
{
    EXPECT_TRUE(blurredLight({}, 3).isNull());
    QImage image(3, 3, QImage::Format_RGB32);
    image.fill(Qt::red);
    EXPECT_EQ(blurredLight(image, 0.1), image);
}

} // namespace
} // namespace wainscot
