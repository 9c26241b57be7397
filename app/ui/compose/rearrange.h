// The same pieces arranged anew around those that are pinned.
#pragma once

#include <memory>
#include <variant>
#include <vector>

#include "app/jobs/job_run.h"
#include "core/permit/cleared.h"
#include "layout/engine/arrangement.h"
#include "layout/typeset/measurer.h"
#include "layout/typeset/style.h"

namespace wainscot::ui {

// Prepared in the window's thread, where text is measured; run in any.
class Rearrangement {
public:
    enum class Wish {
        Anew, // the best there is, wherever pieces were
        MakeRoom, // pieces stay near where they were
    };
    // `pieces` are the book's, those of `panel`. `text` has measured them, whatever their cells.
    Rearrangement(const ClearedPanel& panel,
        const PanelStyle& style,
        std::vector<Piece> pieces,
        std::shared_ptr<const PanelMeasurer> text,
        Wish wish);

    // The pieces in their new cells; Refused with a sentence in `detail` when there is no room.
    [[nodiscard]] Result<std::vector<Piece>> run(const JobRun& run) const;

private:
    std::vector<Piece> m_pieces;
    engine::Request m_request;
    std::shared_ptr<const PanelMeasurer> m_text;
};

// The pieces in the cells of an arrangement; what is pinned or has no place stays.
[[nodiscard]] std::vector<Piece> placedAs(
    std::vector<Piece> pieces, const std::vector<engine::Placement>& places);
// Cancelled, or Refused with a sentence in `detail` that a teacher reads.
[[nodiscard]] Error errorFor(const engine::Failure& failure);

} // namespace wainscot::ui
