// Likeness and linkage against scikit-learn 1.2.1 and scipy 1.10.1, sound keys against jellyfish
// 0.8.9; how the numbers were made is in tests/data/voice/make_*.py.
#include "core/voice/joining.h"
#include "core/voice/sound_key.h"
#include "core/voice/word_likeness.h"
#include "core/voice/word_vectors.h"
#include "core/voice/words/resources.h"
#include "tests/support/places.h"

#include <QCryptographicHash>

#include <QFile>
#include <QStringList>

#include <gtest/gtest.h>

#include <algorithm>

namespace wainscot {
namespace {

constexpr double tolerance = 1e-9;

struct Reference {
    std::vector<Answer> answers;
    std::vector<QStringList> letters;
    std::vector<QStringList> sounds;
    std::vector<double> heights;
};

QStringList linesOf(const QString& path)
{
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << qPrintable(path);
    return QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
}

const QString data = testData("voice/");

Reference readReference()
{
    Reference reference;
    for (const QString& line : linesOf(data + QStringLiteral("grouping_reference.txt"))) {
        const QString kind = line.section(QLatin1Char(' '), 0, 0);
        const QString rest = line.section(QLatin1Char(' '), 1);
        if (kind == QLatin1String("answer"))
            reference.answers.push_back(
                {QuoteId(std::int64_t(reference.answers.size()) + 1), rest, QStringLiteral("en")});
        else if (kind == QLatin1String("likeness"))
            reference.letters.push_back(rest.split(QLatin1Char(' ')));
        else if (kind == QLatin1String("sound"))
            reference.sounds.push_back(rest.split(QLatin1Char(' ')));
        else if (kind == QLatin1String("height"))
            reference.heights.push_back(rest.toDouble());
    }
    return reference;
}

void expectEqual(const LikenessTable& table, const std::vector<QStringList>& expected)
{
    ASSERT_EQ(expected.size(), table.size());
    for (std::size_t row = 0; row < table.size(); ++row) {
        ASSERT_EQ(std::size_t(expected[row].size()), table.size());
        for (std::size_t column = 0; column < table.size(); ++column)
            EXPECT_NEAR(table.at(row, column), expected[row][int(column)].toDouble(), tolerance)
                << row << ' ' << column;
    }
}

TEST(GroupingReference, LetterLikenessEqualsScikitLearn)
{
    const Reference reference = readReference();
    ASSERT_EQ(reference.answers.size(), 22U);
    expectEqual(letterLikeness(reference.answers), reference.letters);
}

TEST(GroupingReference, SoundLikenessEqualsScikitLearnOnTheKeysOfJellyfish)
{
    const Reference reference = readReference();
    expectEqual(soundLikeness(reference.answers), reference.sounds);
}

TEST(GroupingReference, SoundKeysEqualThoseOfJellyfish)
{
    const QStringList lines = linesOf(data + QStringLiteral("sound_keys.txt"));
    EXPECT_GT(lines.size(), 140);
    for (const QString& line : lines)
        EXPECT_EQ(
            soundKey(line.section(QLatin1Char(' '), 0, 0)), line.section(QLatin1Char(' '), 1, 1))
            << qPrintable(line);
}

// Where jellyfish departs from the rules as they were published.
TEST(GroupingReference, SoundKeysFollowThePublishedRules)
{
    const std::vector<std::pair<QString, QString>> expected{
        {QStringLiteral("thumb"), QStringLiteral("0M")},
        {QStringLiteral("sign"), QStringLiteral("SN")},
        {QStringLiteral("bigger"), QStringLiteral("BKR")},
        {QStringLiteral("science"), QStringLiteral("SNS")},
        {QStringLiteral("school"), QStringLiteral("SKL")},
        {QStringLiteral("ghost"), QStringLiteral("KST")},
        {QStringLiteral("\u00e9lan"), QStringLiteral("ELN")},
        {QStringLiteral("\u0645\u0627\u0621"), QString()}};
    for (const auto& [word, key] : expected)
        EXPECT_EQ(soundKey(word), key) << qPrintable(word);
}

TEST(GroupingReference, TheTableOfWordsIsTheOneThatWasMade)
{
    const QString sum = linesOf(sourceFile("core/voice/words/word_vectors.sha256"))[0].section(
        QLatin1Char(' '), 0, 0);
    const QByteArray file = wordResource("word_vectors.bin");
    EXPECT_EQ(
        QString::fromLatin1(QCryptographicHash::hash(file, QCryptographicHash::Sha256).toHex()),
        sum);
    EXPECT_GT(WordVectors::english().size(), 12000U);
    EXPECT_FALSE(wordResource("NOTICE.wordnet").isEmpty());
}

TEST(GroupingReference, DamagedTablesKnowNoWord)
{
    const QByteArray whole = wordResource("word_vectors.bin");
    for (const QByteArray& file : {QByteArray(),
             whole.left(11),
             whole.left(whole.size() - 1),
             whole + 'x',
             "WVT2" + whole.mid(4)}) {
        WordVector sum{};
        EXPECT_FALSE(WordVectors(file).addTo(sum, QStringLiteral("rain")));
    }
}

TEST(GroupingReference, UncappedJoiningsHaveTheHeightsOfScipy)
{
    const Reference reference = readReference();
    const std::vector<Joining> made =
        joinings(letterLikeness(reference.answers), -1, reference.answers.size());
    std::vector<double> heights;
    for (const Joining& joining : made)
        heights.push_back(1 - joining.likeness);
    std::sort(heights.begin(), heights.end());
    ASSERT_EQ(heights.size(), reference.heights.size());
    for (std::size_t at = 0; at < heights.size(); ++at)
        EXPECT_NEAR(heights[at], reference.heights[at], tolerance) << at;
}

} // namespace
} // namespace wainscot
