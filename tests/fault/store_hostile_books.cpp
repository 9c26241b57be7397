// Books made by others with more in their database than tables: nothing of it is ever run.
#include "core/store/book_store.h"
#include "core/store/repair.h"
#include "tests/support/packed_book.h"

#include <QDir>
#include <QElapsedTimer>
#include <QSqlDatabase>
#include <QSqlQuery>

namespace wainscot {
namespace {

class HostileBook : public BookToPack {
protected:
    // Changes a database by hand.
    void change(const char* sql, const char* file = "book/book.wainscot")
    {
        m_store.reset();
        const QString connection = QStringLiteral("by hand");
        {
            QSqlDatabase db = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), connection);
            db.setDatabaseName(at(file));
            ASSERT_TRUE(db.open());
            QSqlQuery query(db);
            for (const QString& one : QString::fromLatin1(sql).split(QStringLiteral(";;")))
                ASSERT_TRUE(query.exec(one)) << one.toStdString();
        }
        QSqlDatabase::removeDatabase(connection);
    }
    static constexpr auto kEndless =
        "DROP TABLE kept_pairs;;"
        "CREATE VIEW kept_pairs (id, answer_id, other_id, is_apart) AS WITH RECURSIVE "
        "n (i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) SELECT i, i, i, 0 FROM n";
    void expectRefused()
    {
        QElapsedTimer timer;
        timer.start();
        for (const Access access : {Access::ReadWrite, Access::ReadOnly}) {
            const auto opened = BookStore::open(at("book"), access);
            ASSERT_FALSE(opened.ok());
            EXPECT_EQ(opened.error().code, ErrorCode::Damaged);
            EXPECT_EQ(opened.error().detail, QStringLiteral("it holds more than a book does"));
        }
        const auto repaired = repairBook(at("book"), at("repaired"));
        EXPECT_TRUE(repaired.ok() || !repaired.error().detail.isEmpty());
        EXPECT_LT(timer.elapsed(), 30'000) << "or it never ends";
    }
};

TEST_F(HostileBook, ThatNeverEndsIsRefused)
{
    change(kEndless);
    expectRefused();
}

TEST_F(HostileBook, BehindAnEarlierDayIsPassedOver)
{
    ASSERT_TRUE(QDir().mkpath(at("book/earlier")));
    const char* const earlier = "book/earlier/2026-01-05T10-00-00.wainscot";
    ASSERT_TRUE(QFile::copy(at("book/book.wainscot"), at(earlier)));
    auto opened = [&] {
        m_store.reset();
        return std::move(*BookStore::open(at("book")));
    };
    m_store = opened();
    ASSERT_EQ(m_store->earlierStates().size(), 1);
    change("DROP TABLE quotes;;CREATE VIEW quotes AS WITH RECURSIVE n (i) AS "
           "(SELECT 1 UNION ALL SELECT i + 1 FROM n) SELECT i FROM n",
        earlier);
    m_store = opened();
    EXPECT_TRUE(m_store->earlierStates().isEmpty());
}

TEST_F(HostileBook, ThatChangesWhatIsNotTouchedIsRefused)
{
    change("CREATE TRIGGER also AFTER UPDATE ON book BEGIN "
           "UPDATE children SET permissions = 1048575; END");
    expectRefused();
}

TEST_F(HostileBook, ThatCallsOtherCodeIsRefused)
{
    change("CREATE VIRTUAL TABLE found USING fts5 (words)");
    expectRefused();
}

} // namespace
} // namespace wainscot
