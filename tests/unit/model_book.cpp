#include "core/model/book.h"
#include "core/model/tables.h"

#include <gtest/gtest.h>

namespace wainscot {

namespace {

TEST(Table, NeverHandsOutANumberTwice)
{
    Table<Child> children;
    Child child;
    child.id = children.newId();
    children.put(child);
    children.remove(child.id);
    EXPECT_GT(children.newId(), child.id);
    child.id = ChildId(40);
    children.put(child);
    EXPECT_EQ(children.newId(), ChildId(41));
    children.setLastNumber(3); // an older mark changes nothing
    EXPECT_EQ(children.newId(), ChildId(42));
}

TEST(LookUp, IsByNameInAnyCase)
{
    Book book;
    Child child;
    child.id = book.children.newId();
    child.name = QStringLiteral("Mei Tanaka");
    book.children.put(child);
    ASSERT_NE(childByName(book, QStringLiteral(" mei tanaka")), nullptr);
    EXPECT_EQ(childByName(book, QStringLiteral("Mei")), nullptr);
}

TEST(LookUp, GivesPanelsByNumberAndPiecesByOrder)
{
    Book book;
    const DisplayId display(1);
    book.panels.put({PanelId(1), display, 2});
    book.panels.put({PanelId(2), display, 1});
    book.panels.put({PanelId(3), DisplayId(9), 1});
    const auto panels = panelsOf(book, display);
    ASSERT_EQ(panels.size(), 2U);
    EXPECT_EQ(panels[0]->id, PanelId(2));
    for (const int order : {3, 1, 2}) {
        Piece piece;
        piece.id = book.pieces.newId();
        piece.panel = PanelId(2);
        piece.order = order;
        book.pieces.put(piece);
    }
    const auto pieces = piecesOf(book, PanelId(2));
    ASSERT_EQ(pieces.size(), 3U);
    EXPECT_EQ(pieces[0]->order, 1);
    EXPECT_EQ(pieces[2]->order, 3);
}

TEST(Tables, AreEachVisitedOnce)
{
    Book book;
    std::vector<const void*> seen;
    forEachTable(book, [&](auto& table) {
        using T = typename std::decay_t<decltype(table)>::ValueType;
        EXPECT_EQ(static_cast<const void*>(&tableOf<T>(book)), static_cast<const void*>(&table));
        seen.push_back(&table);
    });
    std::sort(seen.begin(), seen.end());
    EXPECT_EQ(std::unique(seen.begin(), seen.end()) - seen.begin(), 19);
}

} // namespace

} // namespace wainscot
