// What a treatment does to pixels: covering, straightening, evening out the light.
#include "core/media/bake.h"
#include "core/media/decode.h"
#include "core/media/intake.h"
#include "core/media/proxies.h"
#include "tests/support/media_compare.h"
#include "tests/support/media_pictures.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QPainter>
#include <QTemporaryDir>

#include <cmath>
#include <numbers>

namespace wainscot {
namespace {

class Treat : public ::testing::Test {
protected:
    [[nodiscard]] QString path(const char* name) const
    {
        return m_folder.filePath(QLatin1String(name));
    }
    PictureRecipe recipeOf(const QImage& image)
    {
        const QString file = test::writeFile(path("p.png"), test::pngOf(image));
        const auto facts = inspectPicture(file);
        EXPECT_TRUE(facts.ok());
        return facts ? wholePicture(file, *facts) : PictureRecipe();
    }
    static QImage baked(const PictureRecipe& recipe, SizePx size = {4000, 4000})
    {
        const auto image = bakeImage(recipe, size);
        EXPECT_TRUE(image.ok()) << (image ? "" : qPrintable(image.error().detail));
        return image ? image->convertToFormat(QImage::Format_RGB32) : QImage();
    }

private:
    QTemporaryDir m_folder;
};

// Energy of a region's grey values by frequency, without its mean: what goes through it more than
// `cycles` times in either direction. The region is mirrored (a cosine transform, type II), so that
// its edges add nothing.
struct Energy {
    double all = 0;
    double fine = 0;
};
Energy energyOf(const QImage& image, const QRect& region, int cycles)
{
    constexpr std::size_t n = 64;
    const QImage part =
        image.copy(region).scaled(int(n), int(n), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    std::vector<double> rows(n * n);
    std::vector<double> basis(n * n);
    for (std::size_t k = 0; k < n; ++k) {
        for (std::size_t i = 0; i < n; ++i) {
            basis[k * n + i] = std::cos(std::numbers::pi * double(k) * (double(i) + 0.5) / n)
                * std::sqrt((k == 0 ? 1.0 : 2.0) / n);
        }
    }
    for (std::size_t y = 0; y < n; ++y) {
        for (std::size_t k = 0; k < n; ++k) {
            for (std::size_t x = 0; x < n; ++x) {
                rows[y * n + k] += qGray(part.pixel(int(x), int(y))) * basis[k * n + x];
            }
        }
    }
    Energy energy;
    for (std::size_t k = 0; k < n; ++k) {
        for (std::size_t l = 0; l < n; ++l) {
            double sum = 0;
            for (std::size_t y = 0; y < n; ++y)
                sum += rows[y * n + k] * basis[l * n + y];
            if (k + l == 0)
                continue;
            energy.all += sum * sum;
            // The k-th cosine goes through k/2 cycles.
            if (int(k) > 2 * cycles || int(l) > 2 * cycles)
                energy.fine += sum * sum;
        }
    }
    return energy;
}

// Something with eyes and a mouth, and much grain.
QImage faces()
{
    QImage image = test::noisePhoto(480, 360, 5).convertToFormat(QImage::Format_RGB32);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    for (const QPoint at : {QPoint(200, 150), QPoint(400, 260)}) {
        painter.setBrush(QColor(220, 170, 140, 200));
        painter.drawEllipse(at, 60, 75);
        painter.setBrush(QColor(30, 20, 20));
        painter.drawEllipse(at + QPoint(-22, -15), 8, 6);
        painter.drawEllipse(at + QPoint(22, -15), 8, 6);
        painter.drawEllipse(at + QPoint(0, 35), 22, 7);
    }
    return image;
}

constexpr RectFraction kFace{140.0 / 480, 75.0 / 360, 120.0 / 480, 150.0 / 360};
const QRect kFacePx(140, 75, 120, 150);

TEST_F(Treat, CoveringLeavesNothingToRecognise)
{
    const QImage before = faces();
    PictureRecipe recipe = recipeOf(before);
    const Energy source = energyOf(before, kFacePx, 4);
    ASSERT_GT(source.fine, 0.05 * source.all);
    for (const Cover cover : {Cover::Blur, Cover::Mosaic, Cover::Flat}) {
        recipe.treatment.covered = {{kFace, cover}};
        const QImage after = baked(recipe);
        const Energy left = energyOf(after, kFacePx, 4);
        EXPECT_LE(left.fine, 0.02 * source.fine) << int(cover);
        EXPECT_LE(left.fine, 0.02 * std::max(left.all, 1000.0)) << int(cover);
        // Nothing else changes, two mixed pixels around the region apart.
        for (int y = 0; y < before.height(); ++y) {
            for (int x = 0; x < before.width(); ++x) {
                if (!kFacePx.adjusted(-3, -3, 3, 3).contains(x, y)) {
                    ASSERT_EQ(after.pixel(x, y), before.pixel(x, y)) << x << "," << y;
                }
            }
        }
    }
}

TEST_F(Treat, AnOvalLeavesTheCornersOfItsBox)
{
    const QImage before = faces();
    PictureRecipe recipe = recipeOf(before);
    recipe.treatment.covered = {{kFace, Cover::Flat, true}};
    const QImage after = baked(recipe);
    for (const QPoint corner : {kFacePx.topLeft(), kFacePx.topRight(), kFacePx.bottomLeft()})
        EXPECT_EQ(after.pixel(corner), before.pixel(corner));
    // All of the ellipse is one colour.
    const QPointF middle = QRectF(kFacePx).center();
    const QRgb colour = after.pixel(middle.toPoint());
    for (int y = kFacePx.top(); y <= kFacePx.bottom(); ++y) {
        for (int x = kFacePx.left(); x <= kFacePx.right(); ++x) {
            if (std::hypot((x + 0.5 - middle.x()) / 60, (y + 0.5 - middle.y()) / 75) <= 1) {
                ASSERT_EQ(after.pixel(x, y), colour) << x << "," << y;
            }
        }
    }
    // Cut by the edge of what is shown, nothing of it is left open either.
    recipe.visible = {0, 0, 200.0 / 480, 1};
    const QImage part = baked(recipe);
    for (int y = 80; y < 220; ++y)
        ASSERT_EQ(part.pixel(199, y), after.pixel(199, y)) << y;
}

// Of two pictures that differ in the covered region alone and have the same means there, every
// output is the same: it tells nothing else of what was there.
TEST_F(Treat, WhatIsCoveredIsTheSameWhateverWasThere)
{
    const QImage first = faces();
    QImage second = first;
    for (int y = kFacePx.top(); y <= kFacePx.bottom(); ++y) {
        for (int x = kFacePx.left(); x <= kFacePx.right(); ++x) {
            // Each third mirrored in itself keeps its mean.
            const int third = kFacePx.left() + (x - kFacePx.left()) / 40 * 40;
            second.setPixel(x, y, first.pixel(2 * third + 39 - x, y));
        }
    }
    ASSERT_NE(first, second);
    PictureRecipe one = recipeOf(first);
    one.treatment.covered = {{kFace, Cover::Mosaic}};
    const std::vector<SizePx> sizes{{480, 360}, {320, 240}, {100, 75}, {61, 33}};
    std::vector<QImage> shown;
    shown.reserve(sizes.size());
    for (const SizePx size : sizes)
        shown.push_back(baked(one, size));
    const auto jpeg = bakeJpeg(one, {400, 400});
    PictureRecipe other = recipeOf(second);
    other.treatment = one.treatment;
    for (std::size_t i = 0; i < sizes.size(); ++i)
        EXPECT_EQ(baked(other, sizes[i]), shown[i]) << i;
    EXPECT_EQ(bakeJpeg(other, {400, 400})->bytes, jpeg->bytes);
}

TEST_F(Treat, CopiesForTheScreenAreMadeAnewAndTheOldOnesRemoved)
{
    PictureRecipe recipe = recipeOf(faces());
    const Proxies proxies(path("cache"));
    const QString sha(64, QLatin1Char('a'));
    const QImage open = *proxies.picture(sha, recipe, ProxySize::Screen);
    PictureRecipe covered = recipe;
    covered.treatment.covered = {{kFace, Cover::Flat}};
    const QImage closed = *proxies.picture(sha, covered, ProxySize::Screen);
    EXPECT_GT(test::difference(open.pixel(178, 135), closed.pixel(178, 135)), 60);
    EXPECT_LT(energyOf(closed, kFacePx, 4).fine, 0.02 * energyOf(open, kFacePx, 4).fine);
    EXPECT_LT(
        energyOf(*proxies.picture(sha, covered, ProxySize::Thumbnail), QRect(93, 50, 80, 100), 4)
            .fine,
        0.02 * energyOf(open, kFacePx, 4).fine);
    // What shows the face is gone from the disk.
    EXPECT_TRUE(proxies.cached(sha, recipe, ProxySize::Screen).isNull());
    EXPECT_TRUE(proxies.cached(sha, recipe, ProxySize::Thumbnail).isNull());
    EXPECT_EQ(QDir(path("cache/aa")).entryList(QDir::Files).size(), 2);
    proxies.forget(sha);
    EXPECT_TRUE(QDir(path("cache/aa")).entryList(QDir::Files).isEmpty());
}

// Turned by its EXIF number, a treated picture is the turned treated picture.
TEST_F(Treat, TurningGoesWithEveryTreatment)
{
    PictureRecipe recipe = recipeOf(faces());
    recipe.treatment.covered = {{kFace, Cover::Mosaic}};
    const Corners corners{{{0.12, 0.08}, {0.9, 0.15}, {0.95, 0.92}, {0.05, 0.85}}};
    recipe.treatment.straightening = Straightening{corners, {480, 360}};
    recipe.size = straightenedSize(corners, {480, 360});
    const QImage before = baked(recipe);
    PictureRecipe turned = recipe;
    turned.treatment = quarterTurned(recipe.treatment);
    turned.orientation = quarterTurned(recipe.orientation);
    turned.size = {recipe.size.height, recipe.size.width};
    EXPECT_EQ(straightenedSize(turned.treatment.straightening->corners, {360, 480}), turned.size);
    const QImage after = baked(turned);
    const QImage expected = before.transformed(QTransform().rotate(90));
    ASSERT_EQ(after.size(), expected.size());
    EXPECT_LT(test::meanDifference(after, expected), 0.3);
}

TEST_F(Treat, APartOfATreatedPictureIsThePartOfTheWhole)
{
    PictureRecipe recipe = recipeOf(faces());
    recipe.treatment.covered = {{kFace, Cover::Blur}};
    recipe.treatment.evenLight = true;
    const Corners corners{{{0.12, 0.08}, {0.9, 0.15}, {0.95, 0.92}, {0.05, 0.85}}};
    recipe.treatment.straightening = Straightening{corners, {480, 360}};
    recipe.size = {600, 400};
    const QImage whole = baked(recipe);
    recipe.visible = {0.25, 0.1, 0.5, 0.6};
    const QImage part = baked(recipe);
    ASSERT_EQ(part.size(), QSize(300, 240));
    EXPECT_LT(test::meanDifference(part, whole.copy(150, 40, 300, 240)), 1.5);
}

// A picture of three smooth waves, and what ImageMagick 6.9.11 makes of it:
//   convert p.ppm -virtual-pixel edge -define distort:viewport=400x300+0+0 -distort Perspective
//     '60,30 0,0  430,54 400,0  456,330 400,300  24,300 0,300' o.ppm
struct Taken {
    int x;
    int y;
    QRgb colour;
};
QImage waves()
{
    QImage image(480, 360, QImage::Format_RGB32);
    const auto level = [](double value) { return int(std::lround(std::clamp(value, 0.0, 255.0))); };
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            image.setPixel(x,
                y,
                qRgb(level(128 + 90 * std::sin(x / 23.0) * std::cos(y / 31.0)),
                    level(128 + 80 * std::sin((x + 2 * y) / 41.0)),
                    level(60 + 120 * x / 480.0 + 40 * std::sin(y / 17.0))));
        }
    }
    return image;
}

TEST_F(Treat, StraighteningAgreesWithAnIndependentProgram)
{
    PictureRecipe recipe = recipeOf(waves());
    recipe.treatment.straightening = Straightening{{{{60.0 / 480, 30.0 / 360},
                                                       {430.0 / 480, 54.0 / 360},
                                                       {456.0 / 480, 330.0 / 360},
                                                       {24.0 / 480, 300.0 / 360}}},
        {480, 360}};
    recipe.size = {400, 300};
    const QImage page = baked(recipe);
    ASSERT_EQ(page.size(), QSize(400, 300));
    for (const Taken& taken : std::vector<Taken>{
             {10, 10, qRgb(134, 98, 108)},
             {100, 10, qRgb(132, 93, 120)},
             {200, 10, qRgb(131, 197, 130)},
             {300, 10, qRgb(111, 48, 139)},
             {390, 10, qRgb(146, 179, 148)},
             {10, 80, qRgb(86, 114, 49)},
             {100, 80, qRgb(118, 193, 82)},
             {200, 80, qRgb(206, 49, 120)},
             {300, 80, qRgb(64, 204, 159)},
             {390, 80, qRgb(149, 90, 193)},
             {10, 150, qRgb(147, 170, 85)},
             {100, 150, qRgb(124, 53, 94)},
             {200, 150, qRgb(76, 208, 103)},
             {300, 150, qRgb(181, 55, 116)},
             {390, 150, qRgb(123, 166, 130)},
             {10, 220, qRgb(184, 75, 87)},
             {100, 220, qRgb(114, 205, 122)},
             {200, 220, qRgb(103, 48, 157)},
             {300, 220, qRgb(134, 205, 186)},
             {390, 220, qRgb(126, 74, 206)},
             {10, 290, qRgb(38, 178, 30)},
             {100, 290, qRgb(173, 55, 54)},
             {200, 290, qRgb(197, 205, 87)},
             {300, 290, qRgb(86, 49, 128)},
             {390, 290, qRgb(101, 204, 167)},
         }) {
        EXPECT_LE(test::difference(page.pixel(taken.x, taken.y), taken.colour), 2)
            << taken.x << "," << taken.y;
    }
}

// A sheet with big painted parts: a blue sky over two fifths, a yellow sun, red and green, and
// grey.
QColor sheetAt(double x, double y)
{
    if (std::hypot(x - 0.75, y - 0.2) < 0.12)
        return {240, 215, 40};
    if (y < 0.4)
        return {90, 140, 215};
    if (x > 0.15 && x < 0.35 && y > 0.55 && y < 0.85)
        return {205, 50, 45};
    if (x > 0.45 && x < 0.6 && y > 0.5 && y < 0.8)
        return {60, 140, 70};
    if (x > 0.7 && x < 0.85 && y > 0.6 && y < 0.8)
        return {110, 110, 110};
    return {250, 250, 250};
}

// Warm light from one side, darker towards the corners, with a soft shadow at the foot.
double lightAt(int channel, double x, double y)
{
    const double fall = 1 - 0.5 * x - 0.15 * (x - 0.4) * (x - 0.4) - 0.25 * (y - 0.5) * (y - 0.5);
    const double shadow = 1 - 0.2 / (1 + std::exp((0.85 - y) * 25));
    return fall * shadow * std::array{1.0, 0.93, 0.8}.at(std::size_t(channel));
}

TEST_F(Treat, EvenLightMakesPaperWhiteAndKeepsColours)
{
    QImage photo(600, 450, QImage::Format_RGB32);
    for (int y = 0; y < photo.height(); ++y) {
        for (int x = 0; x < photo.width(); ++x) {
            const double px = (x + 0.5) / photo.width();
            const double py = (y + 0.5) / photo.height();
            const QColor sheet = sheetAt(px, py);
            photo.setPixel(x,
                y,
                qRgb(int(sheet.red() * lightAt(0, px, py)),
                    int(sheet.green() * lightAt(1, px, py)),
                    int(sheet.blue() * lightAt(2, px, py))));
        }
    }
    PictureRecipe recipe = recipeOf(photo);
    recipe.treatment.evenLight = true;
    const QImage page = baked(recipe);
    int worstPaper = 0;
    int worstColour = 0; // of what has paper around it
    double palest = 1; // saturation of any paint, against that on the sheet
    int greyest = 0; // of the paper: how far its channels lie apart
    for (int y = 4; y < page.height(); y += 9) {
        for (int x = 4; x < page.width(); x += 9) {
            const QColor sheet = sheetAt((x + 0.5) / photo.width(), (y + 0.5) / photo.height());
            const QRgb now = page.pixel(x, y);
            const int off = test::difference(now, sheet.rgb());
            if (sheet == QColor(250, 250, 250)) {
                const auto [least, most] = std::minmax({qRed(now), qGreen(now), qBlue(now)});
                greyest = std::max(greyest, most - least);
                worstPaper = std::max(worstPaper, off);
            } else {
                if (y > photo.height() * 0.45)
                    worstColour = std::max(worstColour, off);
                if (sheet.saturationF() > 0.1)
                    palest =
                        std::min<double>(palest, QColor(now).saturationF() / sheet.saturationF());
            }
        }
    }
    EXPECT_LE(worstPaper, 14);
    EXPECT_LE(greyest, 8);
    EXPECT_LE(worstColour, 20);
    EXPECT_GE(palest, 0.9);
}

TEST_F(Treat, EvenLightOfAnEvenSheetChangesLittle)
{
    QImage sheet(300, 200, QImage::Format_RGB32);
    sheet.fill(QColor(250, 250, 250));
    QPainter(&sheet).fillRect(30, 20, 200, 120, QColor(200, 60, 60)); // more than a third
    PictureRecipe recipe = recipeOf(sheet);
    recipe.treatment.evenLight = true;
    EXPECT_LT(test::meanDifference(baked(recipe), sheet), 2);
    // A picture without any paper is not torn apart.
    sheet.fill(QColor(20, 30, 10));
    recipe = recipeOf(sheet);
    recipe.treatment.evenLight = true;
    EXPECT_FALSE(baked(recipe).isNull());
}

TEST_F(Treat, CornersRoundNoPageAreRefused)
{
    PictureRecipe recipe = recipeOf(test::fourQuarters());
    recipe.treatment.straightening =
        Straightening{{{{0.5, 0.5}, {0.5, 0.5}, {0.5, 0.5}, {0.5, 0.5}}}, {128, 64}};
    EXPECT_EQ(bakeImage(recipe, {100, 100}).error().code, ErrorCode::Refused);
}

} // namespace
} // namespace wainscot
