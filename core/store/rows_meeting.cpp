#include "core/store/rows.h"

namespace wainscot {

TableForm formOf(const Group* /*kind*/)
{
    return {"response_groups", "id, experience_id, label, is_kept_by_hand, list_order, carried_to"};
}

QVariantList valuesOf(const Group& group)
{
    return {sqlId(group.id),
        sqlId(group.experience),
        sqlText(group.label),
        int(group.keptByHand),
        group.order,
        sqlDate(group.carriedTo)};
}

void readRow(RowReader& row, Group& group)
{
    group.id = row.id<GroupId>();
    group.experience = row.id<ExperienceId>();
    group.label = row.text();
    group.keptByHand = row.yes();
    group.order = row.number();
    group.carriedTo = row.date();
}

TableForm formOf(const KeptPair* /*kind*/)
{
    return {"kept_pairs", "id, answer_id, other_id, is_apart"};
}

QVariantList valuesOf(const KeptPair& pair)
{
    return {sqlId(pair.id), sqlId(pair.answer), sqlId(pair.other), int(pair.apart)};
}

void readRow(RowReader& row, KeptPair& pair)
{
    pair.id = row.id<KeptPairId>();
    pair.answer = row.id<QuoteId>();
    pair.other = row.id<QuoteId>();
    pair.apart = row.yes();
}

TableForm formOf(const Meeting* /*kind*/)
{
    return {"meetings", "id, experience_id, met_on, notes, is_done"};
}

QVariantList valuesOf(const Meeting& meeting)
{
    return {sqlId(meeting.id),
        sqlId(meeting.experience),
        sqlDate(meeting.on),
        sqlText(meeting.notes),
        int(meeting.done)};
}

void readRow(RowReader& row, Meeting& meeting)
{
    meeting.id = row.id<MeetingId>();
    meeting.experience = row.id<ExperienceId>();
    meeting.on = row.date().value_or(QDate());
    meeting.notes = row.text();
    meeting.done = row.yes();
}

TableForm formOf(const Reflection* /*kind*/)
{
    return {"reflections",
        "id, experience_id, prompt_key, question, answer, answered_by, answered_on, list_order"};
}

QVariantList valuesOf(const Reflection& reflection)
{
    return {sqlId(reflection.id),
        sqlId(reflection.experience),
        sqlText(reflection.prompt),
        sqlText(reflection.question),
        sqlText(reflection.answer),
        sqlText(reflection.by),
        sqlDate(reflection.on),
        reflection.order};
}

void readRow(RowReader& row, Reflection& reflection)
{
    reflection.id = row.id<ReflectionId>();
    reflection.experience = row.id<ExperienceId>();
    reflection.prompt = row.text();
    reflection.question = row.text();
    reflection.answer = row.text();
    reflection.by = row.text();
    reflection.on = row.date();
    reflection.order = row.number();
}

TableForm formOf(const Goal* /*kind*/)
{
    return {"goals", "id, goal, source, list_order"};
}

QVariantList valuesOf(const Goal& goal)
{
    return {sqlId(goal.id), sqlText(goal.text), sqlText(goal.source), goal.order};
}

void readRow(RowReader& row, Goal& goal)
{
    goal.id = row.id<GoalId>();
    goal.text = row.text();
    goal.source = row.text();
    goal.order = row.number();
}

} // namespace wainscot
