// A request's items put in a plan's order, with its bands and spans as wishes.
#include "layout/engine/plan.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace wainscot::engine {

namespace {

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
        wish.rows = int(std::lround(place.rows * m_page.rows));
        wish.area = item.picture ? place.area : 0;
        if (place.stand != Stand::Top)
            wish.stand = place.stand;
        wish.bandBefore = m_bandBefore;
        m_bandBefore = false;
        if (place.indented)
            item.indent = std::max(item.indent, m_page.gutter);
        m_items.push_back(item);
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
        out.put(item, place, most);
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
    // Pins cut the page their own way: spans and order stay, bands across the page cannot.
    const bool pinned = std::any_of(request.items.begin(),
        request.items.end(),
        [](const Item& item) { return item.pinned.has_value(); });
    std::vector<PlannedItems> out;
    for (const Shares& shares : sharesFor(bands, int(items.groups.size()))) {
        PlannedItems one{build(bands, items, shares, page, loose)};
        if (pinned)
            for (Item& item : one.items)
                item.wish.bandBefore = false;
        const auto placed = std::count_if(one.items.begin(), one.items.end(), [](const Item& item) {
            return item.id != kBlankItem;
        });
        if (std::size_t(placed) == request.items.size())
            out.push_back(std::move(one));
    }
    return out;
}

} // namespace wainscot::engine
