// Breaks between the panels of a display and the panels themselves, decided together.
#include "app/jobs/proposal.h"

#include "app/jobs/drawn_display.h"
#include "app/jobs/engine_request.h"
#include "layout/engine/advice.h"
#include "layout/engine/breaks.h"
#include "layout/engine/panel_price.h"
#include "layout/typeset/measurer.h"

#include <limits>

namespace wainscot {

namespace {

// Further panels are laid out only while the answer is not proven; so many are some seconds.
constexpr int kMostLaidOut = 40; // for each panel of the display

} // namespace

std::vector<Proposal::Panelled*> Proposal::openPanels()
{
    std::vector<Panelled*> open;
    for (Panelled& panelled : m_panels) {
        if (!panelled.panel.locked)
            open.push_back(&panelled);
    }
    return open;
}

std::vector<std::int64_t> Proposal::keyOf(const Panelled& panelled)
{
    std::vector<std::int64_t> key{panelled.panel.number};
    for (const Piece& piece : panelled.draft.pieces)
        key.push_back(piece.id.number());
    return key;
}

// The room pieces need, measured as they are set on this display.
Spread::Need Proposal::needOn(const PermissionRules& rules) const
{
    return [this, &rules](const std::vector<Piece>& pieces) {
        const ClearedPanel cleared = rules.clear(m_panels.front().panel, pieces);
        const PanelStyle style = styleFor(cleared);
        const PanelMeasurer text(cleared.pieces(), style, m_display.language);
        const engine::Request request = requestFor(cleared, style, text);
        const double page = request.page.width(request.page.columns).value()
            * request.page.height(request.page.rows).value();
        return engine::leastRoom(request.items, request.page, text) / page;
    };
}

// What a panel costs when it is laid out, which is remembered; infinite when it cannot be.
double Proposal::priceOf(const Panelled& panelled, const PermissionRules& rules)
{
    const Asked asked = ask(panelled, m_display, rules);
    const auto [at, isNew] = m_laidOut.try_emplace(keyOf(panelled));
    if (isNew)
        at->second = engine::arrange(asked.request, *asked.text);
    const auto* arrangement = std::get_if<engine::Arrangement>(&at->second);
    return arrangement != nullptr ? engine::panelPrice(asked.request, *arrangement, *asked.text)
                                  : std::numeric_limits<double>::infinity();
}

void Proposal::spread(const Material& material)
{
    const std::vector<Panelled*> open = openPanels();
    const Book scratch = scratchBook(m_display);
    const PermissionRules rules(scratch, m_display, m_run.today);
    std::vector<PanelDraft> drafts;
    drafts.reserve(open.size());
    for (const Panelled* panelled : open)
        drafts.push_back(panelled->draft);
    const Spread spread(material, drafts, needOn(rules));
    const auto panelWith = [&](int panel, int first, int last) {
        Panelled one = *open[static_cast<std::size_t>(panel)];
        one.draft.pieces = spread.pieces(panel, first, last);
        for (Piece& piece : one.draft.pieces)
            piece.panel = one.panel.id;
        return one;
    };
    engine::BreakProblem problem;
    problem.blocks = spread.blocks();
    problem.panels = spread.panels();
    problem.most = kMostLaidOut * spread.panels();
    problem.least = [&](int panel, int first, int last) {
        return spread.price(panel, first, last);
    };
    problem.cost = [&](int panel, int first, int last) {
        return spread.price(panel, first, last) + priceOf(panelWith(panel, first, last), rules);
    };
    auto found = engine::cheapestBreaks(problem);
    if (!found) { // too much for any: the most even breaks, and then less of it
        problem.cost = problem.least;
        problem.most = 0;
        found = engine::cheapestBreaks(problem);
    }
    for (int panel = 0; panel < spread.panels(); ++panel) {
        const auto next = static_cast<std::size_t>(panel) + 1;
        const int last = next < found->begins.size() ? found->begins[next] : spread.blocks();
        *open[next - 1] = panelWith(panel, found->begins[next - 1], last);
    }
    m_breaks = found;
    m_unheeded = spread.unkept(found->begins, m_book);
}

} // namespace wainscot
