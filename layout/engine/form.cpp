#include "layout/engine/form.h"

#include "layout/engine/plan.h"

#include <algorithm>
#include <cmath>

namespace wainscot::engine {

namespace {

constexpr int kSteps = 4;

// Photos and work samples may stand in for one another; everything else is of one kind.
bool suits(const Item& item, const FormPlace& place)
{
    if (item.picture)
        return place.kind == Kind::Photo || place.kind == Kind::Work;
    return item.kind == place.kind;
}

int matchFor(const FormPlace& place, const std::vector<Item>& items, const std::vector<bool>& used)
{
    int best = -1;
    int bestScore = 0;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (used[i] || !suits(items[i], place))
            continue;
        const bool samePart = (items[i].importance >= 3) == place.dominant;
        const int score = 1 + (samePart ? 2 : 0) + (items[i].kind == place.kind ? 1 : 0);
        if (score > bestScore) {
            best = int(i);
            bestScore = score;
        }
    }
    return best;
}

Wish wishOf(const FormPlace& place, const Item& item, const PageSpec& page, int step)
{
    Wish wish;
    wish.rows = int(std::lround(place.rows * page.rows));
    wish.area = item.picture ? place.area : 0;
    if (place.columns <= 0)
        return wish;
    if (step >= 2) {
        wish.columns = place.columns;
        return wish;
    }
    // A text's own lines may end before its cell does, so its width is the least it may have.
    wish.minColumns = place.columns;
    wish.maxColumns = item.picture ? place.columns : page.columns;
    if (step == 0)
        wish.firstColumn = place.column;
    return wish;
}

GridRect fixedAt(const FormPlace& place, const PageSpec& page)
{
    GridRect at;
    at.x = place.column;
    at.w = place.columns;
    at.y = std::clamp(int(std::lround(place.top * page.rows)), 0, page.rows - 1);
    at.h = std::clamp(int(std::lround(place.rows * page.rows)), 1, page.rows - at.y);
    return at;
}

std::optional<Arrangement> attempt(const Request& request, int step, TextMemo& text)
{
    Request one = request;
    one.items = formedItems(*request.form, request, step);
    one.pages = 1;
    const std::vector<ColumnSystem> every = {
        columnSystem(request.form->name, {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11})};
    Outcome outcome = solve(one, step < 2 ? every : freeSystems(request.page.columns), text);
    if (auto* found = std::get_if<Arrangement>(&outcome))
        return std::move(*found);
    return std::nullopt;
}

WishAbout droppedAt(int step)
{
    if (step == 1)
        return WishAbout::Places;
    return step == 2 ? WishAbout::Spans : WishAbout::FixedPlaces;
}

} // namespace

std::vector<Item> formedItems(const Form& form, const Request& request, int step)
{
    std::vector<bool> used(request.items.size(), false);
    std::vector<Item> items;
    for (const FormPlace& place : form.places) {
        const int at = matchFor(place, request.items, used);
        if (at < 0)
            continue;
        used[std::size_t(at)] = true;
        Item item = request.items[std::size_t(at)];
        item.wish = wishOf(place, item, request.page, step);
        item.group = place.group;
        item.optional = place.optional;
        if (place.dominant)
            item.importance = 3;
        if (place.fixed && step < 3 && !item.pinned)
            item.pinned = fixedAt(place, request.page);
        items.push_back(item);
    }
    for (std::size_t i = 0; i < request.items.size(); ++i)
        if (!used[i]) {
            items.push_back(request.items[i]);
            items.back().group = 0;
        }
    return items;
}

std::optional<Arrangement> arrangeByForm(
    const Request& request, TextMemo& text, std::vector<DroppedWish>& dropped)
{
    const Form& form = *request.form;
    Request marked = request; // with what the form says of each item
    marked.items = formedItems(form, request, kSteps - 1);
    const std::vector<DroppedWish> before = dropped;
    std::optional<Arrangement> strict;
    for (int step = 0; step < kSteps; ++step) {
        std::vector<DroppedWish> here = before;
        auto found = withFewerOptional(
            marked, here, [&](const Request& fewer) { return attempt(fewer, step, text); });
        if (!found)
            continue;
        if (step > 0)
            here.push_back({droppedAt(step), WishReason::NoRoom, form.name, 0, 0, {}});
        if (!strict) {
            strict = std::move(found);
            dropped = std::move(here);
        } else if (muchCheaper(*found, *strict)) {
            here.back().why = WishReason::BadPage;
            strict = std::move(found);
            dropped = std::move(here);
        } else {
            break;
        }
        if (step == 2)
            break;
    }
    if (!strict)
        dropped.push_back({WishAbout::Plan, WishReason::NoRoom, form.name, 0, 0, {}});
    return strict;
}

} // namespace wainscot::engine
