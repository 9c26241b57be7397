// How well groups agree with a sorting made by others: labels and keywords of pictures, whose
// subgroups are known. The floors are for uncapped linkage at the true number of classes.
#include "tests/support/grouping_samples.h"
#include "tests/support/invented_spelling.h"
#include "tests/support/places.h"

#include <gtest/gtest.h>

namespace wainscot {
namespace {

TEST(GroupingQuality, AgreementIsTheAdjustedRandIndex)
{
    EXPECT_DOUBLE_EQ(agreement({0, 0, 1, 1}, {5, 5, 2, 2}), 1);
    // sklearn.metrics.adjusted_rand_score([0, 0, 1, 2], [0, 0, 1, 1])
    EXPECT_NEAR(agreement({0, 0, 1, 2}, {0, 0, 1, 1}), 0.5714285714285715, 1e-12);
    EXPECT_NEAR(agreement({0, 0, 1, 1}, {0, 1, 0, 1}), -0.5, 1e-12);
}

TEST(GroupingQuality, StaysAboveItsFloorsOnSortedKeywords)
{
    const SortedTexts all = sortedTextsFrom(testData("voice/emoji_subgroups.txt"));
    ASSERT_GT(all.texts.size(), 1500U);
    const double letters = meanAgreement(all, letterLikeness, Cut::TrueNumber, 11, 50);
    const double together = meanAgreement(all, likenessOf, Cut::TrueNumber, 11, 50);
    EXPECT_GE(letters, 0.50);
    EXPECT_GE(together, 0.68); // .711
    EXPECT_GT(together, letters);
}

// Answers to one question share its subject. Taken as it is, that alone makes all of them alike,
// and one set swallows the others; what tells them apart must still be found beneath it.
TEST(GroupingQuality, ASubjectThatAllShareHidesNoGroups)
{
    SortedTexts all = sortedTextsFrom(testData("voice/emoji_subgroups.txt"));
    for (Answer& answer : all.texts)
        answer.words += QStringLiteral(" rain water cloud puddle");
    const double with = meanAgreement(all, likenessOf, Cut::TrueNumber, 11, 20);
    EXPECT_GE(with, 0.65); // .694, and .579 when the common subject is not taken out
    EXPECT_GT(with, meanAgreement(all, letterLikeness, Cut::TrueNumber, 11, 20));
}

// What a beginning writer's spelling takes from the groups; the floors are what was measured, less
// two standard errors.
TEST(GroupingQuality, LosesLittleByInventedSpelling)
{
    const SortedTexts all = sortedTextsFrom(testData("voice/emoji_subgroups.txt"));
    const SortedTexts some = respelled(all, 0.2, 11);
    const SortedTexts many = respelled(all, 0.4, 11);
    EXPECT_EQ(respelled(all, 0, 11).texts.front().words, all.texts.front().words);
    EXPECT_GE(meanAgreement(some, likenessOf, Cut::TrueNumber, 11, 50),
        0.65); // .685, and .711 as written
    EXPECT_GE(meanAgreement(many, likenessOf, Cut::TrueNumber, 11, 50), 0.62); // .653
    EXPECT_GT(meanAgreement(many, likenessOf, Cut::TrueNumber, 11, 50),
        meanAgreement(many, letterLikeness, Cut::TrueNumber, 11, 50));
}

} // namespace
} // namespace wainscot
