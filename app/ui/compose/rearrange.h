// The same pieces arranged around those that are pinned.
#pragma once

#include <memory>
#include <variant>
#include <vector>

#include "app/jobs/job_run.h"
#include "core/permit/cleared.h"
#include "layout/engine/again.h"
#include "layout/typeset/measurer.h"
#include "layout/typeset/style.h"

namespace wainscot::ui {

// Prepared in the window's thread, where text is measured; run in any.
class Rearrangement {
public:
    // `pieces` are the book's, those of `panel`. `text` has measured them, whatever their cells.
    // `edited` make themselves room, and the others move as little as a good page allows; without
    // any it is the best page there is, wherever pieces were.
    Rearrangement(const ClearedPanel& panel,
        const PanelStyle& style,
        std::vector<Piece> pieces,
        std::shared_ptr<const PanelMeasurer> text,
        const std::vector<PieceId>& edited = {});

    // The pieces in their new cells; Refused with a sentence in `detail` when there is no room.
    [[nodiscard]] Result<std::vector<Piece>> run(const JobRun& run) const;

private:
    std::vector<Piece> m_pieces;
    engine::Request m_request;
    std::vector<engine::Placement> m_before;
    engine::AgainWish m_wish;
    std::shared_ptr<const PanelMeasurer> m_text;
};

} // namespace wainscot::ui
