// The interval programme against an explicit enumeration of every slicing tree and every cut.
#include "layout/engine/search.h"
#include "tests/support/engine_exhaustive.h"

#include <gtest/gtest.h>

namespace wainscot::engine {
namespace {

void expectExact(int count, int seeds)
{
    int solved = 0;
    long trees = 0;
    for (int seed = 0; seed < seeds; ++seed) {
        SCOPED_TRACE(testing::Message() << count << " pieces, seed " << seed);
        const Small small = smallCase(count, seed);
        TextMemo text(small.document->text);
        auto pieces = piecesOf(small.items, text);
        setTargets(pieces, small.page, 1, text);
        LeafTable leaves(small.page, pieces, text);
        const ColumnSystem system{"every column", {1, 2, 3}, {100, 200, 300}};
        RunTable table(leaves, system);
        ASSERT_TRUE(table.fill());
        const Cost found = table.cost(0, count, 0, 4, small.page.rows);
        Exhaustive exhaustive(leaves, system);
        ASSERT_EQ(found, exhaustive.best(4, small.page.rows));
        trees += exhaustive.trees();
        if (found >= kNever)
            continue;
        ++solved;
        const Node tree = table.tree(0, count, {0, 0, 0, 4, small.page.rows});
        EXPECT_EQ(exhaustive.price(tree), found) << "the tree built is not the tree priced";
    }
    EXPECT_GT(solved, seeds / 2) << "too few cases can be solved at all to prove anything";
    std::printf("%d pieces: %d of %d cases have a solution, %ld trees counted out\n",
        count,
        solved,
        seeds,
        trees);
}

TEST(EngineExact, EqualsEverySlicingTreeOfTwoToFourPieces)
{
    for (const int count : {2, 3, 4})
        expectExact(count, 40);
}

TEST(EngineExact, EqualsEverySlicingTreeOfFivePieces)
{
    expectExact(5, 80);
}

TEST(EngineExact, EqualsEverySlicingTreeOfSixPieces)
{
    expectExact(6, 60);
}

TEST(EngineExact, EqualsEverySlicingTreeOfSevenPieces)
{
    expectExact(7, 12);
}

TEST(EngineExact, EqualsEveryWayToBreakPages)
{
    int several = 0;
    for (int seed = 0; seed < 120; ++seed) {
        const int count = 3 + seed % 2;
        SCOPED_TRACE(testing::Message() << count << " pieces, seed " << seed);
        Small small = smallCase(count, 40 + seed);
        if (seed % 3 == 1)
            small.items[2].breakBefore = true;
        TextMemo text(small.document->text);
        auto pieces = piecesOf(small.items, text);
        setTargets(pieces, small.page, 2, text);
        LeafTable leaves(small.page, pieces, text);
        const ColumnSystem system{"every column", {1, 2, 3}, {100, 200, 300}};
        RunTable table(leaves, system);
        const Pagination found = cheapestPages(table, leaves, {}, {});
        ASSERT_EQ(found.cost, ExhaustivePages(leaves, system).best(0));
        several += found.pages.size() > 1 ? 1 : 0;
        // A whole table gives the same pages and the same trees.
        RunTable whole(leaves, system);
        ASSERT_TRUE(whole.fill());
        const Pagination all = paginate(whole, leaves, {}, std::nullopt);
        ASSERT_EQ(all.cost, found.cost);
        ASSERT_EQ(all.pages.size(), found.pages.size());
        for (std::size_t p = 0; p < all.pages.size(); ++p) {
            EXPECT_EQ(all.pages[p].last, found.pages[p].last);
            EXPECT_EQ(all.pages[p].cost, found.pages[p].cost);
        }
    }
    EXPECT_GT(several, 20) << "too few cases have a second page to prove anything";
}

} // namespace
} // namespace wainscot::engine
