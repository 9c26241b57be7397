#include "core/store/edit_writer.h"

#include "core/store/database.h"
#include "core/store/parts.h"
#include "core/store/rows.h"

namespace wainscot {

namespace {

// INSERT that replaces a row with the same id; the form PostgreSQL shares.
QString upsertInto(const TableForm& form)
{
    const QStringList columns = QString::fromLatin1(form.columns).split(QStringLiteral(", "));
    QStringList marks;
    QStringList updates;
    for (const QString& column : columns) {
        marks << QStringLiteral("?");
        if (column != QLatin1String("id"))
            updates << QStringLiteral("%1 = excluded.%1").arg(column);
    }
    return QStringLiteral("INSERT INTO %1 (%2) VALUES (%3) ON CONFLICT (id) DO UPDATE SET %4")
        .arg(QLatin1String(form.table),
            QLatin1String(form.columns),
            marks.join(QStringLiteral(", ")),
            updates.join(QStringLiteral(", ")));
}

Result<> removeList(Database& database, const char* table, const char* owner, const QVariant& id)
{
    return database.run(QStringLiteral("DELETE FROM %1 WHERE %2 = ?")
                            .arg(QLatin1String(table), QLatin1String(owner)),
        {id});
}

template <class T> Result<> writeLists(Database& database, const T& value)
{
    Result<> written = Done{};
    withIdLists(value, [&](const ListForm& form, const auto& list) {
        if (!written)
            return;
        written = removeList(database, form.table, form.owner, sqlId(value.id));
        const QString insert = QStringLiteral("INSERT INTO %1 (%2, place, %3) VALUES (?, ?, ?)")
                                   .arg(QLatin1String(form.table),
                                       QLatin1String(form.owner),
                                       QLatin1String(form.member));
        for (std::size_t i = 0; i < list.size() && written; ++i)
            written = database.run(insert, {sqlId(value.id), int(i), sqlId(list[i])});
    });
    return written;
}

template <class T> Result<> useNumber(Database& database, decltype(T::id) id)
{
    const TableForm form = formOf(static_cast<const T*>(nullptr));
    return database.run(QStringLiteral("INSERT INTO counters (kind, last_number) VALUES (?, ?) "
                                       "ON CONFLICT (kind) DO UPDATE SET last_number = "
                                       "excluded.last_number "
                                       "WHERE excluded.last_number > counters.last_number"),
        {QString::fromLatin1(form.table), sqlId(id)});
}

struct WriteChange {
    Database& database;
    EditSide side;

    Result<> operator()(const InfoChange& change) const
    {
        return writeInfo(database, side == EditSide::After ? change.after : change.before);
    }

    template <class T> Result<> operator()(const ValueChange<T>& change) const
    {
        const std::optional<T>& value = side == EditSide::After ? change.after : change.before;
        const TableForm form = formOf(static_cast<const T*>(nullptr));
        if (!value) {
            return database.run(
                QStringLiteral("DELETE FROM %1 WHERE id = ?").arg(QLatin1String(form.table)),
                {sqlId(change.id)});
        }
        if (auto written = database.run(upsertInto(form), valuesOf(*value)); !written)
            return written;
        if (auto used = useNumber<T>(database, change.id); !used)
            return used;
        if (auto lists = writeLists(database, *value); !lists)
            return lists;
        return writeParts(database, *value);
    }
};

} // namespace

Result<> writeInfo(Database& database, const BookInfo& info)
{
    return database.run(
        QStringLiteral("INSERT INTO book (id, title, language) VALUES (1, ?, ?) ON CONFLICT (id) "
                       "DO UPDATE SET title = excluded.title, language = excluded.language"),
        {sqlText(info.title), sqlText(info.language)});
}

Result<> writeEdit(Database& database, const Edit& edit, EditSide side)
{
    const WriteChange write{database, side};
    for (const Change& change : edit.changes) {
        if (auto written = std::visit(write, change); !written)
            return written;
    }
    return Done{};
}

} // namespace wainscot
