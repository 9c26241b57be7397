#include "app/ui/session/permission_edits.h"

#include <algorithm>
#include <map>

#include "core/permit/family_answers.h"

namespace wainscot::ui {

namespace {

// The record that a further answer of the same day and person belongs to; a new one if there is
// none.
PermissionRecord recordFor(const Book& book, ChildId child, Audience audience, const SaidBy& by)
{
    for (const auto& [id, record] : book.permissionRecords.rows()) {
        if (record.child == child && record.audience == audience && record.on == by.on
            && record.by == by.who)
            return record;
    }
    PermissionRecord made;
    made.child = child;
    made.audience = audience;
    made.on = by.on;
    made.by = by.who;
    return made;
}

bool saysNothing(const PermissionRecord& record)
{
    for (const FamilyAnswer answer : record.answers) {
        if (answer != FamilyAnswer::NotSaid)
            return false;
    }
    return true;
}

} // namespace

Edit notePermissions(const Book& book,
    const std::vector<SaidPermission>& said,
    const SaidBy& by,
    const QString& label)
{
    EditBuilder edit(book, label);
    std::map<ChildId, Child> children;
    std::map<std::pair<ChildId, Audience>, PermissionRecord> records;
    for (const SaidPermission& one : said) {
        const Child* known = book.children.find(one.child);
        if (known == nullptr)
            continue;
        Child& child = children.try_emplace(one.child, *known).first->second;
        child.permissions.set(one.to, one.audience, one.answer == FamilyAnswer::Yes);
        const auto key = std::pair(one.child, one.audience);
        if (records.count(key) == 0)
            records.emplace(key, recordFor(book, one.child, one.audience, by));
        PermissionRecord& record = records.at(key);
        record.answers[std::size_t(one.to)] = one.answer;
        if (!by.note.isEmpty())
            record.note = by.note;
    }
    for (const auto& [id, child] : children)
        edit.put(child);
    for (auto& [key, record] : records) {
        if (saysNothing(record)) {
            if (record.id.isValid())
                edit.remove<PermissionRecord>(record.id);
            continue;
        }
        if (!record.id.isValid())
            record.id = edit.newId<PermissionRecord>();
        edit.put(record);
    }
    return edit.take();
}

FamilyAnswer nextAnswer(
    const Book& book, const Child& child, Audience audience, Permission to, QDate today)
{
    const auto records = recordsOf(book, child.id, audience, to);
    const bool ofToday = !records.empty() && records.back()->on == today;
    switch (familyAnswer(book, child, audience, to)) {
    case FamilyAnswer::Yes: {
        const bool fresh = ofToday
            && std::none_of(records.begin(), records.end() - 1, [&](const PermissionRecord* one) {
                   return one->answer(to) == FamilyAnswer::Yes;
               });
        return fresh ? FamilyAnswer::No : FamilyAnswer::Withdrawn;
    }
    case FamilyAnswer::No:
        return ofToday ? FamilyAnswer::NotSaid : FamilyAnswer::Yes;
    case FamilyAnswer::NotSaid:
    case FamilyAnswer::Withdrawn:
        return FamilyAnswer::Yes;
    }
    return FamilyAnswer::Yes;
}

} // namespace wainscot::ui
