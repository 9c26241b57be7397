// What a finding measured, in words.
#include "app/ui/kit/finding_mark.h"

#include <QLocale>

#include <gtest/gtest.h>

#include "layout/check/limits.h"

namespace wainscot::ui {
namespace {

Finding measured(double value, std::optional<double> limit, const QString& unit)
{
    Finding finding;
    finding.measured = value;
    finding.limit = limit;
    finding.unit = unit;
    return finding;
}

TEST(FindingMark, SaysSharesAndLengthsWithTheFiguresThatCount)
{
    EXPECT_EQ(measuredInWords(measured(4.25, 7, QStringLiteral("mm"))),
        QStringLiteral("Measured 4.25 mm, the limit here is 7 mm."));
    EXPECT_EQ(measuredInWords(measured(0.041, 0.05, {})),
        QStringLiteral("Measured 0.041, the limit here is 0.05."));
    const QLocale plain(QLocale::English);
    EXPECT_EQ(measuredInWords(measured(15240, std::nullopt, QStringLiteral("mm"))),
        QStringLiteral("Measured %1 mm.").arg(plain.toString(15240)));
    EXPECT_TRUE(measuredInWords({}).isEmpty());
}

TEST(FindingMark, SaysCountsAsSentencesWithOneAndMany)
{
    EXPECT_EQ(measuredInWords(measured(0, 1, QStringLiteral("quotes"))),
        QStringLiteral("There is none; there should be 1 answer."));
    EXPECT_EQ(measuredInWords(measured(60, 55, QStringLiteral("characters"))),
        QStringLiteral("Found 60 characters; 55 is the most here."));
    EXPECT_EQ(measuredInWords(measured(1, 0, QStringLiteral("hyphens"))),
        QStringLiteral("Found 1 hyphen; there should be none."));
    EXPECT_EQ(measuredInWords(measured(4, 8, QStringLiteral("letters"))),
        QStringLiteral("Found 4 letters; there should be 8 or more."));
    EXPECT_EQ(measuredInWords(measured(1.2, 1.25, QStringLiteral("ratio"))),
        QStringLiteral("Measured 1.2 to 1, the limit here is 1.25 to 1."));
    EXPECT_EQ(measuredInWords(measured(60, 73, QStringLiteral("ppi"))),
        QStringLiteral("Measured 60 pixels an inch, the limit here is 73 pixels an inch."));
}

// What the table of limits calls its units is for programs; people read words.
TEST(FindingMark, HasWordsForEveryUnitOfTheTableOfLimits)
{
    const QStringList wordsAlready{{},
        QStringLiteral("mm"),
        QStringLiteral("%"),
        QStringLiteral("rows"),
        QStringLiteral("cap heights")};
    for (const check::LimitRow& row : check::allLimits()) {
        const QString unit = QString::fromLatin1(row.unit);
        if (wordsAlready.contains(unit))
            continue;
        EXPECT_NE(measuredInWords(measured(2, 3, unit)),
            QStringLiteral("Measured 2 %1, the limit here is 3 %1.").arg(unit))
            << row.rule;
    }
}

TEST(FindingMark, KeepsTheWindowsDirectionBehindANameOfTheOther)
{
    Finding finding;
    finding.says = QString::fromUtf8("\u0646\u0648\u0631 was heard.");
    EXPECT_TRUE(finding.says.isRightToLeft()) << "as it would be shown without a mark";
    EXPECT_FALSE(saysInLine(finding).isRightToLeft());
    EXPECT_TRUE(saysInLine(finding).endsWith(finding.says));
}

} // namespace
} // namespace wainscot::ui
