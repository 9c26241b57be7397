#include "core/permit/cleared.h"
#include "tests/support/class_book.h"

#include <gtest/gtest.h>

namespace wainscot {

namespace {

class NamesInText : public ::testing::Test {
protected:
    [[nodiscard]] std::string adult(const char* text) { return shown(text, false); }
    [[nodiscard]] std::string child(const char* text) { return shown(text, true); }

    ClassBook m_made;
    DisplayId m_hall = m_made.display(Audience::Building);
    const Permissions m_named = only(Audience::Building, {Permission::FirstName});

private:
    std::string shown(const char* text, bool childsWords)
    {
        const PermissionRules rules(m_made.book, m_made.at(m_hall), kTestDay);
        return rules.withPermittedNames(QString::fromUtf8(text), childsWords).toStdString();
    }
};

TEST_F(NamesInText, AreTakenOutInEveryForm)
{
    const ChildId louise = m_made.child("Louise Moreau", {});
    Child shownAs = m_made.at(louise);
    shownAs.shownAs = QStringLiteral("Lulu");
    m_made.book.children.put(shownAs);
    EXPECT_EQ(adult("Then Louise Moreau, LOUISE and lulu came."),
        "Then a child, a child and a child came.");
    EXPECT_EQ(adult("Louise's boat sank. Lulu laughed."), "A child's boat sank. A child laughed.");
    EXPECT_EQ(adult("\u201cLouise\u201d"), "\u201cA child\u201d");
}

TEST_F(NamesInText, AreMarkedAsAnAdultsInsertionInAChildsWords)
{
    m_made.child("Ines", {});
    EXPECT_EQ(child("ines and me made it"), "[a child] and me made it");
}

TEST_F(NamesInText, StayWhenTheyMayBeSaid)
{
    m_made.child("Ines", m_named);
    EXPECT_EQ(adult("Ines saw it."), "Ines saw it.");
}

TEST_F(NamesInText, AreWholeWordsOnly)
{
    m_made.child("Ana", {});
    EXPECT_EQ(adult("A banana for Ana, an analysis."), "A banana for a child, an analysis.");
}

TEST_F(NamesInText, AreFoundWithoutTheirAccentsAndInEitherComposition)
{
    m_made.child("Zo\u00eb", {});
    EXPECT_EQ(adult("with Zoe, Zo\u00eb, Zoe\u0308"), "with a child, a child, a child");
}

TEST_F(NamesInText, AreFoundWithAnyApostrophe)
{
    m_made.child("D'Arcy", {});
    EXPECT_EQ(adult("with D\u2019Arcy"), "with a child");
}

TEST_F(NamesInText, AreFoundInScriptsWithoutSpaces)
{
    m_made.child("\u5c0f\u96e8", {});
    EXPECT_EQ(child("\u6211\u548c\u5c0f\u96e8\u73a9"), "\u6211\u548c[a child]\u73a9");
}

TEST_F(NamesInText, AreFoundBehindAnArabicParticle)
{
    m_made.child("\u0644\u064a\u0644\u0649", {});
    EXPECT_EQ(child("\u0623\u0646\u0627 \u0648\u0644\u064a\u0644\u0649"),
        "\u0623\u0646\u0627 \u0648[a child]");
}

TEST_F(NamesInText, AreFoundInDevanagari)
{
    m_made.child("\u092e\u0940\u0930\u093e", {});
    EXPECT_EQ(child("\u092e\u0940\u0930\u093e \u0928\u0947"), "[a child] \u0928\u0947");
    EXPECT_EQ(child("\u092e\u0930"), "\u092e\u0930"); // without vowel signs it is another word
}

TEST_F(NamesInText, LeaveThingsThatShareAName)
{
    m_made.child("Ivy", {});
    m_made.child("Will", {});
    EXPECT_EQ(
        adult("We will draw the ivy that Ivy found."), "We will draw the ivy that a child found.");
}

TEST_F(NamesInText, SharedByTwoAreTakenOutWhenOneMayNotBeNamed)
{
    m_made.child("Noah Beck", m_named);
    m_made.child("Noah Kern", {});
    EXPECT_EQ(adult("with Noah"), "with a child");
}

TEST_F(NamesInText, NeverShowTheFamilyName)
{
    m_made.child("Mei Tanaka", m_named);
    EXPECT_EQ(adult("by Mei Tanaka"), "by Mei");
}

TEST_F(NamesInText, AnInitialIsNoName)
{
    const ChildId jo = m_made.child("Josephine", {});
    Child shown = m_made.at(jo);
    shown.shownAs = QStringLiteral("A.");
    m_made.book.children.put(shown);
    EXPECT_EQ(adult("a snail"), "a snail");
}

TEST_F(NamesInText, NoChildrenMeansNoChange)
{
    EXPECT_EQ(adult("Nobody here."), "Nobody here.");
}

} // namespace

} // namespace wainscot
