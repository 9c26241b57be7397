#include "app/jobs/carried_over.h"

#include <algorithm>

namespace wainscot {

CarriedOver::CarriedOver(const Book& book, DisplayId display)
{
    for (const Panel* panel : panelsOf(book, display)) {
        for (const Piece* piece : piecesOf(book, panel->id))
            m_pieces.push_back(*piece);
    }
}

const Piece* CarriedOver::sameAs(const Piece& piece) const
{
    const auto same = [&](const Piece& old) {
        if (old.kind != piece.kind)
            return false;
        if (piece.quote.isValid())
            return old.quote == piece.quote && old.language == piece.language;
        if (piece.picture.isValid())
            return old.picture == piece.picture;
        return old.text == piece.text;
    };
    const auto found = std::find_if(m_pieces.begin(), m_pieces.end(), same);
    return found == m_pieces.end() ? nullptr : &*found;
}

void CarriedOver::onto(Piece& piece) const
{
    const Piece* old = sameAs(piece);
    if (old == nullptr)
        return;
    piece.size = old->size;
    piece.together = old->together;
    piece.startsPanel = old->startsPanel;
    piece.framing = old->framing;
    piece.shownWords = old->shownWords;
    piece.pairing = old->pairing;
    piece.palette = old->palette;
    if (piece.picture.isValid() && !old->text.isEmpty())
        piece.text = old->text;
}

} // namespace wainscot
