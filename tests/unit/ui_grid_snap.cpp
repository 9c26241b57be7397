#include "app/ui/canvas/grid_snap.h"

#include <gtest/gtest.h>

#include "app/ui/canvas/view_map.h"

namespace wainscot::ui {
namespace {

Grid a1Wide()
{
    return panelStyle(Display{}).grid;
}

TEST(GridSnap, KeepsACellOfTheGridWhereItIs)
{
    const Grid grid = a1Wide();
    for (const GridCell cell : {GridCell{0, 0, 1, 1},
             GridCell{3, 7, 4, 9},
             GridCell{grid.columns - 1, grid.rows - 1, 1, 1},
             GridCell{0, 0, grid.columns, grid.rows}})
        EXPECT_EQ(nearestCell(grid, rectOf(grid, cell)), cell);
}

TEST(GridSnap, StaysInsideThePanelHoweverFarOneDrags)
{
    const Grid grid = a1Wide();
    const RectMm cell = rectOf(grid, {3, 7, 4, 9});
    for (const double far : {-5000.0, 5000.0}) {
        const RectMm at = snapped(grid, cell.movedBy(Mm(far), Mm(far)));
        EXPECT_EQ(at.size(), cell.size());
        EXPECT_GE(at.x, grid.margin);
        EXPECT_GE(at.y, grid.margin);
        EXPECT_LE(at.right().value(), (grid.panel.width - grid.margin).value() + 0.01);
        EXPECT_LE(at.bottom().value(), (grid.panel.height - grid.margin).value() + 0.01);
    }
}

TEST(GridSnap, MovesAPieceOfAnySizeByWholeSteps)
{
    const Grid grid = a1Wide();
    RectMm rect = rectOf(grid, {3, 7, 4, 9});
    rect.width -= Mm(5); // a photo narrower than its columns
    const RectMm next = moved(grid, rect, 1, -2);
    EXPECT_EQ(next.size(), rect.size());
    EXPECT_EQ(next.topLeft(), (PointMm{grid.x(4), grid.y(5)}));
}

TEST(GridSnap, ResizesAnEdgeAndLeavesTheOthers)
{
    const Grid grid = a1Wide();
    const RectMm cell = rectOf(grid, {3, 7, 4, 9});
    const Mm pitch = grid.column + grid.gutter;
    const RectMm wider = resized(grid, cell, Qt::RightEdge, pitch * 1.1, Mm(0));
    EXPECT_EQ(nearestCell(grid, wider), (GridCell{3, 7, 5, 9}));
    const RectMm higher = resized(grid, cell, Qt::TopEdge, Mm(0), grid.rowUnit * -2.0);
    EXPECT_EQ(nearestCell(grid, higher), (GridCell{3, 5, 4, 11}));
    const RectMm least = resized(grid, cell, Qt::LeftEdge, Mm(9999), Mm(0));
    EXPECT_EQ(nearestCell(grid, least).columns, 1);
}

TEST(ViewMap, KeepsThePointUnderThePointerWhileZooming)
{
    ViewMap view;
    view.fit({Mm(841), Mm(594)}, QRectF(10, 20, 700, 500));
    const QPointF at(300, 260);
    const PointMm before = view.toMm(at);
    view.zoomAbout(at, 3);
    EXPECT_NEAR(view.toMm(at).x.value(), before.x.value(), 1e-9);
    EXPECT_NEAR(view.toMm(at).y.value(), before.y.value(), 1e-9);
    for (int i = 0; i < 100; ++i)
        view.zoomAbout(at, 3);
    EXPECT_LE(view.scale(), ViewMap::kMostScale);
}

} // namespace
} // namespace wainscot::ui
