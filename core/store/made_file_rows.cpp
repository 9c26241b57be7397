#include "core/store/made_file_rows.h"

#include "core/store/database.h"
#include "core/store/rows.h"

#include <QRegularExpression>

#include <algorithm>

namespace wainscot {

namespace {

// "quote 3", "quote 4", ...
template <class AnyId>
void addHeld(QStringList& held, QLatin1String what, const std::set<AnyId>& ids)
{
    for (const AnyId id : ids)
        held << what + QLatin1Char(' ') + QString::number(id.number());
}

QString heldText(const MadeFile& made)
{
    QStringList held;
    addHeld(held, QLatin1String("display"), made.displays);
    addHeld(held, QLatin1String("experience"), made.experiences);
    addHeld(held, QLatin1String("quote"), made.words);
    addHeld(held, QLatin1String("picture"), made.pictures);
    addHeld(held, QLatin1String("child"), made.named);
    return held.join(QStringLiteral("; "));
}

template <class AnyId>
void takeHeld(const QString& what, qlonglong number, QLatin1String wanted, std::set<AnyId>& ids)
{
    if (what == wanted)
        ids.insert(AnyId(number));
}

void readHeld(const QString& text, MadeFile& made)
{
    for (const QString& one : text.split(QStringLiteral("; "), Qt::SkipEmptyParts)) {
        const QString what = one.section(QLatin1Char(' '), 0, 0);
        const qlonglong number = one.section(QLatin1Char(' '), 1).toLongLong();
        if (number <= 0)
            continue;
        takeHeld(what, number, QLatin1String("display"), made.displays);
        takeHeld(what, number, QLatin1String("experience"), made.experiences);
        takeHeld(what, number, QLatin1String("quote"), made.words);
        takeHeld(what, number, QLatin1String("picture"), made.pictures);
        takeHeld(what, number, QLatin1String("child"), made.named);
    }
}

// "Wren Halloway" -> { "wren", "halloway" }
QStringList partsOfNames(const Edit& edit)
{
    QStringList parts;
    for (const Change& change : edit.changes) {
        const auto* child = std::get_if<ValueChange<Child>>(&change);
        if (child == nullptr || !child->before || child->after)
            continue;
        static const QRegularExpression kBetween(QStringLiteral("[\\s\\-_.]+"));
        for (const QString& name : {child->before->name, child->before->shownAs})
            parts << name.toCaseFolded().split(kBetween, Qt::SkipEmptyParts);
    }
    return parts;
}

} // namespace

Result<std::vector<MadeFile>> readMadeFiles(Database& database)
{
    std::vector<MadeFile> all;
    const auto read = database.each(
        QStringLiteral(
            "SELECT kind, file_name, made_on, audience, holds FROM made_files ORDER BY id"),
        [&](const QSqlQuery& query) -> Result<> {
            const auto kind = madeFileKindFromName(query.value(0).toString());
            if (!kind) // of a later version, or damaged: nothing else depends on it
                return Done{};
            MadeFile made;
            made.kind = *kind;
            made.name = query.value(1).toString();
            made.on = QDate::fromString(query.value(2).toString(), Qt::ISODate);
            made.audience = audienceFromName(query.value(3).toString());
            readHeld(query.value(4).toString(), made);
            all.push_back(std::move(made));
            return Done{};
        });
    if (!read)
        return read.error();
    return all;
}

Result<> writeMadeFile(Database& database, const MadeFile& made)
{
    const QVariant audience =
        made.audience ? sqlText(nameOf(*made.audience)) : QVariant(QMetaType(QMetaType::QString));
    auto done =
        database.run(QStringLiteral("DELETE FROM made_files WHERE kind = ? AND file_name = ? AND "
                                    "COALESCE(audience, '') = ?"),
            {sqlText(nameOf(made.kind)),
                sqlText(made.name),
                sqlText(made.audience ? nameOf(*made.audience) : QString())});
    if (!done)
        return done;
    return database.run(
        QStringLiteral("INSERT INTO made_files (id, kind, file_name, made_on, audience, holds) "
                       "SELECT COALESCE(MAX(id), 0) + 1, ?, ?, ?, ?, ? FROM made_files"),
        {sqlText(nameOf(made.kind)),
            sqlText(made.name),
            sqlText(made.on.toString(Qt::ISODate)),
            audience,
            sqlText(heldText(made))});
}

Result<std::optional<QDate>> readKeptUntil(Database& database)
{
    const auto day = database.one(QStringLiteral("SELECT keep_until FROM book"));
    if (!day)
        return day.error();
    const QDate date = QDate::fromString(day->toString(), Qt::ISODate);
    return date.isValid() ? std::optional(date) : std::nullopt;
}

Result<> forgetInFileNames(Database& database, const Edit& edit)
{
    const QStringList parts = partsOfNames(edit);
    std::vector<std::pair<qlonglong, QString>> names;
    auto done = database.each(QStringLiteral("SELECT id, file_name FROM made_files"),
        [&](const QSqlQuery& query) -> Result<> {
            names.emplace_back(query.value(0).toLongLong(), query.value(1).toString());
            return Done{};
        });
    for (const auto& [id, name] : names) {
        const QString folded = name.toCaseFolded();
        const bool tells = std::any_of(
            parts.begin(), parts.end(), [&](const QString& part) { return folded.contains(part); });
        if (done && tells)
            done = database.run(
                QStringLiteral("UPDATE made_files SET file_name = '' WHERE id = ?"), {id});
    }
    return done;
}

} // namespace wainscot
