// What a measured wall with its panels comes to: what is covered, who can read what, and the list
// to hang by.
#pragma once

#include "core/base/finding.h"
#include "core/model/book.h"
#include "layout/wall/cover.h"
#include "layout/wall/stature.h"

#include <optional>
#include <vector>

namespace wainscot {

// Where a nail goes in.
struct Nail {
    Mm left; // from the wall's left edge
    Mm up; // from the floor
};

// One line of the list: where a panel hangs, from the floor and from the wall's left edge.
struct HangingLine {
    PanelId panel;
    QString name; // "Hallway, panel 1"
    SizeMm size;
    RectMm place; // from the wall's upper left corner
    Mm bottom; // above the floor
    Mm top;
    [[nodiscard]] Mm left() const { return place.x; }
    [[nodiscard]] Mm right() const { return place.right(); }
    [[nodiscard]] Mm middle() const { return bottom + (top - bottom) / 2; }
    // Two, kNailDrop under the upper edge and a tenth of the width from each side; one in the
    // middle of a panel narrower than 250 mm. Common practice, no source.
    [[nodiscard]] std::vector<Nail> nails() const;
};

inline constexpr Mm kNailDrop{20};
inline constexpr Mm kBoardBorder{8}; // around a panel; 5 to 10 mm (common practice, no source)

// The board a panel is mounted on, and how often.
struct CutLine {
    SizeMm board; // the panel with a border on all sides
    int count = 0;
};

struct WallPlan {
    std::vector<HangingLine> list; // from the left
    std::vector<CutLine> boards; // largest first
    double coveredShare = 0; // 0 to 1
    wall::CoverLimit limit;
    wall::EyeBand children;
    wall::EyeBand grownUps;
    std::vector<Finding> findings; // `panel` = its place in the list, from 1
};

// How far a panel on its board stands out from the wall, unless somebody measured it.
inline constexpr Mm kUsualStandOut{10}; // common practice, no source
// `standsOut`: what hangs there at most, from the wall.
[[nodiscard]] WallPlan planOf(const Book& book, const Wall& wall, Mm standsOut = kUsualStandOut);
// What is between these heights and stands out further is walked into: the leading edges of 27 to
// 80 in above the floor and 4 in of the ADA Standards, 307.2.
[[nodiscard]] std::optional<Finding> protrusionOf(
    const HangingLine& line, int number, Mm standsOut);

// The panels of a display on one centre line at the eyes of the wall's viewers, clear of fittings
// and of other displays' panels. Panels without room are not on the wall any more.
[[nodiscard]] Wall withProposedPlaces(const Book& book, const Wall& wall, DisplayId display);

// The preset a wall is measured by; the one of 20 % for a name that is not known.
[[nodiscard]] const wall::CoverLimit& coverLimitCalled(const QString& name);

// "door", "exit sign", in the language of the program that runs.
[[nodiscard]] QString inWords(FittingKind kind);
// "72 7/8 in", "-3/8 in": to an eighth, as rules are divided.
[[nodiscard]] QString inchesInWords(Mm length);

} // namespace wainscot
