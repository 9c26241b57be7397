#include "layout/typeset/group_rules.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>
#include <utility>

namespace wainscot {

namespace {

constexpr Mm kRuleHeight{0.35};
constexpr double kRuleAbove = 0.65; // rows

// A group as one block, or a piece that stands for itself.
struct Block {
    RectMm room;
    bool isGroup = false; // or an invitation, which always begins something new
    bool begins = false; // may have a rule above it
};

RectMm united(const RectMm& a, const RectMm& b)
{
    const Mm left = std::min(a.x, b.x);
    const Mm top = std::min(a.y, b.y);
    return {
        left, top, std::max(a.right(), b.right()) - left, std::max(a.bottom(), b.bottom()) - top};
}

std::vector<Block> blocksOf(const std::vector<ClearedPiece>& pieces, Parting parting)
{
    std::vector<Block> blocks;
    std::map<int, std::size_t> byGroup;
    for (const ClearedPiece& piece : pieces) {
        if (piece.cell.isEmpty())
            continue;
        const auto known = piece.group > 0 ? byGroup.find(piece.group) : byGroup.end();
        if (known != byGroup.end()) {
            blocks[known->second].room = united(blocks[known->second].room, piece.cell);
            continue;
        }
        if (piece.group > 0)
            byGroup[piece.group] = blocks.size();
        const bool invites = piece.kind == PieceKind::Invitation;
        const bool group = piece.group > 0 && parting == Parting::Groups;
        blocks.push_back({piece.cell, group, group || invites});
    }
    return blocks;
}

// Cuts a set of blocks across, then each band down, then each column across again.
class Cutter {
public:
    explicit Cutter(const Grid& grid)
        : m_grid(grid)
    {
    }

    void across(std::vector<Block> blocks, Mm left, Mm right)
    {
        std::sort(blocks.begin(), blocks.end(), [](const Block& a, const Block& b) {
            return a.room.y < b.room.y;
        });
        std::vector<std::vector<Block>> bands;
        Mm bottom;
        for (const Block& block : blocks) {
            if (bands.empty() || block.room.y >= bottom) {
                if (!bands.empty() && parts(bands.back(), block, blocks, bottom))
                    m_rules.push_back({left,
                        block.room.y - kRuleAbove * m_grid.rowUnit - kRuleHeight / 2,
                        right - left,
                        kRuleHeight});
                bands.emplace_back();
            }
            bands.back().push_back(block);
            bottom = std::max(bottom, block.room.bottom());
        }
        for (const auto& band : bands) {
            if (band.size() > 1)
                down(band);
        }
    }

    std::vector<RectMm> take() { return std::move(m_rules); }

private:
    // A rule stands between two groups with a whole row free between them.
    [[nodiscard]] bool parts(const std::vector<Block>& above,
        const Block& first,
        const std::vector<Block>& all,
        Mm bottom) const
    {
        const bool groupAbove =
            std::any_of(above.begin(), above.end(), [](const Block& one) { return one.isGroup; });
        const bool groupBelow = std::any_of(all.begin(), all.end(), [&](const Block& one) {
            return one.begins && one.room.y < first.room.y + m_grid.rowUnit / 2
                && one.room.y >= first.room.y;
        });
        const bool invites = groupBelow && first.begins && !first.isGroup;
        return (groupAbove || invites) && groupBelow && freeRows(bottom, first.room.y) >= 1;
    }

    // Texts are shorter than their cells, so rows count from the row line the cell ends on.
    [[nodiscard]] int freeRows(Mm bottom, Mm top) const
    {
        const double ends =
            std::ceil((bottom - m_grid.margin + m_grid.gutter) / m_grid.rowUnit - 0.01);
        const double begins = std::floor((top - m_grid.margin) / m_grid.rowUnit + 0.01);
        return static_cast<int>(begins - ends);
    }

    void down(std::vector<Block> band)
    {
        std::sort(band.begin(), band.end(), [](const Block& a, const Block& b) {
            return a.room.x < b.room.x;
        });
        std::vector<std::vector<Block>> columns;
        Mm right;
        for (const Block& block : band) {
            if (columns.empty() || block.room.x >= right)
                columns.emplace_back();
            columns.back().push_back(block);
            right = std::max(right, block.room.right());
        }
        if (columns.size() < 2)
            return;
        for (const auto& column : columns) {
            const Mm left = column.front().room.x;
            const Mm edge =
                std::accumulate(column.begin(), column.end(), Mm(), [](Mm most, const Block& one) {
                    return std::max(most, one.room.right());
                });
            if (column.size() > 1)
                across(column, left, edge);
        }
    }

    const Grid& m_grid;
    std::vector<RectMm> m_rules;
};

} // namespace

std::vector<RectMm> groupRules(
    const std::vector<ClearedPiece>& pieces, const Grid& grid, Parting parting)
{
    Cutter cutter(grid);
    cutter.across(blocksOf(pieces, parting), grid.margin, grid.panel.width - grid.margin);
    return cutter.take();
}

} // namespace wainscot
