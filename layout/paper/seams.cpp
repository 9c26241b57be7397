// Where the seams between sheets cut least.
#include "layout/paper/sheets.h"

#include "layout/typeset/faces.h"
#include "layout/typeset/marked_part.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace wainscot {

namespace {

constexpr Mm kLeastFlap{5}; // to glue on
constexpr Mm kNear{1}; // a seam that close to something looks as if it cut it
constexpr double kMoved = 0.02; // of a millimetre of picture, for each millimetre of moving
// What it costs to cut a millimetre of it; set by eye on printed panels, no source.
constexpr double kPicture = 1;
constexpr double kWork = 3;
constexpr double kText = 10;
constexpr double kMarked = 40;
// Height of letters around a baseline, in em.
constexpr double kAscent = 0.8;
constexpr double kDescent = 0.25;

struct Obstacle {
    RectMm place;
    double cost = 0;
};

RectMm boxOf(const GlyphRun& run)
{
    const double em = run.sizeUnits;
    double left = run.positions.front().x();
    double right = left;
    for (const QPointF& at : run.positions) {
        left = std::min(left, at.x());
        right = std::max(right, at.x() + 0.5 * em);
    }
    const double baseline = run.positions.front().y();
    return {run.origin.x + unitsToMm(left),
        run.origin.y + unitsToMm(baseline - kAscent * em),
        unitsToMm(right - left),
        unitsToMm((kAscent + kDescent) * em)};
}

std::vector<Obstacle> obstaclesOf(const DisplayList& list)
{
    std::vector<Obstacle> found;
    for (const Mark& mark : list.marks) {
        if (const auto* run = std::get_if<GlyphRun>(&mark.shape); run && !run->positions.empty())
            found.push_back({boxOf(*run), kText});
        const auto* placed = std::get_if<PlacedPicture>(&mark.shape);
        if (placed == nullptr)
            continue;
        const bool whole = placed->picture.visible == RectFraction();
        found.push_back({placed->place, whole ? kWork : kPicture});
        if (placed->picture.mustStay)
            found.push_back({markedPart(placed->picture, placed->place), kMarked});
    }
    return found;
}

// What a straight seam across the whole panel would cut at a place along one side.
double costAt(const std::vector<Obstacle>& obstacles, Mm at, Qt::Orientation along)
{
    double cost = 0;
    for (const Obstacle& one : obstacles) {
        const bool across = along == Qt::Horizontal;
        const Mm from = (across ? one.place.x : one.place.y) - kNear;
        const Mm to = (across ? one.place.right() : one.place.bottom()) + kNear;
        if (at > from && at < to)
            cost += one.cost * (across ? one.place.height : one.place.width).value();
    }
    return cost;
}

struct Side {
    Mm length; // of the panel
    Mm part; // of a sheet
    Mm overlap;
    std::vector<Mm> usual; // where sheets begin
};

// The cheapest beginnings at most an overlap away from the usual ones, by whole millimetres: every
// sheet reaches under the next one, and the last to the panel's end.
std::vector<Mm> quietest(
    const Side& side, const std::vector<Obstacle>& obstacles, Qt::Orientation along)
{
    const int reach = static_cast<int>(std::floor(side.overlap.value()));
    const int choices = 2 * reach + 1;
    const Mm longest = side.part - std::min(side.overlap, kLeastFlap); // from one to the next
    const std::size_t count = side.usual.size();
    constexpr double never = std::numeric_limits<double>::infinity();
    const auto place = [&](std::size_t sheet, int choice) {
        return side.usual[sheet] + Mm(choice - reach);
    };
    // best[i][c]: the cheapest seams up to sheet i, which begins at its choice c.
    std::vector<std::vector<double>> best(count, std::vector<double>(std::size_t(choices), never));
    std::vector<std::vector<int>> from(count, std::vector<int>(std::size_t(choices), reach));
    best[0][std::size_t(reach)] = 0;
    for (std::size_t i = 1; i < count; ++i) {
        for (int c = 0; c < choices; ++c) {
            const Mm at = place(i, c);
            if (i + 1 == count && side.length - at > side.part + Mm(1e-6))
                continue;
            const double own = costAt(obstacles, at, along) + kMoved * std::abs(c - reach);
            for (int before = 0; before < choices; ++before) {
                const Mm step = at - place(i - 1, before);
                const double sum = best[i - 1][std::size_t(before)] + own;
                if (step <= Mm(0) || step > longest + Mm(1e-6) || sum >= best[i][std::size_t(c)])
                    continue;
                best[i][std::size_t(c)] = sum;
                from[i][std::size_t(c)] = before;
            }
        }
    }
    std::vector<Mm> places = side.usual;
    const auto& last = best.back();
    int choice = static_cast<int>(std::min_element(last.begin(), last.end()) - last.begin());
    for (std::size_t i = count; i-- > 1;) {
        places[i] = place(i, choice);
        choice = from[i][std::size_t(choice)];
    }
    return places;
}

} // namespace

SheetPlan withQuietSeams(SheetPlan plan, const DisplayList& list)
{
    const std::vector<Obstacle> obstacles = obstaclesOf(list);
    plan.lefts = quietest(
        {plan.panel.width, plan.part.width, plan.overlap, plan.lefts}, obstacles, Qt::Horizontal);
    plan.tops = quietest(
        {plan.panel.height, plan.part.height, plan.overlap, plan.tops}, obstacles, Qt::Vertical);
    return plan;
}

} // namespace wainscot
