#include "app/ui/compose/rearrange.h"

#include "app/jobs/engine_request.h"
#include "app/jobs/placed_panel.h"
#include "app/jobs/sentences.h"

namespace wainscot::ui {

namespace {

// Cancelled, or Refused with a sentence in `detail` that a teacher reads.
Error errorFor(const engine::Failure& failure)
{
    if (failure.what == engine::Obstacle::Cancelled)
        return stoppedByPerson();
    return {ErrorCode::Refused, {}, capitalised(whyNoRoom(failure))};
}

} // namespace

Rearrangement::Rearrangement(const ClearedPanel& panel,
    const PanelStyle& style,
    std::vector<Piece> pieces,
    std::shared_ptr<const PanelMeasurer> text,
    const std::vector<PieceId>& edited)
    : m_pieces(std::move(pieces))
    , m_request(requestFor(panel, style, *text))
    , m_before(placementsOf(panel.pieces(), style.grid))
    , m_text(std::move(text))
{
    m_request.pages = 1;
    for (const PieceId id : edited)
        m_wish.edited.push_back(id.number());
}

Result<std::vector<Piece>> Rearrangement::run(const JobRun& run) const
{
    engine::Request request = m_request;
    request.cancel = run.cancel;
    if (m_wish.edited.empty()) {
        const engine::Outcome outcome = engine::arrange(request, *m_text);
        if (const auto* failure = std::get_if<engine::Failure>(&outcome))
            return errorFor(*failure);
        return piecesAt(m_pieces, std::get<engine::Arrangement>(outcome).items);
    }
    const auto outcome = engine::arrangeAgain(request, m_before, *m_text, m_wish);
    if (const auto* failure = std::get_if<engine::Failure>(&outcome))
        return errorFor(*failure);
    return piecesAt(m_pieces, std::get<engine::Again>(outcome).arrangement.items);
}

} // namespace wainscot::ui
