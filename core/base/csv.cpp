#include "core/base/csv.h"

#include "core/base/text_decoding.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>

namespace wainscot {

namespace {

constexpr qint64 kLargestFile = 64LL * 1024 * 1024;

struct Record {
    int line = 1;
    QStringList cells;
    [[nodiscard]] bool isBlank() const
    {
        return std::all_of(cells.begin(), cells.end(), [](const QString& cell) {
            return cell.trimmed().isEmpty();
        });
    }
};

// Cuts a text into records, one call for each.
class Cutter {
public:
    Cutter(QString text, CsvBreaks breaks)
        : m_text(std::move(text))
    {
        if (breaks == CsvBreaks::AsOne) {
            m_text.replace(QStringLiteral("\r\n"), QStringLiteral("\n"));
            m_text.replace(QLatin1Char('\r'), QLatin1Char('\n'));
        }
        chooseSeparator();
    }

    [[nodiscard]] bool atEnd() const { return m_at >= m_text.size(); }
    // The line of a quotation that never ended; 0 = all ended.
    [[nodiscard]] int openQuotation() const { return m_openQuotation; }
    Record next();

private:
    void chooseSeparator();
    QString quotedCell();
    QString cell();
    [[nodiscard]] bool atBreak() const;

    QString m_text;
    QChar m_separator = QLatin1Char(',');
    qsizetype m_at = 0;
    int m_line = 1;
    int m_openQuotation = 0;
};

void Cutter::chooseSeparator()
{
    // Some spreadsheets say it themselves, in a line before the header.
    if (m_text.startsWith(QStringLiteral("sep="), Qt::CaseInsensitive) && m_text.size() > 5
        && m_text.at(5) == QLatin1Char('\n')) {
        m_separator = m_text.at(4);
        m_at = 6;
        m_line = 2;
        return;
    }
    qsizetype most = 0;
    for (const QChar candidate : {QLatin1Char(','), QLatin1Char(';'), QLatin1Char('\t')}) {
        qsizetype count = 0;
        bool quoted = false;
        for (const QChar c : m_text) {
            if (c == QLatin1Char('"'))
                quoted = !quoted;
            else if ((c == QLatin1Char('\n') || c == QLatin1Char('\r')) && !quoted)
                break;
            else if (c == candidate && !quoted)
                ++count;
        }
        if (count > most) {
            most = count;
            m_separator = candidate;
        }
    }
}

// REQUIRES: at an opening quotation mark. Stops after the closing one.
QString Cutter::quotedCell()
{
    const int opened = m_line;
    QString words;
    for (++m_at; !atEnd(); ++m_at) {
        const QChar c = m_text.at(m_at);
        if (c == QLatin1Char('"')) {
            ++m_at;
            if (atEnd() || m_text.at(m_at) != QLatin1Char('"'))
                return words;
        } else if (c == QLatin1Char('\n')) {
            ++m_line;
        }
        words.append(c);
    }
    m_openQuotation = opened;
    return words;
}

// At the end of a row: "\n", or "\r\n" where line breaks are kept as written.
bool Cutter::atBreak() const
{
    const qsizetype at = m_at + (m_text.at(m_at) == QLatin1Char('\r') ? 1 : 0);
    return at < m_text.size() && m_text.at(at) == QLatin1Char('\n');
}

QString Cutter::cell()
{
    qsizetype start = m_at;
    while (start < m_text.size() && m_text.at(start) == QLatin1Char(' '))
        ++start;
    QString words;
    if (start < m_text.size() && m_text.at(start) == QLatin1Char('"')) {
        m_at = start;
        words = quotedCell();
    }
    while (!atEnd() && m_text.at(m_at) != m_separator && !atBreak())
        words.append(m_text.at(m_at++));
    return words;
}

Record Cutter::next()
{
    Record record;
    record.line = m_line;
    while (true) {
        record.cells << cell();
        if (atEnd())
            return record;
        const bool ended = atBreak();
        if (m_text.at(m_at++) == QLatin1Char('\r'))
            ++m_at;
        if (ended) {
            ++m_line;
            return record;
        }
    }
}

Error damaged(const QString& file, const QString& why)
{
    return Error{ErrorCode::Damaged, file, why};
}

Error neverClosed(const QString& file, int row, int line)
{
    return damaged(file,
        QStringLiteral("row %1: the quotation mark in line %2 is never closed").arg(row).arg(line));
}

Result<QStringList> headerFrom(const Record& record, const QString& file)
{
    QStringList names;
    for (const QString& cell : record.cells) {
        const QString name = csvColumn(cell);
        if (!name.isEmpty() && names.contains(name)) {
            return damaged(
                file, QStringLiteral("row 1 has the column \u201c%1\u201d twice").arg(name));
        }
        names << name;
    }
    return names;
}

// Adds the record to the table as a row, or as a fault when it is ragged.
void addRecord(CsvTable& table, const QStringList& header, int rowNumber, Record record)
{
    while (record.cells.size() > header.size() && record.cells.last().trimmed().isEmpty())
        record.cells.removeLast();
    if (record.cells.size() != header.size()) {
        table.faults.push_back({rowNumber,
            record.line,
            QStringLiteral("%1, row %2: %3 cells, but the header has %4.")
                .arg(table.file)
                .arg(rowNumber)
                .arg(record.cells.size())
                .arg(header.size())});
        return;
    }
    CsvRow row{rowNumber, record.line, {}};
    for (qsizetype i = 0; i < header.size(); ++i) {
        if (!header.at(i).isEmpty())
            row.cells.insert(header.at(i), record.cells.at(i));
    }
    table.rows.push_back(row);
}

} // namespace

QString csvColumn(const QString& header)
{
    return header.simplified().toLower().replace(QLatin1Char(' '), QLatin1Char('_'));
}

Result<CsvTable> parseCsv(const QByteArray& bytes, const QString& fileName, CsvBreaks breaks)
{
    const QString text = textFromBytes(bytes);
    if (text.trimmed().isEmpty())
        return damaged(fileName, QStringLiteral("the file is empty"));
    if (text.contains(QChar(0)))
        return damaged(fileName, QStringLiteral("this is not a text file"));
    CsvTable table;
    table.file = fileName;
    Cutter cutter(text, breaks);
    const auto header = headerFrom(cutter.next(), fileName);
    if (cutter.openQuotation() > 0)
        return neverClosed(fileName, 1, cutter.openQuotation());
    if (!header)
        return header.error();
    table.columns = *header;
    table.columns.removeAll(QString());
    if (table.columns.isEmpty())
        return damaged(fileName, QStringLiteral("row 1 names no column"));
    for (int row = 2; !cutter.atEnd(); ++row) {
        Record record = cutter.next();
        if (cutter.openQuotation() > 0)
            return neverClosed(fileName, row, cutter.openQuotation());
        if (!record.isBlank())
            addRecord(table, *header, row, std::move(record));
    }
    return table;
}

Result<CsvTable> readCsv(const QString& path)
{
    QFile file(path);
    const QString name = QFileInfo(path).fileName();
    if (!file.exists())
        return Error{ErrorCode::NotFound, path, {}};
    if (!QFileInfo(path).isFile())
        return Error{ErrorCode::CannotRead, path, QStringLiteral("it is not a file")};
    if (file.size() > kLargestFile)
        return Error{ErrorCode::Refused, name, QStringLiteral("it is larger than 64 MB")};
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, name, file.errorString()};
    const QByteArray bytes = file.readAll();
    if (file.error() != QFileDevice::NoError)
        return Error{ErrorCode::CannotRead, name, file.errorString()};
    return parseCsv(bytes, name);
}

} // namespace wainscot
