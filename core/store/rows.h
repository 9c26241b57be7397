// Between values of the model and rows of a table: no rules, only translation. Private to
// core/store.
#pragma once

#include "core/base/result.h"
#include "core/model/book.h"

#include <QLatin1String>
#include <QSqlQuery>
#include <QString>
#include <QVariant>

namespace wainscot {

// Where values of a kind are kept. The first column is "id".
struct TableForm {
    const char* table;
    const char* columns; // separated by ", "
};

// A list inside a value: table (owner, place, member).
struct ListForm {
    const char* table;
    const char* owner;
    const char* member;
};

// Reads the columns of a row from left to right and remembers whether all made sense.
class RowReader {
public:
    explicit RowReader(const QSqlQuery& row)
        : m_row(row)
    {
    }
    QString text() { return next().toString(); }
    int number() { return next().toInt(); }
    double real() { return next().toDouble(); }
    bool yes() { return next().toInt() != 0; }
    Mm mm() { return Mm(real()); }
    RectMm rectMm();
    template <class AnyId> AnyId id() { return AnyId(next().toLongLong()); }
    std::optional<QDate> date();
    std::optional<int> numberOrNothing();
    QVariant next() { return m_row.value(m_at++); }
    // The value, or a remark that the row makes no sense.
    template <class T> T known(std::optional<T> value)
    {
        m_makesSense = m_makesSense && value.has_value();
        return value.value_or(T{});
    }
    void mustHold(bool condition) { m_makesSense = m_makesSense && condition; }
    [[nodiscard]] bool makesSense() const { return m_makesSense; }

private:
    const QSqlQuery& m_row;
    int m_at = 0;
    bool m_makesSense = true;
};

// Values for a statement. Text is never NULL; an id that names nothing is.
[[nodiscard]] QVariant sqlText(const QString& text);
[[nodiscard]] QVariant sqlDate(const std::optional<QDate>& date);
template <class Kind> [[nodiscard]] QVariant sqlId(Id<Kind> id)
{
    return id.isValid() ? QVariant::fromValue<qlonglong>(id.number())
                        : QVariant(QMetaType::fromType<qlonglong>());
}

// For each kind: its table, the values of its columns, and the way back. The pointer only says
// which kind is meant.
TableForm formOf(const Child* kind);
TableForm formOf(const PermissionRecord* kind);
TableForm formOf(const PromptSet* kind);
TableForm formOf(const Experience* kind);
TableForm formOf(const Quote* kind);
TableForm formOf(const NoAnswer* kind);
TableForm formOf(const Observation* kind);
TableForm formOf(const Picture* kind);
TableForm formOf(const Group* kind);
TableForm formOf(const KeptPair* kind);
TableForm formOf(const Meeting* kind);
TableForm formOf(const Reflection* kind);
TableForm formOf(const Goal* kind);
TableForm formOf(const Display* kind);
TableForm formOf(const Panel* kind);
TableForm formOf(const Piece* kind);
TableForm formOf(const Wall* kind);
TableForm formOf(const Translation* kind);
TableForm formOf(const PanelTemplate* kind);

QVariantList valuesOf(const Child& child);
QVariantList valuesOf(const PermissionRecord& record);
QVariantList valuesOf(const PromptSet& set);
QVariantList valuesOf(const Experience& experience);
QVariantList valuesOf(const Quote& quote);
QVariantList valuesOf(const NoAnswer& missing);
QVariantList valuesOf(const Observation& observation);
QVariantList valuesOf(const Picture& picture);
QVariantList valuesOf(const Group& group);
QVariantList valuesOf(const KeptPair& pair);
QVariantList valuesOf(const Meeting& meeting);
QVariantList valuesOf(const Reflection& reflection);
QVariantList valuesOf(const Goal& goal);
QVariantList valuesOf(const Display& display);
QVariantList valuesOf(const Panel& panel);
QVariantList valuesOf(const Piece& piece);
QVariantList valuesOf(const Wall& wall);
QVariantList valuesOf(const Translation& translation);
QVariantList valuesOf(const PanelTemplate& made);

void readRow(RowReader& row, Child& child);
void readRow(RowReader& row, PermissionRecord& record);
void readRow(RowReader& row, PromptSet& set);
void readRow(RowReader& row, Experience& experience);
void readRow(RowReader& row, Quote& quote);
void readRow(RowReader& row, NoAnswer& missing);
void readRow(RowReader& row, Observation& observation);
void readRow(RowReader& row, Picture& picture);
void readRow(RowReader& row, Group& group);
void readRow(RowReader& row, KeptPair& pair);
void readRow(RowReader& row, Meeting& meeting);
void readRow(RowReader& row, Reflection& reflection);
void readRow(RowReader& row, Goal& goal);
void readRow(RowReader& row, Display& display);
void readRow(RowReader& row, Panel& panel);
void readRow(RowReader& row, Piece& piece);
void readRow(RowReader& row, Wall& wall);
void readRow(RowReader& row, Translation& translation);
void readRow(RowReader& row, PanelTemplate& made);

// Calls visit(form, list) for each list of ids inside a value, as far as its kind has any.
template <class T, class Visit> void withIdLists(T& value, Visit visit)
{
    using Kind = std::remove_const_t<T>;
    if constexpr (std::is_same_v<Kind, Observation>)
        visit(ListForm{"observation_children", "observation_id", "child_id"}, value.children);
    else if constexpr (std::is_same_v<Kind, Picture>)
        visit(ListForm{"picture_children", "picture_id", "child_id"}, value.people.children);
    else if constexpr (std::is_same_v<Kind, Quote>)
        visit(ListForm{"quote_goals", "quote_id", "goal_id"}, value.goals);
    else if constexpr (std::is_same_v<Kind, Panel>)
        visit(ListForm{"panel_goals", "panel_id", "goal_id"}, value.goals);
    else if constexpr (std::is_same_v<Kind, Group>)
        visit(ListForm{"group_quotes", "group_id", "quote_id"}, value.quotes);
    else if constexpr (std::is_same_v<Kind, Meeting>) {
        visit(ListForm{"meeting_groups", "meeting_id", "group_id"}, value.groups);
        visit(ListForm{"meeting_quotes", "meeting_id", "quote_id"}, value.readOut);
        visit(ListForm{"meeting_carried_groups", "meeting_id", "group_id"}, value.carriedOver);
    }
}

} // namespace wainscot
