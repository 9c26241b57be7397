#include "layout/engine/spread.h"

#include <algorithm>
#include <cstdlib>

namespace wainscot::engine {

namespace {

class Spreader {
public:
    Spreader(const Spread& by, const LeafTable& leaves)
        : m_by(by)
        , m_leaves(leaves)
    {
    }

    // Moves the part to row y, and its children on by what is added between them.
    void place(Node& node, int y, bool acrossPage)
    {
        const int before = node.at.y;
        node.at.y = y;
        if (node.type == NodeType::Leaf)
            return;
        int foot = y;
        int was = before; // where the part above ended
        for (std::size_t k = 0; k < node.children.size(); ++k) {
            Node& child = node.children[k];
            if (node.type == NodeType::Row) {
                place(child, y + child.at.y - before, false);
            } else {
                const int gap = child.at.y - was;
                was = child.at.y + child.at.h;
                const bool parts = k > 0 && apart(child.first);
                place(child, foot + gap + (parts ? added(acrossPage) : 0), false);
            }
            foot = node.type == NodeType::Row ? std::max(foot, child.at.y + child.at.h)
                                              : child.at.y + child.at.h;
        }
        node.at.h = foot - y;
    }

    int places() const { return m_places; }

private:
    int added(bool acrossPage)
    {
        const int rows = acrossPage ? m_by.bands : m_by.columns;
        m_places += rows > 0 ? 1 : 0;
        return rows;
    }

    bool apart(int below) const
    {
        const Item& upper = m_leaves.piece(below - 1).item;
        const Item& lower = m_leaves.piece(below).item;
        return upper.kind != Kind::Label && (lower.group == 0 || lower.group != upper.group);
    }

    Spread m_by;
    const LeafTable& m_leaves;
    int m_places = 0;
};

} // namespace

namespace {

// A template has its own places for white.
bool isPlanned(const LeafTable& leaves)
{
    return std::any_of(leaves.pieces().begin(), leaves.pieces().end(), [](const Piece& piece) {
        const Wish& wish = piece.item.wish;
        return piece.blank || wish.bandBefore || wish.stand != Stand::Top;
    });
}

} // namespace

std::optional<PagePlan> spread(const PagePlan& plan, const Spread& by, LeafTable& leaves)
{
    if (plan.trees.size() != 1 || isPlanned(leaves))
        return std::nullopt;
    PagePlan out = plan;
    Node& root = out.trees.front();
    Spreader spreader(by, leaves);
    spreader.place(root, root.at.y, true);
    if (spreader.places() == 0 || root.at.y + root.at.h > leaves.page().rows)
        return std::nullopt;
    return out;
}

namespace {

// Rows by which the pieces of the part stand above or below their places of before.
int rowsFromBefore(const Node& node, const LeafTable& leaves)
{
    int rows = 0;
    for (const Node& child : node.children)
        rows += rowsFromBefore(child, leaves);
    if (node.type == NodeType::Leaf)
        if (const auto& before = leaves.piece(node.first).item.previous)
            rows += std::abs(before->y - node.at.y);
    return rows;
}

} // namespace

PagePlan spreadAsBefore(PagePlan plan, LeafTable& leaves)
{
    if (plan.trees.size() != 1)
        return plan;
    const PagePlan close = plan;
    int least = rowsFromBefore(plan.trees.front(), leaves);
    for (int bands = 0; bands <= kMostSpread && least > 0; ++bands)
        for (int columns = 0; columns <= kMostSpread; ++columns) {
            auto wider = spread(close, {bands, columns}, leaves);
            const int rows = wider ? rowsFromBefore(wider->trees.front(), leaves) : least;
            if (rows < least) {
                least = rows;
                plan = std::move(*wider);
            }
        }
    return plan;
}

} // namespace wainscot::engine
