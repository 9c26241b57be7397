// The same pieces arranged in other ways, to choose from.
#pragma once

#include <memory>
#include <vector>

#include "app/jobs/job_run.h"
#include "core/permit/cleared.h"
#include "layout/engine/arrangement.h"
#include "layout/typeset/measurer.h"
#include "layout/typeset/style.h"

namespace wainscot::ui {

// Prepared in the window's thread, where text is measured; run in any.
class OtherWays {
public:
    OtherWays(const ClearedPanel& panel,
        const PanelStyle& style,
        std::vector<Piece> pieces,
        std::shared_ptr<const PanelMeasurer> text);

    // Up to three, each the whole panel's pieces in other cells; they look different from what
    // stands there and from each other. Refused with a sentence in `detail` when there is none.
    [[nodiscard]] Result<std::vector<std::vector<Piece>>> run(const JobRun& run) const;

private:
    [[nodiscard]] std::vector<engine::Placement> asTheyStand() const;
    std::vector<Piece> m_pieces;
    Grid m_grid;
    engine::Request m_request;
    std::shared_ptr<const PanelMeasurer> m_text;
};

} // namespace wainscot::ui
