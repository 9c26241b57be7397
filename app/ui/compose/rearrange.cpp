#include "app/ui/compose/rearrange.h"

#include <QCoreApplication>

#include <map>

#include "app/ui/canvas/grid_snap.h"
#include "layout/typeset/measurer.h"

namespace wainscot::ui {

namespace {

static_assert(int(engine::Kind::Credits) == int(PieceKind::Credits)
    && int(engine::Kind::Photo) == int(PieceKind::Photo));

engine::GridRect gridRectOf(const Grid& grid, const RectMm& cell)
{
    const GridCell at = nearestCell(grid, cell);
    return {0, at.column, at.row, at.columns, at.rows};
}

engine::PageSpec pageOf(const Grid& grid)
{
    engine::PageSpec page;
    page.size = grid.panel;
    page.margin = grid.margin;
    page.gutter = grid.gutter;
    page.rowUnit = grid.rowUnit;
    page.columns = grid.columns;
    page.rows = grid.rows;
    return page;
}

engine::Item itemOf(const ClearedPiece& piece, const Grid& grid, Mm indent)
{
    engine::Item item;
    item.id = piece.id.number();
    item.kind = static_cast<engine::Kind>(piece.kind);
    item.importance = piece.dominant ? 3 : 1;
    item.group = piece.group;
    item.indent = indent;
    if (piece.picture) {
        engine::PictureShape shape;
        shape.size = piece.picture->size;
        // A child's work is never cut.
        if (piece.kind == PieceKind::Work)
            shape.keepWidth = shape.keepHeight = 1.0;
        item.picture = shape;
    }
    if (!piece.cell.isEmpty())
        (piece.pinned ? item.pinned : item.previous) = gridRectOf(grid, piece.cell);
    return item;
}

QString sentenceFor(const engine::Failure& failure)
{
    const auto tr = [](const char* text) { return QCoreApplication::translate("Rearrange", text); };
    switch (failure.what) {
    case engine::Obstacle::WordTooWide:
        return tr("A word is wider than its place can become.");
    case engine::Obstacle::PictureTooFewPixels:
        return tr("A picture has too few pixels for any place here.");
    case engine::Obstacle::TooMuchForPages:
        return tr("There is not enough room: %1 square cm are missing. Take a piece off.")
            .arg(qRound(failure.missingMm2 / 100));
    case engine::Obstacle::PinsOverlap:
        return tr("Two pinned pieces lie over each other.");
    case engine::Obstacle::PinsNotSliceable:
        return tr("The pins leave no straight cut between the pieces. Take one pin out.");
    case engine::Obstacle::Cancelled:
        return tr("Stopped. Everything is where it was.");
    }
    return {};
}

} // namespace

Rearrangement::Rearrangement(
    const ClearedPanel& panel, const PanelStyle& style, std::vector<Piece> pieces)
    : m_pieces(std::move(pieces))
{
    const auto text =
        std::make_shared<PanelMeasurer>(panel.pieces(), style, panel.display().language);
    for (const ClearedPiece& piece : panel.pieces())
        m_request.items.push_back(itemOf(piece, style.grid, text->indent(piece.id.number())));
    m_request.page = pageOf(style.grid);
    m_request.pages = 1;
    m_request.plan = panel.display().plan.toStdString();
    m_text = text;
}

Result<std::vector<Piece>> Rearrangement::run(const JobRun& run) const
{
    engine::Request request = m_request;
    request.cancel = run.cancel;
    const engine::Outcome outcome = engine::arrange(request, *m_text);
    if (const auto* failure = std::get_if<engine::Failure>(&outcome)) {
        return Error{failure->what == engine::Obstacle::Cancelled ? ErrorCode::Cancelled
                                                                  : ErrorCode::Refused,
            {},
            sentenceFor(*failure)};
    }
    std::map<std::int64_t, engine::Placement> places;
    for (const engine::Placement& place : std::get<engine::Arrangement>(outcome).items)
        places[place.id] = place;
    std::vector<Piece> pieces = m_pieces;
    for (Piece& piece : pieces) {
        const auto at = places.find(piece.id.number());
        if (piece.pinned || at == places.end())
            continue;
        piece.cell = at->second.cell;
        piece.picturePlace = at->second.picture;
    }
    return pieces;
}

} // namespace wainscot::ui
