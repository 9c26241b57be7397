#include "core/voice/term.h"

#include "core/voice/participation.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

namespace wainscot {

namespace {

constexpr int kTellings = 5;

// How often each kind of voice was used, by child and week.
using Tally = std::map<ChildId, std::vector<std::array<int, kTellings>>>;

QDate mondayOf(QDate day)
{
    return day.addDays(1 - day.dayOfWeek());
}

std::vector<Week> weeksBetween(QDate from, QDate to)
{
    std::vector<Week> weeks;
    for (QDate monday = mondayOf(from); monday <= to; monday = monday.addDays(7))
        weeks.push_back({monday});
    return weeks;
}

std::optional<Telling> mostUsed(const std::array<int, kTellings>& uses)
{
    const auto* const most = std::max_element(uses.begin(), uses.end());
    if (*most == 0)
        return std::nullopt;
    return static_cast<Telling>(most - uses.begin());
}

// The quotes on panels, each once however often it hangs.
std::set<QuoteId> quotesOnPanels(const Book& book)
{
    std::set<QuoteId> hung;
    for (const auto& [id, piece] : book.pieces.rows()) {
        if (piece.quote.isValid())
            hung.insert(piece.quote);
    }
    return hung;
}

} // namespace

int ChildInTerm::weeksHeard() const
{
    return int(std::count_if(
        heard.begin(), heard.end(), [](const auto& week) { return week.has_value(); }));
}

const ChildInTerm* Term::of(ChildId child) const
{
    const auto at = std::find_if(
        children.begin(), children.end(), [child](const auto& row) { return row.child == child; });
    return at == children.end() ? nullptr : &*at;
}

std::optional<QDate> dayOf(const Book& book, const Quote& quote)
{
    if (quote.on)
        return quote.on;
    if (const Meeting* meeting = book.meetings.find(quote.meeting))
        return meeting->on;
    const Experience* experience = book.experiences.find(quote.experience);
    return experience != nullptr ? experience->on : std::nullopt;
}

Term termOf(const Book& book, QDate from, QDate to)
{
    Term term;
    term.weeks = weeksBetween(from, to);
    Tally tally;
    std::map<ChildId, ChildInTerm> rows;
    for (const auto& [id, child] : book.children.rows()) {
        tally[id].resize(term.weeks.size());
        rows[id].child = id;
    }
    const auto hung = quotesOnPanels(book);
    for (const auto& [id, quote] : book.quotes.rows()) {
        const auto row = rows.find(quote.child);
        if (row == rows.end())
            continue;
        row->second.quoted += hung.count(id) > 0 ? 1 : 0;
        const auto day = dayOf(book, quote);
        if (!day || *day < from || *day > to)
            continue;
        row->second.lastHeard = std::max(row->second.lastHeard.value_or(*day), *day);
        const auto week = std::size_t(mondayOf(from).daysTo(*day) / 7);
        ++tally[quote.child][week][std::size_t(quote.telling)];
    }
    for (const auto& [id, picture] : book.pictures.rows()) {
        if (picture.display.isValid())
            continue; // of a wall: what it shows was counted already
        for (const ChildId child : picture.people.children) {
            if (const auto row = rows.find(child); row != rows.end())
                ++row->second.pictured;
        }
    }
    const auto walls = wallsOfChildren(book, {});
    term.children.reserve(rows.size());
    for (auto& [id, row] : rows) {
        for (const auto& uses : tally[id])
            row.heard.push_back(mostUsed(uses));
        row.walls = walls.at(id);
        term.children.push_back(std::move(row));
    }
    return term;
}

QDate termBegin(QDate day)
{
    const int month = day.month() >= 9 ? 9 : (day.month() >= 5 ? 5 : 1);
    return {day.year(), month, 1};
}

std::vector<ChildId> heardLeast(const Term& term, std::size_t most)
{
    std::vector<const ChildInTerm*> byWeeks;
    byWeeks.reserve(term.children.size());
    for (const ChildInTerm& row : term.children)
        byWeeks.push_back(&row);
    std::stable_sort(
        byWeeks.begin(), byWeeks.end(), [](const ChildInTerm* a, const ChildInTerm* b) {
            return a->weeksHeard() < b->weeksHeard();
        });
    std::set<ChildId> least;
    for (const ChildInTerm* row : byWeeks) {
        if (least.size() < most && row->weeksHeard() < byWeeks.back()->weeksHeard())
            least.insert(row->child);
    }
    return {least.begin(), least.end()};
}

} // namespace wainscot
