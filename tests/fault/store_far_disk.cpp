// A book on a disk far away: slow, in pieces, interrupted. That alone spoils nothing. Where calls
// break off as well, reading ones too, each task ends with a whole book and a sentence.
#include "tests/support/store_tasks.h"

#include <gmock/gmock.h>

namespace wainscot {

namespace {

constexpr unsigned kSlowRuns = 8;
constexpr unsigned kBrokenRuns = 24;

class FarDiskUnder : public TaskedBook {
protected:
    // An answer may be lost on its way back; what is acknowledged never is.
    FarDiskUnder()
        : TaskedBook({}, 2)
    {
    }

    void TearDown() override
    {
        RecordProperty("far_runs", m_runs);
        RecordProperty("far_breaks", m_broken);
        RecordProperty("losses", HasFailure() ? 1 : 0);
    }

    WorkerEnd run(const QStringList& words, FarDisk disk)
    {
        const WorkerEnd end = m_worker.runFarAway(words, disk);
        m_runs += 1;
        if (end.exit != 0) {
            m_broken += 1;
            EXPECT_EQ(end.exit, 3);
            EXPECT_FALSE(end.said.isEmpty());
            EXPECT_TRUE(disk.breaks > 0 || !disk.locks) << end.said.toStdString();
        }
        return end;
    }

    int m_runs = 0;
    int m_broken = 0;
};

// At first slow, then breaking off too, from seldom to often.
TEST_P(FarDiskUnder, SpoilsNothingAndBreaksOffBetweenSteps)
{
    const PreparedTask task = prepared(GetParam());
    for (unsigned seed = 1; seed <= kSlowRuns + kBrokenRuns; ++seed) {
        SCOPED_TRACE(::testing::Message() << "seed " << seed);
        task.prepare();
        const int breaks = seed <= kSlowRuns ? 0 : 1 << (seed % 6);
        task.check(run(task.words, {seed, breaks}));
        if (HasFailure())
            return;
    }
    EXPECT_GE(m_broken, 4);
}

INSTANTIATE_TEST_SUITE_P(
    Every, FarDiskUnder, ::testing::ValuesIn(storeTasks()), [](const auto& task) {
        return std::string(nameOf(task.param));
    });

using FarDiskWithoutLocks = FarDiskUnder;

TEST_P(FarDiskWithoutLocks, IsWrittenWholeOrSaysWhy)
{
    const PreparedTask task = prepared(GetParam());
    task.prepare();
    const WorkerEnd end = run(task.words, {1, 0, false});
    task.check(end);
    EXPECT_EQ(end.exit == 3, !end.said.isEmpty());
}

INSTANTIATE_TEST_SUITE_P(Gathering, FarDiskWithoutLocks, ::testing::Values(StoreTask::Gather));

} // namespace

} // namespace wainscot
