#include "core/store/book_reader.h"

#include "core/model/tables.h"
#include "core/store/database.h"
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
Result<> readLists(Database& database, Found<PromptSet>& found)
{
    return database.each(QStringLiteral("SELECT prompt_set_id, prompt_key, asked FROM prompts "
                                        "ORDER BY prompt_set_id, place"),
        [&](const QSqlQuery& query) -> Result<> {
            const auto at = found.find(PromptSetId(query.value(0).toLongLong()));
            if (at != found.end())
                at->second.prompts.push_back(
                    {query.value(1).toString(), query.value(2).toString()});
            return Done{};
        });
}

template <class T> Result<> readLists(Database& database, Found<T>& found)
{
    Result<> read = Done{};
    T any;
    withIdList(any, [&](const ListForm& form, const auto& /*list*/) {
        const QString sql = QStringLiteral("SELECT %1, %2 FROM %3 ORDER BY %1, place")
                                .arg(QLatin1String(form.owner),
                                    QLatin1String(form.member),
                                    QLatin1String(form.table));
        read = database.each(sql, [&](const QSqlQuery& query) -> Result<> {
            const auto at = found.find(decltype(T::id)(query.value(0).toLongLong()));
            if (at == found.end())
                return Done{};
            withIdList(at->second, [&](const ListForm& /*form*/, auto& list) {
                using Member = typename std::decay_t<decltype(list)>::value_type;
                list.push_back(Member(query.value(1).toLongLong()));
            });
            return Done{};
        });
    });
    return read;
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
