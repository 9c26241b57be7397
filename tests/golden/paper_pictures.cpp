// Pictures in the file: only the pixels that may be seen, each once, at the wanted resolution.
#include "core/media/bake.h"
#include "layout/paper/original_pictures.h"
#include "layout/paper/pdf_file.h"
#include "tests/golden/paper_kit.h"

#include <QDir>
#include <QRegularExpression>
#include <gtest/gtest.h>

namespace wainscot {

using namespace paper_kit;

namespace {

class PaperPictures : public ::testing::Test {
protected:
    QTemporaryDir m_folder;
    PaintedPictures m_pictures;
    QString m_path = m_folder.filePath(QStringLiteral("panel.pdf"));

    PaperReport write(const DisplayList& list, PaperOptions with = options())
    {
        return write(list, m_pictures, with);
    }
    PaperReport write(const DisplayList& list, PictureSource& source, PaperOptions with = options())
    {
        const Result<PaperReport> report = pdf::writePages(m_path, {list}, source, with);
        EXPECT_TRUE(report.ok()) << qPrintable(report.ok() ? QString() : report.error().detail);
        return report.ok() ? *report : PaperReport{};
    }

    struct Listed {
        SizePx size;
        int object = 0;
        int ppi = 0;
        QString colour;
        QString encoding;
    };
    std::vector<Listed> listed()
    {
        std::vector<Listed> images;
        const QStringList lines =
            run(QStringLiteral("pdfimages"), {QStringLiteral("-list"), m_path})
                .split(QLatin1Char('\n'), Qt::SkipEmptyParts);
        for (qsizetype i = 2; i < lines.size(); ++i) {
            // page num type width height color comp bpc enc interp object ID x-ppi y-ppi size ratio
            const QStringList f = lines[i].simplified().split(QLatin1Char(' '));
            images.push_back({{f[3].toInt(), f[4].toInt()},
                f[10].toInt(),
                std::max(f[12].toInt(), f[13].toInt()),
                f[5],
                f[8]});
        }
        return images;
    }

    QList<QImage> extracted()
    {
        const QDir folder(m_folder.path());
        (void)run(QStringLiteral("pdfimages"),
            {QStringLiteral("-j"), m_path, folder.filePath(QStringLiteral("image"))});
        QList<QImage> images;
        for (const QString& name : folder.entryList({QStringLiteral("image*.jpg")}, QDir::Files))
            images << QImage(folder.filePath(name));
        return images;
    }

    // An original on disk, as in a book.
    ClearedPicture original(const QImage& image, RectFraction visible, const char* name)
    {
        EXPECT_TRUE(image.save(m_folder.filePath(QLatin1String(name)), "JPEG", 90));
        ClearedPicture picture;
        picture.id = PictureId(7);
        picture.sha256 = QLatin1String(name);
        picture.format = QStringLiteral("jpeg");
        picture.size = {image.width(), image.height()};
        picture.visible = visible;
        return picture;
    }
};

} // namespace

TEST_F(PaperPictures, AreStoredOnceHoweverOftenTheyArePlaced)
{
    Page page({Mm(400), Mm(300)});
    const ClearedPicture photo = m_pictures.add({3000, 2000});
    page.picture(photo, {Mm(10), Mm(10), Mm(150), Mm(100)});
    page.picture(photo, {Mm(170), Mm(10), Mm(150), Mm(100)});
    page.picture(photo, {Mm(10), Mm(150), Mm(60), Mm(40)}); // smaller: shares the larger's pixels
    const PaperReport report = write(page.list);
    EXPECT_EQ(report.pictures, 1);
    EXPECT_EQ(m_pictures.baked, 1);
    const auto images = listed();
    ASSERT_EQ(images.size(), 3U);
    EXPECT_EQ(images[0].object, images[1].object);
    EXPECT_EQ(images[0].object, images[2].object);
    EXPECT_EQ(images[0].encoding, QStringLiteral("jpeg"));
}

TEST_F(PaperPictures, AreStoredApartWhereTheyAreCroppedOtherwise)
{
    Page page({Mm(400), Mm(300)});
    ClearedPicture photo = m_pictures.add({1200, 800});
    page.picture(photo, {Mm(10), Mm(10), Mm(150), Mm(100)});
    photo.visible = {0, 0, 0.5, 0.5};
    page.picture(photo, {Mm(170), Mm(10), Mm(150), Mm(100)});
    EXPECT_EQ(write(page.list).pictures, 2);
}

TEST_F(PaperPictures, HaveAtMostTheWantedResolution)
{
    Page page({Mm(400), Mm(300)});
    page.picture(m_pictures.add({6000, 4000}), {Mm(10), Mm(10), Mm(152.4), Mm(101.6)});
    page.picture(m_pictures.add({400, 300}), {Mm(200), Mm(10), Mm(101.6), Mm(76.2)});
    write(page.list);
    const auto images = listed();
    ASSERT_EQ(images.size(), 2U);
    EXPECT_EQ(images[0].size, (SizePx{1800, 1200})); // 6 in at 300 ppi
    EXPECT_EQ(images[0].ppi, 300);
    EXPECT_EQ(images[1].size, (SizePx{400, 300})); // never enlarged
    EXPECT_EQ(images[1].ppi, 100);

    PaperOptions coarse = options();
    coarse.maxResolution = DotsPerInch(150);
    write(page.list, coarse);
    EXPECT_EQ(listed()[0].ppi, 150);
}

// The left half is a face that may not be seen; the crop shows the right half.
TEST_F(PaperPictures, HoldNothingOutsideTheirCrop)
{
    QImage image(2400, 1600, QImage::Format_RGB32);
    image.fill(QColor(30, 160, 60));
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < 1200; ++x)
            image.setPixel(x, y, qRgb(250, 20, 20));
    const ClearedPicture photo = original(image, {0.5, 0, 0.5, 1}, "original.jpeg");
    OriginalPictures source(
        [this](const ClearedPicture& picture) { return m_folder.filePath(picture.sha256); });
    Page page({Mm(300), Mm(300)});
    page.picture(photo, {Mm(0), Mm(10), Mm(150), Mm(200)});
    PaperOptions with = options();
    with.bleed = Mm(3);
    write(page.list, source, with);
    const QList<QImage> images = extracted();
    ASSERT_EQ(images.size(), 1);
    ASSERT_GT(images[0].width(), 1000);
    int red = 0;
    for (int y = 0; y < images[0].height(); ++y)
        for (int x = 0; x < images[0].width(); ++x)
            red += qRed(images[0].pixel(x, y)) > 120 ? 1 : 0;
    EXPECT_EQ(red, 0);
}

TEST_F(PaperPictures, PassTheOriginalsDataThroughWhenNothingNeedsChanging)
{
    QImage image(900, 600, QImage::Format_RGB32);
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            image.setPixel(x, y, qRgb(x % 256, y % 256, (x * y) % 256));
    const ClearedPicture photo = original(image, {}, "small.jpeg");
    OriginalPictures source(
        [this](const ClearedPicture& picture) { return m_folder.filePath(picture.sha256); });
    Page page({Mm(300), Mm(300)});
    page.picture(photo, {Mm(10), Mm(10), Mm(225), Mm(150)});
    EXPECT_EQ(write(page.list, source).passedThrough, 1);
    const QList<QImage> images = extracted();
    ASSERT_EQ(images.size(), 1);
    EXPECT_EQ(images[0], QImage(m_folder.filePath(QStringLiteral("small.jpeg"))));
}

// A photo passed through counts by its name, the rest by its bytes: the same content has the same
// number, another photo or another place has another one.
TEST_F(PaperPictures, TellFilesApartByTheirNumber)
{
    QImage image(600, 400, QImage::Format_RGB32);
    image.fill(qRgb(30, 160, 60));
    const ClearedPicture photo = original(image, {}, "one.jpeg");
    const ClearedPicture same = original(image, {}, "two.jpeg"); // as many bytes, another original
    OriginalPictures source(
        [this](const ClearedPicture& picture) { return m_folder.filePath(picture.sha256); });
    const auto numberWith = [&](const ClearedPicture& picture, Mm left) {
        Page page({Mm(300), Mm(300)});
        page.picture(picture, {left, Mm(10), Mm(150), Mm(100)});
        EXPECT_EQ(write(page.list, source).passedThrough, 1);
        static const QRegularExpression form(
            QStringLiteral("/ID \\[<([0-9a-f]{32})><([0-9a-f]{32})>\\]"));
        const auto found = form.match(QString::fromLatin1(contentOf(m_path)));
        EXPECT_TRUE(found.hasMatch());
        EXPECT_EQ(found.captured(1), found.captured(2)) << "written for the first time";
        return found.captured(1);
    };
    const QString first = numberWith(photo, Mm(10));
    EXPECT_FALSE(first.startsWith(QStringLiteral("3141592653"))) << "what stands for a number";
    EXPECT_EQ(numberWith(photo, Mm(10)), first);
    EXPECT_NE(numberWith(photo, Mm(11)), first);
    EXPECT_NE(numberWith(same, Mm(10)), first);
}

TEST_F(PaperPictures, StandUprightInTheirPlace)
{
    Page page({Mm(200), Mm(200)});
    page.picture(m_pictures.add({600, 600}), {Mm(50), Mm(50), Mm(100), Mm(100)});
    write(page.list);
    for (const char* reader : {"pdftoppm", "mutool", "gs"}) {
        const QImage seen = drawn(m_path, QLatin1String(reader), 1, 127); // 5 px per mm
        EXPECT_GT(qRed(seen.pixel(350, 350)), 200) << reader;
        EXPECT_LT(qGreen(seen.pixel(350, 350)), 60) << reader;
        EXPECT_GT(qBlue(seen.pixel(350, 650)), 200) << reader;
        EXPECT_EQ(seen.pixel(245, 350), 0xffffffff) << reader;
        EXPECT_EQ(seen.pixel(755, 350), 0xffffffff) << reader;
    }
}

} // namespace wainscot
