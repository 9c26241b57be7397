// Lines for families to write on, below an invitation.
#pragma once

#include "layout/typeset/piece_text.h"

#include <vector>

namespace wainscot {

struct WritingRoom {
    PieceId piece;
    RectMm cell;
    Mm first; // y of the first line
    WritingSpace space;
};

struct WritingLine {
    PieceId piece;
    RectMm rect;
};

// To the foot of the cell, and at least as many as the space asks for. Invitations in two languages
// stand side by side; the lines below them are for both, from edge to edge.
[[nodiscard]] std::vector<WritingLine> writingLines(const std::vector<WritingRoom>& rooms);

} // namespace wainscot
