// Work off the window's thread: one at a time, waited for to its end.
#include <gtest/gtest.h>

#include "app/ui/session/work.h"

namespace wainscot::ui {
namespace {

using Number = Result<int>;

// Run with Qt's own event loop instead of glib's (tests/ui.cmake): waiting must end there too,
// though what ends the work may be told before the loop begins to wait.
TEST(Work, IsWaitedForHoweverQuickItIs)
{
    Work work;
    int sum = 0;
    constexpr int kJobs = 20'000;
    for (int i = 0; i < kJobs; ++i) {
        ASSERT_TRUE(work.start<int>(
            QStringLiteral("One"),
            [](const JobRun&) -> Number { return 1; },
            [&sum](const Number& one) { sum += *one; }));
        work.waitForEnd();
        ASSERT_FALSE(work.isBusy());
    }
    EXPECT_EQ(sum, kJobs);
}

TEST(Work, IsWaitedForWithWhatItsEndBegins)
{
    Work work;
    QList<int> told;
    const auto tell = [&told](const Number& one) { told << *one; };
    work.start<int>(
        QStringLiteral("First"),
        [](const JobRun&) -> Number { return 1; },
        [&](const Number& one) {
            tell(one);
            work.start<int>(
                QStringLiteral("Second"), [](const JobRun&) -> Number { return 2; }, tell);
        });
    work.waitForEnd();
    EXPECT_EQ(told, (QList<int>{1, 2}));
    work.waitForEnd(); // nothing to wait for
}

TEST(Work, RefusesWhatComesMeanwhile)
{
    Work work;
    QStringList refused;
    QObject::connect(
        &work, &Work::refused, &work, [&](const QString& running) { refused << running; });
    const auto nothing = [](const Number&) {};
    EXPECT_TRUE(work.start<int>(
        QStringLiteral("First"), [](const JobRun&) -> Number { return 1; }, nothing));
    EXPECT_FALSE(work.start<int>(
        QStringLiteral("Second"), [](const JobRun&) -> Number { return 2; }, nothing));
    work.waitForEnd();
    EXPECT_EQ(refused, QStringList{QStringLiteral("First")});
}

} // namespace
} // namespace wainscot::ui
