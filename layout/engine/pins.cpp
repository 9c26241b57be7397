#include "layout/engine/pins.h"

#include <algorithm>
#include <cmath>

namespace wainscot::engine {

namespace {

constexpr double kIntoGutter = 0.3; // gutters that a place off the grid may reach out of its cells

} // namespace

GridRect coveredCells(const PageSpec& page, const RectMm& place, Mm below)
{
    const double across = (page.width(1) + page.gutter).value();
    const double down = page.rowUnit.value();
    const Mm play = kIntoGutter * page.gutter;
    const auto clamped = [](double at, int least, int most) {
        return int(std::clamp(at, double(least), double(most)));
    };
    GridRect at;
    at.x =
        clamped(std::floor((place.x - page.margin + play).value() / across), 0, page.columns - 1);
    at.y = clamped(std::floor((place.y - page.margin + play).value() / down), 0, page.rows - 1);
    const Mm right = place.right() + page.gutter - play - page.margin;
    const Mm foot = place.bottom() + below - play - page.margin;
    at.w = clamped(std::ceil(right.value() / across), at.x + 1, page.columns) - at.x;
    at.h = clamped(std::ceil(foot.value() / down), at.y + 1, page.rows) - at.y;
    return at;
}

bool partable(const std::vector<Pin>& pins)
{
    std::map<int, std::vector<GridRect>> pages;
    for (const Pin& pin : pins)
        pages[pin.at.page].push_back(pin.at);
    return std::all_of(pages.begin(), pages.end(), [](const auto& page) {
        return partable(withoutOverlaps(page.second));
    });
}

ColumnSystem withPinEdges(ColumnSystem system, const std::vector<Pin>& pins, int columns)
{
    std::map<int, Cost> prices;
    for (std::size_t c = 0; c < system.cuts.size(); ++c)
        prices[system.cuts[c]] = system.prices[c];
    for (const Pin& pin : pins)
        for (const int edge : {pin.at.x, pin.at.x + pin.at.w})
            if (edge > 0 && edge < columns)
                prices.try_emplace(edge, toCost(Weights().cut));
    ColumnSystem out{system.name, {}, {}};
    for (const auto& [cut, price] : prices) {
        out.cuts.push_back(cut);
        out.prices.push_back(price);
    }
    return out;
}

PinFrame::PinFrame(
    const RunTable& table, LeafTable& leaves, std::vector<GridRect> blocks, Cuts cuts)
    : m_table(table)
    , m_leaves(leaves)
    , m_blocks(std::move(blocks))
    , m_cuts(cuts)
    , m_cells{0}
{
    for (int i = 0; i < leaves.size(); ++i)
        m_cells.push_back(m_cells.back() + leaves.leastCells(i));
}

std::vector<GridRect> PinFrame::blocksIn(const GridRect& at) const
{
    std::vector<GridRect> inside;
    for (const GridRect& block : m_blocks)
        if (overlap(block, at))
            inside.push_back(block);
    return inside;
}

const std::vector<Ring>& PinFrame::rings(const GridRect& at)
{
    const auto [found, isNew] = m_rings.try_emplace({at.x, at.y, at.w, at.h});
    if (isNew)
        found->second = ringsIn(at, blocksIn(at));
    return found->second;
}

std::vector<PinFrame::Part> PinFrame::partsOf(const Part& part, const Best& cut)
{
    if (cut.cut == Cut::Round) {
        const Ring& ring = rings(part.at)[std::size_t(cut.at)];
        const auto& s = cut.splits;
        return {{ring[0], part.first, s[0]},
            {ring[1], s[0], s[1]},
            {ring[2], s[1], s[2]},
            {ring[3], s[2], s[3]},
            {ring[4], s[3], part.last}};
    }
    Part before = part;
    Part after = part;
    before.last = cut.split;
    after.first = cut.split;
    if (cut.cut == Cut::Across) {
        before.at.h = cut.at - part.at.y;
        after.at.y = cut.at + cut.gap;
        after.at.h = part.at.y + part.at.h - after.at.y;
    } else {
        before.at.w = cut.at - part.at.x;
        after.at.x = cut.at;
        after.at.w = part.at.x + part.at.w - cut.at;
    }
    return {before, after};
}

// As in the table: one row of white parts two groups, unless a pin stands there.
int PinFrame::gapRows(const Part& part, int split, int at) const
{
    if (split <= part.first || split >= part.last || at + 1 >= part.at.y + part.at.h)
        return 0;
    const int above = m_leaves.piece(split - 1).item.group;
    const int below = m_leaves.piece(split).item.group;
    const GridRect row{part.at.page, part.at.x, at, part.at.w, 1};
    return above > 0 && below > 0 && above != below && blocksIn(row).empty() ? 1 : 0;
}

// A group is one rectangle.
bool PinFrame::maySplit(const Part& part, int split) const
{
    if (split == part.first || split == part.last)
        return true;
    const int group = m_leaves.piece(split).item.group;
    return group == 0 || group != m_leaves.piece(split - 1).item.group;
}

bool PinFrame::tooSmall(const Part& part, const std::vector<GridRect>& inside) const
{
    int cells = part.at.w * part.at.h;
    for (const GridRect& block : inside)
        cells -= block.w * block.h;
    return m_cells[std::size_t(part.last)] - m_cells[std::size_t(part.first)] > cells;
}

// A part without pins: one run, or nothing; what the run leaves at its foot is white.
PinFrame::Best PinFrame::fillFree(const Part& part) const
{
    const PageSpec& page = m_leaves.page();
    const auto white = [&](int rows) {
        return toCost(m_leaves.weights().empty * part.at.w * rows / (page.columns * page.rows));
    };
    Best best;
    if (part.first == part.last) {
        best.cost = white(part.at.h);
        best.cut = Cut::Empty;
        return best;
    }
    for (int h = part.at.h; h >= 1; --h) {
        const Cost filled = m_table.cost(part.first, part.last, part.at.x, part.at.w, h);
        if (filled < kNever && filled + white(part.at.h - h) < best.cost) {
            best.cost = filled + white(part.at.h - h);
            best.cut = Cut::Filled;
            best.height = h;
        }
    }
    return best;
}

void PinFrame::tryCuts(
    const Part& part, bool across, const std::vector<GridRect>& inside, Best& best)
{
    std::set<int> cuts = edgesOf(inside, across);
    if (!across)
        cuts.insert(m_table.system().cuts.begin(), m_table.system().cuts.end());
    const int begin = across ? part.at.y : part.at.x;
    const int end = begin + (across ? part.at.h : part.at.w);
    for (const int at : cuts) {
        if (at <= begin || at >= end || crosses(inside, across, at))
            continue;
        for (int split = part.first; split <= part.last; ++split) {
            if (!maySplit(part, split))
                continue;
            Best cut;
            cut.cut = across ? Cut::Across : Cut::Down;
            cut.at = at;
            cut.split = split;
            cut.gap = across ? gapRows(part, split, at) : 0;
            const auto halves = partsOf(part, cut);
            const Cost first = solve(halves[0]).cost;
            if (first >= best.cost)
                continue;
            cut.cost = std::min(kNever, first + solve(halves[1]).cost);
            if (cut.cost < best.cost)
                best = cut;
        }
    }
}

// The run shared out over the five rectangles of each ring, one after the other.
void PinFrame::tryRings(const Part& part, const std::vector<GridRect>& inside, Best& best)
{
    if (inside.empty())
        return;
    const auto count = std::size_t(part.last - part.first) + 1;
    const std::size_t many = rings(part.at).size();
    for (std::size_t which = 0; which < many; ++which) {
        const Ring ring = rings(part.at)[which];
        std::vector<Cost> sums(count, kNever);
        sums[0] = 0;
        std::array<std::vector<int>, 5> from;
        for (std::size_t k = 0; k < ring.size(); ++k) {
            std::vector<Cost> next(count, kNever);
            from[k].assign(count, 0);
            for (std::size_t j = k + 1 == ring.size() ? count - 1 : 0; j < count; ++j)
                for (std::size_t i = 0; i <= j; ++i) {
                    const int split = part.first + int(i);
                    const int end = part.first + int(j);
                    if (sums[i] >= next[j] || !maySplit(part, split) || !maySplit(part, end))
                        continue;
                    const Cost sum = sums[i] + solve({ring[k], split, end}).cost;
                    if (sum < next[j]) {
                        next[j] = sum;
                        from[k][j] = int(i);
                    }
                }
            sums = std::move(next);
        }
        if (sums.back() >= best.cost)
            continue;
        best = {};
        best.cost = sums.back();
        best.cut = Cut::Round;
        best.at = int(which);
        int j = int(count) - 1;
        for (std::size_t k = 4; k >= 1; --k) {
            j = from[k][std::size_t(j)];
            best.splits[k - 1] = part.first + j;
        }
    }
}

PinFrame::Best PinFrame::solve(const Part& part)
{
    if (const auto known = m_memo.find(part); known != m_memo.end())
        return known->second;
    Best best;
    const std::vector<GridRect> inside = blocksIn(part.at);
    if (inside.size() == 1 && sameCell(inside.front(), part.at)) {
        best.cost = part.first == part.last ? 0 : kNever;
        best.cut = Cut::Pinned;
    } else if (tooSmall(part, inside)) {
        best.cut = Cut::None;
    } else if (inside.empty()) {
        best = fillFree(part);
    } else {
        tryCuts(part, true, inside, best);
        tryCuts(part, false, inside, best);
        if (m_cuts == Cuts::Rings)
            tryRings(part, inside, best);
    }
    m_memo.emplace(part, best);
    return best;
}

Cost PinFrame::cost(int first, int last, int rows)
{
    return solve({{0, 0, 0, m_leaves.page().columns, rows}, first, last}).cost;
}

void PinFrame::collect(const Part& part, PagePlan& out)
{
    const Best best = solve(part);
    if (best.cut == Cut::Filled) {
        GridRect at = part.at;
        at.h = best.height;
        out.trees.push_back(m_table.tree(part.first, part.last, at));
        return;
    }
    if (best.cut != Cut::Across && best.cut != Cut::Down && best.cut != Cut::Round)
        return;
    const std::vector<Part> parts = partsOf(part, best);
    if (best.gap > 0)
        out.parted.push_back(parts[1].at);
    for (const Part& one : parts)
        collect(one, out);
}

void PinFrame::describe(PagePlan& out)
{
    const PageSpec& page = m_leaves.page();
    collect({{0, 0, 0, page.columns, page.rows}, out.first, out.last}, out);
}

int PinFrame::lowestRow() const
{
    int row = 0;
    for (const GridRect& block : m_blocks)
        row = std::max(row, block.y + block.h);
    return row;
}

PinnedPage::PinnedPage(const RunTable& table, LeafTable& leaves, const std::vector<Pin>& pins)
    : m_leaves(leaves)
    , m_count(leaves.size())
{
    const PageSpec& page = leaves.page();
    std::vector<GridRect> cells;
    for (const Pin& pin : pins) {
        cells.push_back(pin.at);
        cells.back().page = 0;
    }
    const std::vector<GridRect> blocks = withoutOverlaps(cells);
    const auto white = [&](const std::vector<GridRect>& joined) {
        int more = 0;
        for (const GridRect& block : joined)
            more += block.w * block.h;
        for (const GridRect& cell : cells)
            more -= cell.w * cell.h;
        return toCost(
            leaves.weights().empty * std::max(0, more) / double(page.columns * page.rows));
    };
    m_straight = partable(blocks);
    const bool joinsCells = blocks.size() < cells.size(); // two pins share a cell
    if (m_straight)
        m_ways.push_back(
            {PinFrame(table, leaves, blocks, PinFrame::Cuts::Straight), white(blocks), joinsCells});
    m_ways.push_back({PinFrame(table, leaves, blocks, PinFrame::Cuts::Rings), white(blocks), true});
    if (m_straight)
        return;
    const std::vector<GridRect> joined = joinedBlocks(blocks);
    m_ways.push_back(
        {PinFrame(table, leaves, joined, PinFrame::Cuts::Straight), white(joined), true});
}

// By way: rings only where straight cuts do not do for the whole content.
std::vector<std::pair<Cost, PinnedPage::Way*>> PinnedPage::costs(int first, int last, int rows)
{
    std::vector<std::pair<Cost, Way*>> out;
    const bool whole = first == 0 && last == m_count;
    for (Way& way : m_ways) {
        if (m_straight && !out.empty() && (!whole || out.front().first < kNever))
            break;
        const Cost cost = way.frame.cost(first, last, rows);
        out.emplace_back(cost < kNever ? cost + way.lost : kNever, &way);
    }
    return out;
}

Cost PinnedPage::cost(int first, int last)
{
    Cost best = kNever;
    for (const auto& [cost, way] : costs(first, last, m_leaves.page().rows))
        best = std::min(best, cost);
    return best;
}

void PinnedPage::describe(PagePlan& out)
{
    const auto all = costs(out.first, out.last, m_leaves.page().rows);
    const auto best = std::min_element(
        all.begin(), all.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
    out.fallback = best->second->fallback;
    best->second->frame.describe(out);
}

int PinnedPage::rowsNeeded(int first, int last, int most)
{
    const auto fits = [&](int rows) {
        const auto all = costs(first, last, rows);
        return std::any_of(
            all.begin(), all.end(), [](const auto& one) { return one.first < kNever; });
    };
    int rows = 1;
    for (const Way& way : m_ways)
        rows = std::max(rows, way.frame.lowestRow());
    if (!fits(most))
        return most + 1;
    int high = most;
    while (rows < high) {
        const int middle = (rows + high) / 2;
        if (fits(middle))
            high = middle;
        else
            rows = middle + 1;
    }
    return rows;
}

} // namespace wainscot::engine
