// A no is told from what nobody said, and a withdrawal from a no.
#include "core/permit/family_answers.h"

#include "tests/support/class_book.h"

#include <gtest/gtest.h>

namespace wainscot {
namespace {

class FamilyAnswers : public ::testing::Test {
protected:
    void say(FamilyAnswer answer, std::optional<QDate> on)
    {
        PermissionRecord record;
        record.id = made.book.permissionRecords.newId();
        record.child = ines;
        record.audience = Audience::Families;
        record.answers[std::size_t(Permission::Photo)] = answer;
        record.on = on;
        made.book.permissionRecords.put(record);
    }
    void allow(bool yes)
    {
        Child child = made.at(ines);
        child.permissions.set(Permission::Photo, Audience::Families, yes);
        made.book.children.put(child);
    }
    [[nodiscard]] FamilyAnswer answer() const
    {
        return familyAnswer(made.book, made.at(ines), Audience::Families, Permission::Photo);
    }

    ClassBook made;
    ChildId ines = made.child("Ines Roth", Permissions());
};

TEST_F(FamilyAnswers, AreNotSaidUntilSomebodySaysSomething)
{
    EXPECT_EQ(answer(), FamilyAnswer::NotSaid);
    EXPECT_EQ(answersMissing(made.book), 20);
    say(FamilyAnswer::No, QDate(2026, 9, 3));
    EXPECT_EQ(answer(), FamilyAnswer::No);
    EXPECT_EQ(answersMissing(made.book), 19);
}

TEST_F(FamilyAnswers, AreYesOnlyWhereThePermissionsSaySo)
{
    say(FamilyAnswer::Yes, QDate(2026, 9, 3));
    EXPECT_EQ(answer(), FamilyAnswer::NotSaid) << "a record alone allows nothing";
    allow(true);
    EXPECT_EQ(answer(), FamilyAnswer::Yes);
}

TEST_F(FamilyAnswers, AreWhatWasSaidLast)
{
    say(FamilyAnswer::Withdrawn, QDate(2026, 11, 12));
    say(FamilyAnswer::Yes, QDate(2026, 9, 3)); // noted later, said earlier
    say(FamilyAnswer::No, std::nullopt); // nobody knows when: before all others
    EXPECT_EQ(answer(), FamilyAnswer::Withdrawn);
    const auto records = recordsOf(made.book, ines, Audience::Families, Permission::Photo);
    ASSERT_EQ(records.size(), 3U);
    EXPECT_EQ(records[1]->on, QDate(2026, 9, 3));
    EXPECT_TRUE(recordsOf(made.book, ines, Audience::Families, Permission::Words).empty());
}

} // namespace
} // namespace wainscot
