#include "core/model/panel_template.h"

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

// Margin and gutter of a panel follow from its short side (see layout/typeset/style.h).
constexpr double kMarginsPerShortSide = 18;
constexpr double kGuttersPerShortSide = 42;

// Shares are kept to a thousandth: less than a millimetre on the largest paper.
double rounded(double share)
{
    return std::round(std::clamp(share, 0.0, 1.0) * 1000) / 1000;
}

bool mayBeLeftOut(PieceKind kind)
{
    return kind == PieceKind::Credits || kind == PieceKind::Interpretation
        || kind == PieceKind::NextStep;
}

TemplateSlot slotOf(const Piece& piece, SizeMm panel)
{
    const Mm shortSide = std::min(panel.width, panel.height);
    const Mm margin = shortSide / kMarginsPerShortSide;
    const Mm gutter = shortSide / kGuttersPerShortSide;
    const Mm pitch = (panel.width - 2 * margin + gutter) / kTemplateColumns;
    const Mm height = panel.height - 2 * margin + gutter;
    TemplateSlot slot;
    slot.kind = piece.kind;
    slot.group = piece.group;
    slot.dominant = piece.dominant;
    slot.optional = mayBeLeftOut(piece.kind) && !piece.pinned;
    slot.fixed = piece.pinned;
    slot.column = std::clamp(
        static_cast<int>(std::lround((piece.cell.x - margin) / pitch)), 0, kTemplateColumns - 1);
    slot.columns = std::clamp(static_cast<int>(std::lround((piece.cell.width + gutter) / pitch)),
        1,
        kTemplateColumns - slot.column);
    slot.rows = rounded((piece.cell.height + gutter) / height);
    if (piece.pinned)
        slot.top = rounded((piece.cell.y - margin) / height);
    if (isPicture(piece.kind) && !piece.picturePlace.isEmpty()) {
        const RectMm& shown = piece.picturePlace;
        slot.area = rounded(shown.width.value() * shown.height.value()
            / (panel.width.value() * panel.height.value()));
    }
    return slot;
}

} // namespace

PanelTemplate templateOf(const Display& display, const std::vector<const Piece*>& pieces)
{
    PanelTemplate made;
    made.panelSize = display.panelSize;
    made.pairing = display.pairing;
    made.palette = display.palette;
    if (display.voiceStep != 0)
        made.voiceStep = display.voiceStep;
    for (const Piece* piece : pieces) {
        if (!piece->cell.isEmpty())
            made.places.push_back(slotOf(*piece, display.panelSize));
    }
    return made;
}

} // namespace wainscot
