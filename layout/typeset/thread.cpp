#include "layout/typeset/thread.h"

#include <algorithm>

namespace wainscot {

namespace {

constexpr double kThickness = 0.13; // body caps
constexpr double kKnotRadius = 0.55; // caption caps
constexpr double kAboveLabels = 0.7; // rows
constexpr Mm kLevel{0.5}; // labels whose tops differ by less stand on one line

// The labels from left to right, where all of them stand on one line.
std::vector<const ClearedPiece*> meetingLabels(const std::vector<ClearedPiece>& pieces)
{
    std::vector<const ClearedPiece*> labels;
    for (const ClearedPiece& piece : pieces) {
        if (piece.kind == PieceKind::Label && !piece.cell.isEmpty())
            labels.push_back(&piece);
    }
    if (labels.empty())
        return {};
    const Mm top = labels.front()->cell.y;
    const bool level = std::all_of(labels.begin(), labels.end(), [&](const ClearedPiece* label) {
        return label->cell.y - top < kLevel && top - label->cell.y < kLevel;
    });
    if (!level)
        return {}; // the panel was arranged freely: no line goes through its days
    std::sort(labels.begin(), labels.end(), [](const ClearedPiece* a, const ClearedPiece* b) {
        return a->cell.x < b->cell.x;
    });
    return labels;
}

} // namespace

Thread threadOf(const std::vector<ClearedPiece>& pieces, const PanelStyle& style)
{
    const std::vector<const ClearedPiece*> labels = meetingLabels(pieces);
    const Mm room = 3 * style.grid.rowUnit; // for the pictures that stand on it
    if (labels.size() < 2 || labels.front()->cell.y < style.grid.margin + room)
        return {};
    const Grid& grid = style.grid;
    const QRgb colour = style.palette.accent;
    const Mm thick = kThickness * style.scale.body;
    const Mm radius = kKnotRadius * style.scale.caption();
    const Mm y = labels.front()->cell.y - kAboveLabels * grid.rowUnit;
    const Mm from = labels.front()->cell.x;
    const Mm to = grid.panel.width - grid.margin;
    Thread thread;
    // The line begins at its first knot and ends where the ring begins.
    thread.lines.push_back(
        {{from + radius, y - thick / 2, to - from - 3 * radius + thick, thick}, colour});
    for (const ClearedPiece* label : labels)
        thread.knots.push_back({{label->cell.x + radius, y}, radius, Mm(), colour});
    thread.knots.push_back({{to - radius, y}, radius, thick, colour});
    return thread;
}

} // namespace wainscot
