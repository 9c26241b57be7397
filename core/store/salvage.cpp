#include "core/store/salvage.h"

#include "core/model/tables.h"
#include "core/store/database.h"
#include "core/store/parts.h"

namespace wainscot {

namespace {

template <class T> TableForm formFor()
{
    return formOf(static_cast<const T*>(nullptr));
}

// How many rows in a gap of a broken table are asked for one by one.
constexpr qint64 kMostProbes = 200'000;

// Reads what can be read of one table: from the front until a page is broken, from the back until
// one is, and between them row by row.
class BrokenTable {
public:
    BrokenTable(Database& database, const QString& columns, const QString& table)
        : m_database(database)
        , m_select(QStringLiteral("SELECT rowid, %1 FROM %2").arg(columns, table))
    {
    }

    // Answers how many probes hit a broken page; 0 = the whole table was read.
    int read(const Database::TakeRow& take)
    {
        qint64 first = 0;
        qint64 last = 0;
        if (readAll(QStringLiteral(" ORDER BY rowid"), take, first))
            return 0;
        if (first == 0)
            first = oneOf(QStringLiteral("MIN"), 1) - 1;
        const bool ended =
            readAll(QStringLiteral(" WHERE rowid > ? ORDER BY rowid DESC"), take, last, {first});
        if (ended)
            return 1;
        if (last == 0)
            last = std::min(oneOf(QStringLiteral("MAX"), first), first + kMostProbes) + 1;
        int broken = 1;
        for (qint64 row = first + 1; row < last && row - first <= kMostProbes; ++row) {
            qint64 at = 0;
            if (!readAll(QStringLiteral(" WHERE rowid = ?"), take, at, {row}))
                ++broken;
        }
        return broken;
    }

private:
    bool readAll(const QString& where,
        const Database::TakeRow& take,
        qint64& at,
        const QVariantList& values = {})
    {
        return m_database
            .each(
                m_select + where,
                [&](const QSqlQuery& row) {
                    at = row.value(0).toLongLong();
                    return take(row);
                },
                values)
            .ok();
    }

    qint64 oneOf(const QString& which, qint64 otherwise)
    {
        const QString from = m_select.mid(m_select.indexOf(QLatin1String(" FROM ")));
        const auto answer = m_database.one(QStringLiteral("SELECT %1(rowid)%2").arg(which, from));
        return answer && answer->isValid() ? answer->toLongLong() : otherwise;
    }

    Database& m_database;
    QString m_select;
};

void note(Salvaged& salvaged, const QString& table, const QString& what)
{
    salvaged.broken.insert(table);
    salvaged.problems << what;
}

template <class T> void salvageValues(Database& database, Salvaged& salvaged)
{
    const QString table = QString::fromLatin1(formFor<T>().table);
    BrokenTable broken(database, QString::fromLatin1(formFor<T>().columns), table);
    auto& values = tableOf<T>(salvaged.book);
    const int failed = broken.read([&](const QSqlQuery& query) -> Result<> {
        RowReader row(query);
        (void)row.next(); // the row's number
        T value;
        readRow(row, value);
        if (row.makesSense() && value.id.isValid())
            values.put(value);
        else
            note(salvaged,
                table,
                QStringLiteral("Row %1 of %2 makes no sense.").arg(value.id.number()).arg(table));
        return Done{};
    });
    if (failed > 0)
        note(salvaged, table, QStringLiteral("A part of %1 cannot be read.").arg(table));
}

// Reads rows that belong into a value: `put(row, value)`, the owner's id already taken.
template <class T, class Put>
void salvageOwned(
    Database& database, const QString& name, const QString& columns, Salvaged& salvaged, Put put)
{
    auto& table = tableOf<T>(salvaged.book);
    BrokenTable broken(database, columns, name);
    const int failed = broken.read([&](const QSqlQuery& query) -> Result<> {
        RowReader row(query);
        (void)row.next(); // the row's number
        const T* found = table.find(row.id<decltype(T::id)>());
        if (found == nullptr)
            return Done{};
        T value = *found;
        put(row, value);
        table.put(value);
        return Done{};
    });
    if (failed > 0)
        note(salvaged, name, QStringLiteral("A part of %1 cannot be read.").arg(name));
}

template <class T> void salvageLists(Database& database, Salvaged& salvaged)
{
    T any;
    withIdLists(any, [&](const ListForm& form, const auto& /*list*/) {
        const QString name = QString::fromLatin1(form.table);
        const QString columns =
            QStringLiteral("%1, %2").arg(QLatin1String(form.owner), QLatin1String(form.member));
        salvageOwned<T>(database, name, columns, salvaged, [&](RowReader& row, T& value) {
            withIdLists(value, [&](const ListForm& other, auto& list) {
                using Member = typename std::decay_t<decltype(list)>::value_type;
                if (name == QLatin1String(other.table))
                    list.push_back(row.id<Member>());
            });
        });
    });
}

template <class T> void salvageParts(Database& database, Salvaged& salvaged)
{
    for (const PartForm<T>& form : partForms(static_cast<const T*>(nullptr))) {
        salvageOwned<T>(database,
            QString::fromLatin1(form.table),
            QString::fromLatin1(form.columns),
            salvaged,
            [&](RowReader& row, T& value) {
                const T before = value;
                if (!form.add(row, value) || !row.makesSense())
                    value = before;
            });
    }
}

// Rows taken from another day must show nobody against a wish made since.
template <class T> void forget(T& /*value*/) { }
void forget(Child& child)
{
    child.permissions = {};
}
void forget(Picture& picture)
{
    picture.people.lookedAt = false;
}

} // namespace

Salvaged salvage(Database& database)
{
    Salvaged salvaged;
    const auto info = database.each(
        QStringLiteral("SELECT title, language FROM book"), [&](const QSqlQuery& row) -> Result<> {
            salvaged.book.info = {row.value(0).toString(), row.value(1).toString()};
            return Done{};
        });
    if (!info)
        note(salvaged,
            QStringLiteral("book"),
            QStringLiteral("The title of the book cannot be read."));
    forEachTable(salvaged.book, [&](const auto& table) {
        using T = typename std::decay_t<decltype(table)>::ValueType;
        salvageValues<T>(database, salvaged);
        salvageLists<T>(database, salvaged);
        salvageParts<T>(database, salvaged);
    });
    // Who is in a picture is only known when all of the list is.
    if (salvaged.broken.count(QStringLiteral("picture_children")) > 0) {
        const Table<Picture> pictures = salvaged.book.pictures;
        for (auto [id, picture] : pictures.rows()) {
            forget(picture);
            salvaged.book.pictures.put(picture);
        }
        salvaged.problems << QStringLiteral(
            "Who is in the pictures is not known for sure; say it again for each.");
    }
    return salvaged;
}

void fillFrom(const Book& earlier, const QString& when, Salvaged& salvaged)
{
    if (salvaged.book.info.title.isEmpty())
        salvaged.book.info = earlier.info;
    forEachTable(earlier, [&](const auto& table) {
        using T = typename std::decay_t<decltype(table)>::ValueType;
        const QString name = QString::fromLatin1(formFor<T>().table);
        if (salvaged.broken.count(name) == 0)
            return;
        auto& values = tableOf<T>(salvaged.book);
        int taken = 0;
        for (auto [id, value] : table.rows()) {
            if (values.contains(id))
                continue;
            forget(value);
            values.put(value);
            ++taken;
        }
        if (taken > 0)
            salvaged.problems
                << QStringLiteral("%1 of %2 are as they were on %3.").arg(taken).arg(name, when);
    });
}

} // namespace wainscot
