// Keep: the term drawn, and what its file would hold.
#include <QApplication>
#include <QCheckBox>

#include <gmock/gmock.h>

#include "support/window_at_work.h"

namespace wainscot::ui {
namespace {

KeepPlace& open(WindowAtWork& at)
{
    at.window().go(Place::Keep);
    at.settle();
    return at.window().keep();
}

void date(WindowAtWork& at, QDate day)
{
    Experience dated = *at.session().experience();
    dated.on = day;
    EditBuilder edit(at.book(), QStringLiteral("dated"));
    edit.put(dated);
    Meeting meeting;
    meeting.id = edit.newId<Meeting>();
    meeting.experience = dated.id;
    meeting.on = day.addDays(6);
    edit.put(meeting);
    ASSERT_TRUE(at.session().perform(edit.take()));
}

TEST(Keep, DrawsAStrandFromTheFirstDayToTheLastWithItsMeetingsAndWalls)
{
    WindowAtWork at;
    at.propose();
    date(at, QDate(2026, 11, 3));
    KeepPlace& keep = open(at);
    ASSERT_EQ(keep.term().strands().size(), 1U);
    const TermStrand& strand = keep.term().strands().front();
    EXPECT_EQ(strand.answers, 8);
    EXPECT_EQ(strand.first, QDate(2026, 11, 3));
    EXPECT_EQ(strand.last, QDate(2026, 11, 9));
    EXPECT_THAT(strand.meetings, ::testing::ElementsAre(QDate(2026, 11, 9)));
    EXPECT_THAT(strand.walls, ::testing::ElementsAre(at.session().display()->id));
    EXPECT_EQ(keep.done(), QStringLiteral("1 experience, 1 meeting, 1 wall since November."));
}

TEST(Keep, IsWalkedByKeysAndAWallLeadsToItsPanel)
{
    WindowAtWork at;
    at.propose();
    date(at, QDate(2026, 11, 3));
    KeepPlace& keep = open(at);
    QWidget* title = keep.term().firstStop();
    ASSERT_NE(title, nullptr);
    EXPECT_EQ(title->accessibleName(), QStringLiteral("Puddle: 8 answers, 1 meeting"));
    title->setFocus();
    QTest::keyClick(title, Qt::Key_Down);
    QWidget* wall = QApplication::focusWidget();
    ASSERT_NE(wall, title);
    EXPECT_EQ(wall->accessibleName(), QStringLiteral("Hallway, for the hallway: 1 panel"));
    EXPECT_TRUE(keep.term().rect().contains(wall->geometry()));
    QTest::keyClick(wall, Qt::Key_Space);
    EXPECT_EQ(at.window().place(), Place::Compose);
}

TEST(Keep, CountsThePagesOfTheFileAndSaysWhatIsLeftOut)
{
    WindowAtWork at;
    at.propose();
    date(at, QDate(2026, 11, 3));
    KeepPlace& keep = open(at);
    ASSERT_TRUE(QTest::qWaitFor([&keep] { return keep.file().pages() > 0; }, 20000));
    keep.file().setDays(QDate(2020, 1, 1), QDate(2020, 2, 1));
    ASSERT_TRUE(QTest::qWaitFor([&keep] { return keep.file().pages() == 0; }, 20000));
}

TEST(Keep, SaysOfEverythingLeftOutWhyItIs)
{
    WindowAtWork at;
    at.propose();
    date(at, QDate(2026, 11, 3));
    EditBuilder edit(at.book(), QStringLiteral("Withdrawn"));
    QStringList names;
    for (const auto& [id, quote] : at.book().quotes.rows()) {
        Child child = *at.book().children.find(quote.child);
        if (names.size() == 2 || names.contains(child.name))
            continue;
        child.permissions.set(Permission::Words, Audience::Families, false);
        edit.put(child);
        names << child.name;
    }
    ASSERT_TRUE(at.session().perform(edit.take()));
    KeepPlace& keep = open(at);
    ASSERT_TRUE(QTest::qWaitFor([&keep] { return keep.file().pages() > 0; }, 20000));
    at.settle();
    QString said;
    for (const QLabel* label : keep.file().findChildren<QLabel*>()) {
        if (label->text().contains(QStringLiteral("Left out")))
            said = label->text();
    }
    for (const QString& name : names)
        EXPECT_TRUE(said.contains(name)) << qPrintable(name + QStringLiteral(" in ") + said);
}

// A meeting without groups is something.
TEST(Keep, KnowsOnTheRailOfAMeetingWithoutGroups)
{
    WindowAtWork at;
    EditBuilder edit(at.book(), QStringLiteral("held"));
    Meeting meeting;
    meeting.id = edit.newId<Meeting>();
    meeting.experience = at.session().experience()->id;
    meeting.done = true;
    edit.put(meeting);
    ASSERT_TRUE(at.session().perform(edit.take()));
    at.settle();
    QString said;
    for (const PlaceNail* nail : at.window().rail().findChildren<PlaceNail*>()) {
        if (nail->accessibleName() == QStringLiteral("Listen"))
            said = nail->accessibleDescription();
    }
    EXPECT_EQ(said, QStringLiteral("1 meeting"));
}

TEST(Keep, MovesNothingWhenTheCountsCome)
{
    WindowAtWork at;
    at.propose();
    date(at, QDate(2026, 11, 3));
    at.window().go(Place::Keep);
    QWidget* box = at.window().keep().file().findChild<QCheckBox*>();
    ASSERT_NE(box, nullptr);
    QApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
    ASSERT_EQ(at.window().keep().file().pages(), 0);
    const QRect before = box->geometry();
    ASSERT_TRUE(QTest::qWaitFor([&at] { return at.window().keep().file().pages() > 0; }, 20000));
    at.settle();
    EXPECT_EQ(box->geometry(), before);
}

TEST(Keep, SaysWhatComesBeforeTheFirstWall)
{
    WindowAtWork at;
    at.window().beginBook(at.file(QStringLiteral("empty")), QStringLiteral("Nobody yet"));
    KeepPlace& keep = open(at);
    EXPECT_TRUE(keep.term().strands().empty());
    EXPECT_EQ(keep.done(), QStringLiteral("The term has not begun."));
    keep.setTask(KeepPlace::Task::Away);
    EXPECT_NE(keep.firstStop(), nullptr);
}

} // namespace
} // namespace wainscot::ui
