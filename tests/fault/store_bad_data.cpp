// Data that is wrong or meant badly: a sentence with file, row and cause, and no book left behind.
#include "core/store/book_data.h"
#include "core/store/book_store.h"
#include "tests/support/random_edits.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include <random>

namespace wainscot {

namespace {

using ::testing::HasSubstr;

// Hundreds of books are quicker where nothing has to reach a real disk.
QString memoryDisk()
{
    const QString memory = QStringLiteral("/dev/shm");
    return (QDir(memory).exists() ? memory : QDir::tempPath()) + QStringLiteral("/data-XXXXXX");
}

class BadData : public ::testing::Test {
protected:
    void SetUp() override
    {
        auto store = BookStore::create(at("book"), {QStringLiteral("Robins"), {}});
        ASSERT_TRUE(store.ok());
        RandomEdits edits(11);
        for (int i = 0; i < 20; ++i)
            ASSERT_TRUE((*store)->history().perform(edits.next((*store)->book())).ok());
        ASSERT_TRUE(takeDataOut(**store, at("out")).ok());
    }

    [[nodiscard]] QString at(const char* name) const
    {
        return m_place.filePath(QString::fromLatin1(name));
    }

    void change(const char* name, const QByteArray& from, const QByteArray& to) const
    {
        QFile file(at(name));
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        QByteArray bytes = file.readAll();
        const qsizetype found = bytes.indexOf(from);
        ASSERT_GE(found, 0) << from.toStdString();
        file.seek(0);
        file.resize(0);
        file.write(bytes.replace(found, from.size(), to));
    }

    // What is said about it; fails when a book was made.
    std::string saidOf(DataForm form)
    {
        const auto made = bringDataIn(at("out"), at("new"), form);
        EXPECT_FALSE(made.ok());
        EXPECT_FALSE(QDir(at("new")).exists());
        EXPECT_TRUE(QDir(m_place.path()).entryList({QStringLiteral("*.writing-*")}).isEmpty());
        if (made.ok())
            return {};
        return (made.error().subject + QStringLiteral(" | ") + made.error().detail).toStdString();
    }

    QTemporaryDir m_place{memoryDisk()};
};

TEST_F(BadData, JsonIsNamedByLineOrRow)
{
    change("out/data.json", "\"tables\": {", "\"tables\": {,");
    EXPECT_THAT(saidOf(DataForm::Json), HasSubstr("data.json | line 4: "));
}

TEST_F(BadData, AColumnOfAnotherKindIsNamed)
{
    change("out/data.json", "{\"id\": 1, \"name\": \"", "{\"id\": 1.5, \"name\": \"");
    EXPECT_THAT(
        saidOf(DataForm::Json), HasSubstr("row 1 of children: \u201cid\u201d is not a whole"));
}

TEST_F(BadData, AnUnknownColumnIsNamed)
{
    change("out/data.json", "{\"id\": 1, \"name\": \"", "{\"id\": 1, \"score\": 3, \"name\": \"");
    EXPECT_THAT(
        saidOf(DataForm::Json), HasSubstr("row 1 of children: \u201cscore\u201d is not known"));
}

TEST_F(BadData, ALaterVersionIsLeftAlone)
{
    change("out/data.json", "\"version\": ", "\"version\": 9");
    const auto made = bringDataIn(at("out"), at("new"), DataForm::Json);
    ASSERT_FALSE(made.ok());
    EXPECT_EQ(made.error().code, ErrorCode::TooNew);
}

TEST_F(BadData, CsvIsNamedByFileAndRow)
{
    change("out/csv/quotes.csv", "\r\n1,", "\r\none,");
    EXPECT_EQ(saidOf(DataForm::Csv), "quotes.csv | row 2: \u201cid\u201d is not a whole number");
}

TEST_F(BadData, AnAudienceThatIsNoneIsNotTaken)
{
    change("out/csv/children.csv", "classroom", "everybody");
    EXPECT_THAT(saidOf(DataForm::Csv), HasSubstr("is not a list of audiences"));
}

TEST_F(BadData, ANumberTwiceIsNamed)
{
    change("out/csv/goals.csv", "\r\n2,", "\r\n1,");
    EXPECT_EQ(saidOf(DataForm::Csv), "goals.csv | row 3: its number stands there twice");
}

TEST_F(BadData, WhatPointsNowhereIsNamed)
{
    change("out/csv/no_answers.csv", "\r\n1,1,", "\r\n1,777,");
    EXPECT_EQ(saidOf(DataForm::Csv),
        "no_answers.csv | row 2: it names a row of experiences that is not there");
}

TEST_F(BadData, AMissingFileIsNamed)
{
    ASSERT_TRUE(QFile::remove(at("out/csv/walls.csv")));
    EXPECT_THAT(saidOf(DataForm::Csv), HasSubstr("walls.csv"));
}

TEST_F(BadData, APictureOutsideTheFolderIsNotReached)
{
    change("out/data.json", QByteArray(64, 'a'), "../../../../etc/passwd");
    EXPECT_THAT(saidOf(DataForm::Json), HasSubstr("has no name of 64 hexadecimal digits"));
}

TEST_F(BadData, APictureThatIsMissingIsToldAndTheRestComesIn)
{
    const auto made = bringDataIn(at("out"), at("new"), DataForm::Json);
    ASSERT_TRUE(made.ok());
    ASSERT_EQ(made->problems.size(), 1); // all random pictures name the same file
    EXPECT_THAT(made->problems.front().toStdString(), HasSubstr("is missing"));
}

// Seeded changes to one file of the data: a book that opens, or a reason and nothing left behind.
TEST_F(BadData, AnyBytesGiveABookOrAReason)
{
    std::mt19937 random(2026);
    for (const char* name : {"out/data.json", "out/csv/quotes.csv", "out/csv/prompts.csv"}) {
        QFile file(at(name));
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        const QByteArray whole = file.readAll();
        for (int round = 0; round < 60; ++round) {
            QByteArray bytes = whole;
            for (int left = 1 + int(random() % 3); left > 0; --left)
                bytes[qsizetype(random() % std::size_t(bytes.size()))] = char(random() % 256);
            file.seek(0);
            file.write(bytes);
            file.flush();
            const DataForm form =
                QByteArrayView(name).endsWith("json") ? DataForm::Json : DataForm::Csv;
            const auto made = bringDataIn(at("out"), at("new"), form);
            EXPECT_EQ(made.ok(), QDir(at("new")).exists()) << std::string(name) << ' ' << round;
            EXPECT_TRUE(
                made.ok() ? BookStore::open(at("new")).ok() : !made.error().subject.isEmpty());
            QDir(at("new")).removeRecursively();
        }
        file.seek(0);
        file.write(whole);
    }
}

} // namespace

} // namespace wainscot
