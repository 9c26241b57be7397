#include "core/base/length.h"

#include <gtest/gtest.h>

namespace wainscot {

namespace {

double mmOf(const char* text)
{
    const auto length = lengthFromText(QString::fromLatin1(text));
    EXPECT_TRUE(length.ok()) << text;
    return length.ok() ? length->value() : -1;
}

TEST(LengthFromText, KnowsItsUnits)
{
    EXPECT_DOUBLE_EQ(mmOf("1.5m"), 1500);
    EXPECT_DOUBLE_EQ(mmOf("3mm"), 3);
    EXPECT_DOUBLE_EQ(mmOf("2 cm"), 20);
    EXPECT_DOUBLE_EQ(mmOf("59in"), 59 * 25.4); // 1 in = 25.4 mm exactly (NIST SP 811, B.8)
    EXPECT_DOUBLE_EQ(mmOf(" 1,5 M "), 1500);
    EXPECT_DOUBLE_EQ(mmOf("0mm"), 0);
}

TEST(LengthFromText, RefusesWhatItWouldHaveToGuess)
{
    for (const char* text :
        {"", "3", "mm", "-3mm", "3 mm mm", "1e3mm", "3ft", "1.5.2m", "nan mm"}) {
        const auto length = lengthFromText(QString::fromLatin1(text));
        ASSERT_FALSE(length.ok()) << text;
        EXPECT_EQ(length.error().code, ErrorCode::WrongUse);
        EXPECT_EQ(length.error().subject, QString::fromLatin1(text));
    }
}

} // namespace

} // namespace wainscot
