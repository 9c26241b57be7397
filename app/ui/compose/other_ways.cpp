#include "app/ui/compose/other_ways.h"

#include <QCoreApplication>

#include "app/jobs/engine_request.h"
#include "app/ui/compose/rearrange.h"
#include "layout/engine/alternatives.h"

namespace wainscot::ui {

namespace {

constexpr std::size_t kMost = 3;
constexpr double kAnother = 0.15; // below that, the best is what stands there already

} // namespace

OtherWays::OtherWays(const ClearedPanel& panel,
    const PanelStyle& style,
    std::vector<Piece> pieces,
    std::shared_ptr<const PanelMeasurer> text)
    : m_pieces(std::move(pieces))
    , m_grid(style.grid)
    , m_request(requestFor(panel, style, *text))
    , m_text(std::move(text))
{
    m_request.pages = 1;
}

std::vector<engine::Placement> OtherWays::asTheyStand() const
{
    std::vector<engine::Placement> standing;
    for (const Piece& piece : m_pieces) {
        if (piece.cell.isEmpty())
            continue;
        engine::Placement place;
        place.id = piece.id.number();
        place.at = gridRectFor(m_grid, piece.cell);
        place.cell = piece.cell;
        place.picture = piece.picturePlace;
        standing.push_back(place);
    }
    return standing;
}

Result<std::vector<std::vector<Piece>>> OtherWays::run(const JobRun& run) const
{
    engine::Request request = m_request;
    request.cancel = run.cancel;
    const engine::Outcome outcome = engine::arrange(request, *m_text);
    if (const auto* failure = std::get_if<engine::Failure>(&outcome))
        return errorFor(*failure);
    const auto& best = std::get<engine::Arrangement>(outcome);
    const std::vector<engine::Placement> standing = asTheyStand();
    std::vector<std::vector<Piece>> ways;
    if (engine::difference(best.items, standing, request).pieces > kAnother)
        ways.push_back(placedAs(m_pieces, best.items));
    const engine::Alternatives others =
        engine::alternatives(request, best, *m_text, {}, {standing});
    if (others.cancelled)
        return stoppedByPerson();
    for (const engine::Arrangement& other : others.found) {
        if (ways.size() < kMost)
            ways.push_back(placedAs(m_pieces, other.items));
    }
    if (ways.empty())
        return Error{ErrorCode::Refused,
            {},
            QCoreApplication::translate(
                "OtherWays", "There is no other way as good. Take a pin out, or a piece off.")};
    return ways;
}

} // namespace wainscot::ui
