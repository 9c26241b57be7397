#include "layout/engine/alternatives.h"

#include "layout/engine/bounds.h"
#include "layout/engine/divisions.h"
#include "layout/engine/faults.h"
#include "layout/engine/mend.h"
#include "layout/engine/page_price.h"
#include "layout/engine/pins.h"
#include "layout/engine/plan.h"
#include "layout/engine/spread.h"
#include "layout/engine/targets.h"

#include <algorithm>
#include <map>
#include <memory>
#include <set>

namespace wainscot::engine {

namespace {

// Price of standing as before, all pieces together, as share of the best's cost. Measured: below
// 0.2 near-twins come back, above 1.5 what comes back is too dear.
constexpr double kFirstLikeness = 0.4;
constexpr double kStronger = 1.7;
constexpr double kWeaker = 0.5;
constexpr double kWeakest = 0.1; // below it the search begins again at the first
// What a round costs at most, in solves of the request (bench_engine alternatives). A plan's
// variants are made ready once for all rounds, which is most of their work.
constexpr double kFreeRound = 0.45;
constexpr double kPlannedRound = 0.12;
// A page that still has faults has cost its solve every way of mending; a round is one of them.
constexpr double kMendedRound = 0.115; // each way twice
constexpr double kLeastLead = 0.8; // of the largest picture's size on the best page
constexpr double kSmallFault = 8; // units of faults beyond the ratio: leaning by a twentieth more
constexpr std::size_t kWaysOfATable = 8;
constexpr int kLeastSpread = 2; // rows of white

// The largest picture keeps the lead it has on the best page, where mending may have changed it.
void leadAs(const Arrangement& best, std::vector<Piece>& pieces)
{
    const Placement* largest = nullptr;
    for (const Placement& place : best.items)
        if (largest == nullptr || place.picture.areaMm2() > largest->picture.areaMm2())
            largest = &place;
    const double area = largest != nullptr ? largest->picture.areaMm2() : 0;
    for (Piece& piece : pieces) {
        if (!piece.isPicture() || area <= 0)
            continue;
        const bool leads = piece.item.id == largest->id;
        const double least = kLeastLead * area;
        piece.floorMm2 = leads ? least : 0;
        piece.ceilingMm2 = leads ? 0 : least / (1.02 * kDominance);
        piece.targetMm2 = leads ? area : std::min(piece.targetMm2, 0.85 * piece.ceilingMm2);
    }
}

// One order of the pieces with its wishes, and the column systems it may use.
struct Source {
    Source(
        Request asked, std::vector<ColumnSystem> columns, const Arrangement& best, TextMemo& text)
        : memo(text)
        , request(std::move(asked))
        , systems(std::move(columns))
        , job{request, {}, {}, 1}
    {
        std::vector<Item> flowing;
        job.pins = pinsOf(request, text);
        for (const Item& item : request.items)
            if (!item.isPinned())
                flowing.push_back(item);
        job.pieces = piecesOf(flowing, text);
        setTargets(job.pieces, request.page, 1, text);
        leadAs(best, job.pieces);
        standard = job.pieces;
        use(-1);
    }
    // With other prices and sizes, as a page is mended; -1 = the standard ones.
    void use(int way)
    {
        job.pieces = standard;
        if (way >= 0)
            resizeForWay(job.pieces, way);
        leaves = std::make_unique<LeafTable>(
            request.page, job.pieces, memo, way < 0 ? Weights() : weightsOfWay(way));
    }
    Source(const Source&) = delete;
    Source& operator=(const Source&) = delete;

    TextMemo& memo;
    Request request;
    std::vector<ColumnSystem> systems;
    Job job;
    std::vector<Piece> standard; // as the job's, at standard sizes
    std::unique_ptr<LeafTable> leaves;
};

// A request as the first solve saw it, without what only matters to that one.
Request bare(const Request& request)
{
    Request out = request;
    out.pages = 1;
    for (Item& item : out.items) {
        item.previous.reset();
        item.breakBefore = false;
    }
    return out;
}

// The cheapest page of a column system and others out of the same table, none above `dearest`.
std::vector<PagePlan> pagesBelow(
    const Source& source, const ColumnSystem& system, Cost dearest, const std::atomic<bool>* cancel)
{
    LeafTable& leaves = *source.leaves;
    const PageSpec& page = source.request.page;
    const int count = leaves.size();
    RunTable table(leaves, withPinEdges(system, source.job.pins, page.columns));
    const int cells = page.columns * page.rows;
    const AreaBounds bounds(leaves, table.spans());
    if (count == 0 || !bounds.possible())
        return {};
    ByRun<Cost> floor(count, kNever);
    floor(0, count) = bounds.least(0, count, cells);
    const PageLimits limits(bounds, floor, toCost(leaves.weights().page), dearest, cells, true);
    // Pins are not bounded by area, so that with them the whole table is filled.
    if (!table.fill(cancel, source.job.pins.empty() ? &limits : nullptr))
        return {};
    const Pagination best = paginate(table, leaves, source.job.pins, 1);
    if (best.pages.empty())
        return {};
    std::vector<PagePlan> pages = divisions(table, best.pages.front(), kWaysOfATable, dearest);
    pages.insert(pages.begin(), best.pages.front());
    return pages;
}

class Search {
public:
    Search(const Request& request,
        const Arrangement& best,
        const TextMeasurer& text,
        const AlternativesWish& wish,
        const std::vector<std::vector<Placement>>& alsoShown)
        : m_request(bare(request))
        , m_best(best)
        , m_wish(wish)
        , m_text(text)
        , m_shown(alsoShown)
        , m_standard(m_request, m_text)
    {
        m_shown.push_back(best.items);
        addSources();
    }

    Alternatives run()
    {
        const double each = m_planned ? kPlannedRound : m_mended ? kMendedRound : kFreeRound;
        double strength = kFirstLikeness;
        std::vector<std::size_t> chosen;
        for (int k = 1; k * each <= m_wish.solves && int(chosen.size()) < m_wish.most; ++k) {
            const int alike = m_out.alike;
            const int dear = m_out.dear;
            for (const auto& source : m_sources)
                source->use((k - 1) % (ways() + 1) - 1);
            if (!round(chosen, strength)) {
                m_out.cancelled = true;
                break;
            }
            const std::size_t before = chosen.size();
            chosen = choose();
            if (chosen.size() == before)
                strength *= m_out.dear - dear > m_out.alike - alike ? kWeaker : kStronger;
            if (m_mended && strength < kWeakest)
                strength = kFirstLikeness;
        }
        for (const std::size_t at : chosen) {
            m_out.found.push_back(m_pool[at].arrangement);
            m_out.costRatios.push_back(m_pool[at].price.cost / std::max(1e-9, m_bestPrice.cost));
        }
        return std::move(m_out);
    }

private:
    struct Found {
        Arrangement arrangement;
        PagePrice::Price price;
    };

    void addSources();
    bool round(const std::vector<std::size_t>& chosen, double strength);
    [[nodiscard]] Candidate calmest(
        const Source& source, const PagePlan& page, const ColumnSystem& cuts);
    void consider(const Source& source, Candidate candidate);
    [[nodiscard]] std::vector<std::size_t> choose() const;
    [[nodiscard]] bool unlike(
        const std::vector<Placement>& one, const std::vector<Placement>& other) const
    {
        const Difference between = difference(one, other, m_request);
        return between.pieces >= m_wish.difference && between.area >= m_wish.areaDifference;
    }
    [[nodiscard]] bool apart(std::size_t one, std::size_t other) const
    {
        return unlike(m_pool[one].arrangement.items, m_pool[other].arrangement.items);
    }

    Request m_request;
    const Arrangement& m_best;
    AlternativesWish m_wish;
    TextMemo m_text;
    std::vector<std::vector<Placement>> m_shown;
    std::vector<std::unique_ptr<Source>> m_sources;
    bool m_planned = false; // the best keeps to a plan
    bool m_mended = false; // it was sought in all ways, and still has faults
    PagePrice m_standard;
    PagePrice::Price m_bestPrice;
    std::vector<Found> m_pool; // good and unlike what is shown; not yet compared with each other
    Alternatives m_out;
};

// As arrange() goes about it: by the plan where the best keeps to it, and freely.
void Search::addSources()
{
    const Plan* plan = planByName(m_request.plan);
    if (plan != nullptr && m_best.columnSystem == plan->name) {
        for (const bool loose : {false, true}) {
            for (PlannedItems& variant : plannedItems(*plan, m_request, loose)) {
                Request one = m_request;
                one.items = std::move(variant.items);
                const std::vector<int> cuts =
                    loose ? std::vector<int>{3, 4, 5, 6, 7, 8, 9} : plan->cuts;
                m_sources.push_back(std::make_unique<Source>(std::move(one),
                    std::vector<ColumnSystem>{columnSystem(plan->name, cuts)},
                    m_best,
                    m_text));
            }
        }
    }
    m_planned = !m_sources.empty();
    m_sources.push_back(
        std::make_unique<Source>(m_request, freeSystems(m_request.page.columns), m_best, m_text));
    m_bestPrice = m_standard.of(m_best);
    const LeafTable& leaves = m_standard.leaves();
    const bool pinned = !m_sources.back()->job.pins.empty();
    m_mended = !pinned && !m_planned
        && !isSound(faultsOf(m_best, 0, leaves.pieces(), m_request.page, m_text));
}

// One pass over all sources and systems; false when cancelled.
bool Search::round(const std::vector<std::size_t>& chosen, double strength)
{
    std::vector<const std::vector<Placement>*> shown;
    for (const auto& one : m_shown)
        shown.push_back(&one);
    for (const std::size_t at : chosen)
        shown.push_back(&m_pool[at].arrangement.items);
    std::map<ItemId, std::vector<GridRect>> cells;
    std::map<ItemId, double> covered;
    double all = 0;
    for (const auto* places : shown)
        for (const Placement& place : *places) {
            cells[place.id].push_back(place.at);
            covered[place.id] += place.cell.areaMm2();
            all += place.cell.areaMm2();
        }
    for (const auto& source : m_sources) {
        source->leaves->avoid({}, {});
        const double budget = std::max(m_bestPrice.cost, costOn(*source->leaves, m_best));
        std::vector<std::vector<GridRect>> avoid;
        std::vector<Cost> prices;
        const double count = std::max<double>(1, double(source->job.pieces.size()));
        for (const Piece& piece : source->job.pieces) {
            avoid.push_back(piece.blank ? std::vector<GridRect>{} : cells[piece.item.id]);
            // Half by number, half by area, as the difference is judged.
            const double part = (1 / count + covered[piece.item.id] / std::max(1.0, all)) / 2;
            prices.push_back(toCost(strength * budget * part));
        }
        // A page may pay for likeness what it saves elsewhere.
        const Cost dearest = toCost(budget * (m_wish.dearest + strength));
        source->leaves->avoid(std::move(avoid), std::move(prices));
        for (const ColumnSystem& system : source->systems) {
            const ColumnSystem cuts =
                withPinEdges(system, source->job.pins, m_request.page.columns);
            for (const PagePlan& page : pagesBelow(*source, system, dearest, m_request.cancel))
                consider(*source, calmest(*source, page, cuts));
            if (m_request.cancel != nullptr && m_request.cancel->load(std::memory_order_relaxed))
                return false;
        }
    }
    return true;
}

// The page with the white of its foot where it has the fewest faults.
Candidate Search::calmest(const Source& source, const PagePlan& page, const ColumnSystem& cuts)
{
    Candidate best = finished(source.job, {page}, cuts, *source.leaves);
    if (m_standard.of(best.arrangement).cost > m_wish.dearest * m_bestPrice.cost)
        return best; // too dear wherever its white is
    for (int rows = kLeastSpread; rows <= kMostSpread; ++rows)
        if (const auto wider = spread(page, {rows, rows}, *source.leaves)) {
            Candidate one = finished(source.job, {*wider}, cuts, *source.leaves);
            if (one.score < best.score)
                best = std::move(one);
        }
    return best;
}

void Search::consider(const Source& source, Candidate candidate)
{
    ++m_out.looked;
    Arrangement& found = candidate.arrangement;
    found.cost.likeness = 0;
    addPinned(source.request, m_text, found);
    const bool alike = std::any_of(m_shown.begin(), m_shown.end(), [&](const auto& shown) {
        return !unlike(found.items, shown);
    });
    if (alike) {
        ++m_out.alike;
        return;
    }
    const PagePrice::Price price = m_standard.of(found);
    if (price.cost > m_wish.dearest * m_bestPrice.cost
        || price.withFaults > m_wish.dearest * m_bestPrice.withFaults + kSmallFault
        || found.orderInversions > m_best.orderInversions) {
        ++m_out.dear;
        return;
    }
    m_pool.push_back({std::move(found), price});
}

// The most arrangements that are unlike each other, the cheapest such set; cheapest first.
std::vector<std::size_t> Search::choose() const
{
    std::vector<std::size_t> order(m_pool.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::stable_sort(order.begin(), order.end(), [this](std::size_t a, std::size_t b) {
        return m_pool[a].price.withFaults < m_pool[b].price.withFaults;
    });
    std::vector<std::size_t> best;
    double bestScore = 0;
    std::vector<std::size_t> set;
    const auto extend = [&](const auto& self, std::size_t from, double score) -> void {
        if (set.size() > best.size() || (set.size() == best.size() && score < bestScore)) {
            best = set;
            bestScore = score;
        }
        if (int(set.size()) >= m_wish.most)
            return;
        for (std::size_t k = from; k < order.size(); ++k) {
            const bool free = std::all_of(
                set.begin(), set.end(), [&](std::size_t other) { return apart(order[k], other); });
            if (!free)
                continue;
            set.push_back(order[k]);
            self(self, k + 1, score + m_pool[order[k]].price.withFaults);
            set.pop_back();
        }
    };
    extend(extend, 0, 0);
    return best;
}

} // namespace

Difference difference(
    const std::vector<Placement>& one, const std::vector<Placement>& other, const Request& request)
{
    std::set<ItemId> pinned;
    for (const Item& item : request.items)
        if (item.isPinned())
            pinned.insert(item.id);
    std::map<ItemId, const Placement*> places;
    for (const Placement& place : other)
        places[place.id] = &place;
    Difference sum;
    double count = 0;
    double area = 0;
    for (const Placement& place : one) {
        const auto at = places.find(place.id);
        if (at == places.end() || pinned.count(place.id) > 0)
            continue;
        const Placement& there = *at->second;
        const bool samePage = place.at.page == there.at.page;
        const double shared = samePage ? intersection(place.cell, there.cell).areaMm2() : 0;
        const double both = place.cell.areaMm2() + there.cell.areaMm2() - shared;
        const double moved = both > 0 ? 1 - shared / both : 0;
        sum.pieces += moved;
        sum.area += moved * both;
        count += 1;
        area += both;
    }
    return count > 0 && area > 0 ? Difference{sum.pieces / count, sum.area / area} : Difference{};
}

Alternatives alternatives(const Request& request,
    const Arrangement& best,
    const TextMeasurer& text,
    const AlternativesWish& wish,
    const std::vector<std::vector<Placement>>& alsoShown)
{
    if (wish.most <= 0 || best.items.empty())
        return {};
    return Search(request, best, text, wish, alsoShown).run();
}

} // namespace wainscot::engine
