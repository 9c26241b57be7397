// Labels in the children's own words, the words shared, and how a word is found in an answer.
#include "core/voice/group_words.h"

#include <QStringList>

#include <gtest/gtest.h>

namespace wainscot {
namespace {

Answer answer(std::int64_t id, const QString& words)
{
    return {QuoteId(id), words, QStringLiteral("en")};
}

QStringList underlined(const Answer& one, const GroupWords& words)
{
    QStringList parts;
    if (words.shared.count(one.id) > 0) {
        for (const WordSpan& span : words.shared.at(one.id))
            parts << one.words.mid(span.start, span.length);
    }
    return parts;
}

TEST(GroupWords, AreAsMostChildrenOfTheGroupSaidThem)
{
    const std::vector<Answer> answers{answer(1, QStringLiteral("The sun DRINKS it with a straw.")),
        answer(2, QStringLiteral("I think the sun drinked it.")),
        answer(3, QStringLiteral("The sun is thirsty, it DRINKS all.")),
        answer(4, QStringLiteral("A worm lives there."))};
    const std::vector<GroupWords> words =
        wordsOfGroups(answers, {{{QuoteId(1), QuoteId(2), QuoteId(3)}}});
    ASSERT_EQ(words.size(), 1U);
    EXPECT_EQ(words[0].label, QStringLiteral("DRINKS \u00b7 sun"));
    EXPECT_EQ(underlined(answers[1], words[0]),
        (QStringList{QStringLiteral("sun"), QStringLiteral("drinked")}));
    EXPECT_EQ(underlined(answers[2], words[0]),
        (QStringList{QStringLiteral("sun"), QStringLiteral("DRINKS")}));
    EXPECT_EQ(words[0].shared.count(QuoteId(4)), 0U);
}

TEST(GroupWords, PreferWhatOtherGroupsDoNotSay)
{
    const std::vector<Answer> answers{answer(1, QStringLiteral("puddle ground")),
        answer(2, QStringLiteral("puddle ground")),
        answer(3, QStringLiteral("puddle wind")),
        answer(4, QStringLiteral("puddle wind"))};
    const std::vector<GroupWords> words =
        wordsOfGroups(answers, {{{QuoteId(1), QuoteId(2)}}, {{QuoteId(3), QuoteId(4)}}});
    EXPECT_EQ(words[0].label, QStringLiteral("ground \u00b7 puddle"));
    EXPECT_EQ(words[1].label, QStringLiteral("wind \u00b7 puddle"));
}

TEST(GroupWords, WithoutASharedWordQuoteTheMostTypicalAnswer)
{
    const std::vector<Answer> answers{answer(1, QStringLiteral("gloves")),
        answer(
            2, QStringLiteral("boots that somebody from the other class forgot in the long hall")),
        answer(3, QStringLiteral("shoes"))};
    const std::vector<GroupWords> words =
        wordsOfGroups(answers, {{{QuoteId(1), QuoteId(2), QuoteId(3)}}});
    EXPECT_TRUE(words[0].shared.empty());
    EXPECT_TRUE(words[0].label.startsWith(QChar(0x201C))) << qPrintable(words[0].label);
    EXPECT_LE(words[0].label.size(), 43);
}

TEST(ComparedWords, StandWhereTheyWereSaid)
{
    const QString said = QStringLiteral("Don\u2019t! \u00c9lan, 2 'boots' \u0645\u0627\u0621");
    const std::vector<ComparedWord> words = comparedWords(said);
    const QStringList expected{QStringLiteral("don't"),
        QStringLiteral("\u00e9lan"),
        QStringLiteral("boots"),
        QStringLiteral("\u0645\u0627\u0621")};
    ASSERT_EQ(words.size(), std::size_t(expected.size()));
    for (std::size_t at = 0; at < words.size(); ++at)
        EXPECT_EQ(words[at].text, expected[int(at)]);
    EXPECT_EQ(said.mid(words[0].at.start, words[0].at.length), QStringLiteral("Don\u2019t"));
    EXPECT_TRUE(comparedWords(QStringLiteral("\U0001F40C 7 !")).empty());
}

TEST(Stems, FollowTheLanguageAndLeaveUnknownOnesAlone)
{
    EXPECT_EQ(
        Stemmer(QStringLiteral("en-GB")).stem(QStringLiteral("drinked")), QStringLiteral("drink"));
    EXPECT_EQ(Stemmer(QStringLiteral("de")).stem(QStringLiteral("pf\u00fctzen")),
        QStringLiteral("pfutz"));
    EXPECT_EQ(Stemmer(QStringLiteral("zh-Hans")).stem(QStringLiteral("\u6c34")),
        QStringLiteral("\u6c34"));
}

} // namespace
} // namespace wainscot
