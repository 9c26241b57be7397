// A teacher's own template: which pieces come onto a panel, in which order, and what each of them
// wishes for. Lengths are shares of the panel, so that a template serves every size.
#pragma once

#include "core/model/display.h"

#include <vector>

namespace wainscot {

inline constexpr int kTemplateColumns = 12;

// The place one piece takes. Zero or -1 = nothing wished.
struct TemplateSlot {
    PieceKind kind = PieceKind::Quote;
    int group = 0; // slots with the same number > 0 stand together
    int column = -1; // it begins there, 0..11
    int columns = 0; // its width, 1..12
    double rows = 0; // its height, share of the height between the margins, 0..1
    double area = 0; // of a picture, share of the panel, 0..1
    bool dominant = false; // the one large picture
    bool optional = false; // left out before anything else when there is no room
    bool fixed = false; // stays exactly at column, columns, top and rows
    double top = 0; // of a fixed piece, share of the height between the margins, 0..1
    friend bool operator==(const TemplateSlot&, const TemplateSlot&) = default;
};

struct PanelTemplate {
    TemplateId id;
    QString name;
    SizeMm panelSize{Mm(841), Mm(594)}; // of the panel it was made from
    QString pairing = QStringLiteral("Schoolroom");
    QString palette = QStringLiteral("Wet Slate");
    int voiceStep = 2; // of the type scale
    std::vector<TemplateSlot> places; // in reading order
    friend bool operator==(const PanelTemplate&, const PanelTemplate&) = default;
};

inline constexpr int kMostSlots = 60;

// The template that a panel hangs by: every placed piece a slot, pinned ones fixed. The adult's
// further texts (credits, interpretation, next step) are optional.
[[nodiscard]] PanelTemplate templateOf(
    const Display& display, const std::vector<const Piece*>& pieces);

} // namespace wainscot
