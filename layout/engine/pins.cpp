#include "layout/engine/pins.h"

#include <algorithm>
#include <set>

namespace wainscot::engine {

namespace {

bool overlap(const GridRect& a, const GridRect& b)
{
    return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
}

bool sameCell(const GridRect& a, const GridRect& b)
{
    return a.x == b.x && a.y == b.y && a.w == b.w && a.h == b.h;
}

bool crosses(const std::vector<Pin>& pins, bool across, int at)
{
    return std::any_of(pins.begin(), pins.end(), [&](const Pin& pin) {
        const int begin = across ? pin.at.y : pin.at.x;
        const int end = begin + (across ? pin.at.h : pin.at.w);
        return begin < at && at < end;
    });
}

// Edges of the pins along one axis.
std::set<int> edgesOf(const std::vector<Pin>& pins, bool across)
{
    std::set<int> edges;
    for (const Pin& pin : pins) {
        const int begin = across ? pin.at.y : pin.at.x;
        edges.insert(begin);
        edges.insert(begin + (across ? pin.at.h : pin.at.w));
    }
    return edges;
}

bool canPart(const std::vector<Pin>& pins)
{
    if (pins.size() <= 1)
        return true;
    for (const bool across : {true, false})
        for (const int at : edgesOf(pins, across)) {
            if (crosses(pins, across, at))
                continue;
            std::vector<Pin> before;
            std::vector<Pin> after;
            for (const Pin& pin : pins)
                ((across ? pin.at.y : pin.at.x) < at ? before : after).push_back(pin);
            if (!before.empty() && !after.empty())
                return canPart(before) && canPart(after);
        }
    return false;
}

} // namespace

bool sliceable(const std::vector<Pin>& pins)
{
    std::map<int, std::vector<Pin>> pages;
    for (const Pin& pin : pins)
        pages[pin.at.page].push_back(pin);
    return std::all_of(
        pages.begin(), pages.end(), [](const auto& page) { return canPart(page.second); });
}

PinFrame::PinFrame(const RunTable& table, LeafTable& leaves, std::vector<Pin> pins)
    : m_table(table)
    , m_leaves(leaves)
    , m_pins(std::move(pins))
    , m_page(m_pins.front().at.page)
{
}

std::vector<Pin> PinFrame::pinsIn(const GridRect& at) const
{
    std::vector<Pin> inside;
    for (const Pin& pin : m_pins)
        if (overlap(pin.at, at))
            inside.push_back(pin);
    return inside;
}

std::pair<PinFrame::Part, PinFrame::Part> PinFrame::halves(const Part& part, const Best& cut) const
{
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
    const GridRect row{m_page, part.at.x, at, part.at.w, 1};
    return above > 0 && below > 0 && above != below && pinsIn(row).empty() ? 1 : 0;
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

void PinFrame::tryCuts(const Part& part, bool across, const std::vector<Pin>& inside, Best& best)
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
            const auto group = [&](int i) { return m_leaves.piece(i).item.group; };
            if (split > part.first && split < part.last && group(split) > 0
                && group(split) == group(split - 1))
                continue; // a group is one rectangle
            Best cut;
            cut.cut = across ? Cut::Across : Cut::Down;
            cut.at = at;
            cut.split = split;
            cut.gap = across ? gapRows(part, split, at) : 0;
            const auto [before, after] = halves(part, cut);
            const Cost first = solve(before).cost;
            if (first >= best.cost)
                continue;
            cut.cost = std::min(kNever, first + solve(after).cost);
            if (cut.cost < best.cost)
                best = cut;
        }
    }
}

PinFrame::Best PinFrame::solve(const Part& part)
{
    if (const auto known = m_memo.find(part); known != m_memo.end())
        return known->second;
    Best best;
    const std::vector<Pin> inside = pinsIn(part.at);
    if (inside.empty()) {
        best = fillFree(part);
    } else if (inside.size() == 1 && sameCell(inside.front().at, part.at)) {
        best.cost = part.first == part.last ? 0 : kNever;
        best.cut = Cut::Pinned;
    } else {
        tryCuts(part, true, inside, best);
        tryCuts(part, false, inside, best);
    }
    m_memo.emplace(part, best);
    return best;
}

Cost PinFrame::cost(int first, int last)
{
    const PageSpec& page = m_leaves.page();
    return solve({{m_page, 0, 0, page.columns, page.rows}, first, last}).cost;
}

void PinFrame::collect(const Part& part, PagePlan& out)
{
    const Best best = solve(part);
    if (best.cut == Cut::Filled) {
        GridRect at = part.at;
        at.h = best.height;
        out.trees.push_back(m_table.tree(part.first, part.last, at));
    } else if (best.cut == Cut::Across || best.cut == Cut::Down) {
        const auto [before, after] = halves(part, best);
        if (best.gap > 0)
            out.parted.push_back(after.at);
        collect(before, out);
        collect(after, out);
    }
}

void PinFrame::describe(PagePlan& out)
{
    const PageSpec& page = m_leaves.page();
    collect({{m_page, 0, 0, page.columns, page.rows}, out.first, out.last}, out);
}

} // namespace wainscot::engine
