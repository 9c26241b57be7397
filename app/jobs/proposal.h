// A display being proposed: drafts cleared, measured and arranged, breaks between panels and panels
// in one, with less on a panel until it fits; then one edit that puts it into the book.
#pragma once

#include "app/jobs/arrange_job.h"
#include "app/jobs/carried_over.h"
#include "app/jobs/draft.h"
#include "app/jobs/spread.h"
#include "layout/typeset/measurer.h"

#include <map>
#include <memory>
#include <variant>
#include <vector>

namespace wainscot {

class Proposal {
public:
    // Looks up what is pinned on a display of that id.
    Proposal(const Book& book, const Display& display, const JobRun& run);

    [[nodiscard]] const Display& display() const { return m_display; }
    // Pieces that stay where they are: pinned, or on a locked panel.
    [[nodiscard]] const std::vector<Piece>& pinned() const { return m_pinned; }
    [[nodiscard]] int lockedPanels() const;
    void setDisplay(const Display& display);
    void setDrafts(const std::vector<PanelDraft>& drafts);

    // `advises`: proposals for a panel too empty or too full are tried and come with the outcome.
    Result<std::variant<ArrangeOutcome, ArrangeFailure>> arrange(
        const Material& material, bool advises);

private:
    struct Panelled {
        Panel panel;
        PanelDraft draft;
    };
    using Arranged = std::vector<std::pair<int, engine::Arrangement>>; // by panel number
    using Attempt = std::variant<Arranged, std::pair<int, engine::Failure>>;

    // Moves moments to the panels where all panels together come out best.
    void spread(const Material& material);
    [[nodiscard]] bool spreads() const; // moments flow over several panels
    [[nodiscard]] std::vector<Panelled*> openPanels();
    [[nodiscard]] double priceOf(const Panelled& panelled, const PermissionRules& rules);
    [[nodiscard]] Spread::Need needOn(const PermissionRules& rules) const;

    [[nodiscard]] Attempt attempt() const { return attempt(m_display); }
    [[nodiscard]] Attempt attempt(const Display& display) const;
    struct Asked {
        ClearedPanel cleared;
        PanelStyle style;
        std::unique_ptr<PanelMeasurer> text;
        engine::Request request;
    };
    [[nodiscard]] Asked ask(
        const Panelled& panelled, const Display& display, const PermissionRules& rules) const;
    [[nodiscard]] static std::vector<std::int64_t> keyOf(const Panelled& panelled);
    [[nodiscard]] std::vector<Advice> adviceOn(const Arranged& arranged) const;
    [[nodiscard]] std::optional<Advice> tried(Advice advice,
        const Display& display,
        const Arranged& now,
        std::size_t wishesDropped) const;
    [[nodiscard]] double whiteOf(const Arranged& arranged, const Display& display) const;
    [[nodiscard]] std::optional<Advice> overfull() const;
    [[nodiscard]] engine::PageSpec pageOf(const Display& display) const;
    [[nodiscard]] Book scratchBook(const Display& display) const;
    [[nodiscard]] bool makeRoom(int panel);
    [[nodiscard]] bool makeRoomForPlan(const Arranged& arranged);
    [[nodiscard]] ArrangeOutcome outcomeOf(const Arranged& arranged, const Material& material);
    void fillEdit(ArrangeOutcome& outcome);
    void addPanels(const std::vector<PanelDraft>& drafts, const std::vector<const Panel*>& known);
    void addPinned(const std::vector<const Panel*>& known);
    // With the panel's number where there are several.
    [[nodiscard]] QString onPanel(int number, const QString& sentence) const;
    [[nodiscard]] QString roomSentence(const engine::Failure& failure, int panel) const;
    void sayWishes(
        const engine::Arrangement& arrangement, int panel, ArrangeOutcome& outcome) const;
    [[nodiscard]] std::vector<LeftOut> leftOut(const Material& material) const;

    const Book& m_book;
    const JobRun& m_run;
    EditBuilder m_edit;
    Display m_display;
    const PanelTemplate* m_own = nullptr; // the teacher's template the display is arranged by
    CarriedOver m_before;
    QStringList m_unheeded; // what of the wishes about panels could not be done: sentences
    std::vector<Piece> m_pinned;
    std::vector<Panelled> m_panels;
    std::vector<Piece> m_dropped; // of the drafts, for want of room
    std::optional<engine::Breaks> m_breaks;
    // Panels laid out while breaks were tried, by panel and pieces.
    std::map<std::vector<std::int64_t>, engine::Outcome> m_laidOut;
};

} // namespace wainscot
