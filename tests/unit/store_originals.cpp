#include "core/store/book_store.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace wainscot {

namespace {

// SHA-256 of "abc": FIPS 180-2, appendix B.1.
const char* const kAbc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

void write(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    ASSERT_EQ(file.write(bytes), bytes.size());
}

QByteArray contentOf(const QString& path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

class KeptOriginals : public ::testing::Test {
protected:
    void SetUp() override
    {
        write(photo(), "abc");
        auto made = BookStore::create(
            m_place.filePath(QStringLiteral("book")), {QStringLiteral("Robins"), {}});
        ASSERT_TRUE(made.ok());
        m_store = std::move(*made);
    }
    [[nodiscard]] QString photo() const { return m_place.filePath(QStringLiteral("a%20#?.jpg")); }

    // A picture row that mentions an original.
    void addRow(const QString& sha256)
    {
        EditBuilder edit(m_store->book(), QStringLiteral("Gather"));
        Experience experience;
        experience.id = edit.newId<Experience>();
        edit.put(experience);
        Picture picture;
        picture.id = edit.newId<Picture>();
        picture.experience = experience.id;
        picture.sha256 = sha256;
        picture.fileName = QStringLiteral("snail.jpg");
        edit.put(picture);
        ASSERT_TRUE(m_store->history().perform(edit.take()).ok());
    }

    QTemporaryDir m_place;
    std::unique_ptr<BookStore> m_store;
};

TEST_F(KeptOriginals, AreNamedByTheirContentAndLeaveTheFileAlone)
{
    const auto sha256 = m_store->keepOriginal(photo());
    ASSERT_TRUE(sha256.ok());
    EXPECT_EQ(*sha256, QString::fromLatin1(kAbc));
    EXPECT_EQ(contentOf(m_store->originalPath(*sha256)), QByteArray("abc"));
    EXPECT_EQ(contentOf(photo()), QByteArray("abc"));
    EXPECT_TRUE(m_store->originalPath(*sha256).endsWith(QStringLiteral("pictures/ba/") + *sha256));
}

TEST_F(KeptOriginals, AreKeptOnce)
{
    ASSERT_TRUE(m_store->keepOriginal(photo()).ok());
    ASSERT_TRUE(m_store->keepOriginal(photo()).ok());
    EXPECT_EQ(Originals(m_store->picturesFolder()).all(), QStringList{QString::fromLatin1(kAbc)});
}

TEST_F(KeptOriginals, HealWhenTheSamePictureComesAgain)
{
    const auto sha256 = m_store->keepOriginal(photo());
    const QString kept = m_store->originalPath(*sha256);
    ASSERT_TRUE(QFile::setPermissions(kept, QFile::ReadOwner | QFile::WriteOwner));
    write(kept, "abd");
    ASSERT_TRUE(m_store->keepOriginal(photo()).ok());
    EXPECT_EQ(contentOf(kept), QByteArray("abc"));
}

TEST_F(KeptOriginals, SayWhichFileIsNotThere)
{
    const auto sha256 = m_store->keepOriginal(m_place.filePath(QStringLiteral("gone.jpg")));
    ASSERT_FALSE(sha256.ok());
    EXPECT_EQ(sha256.error().code, ErrorCode::NotFound);
    EXPECT_TRUE(sha256.error().subject.endsWith(QStringLiteral("gone.jpg")));
}

TEST_F(KeptOriginals, HalfWrittenOnesOfACrashAreSweptAway)
{
    const QString half = m_store->picturesFolder() + QStringLiteral("/incoming-1");
    write(half, "ab");
    const QString folder = m_store->folder();
    m_store.reset();
    ASSERT_TRUE(BookStore::open(folder).ok());
    EXPECT_FALSE(QFile::exists(half));
}

TEST_F(KeptOriginals, AreFoundWholeByVerify)
{
    addRow(*m_store->keepOriginal(photo()));
    const auto report = m_store->verify();
    ASSERT_TRUE(report.ok());
    EXPECT_TRUE(report->ok());
    EXPECT_EQ(report->pictures, 1);
    EXPECT_TRUE(report->orphans.isEmpty());
}

TEST_F(KeptOriginals, AFlippedByteIsFoundByVerify)
{
    const auto sha256 = m_store->keepOriginal(photo());
    addRow(*sha256);
    const QString kept = m_store->originalPath(*sha256);
    ASSERT_TRUE(QFile::setPermissions(kept, QFile::ReadOwner | QFile::WriteOwner));
    write(kept, "ab\x62");
    const auto report = m_store->verify();
    ASSERT_TRUE(report.ok());
    ASSERT_EQ(report->problems.size(), 1);
    EXPECT_EQ(report->problems.first(),
        QStringLiteral("snail.jpg (picture 1) has changed since it was gathered."));
}

TEST_F(KeptOriginals, AreLookedForInTheirFolderWhateverABookSays)
{
    const Originals originals(QStringLiteral("book/pictures"));
    for (const QString& bad : {QStringLiteral("../../secret.jpg"),
             QStringLiteral("ab/../../../secret.jpg"),
             QStringLiteral("/etc/hostname"),
             QStringLiteral("..\\..\\secret.jpg"),
             QString(QChar(0)) + QStringLiteral("ab"),
             QStringLiteral("ab\n"),
             QString()}) {
        const QString path = originals.pathOf(bad);
        EXPECT_EQ(QDir::cleanPath(path), path) << path.toStdString();
        EXPECT_TRUE(path.startsWith(QStringLiteral("book/pictures/"))) << path.toStdString();
    }
    EXPECT_EQ(originals.pathOf(QString(64, QLatin1Char('a'))),
        QStringLiteral("book/pictures/aa/") + QString(64, QLatin1Char('a')));
}

TEST_F(KeptOriginals, AMissingOneIsFoundByVerify)
{
    const auto sha256 = m_store->keepOriginal(photo());
    addRow(*sha256);
    ASSERT_TRUE(QFile::remove(m_store->originalPath(*sha256)));
    const auto report = m_store->verify();
    ASSERT_EQ(report->problems.size(), 1);
    EXPECT_EQ(report->problems.first(),
        QStringLiteral("snail.jpg (picture 1) is missing from the book."));
}

TEST_F(KeptOriginals, OnesNoRowMentionsAreToldButAreNoProblem)
{
    ASSERT_TRUE(m_store->keepOriginal(photo()).ok());
    const auto report = m_store->verify();
    EXPECT_TRUE(report->ok());
    EXPECT_EQ(report->orphans, QStringList{QString::fromLatin1(kAbc)});
}

TEST_F(KeptOriginals, VerifyStopsWhenAsked)
{
    addRow(*m_store->keepOriginal(photo()));
    const auto report = m_store->verify([](int, int) { return false; });
    ASSERT_FALSE(report.ok());
    EXPECT_EQ(report.error().code, ErrorCode::Cancelled);
}

} // namespace

} // namespace wainscot
