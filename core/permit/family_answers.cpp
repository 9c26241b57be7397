#include "core/permit/family_answers.h"

#include <algorithm>

namespace wainscot {

FamilyAnswer familyAnswer(const Book& book, const Child& child, Audience audience, Permission to)
{
    if (child.permissions.allows(to, audience))
        return FamilyAnswer::Yes;
    const auto said = recordsOf(book, child.id, audience, to);
    if (said.empty() || said.back()->answer(to) == FamilyAnswer::Yes)
        return FamilyAnswer::NotSaid;
    return said.back()->answer(to);
}

std::vector<const PermissionRecord*> recordsOf(
    const Book& book, ChildId child, Audience audience, Permission to)
{
    std::vector<const PermissionRecord*> records;
    for (const auto& [id, record] : book.permissionRecords.rows()) {
        const bool mentions = record.answer(to) != FamilyAnswer::NotSaid;
        if (record.child == child && record.audience == audience && mentions)
            records.push_back(&record);
    }
    std::stable_sort(records.begin(),
        records.end(),
        [](const PermissionRecord* a, const PermissionRecord* b) { return a->on < b->on; });
    return records;
}

int answersMissing(const Book& book)
{
    int missing = 0;
    for (const auto& [id, child] : book.children.rows()) {
        for (const Audience audience : kAudiences) {
            for (const Permission to : kPermissions)
                missing += familyAnswer(book, child, audience, to) == FamilyAnswer::NotSaid ? 1 : 0;
        }
    }
    return missing;
}

} // namespace wainscot
