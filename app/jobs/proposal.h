// A display being proposed: drafts cleared, measured and arranged, with less on a panel until it
// fits; then one edit that puts it into the book.
#pragma once

#include "app/jobs/arrange_job.h"
#include "app/jobs/draft.h"

#include <variant>
#include <vector>

namespace wainscot {

class Proposal {
public:
    // Looks up what is pinned on a display of that id.
    Proposal(const Book& book, const Display& display, const JobRun& run);

    [[nodiscard]] const Display& display() const { return m_display; }
    [[nodiscard]] const std::vector<Piece>& pinned() const { return m_pinned; }
    void setDisplay(const Display& display);
    void setDrafts(const std::vector<PanelDraft>& drafts);

    Result<std::variant<ArrangeOutcome, ArrangeFailure>> arrange(const Material& material);

private:
    struct Panelled {
        Panel panel;
        PanelDraft draft;
    };
    using Arranged = std::vector<std::pair<int, engine::Arrangement>>; // by panel number
    using Attempt = std::variant<Arranged, std::pair<int, engine::Failure>>;

    [[nodiscard]] Attempt attempt() const;
    [[nodiscard]] Book scratchBook() const;
    [[nodiscard]] bool makeRoom(int panel);
    [[nodiscard]] ArrangeOutcome outcomeOf(const Arranged& arranged, const Material& material);
    void fillEdit(ArrangeOutcome& outcome);
    void addPinned(const std::vector<const Panel*>& known);
    [[nodiscard]] std::vector<LeftOut> leftOut(const Material& material) const;

    const Book& m_book;
    const JobRun& m_run;
    EditBuilder m_edit;
    Display m_display;
    std::vector<Piece> m_pinned;
    std::vector<Panelled> m_panels;
};

} // namespace wainscot
