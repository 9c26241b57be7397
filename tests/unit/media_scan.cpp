// A scanned PDF becomes a picture for each page, or says why not.
#include "core/media/scan.h"

#include "core/media/pdf/pdf_pages.h"
#include "tests/support/media_pictures.h"
#include "tests/support/scan_files.h"
#include "tests/support/scan_reading.h"

#include <gmock/gmock.h>

#include <QPainter>

namespace wainscot {
namespace {

using ::testing::SizeIs;

class Scans : public test::ScanReading { };

QRgb at(const QImage& image, double x, double y)
{
    return image.pixel(int(image.width() * x), int(image.height() * y));
}

bool isNear(QRgb colour, QRgb wanted)
{
    return std::abs(qRed(colour) - qRed(wanted)) + std::abs(qGreen(colour) - qGreen(wanted))
        + std::abs(qBlue(colour) - qBlue(wanted))
        < 30;
}

constexpr QRgb kRed = qRgb(255, 0, 0);
constexpr QRgb kGreen = qRgb(0, 255, 0);
constexpr QRgb kBlue = qRgb(0, 0, 255);
constexpr QRgb kYellow = qRgb(255, 255, 0);

// Clockwise from the top left.
void expectCorners(const QImage& image, std::array<QRgb, 4> colours)
{
    EXPECT_TRUE(isNear(at(image, .25, .25), colours[0]));
    EXPECT_TRUE(isNear(at(image, .75, .25), colours[1]));
    EXPECT_TRUE(isNear(at(image, .75, .75), colours[2]));
    EXPECT_TRUE(isNear(at(image, .25, .75), colours[3]));
    EXPECT_TRUE(isNear(at(image, .5, .5), qRgb(255, 255, 255))) << "what nobody painted is paper";
}

TEST_F(Scans, BecomeAPictureForEachPage)
{
    const QString file = write(test::pdfOf({test::cornersPage({595, 842}),
        test::cornersPage({810, 1080}), // an odd size, as phones make it
        test::cornersPage({595, 842}, 90)}));
    const auto count = read(file);
    ASSERT_TRUE(count.ok()) << qPrintable(count.error().detail);
    EXPECT_EQ(*count, 3);
    ASSERT_THAT(told, SizeIs(3));
    EXPECT_EQ(told[2].page.name, QStringLiteral("pile, page 3"));
    EXPECT_EQ(told[0].image.size(), QSize(2065, 2923)) << "an A4 page at 250 dpi";
    EXPECT_EQ(told[1].image.size(), QSize(2812, 3750));
    EXPECT_EQ(told[2].image.size(), QSize(2923, 2065));
    expectCorners(told[0].image, {kRed, kGreen, kYellow, kBlue});
    expectCorners(told[1].image, {kRed, kGreen, kYellow, kBlue});
    expectCorners(told[2].image, {kBlue, kRed, kGreen, kYellow});
    for (const test::Told& one : told) {
        EXPECT_FALSE(QFile::exists(one.page.path)) << "nothing of it stays behind";
        EXPECT_TRUE(one.page.why.isEmpty());
    }
}

TEST_F(Scans, OfACopierKeepWhatIsOnThem)
{
    const QString colour =
        test::writeFile(path(QStringLiteral("c.jpg")), test::jpegOf(test::fourQuarters(1280, 640)));
    // One bit a pixel, packed as a fax is (CCITT group 4), as copiers do with writing.
    QImage drawing(800, 600, QImage::Format_RGB32);
    drawing.fill(Qt::white);
    QPainter(&drawing).fillRect(100, 100, 300, 400, Qt::black);
    const QString png = test::writeFile(path(QStringLiteral("d.png")), test::pngOf(drawing));
    const QString fax = path(QStringLiteral("d.tif"));
    ASSERT_TRUE(test::run(QStringLiteral("convert"),
        {png,
            QStringLiteral("-monochrome"),
            QStringLiteral("-compress"),
            QStringLiteral("Group4"),
            fax}));
    const QString file = path(QStringLiteral("copier.pdf"));
    ASSERT_TRUE(test::writeScan(file, {colour, fax}));
    ASSERT_TRUE(test::readFile(file).contains("CCITTFaxDecode"));
    ASSERT_TRUE(read(file).ok());
    ASSERT_THAT(told, SizeIs(2));
    EXPECT_TRUE(isNear(at(told[0].image, .25, .25), qRgb(220, 30, 30)));
    EXPECT_TRUE(isNear(at(told[0].image, .75, .75), qRgb(230, 220, 40)));
    EXPECT_EQ(told[1].image.format(), QImage::Format_Grayscale8) << "grey pages are kept grey";
    EXPECT_LT(qGray(at(told[1].image, .3, .5)), 20);
    EXPECT_GT(qGray(at(told[1].image, .7, .5)), 235);
}

TEST_F(Scans, LeaveTitleAndAuthorBehind)
{
    const QByteArray secret = "Wren Halloway 4711";
    const QString own = write(test::pdfOf({test::cornersPage({595, 842})}, secret));
    ASSERT_TRUE(test::readFile(own).contains(secret));
    const QString picture = test::writeFile(path(QStringLiteral("c.jpg")),
        test::withSegment(test::jpegOf(test::fourQuarters()), 0xfe, secret));
    const QString made = path(QStringLiteral("made.pdf"));
    ASSERT_TRUE(test::writeScan(made,
        {picture},
        {QStringLiteral("--title"),
            QString::fromLatin1(secret),
            QStringLiteral("--author"),
            QString::fromLatin1(secret)}));
    for (const QString& file : {own, made}) {
        ASSERT_TRUE(read(file).ok());
        ASSERT_THAT(told, SizeIs(1));
        EXPECT_FALSE(told[0].bytes.contains("Wren"));
        EXPECT_FALSE(told[0].bytes.contains("4711"));
        // An independent reader finds nothing but the picture's own shape.
        const QString jpeg = test::writeFile(path(QStringLiteral("out.jpg")), told[0].bytes);
        const QByteArray tags = test::outputOf(QStringLiteral("exiftool"),
            {QStringLiteral("-a"), QStringLiteral("-s"), QStringLiteral("-G0"), jpeg});
        EXPECT_FALSE(tags.isEmpty());
        for (const char* group : {"[EXIF]", "[XMP]", "[IPTC]", "[ICC_Profile]", "Wren", "PDF"})
            EXPECT_FALSE(tags.contains(group)) << group << "\n" << tags.constData();
    }
}

TEST_F(Scans, MayBeCalledAnything)
{
    const QString name = QString::fromUtf8("100%2 \u96e8 %3#?.pdf");
    ASSERT_TRUE(read(test::writeFile(path(name),
                         test::pdfOf({test::cornersPage({300, 200}), test::blankPage()})))
                    .ok());
    ASSERT_THAT(told, SizeIs(2));
    EXPECT_EQ(told[0].page.name, QString::fromUtf8("100%2 \u96e8 %3#?, page 1"));
    EXPECT_EQ(told[1].page.why,
        QString::fromUtf8("100%2 \u96e8 %3#?.pdf, page 2, is blank and was left out."));
}

TEST_F(Scans, GiveTheSameBytesEachTime)
{
    const QString file = write(test::pdfOf({test::cornersPage({400, 300})}));
    ASSERT_TRUE(read(file).ok());
    const QByteArray first = told.at(0).bytes;
    ASSERT_TRUE(read(file).ok());
    EXPECT_FALSE(first.isEmpty());
    EXPECT_EQ(told.at(0).bytes, first);
}

TEST_F(Scans, TellOfPagesThatGiveNoPicture)
{
    // 10 m, as a drawing program may say it by mistake.
    const QString file = write(test::pdfOf({test::cornersPage({400, 300}),
        test::blankPage(),
        test::cornersPage({28346, 28346}),
        test::cornersPage({300, 400})}));
    ASSERT_TRUE(read(file).ok());
    ASSERT_THAT(told, SizeIs(4));
    EXPECT_FALSE(told[0].image.isNull());
    EXPECT_EQ(told[1].page.why, QStringLiteral("pile.pdf, page 2, is blank and was left out."));
    EXPECT_EQ(told[2].page.why,
        QStringLiteral(
            "pile.pdf, page 3, is larger than any paper that is read (10 square metres)."));
    EXPECT_EQ(told[3].image.size(), QSize(1041, 1388));
}

TEST(ScanPageSize, IsBounded)
{
    const auto a4 = pageSizeFor({595.28, 841.89});
    ASSERT_TRUE(a4.has_value());
    EXPECT_DOUBLE_EQ(a4->dpi, 250);
    const auto a0 = pageSizeFor({2384, 3370});
    ASSERT_TRUE(a0.has_value());
    EXPECT_LE(qint64(a0->pixels.width) * a0->pixels.height, kMostScanPixels);
    EXPECT_GT(a0->dpi, 120);
    const auto frieze = pageSizeFor({20'000, 300}); // 7 m
    ASSERT_TRUE(frieze.has_value());
    EXPECT_LE(frieze->pixels.width, kLongestScanSide);
    EXPECT_FALSE(pageSizeFor({28346, 28346}));
    EXPECT_FALSE(pageSizeFor({1e30, 1}));
    EXPECT_FALSE(pageSizeFor({std::nan(""), 10}));
    EXPECT_EQ(pageSizeFor({0, -5})->pixels, (SizePx{3, 3}));
}

} // namespace
} // namespace wainscot
