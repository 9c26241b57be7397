// Near-equal photos: which are one burst, and which of it is proposed.
#include "core/media/intake.h"
#include "core/media/likeness.h"
#include "tests/support/media_pictures.h"

#include <QImage>
#include <QPainter>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include <algorithm>

namespace wainscot {
namespace {

using ::testing::Gt;
using ::testing::Le;
using ::testing::Lt;

// A yard with a puddle, some way along: shapes over a texture, as a camera would see it at 1280.
QImage scene(std::uint32_t seed, int shift = 0)
{
    QImage image = test::noisePhoto(1280, 960, seed).convertToFormat(QImage::Format_RGB32);
    std::uint32_t dice = seed * 2654435761U;
    const auto in = [&](int least, int most) {
        dice = dice * 1664525U + 1013904223U;
        return least + static_cast<int>((dice >> 8) % static_cast<std::uint32_t>(most - least));
    };
    QPainter painter(&image);
    painter.setPen(Qt::NoPen);
    for (int i = 0; i < 9; ++i) {
        painter.setBrush(QColor(in(0, 255), in(0, 255), in(0, 255)));
        const QRect place(in(-100, 1200) + shift, in(-100, 900), in(150, 500), in(120, 400));
        if (i % 2 == 0)
            painter.drawEllipse(place);
        else
            painter.drawRect(place);
    }
    return image;
}

QImage small(const QImage& image)
{
    return image.scaled(kLookSidePx, kLookSidePx, Qt::KeepAspectRatio, Qt::SmoothTransformation);
}

QImage blurred(const QImage& image, int factor)
{
    return image
        .scaled(image.width() / factor,
            image.height() / factor,
            Qt::IgnoreAspectRatio,
            Qt::SmoothTransformation)
        .scaled(image.size(), Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
}

QImage exposed(QImage image, double factor)
{
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QColor colour = image.pixelColor(x, y);
            const auto lit = [&](int value) { return std::min(255, int(value * factor)); };
            image.setPixelColor(
                x, y, QColor(lit(colour.red()), lit(colour.green()), lit(colour.blue())));
        }
    }
    return image;
}

PictureLook look(const QImage& image)
{
    return lookOf(small(image));
}

Picture taken(int id, const QImage& image, int second, int stars = 0)
{
    Picture picture;
    picture.id = PictureId(id);
    picture.experience = ExperienceId(1);
    picture.captured =
        CaptureTime{QDateTime(QDate(2025, 11, 3), QTime(10, 0).addSecs(second)), std::nullopt};
    picture.look = look(image);
    picture.stars = stars;
    return picture;
}

TEST(Likeness, OfOneSceneIsGreaterThanOfTwo)
{
    int widestInside = 0;
    int nearestOutside = 64;
    for (std::uint32_t seed = 1; seed <= 12; ++seed) {
        const QImage image = scene(seed);
        const PictureLook first = look(image);
        for (const QImage& other : {scene(seed, 12),
                 blurred(image, 8),
                 exposed(image, 0.7),
                 exposed(image, 1.25),
                 image.copy(16, 12, 1248, 936)})
            widestInside = std::max(widestInside, differenceOf(first, look(other)));
        nearestOutside = std::min(nearestOutside, differenceOf(first, look(scene(seed + 100))));
        nearestOutside = std::min(nearestOutside, differenceOf(first, look(scene(seed + 1))));
    }
    EXPECT_THAT(widestInside, Le(kBurstBits));
    EXPECT_THAT(nearestOutside, Gt(kBurstBits));
}

TEST(Likeness, FallsWithWhatChanges)
{
    const QImage image = scene(5);
    const PictureLook first = look(image);
    EXPECT_EQ(differenceOf(first, first), 0);
    EXPECT_THAT(
        differenceOf(first, look(scene(5, 6))), Le(differenceOf(first, look(scene(5, 160)))));
    EXPECT_EQ(lookOf(small(image)), lookOf(small(image)));
}

TEST(Likeness, SharpnessFallsWithBlurAndExposureIsMeasured)
{
    const QImage image = scene(7);
    const PictureLook sharp = look(image);
    const PictureLook soft = look(blurred(image, 8));
    const PictureLook softer = look(blurred(image, 20));
    EXPECT_GT(sharp.sharpness, soft.sharpness);
    EXPECT_GT(soft.sharpness, softer.sharpness);
    EXPECT_LT(look(exposed(image, 0.5)).lightness, sharp.lightness);
    EXPECT_GT(look(exposed(image, 2.5)).bright, sharp.bright);
    QImage black(64, 64, QImage::Format_RGB32);
    black.fill(Qt::black);
    EXPECT_EQ(lookOf(black).dark, 1000);
    EXPECT_EQ(lookOf(black).sharpness, 0);
    QImage dot(1, 1, QImage::Format_RGB32);
    dot.fill(Qt::white);
    EXPECT_EQ(lookOf(dot).bright, 1000);
}

TEST(Bursts, AreTakenWithinSecondsAndLookAlike)
{
    const std::vector<Picture> all{taken(1, scene(1), 0),
        taken(2, scene(1, 10), 3),
        taken(3, scene(1, 20), 8), // with 2, not with 1
        taken(4, scene(2), 9), // another scene at the same time
        taken(5, scene(1, 10), 3600), // an hour later, the very same pixels as 2
        taken(6, scene(1, 15), 7200)}; // the same place two hours later
    std::vector<const Picture*> list;
    for (const Picture& one : all)
        list.push_back(&one);
    const auto bursts = burstsOf(list);
    EXPECT_EQ(bursts.at(PictureId(1)), bursts.at(PictureId(2)));
    EXPECT_EQ(bursts.at(PictureId(2)), bursts.at(PictureId(3)));
    EXPECT_EQ(bursts.at(PictureId(2)), bursts.at(PictureId(5)));
    EXPECT_EQ(bursts.count(PictureId(4)), 0U);
}

TEST(Bursts, NeverMixWorkWithPhotosNorExperiences)
{
    Picture photo = taken(1, scene(1), 0);
    Picture work = taken(2, scene(1), 0);
    work.kind = PictureKind::Work;
    Picture elsewhere = taken(3, scene(1), 0);
    elsewhere.experience = ExperienceId(2);
    Picture unseen = taken(4, scene(1), 0);
    unseen.look.reset();
    EXPECT_TRUE(burstsOf({&photo, &work, &elsewhere, &unseen}).empty());
}

TEST(Bursts, ProposeTheSharpAndWellExposedUntilTheTeacherSaysOtherwise)
{
    const QImage image = scene(3);
    const Picture good = taken(3, image, 0);
    const Picture soft = taken(1, blurred(image, 8), 1);
    const Picture burntOut = taken(2, exposed(image, 3), 2);
    EXPECT_TRUE(isProposedBefore(good, soft));
    EXPECT_TRUE(isProposedBefore(good, burntOut));
    EXPECT_FALSE(isProposedBefore(soft, good));
    EXPECT_TRUE(isProposedBefore(taken(1, blurred(image, 8), 1, 1), good)) << "a star decides";
    EXPECT_TRUE(isProposedBefore(taken(1, image, 0), taken(2, image, 0)));
    EXPECT_FALSE(isProposedBefore(good, good));
}

TEST(Likeness, IsMeasuredWhenAPictureIsTakenInAndIsThatOfTheUprightPicture)
{
    const QTemporaryDir folder;
    const QImage image = scene(9);
    const QImage lying = image.transformed(QTransform().rotate(-90));
    const QString upright =
        test::writeFile(folder.filePath(QStringLiteral("a.jpg")), test::jpegOf(image));
    const QString turned = test::writeFile(folder.filePath(QStringLiteral("b.jpg")),
        test::withExif(test::jpegOf(lying), test::exifTree({6, {}, {}, {}})));
    const auto first = inspectPicture(upright);
    const auto other = inspectPicture(turned);
    ASSERT_TRUE(first.ok() && first->look && other.ok() && other->look);
    EXPECT_THAT(differenceOf(*first->look, look(image)), Le(2));
    EXPECT_THAT(differenceOf(*first->look, *other->look), Le(2));
}

// ImageMagick's perceptual hash (seven moments a channel) is another method by other people: both
// must find pictures of one scene nearer than those of two.
TEST(Likeness, OrdersPicturesLikeAnotherProgram)
{
    const QTemporaryDir folder;
    const auto distance = [&](const QString& a, const QString& b) {
        const QByteArray said = test::outputOf(QStringLiteral("sh"),
            {QStringLiteral("-c"),
                QStringLiteral("compare -metric PHASH '%1' '%2' null: 2>&1; true").arg(a, b)});
        return said.trimmed().toDouble();
    };
    for (std::uint32_t seed = 20; seed < 24; ++seed) {
        const auto save = [&](const char* name, const QImage& image) {
            const QString path = folder.filePath(QString::fromLatin1(name));
            EXPECT_TRUE(small(image).save(path, "PNG"));
            return path;
        };
        const QImage image = scene(seed);
        const QString first = save("first.png", image);
        const QString same = save("same.png", exposed(scene(seed, 8), 0.9));
        const QString other = save("other.png", scene(seed + 50));
        EXPECT_THAT(distance(first, same), Lt(distance(first, other))) << "seed " << seed;
        EXPECT_LT(differenceOf(look(image), look(exposed(scene(seed, 8), 0.9))),
            differenceOf(look(image), look(scene(seed + 50))));
    }
}

} // namespace
} // namespace wainscot
