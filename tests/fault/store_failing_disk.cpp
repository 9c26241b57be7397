// Every write, sync, rename, truncation, removal and new file of a task fails once, N = 1, 2, 3 ...
// until the task goes through; and once more with everything after it failing too, as on a disk
// that stays full. Each time there is an answer, the book is whole, and nothing is half done.
#include "tests/support/store_tasks.h"

#include <gmock/gmock.h>

namespace wainscot {

namespace {

class FailingDiskUnder : public TaskedBook {
protected:
    void TearDown() override
    {
        RecordProperty("failed_writes", m_failures);
        RecordProperty("losses", HasFailure() ? 1 : 0);
        EXPECT_GT(m_failures, 10);
    }

    // Until nothing was left to fail.
    void everyChange(const PreparedTask& task)
    {
        for (const bool from : {false, true}) {
            for (int at = 1;; ++at) {
                SCOPED_TRACE(::testing::Message() << "change " << at << (from ? " and on" : ""));
                ASSERT_LT(at, 3000);
                task.prepare();
                const WorkerEnd end = m_worker.run(task.words, {at, from});
                ASSERT_TRUE(end.exit == 0 || end.exit == 3) << end.exit << end.said.toStdString();
                if (end.exit == 3) {
                    EXPECT_FALSE(end.said.isEmpty());
                }
                task.check(end);
                if (HasFailure())
                    return;
                if (!end.failed) {
                    EXPECT_EQ(end.exit, 0) << end.said.toStdString();
                    break;
                }
                m_failures += 1;
            }
        }
    }

    int m_failures = 0;
};

TEST_P(FailingDiskUnder, LosesNothingAndLeavesNothingHalfDone)
{
    everyChange(prepared(GetParam()));
}

INSTANTIATE_TEST_SUITE_P(
    Every, FailingDiskUnder, ::testing::ValuesIn(storeTasks()), [](const auto& task) {
        return std::string(nameOf(task.param));
    });

using FailingDiskAgain = FailingDiskUnder;

TEST_P(FailingDiskAgain, LeavesTheEarlierPack)
{
    PreparedTask task = prepared(GetParam());
    task.prepare = [this] {
        QFile::remove(at("book.zip"));
        ASSERT_TRUE(QFile::copy(at("first.zip"), at("book.zip")));
    };
    task.check = [this](const WorkerEnd& /*end*/) {
        ASSERT_TRUE(QFile::exists(at("book.zip")));
        expectWholePackOrNone(at("book.zip"));
    };
    everyChange(task);
}

INSTANTIATE_TEST_SUITE_P(Packing, FailingDiskAgain, ::testing::Values(StoreTask::Pack));

} // namespace

} // namespace wainscot
