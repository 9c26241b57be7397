#include "core/base/paper_size.h"

#include <cups/cups.h>
#include <cups/pwg.h>

#include <gtest/gtest.h>

namespace wainscot {

namespace {

SizeMm sizeOf(const QString& text)
{
    const auto size = paperSizeFromText(text);
    EXPECT_TRUE(size.ok()) << text.toStdString();
    return size.ok() ? *size : SizeMm{};
}

// libcups gives hundredths of a millimetre.
void expectAsInCups(const QString& name, const pwg_media_t* media)
{
    ASSERT_NE(media, nullptr) << name.toStdString();
    const SizeMm size = sizeOf(name);
    EXPECT_NEAR(size.width.value(), media->width / 100.0, 0.005) << name.toStdString();
    EXPECT_NEAR(size.height.value(), media->length / 100.0, 0.005) << name.toStdString();
}

// ISO 216 and the US sizes as libcups has them.
TEST(PaperSize, IsAsInLibcups)
{
    for (const char* name : {"A0", "A1", "A2", "A3", "A4", "A5", "Letter", "Legal", "Tabloid"})
        expectAsInCups(QString::fromLatin1(name), pwgMediaForPPD(name));
}

TEST(PaperSize, HalvesIntoTheNextOfItsRow)
{
    for (int i = 0; i < 5; ++i) {
        const SizeMm big = sizeOf(QStringLiteral("A%1").arg(i));
        const SizeMm half = sizeOf(QStringLiteral("A%1").arg(i + 1));
        EXPECT_EQ(half.height, big.width);
        EXPECT_EQ(int(half.width.value()), int(big.height.value()) / 2);
    }
}

TEST(PaperSize, MayBeAMeasureAndStandsUpright)
{
    EXPECT_EQ(sizeOf(QStringLiteral("24x36in")), (SizeMm{inches(24), inches(36)}));
    EXPECT_EQ(sizeOf(QStringLiteral("36x24in")), (SizeMm{inches(24), inches(36)}));
    EXPECT_EQ(sizeOf(QStringLiteral("600 \u00d7 900 MM")), (SizeMm{Mm(600), Mm(900)}));
    EXPECT_EQ(sizeOf(QStringLiteral("8.5x11in")), sizeOf(QStringLiteral("letter")));
}

TEST(PaperSize, RefusesWhatNoPanelCanBe)
{
    for (const char* text : {"",
             "A6",
             "A",
             "24x36",
             "0x10mm",
             "10x600mm",
             "600x5081mm",
             "-24x36in",
             "24x36x2in",
             "24xin"}) {
        const auto size = paperSizeFromText(QString::fromLatin1(text));
        ASSERT_FALSE(size.ok()) << text;
        EXPECT_EQ(size.error().code, ErrorCode::WrongUse);
    }
}

TEST(PaperSize, IsNamedEitherWayUp)
{
    EXPECT_EQ(nameOfPaper({Mm(594), Mm(841)}), QStringLiteral("A1"));
    EXPECT_EQ(nameOfPaper({Mm(841), Mm(594)}), QStringLiteral("A1"));
    EXPECT_EQ(nameOfPaper({Mm(600), Mm(900)}), QStringLiteral("600 \u00d7 900 mm"));
}

} // namespace

} // namespace wainscot
