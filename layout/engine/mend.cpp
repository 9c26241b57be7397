#include "layout/engine/mend.h"

#include "layout/engine/faults.h"
#include "layout/engine/near_pages.h"
#include "layout/engine/spread.h"
#include "layout/engine/targets.h"

#include <array>
#include <map>

namespace wainscot::engine {

namespace {

// What another attempt changes.
struct Attempt {
    double lead; // size of the dominant picture, by the usual one
    double white; // price of white beside and under pieces
    double stacks; // price of stacks side by side
    double tone; // price of pictures' area
    int leader; // 0 = the likeliest dominant picture, 1 = the next likely
};

constexpr std::array kAttempts{
    Attempt{0.8, 1, 3, 10, 0},
    Attempt{0.65, 2.5, 1, 0, 0},
    Attempt{1, 1, 3, 0, 1},
    Attempt{1, 1, 3, 40, 0},
    Attempt{0.5, 1, 3, 40, 0},
    Attempt{0.6, 1, 3, 10, 1},
    Attempt{1, 1, 3, 0, 2},
    Attempt{0.8, 2.5, 3, 20, 0},
    Attempt{0.7, 1, 6, 40, 1},
    Attempt{1, 4, 3, 10, 0},
    Attempt{1.2, 1, 1, 20, 0},
    Attempt{0.7, 2.5, 3, 20, 2},
};

Weights weightsFor(const Attempt& attempt)
{
    Weights weights;
    weights.textWhite *= attempt.white;
    weights.white *= attempt.white;
    weights.pool *= attempt.white;
    weights.side *= attempt.white;
    weights.sideBySideStacks *= attempt.stacks;
    weights.tone = attempt.tone;
    return weights;
}

void resize(std::vector<Piece>& pieces, const Attempt& attempt)
{
    for (Piece& piece : pieces) {
        const bool leads = piece.floorMm2 > 0;
        if (piece.item.wish.area > 0)
            continue;
        piece.targetMm2 *= leads ? attempt.lead : std::min(1.0, attempt.lead);
        piece.floorMm2 *= attempt.lead;
        piece.ceilingMm2 *= attempt.lead;
    }
}

// Attempts are compared by one measure: standard prices and sizes, rivals left to the faults.
class Judge {
public:
    Judge(const Job& job, TextMemo& text)
        : m_pieces(job.pieces)
        , m_page(job.request.page)
        , m_text(text)
    {
        for (Piece& piece : m_pieces)
            piece.floorMm2 = piece.ceilingMm2 = 0;
        m_standard = std::make_unique<LeafTable>(m_page, m_pieces, text);
        for (int i = 0; i < m_standard->size(); ++i)
            if (!m_standard->piece(i).blank)
                m_places[m_standard->piece(i).item.id] = i;
    }

    PageFaults faults(const Candidate& one) const
    {
        return faultsOf(one.arrangement, 0, m_pieces, m_page, m_text);
    }

    double price(const Candidate& one, const PageFaults& faults) const
    {
        double units = 0;
        for (const Placement& place : one.arrangement.items) {
            const auto at = m_places.find(place.id);
            if (at != m_places.end())
                units += double(m_standard->fit(at->second, place.at.x, place.at.w, place.at.h)
                                    .cost.total())
                    / kUnit;
        }
        const CostTerms& cost = one.arrangement.cost;
        units += double(cost.reading + cost.alignment) / kUnit;
        int foot = m_page.rows;
        for (const Placement& place : one.arrangement.items)
            foot = std::min(foot, m_page.rows - place.at.y - place.at.h);
        const double empty = double(foot) / m_page.rows;
        const Weights& weights = m_standard->weights();
        units += empty * weights.foot;
        units += m_standard->weights().inversion * one.arrangement.orderInversions;
        return units + priceOf(faults, m_standard->weights());
    }

private:
    std::vector<Piece> m_pieces;
    const PageSpec& m_page;
    TextMemo& m_text;
    std::unique_ptr<LeafTable> m_standard;
    std::map<ItemId, int> m_places;
};

// Keeps the best page met.
class Mender {
public:
    Mender(Candidate first, const Job& job, TextMemo& text)
        : m_text(text)
        , m_judge(job, text)
        , m_best(std::move(first))
        , m_faults(m_judge.faults(m_best))
        , m_price(m_judge.price(m_best, m_faults))
    {
    }

    bool sound() const { return isSound(m_faults) && m_best.arrangement.orderInversions == 0; }
    Candidate take() { return std::move(m_best); }

    // Pages of the job at these prices, as they are and with the white of their foot shared out.
    void explore(const Job& job, const std::vector<ColumnSystem>& systems, const Weights& weights)
    {
        if (sound())
            return;
        LeafTable leaves(job.request.page, job.pieces, m_text, weights);
        for (const ColumnSystem& system : systems)
            for (const PagePlan& page : pagesNear(system, leaves, job.request.cancel)) {
                consider(job, page, system, leaves);
                for (int bands = 0; bands <= kMostSpread; ++bands)
                    for (int columns = 0; columns <= kMostSpread; ++columns)
                        if (const auto wider = spread(page, {bands, columns}, leaves))
                            consider(job, *wider, system, leaves);
            }
    }

private:
    void consider(
        const Job& job, const PagePlan& page, const ColumnSystem& system, LeafTable& leaves)
    {
        Candidate one = finished(job, {page}, system, leaves);
        if (m_judge.price(one, {}) >= m_price)
            return; // faults only add to it
        const PageFaults found = m_judge.faults(one);
        const double asked = m_judge.price(one, found);
        if (asked >= m_price)
            return;
        m_best = std::move(one);
        m_faults = found;
        m_price = asked;
    }

    TextMemo& m_text;
    Judge m_judge;
    Candidate m_best;
    PageFaults m_faults;
    double m_price;
};

} // namespace

int ways()
{
    return int(kAttempts.size());
}

Weights weightsOfWay(int way)
{
    return weightsFor(kAttempts[std::size_t(way)]);
}

void resizeForWay(std::vector<Piece>& pieces, int way)
{
    resize(pieces, kAttempts[std::size_t(way)]);
}

Candidate mended(
    Candidate first, const Job& job, const std::vector<ColumnSystem>& systems, TextMemo& text)
{
    if (!first.possible || first.arrangement.pages != 1)
        return first;
    Mender mender(std::move(first), job, text);
    mender.explore(job, systems, Weights());
    for (const Attempt& attempt : kAttempts) {
        if (mender.sound())
            break;
        Job other = job;
        other.pages = 1;
        if (attempt.leader > 0) {
            const int leader = dominantOf(other.pieces, attempt.leader);
            if (leader < 0)
                continue;
            setTargets(other.pieces, job.request.page, 1, text, {leader, 0});
        }
        resize(other.pieces, attempt);
        mender.explore(other, systems, weightsFor(attempt));
    }
    return mender.take();
}

} // namespace wainscot::engine
