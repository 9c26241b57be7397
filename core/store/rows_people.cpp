#include "core/store/rows.h"

namespace wainscot {

QVariant sqlText(const QString& text)
{
    return text.isNull() ? QString(QLatin1String("")) : text;
}

QVariant sqlDate(const std::optional<QDate>& date)
{
    return date && date->isValid() ? QVariant(date->toString(Qt::ISODate))
                                   : QVariant(QMetaType::fromType<QString>());
}

std::optional<QDate> RowReader::date()
{
    const QVariant value = next();
    if (value.isNull())
        return std::nullopt;
    const QDate date = QDate::fromString(value.toString(), Qt::ISODate);
    mustHold(date.isValid());
    return date;
}

std::optional<int> RowReader::numberOrNothing()
{
    const QVariant value = next();
    return value.isNull() ? std::nullopt : std::optional(value.toInt());
}

RectMm RowReader::rectMm()
{
    RectMm rect;
    rect.x = mm();
    rect.y = mm();
    rect.width = mm();
    rect.height = mm();
    return rect;
}

TableForm formOf(const Child* /*kind*/)
{
    return {"children", "id, name, shown_as, born, permissions, languages"};
}

QVariantList valuesOf(const Child& child)
{
    return {sqlId(child.id),
        sqlText(child.name),
        sqlText(child.shownAs),
        child.born ? QVariant(textOf(*child.born)) : QVariant(QMetaType::fromType<QString>()),
        child.permissions.bits(),
        sqlText(child.languages)};
}

void readRow(RowReader& row, Child& child)
{
    child.id = row.id<ChildId>();
    child.name = row.text();
    child.shownAs = row.text();
    if (const QString born = row.text(); !born.isEmpty())
        child.born = row.known(birthDateFromText(born));
    child.permissions = Permissions::fromBits(row.next().toUInt());
    child.languages = row.text();
}

TableForm formOf(const PermissionRecord* /*kind*/)
{
    return {"permission_records",
        "id, child_id, audience, photo, first_name, words, work, photo_with_name, said_on, "
        "said_by, note"};
}

QVariantList valuesOf(const PermissionRecord& record)
{
    QVariantList values{sqlId(record.id), sqlId(record.child), nameOf(record.audience)};
    for (const Permission permission : kPermissions)
        values << nameOf(record.answer(permission));
    return values << sqlDate(record.on) << sqlText(record.by) << sqlText(record.note);
}

void readRow(RowReader& row, PermissionRecord& record)
{
    record.id = row.id<PermissionRecordId>();
    record.child = row.id<ChildId>();
    record.audience = row.known(audienceFromName(row.text()));
    for (FamilyAnswer& answer : record.answers)
        answer = row.known(familyAnswerFromName(row.text()));
    record.on = row.date();
    record.by = row.text();
    record.note = row.text();
}

TableForm formOf(const PromptSet* /*kind*/)
{
    return {"prompt_sets", "id, name, language, asked, sense, ages"};
}

QVariantList valuesOf(const PromptSet& set)
{
    return {sqlId(set.id),
        sqlText(set.name),
        sqlText(set.language),
        nameOf(set.asked),
        sqlText(set.sense),
        sqlText(set.ages)};
}

void readRow(RowReader& row, PromptSet& set)
{
    set.id = row.id<PromptSetId>();
    set.name = row.text();
    set.language = row.text();
    set.asked = row.known(askedFromName(row.text()));
    set.sense = row.text();
    set.ages = row.text();
}

} // namespace wainscot
