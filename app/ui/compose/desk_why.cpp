// Why a piece stands where it does: only what is true of it, from the book and its style.
#include "app/ui/compose/desk.h"

#include "app/ui/kit/surfaces.h"
#include "app/ui/session/piece_edits.h"

namespace wainscot::ui {

namespace {

constexpr double kArcminutesOfBody = 20; // panel-style: the body subtends this at the distance

QString sizeOfText(const Piece& piece, const PanelStyle& style)
{
    const bool child = piece.kind == PieceKind::Quote;
    const Mm cap = child ? style.scale.voice() : style.scale.body;
    return Desk::tr("Its capitals are %1 mm high, because it is read from %2 m (%3 arcminutes).")
        .arg(cap.value(), 0, 'f', 1)
        .arg(style.readingDistance.value() / 1000, 0, 'g', 2)
        .arg(child ? arcminutes(cap, style.readingDistance) : kArcminutesOfBody, 0, 'f', 0);
}

} // namespace

QStringList Desk::whyHere(PieceId id) const
{
    const Piece* own = piece(id);
    const DrawnPanel* drawn = drawnPanel();
    QStringList why;
    if (own == nullptr || drawn == nullptr)
        return why;
    if (own->pinned)
        why << tr("You put it here. No arranging moves it.");
    if (own->dominant)
        why << tr("It leads the panel, so it is the largest picture.");
    const auto all = piecesOf(m_session.book(), own->panel);
    int together = 0;
    const Piece* before = nullptr;
    for (const Piece* other : all) {
        together += own->group > 0 && other->group == own->group ? 1 : 0;
        if (other->order < own->order)
            before = other;
    }
    if (together > 1)
        why << tr("It stands in one block with the %1 it belongs to.")
                   .arg(counted(together - 1, tr("piece"), tr("%1 pieces")));
    if (before != nullptr)
        why << tr("It is read after %1.").arg(beginningOf(nameFor(m_session.book(), *before), 40));
    else
        why << tr("It is read first.");
    if (!isPicture(own->kind) && own->kind != PieceKind::Title)
        why << sizeOfText(*own, drawn->style);
    return why;
}

} // namespace wainscot::ui
