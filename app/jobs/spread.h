// Moments over the panels of a display: what each panel would show, wherever the breaks are.
#pragma once

#include "app/jobs/draft.h"

#include <QStringList>

#include <functional>
#include <set>
#include <vector>

namespace wainscot {

class Spread {
public:
    // The share of a panel that pieces need at the least.
    using Need = std::function<double(const std::vector<Piece>&)>;

    // `drafts`: of the open panels, in the order of the display. What children said and made, with
    // its labels, flows from panel to panel; the rest, and what is pinned, stays where it is.
    Spread(const Material& material, const std::vector<PanelDraft>& drafts, const Need& need);

    // A block is a moment, or several that the teacher keeps together.
    [[nodiscard]] int blocks() const { return static_cast<int>(m_blocks.size()); }
    [[nodiscard]] int panels() const { return static_cast<int>(m_stays.size()); }

    // What a panel shows with the blocks first..last-1, in reading order. A further panel's title
    // tells its days; a day that goes on from the panel before says so.
    [[nodiscard]] std::vector<Piece> pieces(int panel, int first, int last) const;

    // What is known of such a panel before it is laid out, in the engine's units: panels are
    // equally full, days stay whole, the large picture is of one of the days. A wish of the teacher
    // weighs more than all of that.
    [[nodiscard]] double price(int panel, int first, int last) const;

    // Which wishes of the teacher these breaks do not keep, a sentence each.
    [[nodiscard]] QStringList unkept(const std::vector<int>& begins, const Book& book) const;

private:
    struct Block {
        std::vector<Piece> pieces;
        std::set<std::optional<QDate>> days;
        double need = 0;
        int only = -1; // the panel it has to be on
        [[nodiscard]] const Piece* starting() const; // the piece with which a panel is to begin
        [[nodiscard]] QString label(bool last) const;
    };

    void gather(const std::vector<PanelDraft>& drafts);
    void joinKeptTogether();
    [[nodiscard]] bool continues(int block) const; // the day of the one before
    [[nodiscard]] int wishesBroken(int panel, int first, int last) const;

    const Material& m_material;
    std::vector<PanelDraft> m_stays; // by panel
    std::vector<double> m_needs; // of what stays
    std::vector<Block> m_blocks;
    double m_mean = 0; // share that each panel would need if all needed the same
    int m_groups = 0; // the highest number of what stays
    bool m_oneDay = false;
};

} // namespace wainscot
