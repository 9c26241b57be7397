#include "app/jobs/alternatives_job.h"

#include "app/jobs/placed_panel.h"
#include "core/base/says.h"
#include "layout/engine/alternatives.h"
#include "layout/typeset/typesetter.h"

namespace wainscot {

namespace {

constexpr std::size_t kWays = 3;

OtherWay wayOf(const Book& book,
    const PlacedPanel& panel,
    const engine::Arrangement& arrangement,
    double ratio,
    QDate today)
{
    const Panel& own = *book.panels.find(panel.cleared.id());
    std::vector<Piece> pieces = piecesAt(panel.pieces, arrangement.items);
    const PermissionRules rules(book, panel.cleared.display(), today);
    ClearedPanel cleared = rules.clear(own, pieces);
    DisplayList list = typeset(cleared, panel.style);
    return {std::move(pieces), {std::move(cleared), panel.style, std::move(list)}, ratio};
}

QString sentenceFor(std::size_t ways)
{
    switch (ways) {
    case 0:
        return Says::tr("There is no other way that looks different and is as good.");
    case 1:
        return Says::tr("There is one other way that looks different and is as good.");
    case 2:
        return Says::tr("There are two other ways that look different and are as good.");
    default:
        return {};
    }
}

} // namespace

Result<AlternativesOutcome> AlternativesJob::run(const Book& book, const JobRun& run) const
{
    run.report(Says::tr("Looking for other ways"));
    Result<PlacedPanel> placed = placedPanel(book, panel, run.today);
    if (!placed)
        return placed.error();
    placed->request.cancel = run.cancel;
    const engine::Outcome outcome = engine::arrange(placed->request, *placed->text);
    if (run.cancelled())
        return stoppedByPerson();
    const auto* best = std::get_if<engine::Arrangement>(&outcome);
    if (best == nullptr) {
        return Error{ErrorCode::Refused,
            Says::tr("The panel"),
            Says::tr("its pieces do not fit; take one off or take a pin out")};
    }
    const engine::AlternativesWish wish;
    const auto now = engine::difference(best->items, placed->places, placed->request);
    const bool shown = now.pieces < wish.difference || now.area < wish.areaDifference;
    const engine::Alternatives others =
        engine::alternatives(placed->request, *best, *placed->text, wish, {placed->places});
    if (others.cancelled || run.cancelled())
        return stoppedByPerson();
    AlternativesOutcome out;
    // What a hand has arranged may be far from the best, which then is the first other way.
    if (!shown)
        out.ways.push_back(wayOf(book, *placed, *best, 1, run.today));
    for (std::size_t k = 0; k < others.found.size() && out.ways.size() < kWays; ++k)
        out.ways.push_back(wayOf(book, *placed, others.found[k], others.costRatios[k], run.today));
    out.says = sentenceFor(out.ways.size());
    return out;
}

} // namespace wainscot
