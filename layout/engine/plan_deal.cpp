#include "layout/engine/plan_deal.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

constexpr double kStripAspect = 2.2;
constexpr int kMostBands = 3; // of one kind
constexpr int kUneven = 2; // quotes by which one column may exceed the next
constexpr int kLeastHead = 3; // rows
constexpr int kMostHead = 12;

Role roleOf(const Item& item, const std::vector<PlanBand>& bands)
{
    const auto first = [&](std::initializer_list<Role> wanted, Role otherwise) {
        for (const Role role : wanted)
            if (hasRole(bands, role))
                return role;
        return otherwise;
    };
    switch (item.kind) {
    case Kind::Title:
    case Kind::Question:
        return first({Role::Title, Role::Entry}, Role::Voice);
    case Kind::Context:
        return first({Role::Context, Role::Entry}, Role::Note);
    case Kind::Credits:
        return first({Role::Credits, Role::Entry}, Role::Note);
    case Kind::Invitation:
        return first({Role::Invitation, Role::Adult}, Role::Note);
    case Kind::Interpretation:
    case Kind::NextStep:
        return first({Role::Adult}, Role::Note);
    case Kind::Photo:
    case Kind::Work:
        return first({Role::Work}, Role::Group);
    case Kind::Label:
        return first({Role::Label, Role::Voice}, Role::Group);
    case Kind::Quote:
        return first({Role::Voice}, Role::Group);
    }
    return Role::Group;
}

bool hasPart(const std::vector<PlanBand>& bands, Role role, bool repeated)
{
    return std::any_of(bands.begin(), bands.end(), [&](const PlanBand& band) {
        return band.repeats == repeated && hasRole({band}, role);
    });
}

// Groups: some in the bands that stand alone, the rest over further bands.
std::vector<Deal> groupDeals(const std::vector<PlanBand>& bands, int count)
{
    int lead = 0;
    int wide = 0;
    for (const PlanBand& band : bands)
        for (const PlanPart& place : band.parts)
            if (place.role == Role::Group && !band.spread)
                (band.repeats ? wide : lead) = place.groups;
    if (wide == 0) {
        Deal alone;
        alone.lead = std::min(lead, count);
        return {alone};
    }
    const bool adults = hasPart(bands, Role::Adult, true);
    const bool blanks = hasPart(bands, Role::Blank, true);
    std::vector<Deal> out;
    for (int beside = std::min(lead, count); beside >= 0; --beside) {
        const int rest = count - beside;
        for (int rows = 0; rows <= kMostBands; ++rows) {
            if ((rows == 0) != (rest == 0) || rows > rest || rest > rows * wide)
                continue;
            Deal one;
            one.lead = beside;
            for (int r = 0; r < rows; ++r)
                one.bands.push_back(rest / rows + (r < rest % rows ? 1 : 0));
            for (const bool apart : {false, true})
                for (const bool blank : {false, true}) {
                    if ((apart && !adults) || (blank && !blanks))
                        continue;
                    one.adultsApart = apart;
                    one.blank = blank;
                    out.push_back(one);
                }
        }
    }
    return out;
}

// Quotes over the plan's voice parts, in order; columns without a limit come out nearly even.
void dealVoices(const std::vector<const PlanPart*>& parts,
    int left,
    std::vector<int> sofar,
    std::vector<std::vector<int>>& out)
{
    const std::size_t at = sofar.size();
    if (at + 1 == parts.size()) {
        if (parts[at]->take > 0 && left > parts[at]->take)
            return;
        if (at > 0 && parts[at - 1]->take == 0 && std::abs(left - sofar.back()) > kUneven)
            return;
        sofar.push_back(left);
        out.push_back(std::move(sofar));
        return;
    }
    const int most = parts[at]->take > 0 ? std::min(parts[at]->take, left) : left;
    for (int n = 0; n <= most; ++n) {
        auto next = sofar;
        next.push_back(n);
        dealVoices(parts, left - n, std::move(next), out);
    }
}

std::vector<std::vector<int>> voiceDeals(const std::vector<PlanBand>& bands, int count)
{
    std::vector<const PlanPart*> parts;
    for (const PlanBand& band : bands)
        for (const PlanPart& place : band.parts)
            if (place.role == Role::Voice)
                parts.push_back(&place);
    std::vector<std::vector<int>> out;
    if (!parts.empty())
        dealVoices(parts, count, {}, out);
    if (out.empty())
        out.emplace_back();
    return out;
}

// Twelve columns over the columns of a spread band. Meetings grow to the right or stay equal, so
// that the last is at least as wide as the first.
void dealWidths(const std::vector<const PlanPart*>& columns,
    int left,
    std::vector<int> sofar,
    std::vector<std::vector<int>>& out)
{
    const std::size_t at = sofar.size();
    if (at == columns.size()) {
        if (left == 0)
            out.push_back(std::move(sofar));
        return;
    }
    const bool again = at > 0 && columns[at] == columns[at - 1];
    const int least = again ? std::max(columns[at]->least, sofar.back()) : columns[at]->least;
    for (int w = least; w <= std::min(columns[at]->most, left); ++w) {
        auto next = sofar;
        next.push_back(w);
        dealWidths(columns, left - w, std::move(next), out);
    }
}

std::vector<std::vector<int>> widthDeals(
    const std::vector<PlanBand>& bands, const SortedItems& items)
{
    std::vector<const PlanPart*> columns;
    for (const PlanBand& band : bands)
        for (const PlanPart& place : band.parts) {
            if (!band.spread)
                continue;
            const int count = place.role == Role::Group ? int(items.groups.size())
                                                        : std::min(1, items.count(place.role));
            columns.insert(columns.end(), std::size_t(count), &place);
        }
    std::vector<std::vector<int>> out;
    if (columns.empty())
        out.emplace_back();
    else
        dealWidths(columns, 12, {}, out);
    return out;
}

std::vector<int> headDeals(const std::vector<PlanBand>& bands)
{
    for (const PlanBand& band : bands)
        for (const PlanPart& place : band.parts)
            if (place.head) {
                std::vector<int> out;
                for (int rows = kLeastHead; rows <= kMostHead; ++rows)
                    out.push_back(rows);
                return out;
            }
    return {0};
}

} // namespace

int SortedItems::count(Role role) const
{
    const auto at = items.find(role);
    return at == items.end() ? 0 : int(at->second.size());
}

bool hasRole(const std::vector<PlanBand>& bands, Role role)
{
    return std::any_of(bands.begin(), bands.end(), [role](const PlanBand& band) {
        return std::any_of(band.parts.begin(), band.parts.end(), [role](const PlanPart& one) {
            return one.role == role;
        });
    });
}

const std::vector<PlanBand>& bandsFor(const Plan& plan, const Request& request)
{
    const SizeMm size = request.page.size;
    if (size.width < size.height)
        return plan.portrait;
    if (!plan.strip.empty() && size.width > kStripAspect * size.height)
        return plan.strip;
    const bool upright =
        std::any_of(request.items.begin(), request.items.end(), [](const Item& item) {
            return item.kind == Kind::Work && item.picture
                && item.picture->size.height > item.picture->size.width;
        });
    return upright && !plan.upright.empty() ? plan.upright : plan.landscape;
}

SortedItems sortItems(const std::vector<Item>& items, const std::vector<PlanBand>& bands)
{
    SortedItems out;
    const Item* dominant = nullptr;
    if (hasRole(bands, Role::Dominant))
        for (const Item& item : items)
            if (item.picture && item.group == 0
                && (dominant == nullptr || item.importance > dominant->importance))
                dominant = &item;
    std::map<int, std::size_t> places;
    for (const Item& item : items) {
        const Role role = &item == dominant ? Role::Dominant : roleOf(item, bands);
        const bool inGroup = item.group > 0 && hasRole(bands, Role::Group);
        if (role != Role::Group && !inGroup) {
            out.items[role].push_back(item);
        } else if (item.group == 0) {
            out.groups.push_back({item});
        } else {
            const auto [at, isNew] = places.try_emplace(item.group, out.groups.size());
            if (isNew)
                out.groups.emplace_back();
            out.groups[at->second].push_back(item);
        }
    }
    return out;
}

std::vector<Deal> dealsFor(
    const Plan& plan, const std::vector<PlanBand>& bands, const SortedItems& items, int rows)
{
    std::vector<Deal> out;
    for (const Deal& groups : groupDeals(bands, int(items.groups.size())))
        for (const auto& voices : voiceDeals(bands, items.count(Role::Voice)))
            for (const auto& widths : widthDeals(bands, items))
                for (const int head : headDeals(bands)) {
                    if (plan.thread > 0 && head + 6 > plan.thread * rows)
                        continue;
                    Deal one = groups;
                    one.voices = voices;
                    one.widths = widths;
                    one.headRows = head;
                    out.push_back(std::move(one));
                }
    return out;
}

} // namespace wainscot::engine
