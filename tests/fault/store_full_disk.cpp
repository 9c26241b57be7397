// A file system that is full: each task gets a page more at a time until it goes through. Each time
// there is an answer, the book is whole, and nothing is half done.
#include "tests/support/small_disk.h"
#include "tests/support/store_tasks.h"

namespace wainscot {

namespace {

constexpr qint64 kPage = 4096; // of memory, which is what this file system counts
constexpr qint64 kAmple = 64 * 1024 * 1024;

class FullDiskUnder : public TaskedBook {
protected:
    FullDiskUnder()
        : TaskedBook(QStringLiteral("disk/"))
    {
    }

    void SetUp() override
    {
        if (!SmallDisk::canBeHad())
            GTEST_SKIP() << "this machine lets no program mount a disk of its own";
        TaskedBook::SetUp();
    }

    void TearDown() override
    {
        RecordProperty("full_disks", m_full);
        RecordProperty("losses", HasFailure() ? 1 : 0);
    }

    int m_full = 0;
};

TEST_P(FullDiskUnder, LosesNothingAndLeavesNothingHalfDone)
{
    const PreparedTask task = prepared(GetParam());
    const int pages = task.writesPictures ? 3 : 1;
    for (qint64 more = 0;; more += pages * kPage) {
        SCOPED_TRACE(::testing::Message() << more / kPage << " pages free");
        ASSERT_LT(more, kAmple / 2);
        const SmallDisk disk(at("disk"), kAmple);
        task.prepare(); // fills it
        disk.resize(std::max(disk.used() + more, kPage)); // none at all would mean no limit
        const WorkerEnd end = m_worker.run(task.words);
        ASSERT_TRUE(end.exit == 0 || end.exit == 3) << end.exit << end.said.toStdString();
        EXPECT_EQ(end.exit == 3, !end.said.isEmpty());
        EXPECT_FALSE(end.exit == 3 && QFile::exists(at("disk/book.zip")));
        disk.resize(kAmple);
        task.check(end);
        if (HasFailure() || end.exit == 0)
            break;
        m_full += 1;
    }
    EXPECT_GT(m_full, 3);
}

INSTANTIATE_TEST_SUITE_P(
    Every, FullDiskUnder, ::testing::ValuesIn(storeTasks()), [](const auto& task) {
        return std::string(nameOf(task.param));
    });

} // namespace

} // namespace wainscot
