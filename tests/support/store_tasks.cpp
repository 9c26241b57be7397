#include "tests/support/store_tasks.h"

#include "tests/support/book_equality.h"

namespace wainscot {

namespace {

constexpr int kSources = 2; // pictures to gather
constexpr int kPictures = 3; // of the book

void removeFolder(const QString& folder)
{
    QDir(folder).removeRecursively();
}

} // namespace

const std::vector<StoreTask>& storeTasks()
{
    static const std::vector<StoreTask> all{StoreTask::New,
        StoreTask::Gather,
        StoreTask::Pack,
        StoreTask::Unpack,
        StoreTask::BringUp,
        StoreTask::Erase,
        StoreTask::Repair};
    return all;
}

const char* nameOf(StoreTask task)
{
    switch (task) {
    case StoreTask::New:
        return "ANewBook";
    case StoreTask::Gather:
        return "Gathering";
    case StoreTask::Pack:
        return "Packing";
    case StoreTask::Unpack:
        return "Unpacking";
    case StoreTask::BringUp:
        return "BringingUpToDate";
    case StoreTask::Erase:
        return "Erasing";
    case StoreTask::Repair:
        return "Repairing";
    }
    return "";
}

std::ostream& operator<<(std::ostream& to, StoreTask task)
{
    return to << nameOf(task);
}

void TaskedBook::SetUp()
{
    WorkedBook::SetUp();
    for (int i = kSources; i < 5; ++i)
        QFile::remove(at("sources/rain-") + QString::number(i));
    again();
    ASSERT_EQ(m_worker.run({QStringLiteral("pack"), at("book"), at("first.zip")}).exit, 0);
}

PreparedTask TaskedBook::prepared(StoreTask task)
{
    switch (task) {
    case StoreTask::New:
        return makingNew();
    case StoreTask::Gather:
        return gathering();
    case StoreTask::Pack:
        return packing();
    case StoreTask::Unpack:
        return unpacking();
    case StoreTask::BringUp:
        return bringingUp();
    case StoreTask::Erase:
        return erasing();
    case StoreTask::Repair:
        return repairing();
    }
    return {};
}

QString TaskedBook::onDisk(const char* name) const
{
    return m_worker.at(m_disk + QString::fromLatin1(name));
}

void TaskedBook::freshOnDisk(const char* from)
{
    copyFolder(at(from), onDisk("book"));
    removeFolder(at("tmp"));
    QDir().mkpath(at("tmp"));
}

// Whole, or not there.
PreparedTask TaskedBook::makingNew()
{
    const QString folder = onDisk("fresh");
    return {{QStringLiteral("new"), folder},
        [folder] { removeFolder(folder); },
        [this, folder](const WorkerEnd& end) {
            if (end.exit == 0 || QFile::exists(folder + QStringLiteral("/book.wainscot"))) {
                EXPECT_EQ(opened(folder).promptSets.size(), 1U);
            }
        }};
}

// Nothing acknowledged is lost.
PreparedTask TaskedBook::gathering()
{
    const QString folder = onDisk("book");
    return {{QStringLiteral("gather"), folder, at("sources")},
        [this] { freshOnDisk("whole"); },
        [this, folder](const WorkerEnd& end) {
            const int gathered = int(opened(folder).pictures.size()) - kPictures;
            const int sure = end.exit == 0 ? kSources : end.acknowledged;
            EXPECT_GE(gathered, sure);
            EXPECT_LE(gathered, sure + m_mayExceed);
        },
        true};
}

// A whole pack or none, and the book as it was.
PreparedTask TaskedBook::packing()
{
    const QString file = onDisk("book.zip");
    return {{QStringLiteral("pack"), at("book"), file},
        [file] { QFile::remove(file); },
        [this, file](const WorkerEnd& end) {
            EXPECT_TRUE(end.exit != 0 || QFile::exists(file));
            expectWholePackOrNone(file);
            EXPECT_TRUE(sameBook(opened(at("book")), m_before));
        },
        true};
}

PreparedTask TaskedBook::unpacking()
{
    const QString folder = onDisk("again");
    return {{QStringLiteral("unpack"), at("first.zip"), folder},
        [folder] { removeFolder(folder); },
        [this, folder](const WorkerEnd& end) {
            if (end.exit == 0 || QFile::exists(folder + QStringLiteral("/book.wainscot"))) {
                EXPECT_TRUE(sameBook(opened(folder), m_before));
            }
        },
        true};
}

// Old or new, and what it holds is the same.
PreparedTask TaskedBook::bringingUp()
{
    makeOldBook(at("old"));
    copyFolder(at("old"), at("expected"));
    const Book expected = opened(at("expected"), false);
    const QString folder = onDisk("book");
    return {{QStringLiteral("open"), folder},
        [this] { freshOnDisk("old"); },
        [this, folder, expected](
            const WorkerEnd& /*end*/) { EXPECT_TRUE(sameBook(opened(folder, false), expected)); }};
}

// Done, or finished the next time the book is opened, or not begun.
PreparedTask TaskedBook::erasing()
{
    const QString folder = onDisk("book");
    const QString gone = m_before.pictures.rows().begin()->second.sha256;
    const QString file = QStringLiteral("%1/pictures/%2/%3").arg(folder, gone.left(2), gone);
    return {{QStringLiteral("erase"), folder},
        [this] { freshOnDisk("whole"); },
        [this, folder, file](const WorkerEnd& end) {
            const Book book = opened(folder);
            const bool erased = int(book.pictures.size()) == kPictures - 1;
            EXPECT_TRUE(erased || (end.exit != 0 && sameBook(book, m_before)));
            EXPECT_EQ(QFile::exists(file), !erased);
        }};
}

PreparedTask TaskedBook::repairing()
{
    const QString folder = onDisk("repaired");
    return {{QStringLiteral("repair"), at("book"), folder},
        [folder] { removeFolder(folder); },
        [this, folder](const WorkerEnd& end) {
            if (end.exit == 0) {
                EXPECT_EQ(int(opened(folder).pictures.size()), kPictures);
            }
            EXPECT_TRUE(sameBook(opened(at("book")), m_before));
        },
        true};
}

} // namespace wainscot
