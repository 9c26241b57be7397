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
    return {"children", "id, name, shown_as, born, permissions"};
}

QVariantList valuesOf(const Child& child)
{
    return {sqlId(child.id),
        sqlText(child.name),
        sqlText(child.shownAs),
        child.born ? QVariant(textOf(*child.born)) : QVariant(QMetaType::fromType<QString>()),
        child.permissions.bits()};
}

void readRow(RowReader& row, Child& child)
{
    child.id = row.id<ChildId>();
    child.name = row.text();
    child.shownAs = row.text();
    if (const QString born = row.text(); !born.isEmpty())
        child.born = row.known(birthDateFromText(born));
    child.permissions = Permissions::fromBits(row.next().toUInt());
}

TableForm formOf(const PromptSet* /*kind*/)
{
    return {"prompt_sets", "id, name, language"};
}

QVariantList valuesOf(const PromptSet& set)
{
    return {sqlId(set.id), sqlText(set.name), sqlText(set.language)};
}

void readRow(RowReader& row, PromptSet& set)
{
    set.id = row.id<PromptSetId>();
    set.name = row.text();
    set.language = row.text();
}

} // namespace wainscot
