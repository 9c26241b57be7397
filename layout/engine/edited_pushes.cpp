// Room for one piece that grew or is new, taken from its neighbours by hand's logic.
#include "layout/engine/edited_page.h"
#include "layout/engine/finish.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

constexpr double kAll = 1;
constexpr double kLittle = 0.25; // of its height that a neighbour gives before it moves on
constexpr int kLeastColumns = 2;

bool shareRows(const GridRect& a, const GridRect& b)
{
    return a.y < b.y + b.h && b.y < a.y + a.h;
}

} // namespace

// What is touched takes its room from what is below or above it, some from both, or from beside it;
// a new piece tries every place beside another piece, at that piece's width or a part of it.
void EditedPage::tryPushing()
{
    if (m_touched.size() != 1)
        return;
    const ItemId id = *m_touched.begin();
    const int index = leafOf(id);
    if (index < 0)
        return;
    if (m_before.count(id) > 0)
        tryGrowing(id, index);
    else
        tryPlacing(id, index);
}

void EditedPage::tryGrowing(ItemId id, int index)
{
    LeafTable& leaves = m_price.leaves();
    const GridRect was = m_before.at(id).at;
    const int rows = std::max(was.h, leaves.leastRows(index, was.x, was.w));
    for (int up = 0; up <= rows - was.h; ++up)
        tryPush({id, {0, was.x, was.y - up, was.w, rows}, was, {}});
    for (const bool right : {true, false})
        for (int columns = 1; columns <= leaves.page().columns - was.w; ++columns) {
            GridRect at = was;
            at.w += columns;
            at.x -= right ? 0 : columns;
            if (at.x < 0 || at.x + at.w > leaves.page().columns)
                break;
            at.h = std::max(was.h, leaves.leastRows(index, at.x, at.w));
            if (auto narrower = narrowed(id, at, right))
                tryPush({id, at, was, std::move(*narrower)});
        }
}

// The neighbours that the piece takes columns from; nothing where one of them cannot do without.
std::optional<std::map<ItemId, GridRect>> EditedPage::narrowed(
    ItemId id, const GridRect& to, bool right)
{
    LeafTable& leaves = m_price.leaves();
    const GridRect was = m_before.at(id).at;
    std::map<ItemId, GridRect> out;
    for (const auto& [other, place] : m_before) {
        GridRect at = place.at;
        const bool meets =
            other != id && shareRows(at, was) && at.x < to.x + to.w && to.x < at.x + at.w;
        const int index = leafOf(other);
        if (!meets)
            continue;
        if (right) {
            at.w -= to.x + to.w - at.x;
            at.x = to.x + to.w;
        } else {
            at.w = to.x - at.x;
        }
        if (index < 0 || at.w < kLeastColumns || !leaves.fit(index, at.x, at.w, at.h).possible)
            return std::nullopt;
        out[other] = at;
    }
    return out;
}

void EditedPage::tryPlacing(ItemId id, int index)
{
    LeafTable& leaves = m_price.leaves();
    for (const auto& [other, place] : m_before) {
        const int rows = leaves.leastRows(index, place.at.x, place.at.w);
        for (const int y : {place.at.y, place.at.y + place.at.h})
            for (int up = 0; up <= rows; ++up)
                tryPush({id,
                    {0, place.at.x, y - up, place.at.w, rows},
                    {0, place.at.x, y, place.at.w, 0},
                    {}});
        tryPlacingBeside(id, index, other);
    }
}

// Both share the cell that one of them had.
void EditedPage::tryPlacingBeside(ItemId id, int index, ItemId other)
{
    LeafTable& leaves = m_price.leaves();
    const GridRect cell = m_before.at(other).at;
    const int mate = leafOf(other);
    for (int columns = kLeastColumns; columns <= cell.w - kLeastColumns && mate >= 0; ++columns)
        for (const bool right : {true, false}) {
            GridRect at = cell;
            GridRect rest = cell;
            at.w = columns;
            rest.w -= columns;
            (right ? at.x : rest.x) += right ? rest.w : columns;
            if (!leaves.fit(mate, rest.x, rest.w, rest.h).possible)
                continue;
            at.h = std::max(cell.h, leaves.leastRows(index, at.x, at.w));
            tryPush({id, at, {0, at.x, at.y, at.w, cell.h}, {{other, rest}}});
        }
}

void EditedPage::tryPush(const Grown& grown)
{
    for (const double share : {kAll, kLittle})
        tryPush(grown, share);
}

// What is above the piece's place gives way upwards, everything else down.
void EditedPage::tryPush(const Grown& grown, double share)
{
    LeafTable& leaves = m_price.leaves();
    Pushing pushing;
    pushing.share = share;
    for (const Item& item : m_request.items) {
        if (const auto was = m_before.find(item.id); was != m_before.end())
            pushing.cells[item.id] = was->second.at;
        if (item.pinned)
            pushing.fixed.insert(item.id);
    }
    for (const auto& [id, cell] : grown.others) {
        if (pushing.fixed.count(id) > 0)
            return;
        pushing.cells[id] = cell;
    }
    GridRect upper = grown.to;
    upper.h = std::max(1, grown.from.y + grown.from.h - upper.y);
    if (grown.to.h > m_request.page.rows
        || (grown.to.y < grown.from.y && !push(pushing, grown.id, upper, Push::Up, leaves))
        || !push(pushing, grown.id, grown.to, Push::Down, leaves))
        return;
    Arrangement out;
    out.pages = 1;
    for (const Item& item : m_request.items) {
        const GridRect& at = pushing.cells.at(item.id);
        const auto was = m_before.find(item.id);
        const bool stays = was != m_before.end() && was->second.at == at && item.id != grown.id;
        if (stays)
            out.items.push_back(was->second);
        else if (const int index = leafOf(item.id); index >= 0)
            out.items.push_back(placePinned(index, at, leaves));
    }
    if (out.items.size() == m_request.items.size())
        consider(std::move(out), GaveWay::Neighbours);
}

} // namespace wainscot::engine
