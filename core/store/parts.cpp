#include "core/store/parts.h"

#include "core/store/database.h"

#include <algorithm>

namespace wainscot {

namespace {

bool addPrompt(RowReader& row, PromptSet& set)
{
    Prompt prompt;
    prompt.key = row.text();
    prompt.text = row.text();
    prompt.sign = row.known(promptSignFromName(row.text()));
    prompt.picture = row.id<PictureId>();
    set.prompts.push_back(prompt);
    return true;
}

bool addWording(RowReader& row, PromptSet& set)
{
    const QString key = row.text();
    const auto at = std::find_if(set.prompts.begin(), set.prompts.end(), [&](const Prompt& prompt) {
        return prompt.key == key;
    });
    if (at == set.prompts.end())
        return false;
    PromptWording wording;
    wording.language = row.text();
    wording.text = row.text();
    at->others.push_back(wording);
    return true;
}

bool addNote(RowReader& row, Meeting& meeting)
{
    MeetingNote note;
    note.kind = row.known(meetingNoteKindFromName(row.text()));
    note.text = row.text();
    note.group = row.id<GroupId>();
    note.child = row.id<ChildId>();
    meeting.happened.push_back(note);
    return true;
}

template <class T> Result<> removeParts(Database& database, const T& value)
{
    Result<> removed = Done{};
    for (const PartForm<T>& form : partForms(&value)) {
        const QString owner = QString::fromLatin1(form.columns).section(QLatin1Char(','), 0, 0);
        if (removed)
            removed = database.run(
                QStringLiteral("DELETE FROM %1 WHERE %2 = ?").arg(QLatin1String(form.table), owner),
                {sqlId(value.id)});
    }
    return removed;
}

Result<> writePrompt(Database& database, PromptSetId set, int place, const Prompt& prompt)
{
    auto written = database.run(
        QStringLiteral("INSERT INTO prompts (prompt_set_id, place, prompt_key, asked, sign, "
                       "picture_id) VALUES (?, ?, ?, ?, ?, ?)"),
        {sqlId(set),
            place,
            sqlText(prompt.key),
            sqlText(prompt.text),
            nameOf(prompt.sign),
            sqlId(prompt.picture)});
    int at = 0;
    for (const PromptWording& wording : prompt.others) {
        if (!written)
            return written;
        written = database.run(
            QStringLiteral("INSERT INTO prompt_wordings (prompt_set_id, prompt_key, place, "
                           "language, asked) VALUES (?, ?, ?, ?, ?)"),
            {sqlId(set),
                sqlText(prompt.key),
                at++,
                sqlText(wording.language),
                sqlText(wording.text)});
    }
    return written;
}

} // namespace

std::vector<PartForm<PromptSet>> partForms(const PromptSet* /*kind*/)
{
    return {{"prompts",
                "prompt_set_id, prompt_key, asked, sign, picture_id",
                "prompt_set_id, place",
                addPrompt},
        {"prompt_wordings",
            "prompt_set_id, prompt_key, language, asked",
            "prompt_set_id, prompt_key, place",
            addWording}};
}

std::vector<PartForm<Meeting>> partForms(const Meeting* /*kind*/)
{
    return {{"meeting_notes",
        "meeting_id, kind, words, group_id, child_id",
        "meeting_id, place",
        addNote}};
}

Result<> writeParts(Database& database, const PromptSet& set)
{
    auto written = removeParts(database, set);
    for (std::size_t i = 0; i < set.prompts.size() && written; ++i)
        written = writePrompt(database, set.id, int(i), set.prompts[i]);
    return written;
}

Result<> writeParts(Database& database, const Meeting& meeting)
{
    auto written = removeParts(database, meeting);
    int place = 0;
    for (const MeetingNote& note : meeting.happened) {
        if (!written)
            return written;
        written = database.run(
            QStringLiteral("INSERT INTO meeting_notes (meeting_id, place, kind, words, "
                           "group_id, child_id) VALUES (?, ?, ?, ?, ?, ?)"),
            {sqlId(meeting.id),
                place++,
                nameOf(note.kind),
                sqlText(note.text),
                sqlId(note.group),
                sqlId(note.child)});
    }
    return written;
}

} // namespace wainscot
