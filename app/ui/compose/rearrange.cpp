#include "app/ui/compose/rearrange.h"

#include <QCoreApplication>

#include <map>

#include "app/jobs/engine_request.h"

namespace wainscot::ui {

namespace {

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
        return tr("The pins leave the other pieces no place between them. Take one pin out.");
    case engine::Obstacle::Cancelled:
        return tr("Stopped. Everything is where it was.");
    }
    return {};
}

} // namespace

Rearrangement::Rearrangement(const ClearedPanel& panel,
    const PanelStyle& style,
    std::vector<Piece> pieces,
    std::shared_ptr<const PanelMeasurer> text,
    Wish wish)
    : m_pieces(std::move(pieces))
    , m_request(requestFor(panel, style, *text))
    , m_text(std::move(text))
{
    m_request.pages = 1;
    if (wish == Wish::Anew)
        return;
    std::map<std::int64_t, RectMm> cells;
    for (const Piece& piece : m_pieces)
        cells[piece.id.number()] = piece.cell;
    for (engine::Item& item : m_request.items) {
        const RectMm& cell = cells[item.id];
        if (!item.pinned && !cell.isEmpty())
            item.previous = gridRectFor(style.grid, cell);
    }
}

Error errorFor(const engine::Failure& failure)
{
    return {failure.what == engine::Obstacle::Cancelled ? ErrorCode::Cancelled : ErrorCode::Refused,
        {},
        sentenceFor(failure)};
}

std::vector<Piece> placedAs(std::vector<Piece> pieces, const std::vector<engine::Placement>& places)
{
    std::map<std::int64_t, const engine::Placement*> byPiece;
    for (const engine::Placement& place : places)
        byPiece[place.id] = &place;
    for (Piece& piece : pieces) {
        const auto at = byPiece.find(piece.id.number());
        if (piece.pinned || at == byPiece.end())
            continue;
        piece.cell = at->second->cell;
        piece.picturePlace = at->second->picture;
    }
    return pieces;
}

Result<std::vector<Piece>> Rearrangement::run(const JobRun& run) const
{
    engine::Request request = m_request;
    request.cancel = run.cancel;
    const engine::Outcome outcome = engine::arrange(request, *m_text);
    if (const auto* failure = std::get_if<engine::Failure>(&outcome))
        return errorFor(*failure);
    return placedAs(m_pieces, std::get<engine::Arrangement>(outcome).items);
}

} // namespace wainscot::ui
