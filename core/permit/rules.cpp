#include "core/permit/cleared.h"

#include "core/permit/reasons.h"

#include <algorithm>

namespace wainscot {

PermissionRules::PermissionRules(
    const Book& book, const Display& display, QDate on, const std::vector<PictureId>& coming)
    : m_book(book)
    , m_display(display)
    , m_on(on)
    , m_names(book.children)
{
    bool isEmpty = true;
    for (const Panel* panel : panelsOf(book, display.id)) {
        for (const Piece* piece : piecesOf(book, panel->id)) {
            isEmpty = false;
            seePieceOf(*piece);
        }
    }
    if (isEmpty) {
        for (const Picture* picture : picturesOf(book, display.experience))
            see(picture);
    }
    for (const PictureId id : coming)
        see(book.pictures.find(id));
}

// A picture that is not cleared will not hang, so nobody is seen in it.
void PermissionRules::see(const Picture* picture)
{
    if (!picture || picture->kind != PictureKind::Photo || refusal(*picture))
        return;
    for (const ChildId child : picture->people.children) {
        if (!isSeen(child))
            m_seen.push_back(child);
    }
}

// A photo of a wall is no piece: it would show the panel it stands on.
void PermissionRules::seePieceOf(const Piece& piece)
{
    const Picture* picture = m_book.pictures.find(piece.picture);
    if (picture != nullptr && !picture->display.isValid())
        see(picture);
}

bool PermissionRules::isSeen(ChildId child) const
{
    return std::find(m_seen.begin(), m_seen.end(), child) != m_seen.end();
}

std::optional<QString> PermissionRules::refusal(const Quote& quote) const
{
    const Child* child = m_book.children.find(quote.child);
    if (!child)
        return reasons::speakerGone();
    if (!child->permissions.allows(Permission::Words, m_display.audience))
        return reasons::notQuoted(*child, m_display.audience);
    return std::nullopt;
}

std::optional<QString> PermissionRules::refusal(const Picture& picture) const
{
    if (!picture.people.lookedAt)
        return reasons::nobodyLooked(picture);
    const Permission needed =
        picture.kind == PictureKind::Photo ? Permission::Photo : Permission::Work;
    std::vector<const Child*> refused;
    for (const ChildId id : picture.people.children) {
        const Child* child = m_book.children.find(id);
        if (!child)
            return reasons::strangerInPicture(picture);
        if (!child->permissions.allows(needed, m_display.audience))
            refused.push_back(child);
    }
    if (!refused.empty())
        return reasons::notShown(picture, refused, m_display.audience);
    if (picture.display.isValid() && picture.panelsLegible)
        return refusalOfWall(picture);
    return std::nullopt;
}

std::optional<QString> PermissionRules::namingRefusal(const Child& child) const
{
    if (!child.permissions.allows(Permission::FirstName, m_display.audience))
        return reasons::notNamed(child, m_display.audience, aChild(wallLanguage()));
    if (isSeen(child.id)
        && !child.permissions.allows(Permission::PhotoWithName, m_display.audience))
        return reasons::seenSoNotNamed(child, m_display.audience, aChild(wallLanguage()));
    return std::nullopt;
}

bool PermissionRules::mayBeNamed(const Child& child) const
{
    return !namingRefusal(child);
}

} // namespace wainscot
