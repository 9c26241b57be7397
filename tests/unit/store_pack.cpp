// A book packed and unpacked is the same book; what is damaged is named.
#include <QDir>

#include "tests/support/book_equality.h"
#include "tests/support/packed_book.h"

namespace wainscot {
namespace {

using Pack = BookToPack;

TEST_F(Pack, UnpacksToTheSameBook)
{
    const auto packed = packBook(*m_store, at("robins.zip"));
    ASSERT_TRUE(packed.ok());
    EXPECT_EQ(packed->pictures, 2);
    const auto unpacked = unpackBook(at("robins.zip"), at("other"));
    ASSERT_TRUE(unpacked.ok()) << unpacked.error().detail.toStdString();
    EXPECT_EQ(unpacked->pictures, 2);
    EXPECT_EQ(unpacked->bytes, packed->bytes);
    auto other = BookStore::open(at("other"));
    ASSERT_TRUE(other.ok());
    EXPECT_TRUE(sameBook((*other)->book(), m_store->book()));
    const auto report = (*other)->verify();
    ASSERT_TRUE(report.ok());
    EXPECT_TRUE(report->ok());
    EXPECT_EQ(report->pictures, 2);
}

TEST_F(Pack, TheSameBookMakesTheSameFile)
{
    ASSERT_TRUE(packBook(*m_store, at("a.zip")).ok());
    ASSERT_TRUE(packBook(*m_store, at("b.zip")).ok());
    EXPECT_EQ(contentOf(at("a.zip")), contentOf(at("b.zip")));
}

TEST_F(Pack, TakesNothingAlongThatWasTakenOut)
{
    EditBuilder edit(m_store->book(), QStringLiteral("Words"));
    Child child;
    child.id = edit.newId<Child>();
    child.name = QStringLiteral("Zephyrine");
    edit.put(child);
    ASSERT_TRUE(m_store->history().perform(edit.take()).ok());
    ASSERT_TRUE(m_store->history().undo().ok());
    ASSERT_TRUE(packBook(*m_store, at("robins.zip")).ok());
    ASSERT_TRUE(unpackBook(at("robins.zip"), at("other")).ok());
    EXPECT_FALSE(contentOf(at("other/book.wainscot")).contains("Zephyrine"));
    // A picture that no row mentions any more stays behind too.
    writeFile(at("photo.jpg"), "undone");
    const auto orphan = m_store->keepOriginal(at("photo.jpg"));
    ASSERT_TRUE(orphan.ok());
    const auto packed = packBook(*m_store, at("again.zip"));
    ASSERT_TRUE(packed.ok());
    EXPECT_EQ(packed->pictures, 2);
}

TEST_F(Pack, NamesAPictureThatChangedAndLeavesTheOldFile)
{
    ASSERT_TRUE(packBook(*m_store, at("robins.zip")).ok());
    const QByteArray before = contentOf(at("robins.zip"));
    const QString original = m_store->originalPath(m_shas[0]);
    QFile::setPermissions(original, QFile::ReadOwner | QFile::WriteOwner);
    writeFile(original, "other");
    const auto packed = packBook(*m_store, at("robins.zip"));
    ASSERT_FALSE(packed.ok());
    EXPECT_EQ(packed.error().code, ErrorCode::Damaged);
    EXPECT_EQ(contentOf(at("robins.zip")), before);
}

TEST_F(Pack, StopsWhenToldTo)
{
    const auto stop = [](qint64, qint64) { return false; };
    const auto packed = packBook(*m_store, at("robins.zip"), stop);
    ASSERT_FALSE(packed.ok());
    EXPECT_EQ(packed.error().code, ErrorCode::Cancelled);
    EXPECT_FALSE(QFile::exists(at("robins.zip")));
    ASSERT_TRUE(packBook(*m_store, at("robins.zip")).ok());
    const auto unpacked = unpackBook(at("robins.zip"), at("other"), stop);
    ASSERT_FALSE(unpacked.ok());
    EXPECT_EQ(unpacked.error().code, ErrorCode::Cancelled);
    EXPECT_TRUE(nothingBut(
        {QStringLiteral("book"), QStringLiteral("photo.jpg"), QStringLiteral("robins.zip")}));
}

TEST_F(Pack, NeverUnpacksOverWhatIsThere)
{
    ASSERT_TRUE(packBook(*m_store, at("robins.zip")).ok());
    const auto unpacked = unpackBook(at("robins.zip"), at("book"));
    ASSERT_FALSE(unpacked.ok());
    EXPECT_EQ(unpacked.error().code, ErrorCode::WrongUse);
    EXPECT_TRUE(m_store->verify()->ok());
    EXPECT_EQ(unpackBook(at("nothing.zip"), at("other")).error().code, ErrorCode::NotFound);
}

} // namespace
} // namespace wainscot
