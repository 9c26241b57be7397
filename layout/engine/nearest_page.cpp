#include "layout/engine/nearest_page.h"

#include "layout/engine/faults.h"
#include "layout/engine/finish.h"

#include <algorithm>
#include <cmath>

namespace wainscot::engine {

namespace {

constexpr int kPiece = 1024; // what one piece weighs when it moves wholly
constexpr std::size_t kMostEntries = 800'000;

int share(double part, double whole)
{
    return whole > 0 ? int(std::lround(kPiece * part / whole)) : 0;
}

double overlap(double from, double to, double otherFrom, double otherTo)
{
    return std::max(0.0, std::min(to, otherTo) - std::max(from, otherFrom));
}

} // namespace

NearestPage::NearestPage(
    LeafTable& leaves, const std::map<ItemId, Placement>& before, NearestWish wish)
    : m_leaves(leaves)
    , m_rules(leaves)
    , m_wish(std::move(wish))
    , m_count(leaves.size())
    , m_columns(leaves.page().columns)
    , m_rows(leaves.page().rows)
    , m_budget(int(m_wish.mostMoved * kPiece))
    , m_whiteCell(toCost(leaves.weights().textWhite / (m_columns * m_rows)))
    , m_before(std::size_t(m_count))
    , m_rival(std::size_t(m_count), 0)
    , m_leads(std::size_t(m_count), 0)
    , m_oldEdges(std::size_t(m_columns), 0)
    , m_leafMemo(std::size_t(m_count * m_columns * m_columns * (m_rows + 1)))
    , m_ranges(std::size_t(m_columns * m_columns * m_rows * (m_rows + 1)))
    , m_inside(std::size_t(m_count) + 1, 0)
    , m_lost(m_inside)
    , m_all(Lines().set())
    , m_made(std::size_t(m_count + 1) * std::size_t(m_count + 1))
{
    int dominant = -1;
    std::vector<double> areas(std::size_t(m_count), 0);
    for (int i = 0; i < m_count; ++i) {
        const ItemId id = leaves.piece(i).item.id;
        const auto at = before.find(id);
        if (at == before.end())
            continue;
        m_oldEdges[std::size_t(at->second.at.x)] = 1;
        areas[std::size_t(i)] = at->second.picture.areaMm2();
        if (areas[std::size_t(i)] > 0
            && (dominant < 0 || areas[std::size_t(i)] > areas[std::size_t(dominant)]))
            dominant = i;
        if (m_wish.touched.count(id) == 0)
            m_before[std::size_t(i)] = at->second;
    }
    for (int i = 0; i < m_count && dominant >= 0; ++i) {
        if (i == dominant)
            continue;
        m_rival[std::size_t(i)] = areas[std::size_t(dominant)];
        m_rival[std::size_t(dominant)] =
            std::max(m_rival[std::size_t(dominant)], areas[std::size_t(i)]);
    }
    if (dominant >= 0)
        m_leads[std::size_t(dominant)] = 1;
}

NearestPage::Range& NearestPage::range(int x, int w, int y, int h)
{
    return m_ranges[(std::size_t(span(x, w)) * std::size_t(m_rows) + std::size_t(y))
            * std::size_t(m_rows + 1)
        + std::size_t(h)];
}

// What has to move when a run stands in the rectangle: its own pieces as far as they stood outside,
// all others as far as they stood inside. 1 - overlap is at least that share.
void NearestPage::measure(const GridRect& at)
{
    const RectMm box = m_leaves.page().cell(at);
    m_allLost = 0;
    for (int i = 0; i < m_count; ++i) {
        const auto& stood = m_before[std::size_t(i)];
        int covered = 0;
        if (stood) {
            const RectMm both = intersection(stood->cell, box);
            covered = both.width > Mm(0) && both.height > Mm(0)
                ? share(both.areaMm2(), stood->cell.areaMm2())
                : 0;
        }
        m_allLost += covered;
        m_lost[std::size_t(i) + 1] = m_lost[std::size_t(i)] + covered;
        m_inside[std::size_t(i) + 1] =
            m_inside[std::size_t(i)] + (stood ? kPiece - 2 * covered - 2 : 0);
    }
}

bool NearestPage::mayStand(int first, int last) const
{
    return m_allLost + m_inside[std::size_t(last)] - m_inside[std::size_t(first)] <= m_budget;
}

// A picture that comes too near the leading one's size, or a leading one that no longer leads.
Cost NearestPage::rivalry(int i, double areaMm2) const
{
    const double other = m_rival[std::size_t(i)];
    if (other <= 0 || areaMm2 <= 0)
        return 0;
    const double lead = m_leads[std::size_t(i)] != 0 ? areaMm2 / other : other / areaMm2;
    const Weights& weights = m_leaves.weights();
    return lead < kDominance ? toCost(weights.rival * (1 + 4 * steadyLog(kDominance / lead))) : 0;
}

const NearestPage::Leaf& NearestPage::leaf(int i, const GridRect& at)
{
    Leaf& out = m_leafMemo[(std::size_t(i) * std::size_t(m_columns * m_columns)
                               + std::size_t(span(at.x, at.w)))
            * std::size_t(m_rows + 1)
        + std::size_t(at.h)];
    if (out.known)
        return out;
    out.known = true;
    const LeafFit fit = m_leaves.fit(i, at.x, at.w, at.h);
    if (!fit.possible)
        return out;
    const Placement placed = placePinned(i, {0, at.x, 0, at.w, at.h}, m_leaves);
    out.seen = placed.cell;
    const double edge = m_oldEdges[std::size_t(at.x)] != 0 ? 0 : m_leaves.weights().edge / 2;
    out.price = Cost(std::min<std::int64_t>(fit.cost.total(), kNever - 1)) + toCost(edge)
        + rivalry(i, placed.picture.areaMm2());
    return out;
}

std::int32_t NearestPage::movedBy(int i, const GridRect& at, const Leaf& leaf) const
{
    const auto& stood = m_before[std::size_t(i)];
    if (!stood || stood->at == at)
        return 0;
    const RectMm now = leaf.seen.movedBy(Mm(0), at.y * m_leaves.page().rowUnit);
    const double both =
        overlap(
            now.x.value(), now.right().value(), stood->cell.x.value(), stood->cell.right().value())
        * overlap(now.y.value(),
            now.bottom().value(),
            stood->cell.y.value(),
            stood->cell.bottom().value());
    const double all = now.areaMm2() + stood->cell.areaMm2() - both;
    return std::max(1, kPiece - share(both, all)); // another cell, if only for white
}

// Whether one does for the other: no dearer, and no line passes it or its white that does not pass
// the other.
bool NearestPage::covers(const Entry& one, const Entry& other)
{
    return one.value <= other.value && one.lead <= other.lead && one.trail <= other.trail
        && (one.through & ~other.through).none();
}

void NearestPage::add(Entry entry)
{
    const int others =
        m_allLost - m_lost[std::size_t(entry.last)] + m_lost[std::size_t(entry.first)];
    if (entry.value >= kNever || entry.moved + others > m_budget)
        return;
    if (entry.through.any() && m_rules.wholeGroup(entry.first, entry.last))
        entry.through.reset(); // a group is read as one block
    const int run = entry.first * (m_count + 1) + entry.last;
    auto& made = m_made[std::size_t(run)];
    if (made.empty())
        m_runs.push_back(run);
    for (const Entry& other : made)
        if (covers(other, entry))
            return;
    std::erase_if(made, [&](const Entry& other) { return covers(entry, other); });
    const auto place = std::find_if(
        made.begin(), made.end(), [&](const Entry& other) { return other.value > entry.value; });
    made.insert(place, entry);
    if (made.size() > m_wish.kept)
        made.pop_back();
}

void NearestPage::addLeaves(const GridRect& at)
{
    for (int i = 0; i < m_count; ++i) {
        if (!mayStand(i, i + 1))
            continue;
        const Leaf& one = leaf(i, at);
        if (one.price >= kNever)
            continue;
        Entry entry;
        entry.first = std::int16_t(i);
        entry.last = std::int16_t(i + 1);
        entry.moved = movedBy(i, at, one);
        entry.value = one.price + toCost(m_wish.movePrice * entry.moved / kPiece);
        add(entry);
    }
}

void NearestPage::fillRect(const GridRect& at)
{
    measure(at);
    addLeaves(at);
    addStacks(at);
    addRows(at);
    addWhite(at);
    std::sort(m_runs.begin(), m_runs.end());
    Range& here = range(at.x, at.w, at.y, at.h);
    here.from = std::uint32_t(m_entries.size());
    for (const int run : m_runs) {
        auto& made = m_made[std::size_t(run)];
        m_entries.insert(m_entries.end(), made.begin(), made.end());
        made.clear();
    }
    here.to = std::uint32_t(m_entries.size());
    m_runs.clear();
}

std::vector<std::map<ItemId, GridRect>> NearestPage::find(int most)
{
    for (int w = 1; w <= m_columns; ++w)
        for (int h = 1; h <= m_rows; ++h) {
            if (m_wish.cancel != nullptr && m_wish.cancel->load(std::memory_order_relaxed))
                return {};
            for (int x = 0; x + w <= m_columns; ++x)
                for (int y = 0; y + h <= m_rows && isEdge(x) && isEdge(x + w); ++y)
                    fillRect({0, x, y, w, h});
            m_gaveUp = m_entries.size() > kMostEntries;
            if (m_gaveUp)
                return {};
        }
    const Range whole = range(0, m_columns, 0, m_rows);
    std::vector<std::map<ItemId, GridRect>> out;
    for (std::uint32_t k = whole.from; k < whole.to && int(out.size()) < most; ++k)
        if (m_entries[k].first == 0 && m_entries[k].last == m_count) {
            out.emplace_back();
            collect(m_entries[k], {0, 0, 0, m_columns, m_rows}, out.back());
        }
    return out;
}

void NearestPage::collect(
    const Entry& entry, const GridRect& at, std::map<ItemId, GridRect>& out) const
{
    switch (entry.made) {
    case Made::Leaf:
        out[m_leaves.piece(entry.first).item.id] = at;
        break;
    case Made::White: {
        GridRect part = at;
        const bool across = entry.side == Side::Left || entry.side == Side::Right;
        (across ? part.w : part.h) -= entry.cut;
        part.x += entry.side == Side::Left ? entry.cut : 0;
        part.y += entry.side == Side::Top ? entry.cut : 0;
        collect(m_entries[entry.upper], part, out);
        break;
    }
    case Made::Stack:
    case Made::Row: {
        GridRect first = at;
        GridRect second = at;
        if (entry.made == Made::Stack) {
            first.h = entry.cut;
            second.y += first.h + entry.gap;
            second.h -= first.h + entry.gap;
        } else {
            first.w = entry.cut;
            second.x += first.w;
            second.w -= first.w;
        }
        collect(m_entries[entry.upper], first, out);
        collect(m_entries[entry.lower], second, out);
        break;
    }
    }
}

} // namespace wainscot::engine
