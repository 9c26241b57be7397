// What a teacher did to a piece, kept when a display is proposed anew.
#pragma once

#include "core/model/book.h"

#include <vector>

namespace wainscot {

// The pieces that stood on a display.
class CarriedOver {
public:
    CarriedOver(const Book& book, DisplayId display);

    // Gives a new piece what was done to the one that showed the same words, picture or text: its
    // size, what it is kept together with, where a panel begins, framing, shortened words, caption,
    // colours and letters.
    // `beside`: the draft the piece is on; the label of a moment is known by its words.
    void onto(Piece& piece, const std::vector<Piece>& beside) const;

private:
    [[nodiscard]] const Piece* sameAs(const Piece& piece, const std::vector<Piece>& beside) const;
    std::vector<Piece> m_pieces;
};

} // namespace wainscot
