#include "core/base/csv.h"

#include <QFile>
#include <QStringEncoder>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace wainscot {

namespace {

CsvTable parsed(const QByteArray& bytes)
{
    auto table = parseCsv(bytes, QStringLiteral("class.csv"));
    EXPECT_TRUE(table.ok()) << table.error().detail.toStdString();
    return table.ok() ? std::move(*table) : CsvTable();
}

QString whyNot(const QByteArray& bytes)
{
    const auto table = parseCsv(bytes, QStringLiteral("class.csv"));
    EXPECT_FALSE(table.ok());
    if (table.ok())
        return {};
    EXPECT_EQ(table.error().code, ErrorCode::Damaged);
    EXPECT_EQ(table.error().subject, QStringLiteral("class.csv"));
    return table.error().detail;
}

TEST(ReadTable, TakesColumnsInAnyOrderAndCase)
{
    const CsvTable table = parsed("Born,NAME, Shown as \n2020-04,Mei,M\n");
    ASSERT_EQ(table.rows.size(), 1U);
    EXPECT_TRUE(table.has(QStringLiteral("shown_as")));
    EXPECT_EQ(table.rows[0].cell(QStringLiteral("name")), QStringLiteral("Mei"));
    EXPECT_EQ(table.rows[0].cell(QStringLiteral("shown_as")), QStringLiteral("M"));
    EXPECT_EQ(table.rows[0].cell(QStringLiteral("no such")), QString());
}

TEST(ReadTable, FindsTheSeparator)
{
    for (const QByteArray& bytes : {QByteArray("name,words\nMei,\"a;b\tc\"\n"),
             QByteArray("name;words\nMei;\"a;b\tc\"\n"),
             QByteArray("name\twords\nMei\t\"a;b\tc\"\n"),
             QByteArray("sep=|\nname|words\nMei|\"a;b\tc\"\n")}) {
        const CsvTable table = parsed(bytes);
        ASSERT_EQ(table.rows.size(), 1U) << bytes.constData();
        EXPECT_EQ(table.rows[0].cell(QStringLiteral("words")), QStringLiteral("a;b\tc"));
    }
}

TEST(ReadTable, CountsOnlySeparatorsOutsideQuotations)
{
    const CsvTable table = parsed("name;\"words, said, here\"\nMei;cold\n");
    EXPECT_EQ(table.rows.at(0).cell(QStringLiteral("words, said, here")), QStringLiteral("cold"));
}

TEST(ReadTable, DecodesWhatSpreadsheetsWrite)
{
    const QString text = QStringLiteral("name\nZo\u00eb \u2013 \u201chi\u201d\n");
    QStringEncoder little(QStringConverter::Utf16LE, QStringConverter::Flag::WriteBom);
    QStringEncoder big(QStringConverter::Utf16BE, QStringConverter::Flag::WriteBom);
    for (const QByteArray& bytes : {text.toUtf8(),
             QByteArray("\xef\xbb\xbf") + text.toUtf8(),
             QByteArray(little.encode(text)),
             QByteArray(big.encode(text)),
             QByteArray("name\nZo\xeb \x96 \x93hi\x94\n")}) { // Windows-1252
        EXPECT_EQ(parsed(bytes).rows.at(0).cell(QStringLiteral("name")),
            QStringLiteral("Zo\u00eb \u2013 \u201chi\u201d"));
    }
}

TEST(ReadTable, KeepsChineseAndArabicNames)
{
    const CsvTable table =
        parsed(QStringLiteral("name\n\u5c0f\u96e8\n\u0644\u064a\u0644\u0649\n").toUtf8());
    EXPECT_EQ(table.rows.at(0).cell(QStringLiteral("name")), QStringLiteral("\u5c0f\u96e8"));
    EXPECT_EQ(
        table.rows.at(1).cell(QStringLiteral("name")), QStringLiteral("\u0644\u064a\u0644\u0649"));
}

TEST(ReadTable, KeepsLineBreaksAndQuotationMarksInQuotedCells)
{
    const CsvTable table =
        parsed("name,words\r\nMei,\"I said \"\"no\"\"\r\nand ran\"\r\nAda,x\r\n");
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(
        table.rows[0].cell(QStringLiteral("words")), QStringLiteral("I said \"no\"\nand ran"));
    EXPECT_EQ(table.rows[1].row, 3); // as a spreadsheet counts
    EXPECT_EQ(table.rows[1].line, 4); // as an editor counts
}

TEST(ReadTable, LeavesOutBlankRowsButCountsThem)
{
    const CsvTable table = parsed("name,words\n\n,\nMei,cold");
    ASSERT_EQ(table.rows.size(), 1U);
    EXPECT_EQ(table.rows[0].row, 4);
    EXPECT_TRUE(table.faults.empty());
}

TEST(ReadTable, TellsRaggedRowsWithFileRowAndCause)
{
    const CsvTable table = parsed("name,words\nMei,cold,wet\nAda\nBen,ice,,\n");
    ASSERT_EQ(table.faults.size(), 2U);
    EXPECT_EQ(
        table.faults[0].why, QStringLiteral("class.csv, row 2: 3 cells, but the header has 2."));
    EXPECT_EQ(table.faults[1].row, 3);
    ASSERT_EQ(table.rows.size(), 1U); // empty cells beyond the header do no harm
    EXPECT_EQ(table.rows[0].cell(QStringLiteral("name")), QStringLiteral("Ben"));
}

TEST(ReadTable, RefusesWhatIsNoTable)
{
    EXPECT_EQ(whyNot(""), QStringLiteral("the file is empty"));
    EXPECT_EQ(whyNot(" \n\n"), QStringLiteral("the file is empty"));
    EXPECT_EQ(whyNot(QByteArray("PK\0\0ab", 6)), QStringLiteral("this is not a text file"));
    EXPECT_EQ(
        whyNot("name,Name\nx,y\n"), QStringLiteral("row 1 has the column \u201cname\u201d twice"));
    EXPECT_EQ(whyNot(",,\nx,y,z\n"), QStringLiteral("row 1 names no column"));
    EXPECT_EQ(whyNot("name\nMei\n\"Ada\nBen\n"),
        QStringLiteral("row 3: the quotation mark in line 3 is never closed"));
    EXPECT_EQ(whyNot("\"name\nMei\n"),
        QStringLiteral("row 1: the quotation mark in line 1 is never closed"));
}

TEST(ReadTable, SaysWhenTheFileIsNotThereOrNoFile)
{
    const QTemporaryDir place;
    const auto gone = readCsv(place.filePath(QStringLiteral("gone.csv")));
    ASSERT_FALSE(gone.ok());
    EXPECT_EQ(gone.error().code, ErrorCode::NotFound);
    const auto folder = readCsv(place.path());
    ASSERT_FALSE(folder.ok());
    EXPECT_EQ(folder.error().code, ErrorCode::CannotRead);
}

TEST(ReadTable, ReadsAFileByName)
{
    const QTemporaryDir place;
    QFile file(place.filePath(QStringLiteral("kinder.csv")));
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write("name\nMei\n");
    file.close();
    const auto table = readCsv(file.fileName());
    ASSERT_TRUE(table.ok());
    EXPECT_EQ(table->file, QStringLiteral("kinder.csv"));
    EXPECT_EQ(table->rows.size(), 1U);
}

} // namespace

} // namespace wainscot
