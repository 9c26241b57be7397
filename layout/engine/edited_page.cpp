#include "layout/engine/edited_page.h"

#include "layout/engine/alternatives.h"
#include "layout/engine/finish.h"
#include "layout/engine/obstacles.h"
#include "layout/engine/reading.h"
#include "layout/engine/solve.h"
#include "layout/engine/targets.h"

#include <algorithm>
#include <array>

namespace wainscot::engine {

namespace {

// Prices of moving, beside the usual one, that the whole page is tried with.
constexpr std::array kStayPrices{12.0, 40.0, 150.0};
constexpr int kColumnInRows = 2; // about, on paper of any size
constexpr double kSpare =
    8; // units that a good page may cost more, whatever the ratio: half a fault

bool shareColumns(const GridRect& a, const GridRect& b)
{
    return a.x < b.x + b.w && b.x < a.x + a.w;
}

bool overlap(const GridRect& a, const GridRect& b)
{
    return shareColumns(a, b) && a.y < b.y + b.h && b.y < a.y + a.h;
}

} // namespace

EditedPage::EditedPage(Request request,
    std::map<ItemId, Placement> before,
    const AgainWish& wish,
    const TextMeasurer& text)
    : m_request(std::move(request))
    , m_before(std::move(before))
    , m_wish(wish)
    , m_measurer(text)
    , m_text(text)
    , m_price(m_request, m_text)
{
    for (const Item& item : m_request.items) {
        m_groupOf[item.id] = item.group;
        if (m_before.count(item.id) == 0 || isEdited(item.id))
            m_touched.insert(item.id);
    }
}

std::variant<Again, Failure> EditedPage::run()
{
    const Outcome anew = arrange(m_request, m_measurer);
    if (const auto* failed = std::get_if<Failure>(&anew))
        return *failed;
    consider(std::get<Arrangement>(anew), GaveWay::Anew);
    const double fair = m_found.front().priceRatio; // a price until below
    // What the teacher has had is good enough, even where anew something better would come out.
    const Arrangement before = asItStood();
    const PagePrice::Price stood = m_price.of(before);
    m_touching = touchingGroups(before);
    const bool removed = before.items.size() < m_before.size(); // and its place is white now
    m_dearest = std::max(m_wish.dearest * fair + kSpare, removed ? 0 : stood.withFaults);
    m_inversions = std::max(m_found.front().arrangement.orderInversions, before.orderInversions);
    if (auto one = nothingMoves())
        consider(std::move(*one), GaveWay::Nothing);
    tryPushing();
    for (const std::set<ItemId>& free : neighbourhoods())
        tryAround(free);
    for (const std::set<ItemId>& free : nearest())
        tryAround(free);
    tryWholePage();
    tryNearest();
    const Again* best = nearestGood();
    Again out = best != nullptr ? *best : m_found.front();
    out.priceRatio /= std::max(1e-9, fair);
    return out;
}

// What moves least of all that is good enough; null = nothing is.
const Again* EditedPage::nearestGood() const
{
    const Again* best = nullptr;
    for (const Again& one : m_found)
        if (one.priceRatio <= m_dearest && one.arrangement.orderInversions <= m_inversions
            && (best == nullptr || one.movement < best->movement) && isTidy(one.arrangement))
            best = &one;
    return best;
}

// What the request still has, where it was.
Arrangement EditedPage::asItStood() const
{
    Arrangement out;
    out.pages = 1;
    for (const Item& item : m_request.items)
        if (const auto was = m_before.find(item.id); was != m_before.end())
            out.items.push_back(was->second);
    out.orderInversions = inversionsOf(out);
    return out;
}

int EditedPage::inversionsOf(const Arrangement& page) const
{
    std::vector<GridRect> cells;
    std::vector<int> groups;
    for (const Placement& place : page.items) {
        cells.push_back(place.at);
        groups.push_back(m_groupOf.at(place.id));
    }
    return orderInversions(cells, groups);
}

bool EditedPage::isEdited(ItemId id) const
{
    return std::find(m_wish.edited.begin(), m_wish.edited.end(), id) != m_wish.edited.end();
}

int EditedPage::leafOf(ItemId id)
{
    const LeafTable& leaves = m_price.leaves();
    for (int i = 0; i < leaves.size(); ++i)
        if (leaves.piece(i).item.id == id)
            return i;
    return -1;
}

void EditedPage::consider(Arrangement found, GaveWay gaveWay)
{
    // What stayed in its cell is left exactly as it was.
    std::vector<Placement> stood;
    for (Placement& place : found.items) {
        const auto was = m_before.find(place.id);
        if (was != m_before.end() && m_touched.count(place.id) == 0) {
            if (was->second.at == place.at)
                place = was->second;
            stood.push_back(was->second);
        }
    }
    found.orderInversions = inversionsOf(found);
    Again again;
    again.movement = difference(stood, found.items, m_request).pieces;
    again.priceRatio = m_price.of(found).withFaults;
    again.arrangement = std::move(found);
    again.gaveWay = gaveWay;
    m_found.push_back(std::move(again));
}

// Where the edited pieces are, with the white below them where they need it.
std::optional<Arrangement> EditedPage::nothingMoves()
{
    Arrangement out;
    out.pages = 1;
    LeafTable& leaves = m_price.leaves();
    for (const Item& item : m_request.items) {
        const auto was = m_before.find(item.id);
        if (was == m_before.end())
            return std::nullopt;
        Placement place = was->second;
        const int index = leafOf(item.id);
        if (m_touched.count(item.id) > 0 && !item.pinned && index >= 0) {
            GridRect at = place.at;
            const auto taken = [&] {
                return at.y + at.h > m_request.page.rows
                    || std::any_of(m_before.begin(), m_before.end(), [&](const auto& other) {
                           return other.first != item.id && overlap(other.second.at, at);
                       });
            };
            while (!leaves.fit(index, at.x, at.w, at.h).possible && !taken())
                ++at.h;
            if (taken())
                return std::nullopt;
            place = placePinned(index, at, leaves);
        }
        out.items.push_back(place);
    }
    return out;
}

std::vector<GridRect> EditedPage::places() const
{
    std::vector<GridRect> out;
    const Item* last = nullptr;
    for (const Item& item : m_request.items) {
        const bool touched = m_touched.count(item.id) > 0;
        if (touched && m_before.count(item.id) > 0)
            out.push_back(m_before.at(item.id).at);
        else if (touched && last != nullptr && m_before.count(last->id) > 0)
            out.push_back(m_before.at(last->id).at);
        last = &item;
    }
    // What was removed leaves its own place behind.
    for (const auto& before : m_before)
        if (std::none_of(m_request.items.begin(), m_request.items.end(), [&](const Item& item) {
                return item.id == before.first;
            }))
            out.push_back(before.second.at);
    return out;
}

// Ever more pieces that may give way: the group, what is below in the same columns, all in them.
std::vector<std::set<ItemId>> EditedPage::neighbourhoods() const
{
    const std::vector<GridRect> around = places();
    std::set<int> groups;
    for (const Item& item : m_request.items)
        if (m_touched.count(item.id) > 0 && item.group > 0)
            groups.insert(item.group);
    std::vector<std::set<ItemId>> out(5);
    for (const Item& item : m_request.items) {
        const auto was = m_before.find(item.id);
        if (item.pinned || was == m_before.end())
            continue;
        const GridRect& at = was->second.at;
        const bool mate = groups.count(item.group) > 0;
        const auto any = [&](const auto& test) {
            return std::any_of(around.begin(), around.end(), test);
        };
        const bool below = any(
            [&](const GridRect& edited) { return shareColumns(at, edited) && at.y >= edited.y; });
        const bool column = any([&](const GridRect& edited) { return shareColumns(at, edited); });
        const bool next = any([&](const GridRect& edited) {
            return shareColumns(at, edited) && at.y == edited.y + edited.h;
        });
        const bool level = any([&](const GridRect& edited) {
            return at.y < edited.y + edited.h && edited.y < at.y + at.h;
        });
        const std::array<bool, 5> free{
            mate, next, below || mate, column || mate, column || level || mate};
        for (std::size_t k = 0; k < free.size(); ++k)
            if (free[k])
                out[k].insert(item.id);
    }
    return out;
}

// Rows and columns between a piece and what was edited.
int EditedPage::distance(const GridRect& at) const
{
    int least = m_request.page.rows + m_request.page.columns;
    for (const GridRect& edited : places()) {
        const int across = std::max({0, edited.x - at.x - at.w, at.x - edited.x - edited.w});
        const int down = std::max({0, edited.y - at.y - at.h, at.y - edited.y - edited.h});
        least = std::min(least, kColumnInRows * across + down);
    }
    return least;
}

// The nearest pieces, in ever larger sets.
std::vector<std::set<ItemId>> EditedPage::nearest() const
{
    std::vector<std::pair<int, ItemId>> byDistance;
    for (const Item& item : m_request.items)
        if (const auto was = m_before.find(item.id); was != m_before.end() && !item.pinned)
            byDistance.emplace_back(distance(was->second.at), item.id);
    std::sort(byDistance.begin(), byDistance.end());
    std::vector<std::set<ItemId>> out;
    std::set<ItemId> free;
    for (std::size_t k = 0; k + 1 < byDistance.size(); ++k) {
        free.insert(byDistance[k].second);
        if (k > 0)
            out.push_back(free);
    }
    return out;
}

// Groups of which one stands directly below the other, the row of white between them gone.
std::set<std::pair<int, int>> EditedPage::touchingGroups(const Arrangement& page) const
{
    std::set<std::pair<int, int>> out;
    for (const Placement& upper : page.items)
        for (const Placement& lower : page.items) {
            const int group = m_groupOf.at(upper.id);
            const int other = m_groupOf.at(lower.id);
            if (group > 0 && other > 0 && group != other && shareColumns(upper.at, lower.at)
                && upper.at.y + upper.at.h == lower.at.y)
                out.emplace(group, other);
        }
    return out;
}

// Nothing lies over another piece, no stranger within the rectangle of a group, and groups stand
// apart unless they did not before.
bool EditedPage::isTidy(const Arrangement& page) const
{
    for (const auto& pair : touchingGroups(page))
        if (m_touching.count(pair) == 0)
            return false;
    for (std::size_t a = 0; a < page.items.size(); ++a)
        for (std::size_t b = a + 1; b < page.items.size(); ++b)
            if (overlap(page.items[a].at, page.items[b].at))
                return false;
    std::map<int, GridRect> around;
    for (const Placement& place : page.items) {
        const int group = m_groupOf.at(place.id);
        const auto [at, isNew] = around.try_emplace(group, place.at);
        if (isNew || group == 0)
            continue;
        GridRect& box = at->second;
        const int right = std::max(box.x + box.w, place.at.x + place.at.w);
        const int foot = std::max(box.y + box.h, place.at.y + place.at.h);
        box.x = std::min(box.x, place.at.x);
        box.y = std::min(box.y, place.at.y);
        box.w = right - box.x;
        box.h = foot - box.y;
    }
    return std::all_of(page.items.begin(), page.items.end(), [&](const Placement& place) {
        return std::none_of(around.begin(), around.end(), [&](const auto& one) {
            return one.first > 0 && one.first != m_groupOf.at(place.id)
                && overlap(one.second, place.at);
        });
    });
}

void EditedPage::tryAround(const std::set<ItemId>& free)
{
    Request around = m_request;
    around.plan.clear();
    for (Item& item : around.items) {
        const auto was = m_before.find(item.id);
        if (was == m_before.end() || item.pinned)
            continue;
        if (m_touched.count(item.id) > 0 || free.count(item.id) > 0)
            item.previous = was->second.at;
        else
            item.pinned = was->second.at;
    }
    const Outcome outcome = solve(around, freeSystems(around.page.columns), m_text);
    if (const auto* found = std::get_if<Arrangement>(&outcome))
        consider(*found, GaveWay::Neighbours);
}

void EditedPage::tryWholePage()
{
    Request stay = m_request;
    for (Item& item : stay.items)
        if (const auto was = m_before.find(item.id); was != m_before.end() && !item.pinned)
            item.previous = was->second.at;
    const Outcome outcome = arrange(stay, m_measurer);
    if (const auto* found = std::get_if<Arrangement>(&outcome))
        consider(*found, GaveWay::Page);
    Job job{stay, {}, {}, 1};
    job.pins = pinsOf(stay, m_text);
    std::vector<Item> flowing;
    for (const Item& item : stay.items)
        if (!item.isPinned())
            flowing.push_back(item);
    job.pieces = piecesOf(flowing, m_text);
    setTargets(job.pieces, stay.page, 1, m_text);
    for (const double price : kStayPrices) {
        Weights weights;
        weights.stay = price;
        Candidate one = solveSystems(job, freeSystems(stay.page.columns), m_text, weights);
        if (!one.possible)
            continue;
        addPinned(stay, m_text, one.arrangement);
        consider(std::move(one.arrangement), GaveWay::Page);
    }
}

} // namespace wainscot::engine
