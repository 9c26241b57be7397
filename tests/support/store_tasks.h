// What a book is put through on a bad disk: the tasks of the worker program, how each is prepared
// again, and what must hold of the book however it ended.
#pragma once

#include "tests/support/worked_book.h"

#include <functional>
#include <ostream>
#include <vector>

namespace wainscot {

enum class StoreTask { New, Gather, Pack, Unpack, BringUp, Erase, Repair };
[[nodiscard]] const std::vector<StoreTask>& storeTasks(); // all of them
[[nodiscard]] const char* nameOf(StoreTask task); // one word, for the name of a test
std::ostream& operator<<(std::ostream& to, StoreTask task);

struct PreparedTask {
    QStringList words; // for the worker
    std::function<void()> prepare; // before each run
    std::function<void(const WorkerEnd&)> check; // after it; may write, so the disk is whole again
    bool writesPictures = false; // many pages
};

class TaskedBook : public WorkedBook, public ::testing::WithParamInterface<StoreTask> {
protected:
    // `disk`: folder in which everything lies that the task writes, within the worker's own.
    // `mayExceed`: how many more pictures may be there than were acknowledged.
    explicit TaskedBook(QString disk = {}, int mayExceed = 0)
        : m_disk(std::move(disk))
        , m_mayExceed(mayExceed)
    {
    }
    void SetUp() override;
    // REQUIRES: the disk can be written to
    PreparedTask prepared(StoreTask task);

private:
    [[nodiscard]] QString onDisk(const char* name) const;
    void freshOnDisk(const char* from);
    PreparedTask makingNew();
    PreparedTask gathering();
    PreparedTask packing();
    PreparedTask unpacking();
    PreparedTask bringingUp();
    PreparedTask erasing();
    PreparedTask repairing();

    QString m_disk;
    int m_mayExceed = 0;
};

} // namespace wainscot
