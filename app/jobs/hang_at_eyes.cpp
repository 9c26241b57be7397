#include "app/jobs/hang_at_eyes.h"

#include "layout/wall/fittings.h"
#include "layout/wall/stature.h"

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

constexpr Mm kThereAlready{5}; // nearer than anybody hangs a panel

std::optional<RectMm> placeOf(const Book& book, const PanelOnWall& hung)
{
    const Panel* panel = book.panels.find(hung.panel);
    const Display* display = panel != nullptr ? book.displays.find(panel->display) : nullptr;
    if (display == nullptr)
        return std::nullopt;
    const SizeMm size = display->panelSize;
    return RectMm{hung.corner.x, hung.corner.y, size.width, size.height};
}

bool isFree(const Book& book, const Wall& wall, PanelId panel, const RectMm& place)
{
    const bool overClear =
        std::any_of(wall.fittings.begin(), wall.fittings.end(), [&](const Fitting& fitting) {
            return !intersection(wall::keptClear(fitting, wall.size), place).isEmpty();
        });
    const bool overOther =
        std::any_of(wall.panels.begin(), wall.panels.end(), [&](const PanelOnWall& other) {
            const auto there = other.panel != panel ? placeOf(book, other) : std::nullopt;
            return there && !intersection(*there, place).isEmpty();
        });
    return !overClear && !overOther;
}

} // namespace

std::optional<Wall> withPanelAtEyes(const Book& book, PanelId panel)
{
    for (const auto& [id, wall] : book.walls.rows()) {
        Wall moved = wall;
        const auto at = std::find_if(moved.panels.begin(),
            moved.panels.end(),
            [&](const PanelOnWall& one) { return one.panel == panel; });
        if (at == moved.panels.end())
            continue;
        auto place = placeOf(book, *at);
        if (!place)
            return std::nullopt;
        const Mm eyes = wall.viewers == Viewers::GrownUps
            ? wall::grownUpsEyes().middle
            : wall::childrensEyes(wall.youngest, wall.oldest).middle;
        const Mm lowest = std::max(wall.size.height - place->height, Mm(0));
        const Mm top = std::clamp(wall.size.height - eyes - place->height / 2, Mm(0), lowest);
        const bool isThere = std::abs((top - place->y).value()) < kThereAlready.value();
        place->y = top;
        if (isThere || !isFree(book, wall, panel, *place))
            return std::nullopt;
        at->corner.y = top;
        return moved;
    }
    return std::nullopt;
}

} // namespace wainscot
