// What stands for a name speaks the language of the text around it.
#include "core/permit/cleared.h"
#include "tests/support/class_book.h"

#include <gtest/gtest.h>

namespace wainscot {
namespace {

class NamesInLanguages : public ::testing::Test {
protected:
    NamesInLanguages()
    {
        m_made.book.info.language = QStringLiteral("es");
        Experience told = *m_made.book.experiences.find(m_made.experience);
        told.language = QStringLiteral("es");
        m_made.book.experiences.put(told);
        m_mei = m_made.child("Mei", onlyWords);
        m_hall = m_made.display(Audience::Building);
        Display hall = m_made.at(m_hall);
        hall.language = QStringLiteral("es");
        m_made.book.displays.put(hall);
    }

    ClearedPiece shown(const char* words, const char* language)
    {
        const QuoteId id = m_made.quote(m_mei, QString::fromUtf8(words));
        Quote quote = *m_made.book.quotes.find(id);
        quote.language = QString::fromLatin1(language);
        quote.telling = Telling::Drew;
        m_made.book.quotes.put(quote);
        m_made.hang(m_hall, id);
        const PermissionRules rules(m_made.book, m_made.at(m_hall), kTestDay);
        return rules.clear(*panelsOf(m_made.book, m_hall).front()).pieces().back();
    }

    const Permissions onlyWords = only(Audience::Building, {Permission::Words});
    ClassBook m_made;
    ChildId m_mei;
    DisplayId m_hall;
};

TEST_F(NamesInLanguages, FollowTheWordsAndTheDisplay)
{
    const ClearedPiece piece = shown("Soy Mei", "");
    EXPECT_EQ(piece.text, QStringLiteral("Soy [alguien de la clase]"));
    EXPECT_EQ(piece.name, QStringLiteral("alguien de la clase"));
    EXPECT_EQ(piece.status, QStringLiteral("dibujado"));
}

TEST_F(NamesInLanguages, FollowWordsOfAnotherLanguage)
{
    const ClearedPiece piece = shown("Ich bin Mei", "de");
    EXPECT_EQ(piece.text, QStringLiteral("Ich bin [ein Kind]"));
    EXPECT_EQ(piece.name, QStringLiteral("alguien de la clase")); // the adult's line
}

TEST_F(NamesInLanguages, FollowTheDisplayWhereALanguageHasNoWordsForWalls)
{
    EXPECT_EQ(
        shown("Waxaan ahay Mei", "so").text, QStringLiteral("Waxaan ahay [alguien de la clase]"));
}

TEST_F(NamesInLanguages, AreToldToTheAdultAsTheyAreShown)
{
    const PermissionRules rules(m_made.book, m_made.at(m_hall), kTestDay);
    const auto why = rules.namingRefusal(m_made.at(m_mei));
    ASSERT_TRUE(why);
    EXPECT_TRUE(why->contains(QStringLiteral("\u201calguien de la clase\u201d")))
        << why->toStdString();
}

} // namespace
} // namespace wainscot
