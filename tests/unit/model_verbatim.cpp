// A child's words shown in part: which traces an adult's hand must leave.
#include "core/model/verbatim.h"

#include <gtest/gtest.h>

namespace wainscot {
namespace {

const QString kWords =
    QStringLiteral("We put a line so it can't go. And then, um, the water went under it anyway!");

TEST(Verbatim, WordsInFullAreVerbatim)
{
    EXPECT_TRUE(isVerbatim(kWords, kWords));
    EXPECT_TRUE(isVerbatim(QString(kWords).replace(QLatin1Char(' '), QLatin1Char('\n')), kWords));
}

TEST(Verbatim, WhatIsLeftOutNeedsAnEllipsisWhereItWas)
{
    EXPECT_TRUE(isVerbatim(QStringLiteral("We put a line …"), kWords));
    EXPECT_FALSE(isVerbatim(QStringLiteral("We put a line"), kWords));
    EXPECT_TRUE(isVerbatim(QStringLiteral("… the water went under it anyway!"), kWords));
    EXPECT_FALSE(isVerbatim(QStringLiteral("the water went under it anyway!"), kWords));
    EXPECT_TRUE(
        isVerbatim(QStringLiteral("We put a line … the water went under it anyway!"), kWords));
    EXPECT_FALSE(
        isVerbatim(QStringLiteral("We put a line the water went under it anyway!"), kWords));
    EXPECT_TRUE(isVerbatim(QStringLiteral("… a line … water …"), kWords));
}

TEST(Verbatim, WhatAnAdultPutsInStandsInSquareBrackets)
{
    EXPECT_TRUE(isVerbatim(QStringLiteral("We put a line [of chalk] so it can't go. …"), kWords));
    EXPECT_FALSE(isVerbatim(QStringLiteral("We put a line of chalk so it can't go. …"), kWords));
    EXPECT_FALSE(isVerbatim(QStringLiteral("We put a line (of chalk) so it can't go. …"), kWords));
    EXPECT_FALSE(isVerbatim(QStringLiteral("[Nothing of hers]"), kWords));
    EXPECT_FALSE(isVerbatim(QStringLiteral("[a [nested] remark] …"), kWords));
}

TEST(Verbatim, NoWordIsRespelledMovedOrTwice)
{
    EXPECT_FALSE(isVerbatim(QStringLiteral("we put a line …"), kWords));
    EXPECT_FALSE(isVerbatim(QStringLiteral("We put a line so it cannot go. …"), kWords));
    EXPECT_FALSE(isVerbatim(QStringLiteral("… line … put …"), kWords));
    EXPECT_FALSE(isVerbatim(QStringLiteral("We put … put …"), kWords));
    EXPECT_FALSE(isVerbatim(QStringLiteral("We put a li ne …"), kWords));
    EXPECT_FALSE(isVerbatim(QStringLiteral("…"), kWords));
    EXPECT_FALSE(isVerbatim(QString(), kWords));
}

TEST(Verbatim, AChildsOwnMarksAreWordsToo)
{
    const QString words = QStringLiteral("It went … [whoosh] and gone");
    EXPECT_TRUE(isVerbatim(words, words));
    EXPECT_TRUE(isVerbatim(QStringLiteral("It went … gone"), words));
    EXPECT_FALSE(isVerbatim(QStringLiteral("It went [whoosh] and gone"), words));
}

TEST(Verbatim, WritingWithoutSpacesIsComparedLetterByLetter)
{
    const QString words = QStringLiteral("水往下走了，然后不见了。");
    EXPECT_TRUE(isVerbatim(QStringLiteral("水往下走了…"), words));
    EXPECT_FALSE(isVerbatim(QStringLiteral("水往走了…"), words));
}

TEST(Verbatim, TypingOverWordsLeavesTraces)
{
    const auto traced = [](const char* typed) {
        return withTraces(QString::fromUtf8(typed), kWords);
    };
    EXPECT_EQ(
        traced("We put a line so it can't go."), QStringLiteral("We put a line so it can't go. …"));
    EXPECT_EQ(traced("the water went under it anyway!"),
        QStringLiteral("… the water went under it anyway!"));
    EXPECT_EQ(traced("We put a line so it can't go. And then, the water went under it anyway!"),
        QStringLiteral(
            "We put a line so it can't go. And then, … the water went under it anyway!"));
    EXPECT_EQ(traced("We put a chalk line so it can't go."),
        QStringLiteral("We put a [chalk] line so it can't go. …"));
    EXPECT_EQ(traced("Something else"), kWords); // nothing of the child's is left
    EXPECT_EQ(traced(""), kWords);
    EXPECT_EQ(withTraces(kWords, kWords), kWords);
}

TEST(Verbatim, TracesAreTakenUpNotDoubled)
{
    const QString once = withTraces(QStringLiteral("We put a chalk line so it can't go."), kWords);
    EXPECT_EQ(withTraces(once, kWords), once);
    EXPECT_EQ(
        withTraces(QStringLiteral("We put a line ..."), kWords), QStringLiteral("We put a line …"));
}

} // namespace
} // namespace wainscot
