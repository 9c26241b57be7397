// Tells the arrangement engine how high the pieces of a panel come out at a width, by the same
// lines that the typesetter draws.
#pragma once

#include "core/permit/cleared.h"
#include "layout/engine/arrangement.h"
#include "layout/typeset/style.h"

#include <memory>
#include <vector>

namespace wainscot {

// Item ids are the numbers of the pieces' ids. A piece set at a width it was measured at is never
// higher than its measured height. What must stay free below a title or a quote is the engine's
// matter and not in the height.
//
// Fonts are touched while it is built; after that it is plain numbers, so any thread may ask.
class PanelMeasurer final : public engine::TextMeasurer {
public:
    // `language` is the display's, for pieces that name none.
    PanelMeasurer(
        const std::vector<ClearedPiece>& pieces, const PanelStyle& style, const QString& language);
    ~PanelMeasurer() override;

    // Photos and work samples: the caption alone, without the gap above it. `fits` is false where a
    // word is wider than the width, and for a quote in less than 14 mean characters.
    [[nodiscard]] engine::TextMetrics measure(engine::ItemId item, Mm width) const override;
    [[nodiscard]] engine::TextSpec spec(engine::ItemId item) const override;

    // What must be kept free before a quote beside a neighbour: one gutter where its hanging mark
    // is wider than 0.7 gutters, or where its lines run against the page's and its mark would meet
    // the neighbour's; else nothing.
    [[nodiscard]] Mm indent(engine::ItemId item) const;

private:
    struct State;
    std::unique_ptr<State> m_state;
};

} // namespace wainscot
