#include "layout/engine/plan.h"

#include <algorithm>
#include <map>

namespace wainscot::engine {

namespace {

PlanPart part(Role role, int least, int most, int first = -1)
{
    PlanPart out;
    out.role = role;
    out.least = least;
    out.most = most;
    out.first = first;
    return out;
}

PlanPart withSize(PlanPart one, double rows, double area)
{
    one.rows = rows;
    one.area = area;
    return one;
}

PlanPart groups(int most, int least, int widest)
{
    PlanPart one = part(Role::Group, least, widest);
    one.groups = most;
    return one;
}

PlanPart atFoot(PlanPart one)
{
    one.stand = Stand::PageFoot;
    return one;
}

PlanPart indented(PlanPart one)
{
    one.indented = true;
    return one;
}

Plan days()
{
    Plan plan;
    plan.name = "days";
    plan.landscape = {
        {{part(Role::Entry, 4, 4, 0),
             withSize(part(Role::Dominant, 5, 5, 4), 15.0 / 32, 0.155),
             groups(1, 3, 3)},
            false},
        {{groups(4, 3, 6), part(Role::Adult, 3, 6), part(Role::Blank, 1, 6)}, true},
    };
    plan.portrait = {
        {{part(Role::Entry, 4, 4, 0), withSize(part(Role::Dominant, 8, 8, 4), 16.0 / 46, 0.16)},
            false},
        {{groups(3, 4, 6), part(Role::Adult, 4, 6), part(Role::Blank, 1, 8)}, true},
    };
    plan.cuts = {3, 4, 6, 8, 9};
    plan.mostGroups = 4;
    plan.alternates = true;
    return plan;
}

Plan drawing()
{
    Plan plan;
    plan.name = "drawing";
    plan.landscape = {
        {{withSize(part(Role::Work, 8, 8, 0), 0, 0.35), indented(part(Role::Voice, 4, 4, 8))},
            false},
        {{atFoot(part(Role::Note, 5, 5, 0)),
             part(Role::Blank, 1, 8),
             atFoot(indented(part(Role::Credits, 4, 4, 8)))},
            false},
    };
    plan.upright = {
        {{withSize(part(Role::Work, 5, 5, 0), 0, 0.35),
             part(Role::Blank, 1, 1),
             part(Role::Voice, 6, 6, 6)},
            false},
        {{atFoot(part(Role::Note, 5, 5, 0)),
             part(Role::Blank, 1, 6),
             atFoot(part(Role::Credits, 6, 6, 6))},
            false},
    };
    plan.portrait = {
        {{withSize(part(Role::Work, 12, 12, 0), 0, 0.4)}, false},
        {{part(Role::Voice, 8, 8, 0), part(Role::Blank, 4, 4)}, false},
        {{atFoot(part(Role::Note, 6, 6, 0)),
             part(Role::Blank, 1, 6),
             atFoot(part(Role::Credits, 6, 6, 6))},
            false},
    };
    plan.cuts = {5, 6, 8};
    return plan;
}

// Items by the place they may take, groups one by one.
struct Sorted {
    std::map<Role, std::vector<Item>> items;
    std::vector<std::vector<Item>> groups;
};

bool has(const std::vector<PlanBand>& bands, Role role)
{
    return std::any_of(bands.begin(), bands.end(), [role](const PlanBand& band) {
        return std::any_of(band.parts.begin(), band.parts.end(), [role](const PlanPart& one) {
            return one.role == role;
        });
    });
}

Role roleOf(const Item& item, const std::vector<PlanBand>& bands)
{
    switch (item.kind) {
    case Kind::Title:
    case Kind::Question:
        return has(bands, Role::Entry) ? Role::Entry : Role::Voice;
    case Kind::Context:
        return has(bands, Role::Entry) ? Role::Entry : Role::Note;
    case Kind::Credits:
        return has(bands, Role::Credits) ? Role::Credits : Role::Entry;
    case Kind::Interpretation:
    case Kind::NextStep:
    case Kind::Invitation:
        return has(bands, Role::Adult) ? Role::Adult : Role::Note;
    case Kind::Photo:
    case Kind::Work:
        return has(bands, Role::Work) ? Role::Work : Role::Group;
    case Kind::Label:
    case Kind::Quote:
        return has(bands, Role::Voice) ? Role::Voice : Role::Group;
    }
    return Role::Group;
}

Sorted sorted(const std::vector<Item>& items, const std::vector<PlanBand>& bands)
{
    Sorted out;
    const Item* dominant = nullptr;
    if (has(bands, Role::Dominant))
        for (const Item& item : items)
            if (item.picture && item.group == 0
                && (dominant == nullptr || item.importance > dominant->importance))
                dominant = &item;
    std::map<int, std::size_t> places;
    for (const Item& item : items) {
        const Role role = &item == dominant ? Role::Dominant : roleOf(item, bands);
        if (role != Role::Group) {
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

// Pictures first in even groups, words first in odd ones; a label keeps its place on top.
void alternate(std::vector<Item>& group, bool wordsFirst)
{
    const auto isPicture = [](const Item& item) { return item.picture.has_value(); };
    const auto pictures = std::count_if(group.begin(), group.end(), isPicture);
    const bool hasWords = std::any_of(
        group.begin(), group.end(), [](const Item& item) { return item.kind == Kind::Quote; });
    if (pictures != 1 || !hasWords)
        return;
    std::stable_partition(group.begin(), group.end(), [&](const Item& item) {
        return item.kind == Kind::Label || isPicture(item) != wordsFirst;
    });
    std::stable_partition(
        group.begin(), group.end(), [](const Item& item) { return item.kind == Kind::Label; });
}

// Builds the sequence of one variant, band by band.
class Builder {
public:
    explicit Builder(const PageSpec& page, bool loose)
        : m_page(page)
        , m_loose(loose)
    {
    }

    void beginBand() { m_bandBefore = !m_items.empty(); }

    void put(Item item, const PlanPart& place, int most)
    {
        Wish& wish = item.wish;
        const bool keepSpan =
            !m_loose || (place.role != Role::Dominant && place.role != Role::Entry);
        wish.minColumns = keepSpan ? place.least : 3;
        wish.maxColumns = keepSpan ? most : 8;
        wish.firstColumn = keepSpan ? place.first : -1;
        wish.blockColumns = place.role == Role::Group ? most : 0;
        wish.rows = int(place.rows * m_page.rows + 0.5);
        wish.area = item.picture ? place.area : 0;
        if (place.stand != Stand::Top)
            wish.stand = place.stand;
        wish.bandBefore = m_bandBefore;
        m_bandBefore = false;
        if (place.indented)
            item.indent = std::max(item.indent, m_page.gutter);
        m_items.push_back(std::move(item));
    }

    void blank(const PlanPart& place)
    {
        Item item;
        item.id = kBlankItem;
        PlanPart free = place;
        free.first = -1;
        put(item, free, place.most);
    }

    [[nodiscard]] bool bandIsEmpty() const { return m_bandBefore || m_items.empty(); }
    [[nodiscard]] std::vector<Item> take() { return std::move(m_items); }

private:
    const PageSpec& m_page;
    bool m_loose;
    bool m_bandBefore = false;
    std::vector<Item> m_items;
};

// How the groups are shared out: some beside the entry, the rest over further bands.
struct Shares {
    int lead = 0;
    std::vector<int> bands; // groups in each repeated band
    bool adultsApart = false; // in a band of their own
    bool blank = false; // white at the end of the last band
};

void putRole(Builder& out, const Sorted& items, const PlanPart& place, int most, bool column)
{
    const auto at = items.items.find(place.role);
    if (at == items.items.end())
        return;
    for (std::size_t k = 0; k < at->second.size(); ++k) {
        Item item = at->second[k];
        const bool last = column && k + 1 == at->second.size() && k > 0;
        // Credits and the last adult text close their column at its foot.
        if (item.kind == Kind::Credits || (last && item.kind == Kind::NextStep))
            item.wish.stand = Stand::Foot;
        out.put(std::move(item), place, most);
    }
}

void putGroups(
    Builder& out, const Sorted& items, const PlanPart& place, int from, int count, int most)
{
    for (int g = from; g < from + count; ++g)
        for (const Item& item : items.groups[std::size_t(g)])
            out.put(item, place, most);
}

std::vector<Item> build(const std::vector<PlanBand>& bands,
    const Sorted& items,
    const Shares& shares,
    const PageSpec& page,
    bool loose)
{
    Builder out(page, loose);
    int group = 0;
    for (const PlanBand& band : bands) {
        const int adults = items.items.count(Role::Adult) > 0 && has({band}, Role::Adult) ? 1 : 0;
        const int repeats = band.repeats
            ? std::max(int(shares.bands.size()) + (shares.adultsApart ? 1 : 0), adults)
            : 1;
        for (int repeat = 0; repeat < repeats; ++repeat) {
            out.beginBand();
            const bool last = repeat + 1 == repeats;
            const bool grouped = std::size_t(repeat) < shares.bands.size();
            const int count = !band.repeats ? shares.lead
                : grouped                   ? shares.bands[std::size_t(repeat)]
                                            : 0;
            const int side = count + (last ? adults : 0) + (last && shares.blank ? 1 : 0);
            for (const PlanPart& place : band.parts) {
                const int share = band.repeats ? std::max(1, page.columns / std::max(1, side)) : 12;
                const int most = std::max(place.least, std::min(place.most, share));
                if (place.role == Role::Group) {
                    putGroups(out, items, place, group, count, most);
                    group += count;
                } else if (place.role == Role::Blank) {
                    if (!band.repeats ? !out.bandIsEmpty() || has({band}, Role::Credits)
                                      : last && shares.blank)
                        out.blank(place);
                } else if (place.role != Role::Adult || last) {
                    putRole(out, items, place, most, grouped);
                }
            }
        }
    }
    return out.take();
}

std::vector<Shares> sharesFor(const std::vector<PlanBand>& bands, int count)
{
    int lead = 0;
    int wide = 0;
    for (const PlanBand& band : bands)
        for (const PlanPart& place : band.parts)
            if (place.role == Role::Group)
                (band.repeats ? wide : lead) = place.groups;
    if (wide == 0)
        return {Shares{}};
    std::vector<Shares> out;
    for (int beside = std::min(lead, count); beside >= 0; --beside) {
        const int rest = count - beside;
        for (int rows = 0; rows <= 3; ++rows) {
            if ((rows == 0) != (rest == 0) || rows > rest || rest > rows * wide)
                continue;
            Shares one;
            one.lead = beside;
            for (int r = 0; r < rows; ++r)
                one.bands.push_back(rest / rows + (r < rest % rows ? 1 : 0));
            for (const bool apart : {false, true})
                for (const bool blank : {false, true}) {
                    one.adultsApart = apart;
                    one.blank = blank;
                    out.push_back(one);
                }
        }
    }
    return out;
}

} // namespace

const Plan* planByName(const std::string& name)
{
    static const std::vector<Plan> plans = {days(), drawing()};
    for (const Plan& plan : plans)
        if (plan.name == name)
            return &plan;
    return nullptr;
}

std::vector<PlannedItems> plannedItems(const Plan& plan, const Request& request, bool loose)
{
    const PageSpec& page = request.page;
    const bool landscape = page.size.width >= page.size.height;
    const bool upright =
        std::any_of(request.items.begin(), request.items.end(), [](const Item& item) {
            return item.kind == Kind::Work && item.picture
                && item.picture->size.height > item.picture->size.width;
        });
    const auto& bands = !landscape         ? plan.portrait
        : upright && !plan.upright.empty() ? plan.upright
                                           : plan.landscape;
    Sorted items = sorted(request.items, bands);
    if (plan.alternates)
        for (std::size_t g = 0; g < items.groups.size(); ++g)
            alternate(items.groups[g], g % 2 == 1);
    std::vector<PlannedItems> out;
    for (const Shares& shares : sharesFor(bands, int(items.groups.size()))) {
        PlannedItems one{build(bands, items, shares, page, loose)};
        const auto placed = std::count_if(one.items.begin(), one.items.end(), [](const Item& item) {
            return item.id != kBlankItem;
        });
        if (std::size_t(placed) == request.items.size())
            out.push_back(std::move(one));
    }
    return out;
}

namespace {

struct Best {
    std::optional<Arrangement> arrangement;
    std::optional<Failure> failure; // of the last variant tried
};

Best bestVariant(const Plan& plan, const Request& request, bool loose, TextMemo& text)
{
    Best best;
    std::vector<int> cuts = plan.cuts;
    if (loose)
        cuts = {3, 4, 5, 6, 7, 8, 9};
    for (PlannedItems& variant : plannedItems(plan, request, loose)) {
        Request one = request;
        one.items = std::move(variant.items);
        one.pages = 1;
        Outcome outcome = solve(one, {columnSystem(plan.name, cuts)}, text);
        if (auto* failed = std::get_if<Failure>(&outcome)) {
            best.failure = *failed;
            continue;
        }
        auto& found = std::get<Arrangement>(outcome);
        if (!best.arrangement || found.cost.total() < best.arrangement->cost.total())
            best.arrangement = std::move(found);
    }
    return best;
}

// A page that costs so much less without a wish shows that the wish made it bad.
bool muchCheaper(const Arrangement& loose, const Arrangement& strict)
{
    return loose.cost.total() * 2 < strict.cost.total()
        && loose.cost.total() + 6 * kUnit < strict.cost.total();
}

} // namespace

std::optional<Arrangement> arrangeByPlan(
    const Plan& plan, const Request& request, TextMemo& text, std::vector<std::string>& dropped)
{
    if (request.page.columns != 12) {
        dropped.push_back("plan " + plan.name + ": the page does not have twelve columns");
        return std::nullopt;
    }
    std::map<int, int> groups;
    for (const Item& item : request.items)
        if (item.group > 0)
            groups[item.group] = 1;
    if (plan.mostGroups > 0 && int(groups.size()) > plan.mostGroups) {
        dropped.push_back("plan " + plan.name + ": it holds " + std::to_string(plan.mostGroups)
            + " groups, here are " + std::to_string(groups.size()));
        return std::nullopt;
    }
    Best strict = bestVariant(plan, request, false, text);
    Best loose = bestVariant(plan, request, true, text);
    if (strict.arrangement
        && !(loose.arrangement && muchCheaper(*loose.arrangement, *strict.arrangement)))
        return strict.arrangement;
    if (loose.arrangement) {
        const std::string why = strict.arrangement ? "they crop or leave white too much here"
                                                   : "the pieces do not fit so";
        dropped.push_back("plan " + plan.name + ": widths of title and large picture, " + why);
        return loose.arrangement;
    }
    const bool noPlace = !strict.failure && !loose.failure;
    dropped.push_back("plan " + plan.name
        + (noPlace ? ": it has no place for some of the pieces"
                   : ": the pieces do not fit its bands on one page"));
    return std::nullopt;
}

} // namespace wainscot::engine
