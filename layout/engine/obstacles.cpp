#include "layout/engine/obstacles.h"

#include "layout/engine/least_height.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

Failure failure(Obstacle what, std::vector<ItemId> items = {}, double missing = 0)
{
    return {what, std::move(items), missing};
}

} // namespace

std::optional<Failure> impossibleItem(const Job& job, TextMemo& text)
{
    const PageSpec& page = job.request.page;
    LeafTable leaves(page, job.pieces, text);
    Failure words = failure(Obstacle::WordTooWide);
    Failure pixels = failure(Obstacle::PictureTooFewPixels);
    Failure room = failure(Obstacle::TooMuchForPages);
    for (int i = 0; i < leaves.size(); ++i) {
        if (leaves.leastCells(i) <= page.columns * page.rows)
            continue;
        const Piece& piece = leaves.piece(i);
        const TextMetrics& widest = text.measure(piece.item.id, page.width(page.columns));
        if (!piece.isPicture() && widest.fits) {
            room.items.push_back(piece.item.id);
            const Mm over = widest.height - page.height(page.rows);
            room.missingMm2 +=
                std::max(page.rowUnit, over).value() * page.width(page.columns).value();
        } else {
            (piece.isPicture() && widest.fits ? pixels : words).items.push_back(piece.item.id);
        }
    }
    for (Failure* one : {&words, &pixels, &room})
        if (!one->items.empty())
            return *one;
    return std::nullopt;
}

Failure tooMuch(const Job& job, TextMemo& text)
{
    const PageSpec& page = job.request.page;
    const int pages = std::max(1, job.pages.value_or(1));
    PageSpec tall = page;
    tall.rows = page.rows * (pages + 1) * 2;
    tall.size.height = 2 * tall.margin + tall.height(tall.rows);
    auto pieces = job.pieces;
    for (Piece& piece : pieces)
        piece.item.breakBefore = false;
    LeafTable leaves(tall, pieces, text);
    int rows = tall.rows;
    if (page.columns == 12) {
        const ColumnSystem system = columnSystem("thirds and quarters", {3, 4, 6, 8, 9});
        rows = std::min(rows, leastHeight(leaves, system, job.request.cancel));
    }
    const int over = std::max(1, rows - pages * page.rows);
    const double width = (page.width(page.columns) + page.gutter).value();
    Failure out = failure(Obstacle::TooMuchForPages, {}, over * page.rowUnit.value() * width);
    double freed = 0;
    LeafTable here(page, job.pieces, text);
    const double cell = width / page.columns * page.rowUnit.value();
    for (int i = here.size() - 1; i >= 0 && freed < out.missingMm2; --i) {
        const Item& item = here.piece(i).item;
        const bool response =
            item.kind == Kind::Photo || item.kind == Kind::Work || item.kind == Kind::Quote;
        if (!response || item.importance >= 3)
            continue;
        freed += here.leastCells(i) * cell;
        out.items.insert(out.items.begin(), item.id);
    }
    return out;
}

std::optional<Failure> badPins(const std::vector<Pin>& pins, const PageSpec& page)
{
    Failure out = failure(Obstacle::PinsOverlap);
    for (std::size_t a = 0; a < pins.size(); ++a) {
        const GridRect& p = pins[a].at;
        bool bad = p.page < 0 || p.x < 0 || p.y < 0 || p.w < 1 || p.h < 1
            || p.x + p.w > page.columns || p.y + p.h > page.rows;
        for (std::size_t b = 0; b < pins.size(); ++b) {
            const GridRect& q = pins[b].at;
            bad = bad
                || (a != b && p.page == q.page && p.x < q.x + q.w && q.x < p.x + p.w
                    && p.y < q.y + q.h && q.y < p.y + p.h);
        }
        if (bad)
            out.items.push_back(pins[a].id);
    }
    if (!out.items.empty())
        return out;
    if (sliceable(pins))
        return std::nullopt;
    out.what = Obstacle::PinsNotSliceable;
    for (const Pin& pin : pins)
        out.items.push_back(pin.id);
    return out;
}

} // namespace wainscot::engine
