#include "layout/wall/propose.h"

#include <algorithm>

namespace wainscot::wall {

namespace {

constexpr Mm kWidestGap(200);
constexpr Mm kLeastGap(50);
constexpr Mm kGapStep(10);
constexpr Mm kRounding(1e-9); // sums of widths that fill a stretch exactly still fit

struct Stretch {
    Mm from;
    Mm to;
    [[nodiscard]] Mm width() const { return to - from; }
};
// How many panels, one after the other, hang in each stretch.
using Deal = std::vector<std::size_t>;

Mm topOf(const SizeMm& panel, const HangingWish& wish)
{
    const Mm top = wish.wall.height - wish.centre - panel.height / 2;
    return std::clamp(top, Mm(0), wish.wall.height - panel.height);
}

bool fitsAtAll(const SizeMm& panel, const SizeMm& wall)
{
    return !panel.isEmpty() && panel.width <= wall.width && panel.height <= wall.height;
}

// The stretches of wall where the band of all panels is clear, from the left.
std::vector<Stretch> freeStretches(const HangingWish& wish, Mm top, Mm bottom)
{
    const RectMm band{Mm(0), top, wish.wall.width, bottom - top};
    std::vector<Stretch> taken;
    for (const RectMm& zone : wish.keepClear) {
        const RectMm in = intersection(zone, band);
        if (!in.isEmpty())
            taken.push_back({in.x, in.right()});
    }
    std::sort(taken.begin(), taken.end(), [](const Stretch& a, const Stretch& b) {
        return a.from < b.from;
    });
    std::vector<Stretch> free;
    Mm from;
    for (const Stretch& one : taken) {
        if (one.from > from)
            free.push_back({from, one.from});
        from = std::max(from, one.to);
    }
    if (wish.wall.width > from)
        free.push_back({from, wish.wall.width});
    return free;
}

Mm widthOf(std::span<const SizeMm> panels, Mm gap)
{
    Mm width;
    for (std::size_t i = 0; i < panels.size(); ++i)
        width += panels[i].width + (i > 0 ? gap : Mm(0));
    return width;
}

// All in the widest stretch, or in each from the left as many as it holds.
Deal dealt(std::span<const SizeMm> panels, const std::vector<Stretch>& free, Mm gap, bool together)
{
    Deal deal(free.size(), 0);
    if (together) {
        const auto widest = std::max_element(free.begin(),
            free.end(),
            [](const Stretch& a, const Stretch& b) { return a.width() < b.width(); });
        if (widest != free.end() && widthOf(panels, gap) <= widest->width() + kRounding)
            deal[std::size_t(widest - free.begin())] = panels.size();
        return deal;
    }
    std::size_t next = 0;
    for (std::size_t i = 0; i < free.size(); ++i) {
        while (next + deal[i] < panels.size()
            && widthOf(panels.subspan(next, deal[i] + 1), gap) <= free[i].width() + kRounding)
            ++deal[i];
        next += deal[i];
    }
    return deal;
}

std::size_t countOf(const Deal& deal)
{
    std::size_t count = 0;
    for (const std::size_t one : deal)
        count += one;
    return count;
}

} // namespace

std::vector<std::optional<RectMm>> proposePlaces(const HangingWish& wish)
{
    std::vector<std::optional<RectMm>> places(wish.panels.size());
    std::vector<SizeMm> panels;
    std::vector<std::size_t> numbers;
    Mm top = wish.wall.height;
    Mm bottom;
    for (std::size_t i = 0; i < wish.panels.size(); ++i) {
        const SizeMm& panel = wish.panels[i];
        if (!fitsAtAll(panel, wish.wall))
            continue;
        panels.push_back(panel);
        numbers.push_back(i);
        top = std::min(top, topOf(panel, wish));
        bottom = std::max(bottom, topOf(panel, wish) + panel.height);
    }
    const std::vector<Stretch> free = freeStretches(wish, top, bottom);
    Deal best(free.size(), 0);
    Mm gap = kLeastGap;
    for (const bool together : {true, false}) {
        for (Mm tried = kWidestGap; tried >= kLeastGap; tried -= kGapStep) {
            const Deal deal = dealt(panels, free, tried, together);
            if (countOf(deal) > countOf(best)) {
                best = deal;
                gap = tried;
            }
        }
    }
    std::size_t next = 0;
    for (std::size_t i = 0; i < free.size(); ++i) {
        const std::span<const SizeMm> here = std::span(panels).subspan(next, best[i]);
        Mm left = free[i].from + std::max(Mm(0), (free[i].width() - widthOf(here, gap)) / 2);
        for (const SizeMm& panel : here) {
            places[numbers[next++]] = RectMm{left, topOf(panel, wish), panel.width, panel.height};
            left += panel.width + gap;
        }
    }
    return places;
}

} // namespace wainscot::wall
