#include "layout/engine/solve.h"

#include "layout/engine/advice.h"
#include "layout/engine/faults.h"
#include "layout/engine/finish.h"
#include "layout/engine/mend.h"
#include "layout/engine/obstacles.h"
#include "layout/engine/pinned_place.h"
#include "layout/engine/pins.h"
#include "layout/engine/reading.h"
#include "layout/engine/search.h"
#include "layout/engine/spread.h"
#include "layout/engine/targets.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace wainscot::engine {

namespace {

bool cancelled(const Request& request)
{
    return request.cancel != nullptr && request.cancel->load(std::memory_order_relaxed);
}

// What sums over pieces do not price: faults of whole pages (unknown where pins stand on them),
// pairs met the wrong way round.
double scoreOf(const Arrangement& arrangement, LeafTable& leaves, bool pinned)
{
    const Weights& weights = leaves.weights();
    double score = double(arrangement.cost.total()) / kUnit;
    for (int p = 0; p < arrangement.pages && !pinned; ++p)
        score += priceOf(
            faultsOf(arrangement, p, leaves.pieces(), leaves.page(), leaves.text()), weights);
    return score + weights.inversion * arrangement.orderInversions;
}

int inversionsOf(const Arrangement& arrangement, const std::vector<Piece>& pieces)
{
    std::map<ItemId, int> groupOf;
    for (const Piece& piece : pieces)
        groupOf[piece.item.id] = piece.item.group;
    std::vector<GridRect> cells;
    std::vector<int> groups;
    for (const Placement& one : arrangement.items) {
        cells.push_back(one.at);
        groups.push_back(groupOf[one.id]);
    }
    return orderInversions(cells, groups);
}

} // namespace

Candidate finished(const Job& job,
    const std::vector<PagePlan>& pages,
    const ColumnSystem& system,
    LeafTable& leaves)
{
    Candidate out;
    out.possible = true;
    Arrangement& arrangement = out.arrangement;
    arrangement.pages = int(pages.size());
    arrangement.columnSystem = system.name;
    for (std::size_t p = 0; p < pages.size(); ++p) {
        finishPage(pages[p], int(p), system, leaves, arrangement);
        out.breaks.emplace_back(pages[p].first, pages[p].last);
        arrangement.fallback = arrangement.fallback || pages[p].fallback;
    }
    arrangement.cost.white += Cost(pages.size()) * toCost(leaves.weights().page);
    arrangement.orderInversions = inversionsOf(arrangement, job.pieces);
    out.score = scoreOf(arrangement, leaves, !job.pins.empty());
    return out;
}

Candidate solveSystem(const Job& job, const ColumnSystem& system, LeafTable& leaves, Cost ceiling)
{
    RunTable table(leaves, withPinEdges(system, job.pins, job.request.page.columns));
    Pagination found =
        cheapestPages(table, leaves, job.pins, {job.pages, ceiling, job.request.cancel});
    if (found.pages.empty())
        return {};
    for (PagePlan& page : found.pages)
        page = spreadAsBefore(std::move(page), leaves);
    Candidate out = finished(job, found.pages, table.system(), leaves);
    out.cost = found.cost;
    return out;
}

Candidate solveSystems(const Job& job,
    const std::vector<ColumnSystem>& systems,
    TextMemo& text,
    const Weights& weights)
{
    Candidate best;
    LeafTable leaves(job.request.page, job.pieces, text, weights);
    std::vector<Cost> costs(systems.size(), kNever);
    for (std::size_t k = 0; k < systems.size(); ++k) {
        if (cancelled(job.request))
            return {};
        Cost ceiling = kNever; // what a coarser system could do, this one can
        for (std::size_t earlier = 0; earlier < k; ++earlier)
            if (contains(systems[k], systems[earlier]))
                ceiling = std::min(ceiling, costs[earlier]);
        Candidate one = solveSystem(job, systems[k], leaves, ceiling);
        costs[k] = one.cost;
        if (one.possible && (!best.possible || one.score < best.score))
            best = std::move(one);
    }
    return best;
}

namespace {

// Pins take room, and a marked picture that a hand has placed leads its page.
Leader pinnedLeader(const Job& job)
{
    const PageSpec& page = job.request.page;
    Leader out;
    for (const Pin& pin : job.pins) {
        const double rows = pin.at.h * page.rowUnit.value();
        out.takenMm2 += rows * (page.width(pin.at.w) + page.gutter).value();
        for (const Item& item : job.request.items)
            if (item.id == pin.id && item.picture && item.importance >= 3)
                out.pinnedMm2 = std::max(out.pinnedMm2, pin.exact.areaMm2());
    }
    return out;
}

bool mayMend(const Job& job, Effort effort)
{
    return effort == Effort::Mend && job.pins.empty()
        && std::none_of(job.pieces.begin(), job.pieces.end(), [](const Piece& piece) {
               return piece.item.previous.has_value();
           });
}

// Page by page, with sizes shared out on that page and one dominant picture.
void refine(const Job& job,
    Candidate& whole,
    const std::vector<ColumnSystem>& systems,
    TextMemo& text,
    Effort effort)
{
    Arrangement out;
    out.pages = whole.arrangement.pages;
    out.columnSystem = whole.arrangement.columnSystem;
    for (int p = 0; p < out.pages; ++p) {
        const auto [first, last] = whole.breaks[std::size_t(p)];
        Job one{job.request, {job.pieces.begin() + first, job.pieces.begin() + last}, {}, 1};
        for (Piece& piece : one.pieces)
            piece.item.breakBefore = false;
        for (Pin pin : job.pins)
            if (pin.at.page == p) {
                pin.at.page = 0;
                one.pins.push_back(pin);
            }
        setTargets(one.pieces, job.request.page, 1, text, pinnedLeader(one));
        Candidate page = solveSystems(one, systems, text, {});
        if (mayMend(one, effort))
            page = mended(std::move(page), one, systems, text);
        if (!page.possible)
            return; // the first pass stands
        for (Placement& place : page.arrangement.items) {
            place.at.page = p;
            out.items.push_back(place);
        }
        for (GroupChange& change : page.arrangement.groupChanges) {
            change.page = p;
            out.groupChanges.push_back(change);
        }
        out.cost += page.arrangement.cost;
    }
    out.orderInversions = inversionsOf(out, job.pieces);
    whole.arrangement = std::move(out);
}

} // namespace

void addPinned(const Request& request, TextMemo& text, Arrangement& arrangement)
{
    std::vector<Item> pinned;
    for (const Item& item : request.items)
        if (item.isPinned())
            pinned.push_back(item);
    if (pinned.empty())
        return;
    LeafTable leaves(request.page, piecesOf(pinned, text), text);
    std::map<ItemId, Placement> places;
    for (const Placement& one : arrangement.items)
        places[one.id] = one;
    const std::vector<Pin> pins = pinsOf(request, text);
    for (int i = 0; i < leaves.size(); ++i) {
        const Piece& piece = leaves.piece(i);
        places[piece.item.id] = piece.item.pinnedAt
            ? placeExactly(piece, pins[std::size_t(i)], request.page, text)
            : placePinned(i, *piece.item.pinned, leaves);
    }
    arrangement.items.clear();
    for (const Item& item : request.items)
        if (const auto at = places.find(item.id); at != places.end())
            arrangement.items.push_back(at->second);
    for (const Placement& one : arrangement.items)
        arrangement.pages = std::max(arrangement.pages, one.at.page + 1);
}

namespace {

double emptiestPage(const Arrangement& arrangement, const PageSpec& page)
{
    double most = 0;
    for (int p = 0; p < arrangement.pages; ++p)
        most = std::max(most, pageUse(arrangement, page, p).white);
    return most;
}

// Sizes meant for one page have one leading picture and hold the others below it; where it takes
// more pages, breaks by them may leave one page nearly empty. With the sizes of the pages found it
// may come out fuller, or on fewer.
Candidate withSizesFor(
    int pages, Candidate first, Job& job, const std::vector<ColumnSystem>& systems, TextMemo& text)
{
    const std::vector<Piece> before = job.pieces;
    const PageSpec& page = job.request.page;
    setTargets(job.pieces, page, pages, text, pinnedLeader(job));
    Candidate second = solveSystems(job, systems, text, {});
    const int taken = second.possible ? second.arrangement.pages : pages + 1;
    if (taken < pages
        || (taken == pages
            && emptiestPage(second.arrangement, page) < emptiestPage(first.arrangement, page)))
        return second;
    job.pieces = before;
    return first;
}

Job jobOf(const Request& request, TextMemo& text)
{
    Job job{request, {}, {}, request.pages};
    std::vector<Item> flowing;
    job.pins = pinsOf(request, text);
    for (const Item& item : request.items)
        if (!item.isPinned())
            flowing.push_back(item);
    job.pieces = piecesOf(flowing, text);
    return job;
}

} // namespace

Outcome solve(
    const Request& request, const std::vector<ColumnSystem>& systems, TextMemo& text, Effort effort)
{
    Job job = jobOf(request, text);
    if (const auto bad = badPins(job.pins, request.page))
        return *bad;
    if (job.pieces.empty()) {
        Arrangement only;
        addPinned(request, text, only);
        return only;
    }
    if (const auto impossible = impossibleItem(job, text))
        return *impossible;
    const int wanted = request.pages.value_or(pagesWanted(job.pieces, request.page, text));
    setTargets(job.pieces, request.page, wanted, text, pinnedLeader(job));
    Candidate best = solveSystems(job, systems, text, {});
    const int taken = best.possible ? best.arrangement.pages : 0;
    const bool more = !request.pages && wanted == 1 && taken > 1;
    if (more)
        best = withSizesFor(taken, std::move(best), job, systems, text);
    if (wanted == 1 && !more && mayMend(job, effort))
        best = mended(std::move(best), job, systems, text);
    if (cancelled(request))
        return Failure{Obstacle::Cancelled, {}, 0};
    if (!best.possible) {
        Failure failed = tooMuch(job, text);
        if (!partable(job.pins))
            failed.what = Obstacle::PinsNotSliceable;
        return failed;
    }
    if (wanted != 1 || more)
        refine(job, best, systems, text, effort);
    if (cancelled(request))
        return Failure{Obstacle::Cancelled, {}, 0};
    addPinned(request, text, best.arrangement);
    return best.arrangement;
}

std::optional<Arrangement> solveQuickly(
    const Request& request, const ColumnSystem& system, TextMemo& text)
{
    Job job = jobOf(request, text);
    if (job.pieces.empty() || badPins(job.pins, request.page))
        return std::nullopt;
    const int wanted = request.pages.value_or(pagesWanted(job.pieces, request.page, text));
    setTargets(job.pieces, request.page, wanted, text, pinnedLeader(job));
    LeafTable leaves(request.page, job.pieces, text);
    Candidate found = solveSystem(job, system, leaves);
    if (!found.possible)
        return std::nullopt;
    addPinned(request, text, found.arrangement);
    return std::move(found.arrangement);
}

} // namespace wainscot::engine
