// What lies on the table has passed the rules of the classroom.
#include "core/permit/cleared_sheets.h"
#include "tests/support/class_book.h"

#include <gtest/gtest.h>

#include <type_traits>

namespace wainscot {

namespace {

static_assert(!std::is_default_constructible_v<ClearedSheets>);

class SheetsForTheTable : public ::testing::Test {
protected:
    SheetsForTheTable()
    {
        m_set = defaultPromptSet();
        m_set.id = m_made.book.promptSets.newId();
        m_set.prompts[0].others = {{QStringLiteral("ar"), QString::fromUtf8("ماذا تلاحظ؟")}};
        keep();
        Experience happened = *m_made.book.experiences.find(m_made.experience);
        happened.promptSet = m_set.id;
        m_made.book.experiences.put(happened);
    }
    void keep() { m_made.book.promptSets.put(m_set); }
    [[nodiscard]] ClearedSheets sheets(const QStringList& languages = {}) const
    {
        return ClearedSheets::of(m_made.book, m_made.experience, {}, languages, kTestDay);
    }

    ClassBook m_made;
    PromptSet m_set;
    ChildId m_ines = m_made.child("Ines Roth",
        only(Audience::Classroom, {Permission::FirstName, Permission::Photo}),
        "2020-11-07");
    ChildId m_tom = m_made.child("Tom", only(Audience::Building, {Permission::FirstName}));
};

TEST_F(SheetsForTheTable, NameWhoMayBeNamedInTheClassroomAndNobodyElse)
{
    const ClearedSheets made = sheets();
    ASSERT_EQ(made.children().size(), 2U);
    EXPECT_EQ(made.children()[0].name, QStringLiteral("Ines"));
    EXPECT_EQ(made.children()[0].months, 60);
    EXPECT_EQ(made.children()[1].id, m_tom) << "the adult still knows whose sheet it is";
    EXPECT_TRUE(made.children()[1].name.isEmpty());
    EXPECT_FALSE(made.children()[1].months.has_value());
    ASSERT_EQ(made.leftOut().size(), 1U);
    EXPECT_EQ(made.leftOut()[0].id, m_tom.number());
    EXPECT_EQ(made.leftOut()[0].why,
        QStringLiteral("Tom gets a line instead of the name: may not be named in the classroom."));
}

TEST_F(SheetsForTheTable, DoNotNameWhoIsSeenBesideAQuestionWithoutPermissionForBoth)
{
    m_set.prompts[1].picture = m_made.picture(PictureKind::Photo, {true, {m_ines}});
    keep();
    const ClearedSheets made = sheets();
    EXPECT_TRUE(made.prompts()[1].picture.has_value());
    EXPECT_TRUE(made.children()[0].name.isEmpty());
}

TEST_F(SheetsForTheTable, ShowNoPictureThatMayNotBeSeenInTheClassroom)
{
    m_set.prompts[0].picture = m_made.picture(PictureKind::Photo, {true, {m_tom}});
    m_set.prompts[1].picture = m_made.picture(PictureKind::Photo, {false, {}}, "unseen.jpg");
    m_set.prompts[1].sign = PromptSign::Thought;
    keep();
    const ClearedSheets made = sheets();
    EXPECT_FALSE(made.prompts()[0].picture.has_value());
    EXPECT_FALSE(made.prompts()[1].picture.has_value()) << "nobody has looked at it";
    EXPECT_EQ(made.prompts()[1].sign, PromptSign::Thought);
    EXPECT_EQ(made.leftOut().size(), 3U); // two pictures and a name
}

TEST_F(SheetsForTheTable, SayNoNameInAQuestionThatMayNotBeSaid)
{
    m_set.prompts[2].text = QStringLiteral("What would Tom ask Ines?");
    keep();
    EXPECT_EQ(sheets().prompts()[2].wordings.front().text,
        QStringLiteral("What would a child ask Ines?"));
}

TEST_F(SheetsForTheTable, AskInTheLanguagesWishedFor)
{
    const ClearedSheets made = sheets({QStringLiteral("ar"), QStringLiteral("en")});
    ASSERT_EQ(made.prompts()[0].wordings.size(), 2U);
    EXPECT_EQ(made.prompts()[0].wordings[0].language, QStringLiteral("ar"));
    EXPECT_EQ(made.prompts()[0].wordings[1].text, m_set.prompts[0].text);
    ASSERT_EQ(made.prompts()[1].wordings.size(), 1U) << "said once where there is one wording";
    EXPECT_EQ(made.prompts()[1].wordings[0].language, m_set.language);
}

TEST_F(SheetsForTheTable, HaveALineForTheNameOfNobodyInParticular)
{
    const ClearedSheets made =
        ClearedSheets::forNobody(m_made.book, m_made.experience, {}, kTestDay);
    ASSERT_EQ(made.children().size(), 1U);
    EXPECT_FALSE(made.children()[0].id.isValid());
    EXPECT_TRUE(made.children()[0].name.isEmpty());
    EXPECT_TRUE(made.leftOut().empty());
}

} // namespace
} // namespace wainscot
