// White rows shared out over a page.
#include "layout/engine/near_pages.h"
#include "layout/engine/spread.h"
#include "layout/engine/targets.h"
#include "tests/support/engine_documents.h"

#include <gtest/gtest.h>

namespace wainscot::engine {
namespace {

void leavesOf(const Node& node, std::vector<GridRect>& out)
{
    if (node.type == NodeType::Leaf)
        out.push_back(node.at);
    for (const Node& child : node.children)
        leavesOf(child, out);
}

std::vector<GridRect> cellsOf(const PagePlan& page)
{
    std::vector<GridRect> out;
    leavesOf(page.trees.front(), out);
    return out;
}

class EngineSpread : public ::testing::TestWithParam<int> {
protected:
    EngineSpread()
        : m_document(makeDocument(GetParam(), 9, Format::A1Portrait))
        , m_text(m_document->text)
        , m_pieces(piecesOf(m_document->request.items, m_text))
    {
        setTargets(m_pieces, m_document->request.page, 1, m_text);
        m_leaves = std::make_unique<LeafTable>(m_document->request.page, m_pieces, m_text);
        m_pages = pagesNear(columnSystem("halves", {4, 6, 8}), *m_leaves, nullptr);
    }

    std::unique_ptr<Document> m_document;
    TextMemo m_text;
    std::vector<Piece> m_pieces;
    std::unique_ptr<LeafTable> m_leaves;
    std::vector<PagePlan> m_pages;
};

TEST_P(EngineSpread, OnlyMovesWholePartsDownAndKeepsWhatBelongsTogether)
{
    ASSERT_FALSE(m_pages.empty());
    int spreadPages = 0;
    for (const PagePlan& page : m_pages) {
        const auto wider = spread(page, {2, 1}, *m_leaves);
        if (!wider)
            continue;
        ++spreadPages;
        const std::vector<GridRect> before = cellsOf(page);
        const std::vector<GridRect> after = cellsOf(*wider);
        ASSERT_EQ(before.size(), after.size());
        for (std::size_t k = 0; k < after.size(); ++k) {
            EXPECT_EQ(after[k].x, before[k].x);
            EXPECT_EQ(after[k].w, before[k].w);
            EXPECT_EQ(after[k].h, before[k].h);
            EXPECT_GE(after[k].y, before[k].y);
            EXPECT_LE(after[k].y + after[k].h, m_document->request.page.rows);
            const int group = k > 0 ? m_leaves->piece(int(k)).item.group : 0;
            if (group > 0 && m_leaves->piece(int(k) - 1).item.group == group) {
                EXPECT_EQ(after[k].y - before[k].y, after[k - 1].y - before[k - 1].y);
            }
        }
    }
    EXPECT_GT(spreadPages, 0);
}

TEST_P(EngineSpread, FindsAgainHowItStoodBefore)
{
    ASSERT_FALSE(m_pages.empty());
    std::optional<PagePlan> stood;
    const PagePlan* close = nullptr;
    for (const PagePlan& page : m_pages)
        if (auto wider = stood ? std::nullopt : spread(page, {2, 1}, *m_leaves)) {
            stood = std::move(wider);
            close = &page;
        }
    ASSERT_TRUE(stood.has_value());
    std::vector<Piece> pieces = m_pieces;
    const std::vector<GridRect> cells = cellsOf(*stood);
    for (std::size_t k = 0; k < pieces.size(); ++k)
        pieces[k].item.previous = cells[k];
    LeafTable leaves(m_document->request.page, pieces, m_text);
    EXPECT_EQ(cellsOf(spreadAsBefore(*close, leaves)), cells);
    EXPECT_EQ(cellsOf(spreadAsBefore(*close, *m_leaves)), cellsOf(*close))
        << "nothing stood before";
}

INSTANTIATE_TEST_SUITE_P(Documents, EngineSpread, ::testing::Range(1, 7));

} // namespace
} // namespace wainscot::engine
