#include "app/jobs/carried_over.h"

#include "app/jobs/sentences.h"

#include <algorithm>

namespace wainscot {

namespace {

// The words of the moment that a piece belongs to.
QuoteId quoteBeside(const Piece& piece, const std::vector<Piece>& pieces)
{
    const auto found = std::find_if(pieces.begin(), pieces.end(), [&](const Piece& other) {
        return other.quote.isValid() && piece.group > 0 && other.group == piece.group
            && other.panel == piece.panel;
    });
    return found == pieces.end() ? QuoteId() : found->quote;
}

} // namespace

CarriedOver::CarriedOver(const Book& book, DisplayId display)
{
    for (const Panel* panel : panelsOf(book, display)) {
        for (const Piece* piece : piecesOf(book, panel->id))
            m_pieces.push_back(*piece);
    }
}

const Piece* CarriedOver::sameAs(const Piece& piece, const std::vector<Piece>& beside) const
{
    const QuoteId told = quoteBeside(piece, beside);
    const auto same = [&](const Piece& old) {
        if (old.kind != piece.kind)
            return false;
        if (old.kind == PieceKind::Label && told.isValid() && quoteBeside(old, m_pieces) != told)
            return false;
        if (piece.quote.isValid())
            return old.quote == piece.quote && old.language == piece.language;
        if (piece.picture.isValid())
            return old.picture == piece.picture;
        return withoutContinued(old.text) == piece.text;
    };
    const auto found = std::find_if(m_pieces.begin(), m_pieces.end(), same);
    return found == m_pieces.end() ? nullptr : &*found;
}

void CarriedOver::onto(Piece& piece, const std::vector<Piece>& beside) const
{
    const Piece* old = sameAs(piece, beside);
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
