// Any table written by the rules of RFC 4180 is read back the same.
#include "core/base/csv.h"

#include <QStringEncoder>

#include <gtest/gtest.h>

#include <random>

namespace wainscot {

namespace {

using Cells = std::vector<QStringList>;

QString randomCell(std::mt19937& random)
{
    static const QStringList parts{QStringLiteral("cold"),
        QStringLiteral(","),
        QStringLiteral(";"),
        QStringLiteral("\t"),
        QStringLiteral("\""),
        QStringLiteral("\n"),
        QStringLiteral(" "),
        QStringLiteral("\u00eb"),
        QStringLiteral("\u5c0f\u96e8"),
        QStringLiteral("\U0001F40C")};
    QString cell;
    for (unsigned i = random() % 5; i > 0; --i)
        cell += parts.at(int(random() % unsigned(parts.size())));
    return cell;
}

QString written(const Cells& rows, QChar separator, const QString& lineEnd)
{
    QString text;
    for (const QStringList& row : rows) {
        QStringList cells;
        for (QString cell : row) {
            cell.replace(QLatin1Char('"'), QStringLiteral("\"\""));
            cells << QLatin1Char('"') + cell + QLatin1Char('"');
        }
        text += cells.join(separator) + lineEnd;
    }
    return text;
}

QByteArray encoded(const QString& text, unsigned how)
{
    if (how == 0)
        return text.toUtf8();
    if (how == 1)
        return QByteArray("\xef\xbb\xbf") + text.toUtf8();
    QStringEncoder encoder(how == 2 ? QStringConverter::Utf16LE : QStringConverter::Utf16BE,
        QStringConverter::Flag::WriteBom);
    return encoder.encode(text);
}

TEST(RandomTable, IsReadBackEqual)
{
    const QList<QChar> separators{QLatin1Char(','), QLatin1Char(';'), QLatin1Char('\t')};
    for (unsigned seed = 1; seed <= 500; ++seed) {
        SCOPED_TRACE(seed);
        std::mt19937 random(seed);
        const int columns = 2 + int(random() % 4);
        Cells rows(1);
        for (int c = 0; c < columns; ++c)
            rows[0] << QStringLiteral("column%1").arg(c);
        for (unsigned r = random() % 8; r > 0; --r) {
            QStringList row{QStringLiteral("x")}; // so that no row is blank
            while (row.size() < columns)
                row << randomCell(random);
            rows.push_back(row);
        }
        const QString text = written(rows,
            separators.at(int(random() % 3)),
            random() % 2 == 0 ? QStringLiteral("\n") : QStringLiteral("\r\n"));
        const auto table = parseCsv(encoded(text, random() % 4), QStringLiteral("any.csv"));
        ASSERT_TRUE(table.ok());
        ASSERT_TRUE(table->faults.empty());
        ASSERT_EQ(table->columns, rows[0]);
        ASSERT_EQ(table->rows.size(), rows.size() - 1);
        for (std::size_t r = 1; r < rows.size(); ++r) {
            ASSERT_EQ(table->rows[r - 1].row, int(r) + 1);
            for (int c = 0; c < columns; ++c)
                ASSERT_EQ(table->rows[r - 1].cells.value(rows[0].at(c)), rows[r].at(c));
        }
    }
}

TEST(RandomBytes, NeverBreakTheReader)
{
    int tables = 0;
    for (unsigned seed = 1; seed <= 2000; ++seed) {
        std::mt19937 random(seed);
        QByteArray bytes;
        const QByteArray letters("ab,;\t\"\r\n \xeb\x93\xff");
        for (unsigned i = random() % 60; i > 0; --i)
            bytes.append(letters.at(int(random() % unsigned(letters.size()))));
        const auto table = parseCsv(bytes, QStringLiteral("any.csv"));
        if (!table) {
            ASSERT_FALSE(table.error().detail.isEmpty());
            continue;
        }
        ++tables;
        for (const CsvRow& row : table->rows)
            ASSERT_EQ(row.cells.size(), table->columns.size());
    }
    EXPECT_GT(tables, 100);
}

} // namespace

} // namespace wainscot
