// Reading a class list with its permissions.
#include "app/jobs/gather.h"

#include "app/jobs/gather_common.h"
#include "core/base/says.h"
#include "core/model/plain_name.h"

#include <map>
#include <variant>

namespace wainscot {

namespace {

// Either a value or the reason why a row is not taken.
template <class T> using OrReason = std::variant<T, QString>;

QString audienceNames()
{
    QStringList names;
    for (const Audience audience : kAudiences)
        names.append(nameOf(audience));
    return names.join(QStringLiteral(", "));
}

// "classroom building", "all", "none" or blank into the bits of one permission.
std::optional<QString> readAudiences(
    const QString& cell, Permission permission, Permissions& permissions)
{
    const QStringList words = partsOf(cell.toLower(), QStringLiteral(" ;+,\n\r\t"));
    for (const Audience audience : kAudiences)
        permissions.set(permission, audience, false);
    for (const QString& word : words) {
        if (word == QLatin1String("none"))
            continue;
        if (word == QLatin1String("all")) {
            for (const Audience audience : kAudiences)
                permissions.set(permission, audience, true);
            continue;
        }
        const std::optional<Audience> audience = audienceFromName(word);
        if (!audience) {
            return Says::tr("the column \"%1\" names \"%2\", which is no audience; known are "
                            "%3, all and none")
                .arg(nameOf(permission), word, audienceNames());
        }
        permissions.set(permission, *audience, true);
    }
    const bool contradicts = words.size() > 1 && words.contains(QStringLiteral("none"));
    if (contradicts) {
        return Says::tr("the column \"%1\" says none and more at once").arg(nameOf(permission));
    }
    return std::nullopt;
}

OrReason<Child> readChild(const CsvTable& table, const CsvRow& row, Child child)
{
    child.name = plainName(row.cell(QStringLiteral("name")));
    if (child.name.isEmpty())
        return Says::tr("there is no name");
    if (table.has(QStringLiteral("shown_as")))
        child.shownAs = plainName(row.cell(QStringLiteral("shown_as")));
    if (table.has(QStringLiteral("born"))) {
        const QString born = row.cell(QStringLiteral("born"));
        child.born = birthDateFromText(born);
        if (!born.isEmpty() && !child.born) {
            return Says::tr("\"%1\" is no date of birth (2021-04-17 or 2021-04) for %2")
                .arg(born, child.name);
        }
    }
    for (const Permission permission : kPermissions) {
        const QString cell = row.cell(nameOf(permission));
        if (auto reason = readAudiences(cell, permission, child.permissions))
            return *reason + QStringLiteral(" (%1)").arg(child.name);
    }
    return child;
}

} // namespace

Result<GatherOutcome> GatherChildrenJob::run(const Book& book, const JobRun& run) const
{
    const Result<CsvTable> read = readCsv(file);
    if (!read)
        return read.error();
    const CsvTable& table = *read;
    if (!table.has(QStringLiteral("name")))
        return lacksColumn(table, QStringLiteral("name"));

    GatherOutcome outcome;
    outcome.skipped = unreadableRows(table);
    EditBuilder edit(book, Says::tr("Gather children from %1").arg(table.file));
    std::map<QString, int> rowOfName;
    const auto skip = [&](const CsvRow& row, const QString& why) {
        outcome.skipped.push_back(skippedRow(table, row, why));
    };
    for (const CsvRow& row : table.rows) {
        if (run.cancelled())
            return stoppedByPerson();
        const QString name = plainName(row.cell(QStringLiteral("name")));
        const Child* known = childByName(book, name);
        const OrReason<Child> child = readChild(table, row, known != nullptr ? *known : Child());
        if (const auto* why = std::get_if<QString>(&child)) {
            skip(row, *why);
            continue;
        }
        const auto [first, isNew] = rowOfName.try_emplace(name.toCaseFolded(), row.row);
        if (!isNew) {
            skip(row, Says::tr("%1 is in row %2 already").arg(name).arg(first->second));
            continue;
        }
        Child value = std::get<Child>(child);
        if (known == nullptr) {
            value.id = edit.newId<Child>();
            ++outcome.added;
        } else if (!(value == *known)) {
            ++outcome.updated;
        }
        edit.put(value);
    }
    run.report(Says::tr("Read %1").arg(table.file), 1, 1);
    outcome.edit = edit.take();
    return outcome;
}

} // namespace wainscot
