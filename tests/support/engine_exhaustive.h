// Every slicing tree and every cut of a few pieces, priced on its own: what the engine's programmes
// are held against.
#pragma once

#include "layout/engine/pages.h"
#include "layout/engine/run_table.h"
#include "layout/engine/targets.h"
#include "tests/support/engine_documents.h"

#include <algorithm>
#include <memory>
#include <vector>

namespace wainscot::engine {

// A binary slicing tree, cut as its author likes; read as an n-ary one when priced.
struct Tree {
    NodeType type = NodeType::Leaf;
    int first = 0;
    int last = 0;
    GridRect at;
    int left = -1;
    int right = -1;
};

// Enumerates all binary slicing trees of the pieces in a rectangle and prices each one on its own:
// the leaves' costs are the engine's, everything else is written again here.
class Exhaustive {
public:
    Exhaustive(LeafTable& leaves, const ColumnSystem& system)
        : m_leaves(leaves)
        , m_system(system)
    {
    }

    Cost best(int columns, int rows) { return best(0, m_leaves.size(), columns, rows); }
    Cost best(int first, int last, int columns, int rows)
    {
        return best(first, last, GridRect{0, 0, 0, columns, rows});
    }
    Cost best(int first, int last, const GridRect& at)
    {
        m_best = kNever;
        m_nodes = {{NodeType::Leaf, first, last, at, -1, -1}};
        std::vector<int> pending{0};
        expand(pending);
        return m_best;
    }
    [[nodiscard]] long trees() const { return m_trees; }

    // Cost of a tree the engine built. Independent of how its table was filled.
    [[nodiscard]] Cost price(const Node& node) const
    {
        if (node.type == NodeType::Leaf)
            return m_leaves.costs(node.first, node.at.x, node.at.w)[std::size_t(node.at.h)];
        Cost sum = 0;
        for (const Node& child : node.children)
            sum = std::min(kNever, sum + price(child));
        for (std::size_t k = 1; k < node.children.size(); ++k) {
            const Node& a = node.children[k - 1];
            const Node& b = node.children[k];
            if (node.type == NodeType::Row)
                sum += between(a.type,
                    b.type == NodeType::Row ? b.children.front().type : b.type,
                    b.first,
                    b.at.x);
        }
        return std::min(kNever, sum);
    }

private:
    [[nodiscard]] int group(int i) const { return m_leaves.piece(i).item.group; }
    [[nodiscard]] bool band(int i) const { return m_leaves.piece(i).item.wish.bandBefore; }

    [[nodiscard]] Cost between(NodeType left, NodeType right, int split, int cut) const
    {
        Cost sum = kNever;
        for (std::size_t c = 0; c < m_system.cuts.size(); ++c)
            if (m_system.cuts[c] == cut)
                sum = m_system.prices[c];
        if (left == NodeType::Stack && right == NodeType::Stack && group(split - 1) == group(split))
            sum += toCost(m_leaves.weights().sideBySideStacks);
        return sum;
    }

    // What stands at the left, or at the right, end of a node, however its rows are nested.
    [[nodiscard]] NodeType outermost(int node, bool left) const
    {
        while (m_nodes[std::size_t(node)].type == NodeType::Row)
            node = left ? m_nodes[std::size_t(node)].left : m_nodes[std::size_t(node)].right;
        return m_nodes[std::size_t(node)].type;
    }

    [[nodiscard]] Cost priceBinary(int index) const
    {
        const Tree& node = m_nodes[std::size_t(index)];
        if (node.type == NodeType::Leaf)
            return m_leaves.costs(node.first, node.at.x, node.at.w)[std::size_t(node.at.h)];
        Cost sum = std::min(kNever, priceBinary(node.left) + priceBinary(node.right));
        const Tree& right = m_nodes[std::size_t(node.right)];
        if (node.type == NodeType::Row)
            sum += between(
                outermost(node.left, false), outermost(node.right, true), right.first, right.at.x);
        return std::min(kNever, sum);
    }

    // A group is one rectangle; bands are cut across the page before anything else is cut.
    [[nodiscard]] bool splitAllowed(const Tree& node, int split, NodeType type) const
    {
        if (group(split) > 0 && group(split) == group(split - 1)
            && !(group(node.first) == group(split) && group(node.last - 1) == group(split)))
            return false;
        int first = -1;
        for (int i = node.first + 1; i < node.last && first < 0; ++i)
            if (band(i))
                first = i;
        return first < 0 || (type == NodeType::Stack && split == first);
    }

    void expand(std::vector<int>& pending)
    {
        if (pending.empty()) {
            ++m_trees;
            m_best = std::min(m_best, priceBinary(0));
            return;
        }
        const int index = pending.back();
        pending.pop_back();
        const Tree node = m_nodes[std::size_t(index)];
        if (node.last - node.first == 1) {
            if (m_leaves.costs(node.first, node.at.x, node.at.w)[std::size_t(node.at.h)] < kNever)
                expand(pending);
        } else {
            for (int split = node.first + 1; split < node.last; ++split)
                for (const NodeType type : {NodeType::Stack, NodeType::Row})
                    if (splitAllowed(node, split, type))
                        cutEverywhere(index, split, type, pending);
        }
        pending.push_back(index);
    }

    void cutEverywhere(int index, int split, NodeType type, std::vector<int>& pending)
    {
        const Tree node = m_nodes[std::size_t(index)];
        const bool across = type == NodeType::Stack;
        const bool parted =
            group(split - 1) > 0 && group(split) > 0 && group(split - 1) != group(split);
        const bool besideGroup = group(split - 1) > 0 || group(split) > 0;
        const int gap = across && (parted || (band(split) && besideGroup)) ? 1 : 0;
        const int length = across ? node.at.h - gap : node.at.w;
        for (int cut = 1; cut < length; ++cut) {
            Tree a{NodeType::Leaf, node.first, split, node.at, -1, -1};
            Tree b{NodeType::Leaf, split, node.last, node.at, -1, -1};
            if (across) {
                a.at.h = cut;
                b.at.y += cut + gap;
                b.at.h = length - cut;
            } else {
                a.at.w = cut;
                b.at.x += cut;
                b.at.w = length - cut;
            }
            const auto size = m_nodes.size();
            m_nodes.push_back(a);
            m_nodes.push_back(b);
            m_nodes[std::size_t(index)].type = type;
            m_nodes[std::size_t(index)].left = int(size);
            m_nodes[std::size_t(index)].right = int(size) + 1;
            pending.push_back(int(size) + 1);
            pending.push_back(int(size));
            expand(pending);
            pending.pop_back();
            pending.pop_back();
            m_nodes.resize(size);
        }
        m_nodes[std::size_t(index)].type = NodeType::Leaf;
    }

    LeafTable& m_leaves;
    const ColumnSystem& m_system;
    std::vector<Tree> m_nodes;
    Cost m_best = kNever;
    long m_trees = 0;
};

// Whether a run may stand apart from the others: nothing in it must begin a page, and a group runs
// on to another page only from a page of its own.
inline bool mayBeApart(const LeafTable& leaves, int first, int last)
{
    const auto group = [&](int i) {
        return i < 0 || i >= leaves.size() ? 0 : leaves.piece(i).item.group;
    };
    for (int i = first + 1; i < last; ++i)
        if (leaves.piece(i).item.breakBefore)
            return false;
    const bool own = group(first) > 0 && group(first) == group(last - 1);
    for (const int edge : {first, last})
        if (!own && group(edge) > 0 && group(edge) == group(edge - 1))
            return false;
    return true;
}

// The cheapest of all ways to break the pieces into pages, each page counted out at every height.
class ExhaustivePages {
public:
    ExhaustivePages(LeafTable& leaves, const ColumnSystem& system)
        : m_leaves(leaves)
        , m_trees(leaves, system)
    {
    }
    Cost best(int first)
    {
        if (first == m_leaves.size())
            return 0;
        Cost cheapest = kNever;
        for (int last = first + 1; last <= m_leaves.size(); ++last) {
            const Cost here = page(first, last);
            if (here < kNever)
                cheapest = std::min(cheapest, here + best(last) + toCost(m_leaves.weights().page));
        }
        return cheapest;
    }

    Cost page(int first, int last)
    {
        if (!mayBeApart(m_leaves, first, last))
            return kNever;
        const PageSpec& spec = m_leaves.page();
        const Weights& weights = m_leaves.weights();
        Cost cheapest = kNever;
        double empty = 0; // of the page, at the cheapest height; of equals the highest
        for (int h = spec.rows; h >= 1; --h) {
            const Cost cost = m_trees.best(first, last, spec.columns, h);
            const double foot = double(spec.rows - h) / spec.rows;
            if (cost < kNever && cost + toCost(weights.foot * foot) < cheapest) {
                cheapest = cost + toCost(weights.foot * foot);
                empty = foot;
            }
        }
        if (cheapest >= kNever)
            return kNever;
        // Adults' words may be 1.3 times the children's (panel style 12, number 22, with a margin).
        double adults = 0;
        double children = 0;
        for (int i = first; i < last; ++i) {
            const Piece& piece = m_leaves.piece(i);
            const Kind kind = piece.item.kind;
            if (kind == Kind::Quote)
                children += piece.said;
            if (kind == Kind::Context || kind == Kind::Interpretation || kind == Kind::NextStep)
                adults += piece.said;
        }
        const bool outweighed = adults > 1.3 * children;
        return cheapest + toCost(weights.footPool * empty * empty)
            + (outweighed ? toCost(weights.noVoice) : 0);
    }

private:
    LeafTable& m_leaves;
    Exhaustive m_trees;
};

// A page of 4 columns and few rows, on which all trees can be counted out.
inline PageSpec smallPage(int rows)
{
    PageSpec page = pageFor(Format::A1Portrait);
    page.columns = 4;
    page.rows = rows;
    page.rowUnit = (page.size.height - 2 * page.margin + page.gutter) / rows;
    page.minPpi = 60;
    return page;
}

struct Small {
    std::unique_ptr<Document> document;
    PageSpec page;
    std::vector<Item> items;
};

// Some neighbouring pieces of a seeded document; every third time without groups.
inline Small smallCase(int count, int seed)
{
    Small out{makeDocument(1000 + count * 50 + seed, 14, Format::A1Portrait),
        smallPage(count <= 5 ? 12 : 10),
        {}};
    auto& all = out.document->request.items;
    out.items.assign(all.begin() + 1, all.begin() + 1 + count);
    for (Item& item : out.items)
        if (seed % 3 == 0)
            item.group = 0;
    if (seed % 4 == 1 && count > 2 && out.items[2].group == 0)
        out.items[2].wish.bandBefore = true;
    if (seed % 5 == 2)
        out.items[1].previous = GridRect{0, 2, 3, 2, 4};
    return out;
}

} // namespace wainscot::engine
