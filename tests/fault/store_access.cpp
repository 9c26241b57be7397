// Books that cannot be had: open elsewhere, read-only, damaged, missing.
#include "core/store/book_store.h"
#include "tests/support/book_equality.h"

#include <QDir>
#include <QFile>
#include <QLockFile>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <chrono>
#include <sys/stat.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace wainscot {

namespace {

class HardToOpen : public ::testing::Test {
protected:
    void SetUp() override
    {
        // Another user has to reach it.
        ASSERT_EQ(::chmod(QFile::encodeName(m_place.path()).constData(), 0755), 0);
        auto store = BookStore::create(folder(), {QStringLiteral("Robins"), {}});
        ASSERT_TRUE(store.ok());
        m_before = (*store)->book();
    }
    [[nodiscard]] QString folder() const { return m_place.filePath(QStringLiteral("book")); }
    [[nodiscard]] QString file() const { return folder() + QStringLiteral("/book.wainscot"); }

    void damage(qint64 at, const QByteArray& bytes) const
    {
        QFile broken(file());
        ASSERT_TRUE(broken.open(QIODevice::ReadWrite));
        ASSERT_TRUE(broken.seek(at));
        ASSERT_EQ(broken.write(bytes), bytes.size());
    }

    QTemporaryDir m_place;
    Book m_before;
};

ErrorCode codeOf(const QString& path, Access access)
{
    const auto store = BookStore::open(path, access);
    EXPECT_FALSE(store.ok());
    return store.ok() ? ErrorCode::Internal : store.error().code;
}

// Runs a check in a process of its own, as a user without special rights.
template <class Check> int asNobody(Check check)
{
    const pid_t child = ::fork();
    if (child == 0) {
        if (::geteuid() == 0 && (::setgid(65534) != 0 || ::setuid(65534) != 0))
            ::_exit(99);
        ::_exit(check());
    }
    int status = 0;
    ::waitpid(child, &status, 0);
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

TEST_F(HardToOpen, ASecondWriterIsToldItIsInUseAndMayRead)
{
    const auto first = BookStore::open(folder());
    ASSERT_TRUE(first.ok());
    EXPECT_EQ(codeOf(folder(), Access::ReadWrite), ErrorCode::InUse);
    auto reader = BookStore::open(folder(), Access::ReadOnly);
    ASSERT_TRUE(reader.ok());
    EXPECT_TRUE((*reader)->isReadOnly());
    EXPECT_TRUE(sameBook((*reader)->book(), m_before));
}

// Somebody who reads holds it so while taking back what a program that died left half done.
TEST_F(HardToOpen, WhatIsInUseForAMomentIsWaitedFor)
{
    QLockFile held(file() + QStringLiteral(".lock"));
    ASSERT_TRUE(held.tryLock(0));
    std::thread reader([&] {
        std::this_thread::sleep_for(std::chrono::milliseconds(60));
        held.unlock();
    });
    const auto opened = BookStore::open(folder());
    reader.join();
    EXPECT_TRUE(opened.ok());
}

TEST_F(HardToOpen, ASecondProgramIsToldItIsInUse)
{
    const auto first = BookStore::open(folder());
    ASSERT_TRUE(first.ok());
    const pid_t other = ::fork();
    if (other == 0) {
        const auto second = BookStore::open(folder());
        ::_exit(!second.ok() && second.error().code == ErrorCode::InUse ? 0 : 1);
    }
    int status = 0;
    ::waitpid(other, &status, 0);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0);
}

TEST_F(HardToOpen, AReaderChangesNothing)
{
    auto reader = BookStore::open(folder(), Access::ReadOnly);
    ASSERT_TRUE(reader.ok());
    EditBuilder edit((*reader)->book(), QStringLiteral("New child"));
    Child child;
    child.id = edit.newId<Child>();
    edit.put(child);
    const auto done = (*reader)->history().perform(edit.take());
    ASSERT_FALSE(done.ok());
    EXPECT_EQ(done.error().code, ErrorCode::CannotWrite);
    EXPECT_TRUE(sameBook((*reader)->book(), m_before));
    EXPECT_FALSE((*reader)->keepOriginal(file()).ok());
}

TEST_F(HardToOpen, AReadOnlyFolderOpensOnlyForReading)
{
    ASSERT_EQ(::chmod(QFile::encodeName(folder()).constData(), 0555), 0);
    ASSERT_EQ(::chmod(QFile::encodeName(file()).constData(), 0444), 0);
    const int answer = asNobody([&] {
        const auto writer = BookStore::open(folder());
        if (writer.ok() || writer.error().code != ErrorCode::CannotWrite)
            return 1;
        const auto reader = BookStore::open(folder(), Access::ReadOnly);
        return reader.ok() && sameBook((*reader)->book(), m_before) ? 0 : 2;
    });
    EXPECT_EQ(::chmod(QFile::encodeName(folder()).constData(), 0755), 0);
    EXPECT_EQ(answer, 0);
}

TEST_F(HardToOpen, ANewBookInAReadOnlyFolderIsRefused)
{
    const QString closed = m_place.filePath(QStringLiteral("closed"));
    ASSERT_TRUE(QDir().mkpath(closed));
    ASSERT_EQ(::chmod(QFile::encodeName(closed).constData(), 0555), 0);
    const int answer = asNobody([&] {
        const auto store = BookStore::create(closed + QStringLiteral("/book"), {});
        return !store.ok() && store.error().code == ErrorCode::CannotWrite ? 0 : 1;
    });
    EXPECT_EQ(::chmod(QFile::encodeName(closed).constData(), 0755), 0);
    EXPECT_EQ(answer, 0);
}

TEST_F(HardToOpen, WhatIsNoDatabaseIsDamaged)
{
    damage(0, QByteArray(200, 'x'));
    EXPECT_EQ(codeOf(folder(), Access::ReadWrite), ErrorCode::Damaged);
    EXPECT_EQ(codeOf(folder(), Access::ReadOnly), ErrorCode::Damaged);
}

TEST_F(HardToOpen, ABrokenPageIsDamaged)
{
    damage(4096 + 3, QByteArray(2000, '\xee'));
    EXPECT_EQ(codeOf(folder(), Access::ReadWrite), ErrorCode::Damaged);
}

TEST_F(HardToOpen, AFileCutShortIsDamaged)
{
    ASSERT_TRUE(QFile::resize(file(), QFile(file()).size() / 2));
    EXPECT_EQ(codeOf(folder(), Access::ReadWrite), ErrorCode::Damaged);
}

TEST_F(HardToOpen, AnEmptyFileIsDamagedAndStaysEmpty)
{
    ASSERT_TRUE(QFile::resize(file(), 0));
    EXPECT_EQ(codeOf(folder(), Access::ReadWrite), ErrorCode::Damaged);
    EXPECT_EQ(QFile(file()).size(), 0);
}

TEST_F(HardToOpen, NothingThereIsNotFound)
{
    EXPECT_EQ(codeOf(folder() + QStringLiteral("2"), Access::ReadWrite), ErrorCode::NotFound);
    EXPECT_FALSE(QFile::exists(folder() + QStringLiteral("2")));
    EXPECT_EQ(codeOf(m_place.path(), Access::ReadOnly), ErrorCode::NotFound);
}

} // namespace

} // namespace wainscot
