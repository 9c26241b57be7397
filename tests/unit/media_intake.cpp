// One look at a file, and at a folder of them.
#include "core/media/exif.h"
#include "core/media/intake.h"
#include "core/media/proxies.h"
#include "core/media/sniff.h"
#include "tests/support/media_compare.h"
#include "tests/support/media_pictures.h"

#include <gtest/gtest.h>

#include <QCryptographicHash>
#include <QDir>
#include <QTemporaryDir>

namespace wainscot {
namespace {

class Intake : public ::testing::Test {
protected:
    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }
    [[nodiscard]] QString folder() const { return m_folder.path(); }
    QString write(const QString& name, const QByteArray& bytes)
    {
        return test::writeFile(path(name), bytes);
    }

private:
    QTemporaryDir m_folder;
};

QByteArray taken(const QByteArray& time, const QByteArray& offset)
{
    test::Tags tags;
    tags.taken = time;
    tags.offset = offset;
    return test::withExif(test::jpegOf(test::fourQuarters()), test::exifTree(tags));
}

TEST_F(Intake, NamesTheOriginalByItsBytes)
{
    const QByteArray bytes = test::jpegOf(test::noisePhoto(200, 100, 1));
    const QString file = write(QStringLiteral("p.jpg"), bytes);
    const auto facts = inspectPicture(file);
    ASSERT_TRUE(facts.ok());
    const QByteArray sum =
        test::outputOf(QStringLiteral("sha256sum"), {file}).left(64); // GNU coreutils
    EXPECT_EQ(facts->sha256.toLatin1(), sum);
    EXPECT_EQ(facts->fileBytes, bytes.size());
    EXPECT_EQ(facts->colour, ColourKind::Untagged);
    EXPECT_TRUE(facts->notes.isEmpty());
    EXPECT_EQ(test::readFile(file), bytes); // untouched
}

TEST_F(Intake, KeepsTheWallClockOfTheCamera)
{
    const auto zoned =
        inspectPicture(write(QStringLiteral("z.jpg"), taken("2026:03:14 09:26:53", "-03:30")));
    ASSERT_TRUE(zoned.ok() && zoned->captured);
    EXPECT_EQ(zoned->captured->local.date(), QDate(2026, 3, 14));
    EXPECT_EQ(zoned->captured->local.time(), QTime(9, 26, 53));
    EXPECT_EQ(zoned->captured->offsetMinutes, -210);

    const auto bare =
        inspectPicture(write(QStringLiteral("b.jpg"), taken("2026:03:14 09:26:53", {})));
    ASSERT_TRUE(bare.ok() && bare->captured);
    EXPECT_EQ(bare->captured->local.time(), QTime(9, 26, 53));
    EXPECT_FALSE(bare->captured->offsetMinutes.has_value());

    const auto blank =
        inspectPicture(write(QStringLiteral("n.jpg"), taken("0000:00:00 00:00:00", {})));
    ASSERT_TRUE(blank.ok());
    EXPECT_FALSE(blank->captured.has_value());
}

TEST(CaptureTimeText, IsReadAsCamerasWriteIt)
{
    EXPECT_EQ(captureTime("2026:03:14 09:26:53", "+05:45")->offsetMinutes, 345);
    EXPECT_EQ(captureTime("2026:03:14 09:26:53", "Z")->offsetMinutes, 0);
    EXPECT_FALSE(captureTime("2026:03:14 09:26:53", "   :  ")->offsetMinutes);
    EXPECT_FALSE(captureTime("    :  :     :  :  ", {}));
    EXPECT_FALSE(captureTime("2026:13:14 09:26:53", {}));
    EXPECT_FALSE(captureTime({}, {}));
}

TEST_F(Intake, ReadsTheTimeThatAnIndependentWriterWrote)
{
    const QString file = write(QStringLiteral("p.jpg"), test::jpegOf(test::fourQuarters()));
    ASSERT_TRUE(test::run(QStringLiteral("exiftool"),
        {QStringLiteral("-overwrite_original"),
            QStringLiteral("-DateTimeOriginal=2025:11:02 16:05:09"),
            QStringLiteral("-OffsetTimeOriginal=+01:00"),
            QStringLiteral("-Orientation#=8"),
            QStringLiteral("-ModifyDate=2026:01:01 00:00:00"),
            file}));
    const auto facts = inspectPicture(file);
    ASSERT_TRUE(facts.ok() && facts->captured);
    EXPECT_EQ(facts->captured->local.date(), QDate(2025, 11, 2));
    EXPECT_EQ(facts->captured->local.time(), QTime(16, 5, 9));
    EXPECT_EQ(facts->captured->offsetMinutes, 60);
    EXPECT_EQ(facts->orientation, 8);
}

TEST_F(Intake, DoesNotTakeAChangeForTheCapture)
{
    const QString file = write(QStringLiteral("p.jpg"), test::jpegOf(test::fourQuarters()));
    ASSERT_TRUE(test::run(QStringLiteral("exiftool"),
        {QStringLiteral("-overwrite_original"),
            QStringLiteral("-ModifyDate=2026:01:01 00:00:00"),
            file}));
    const auto facts = inspectPicture(file);
    ASSERT_TRUE(facts.ok());
    EXPECT_FALSE(facts->captured.has_value());
}

TEST_F(Intake, BelievesBytesNotNames)
{
    const QByteArray jpeg = test::jpegOf(test::fourQuarters());
    const QByteArray png = test::pngOf(test::fourQuarters());
    EXPECT_EQ(inspectPicture(write(QStringLiteral("a.jpg"), png))->format, QStringLiteral("png"));
    EXPECT_EQ(inspectPicture(write(QStringLiteral("a.png"), jpeg))->format, QStringLiteral("jpeg"));
    EXPECT_EQ(
        inspectPicture(write(QStringLiteral("a.heic"), jpeg))->format, QStringLiteral("jpeg"));
    EXPECT_EQ(inspectPicture(write(QStringLiteral("a"), jpeg))->format, QStringLiteral("jpeg"));
}

TEST_F(Intake, ReadsFilesNamedInAnyScript)
{
    const QByteArray jpeg = test::jpegOf(test::fourQuarters());
    const QStringList names{QStringLiteral("水 やま.jpg"),
        QStringLiteral("صورة.jpg"),
        QStringLiteral("Лужа.jpg"),
        QStringLiteral("पानी.jpg"),
        QStringLiteral("🐌.jpg"),
        QStringLiteral("a%20b#?.jpg"),
        QStringLiteral(" lead & 'quote' \".jpg")};
    for (const QString& name : names)
        write(name, jpeg);
    const auto result = inspectFolder(folder());
    ASSERT_TRUE(result.ok());
    ASSERT_EQ(result->files.size(), std::size_t(names.size()));
    for (const FileVerdict& file : result->files) {
        EXPECT_EQ(file.verdict, Verdict::Accepted) << qPrintable(file.says);
        EXPECT_TRUE(names.contains(file.name)) << qPrintable(file.name);
    }
}

TEST_F(Intake, SaysThatOnlyTheFirstOfSeveralPicturesIsUsed)
{
    write(QStringLiteral("a.png"), test::pngOf(test::fourQuarters()));
    write(QStringLiteral("b.png"), test::pngOf(test::fourQuarters().mirrored(true, false)));
    const QString tiff = path(QStringLiteral("pages.tif"));
    ASSERT_TRUE(test::run(QStringLiteral("convert-im6.q16"),
        {path(QStringLiteral("a.png")), path(QStringLiteral("b.png")), tiff}));
    const QString film = path(QStringLiteral("film.webp"));
    ASSERT_TRUE(test::run(QStringLiteral("img2webp"),
        {path(QStringLiteral("a.png")),
            path(QStringLiteral("b.png")),
            QStringLiteral("-o"),
            film}));
    for (const QString& file : {tiff, film}) {
        const auto facts = inspectPicture(file);
        ASSERT_TRUE(facts.ok()) << qPrintable(file);
        ASSERT_EQ(facts->notes.size(), 1) << qPrintable(file);
        EXPECT_EQ(
            facts->notes.first(), QStringLiteral("it holds 2 pictures; only the first is used"));
    }
}

TEST_F(Intake, GivesTheSameWithOneWorkerAndWithTwo)
{
    for (int i = 0; i < 12; ++i) {
        write(QStringLiteral("photo %1.jpg").arg(i),
            test::jpegOf(test::noisePhoto(400 + 16 * i, 300, std::uint32_t(i))));
    }
    write(QStringLiteral("photo 3b.jpg"), "not a picture");
    write(QStringLiteral("photos.csv"), "file,caption\n");
    const auto run = [&](int workers, const QString& cache) {
        const Proxies proxies(path(cache));
        FolderOptions options;
        options.workers = workers;
        options.proxies = &proxies;
        return *inspectFolder(folder(), options);
    };
    const FolderGathering one = run(1, QStringLiteral("one"));
    const FolderGathering two = run(2, QStringLiteral("two"));
    ASSERT_EQ(one.files.size(), 13U);
    ASSERT_EQ(two.files.size(), 13U);
    EXPECT_EQ(one.files[2].name, QStringLiteral("photo 2.jpg")); // 2 before 10
    const Proxies first(path(QStringLiteral("one")));
    const Proxies second(path(QStringLiteral("two")));
    for (std::size_t i = 0; i < one.files.size(); ++i) {
        EXPECT_EQ(one.files[i].name, two.files[i].name);
        EXPECT_EQ(one.files[i].verdict, two.files[i].verdict);
        EXPECT_EQ(one.files[i].says, two.files[i].says);
        EXPECT_EQ(one.files[i].facts.sha256, two.files[i].facts.sha256);
        const QString& sha256 = one.files[i].facts.sha256;
        const PictureRecipe whole = wholePicture({}, one.files[i].facts);
        EXPECT_EQ(test::readFile(first.pathOf(sha256, whole, ProxySize::Screen)),
            test::readFile(second.pathOf(sha256, whole, ProxySize::Screen)));
    }
}

TEST_F(Intake, CountsAndStopsWhenAsked)
{
    for (int i = 0; i < 6; ++i)
        write(QStringLiteral("%1.jpg").arg(i), test::jpegOf(test::fourQuarters()));
    std::atomic<bool> cancel = false;
    std::vector<int> steps;
    FolderOptions options;
    options.workers = 1;
    options.cancel = &cancel;
    options.progress = [&](int done, int total) {
        EXPECT_EQ(total, 6);
        steps.push_back(done);
        cancel = done == 3;
    };
    const auto result = inspectFolder(folder(), options);
    ASSERT_TRUE(result.ok());
    EXPECT_TRUE(result->cancelled);
    EXPECT_EQ(result->files.size(), 3U);
    EXPECT_EQ(steps, (std::vector<int>{1, 2, 3}));
    EXPECT_EQ(inspectFolder(path(QStringLiteral("nowhere"))).error().code, ErrorCode::NotFound);
}

TEST_F(Intake, MakesAndRemakesThumbnailsAndProxies)
{
    const QImage photo = test::noisePhoto(2400, 1800, 9);
    test::Tags tags;
    tags.orientation = 6;
    const QString file =
        write(QStringLiteral("p.jpg"), test::withExif(test::jpegOf(photo), test::exifTree(tags)));
    const Proxies proxies(path(QStringLiteral("cache")));
    const auto facts = inspectPicture(file, &proxies);
    ASSERT_TRUE(facts.ok());
    const PictureRecipe whole = wholePicture(file, *facts);
    const QString& sha256 = facts->sha256;
    EXPECT_EQ(proxies.cached(sha256, whole, ProxySize::Thumbnail).size(), QSize(240, 320));
    EXPECT_EQ(proxies.cached(sha256, whole, ProxySize::Screen).size(), QSize(1200, 1600));
    EXPECT_TRUE(proxies.make(sha256, whole)->wasThere);

    const QString thumbnail = proxies.pathOf(sha256, whole, ProxySize::Thumbnail);
    const QByteArray good = test::readFile(thumbnail);
    QByteArray changed = good;
    changed.replace(changed.size() / 2, 60, QByteArray(60, '\xd9'));
    for (const QByteArray& bad :
        {QByteArray(), QByteArray("junk"), good.left(good.size() / 2), changed}) {
        test::writeFile(thumbnail, bad);
        EXPECT_TRUE(proxies.cached(sha256, whole, ProxySize::Thumbnail).isNull());
        EXPECT_EQ(proxies.picture(sha256, whole, ProxySize::Thumbnail)->size(), QSize(240, 320));
        EXPECT_EQ(test::readFile(thumbnail), good);
    }
    const QImage exact = photo.transformed(QTransform().rotate(90))
                             .scaled(240, 320, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    EXPECT_LT(test::meanDifference(proxies.cached(sha256, whole, ProxySize::Thumbnail), exact), 8);

    proxies.forget(sha256);
    EXPECT_TRUE(proxies.cached(sha256, whole, ProxySize::Screen).isNull());
    EXPECT_TRUE(proxies.cached(sha256, whole, ProxySize::Thumbnail).isNull());
}

} // namespace
} // namespace wainscot
