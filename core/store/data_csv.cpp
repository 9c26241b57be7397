#include "core/base/csv.h"
#include "core/model/permission.h"
#include "core/store/data_text.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace wainscot {

namespace {

const QChar kApostrophe = QLatin1Char('\'');

// What a spreadsheet may run: OWASP, "CSV Injection"; the wide forms too, and behind blanks, which
// some take off.
bool needsApostrophe(const QString& text)
{
    static const QString kBeginnings = QStringLiteral("=+-@\t\r\n'\uff1d\uff0b\uff0d\uff20");
    if (text.isEmpty())
        return false;
    const QString bare = text.trimmed();
    return kBeginnings.contains(text.front())
        || (!bare.isEmpty() && kBeginnings.contains(bare.front()));
}

QString textOf(const QVariant& cell, CellKind kind)
{
    switch (kind) {
    case CellKind::Text: {
        QString text = cell.toString();
        text.remove(QChar(0)); // no text file may hold it
        if (needsApostrophe(text))
            text.prepend(kApostrophe);
        return text;
    }
    case CellKind::Number:
        return QString::number(cell.toLongLong());
    case CellKind::Real:
        return QString::number(cell.toDouble(), 'g', QLocale::FloatingPointShortest);
    case CellKind::YesNo:
        return cell.toBool() ? QStringLiteral("yes") : QStringLiteral("no");
    case CellKind::Audiences:
        return cell.toStringList().join(QLatin1Char(' '));
    }
    return {};
}

QString quoted(QString text)
{
    const bool mustBe = std::any_of(text.begin(), text.end(), [](QChar c) {
        return c == QLatin1Char(',') || c == QLatin1Char(';') || c == QLatin1Char('"')
            || c.isSpace();
    });
    if (!mustBe)
        return text;
    text.replace(QLatin1Char('"'), QStringLiteral("\"\""));
    return QLatin1Char('"') + text + QLatin1Char('"');
}

std::optional<QVariant> audiencesFrom(const QString& text)
{
    const QStringList audiences = text.simplified().split(QLatin1Char(' '), Qt::SkipEmptyParts);
    const bool known = std::all_of(audiences.begin(), audiences.end(), [](const QString& name) {
        return audienceFromName(name).has_value();
    });
    return known ? std::optional<QVariant>(audiences) : std::nullopt;
}

std::optional<QVariant> yesNoFrom(const QString& text)
{
    const QString word = text.trimmed().toLower();
    if (word == QLatin1String("yes"))
        return QVariant(true);
    return word == QLatin1String("no") ? std::optional<QVariant>(false) : std::nullopt;
}

std::optional<QVariant> cellFrom(const QString& text, CellKind kind)
{
    bool good = true;
    switch (kind) {
    case CellKind::Text:
        return text.startsWith(kApostrophe) ? text.mid(1) : text;
    case CellKind::Number: {
        const qlonglong number = text.trimmed().toLongLong(&good);
        return good ? std::optional<QVariant>(number) : std::nullopt;
    }
    case CellKind::Real: {
        const double number = text.trimmed().toDouble(&good);
        return good && std::isfinite(number) ? std::optional<QVariant>(number) : std::nullopt;
    }
    case CellKind::YesNo:
        return yesNoFrom(text);
    case CellKind::Audiences:
        return audiencesFrom(text);
    }
    return std::nullopt;
}

const char* wantedFor(CellKind kind)
{
    switch (kind) {
    case CellKind::Number:
        return "a whole number";
    case CellKind::Real:
        return "a number";
    case CellKind::YesNo:
        return "yes or no";
    case CellKind::Audiences:
        return "a list of audiences";
    case CellKind::Text:
        break;
    }
    return "a text";
}

Result<> checkColumns(const CsvTable& csv, const DataTable& table)
{
    for (const DataColumn& column : table.columns) {
        if (!csv.has(column.name)) {
            return Error{ErrorCode::Damaged,
                csv.file,
                QStringLiteral("row 1: there is no column \u201c%1\u201d").arg(column.name)};
        }
    }
    for (const QString& name : csv.columns) {
        const auto isIt = [&](const DataColumn& column) { return column.name == name; };
        if (std::none_of(table.columns.begin(), table.columns.end(), isIt)) {
            return Error{ErrorCode::Damaged,
                csv.file,
                QStringLiteral("row 1: the column \u201c%1\u201d is not known").arg(name.left(60))};
        }
    }
    return Done{};
}

} // namespace

QString dataPictureName(const Picture& picture)
{
    static const std::map<QString, QString> endings{
        {QStringLiteral("jpeg"), QStringLiteral(".jpg")},
        {QStringLiteral("png"), QStringLiteral(".png")},
        {QStringLiteral("webp"), QStringLiteral(".webp")},
        {QStringLiteral("tiff"), QStringLiteral(".tif")},
        {QStringLiteral("heic"), QStringLiteral(".heic")}};
    const auto ending = endings.find(picture.format);
    return QStringLiteral("pictures/") + picture.sha256
        + (ending == endings.end() ? QString() : ending->second);
}

DataTable versionTable(DataHead head)
{
    return {QStringLiteral("version"),
        {{QStringLiteral("format"), CellKind::Text, false},
            {QStringLiteral("version"), CellKind::Number, false}},
        {{2, {QString(kDataFormat), qlonglong(head.version)}}}};
}

Result<DataHead> headOfCsv(const QByteArray& csv, int newest)
{
    DataTable table = versionTable({});
    table.rows.clear();
    if (auto read = dataFromCsv(csv, table); !read)
        return read.error();
    const QString file(kVersionFile);
    if (table.rows.size() != 1 || table.rows.front().cells[0].toString() != kDataFormat)
        return Error{ErrorCode::Damaged, file, QStringLiteral("it is not the data of a book")};
    const auto version = table.rows.front().cells[1].toLongLong();
    if (version > newest)
        return Error{ErrorCode::TooNew, file, {}};
    if (version < 1)
        return Error{ErrorCode::Damaged, file, QStringLiteral("it says no version")};
    return DataHead{int(version)};
}

QByteArray dataToCsv(const DataTable& table, bool byteOrderMark)
{
    QString csv;
    if (byteOrderMark)
        csv += QChar(QChar::ByteOrderMark);
    QStringList cells;
    for (const DataColumn& column : table.columns)
        cells << column.name;
    csv += cells.join(QLatin1Char(',')) + QStringLiteral("\r\n");
    for (const DataRow& row : table.rows) {
        cells.clear();
        for (std::size_t i = 0; i < row.cells.size(); ++i) {
            const QVariant& cell = row.cells[i];
            cells << (cell.isValid() ? quoted(textOf(cell, table.columns[i].kind)) : QString());
        }
        csv += cells.join(QLatin1Char(',')) + QStringLiteral("\r\n");
    }
    return csv.toUtf8();
}

Result<> dataFromCsv(const QByteArray& bytes, DataTable& table)
{
    const QString file = table.name + QStringLiteral(".csv");
    const auto csv = parseCsv(bytes, file, CsvBreaks::AsWritten);
    if (!csv)
        return csv.error();
    if (auto known = checkColumns(*csv, table); !known)
        return known;
    const DataSource source;
    if (!csv->faults.empty()) {
        return source.wrong(
            table, csv->faults.front().row, QStringLiteral("it has too many or too few cells"));
    }
    for (const CsvRow& row : csv->rows) {
        DataRow made{row.row, {}};
        made.cells.reserve(table.columns.size());
        for (const DataColumn& column : table.columns) {
            const QString text = row.cells.value(column.name);
            if (text.isEmpty() && column.mayBeMissing) {
                made.cells.emplace_back();
                continue;
            }
            const auto cell = cellFrom(text, column.kind);
            if (!cell) {
                return source.wrong(table,
                    row.row,
                    QStringLiteral("\u201c%1\u201d is not %2")
                        .arg(column.name, QLatin1String(wantedFor(column.kind))));
            }
            made.cells.push_back(*cell);
        }
        table.rows.push_back(std::move(made));
    }
    return Done{};
}

} // namespace wainscot
