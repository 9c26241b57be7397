#include "layout/engine/page_price.h"

#include "layout/engine/faults.h"
#include "layout/engine/targets.h"

#include <algorithm>

namespace wainscot::engine {

double costOn(LeafTable& leaves, const Arrangement& page)
{
    CostTerms sum;
    sum.reading = page.cost.reading;
    sum.alignment = page.cost.alignment;
    int foot = leaves.page().rows;
    for (const Placement& place : page.items) {
        foot = std::min(foot, leaves.page().rows - place.at.y - place.at.h);
        for (int i = 0; i < leaves.size(); ++i)
            if (leaves.piece(i).item.id == place.id)
                sum += leaves.fit(i, place.at.x, place.at.w, place.at.h).cost;
    }
    return double(sum.total()) / kUnit + leaves.weights().foot * foot / leaves.page().rows;
}

PagePrice::PagePrice(const Request& request, TextMemo& text)
{
    std::vector<Item> items;
    for (Item item : request.items) {
        m_pinned = m_pinned || item.pinned;
        if (item.pinned)
            continue;
        item.previous.reset();
        item.wish = {};
        items.push_back(item);
    }
    std::vector<Piece> pieces = piecesOf(items, text);
    setTargets(pieces, request.page, 1, text);
    for (Piece& piece : pieces)
        piece.floorMm2 = piece.ceilingMm2 = 0; // rivals of the dominant picture are a fault
    m_leaves = std::make_unique<LeafTable>(request.page, std::move(pieces), text);
}

PagePrice::Price PagePrice::of(const Arrangement& page)
{
    const Weights& weights = m_leaves->weights();
    Price out;
    out.cost = costOn(*m_leaves, page);
    out.withFaults = out.cost + weights.inversion * page.orderInversions;
    if (!m_pinned)
        out.withFaults += priceOf(
            faultsOf(page, 0, m_leaves->pieces(), m_leaves->page(), m_leaves->text()), weights);
    return out;
}

} // namespace wainscot::engine
