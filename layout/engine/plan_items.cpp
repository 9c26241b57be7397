// A request's items put in a plan's order, with its bands and spans as wishes.
#include "layout/engine/plan_deal.h"

#include <cmath>

namespace wainscot::engine {

namespace {

constexpr int kGapRows = 1; // the engine's own row of white before a band with groups

bool isPictureItem(const Item& item)
{
    return item.picture.has_value();
}

// Pictures first in even groups, words first in odd ones; a label keeps its place on top.
void alternate(std::vector<Item>& group, bool wordsFirst)
{
    const auto pictures = std::count_if(group.begin(), group.end(), isPictureItem);
    const bool hasWords = std::any_of(
        group.begin(), group.end(), [](const Item& item) { return item.kind == Kind::Quote; });
    if (pictures != 1 || !hasWords)
        return;
    std::stable_partition(group.begin(), group.end(), [&](const Item& item) {
        return item.kind == Kind::Label || isPictureItem(item) != wordsFirst;
    });
    std::stable_partition(
        group.begin(), group.end(), [](const Item& item) { return item.kind == Kind::Label; });
}

bool belongsTo(const PlanPart& place, const Item& item)
{
    if (place.side > 0 && item.side != place.side)
        return false;
    switch (place.role) {
    case Role::Picture:
        return isPictureItem(item);
    case Role::Label:
        return item.kind == Kind::Label;
    case Role::Voice:
        return item.kind == Kind::Quote;
    default:
        return true;
    }
}

// Texts of the two languages that stand side by side, told apart by what they are.
int levelOf(const Item& item)
{
    return item.side > 0 ? 1 + int(item.kind) + 32 * item.group : 0;
}

// The columns that the parts of a spread band are given, from left to right.
struct Columns {
    int first = -1; // -1 = the part's own
    int wide = 0;
};

// Builds the sequence of one deal, band by band.
class Builder {
public:
    Builder(const Plan& plan,
        const std::vector<PlanBand>& bands,
        const SortedItems& items,
        const Deal& deal,
        const PageSpec& page,
        bool loose)
        : m_plan(plan)
        , m_bands(bands)
        , m_sorted(items)
        , m_deal(deal)
        , m_page(page)
        , m_loose(loose)
    {
        if (plan.thread > 0) {
            const int above = deal.headRows > 0 ? deal.headRows + kGapRows : 0;
            m_threadRows = int(std::lround(plan.thread * page.rows)) - above;
        }
    }

    std::vector<Item> build()
    {
        for (const PlanBand& band : m_bands) {
            const bool adults = m_sorted.count(Role::Adult) > 0 && hasRole({band}, Role::Adult);
            const int grouped = int(m_deal.bands.size()) + (m_deal.adultsApart ? 1 : 0);
            const int repeats = band.repeats ? std::max(grouped, adults ? 1 : 0) : 1;
            for (int repeat = 0; repeat < repeats; ++repeat)
                putBand(band, repeat, repeat + 1 == repeats, adults);
        }
        return std::move(m_items);
    }

private:
    void putBand(const PlanBand& band, int repeat, bool last, bool adults)
    {
        m_bandBefore = !m_items.empty();
        m_inBand = 0;
        const bool grouped = std::size_t(repeat) < m_deal.bands.size();
        int count = 0;
        if (!band.repeats)
            count = m_deal.lead;
        else if (grouped)
            count = m_deal.bands[std::size_t(repeat)];
        const bool blank = band.repeats && last && m_deal.blank;
        const int side = count + (last && adults ? 1 : 0) + (blank ? 1 : 0);
        const int share =
            band.repeats ? std::max(1, m_page.columns / std::max(1, side)) : m_page.columns;
        for (const PlanPart& place : band.parts) {
            const int most = std::max(place.least, std::min(place.most, share));
            if (band.spread)
                putSpread(band, place);
            else if (place.role == Role::Group)
                putGroups(place, count, most);
            else if (place.role == Role::Blank)
                putBlankPart(band, place, blank);
            else if (place.role != Role::Adult || last)
                putRole(place, {-1, most}, grouped);
        }
    }

    // Planned white stands beside something; a band of nothing but white would be a gap.
    void putBlankPart(const PlanBand& band, const PlanPart& place, bool atEnd)
    {
        if (band.repeats ? atEnd : m_inBand > 0 || hasRole({band}, Role::Credits))
            putBlank(place, {-1, place.most});
    }

    // A part beside the last group is put in with that group: its columns widen the group's
    // picture.
    void putSpread(const PlanBand& band, const PlanPart& place)
    {
        if (place.besideLast)
            return;
        const int count = place.role == Role::Group ? int(m_sorted.groups.size())
                                                    : std::min(1, m_sorted.count(place.role));
        for (int k = 0; k < count; ++k) {
            const int wide = m_deal.widths[m_column++];
            const Columns columns{m_left, wide};
            m_left += wide;
            if (place.role != Role::Group)
                putRole(place, columns, true);
            else if (k + 1 < count)
                putGroup(place, columns);
            else
                putLastGroup(band, place, columns);
        }
    }

    void putLastGroup(const PlanBand& band, const PlanPart& place, Columns columns)
    {
        const auto beside = std::find_if(band.parts.begin(),
            band.parts.end(),
            [this](const PlanPart& one) { return one.besideLast && m_sorted.count(one.role) > 0; });
        if (beside == band.parts.end()) {
            putGroup(place, columns);
            return;
        }
        const int more = m_deal.widths[m_column++];
        const int group = m_sorted.groups[m_group].front().group;
        const std::size_t before = m_items.size();
        putGroup(place, columns, more);
        const std::size_t words = m_items.size();
        putRole(*beside, {columns.first + columns.wide, more}, true);
        for (std::size_t k = before; k < m_items.size(); ++k) {
            m_items[k].group = group;
            m_items[k].wish.blockColumns = columns.wide + more;
        }
        // It begins on the line of the meetings' days.
        if (words < m_items.size())
            m_items[words].wish.rowsAbove = 1;
    }

    void putGroups(const PlanPart& place, int count, int most)
    {
        for (int k = 0; k < count; ++k)
            putGroup(place, {-1, most});
    }

    // `more` columns go to the group's picture alone.
    void putGroup(const PlanPart& place, Columns columns, int more = 0)
    {
        const std::vector<Item>& group = m_sorted.groups[m_group++];
        if (place.inner.empty()) {
            for (const Item& item : group)
                put(item, place, columns);
            return;
        }
        std::vector<bool> used(group.size(), false);
        for (const PlanPart& inner : place.inner) {
            Columns own = columns;
            if (inner.role == Role::Picture && own.first >= 0)
                own.wide += more;
            bool found = false;
            for (std::size_t i = 0; i < group.size(); ++i) {
                const bool once = inner.role != Role::Rest && found;
                if (used[i] || once || !belongsTo(inner, group[i]))
                    continue;
                used[i] = true;
                found = true;
                put(group[i], inner, own);
                m_items.back().wish.blockColumns = columns.wide;
            }
            if (!found && inner.keepsPlace)
                putBlank(inner, own, group.front().group);
        }
        m_items.back().wish.lastInColumn = m_deal.headRows > 0 || columns.first >= 0;
    }

    void putRole(const PlanPart& place, Columns columns, bool column)
    {
        std::size_t& from = m_taken[{place.role, place.side}];
        const auto at = m_sorted.items.find(place.role);
        if (at == m_sorted.items.end())
            return;
        int most = int(at->second.size());
        if (place.role == Role::Voice && m_deal.voices.size() > 1)
            most = m_deal.voices[m_voicePart++];
        int done = 0;
        for (; from < at->second.size() && done < most; ++from) {
            Item item = at->second[from];
            if (place.side > 0 && item.side != place.side)
                continue;
            const bool last = column && from + 1 == at->second.size() && from > 0;
            // Credits and the last adult text close their column at its foot.
            if (item.kind == Kind::Credits || (last && item.kind == Kind::NextStep))
                item.wish.stand = Stand::Foot;
            PlanPart here = place;
            if (done > 0) {
                here.rowsAbove = 0;
                here.belowThread = false;
            }
            put(item, here, columns);
            ++done;
        }
        if (done > 0 && place.role == Role::Voice && place.take == 0)
            m_items.back().wish.lastInColumn = true;
        if (place.whiteBeside > 0 && done > 0) {
            PlanPart white;
            white.role = Role::Blank;
            white.least = place.whiteBeside;
            putBlank(white, {-1, place.whiteBeside});
        }
    }

    void put(Item item, const PlanPart& place, Columns columns)
    {
        Wish& wish = item.wish;
        const bool freed = m_loose && columns.first < 0
            && (place.role == Role::Dominant || place.role == Role::Entry
                || place.role == Role::Title);
        wish.minColumns = freed ? 3 : place.least;
        // A text does not fill more, and what it leaves would be white beside the large picture.
        const int widest = place.role == Role::Entry ? 5 : 8;
        wish.maxColumns = freed ? widest : std::min(place.most, columns.wide);
        wish.firstColumn = freed ? -1 : place.first;
        if (columns.first >= 0) {
            wish.minColumns = columns.wide;
            wish.maxColumns = columns.wide;
            wish.firstColumn = columns.first;
        }
        wish.blockColumns = place.role == Role::Group ? columns.wide : 0;
        wish.rows = int(std::lround(place.rows * m_page.rows));
        wish.area = item.picture && (!place.toThread || item.importance >= 3) ? place.area : 0;
        if (item.picture && place.keep > 0) {
            item.picture->keepWidth = std::max(item.picture->keepWidth, place.keep);
            item.picture->keepHeight = std::max(item.picture->keepHeight, place.keep);
        }
        if (place.stand != Stand::Top)
            wish.stand = place.stand;
        if (item.importance < 3)
            wish.pictureColumns = place.pictureColumns;
        wish.even = place.even;
        wish.level = m_plan.level ? levelOf(item) : 0;
        setRows(wish, place);
        if (place.indented)
            item.indent = std::max(item.indent, m_page.gutter);
        add(item);
    }

    void setRows(Wish& wish, const PlanPart& place)
    {
        wish.rowsAbove = place.belowThread ? m_threadRows + 1 : place.rowsAbove;
        int exact = place.exactRows;
        if (place.toThread)
            exact = m_threadRows;
        else if (place.head)
            exact = m_deal.headRows;
        if (exact > 0) {
            wish.rows = exact;
            wish.exactRows = true;
        }
    }

    void putBlank(const PlanPart& place, Columns columns, int group = 0)
    {
        Item item;
        item.id = kBlankItem;
        item.group = group;
        PlanPart free = place;
        if (place.role == Role::Blank)
            free.first = -1;
        put(item, free, columns);
    }

    void add(Item item)
    {
        item.wish.bandBefore = m_bandBefore;
        m_bandBefore = false;
        ++m_inBand;
        m_items.push_back(item);
    }

    const Plan& m_plan;
    const std::vector<PlanBand>& m_bands;
    const SortedItems& m_sorted;
    const Deal& m_deal;
    const PageSpec& m_page;
    bool m_loose;
    int m_threadRows = 0; // from the top of the band with the thread
    bool m_bandBefore = false;
    int m_inBand = 0; // items put into this band
    std::size_t m_group = 0;
    std::size_t m_voicePart = 0;
    std::size_t m_column = 0; // of a spread band
    int m_left = 0; // where the next column of a spread band begins
    std::map<std::pair<Role, int>, std::size_t> m_taken;
    std::vector<Item> m_items;
};

// Pins cut the page their own way: spans and order stay, bands across the page cannot.
void freeBands(std::vector<Item>& items)
{
    const bool pinned = std::any_of(
        items.begin(), items.end(), [](const Item& item) { return item.pinned.has_value(); });
    for (Item& item : items)
        if (pinned)
            item.wish.bandBefore = false;
}

} // namespace

std::vector<PlannedItems> plannedItems(const Plan& plan, const Request& request, bool loose)
{
    const std::vector<PlanBand>& bands = bandsFor(plan, request);
    SortedItems items = sortItems(request.items, bands);
    if (plan.alternates)
        for (std::size_t g = 0; g < items.groups.size(); ++g)
            alternate(items.groups[g], g % 2 == 1);
    std::vector<PlannedItems> out;
    for (const Deal& deal : dealsFor(plan, bands, items, request.page.rows)) {
        PlannedItems one{Builder(plan, bands, items, deal, request.page, loose).build()};
        freeBands(one.items);
        const auto placed = std::count_if(one.items.begin(), one.items.end(), [](const Item& item) {
            return item.id != kBlankItem;
        });
        if (std::size_t(placed) == request.items.size())
            out.push_back(std::move(one));
    }
    return out;
}

} // namespace wainscot::engine
