#include "layout/paper/pdf_syntax.h"

#include <gtest/gtest.h>

#include <clocale>

namespace wainscot::pdf {

TEST(PdfSyntax, WritesNumbersWithoutExponentOrNegativeZero)
{
    EXPECT_EQ(number(0), "0");
    EXPECT_EQ(number(-0.00001), "0");
    EXPECT_EQ(number(1e-7), "0");
    EXPECT_EQ(number(12.5), "12.5");
    EXPECT_EQ(number(-3.10006), "-3.1001");
    EXPECT_EQ(number(0.0042), "0.0042");
    EXPECT_EQ(number(2383.9370078), "2383.937");
}

TEST(PdfSyntax, WritesTheSameNumbersInEveryLocale)
{
    const char* set = std::setlocale(LC_NUMERIC, "de_DE.UTF-8");
    EXPECT_EQ(number(0.25), "0.25");
    if (set != nullptr)
        std::setlocale(LC_NUMERIC, "C");
}

TEST(PdfSyntax, WritesTextBeyondTheFirstPlaneAsSurrogates)
{
    EXPECT_EQ(utf16Hex(QStringLiteral("A\u0627")), "00410627");
    EXPECT_EQ(textString(QString::fromUtf8("\xF0\x9F\x8C\xA7")), "<FEFFD83CDF27>");
}

TEST(PdfSyntax, LaysTransparentColoursOverWhite)
{
    EXPECT_EQ(rgb(0xff0000ff), "0 0 1");
    EXPECT_EQ(rgb(0x00123456), "1 1 1");
    EXPECT_EQ(rgb(0x80000000),
        number(127.0 / 255) + " " + number(127.0 / 255) + " " + number(127.0 / 255));
}

} // namespace wainscot::pdf
