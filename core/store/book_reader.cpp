#include "core/store/book_reader.h"

#include "core/model/tables.h"
#include "core/store/database.h"
#include "core/store/parts.h"
#include "core/store/rows.h"

namespace wainscot {

namespace {

template <class T> using Found = std::map<decltype(T::id), T>;

Error makesNoSense(const QString& path, const char* table, std::int64_t id)
{
    return Error{ErrorCode::Damaged,
        path,
        QStringLiteral("row %1 of %2 makes no sense").arg(id).arg(QLatin1String(table))};
}

template <class T> Result<> readValues(Database& database, const QString& path, Found<T>& found)
{
    const TableForm form = formOf(static_cast<const T*>(nullptr));
    const QString sql = QStringLiteral("SELECT %1 FROM %2")
                            .arg(QLatin1String(form.columns), QLatin1String(form.table));
    return database.each(sql, [&](const QSqlQuery& query) -> Result<> {
        RowReader row(query);
        T value;
        readRow(row, value);
        if (!row.makesSense() || !value.id.isValid())
            return makesNoSense(path, form.table, value.id.number());
        found.emplace(value.id, value);
        return Done{};
    });
}

// Lists come in the order of their places; their owners have been read before.
template <class T> Result<> readLists(Database& database, Found<T>& found)
{
    Result<> read = Done{};
    T any;
    withIdLists(any, [&](const ListForm& form, const auto& /*list*/) {
        if (!read)
            return;
        const QLatin1String table(form.table);
        const QString sql = QStringLiteral("SELECT %1, %2 FROM %3 ORDER BY %1, place")
                                .arg(QLatin1String(form.owner), QLatin1String(form.member), table);
        read = database.each(sql, [&](const QSqlQuery& query) -> Result<> {
            const auto at = found.find(decltype(T::id)(query.value(0).toLongLong()));
            if (at == found.end())
                return Done{};
            withIdLists(at->second, [&](const ListForm& other, auto& list) {
                using Member = typename std::decay_t<decltype(list)>::value_type;
                if (QLatin1String(other.table) == table)
                    list.push_back(Member(query.value(1).toLongLong()));
            });
            return Done{};
        });
    });
    return read;
}

template <class T> Result<> readParts(Database& database, const QString& path, Found<T>& found)
{
    for (const PartForm<T>& form : partForms(static_cast<const T*>(nullptr))) {
        const QString sql = QStringLiteral("SELECT %1 FROM %2 ORDER BY %3")
                                .arg(QLatin1String(form.columns),
                                    QLatin1String(form.table),
                                    QLatin1String(form.order));
        const auto read = database.each(sql, [&](const QSqlQuery& query) -> Result<> {
            RowReader row(query);
            const auto at = found.find(row.id<decltype(T::id)>());
            if (at == found.end())
                return Done{};
            if (!form.add(row, at->second) || !row.makesSense())
                return makesNoSense(path, form.table, at->first.number());
            return Done{};
        });
        if (!read)
            return read;
    }
    return Done{};
}

Result<> readCounters(Database& database, Book& book)
{
    std::map<QString, std::int64_t> last;
    const auto read = database.each(QStringLiteral("SELECT kind, last_number FROM counters"),
        [&](const QSqlQuery& query) -> Result<> {
            last[query.value(0).toString()] = query.value(1).toLongLong();
            return Done{};
        });
    forEachTable(book, [&](auto& table) {
        using T = typename std::decay_t<decltype(table)>::ValueType;
        const TableForm form = formOf(static_cast<const T*>(nullptr));
        table.setLastNumber(last[QString::fromLatin1(form.table)]);
    });
    return read;
}

Result<> readInfo(Database& database, BookInfo& info)
{
    return database.each(QStringLiteral("SELECT title, language FROM book"),
        [&](const QSqlQuery& query) -> Result<> {
            info.title = query.value(0).toString();
            info.language = query.value(1).toString();
            return Done{};
        });
}

Result<> readInto(Book& book, Database& database, const QString& path)
{
    auto read = readInfo(database, book.info);
    forEachTable(book, [&](auto& table) {
        using T = typename std::decay_t<decltype(table)>::ValueType;
        Found<T> found;
        if (read)
            read = readValues<T>(database, path, found);
        if (read)
            read = readLists(database, found);
        if (read)
            read = readParts(database, path, found);
        for (const auto& [id, value] : found)
            table.put(value);
    });
    return read ? readCounters(database, book) : read;
}

} // namespace

Result<Book> readBook(Database& database, const QString& path)
{
    Book book;
    const auto read = database.inSnapshot([&] { return readInto(book, database, path); });
    if (!read)
        return read.error();
    return book;
}

} // namespace wainscot
