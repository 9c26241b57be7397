// The reading level of an adult's text. Values marked with a package are published there (facts);
// the formulas are tested on counts, because published counts of syllables differ.
#include "core/model/reading_level.h"

#include <gtest/gtest.h>

#include <array>

namespace wainscot {
namespace {

TextCounts counts(int sentences, int words, int syllables)
{
    return {sentences, words, words, syllables};
}

TEST(ReadingLevel, TheFormulasGiveThePublishedValues)
{
    // "The cat sat on the mat": package flesch; its grade is computed.
    EXPECT_NEAR(*fleschEase(counts(1, 6, 6)), 116.145, 1e-9);
    EXPECT_NEAR(*fleschKincaidGrade(counts(1, 6, 6)), -1.45, 1e-9);
    // The platypus sentence: packages flesch 1.0.0 and flesch-kincaid.
    EXPECT_NEAR(*fleschEase(counts(1, 13, 26)), 24.44, 0.005);
    EXPECT_NEAR(*fleschKincaidGrade(counts(1, 13, 26)), 13.08, 0.005);
    // The same, counted differently: repository wooorm/flesch; its grade is computed.
    EXPECT_NEAR(*fleschEase(counts(1, 12, 23)), 32.505, 1e-9);
    EXPECT_NEAR(*fleschKincaidGrade(counts(1, 12, 23)), 11.70667, 5e-6);
    // "Nothing is so fatiguing ...": package flekin.
    EXPECT_NEAR(*fleschEase(counts(1, 13, 22)), 50.47077, 5e-6);
    EXPECT_NEAR(*fleschKincaidGrade(counts(1, 13, 22)), 9.44923, 5e-6);
}

TEST(ReadingLevel, NothingWrittenHasNoLevel)
{
    for (const char* text : {"", "  \n\n ", "...", " \u2014 !"}) {
        const TextCounts none = countText(QString::fromUtf8(text));
        EXPECT_EQ(none.words, 0) << text;
        EXPECT_EQ(none.sentences, 0) << text;
        EXPECT_FALSE(fleschEase(none)) << text;
        EXPECT_FALSE(fleschKincaidGrade(none)) << text;
    }
}

TEST(ReadingLevel, CountsSentencesWordsAndTheLongest)
{
    const TextCounts two = countText(
        QStringLiteral("We poured 3.5 litres. Then \u2014 after lunch \u2014 it was gone!"));
    EXPECT_EQ(two.sentences, 2);
    EXPECT_EQ(two.words, 10);
    EXPECT_EQ(two.longestSentence, 6);
    // A heading without a stop is closed by the empty line; one line break closes nothing.
    EXPECT_EQ(countText(QStringLiteral("Ice\n\nIt melts")).sentences, 2);
    EXPECT_EQ(countText(QStringLiteral("Ice melts\nin hands")).sentences, 1);
    EXPECT_EQ(countText(QString::fromUtf8("\u00bfQu\u00e9 pas\u00f3? Se fue.")).sentences, 2);
}

TEST(ReadingLevel, TellsSyllablesOfPlainWords)
{
    struct Row {
        const char* word;
        int syllables;
    };
    for (const Row& row : std::array<Row, 10>{{{"the", 1},
             {"mat", 1},
             {"make", 1},
             {"table", 2},
             {"water", 2},
             {"eye", 1},
             {"puddle,", 2},
             {"children's", 2},
             {"banana", 3},
             {"time", 1}}})
        EXPECT_EQ(englishSyllables(QString::fromLatin1(row.word)), row.syllables) << row.word;
}

TEST(ReadingLevel, AWholeSentenceComesNearThePublishedEase)
{
    EXPECT_NEAR(*fleschEase(countText(QStringLiteral("The cat sat on the mat"))), 116.145, 1e-9);
    // 22 syllables were published; two more or fewer are 13 points.
    const TextCounts task = countText(QStringLiteral(
        "Nothing is so fatiguing as the eternal hanging on of an uncompleted task."));
    EXPECT_EQ(task.words, 13);
    EXPECT_NEAR(task.syllables, 22, 2);
}

TEST(ReadingLevel, TheFormulaIsForEnglishOnly)
{
    EXPECT_TRUE(hasReadingFormula(QStringLiteral("en")));
    EXPECT_TRUE(hasReadingFormula(QStringLiteral("en-GB")));
    EXPECT_FALSE(hasReadingFormula(QStringLiteral("es")));
    EXPECT_FALSE(hasReadingFormula(QStringLiteral("enm")));
    EXPECT_FALSE(hasReadingFormula(QString()));
}

} // namespace
} // namespace wainscot
