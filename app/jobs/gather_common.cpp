#include "app/jobs/gather_common.h"

#include <QRegularExpression>

#include "core/base/says.h"

namespace wainscot {

namespace {

bool sameName(const QString& a, const QString& b)
{
    return a.simplified().compare(b.simplified(), Qt::CaseInsensitive) == 0;
}

PromptSet promptsFor(const Book& book, EditBuilder& edit)
{
    if (!book.promptSets.isEmpty())
        return book.promptSets.rows().begin()->second;
    PromptSet prompts = defaultPromptSet(book.info.language);
    prompts.id = edit.newId<PromptSet>();
    edit.put(prompts);
    return prompts;
}

} // namespace

GatheredExperience experienceFor(
    const Book& book, EditBuilder& edit, const QString& title, std::optional<QDate> on)
{
    GatheredExperience found;
    if (const Experience* known = experienceByTitle(book, title)) {
        found.experience = *known;
        if (const PromptSet* prompts = book.promptSets.find(known->promptSet))
            found.prompts = *prompts;
        if (on && !known->on) {
            found.experience.on = on;
            edit.put(found.experience);
        }
        return found;
    }
    found.prompts = promptsFor(book, edit);
    found.experience.id = edit.newId<Experience>();
    found.experience.title = title.simplified();
    found.experience.on = on;
    found.experience.language = book.info.language;
    found.experience.promptSet = found.prompts.id;
    edit.put(found.experience);
    return found;
}

std::optional<QDate> dayFromText(const QString& text)
{
    const QDate day = QDate::fromString(text.trimmed(), QStringLiteral("yyyy-MM-dd"));
    if (!day.isValid())
        return std::nullopt;
    return day;
}

QStringList partsOf(const QString& cell, const QString& separators)
{
    QStringList parts;
    QString part;
    for (const QChar c : cell + separators.front()) {
        if (!separators.contains(c)) {
            part += c;
            continue;
        }
        if (!part.trimmed().isEmpty())
            parts.append(part.trimmed());
        part.clear();
    }
    return parts;
}

Error lacksColumn(const CsvTable& table, const QString& column)
{
    return {ErrorCode::WrongUse,
        table.file,
        Says::tr("row 1, the header, has no column \"%1\"; it has %2")
            .arg(column, table.columns.join(QStringLiteral(", ")))};
}

std::vector<SkippedRow> unreadableRows(const CsvTable& table)
{
    std::vector<SkippedRow> rows;
    for (const CsvFault& fault : table.faults)
        rows.push_back({fault.row, table.file, fault.why});
    return rows;
}

SkippedRow skippedRow(const CsvTable& table, const CsvRow& row, const QString& why)
{
    return {row.row, table.file, Says::tr("%1, row %2: %3.").arg(table.file).arg(row.row).arg(why)};
}

bool sameWords(const QString& a, const QString& b)
{
    return a.simplified() == b.simplified();
}

const Child* childCalled(const Book& book, const QString& name)
{
    if (const Child* exact = childByName(book, name))
        return exact;
    const Child* only = nullptr;
    for (const auto& [id, child] : book.children.rows()) {
        const QString first = child.name.simplified().section(QLatin1Char(' '), 0, 0);
        if (!sameName(first, name) && !sameName(displayName(child), name))
            continue;
        if (only != nullptr)
            return nullptr; // two of that name: not for a program to decide
        only = &child;
    }
    return only;
}

} // namespace wainscot
