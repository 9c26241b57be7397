#include "layout/engine/obstacles.h"

#include "layout/engine/least_height.h"
#include "layout/engine/pins.h"
#include "layout/engine/targets.h"

#include <algorithm>

namespace wainscot::engine {

namespace {

constexpr Mm kTouchMm{0.01}; // a place is kept as exactly as that

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
    const ColumnSystem system = columnSystem("thirds and quarters", {3, 4, 6, 8, 9});
    if (page.columns == 12 && pages == 1 && !job.pins.empty()) {
        RunTable table(leaves, withPinEdges(system, job.pins, page.columns));
        if (table.fill(job.request.cancel))
            rows = PinnedPage(table, leaves, job.pins).rowsNeeded(0, leaves.size(), tall.rows);
    } else if (page.columns == 12) {
        rows = std::min(rows, leastHeight(leaves, system, job.request.cancel));
        for (const Pin& pin : job.pins)
            rows += (pin.at.w * pin.at.h + page.columns - 1) / page.columns;
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

std::vector<Pin> pinsOf(const Request& request, TextMemo& text)
{
    const PageSpec& page = request.page;
    std::vector<Pin> pins;
    for (const Item& item : request.items) {
        if (!item.isPinned())
            continue;
        const Piece piece = piecesOf({item}, text).front();
        const RectMm exact = item.pinnedAt ? *item.pinnedAt : page.cell(*item.pinned);
        RectMm taken = exact; // words longer than their place take what they take
        if (!piece.isPicture())
            taken.height = std::max(taken.height, text.measure(item.id, exact.width).height);
        GridRect at = coveredCells(page, taken, Mm(clearBelow(piece, page)));
        if (item.pinned && !item.pinnedAt)
            at = taken.height > exact.height ? around(*item.pinned, at) : *item.pinned;
        at.page = item.pinned ? item.pinned->page : 0;
        pins.push_back({item.id, at, exact});
    }
    return pins;
}

std::optional<Failure> badPins(const std::vector<Pin>& pins, const PageSpec& page)
{
    Failure out = failure(Obstacle::PinsOverlap);
    const auto name = [&](ItemId id) {
        if (std::find(out.items.begin(), out.items.end(), id) == out.items.end())
            out.items.push_back(id);
    };
    for (std::size_t a = 0; a < pins.size(); ++a)
        for (std::size_t b = a + 1; b < pins.size(); ++b) {
            const RectMm both = intersection(pins[a].exact, pins[b].exact);
            if (pins[a].at.page == pins[b].at.page && both.width > kTouchMm
                && both.height > kTouchMm) {
                name(pins[a].id);
                name(pins[b].id);
            }
        }
    for (const Pin& pin : pins) {
        const GridRect& p = pin.at;
        if (p.page < 0 || p.x < 0 || p.y < 0 || p.w < 1 || p.h < 1 || p.x + p.w > page.columns
            || p.y + p.h > page.rows)
            name(pin.id);
    }
    return out.items.empty() ? std::nullopt : std::optional(out);
}

} // namespace wainscot::engine
