// A photo of a wall shows whatever hung there: pictures, words and names that can be read.
#include "core/permit/cleared.h"
#include "core/permit/reasons.h"

#include <algorithm>

namespace wainscot {

namespace {

// What can be read of a piece where a name might stand.
bool sameTexts(const ClearedPiece& a, const ClearedPiece& b)
{
    return a.text == b.text && a.name == b.name && a.heading == b.heading
        && a.secondText == b.secondText;
}

// The name hung there, and may not any more.
bool withdrawnSince(const Book& book, ChildId child, Audience audience, const Picture& photo)
{
    const auto& rows = book.permissionRecords.rows();
    return std::any_of(rows.begin(), rows.end(), [&](const auto& row) {
        const PermissionRecord& said = row.second;
        const bool later = !photo.hungOn || !said.on || *said.on >= *photo.hungOn;
        return said.child == child && said.audience == audience && later
            && (said.answer(Permission::FirstName) == FamilyAnswer::Withdrawn
                || said.answer(Permission::PhotoWithName) == FamilyAnswer::Withdrawn);
    });
}

} // namespace

std::optional<QString> PermissionRules::refusalOfWall(const Picture& photo) const
{
    const Display* hung = m_book.displays.find(photo.display);
    if (hung == nullptr)
        return reasons::pictureGone();
    const PermissionRules there(m_book, *hung, m_on);
    for (const Panel* panel : panelsOf(m_book, hung->id)) {
        for (const Piece* piece : piecesOf(m_book, panel->id)) {
            const Quote* quote = m_book.quotes.find(piece->quote);
            const Picture* picture = m_book.pictures.find(piece->picture);
            std::optional<QString> why;
            if (quote != nullptr)
                why = refusal(*quote);
            else if (picture != nullptr && !picture->display.isValid())
                why = refusal(*picture);
            if (why)
                return reasons::hungThere(photo, *why);
        }
        if (namesMoreThanAllowed(*panel, there, photo))
            return reasons::namedThere(photo, m_display.audience);
    }
    return std::nullopt;
}

bool PermissionRules::namesMoreThanAllowed(
    const Panel& panel, const PermissionRules& there, const Picture& photo) const
{
    const ClearedPanel here = clear(panel);
    const ClearedPanel hung = there.clear(panel);
    const auto& left = here.leftOut();
    const bool withdrawn = std::any_of(left.begin(), left.end(), [&](const LeftOut& one) {
        return one.what == QLatin1String("name")
            && withdrawnSince(m_book, ChildId(one.id), hung.audience(), photo);
    });
    if (withdrawn || here.title() != hung.title())
        return true;
    return std::any_of(here.pieces().begin(), here.pieces().end(), [&](const ClearedPiece& piece) {
        const auto& all = hung.pieces();
        const auto same = std::find_if(all.begin(), all.end(), [&](const ClearedPiece& other) {
            return other.id == piece.id;
        });
        return same != all.end() && !sameTexts(piece, *same);
    });
}

} // namespace wainscot
