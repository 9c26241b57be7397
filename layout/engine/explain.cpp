#include "layout/engine/explain.h"

#include "layout/engine/faults.h"
#include "layout/engine/page_price.h"
#include "layout/engine/reading.h"
#include "layout/engine/targets.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace wainscot::engine {

namespace {

constexpr double kNothing = 1e-6;

const Item* itemOf(const Request& request, ItemId id)
{
    for (const Item& item : request.items)
        if (item.id == id)
            return &item;
    return nullptr;
}

// Shortest way between two rectangles; 0 = they touch.
Mm between(const RectMm& a, const RectMm& b)
{
    const double across = std::max({0.0, (b.x - a.right()).value(), (a.x - b.right()).value()});
    const double down = std::max({0.0, (b.y - a.bottom()).value(), (a.y - b.bottom()).value()});
    return Mm(std::hypot(across, down));
}

void explainCrop(const Item& item, const Placement& place, PieceReasons& out)
{
    if (!item.picture || place.picture.isEmpty())
        return;
    const double shown = place.picture.width.value() / place.picture.height.value();
    const double own = item.picture->size.aspect();
    out.cropShare = 1 - std::min(shown / own, own / shown);
    if (out.cropShare > kNothing)
        out.crop = shown < own ? CropSide::LeftAndRight : CropSide::TopAndBottom;
    else
        out.cropShare = 0;
}

} // namespace

PageReasons explain(
    const Request& request, const std::vector<Placement>& page, const TextMeasurer& text)
{
    TextMemo memo(text);
    PagePrice price(request, memo);
    LeafTable& leaves = price.leaves();
    PageReasons out;
    double largest = 0;
    double next = 0;
    for (const Placement& place : page) {
        const double area = place.picture.areaMm2();
        next = std::max(next, std::min(area, largest));
        largest = std::max(largest, area);
    }
    std::vector<GridRect> cells;
    std::vector<int> groups;
    for (const Placement& place : page) {
        const Item* item = itemOf(request, place.id);
        if (item == nullptr)
            continue;
        cells.push_back(place.at);
        groups.push_back(item->group);
        PieceReasons one;
        one.id = place.id;
        one.pinned = item->pinned.has_value();
        explainCrop(*item, place, one);
        for (int i = 0; i < leaves.size(); ++i) {
            if (leaves.piece(i).item.id != place.id)
                continue;
            one.cost = leaves.fit(i, place.at.x, place.at.w, place.at.h).cost;
            if (leaves.piece(i).targetMm2 > 0)
                one.sizeByAim = place.picture.areaMm2() / leaves.piece(i).targetMm2;
        }
        if (next > 0 && place.picture.areaMm2() >= largest)
            one.leads = largest / next;
        for (const Placement& other : page) {
            const Item* mate = itemOf(request, other.id);
            if (mate == nullptr || mate == item || item->group <= 0 || mate->group != item->group)
                continue;
            const Mm way = between(place.cell, other.cell);
            one.toMates = one.mates.empty() ? way : std::min(one.toMates, way);
            one.mates.push_back(other.id);
        }
        out.cost += one.cost;
        out.pieces.push_back(std::move(one));
    }
    Arrangement all;
    all.items = page;
    all.pages = 1;
    std::vector<Piece> pieces = piecesOf(request.items, memo);
    out.white = faultsOf(all, 0, pieces, request.page, memo).white;
    out.leftEdges = leftEdges(cells);
    out.orderInversions = orderInversions(cells, groups);
    return out;
}

} // namespace wainscot::engine
