// Letters as they appear from the eyes of those in front of the wall a panel hangs on.
#include "layout/check/rules.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/base/says.h"
#include "layout/wall/sight.h"
#include "layout/wall/stature.h"

namespace wainscot::check {

namespace {

constexpr Mm kNearest{500}; // nobody reads a wall from nearer; common practice, no source

struct Reader {
    Mm eyes; // above the floor
    QString who;
};

struct Hung {
    const Wall* wall = nullptr;
    Mm middle; // of the panel, above the floor
};

// The first wall it hangs on.
std::optional<Hung> hungOn(const Book& book, const PanelFacts& panel)
{
    for (const auto& [id, wall] : book.walls.rows()) {
        const auto at = std::find_if(wall.panels.begin(),
            wall.panels.end(),
            [&](const PanelOnWall& one) { return one.panel == panel.panelId; });
        if (at != wall.panels.end()) {
            return Hung{
                &wall, wall.size.height - at->corner.y - panel.display.panelSize.height / 2};
        }
    }
    return std::nullopt;
}

std::vector<Reader> readersOf(const Wall& wall)
{
    std::vector<Reader> readers;
    if (wall.viewers != Viewers::GrownUps) {
        readers.push_back(
            {wall::childrensEyes(wall.youngest, wall.oldest).middle, Says::tr("children's eyes")});
    }
    if (wall.viewers != Viewers::Children)
        readers.push_back({wall::grownUpsEyes().middle, Says::tr("grown-ups' eyes")});
    return readers;
}

// Small print is walked up to: as near as shows it largest, which is where the line of sight rises
// or falls by 45 degrees.
Mm distanceOf(const TextLine& line, Mm reading, Mm above)
{
    const Mm farthest = reading * ruleOf(line.use).distances;
    return line.use == Use::Small ? std::clamp(above, std::min(kNearest, farthest), farthest)
                                  : farthest;
}

double seenFrom(const TextLine& line, const PanelFacts& panel, const Hung& hung, Mm eyes)
{
    const SizeMm& size = panel.display.panelSize;
    const PointMm at{size.width / 2, line.baseline - line.cap / 2};
    const Mm above(std::abs((hung.middle + size.height / 2 - at.y - eyes).value()));
    wall::Standing standing;
    standing.distance = distanceOf(line, panel.style.readingDistance, above);
    standing.eyes = eyes;
    standing.middle = hung.middle;
    return wall::arcminutesOf(line.cap, at, size, standing);
}

} // namespace

void checkMounted(const Book& book, const PanelFacts& panel, Notebook& notes)
{
    const std::optional<Hung> hung = hungOn(book, panel);
    if (!hung)
        return;
    const double least = panel.limits.of(Limit::MountedAngle);
    for (const Reader& reader : readersOf(*hung->wall)) {
        const TextLine* worst = nullptr;
        double seen = least * 0.995; // as in the other heights, half a percent is rounding
        for (const TextLine& line : panel.lines) {
            const double angle =
                line.cap > Mm(0) ? seenFrom(line, panel, *hung, reader.eyes) : seen;
            if (angle < seen) {
                seen = angle;
                worst = &line;
            }
        }
        if (worst == nullptr)
            continue;
        notes.add(Limit::MountedAngle,
            worst->piece,
            seen,
            Says::tr("Where it hangs on %1, %2 is hard to read from %3, %4 cm above the floor.")
                .arg(hung->wall->name,
                    called(panel, worst->piece),
                    reader.who,
                    number(reader.eyes.value() / 10, 0)));
    }
}

} // namespace wainscot::check
