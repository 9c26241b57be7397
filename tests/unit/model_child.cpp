#include "core/model/child.h"

#include <gtest/gtest.h>

namespace wainscot {

namespace {

BirthDate born(const char* text)
{
    const auto date = birthDateFromText(QString::fromLatin1(text));
    EXPECT_TRUE(date.has_value()) << text;
    return date.value_or(BirthDate{});
}

TEST(BirthDate, ReadsAndWritesWithAndWithoutADay)
{
    EXPECT_EQ(born("2021-04"), (BirthDate{2021, 4, 0}));
    EXPECT_EQ(textOf(born("2021-04")), QStringLiteral("2021-04"));
    EXPECT_EQ(textOf(born(" 2020-02-29 ")), QStringLiteral("2020-02-29"));
}

TEST(BirthDate, RefusesDaysThatDoNotExist)
{
    for (const char* text :
        {"2021-02-29", "2021-13", "2021-00", "2021-4-1", "4.1.2021", "2021", ""})
        EXPECT_FALSE(birthDateFromText(QString::fromLatin1(text)).has_value()) << text;
}

TEST(Age, IsCountedInWholeMonths)
{
    EXPECT_EQ(ageInMonths(born("2021-04-15"), QDate(2025, 10, 14)), 53);
    EXPECT_EQ(ageInMonths(born("2021-04-15"), QDate(2025, 10, 15)), 54);
    EXPECT_EQ(ageInMonths(born("2021-04"), QDate(2025, 10, 1)), 54);
    EXPECT_EQ(ageInMonths(born("2026-01-01"), QDate(2025, 12, 31)), std::nullopt);
}

// CHAT manual (child-language data format): "4;6" is 4 years and 6 months = 54 months.
TEST(Age, IsNotedAsYearsAndMonths)
{
    EXPECT_EQ(ageNotation(54), QStringLiteral("4;6"));
    EXPECT_EQ(ageNotation(35), QStringLiteral("2;11"));
    EXPECT_EQ(ageNotation(72), QStringLiteral("6;0"));
    EXPECT_EQ(ageInYears(71), QStringLiteral("5"));
}

TEST(Name, IsShownAsToldOrByItsFirstWord)
{
    Child child;
    child.name = QStringLiteral(" Mei Tanaka ");
    EXPECT_EQ(displayName(child), QStringLiteral("Mei"));
    child.shownAs = QStringLiteral("Mei T.");
    EXPECT_EQ(displayName(child), QStringLiteral("Mei T."));
}

TEST(Permissions, NotSaidMeansNo)
{
    const Permissions nothingSaid;
    for (const Audience audience : kAudiences) {
        for (const Permission permission : kPermissions) {
            EXPECT_FALSE(nothingSaid.allows(permission, audience));
            EXPECT_TRUE(Permissions::all().allows(permission, audience));
        }
    }
}

TEST(Permissions, EachAnswerHasItsOwnBit)
{
    unsigned all = 0;
    for (const Audience audience : kAudiences) {
        for (const Permission permission : kPermissions) {
            Permissions one;
            one.set(permission, audience, true);
            const unsigned bit = 5U * unsigned(audience) + unsigned(permission);
            EXPECT_EQ(one.bits(), 1U << bit); // written in books: never to change
            EXPECT_EQ(Permissions::fromBits(one.bits()), one);
            all |= one.bits();
        }
    }
    EXPECT_EQ(all, Permissions::all().bits());
}

} // namespace

} // namespace wainscot
