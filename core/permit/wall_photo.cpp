// A photo of a wall shows whatever hung there: pictures, words and names that can be read.
#include "core/permit/cleared.h"
#include "core/permit/reasons.h"

#include <algorithm>
#include <set>

namespace wainscot {

namespace {

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

// Who can be read on a panel as it hung, and is not to be read here. What hung there with fewer
// names than may be read here is no hindrance.
class NamesThatHung {
public:
    // `here` has seen everybody who is on the wall and in front of it.
    NamesThatHung(const Book& book,
        const PermissionRules& here,
        const PermissionRules& there,
        const Panel& panel,
        const Picture& photo)
        : m_book(book)
        , m_here(here)
        , m_there(there)
    {
        const ClearedPanel hung = there.clear(panel);
        const ClearedPanel shown = here.clear(panel);
        m_audience = shown.audience();
        readTexts(hung);
        for (const ClearedPiece& piece : hung.pieces())
            readAttribution(piece);
        for (const LeftOut& left : shown.leftOut()) {
            const ChildId child(left.id);
            if (left.what == QLatin1String("name")
                && withdrawnSince(book, child, hung.audience(), photo))
                m_unnamed.insert(child);
        }
    }

    // Nothing = they may all be read.
    [[nodiscard]] std::optional<QString> why(const Picture& photo) const
    {
        if (!m_unnamed.empty())
            return reasons::namedThere(photo, childrenOf(m_unnamed), m_audience);
        if (!m_together.empty())
            return reasons::namedAndSeenThere(photo, childrenOf(m_together), m_audience);
        if (!m_aged.empty())
            return reasons::ageThere(photo, childrenOf(m_aged), m_audience);
        return std::nullopt;
    }

private:
    void readTexts(const ClearedPanel& hung)
    {
        const NameFinder names(m_book.children);
        const auto read = [&](const QString& text) {
            for (const NameFinder::Found& found : names.in(text)) {
                for (const ChildId id : found.who)
                    named(*m_book.children.find(id));
            }
        };
        read(hung.title());
        for (const ClearedPiece& piece : hung.pieces()) {
            for (const QString& text : {piece.heading, piece.text, piece.secondText})
                read(text);
        }
    }

    // "Mei, 5" under what Mei said.
    void readAttribution(const ClearedPiece& piece)
    {
        const Piece* own = m_book.pieces.find(piece.id);
        const Quote* quote = own != nullptr ? m_book.quotes.find(own->quote) : nullptr;
        const Child* child = quote != nullptr ? m_book.children.find(quote->child) : nullptr;
        if (child == nullptr || m_there.namingRefusal(*child))
            return;
        named(*child);
        const qsizetype name = displayName(*child).size();
        const QString age = piece.name.mid(name);
        const bool isExact = !age.isEmpty() && !age.contains(QStringLiteral(" to "));
        if (!m_here.namingRefusal(*child) && isExact && m_here.shownName(*child).mid(name) != age)
            m_aged.insert(child->id);
    }

    void named(const Child& child)
    {
        if (!m_here.namingRefusal(child))
            return;
        const bool alone = child.permissions.allows(Permission::FirstName, m_audience);
        (alone ? m_together : m_unnamed).insert(child.id);
    }

    [[nodiscard]] std::vector<const Child*> childrenOf(const std::set<ChildId>& ids) const
    {
        std::vector<const Child*> children;
        for (const ChildId id : ids) {
            if (const Child* child = m_book.children.find(id))
                children.push_back(child);
        }
        return children;
    }

    const Book& m_book;
    const PermissionRules& m_here;
    const PermissionRules& m_there;
    Audience m_audience = Audience::Classroom;
    std::set<ChildId> m_unnamed; // without permission to be named
    std::set<ChildId> m_together; // named alone they might be, but they are seen too
    std::set<ChildId> m_aged; // named they may be, but not with their age
};

} // namespace

std::optional<QString> PermissionRules::refusalOfWall(const Picture& photo) const
{
    const Display* hung = m_book.displays.find(photo.display);
    if (hung == nullptr)
        return reasons::pictureGone();
    // Who is in a picture that hangs there, or stands in front of it, is seen in the photo.
    PermissionRules here = *this;
    for (const ChildId child : photo.people.children) {
        if (!here.isSeen(child))
            here.m_seen.push_back(child);
    }
    QStringList whys;
    const auto panels = panelsOf(m_book, hung->id);
    for (const Panel* panel : panels) {
        for (const Piece* piece : piecesOf(m_book, panel->id)) {
            here.seePieceOf(*piece);
            const Quote* quote = m_book.quotes.find(piece->quote);
            const Picture* picture = m_book.pictures.find(piece->picture);
            std::optional<QString> why;
            if (quote != nullptr)
                why = refusal(*quote);
            else if (picture != nullptr && !picture->display.isValid())
                why = refusal(*picture);
            if (why && !whys.contains(*why))
                whys << *why;
        }
    }
    if (!whys.isEmpty())
        return reasons::hungThere(photo, whys);
    const PermissionRules there(m_book, *hung, m_on);
    for (const Panel* panel : panels) {
        if (const auto why = NamesThatHung(m_book, here, there, *panel, photo).why(photo))
            return why;
    }
    return std::nullopt;
}

} // namespace wainscot
