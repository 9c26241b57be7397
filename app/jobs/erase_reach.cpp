#include "app/jobs/erase_reach.h"

#include "core/model/wall_photo.h"

namespace wainscot {

EraseReach::EraseReach(const Book& book, ChildId child, const KeptPictures& kept)
    : m_book(book)
    , m_child(child)
    , m_kept(kept)
{
}

bool EraseReach::has(const Picture& picture) const
{
    return shows(m_book, picture, m_child) && m_kept.count(picture.id) == 0;
}

bool EraseReach::has(QuoteId id) const
{
    const Quote* quote = m_book.quotes.find(id);
    return quote != nullptr && has(*quote);
}

bool EraseReach::has(PictureId id) const
{
    const Picture* picture = m_book.pictures.find(id);
    return picture != nullptr && has(*picture);
}

bool EraseReach::has(const Piece& piece) const
{
    return has(piece.quote) || has(piece.picture);
}

bool EraseReach::has(const Translation& translation) const
{
    return has(translation.quote) || has(translation.picture);
}

bool EraseReach::has(const KeptPair& pair) const
{
    return has(pair.answer) || has(pair.other);
}

} // namespace wainscot
