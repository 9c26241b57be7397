// Books damaged in every place: verify finds it, repair saves what is left, nothing is overwritten.
#include "core/store/repair.h"

#include "core/store/book_store.h"
#include "tests/support/packed_book.h"

#include <QCryptographicHash>
#include <QDir>
#include <QDirIterator>

#include <gmock/gmock.h>

#include <random>

namespace wainscot {

namespace {

using ::testing::HasSubstr;

constexpr qint64 kPage = 4096; // SQLite's default page

// A class of twelve with words over many pages of the database, two pictures and a panel.
class DamagedBook : public BookToPack {
protected:
    void SetUp() override
    {
        BookToPack::SetUp();
        EditBuilder edit(m_store->book(), QStringLiteral("Fill"));
        const Picture seen = m_store->book().pictures.rows().begin()->second;
        Display display;
        display.id = edit.newId<Display>();
        display.experience = seen.experience;
        edit.put(display);
        Panel panel{edit.newId<Panel>(), display.id};
        edit.put(panel);
        for (int i = 0; i < 12; ++i) {
            Child child;
            child.id = edit.newId<Child>();
            child.name = QStringLiteral("Child %1").arg(i);
            child.permissions = Permissions::all();
            edit.put(child);
            for (int j = 0; j < 10; ++j) {
                Quote quote;
                quote.id = edit.newId<Quote>();
                quote.experience = seen.experience;
                quote.child = child.id;
                quote.words = QStringLiteral("the ice gos crak ").repeated(20);
                edit.put(quote);
                Piece piece;
                piece.id = edit.newId<Piece>();
                piece.panel = panel.id;
                piece.quote = quote.id;
                edit.put(piece);
            }
        }
        ASSERT_TRUE(m_store->history().perform(edit.take()).ok());
        m_whole = m_store->book();
        m_store.reset();
        QDir(at("book") + QStringLiteral("/earlier")).removeRecursively();
    }

    [[nodiscard]] QString file() const { return at("book/book.wainscot"); }

    void TearDown() override
    {
        RecordProperty("damaged_books", m_damaged);
        RecordProperty("losses", HasFailure() ? 1 : 0);
    }

    // Everything in the damaged book's folder, so that a change would be seen.
    [[nodiscard]] QByteArray fingerprint() const
    {
        QCryptographicHash hash(QCryptographicHash::Sha256);
        QStringList files;
        QDirIterator all(at("book"), QDir::Files | QDir::Hidden, QDirIterator::Subdirectories);
        while (all.hasNext())
            files << all.next();
        files.sort();
        for (const QString& one : files)
            hash.addData(one.toUtf8() + contentOf(one));
        return hash.result();
    }

    // Repairs into a new folder; the new book is whole and the old one as it was.
    RepairReport repaired()
    {
        const QByteArray before = fingerprint();
        ++m_damaged;
        const QString to = at("repaired");
        QDir(to).removeRecursively();
        const auto report = repairBook(at("book"), to);
        EXPECT_TRUE(report.ok()) << report.error().detail.toStdString();
        EXPECT_EQ(fingerprint(), before);
        auto store = BookStore::open(to);
        EXPECT_TRUE(store.ok());
        if (!report.ok() || !store.ok())
            return {};
        EXPECT_EQ((*store)->verify()->problems, QStringList());
        m_saved = (*store)->book();
        return *report;
    }

    Book m_whole;
    Book m_saved;
    int m_damaged = 0;
    int m_lost[2] = {0, 0}; // pages that cost at most eighty rows, and more
};

TEST_F(DamagedBook, ThatIsWholeIsSavedWhole)
{
    const RepairReport report = repaired();
    EXPECT_EQ(report.problems, QStringList());
    EXPECT_TRUE(m_saved.quotes.rows() == m_whole.quotes.rows());
    EXPECT_TRUE(m_saved.pieces.rows() == m_whole.pieces.rows());
    EXPECT_TRUE(m_saved.children.rows() == m_whole.children.rows());
}

TEST_F(DamagedBook, WithOneBrokenPageLosesNoMoreThanThatPage)
{
    const QByteArray whole = contentOf(file());
    const qsizetype pages = whole.size() / kPage;
    ASSERT_GT(pages, 30);
    std::mt19937 random(7);
    for (qsizetype page = 1; page < pages; ++page) {
        SCOPED_TRACE(page);
        QByteArray broken = whole;
        for (qsizetype i = 0; i < kPage; ++i)
            broken[page * kPage + i] = char(random());
        writeFile(file(), broken);
        const RepairReport report = repaired();
        // A page holds at most about seventy of these rows.
        if (!report.all()) {
            const auto lost = m_whole.quotes.size() + m_whole.pieces.size()
                + m_whole.children.size() - m_saved.quotes.size() - m_saved.pieces.size()
                - m_saved.children.size();
            m_lost[lost > 80 ? 1 : 0] += 1;
        }
    }
    RecordProperty("pages", int(pages));
    // Only five pages that say what the tables are, and two from which a whole table hangs; for
    // those an earlier day helps.
    EXPECT_LE(m_lost[1], 7);
    writeFile(file(), whole);
}

TEST_F(DamagedBook, TakesLostRowsFromAnEarlierDayButNoPermission)
{
    {
        auto store = BookStore::open(at("book")); // an edit keeps the day
        ASSERT_TRUE(store.ok());
        EditBuilder edit((*store)->book(), QStringLiteral("Touch"));
        edit.setInfo({QStringLiteral("Robins of today"), {}});
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
    }
    QByteArray broken = contentOf(file());
    std::fill(broken.begin() + 100, broken.end(), '\xff'); // all but the first bytes
    writeFile(file(), broken);
    const RepairReport report = repaired();
    EXPECT_FALSE(report.all());
    EXPECT_TRUE(m_saved.quotes.rows() == m_whole.quotes.rows());
    EXPECT_EQ(m_saved.children.size(), m_whole.children.size());
    for (const auto& [id, child] : m_saved.children.rows())
        EXPECT_EQ(child.permissions, Permissions());
    for (const auto& [id, picture] : m_saved.pictures.rows())
        EXPECT_FALSE(picture.people.lookedAt);
}

TEST_F(DamagedBook, WithoutItsDatabaseStillSavesThePictures)
{
    QFile::remove(file());
    const RepairReport report = repaired();
    ASSERT_EQ(report.problems.size(), 2);
    EXPECT_THAT(report.problems.at(1).toStdString(), HasSubstr("2 pictures are kept"));
    QDirIterator kept(at("repaired/pictures"), QDir::Files, QDirIterator::Subdirectories);
    int pictures = 0;
    for (; kept.hasNext(); kept.next())
        ++pictures;
    EXPECT_EQ(pictures, 2);
}

TEST_F(DamagedBook, NamesAPictureThatIsMissingAndKeepsOneThatChanged)
{
    auto store = BookStore::open(at("book"), Access::ReadOnly);
    ASSERT_TRUE(store.ok());
    const auto& pictures = m_whole.pictures.rows();
    const QString missing = (*store)->originalPath(pictures.begin()->second.sha256);
    const QString changed = (*store)->originalPath(pictures.rbegin()->second.sha256);
    ASSERT_TRUE(QFile::remove(missing));
    QFile::setPermissions(changed, QFile::ReadOwner | QFile::WriteOwner);
    QByteArray bytes = contentOf(changed);
    bytes[5] = char(bytes.at(5) ^ 1);
    writeFile(changed, bytes);
    EXPECT_EQ((*store)->verify()->problems.size(), 2);
    store->reset();
    const RepairReport report = repaired();
    ASSERT_EQ(report.problems.size(), 2);
    EXPECT_THAT(report.problems.at(0).toStdString(), HasSubstr("is lost"));
    EXPECT_THAT(report.problems.at(1).toStdString(), HasSubstr("kept as it is now"));
    ASSERT_EQ(m_saved.pictures.size(), 1U);
    EXPECT_FALSE(m_saved.pictures.rows().begin()->second.people.lookedAt);
}

TEST_F(DamagedBook, CutOffAnywhereIsRepaired)
{
    const QByteArray whole = contentOf(file());
    for (qsizetype length = 0; length < whole.size(); length += 10'001) {
        SCOPED_TRACE(length);
        writeFile(file(), whole.left(length));
        repaired();
    }
}

TEST_F(DamagedBook, IsFoundByVerifyWhereverABitOfAPictureFlips)
{
    auto store = BookStore::open(at("book"), Access::ReadOnly);
    ASSERT_TRUE(store.ok());
    for (const auto& [id, picture] : m_whole.pictures.rows()) {
        const QString path = (*store)->originalPath(picture.sha256);
        QFile::setPermissions(path, QFile::ReadOwner | QFile::WriteOwner);
        const QByteArray bytes = contentOf(path);
        for (qsizetype i = 0; i < bytes.size(); i += 1 + bytes.size() / 20) {
            QByteArray flipped = bytes;
            flipped[i] = char(flipped.at(i) ^ 0x10);
            writeFile(path, flipped);
            EXPECT_EQ((*store)->verify()->problems.size(), 1);
        }
        writeFile(path, bytes);
    }
    EXPECT_TRUE((*store)->verify()->ok());
}

TEST_F(DamagedBook, NeedsAnEmptyFolderAndABook)
{
    EXPECT_EQ(repairBook(at("book"), at("book")).error().code, ErrorCode::WrongUse);
    EXPECT_EQ(repairBook(at("nothing"), at("new")).error().code, ErrorCode::NotFound);
    EXPECT_FALSE(QFile::exists(at("new")));
}

} // namespace

} // namespace wainscot
