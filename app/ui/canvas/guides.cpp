#include "app/ui/canvas/guides.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace wainscot::ui {

namespace {

// One direction of a rectangle: where it starts and how long it is.
struct Span {
    Mm start;
    Mm length;
    [[nodiscard]] std::array<Mm, 3> lines() const
    {
        return {start, start + length / 2, start + length};
    }
    [[nodiscard]] Mm end() const { return start + length; }
    [[nodiscard]] bool meets(const Span& other) const
    {
        return start < other.end() && other.start < end();
    }
};

Span across(const RectMm& rect)
{
    return {rect.x, rect.width};
}

Span down(const RectMm& rect)
{
    return {rect.y, rect.height};
}

void addGuide(std::vector<Guide>& guides, const Guide& guide)
{
    for (Guide& known : guides) {
        if (known.along != guide.along || std::abs((known.at - guide.at).value()) > 0.05)
            continue;
        known.from = std::min(known.from, guide.from);
        known.to = std::max(known.to, guide.to);
        return;
    }
    guides.push_back(guide);
}

void addMeeting(
    std::vector<Guide>& guides, const RectMm& cell, const RectMm& other, bool vertical, Mm reach)
{
    const Span own = vertical ? across(cell) : down(cell);
    const Span theirs = vertical ? across(other) : down(other);
    const Span ownLength = vertical ? down(cell) : across(cell);
    const Span theirLength = vertical ? down(other) : across(other);
    for (const Mm line : own.lines()) {
        for (const Mm at : theirs.lines()) {
            if (std::abs((line - at).value()) > reach.value())
                continue;
            addGuide(guides,
                {vertical ? Qt::Vertical : Qt::Horizontal,
                    at,
                    std::min(ownLength.start, theirLength.start),
                    std::max(ownLength.end(), theirLength.end())});
        }
    }
}

// How far a span must go so that the nearest of its lines meets one of the others'.
Mm nearestShift(const Span& own, const std::vector<Span>& others, Mm reach)
{
    std::optional<Mm> best;
    for (const Span& other : others) {
        for (const Mm line : own.lines()) {
            for (const Mm at : other.lines()) {
                const Mm by = at - line;
                if (std::abs(by.value()) <= reach.value()
                    && (!best || std::abs(by.value()) < std::abs(best->value())))
                    best = by;
            }
        }
    }
    return best.value_or(Mm(0));
}

} // namespace

std::vector<Guide> guidesFor(const RectMm& cell, const std::vector<RectMm>& others, Mm reach)
{
    std::vector<Guide> guides;
    for (const RectMm& other : others) {
        addMeeting(guides, cell, other, true, reach);
        addMeeting(guides, cell, other, false, reach);
    }
    return guides;
}

RectMm snappedToOthers(const RectMm& cell, const std::vector<RectMm>& others, Mm reach)
{
    std::vector<Span> columns;
    std::vector<Span> rows;
    for (const RectMm& other : others) {
        columns.push_back(across(other));
        rows.push_back(down(other));
    }
    return cell.movedBy(
        nearestShift(across(cell), columns, reach), nearestShift(down(cell), rows, reach));
}

std::vector<Distance> distancesFor(
    const RectMm& cell, const std::vector<RectMm>& others, SizeMm panel)
{
    Mm left(0);
    Mm right = panel.width;
    Mm top(0);
    Mm bottom = panel.height;
    for (const RectMm& other : others) {
        if (down(cell).meets(down(other))) {
            if (other.right() <= cell.x)
                left = std::max(left, other.right());
            else if (other.x >= cell.right())
                right = std::min(right, other.x);
        }
        if (across(cell).meets(across(other))) {
            if (other.bottom() <= cell.y)
                top = std::max(top, other.bottom());
            else if (other.y >= cell.bottom())
                bottom = std::min(bottom, other.y);
        }
    }
    const Mm x = cell.x + cell.width / 2;
    const Mm y = cell.y + cell.height / 2;
    const Distance all[] = {{{left, y}, {cell.x, y}},
        {{cell.right(), y}, {right, y}},
        {{x, top}, {x, cell.y}},
        {{x, cell.bottom()}, {x, bottom}}};
    std::vector<Distance> shown;
    for (const Distance& one : all) {
        if (one.length().value() > 0.05)
            shown.push_back(one);
    }
    return shown;
}

} // namespace wainscot::ui
