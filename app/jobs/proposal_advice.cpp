// Proposals for a panel that is too empty or too full: each is arranged before it is made.
#include "app/jobs/proposal.h"

#include "app/jobs/drawn_display.h"
#include "app/jobs/engine_request.h"
#include "layout/engine/advice.h"
#include "layout/typeset/measurer.h"

#include <algorithm>

namespace wainscot {

namespace {

constexpr int kLargestVoice = 3;
// A proposal is worth a sentence from this much less white on.
constexpr double kWorthSaying = 0.06;

// White is not filled by inflating one picture.
constexpr double kMostGrowth = 1.25;

double largestPicture(const std::vector<std::pair<int, engine::Arrangement>>& arranged)
{
    double largest = 0;
    for (const auto& [number, arrangement] : arranged) {
        for (const engine::Placement& one : arrangement.items)
            largest = std::max(largest, one.picture.areaMm2());
    }
    return largest;
}

} // namespace

engine::PageSpec Proposal::pageOf(const Display& display) const
{
    const Book scratch = scratchBook(display);
    const PermissionRules rules(scratch, display, m_run.today);
    const ClearedPanel cleared = rules.clear(m_panels.front().panel, {});
    const PanelStyle style = styleFor(cleared);
    return requestFor(cleared, style, PanelMeasurer({}, style, display.language)).page;
}

// Of the emptiest panel.
double Proposal::whiteOf(const Arranged& arranged, const Display& display) const
{
    const engine::PageSpec page = pageOf(display);
    double white = 0;
    for (const auto& [number, arrangement] : arranged)
        white = std::max(white, engine::pageUse(arrangement, page).white);
    return white;
}

// The advice with its numbers, if everything fits so, no further wish goes and it is less empty.
std::optional<Advice> Proposal::tried(
    Advice advice, const Display& display, const Arranged& now, std::size_t wishesDropped) const
{
    const Attempt attempted = attempt(display);
    const auto* arranged = std::get_if<Arranged>(&attempted);
    if (arranged == nullptr)
        return std::nullopt;
    for (const auto& [number, arrangement] : *arranged) {
        if (!arrangement.leftOut.empty() || arrangement.droppedWishes.size() > wishesDropped)
            return std::nullopt;
    }
    if (advice.kind == AdviceKind::LargerWords
        && largestPicture(*arranged) > kMostGrowth * largestPicture(now))
        return std::nullopt;
    advice.whiteThen = whiteOf(*arranged, display);
    if (advice.whiteThen > advice.whiteNow - kWorthSaying)
        return std::nullopt;
    advice.says = sentenceFor(advice);
    return advice;
}

std::vector<Advice> Proposal::adviceOn(const Arranged& arranged) const
{
    std::vector<Advice> all;
    if (const auto advice = overfull())
        return {*advice};
    if (!m_pinned.empty())
        return {}; // what a hand placed is not moved to other paper
    const engine::PageSpec page = pageOf(m_display);
    Advice advice;
    bool sparse = false;
    std::size_t wishes = 0; // that are dropped as it is
    for (const auto& [number, arrangement] : arranged) {
        wishes = std::max(wishes, arrangement.droppedWishes.size());
        sparse = sparse || engine::isSparse(engine::pageUse(arrangement, page));
    }
    if (!sparse)
        return {};
    advice.whiteNow = whiteOf(arranged, m_display);
    // The smallest paper that still holds everything fills best.
    for (const SizeMm size : smallerPanels(m_display.panelSize)) {
        Display smaller = m_display;
        smaller.panelSize = size;
        advice.kind = AdviceKind::SmallerPanel;
        advice.panelSize = size;
        const auto found = tried(advice, smaller, arranged, wishes);
        if (!found)
            break;
        all.assign(1, *found);
    }
    const int step =
        m_display.voiceStep != 0 ? m_display.voiceStep : planStyle(m_display.plan).voiceStep;
    if (step < kLargestVoice) {
        Display larger = m_display;
        larger.voiceStep = step + 1;
        advice.kind = AdviceKind::LargerWords;
        advice.voiceStep = step + 1;
        advice.panelSize = {};
        if (const auto found = tried(advice, larger, arranged, wishes))
            all.push_back(*found);
    }
    return all;
}

// What was meant for the panels and found no room, and how much room it would take.
std::optional<Advice> Proposal::overfull() const
{
    if (m_dropped.empty())
        return std::nullopt;
    Advice advice;
    advice.kind = AdviceKind::LessOnIt;
    const Book scratch = scratchBook(m_display);
    const PermissionRules rules(scratch, m_display, m_run.today);
    const ClearedPanel cleared = rules.clear(m_panels.front().panel, m_dropped);
    const PanelStyle style = styleFor(cleared);
    const PanelMeasurer text(cleared.pieces(), style, m_display.language);
    const engine::Request request = requestFor(cleared, style, text);
    advice.missingMm2 = engine::leastRoom(request.items, request.page, text);
    for (const Piece& piece : m_dropped) {
        if (piece.kind == PieceKind::Quote)
            advice.quotes.push_back(piece.quote.number());
    }
    if (advice.quotes.empty())
        return std::nullopt;
    advice.says = sentenceFor(advice);
    return advice;
}

} // namespace wainscot
