#include "layout/wall/cover.h"

#include <QtGlobal>

#include <algorithm>
#include <array>

namespace wainscot::wall {

namespace {

// Thousandths of a percent: sums of rounded areas must not fail a limit that is kept.
constexpr double kRounding = 1e-9;

struct Stretch {
    Mm from;
    Mm to;
};

// The panels as far as they lie on the wall.
std::vector<RectMm> onTheWall(const Covered& covered)
{
    const RectMm wall{Mm(0), Mm(0), covered.wall.width, covered.wall.height};
    std::vector<RectMm> inside;
    for (const RectMm& panel : covered.panels) {
        const RectMm part = intersection(panel, wall);
        if (!part.isEmpty())
            inside.push_back(part);
    }
    return inside;
}

// Sorted, and what is not more than `apart` from the one before is one with it.
std::vector<Stretch> joined(std::vector<Stretch> stretches, Mm apart)
{
    std::sort(stretches.begin(), stretches.end(), [](const Stretch& a, const Stretch& b) {
        return a.from < b.from;
    });
    std::vector<Stretch> whole;
    for (const Stretch& one : stretches) {
        if (!whole.empty() && one.from - whole.back().to <= apart)
            whole.back().to = std::max(whole.back().to, one.to);
        else
            whole.push_back(one);
    }
    return whole;
}

// How much of the height is covered everywhere between two neighbouring upright edges.
Mm coveredHeight(const std::vector<RectMm>& panels, Mm left, Mm right)
{
    std::vector<Stretch> across;
    for (const RectMm& panel : panels) {
        if (panel.x <= left && panel.right() >= right)
            across.push_back({panel.y, panel.bottom()});
    }
    Mm height;
    for (const Stretch& one : joined(std::move(across), Mm(0)))
        height += one.to - one.from;
    return height;
}

constexpr std::array<CoverLimit, 5> kLimits{
    CoverLimit{"5",
        0.05,
        QT_TRANSLATE_NOOP("Says", "Chicago Municipal Code 15-4-620, of all walls of a room")},
    CoverLimit{"10",
        0.10,
        QT_TRANSLATE_NOOP(
            "Says", "IFC 2012 807.1.2, material that passed NFPA 701, quoted second-hand")},
    CoverLimit{"20",
        0.20,
        QT_TRANSLATE_NOOP(
            "Says", "NFPA 101 for schools and day care without sprinklers, NFPA Journal 2012")},
    CoverLimit{"20-corridor",
        0.20,
        QT_TRANSLATE_NOOP("Says", "IFC 2012 807.4.3.2, school corridors, quoted second-hand")},
    CoverLimit{"50",
        0.50,
        QT_TRANSLATE_NOOP(
            "Says", "NFPA 101 for schools and day care with sprinklers, NFPA Journal 2012")},
};

constexpr RunLimit kRun{Mm(3000),
    Mm(1000),
    QT_TRANSLATE_NOOP("Says", "Building Bulletin 100 (2007) 3.1.6, quoted second-hand")};

} // namespace

double coveredAreaMm2(const Covered& covered)
{
    const std::vector<RectMm> panels = onTheWall(covered);
    std::vector<Mm> edges;
    for (const RectMm& panel : panels) {
        edges.push_back(panel.x);
        edges.push_back(panel.right());
    }
    std::sort(edges.begin(), edges.end());
    double area = 0;
    for (std::size_t i = 1; i < edges.size(); ++i) {
        const Mm width = edges[i] - edges[i - 1];
        if (width > Mm(0))
            area += width.value() * coveredHeight(panels, edges[i - 1], edges[i]).value();
    }
    return area;
}

double coveredShare(const Covered& covered)
{
    if (covered.wall.isEmpty())
        return 0;
    return coveredAreaMm2(covered) / (covered.wall.width.value() * covered.wall.height.value());
}

std::span<const CoverLimit> coverLimits()
{
    return kLimits;
}

bool keepsLimit(const Covered& covered, const CoverLimit& limit)
{
    return coveredShare(covered) <= limit.share + kRounding;
}

Runs runsOf(const Covered& covered, Mm apart)
{
    std::vector<Stretch> stretches;
    for (const RectMm& panel : onTheWall(covered))
        stretches.push_back({panel.x, panel.right()});
    // Exactly `apart` is far enough, so only what is nearer is joined.
    const std::vector<Stretch> runs = joined(std::move(stretches), apart - Mm(kRounding));
    Runs found;
    for (std::size_t i = 0; i < runs.size(); ++i) {
        found.widest = std::max(found.widest, runs[i].to - runs[i].from);
        if (i > 0) {
            const Mm gap = runs[i].from - runs[i - 1].to;
            found.leastGap = i == 1 ? gap : std::min(found.leastGap, gap);
        }
    }
    return found;
}

const RunLimit& runLimit()
{
    return kRun;
}

} // namespace wainscot::wall
