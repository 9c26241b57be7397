// Rulers along the top and the left of the stage, from the panel's own corner.
#pragma once

#include <QRect>
#include <QString>

#include <vector>

#include "app/ui/canvas/view_map.h"

class QPainter;

namespace wainscot::ui {

inline constexpr int kRulerPx = 20; // at 100 % text

struct Tick {
    Mm at; // from the panel's corner
    int rank = 0; // 0 = with a number, 1 = half, 2 = the smallest
    QString label; // rank 0 only
    friend bool operator==(const Tick&, const Tick&) = default;
};

// The lines of a ruler over `length`, at least 5 px apart and numbers at least 40 px: steps of 1,
// 2, 5 x 10^n mm, or of 1/16 to 12 inches.
[[nodiscard]] std::vector<Tick> ticksFor(Mm length, double pxPerMm, bool inches);

// "12.5 mm", "0.49 in".
[[nodiscard]] QString lengthText(Mm length, bool inches);

void paintRulers(
    QPainter& painter, const QRect& area, const ViewMap& view, SizeMm panel, bool inches);

} // namespace wainscot::ui
