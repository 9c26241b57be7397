// What the panel would become, worked out without touching the book.
#include "app/ui/compose/desk.h"

#include <algorithm>
#include <cmath>

#include "app/jobs/placed_panel.h"
#include "app/jobs/why_job.h"
#include "app/ui/kit/surfaces.h"
#include "app/ui/session/piece_edits.h"
#include "layout/typeset/measurer.h"
#include "layout/typeset/typesetter.h"

namespace wainscot::ui {

namespace {

bool sameText(const std::vector<ClearedPiece>& a, const std::vector<ClearedPiece>& b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const auto& x, const auto& y) {
        return x.id == y.id && x.text == y.text && x.heading == y.heading && x.name == y.name
            && x.status == y.status && x.language == y.language;
    });
}

// "2 rows down", "1 column to the left": the longer way.
QString wayFrom(const Grid& grid, const RectMm& from, const RectMm& to)
{
    const int rows = int(std::lround((to.y - from.y) / grid.rowUnit));
    const int columns = int(std::lround((to.x - from.x) / (grid.column + grid.gutter)));
    if (rows == 0 && columns == 0)
        return Desk::tr("another size");
    if (std::abs((to.y - from.y).value()) >= std::abs((to.x - from.x).value())) {
        return counted(std::abs(rows),
            rows > 0 ? Desk::tr("1 row down") : Desk::tr("1 row up"),
            rows > 0 ? Desk::tr("%1 rows down") : Desk::tr("%1 rows up"));
    }
    return counted(std::abs(columns),
        columns > 0 ? Desk::tr("1 column to the right") : Desk::tr("1 column to the left"),
        columns > 0 ? Desk::tr("%1 columns to the right") : Desk::tr("%1 columns to the left"));
}

} // namespace

std::shared_ptr<const PanelMeasurer> Desk::measurerFor(const ClearedPanel& panel) const
{
    if (m_measurer && sameText(m_measured, panel.pieces()))
        return m_measurer;
    m_measured = panel.pieces();
    m_measurer =
        std::make_shared<PanelMeasurer>(m_measured, drawnPanel()->style, panel.display().language);
    return m_measurer;
}

Mm Desk::captionBlock(const Piece& piece, Mm width) const
{
    const DrawnPanel* drawn = drawnPanel();
    const Panel* panel = m_session.panel();
    if (drawn == nullptr || panel == nullptr || piece.text.isEmpty())
        return Mm(0);
    Piece named = piece;
    if (!named.id.isValid())
        named.id = kFreshPiece;
    const ClearedPanel cleared = rules()->clear(*panel, {named});
    const PanelMeasurer text(cleared.pieces(), drawn->style, m_drawn->display.language);
    const engine::TextMetrics metrics = text.measure(named.id.number(), width);
    return metrics.lines == 0 ? Mm(0) : metrics.height + text.spec(named.id.number()).captionGap;
}

Piece Desk::placedAt(const Piece& piece, const RectMm& cell) const
{
    Piece placed = piece;
    placed.cell = cell;
    placed.picturePlace = {};
    if (!isPicture(piece.kind))
        return placed;
    RectMm room = cell;
    const Mm caption = captionBlock(piece, cell.width);
    room.height = std::max(cell.height - caption, cell.height * 0.3);
    const Picture* picture = m_session.book().pictures.find(piece.picture);
    if (piece.kind == PieceKind::Work && picture != nullptr && !picture->size.isEmpty()) {
        // Whole, on a mat of 0.6 gutters that hugs it; several in a row stand on one line.
        const DrawnPanel* drawn = drawnPanel();
        const Mm mat = drawn != nullptr ? 0.6 * drawn->style.grid.gutter : Mm(0);
        const SizeMm most{room.width - 2 * mat, room.height - 2 * mat};
        const double aspect = picture->size.aspect();
        const Mm width = std::min(most.width, most.height * aspect);
        const SizeMm size{width, width / aspect};
        room = {room.x + mat, room.bottom() - mat - size.height, size.width, size.height};
    }
    placed.picturePlace = room;
    return placed;
}

DisplayList Desk::preview(const Piece& piece) const
{
    return typesetAs({piece});
}

DisplayList Desk::typesetAs(const std::vector<Piece>& pieces) const
{
    const Panel* panel = m_session.panel();
    const DrawnPanel* drawn = drawnPanel();
    if (panel == nullptr || drawn == nullptr)
        return {};
    return typeset(rules()->clear(*panel, pieces), drawn->style);
}

QStringList Desk::underneath(PieceId except, const RectMm& cell) const
{
    QStringList names;
    const Panel* panel = m_session.panel();
    if (panel == nullptr)
        return names;
    for (const Piece* other : piecesOf(m_session.book(), panel->id)) {
        if (other->id != except && !other->cell.isEmpty()
            && !intersection(other->cell, cell).isEmpty())
            names << nameFor(m_session.book(), *other);
    }
    return names;
}

std::vector<Piece> Desk::asTried(const std::vector<PlacedCell>& cells) const
{
    std::vector<Piece> tried;
    if (m_session.panel() == nullptr)
        return tried;
    for (const Piece* own : piecesOf(m_session.book(), m_session.panel()->id)) {
        tried.push_back(*own);
        for (const PlacedCell& placed : cells) {
            if (placed.piece != own->id)
                continue;
            tried.back() = placedAt(*own, placed.cell);
            tried.back().pinned = true;
        }
    }
    return tried;
}

ClearedPanel Desk::clearedAs(std::vector<Piece> pieces) const
{
    return clearedWithPlaces(*rules(), m_session.book(), *m_session.panel(), std::move(pieces));
}

QStringList Desk::whyHere(PieceId id) const
{
    const Piece* own = piece(id);
    if (own == nullptr)
        return {};
    const Result<WhyOutcome> why = WhyJob{own->panel, id, false}.run(m_session.book(), {});
    return why ? why->says : QStringList();
}

void Desk::tryCells(const std::vector<PlacedCell>& cells)
{
    PieceIds inHand;
    for (const PlacedCell& placed : cells)
        inHand.push_back(placed.piece);
    ask(asTried(cells), inHand);
}

void Desk::tryIncoming(const Incoming& incoming, const RectMm& cell)
{
    std::optional<Piece> fresh = likely(incoming);
    if (!fresh || drawnPanel() == nullptr)
        return;
    fresh->id = kFreshPiece;
    if (isPicture(fresh->kind) && !fresh->picture.isValid())
        fresh->kind = PieceKind::Context; // an empty place as large as a photo
    std::vector<Piece> tried = asTried({});
    fresh->order = tried.empty() ? 1 : tried.back().order + 1;
    *fresh = placedAt(*fresh, cell);
    fresh->pinned = true;
    tried.push_back(*fresh);
    ask(std::move(tried), {kFreshPiece});
}

// Only what lies under the hand has to make room; else nothing moves and nothing need be asked.
void Desk::ask(std::vector<Piece> tried, const PieceIds& inHand)
{
    const auto isInHand = [&](const Piece& piece) {
        return std::find(inHand.begin(), inHand.end(), piece.id) != inHand.end();
    };
    const bool covers = std::any_of(tried.begin(), tried.end(), [&](const Piece& hand) {
        return isInHand(hand) && std::any_of(tried.begin(), tried.end(), [&](const Piece& other) {
            return !isInHand(other) && !intersection(hand.cell, other.cell).isEmpty();
        });
    });
    if (!covers) {
        m_live.forget();
        Q_EMIT m_live.answered(tried);
        return;
    }
    const DrawnPanel* drawn = drawnPanel();
    const ClearedPanel cleared = clearedAs(tried);
    m_live.ask(tried, Rearrangement(cleared, drawn->style, tried, measurerFor(cleared), inHand));
}

QStringList Desk::movesTo(const std::vector<Piece>& pieces) const
{
    QStringList moves;
    const DrawnPanel* drawn = drawnPanel();
    if (drawn == nullptr)
        return moves;
    for (const Piece& arranged : pieces) {
        const Piece* own = piece(arranged.id);
        if (own == nullptr || arranged.pinned || arranged.cell == own->cell)
            continue;
        moves << tr("%1: %2.").arg(beginningOf(nameFor(m_session.book(), *own), 40),
            wayFrom(drawn->style.grid, own->cell, arranged.cell));
    }
    return moves;
}

} // namespace wainscot::ui
