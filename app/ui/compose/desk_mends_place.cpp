// Other places and frames that mend a finding: taken only when the check, run on the panel with
// them, no longer finds fault.
#include "app/ui/compose/desk.h"

#include <algorithm>

#include "app/jobs/kept_limits.h"
#include "app/ui/session/piece_edits.h"
#include "layout/check/check.h"
#include "layout/typeset/measurer.h"
#include "layout/typeset/typesetter.h"

namespace wainscot::ui {

namespace {

bool moves(const GridCell& cell, const GridCell& from)
{
    return !(cell == from);
}

// Where a piece could stand instead, the smallest change first.
std::vector<GridCell> otherCells(const QString& rule, const Grid& grid, const RectMm& from)
{
    const GridCell now = nearestCell(grid, from);
    std::vector<GridCell> cells{now};
    const auto wider = [&](int columns) {
        GridCell cell = now;
        cell.columns = std::clamp(now.columns + columns, 1, grid.columns);
        cell.column = std::min(now.column, grid.columns - cell.columns);
        if (moves(cell, now))
            cells.push_back(cell);
    };
    if (rule.startsWith(QLatin1String("line."))) {
        for (int less = 1; less < now.columns; ++less)
            wider(-less);
    } else if (rule.startsWith(QLatin1String("picture."))) {
        for (GridCell cell = stepped(grid, now, -1); moves(cell, cells.back());
             cell = stepped(grid, cell, -1))
            cells.push_back(cell);
    } else if (rule == QLatin1String("quote.apart") || rule == QLatin1String("entry.clear")) {
        for (int rows = 1; rows <= 3; ++rows) {
            GridCell cell = now;
            cell.row = std::min(now.row + rows, grid.rows - now.rows);
            cells.push_back(cell);
        }
    } else {
        for (const int columns : {1, -1, 2, -2, 3})
            wider(columns);
    }
    return cells;
}

} // namespace

GridCell Desk::holdingWords(PieceId id, GridCell cell) const
{
    const DrawnPanel* drawn = drawnPanel();
    const Grid& grid = drawn->style.grid;
    for (const ClearedPiece& cleared : drawn->cleared.pieces()) {
        if (cleared.id != id)
            continue;
        const PanelMeasurer text({cleared}, drawn->style, drawn->cleared.display().language);
        const Mm height = text.measure(id.number(), grid.width(cell.columns)).height;
        cell.rows = 1;
        while (cell.rows < grid.rows && grid.height(cell.rows) < height)
            ++cell.rows;
        cell.row = std::min(cell.row, grid.rows - cell.rows);
    }
    return cell;
}

bool Desk::isMendedBy(const Finding& finding, const Piece& tried) const
{
    std::vector<Piece> pieces = asTried({});
    for (Piece& one : pieces) {
        if (one.id == tried.id)
            one = tried;
    }
    const ClearedPanel cleared = clearedAs(pieces);
    const PanelStyle& style = drawnPanel()->style;
    check::PanelFacts facts = check::factsOf(cleared, style, typeset(cleared, style));
    facts.limits = keptLimits();
    const std::vector<Finding> found = check::checkPanel(facts);
    return std::none_of(found.begin(), found.end(), [&](const Finding& one) {
        return one.rule == finding.rule && (one.piece == finding.piece || finding.piece == 0);
    });
}

void Desk::mendPlace(PieceId id, const Finding& finding, const QString& does)
{
    const Piece* own = piece(id);
    if (own == nullptr || drawnPanel() == nullptr || own->cell.isEmpty())
        return;
    const Grid& grid = drawnPanel()->style.grid;
    for (GridCell cell : otherCells(finding.rule, grid, own->cell)) {
        if (!isPicture(own->kind))
            cell = holdingWords(id, cell);
        const RectMm there = rectOf(grid, cell);
        if (isMendedBy(finding, placedAt(*own, there))) {
            place({{id, there}}, does);
            return;
        }
    }
    Q_EMIT announced(tr("No place on this panel mends it. It needs more room or fewer words."));
}

void Desk::mendFrame(PieceId id, const Finding& finding, const QString& does)
{
    const Piece* own = piece(id);
    const Picture* picture =
        own != nullptr ? m_session.book().pictures.find(own->picture) : nullptr;
    if (picture == nullptr || drawnPanel() == nullptr)
        return;
    Piece framed = *own;
    framed.framing = {};
    if (picture->mustStay) {
        const RectFraction& stay = *picture->mustStay;
        framed.framing.focus = {stay.x + stay.width / 2, stay.y + stay.height / 2};
    }
    // In the frame it has; else in one of the picture's own shape.
    Piece whole = placedAt(framed, own->cell);
    whole.picturePlace.height =
        std::min(whole.picturePlace.height, whole.picturePlace.width / picture->size.aspect());
    whole.picturePlace.width = whole.picturePlace.height * picture->size.aspect();
    for (const Piece& tried : {framed, placedAt(framed, own->cell), whole}) {
        if (isMendedBy(finding, tried)) {
            m_session.perform(replacePiece(m_session.book(), tried, does));
            return;
        }
    }
    Q_EMIT announced(tr("No frame of this size shows it all. Make the picture bigger."));
}

void Desk::mendSecondPicture(const Finding& finding, const QString& does)
{
    std::vector<const Piece*> pictures;
    for (const Piece* one : piecesOf(m_session.book(), m_session.panel()->id)) {
        if (isPicture(one->kind) && !one->picturePlace.isEmpty())
            pictures.push_back(one);
    }
    if (pictures.size() < 2)
        return;
    std::sort(pictures.begin(), pictures.end(), [](const Piece* a, const Piece* b) {
        return a->picturePlace.areaMm2() > b->picturePlace.areaMm2();
    });
    mendPlace(pictures[1]->id, finding, does);
}

// What a hand pinned under it gives way too.
void Desk::mendOverlap(PieceId id, const QString& does)
{
    const Piece* own = piece(id);
    if (own == nullptr)
        return;
    std::vector<Piece> changed{*own};
    changed.front().pinned = true;
    for (const Piece* other : piecesOf(m_session.book(), own->panel)) {
        if (other->id == id || intersection(other->cell, own->cell).isEmpty())
            continue;
        changed.push_back(*other);
        changed.back().pinned = false;
    }
    const int gesture = m_session.newGesture();
    if (m_session.perform(replacePieces(m_session.book(), changed, does, gesture)))
        arrangeAgain(gesture, {id});
}

} // namespace wainscot::ui
