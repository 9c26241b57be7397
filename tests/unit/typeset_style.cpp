#include "layout/typeset/style.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace {

using namespace wainscot;

// WCAG 2 relative luminance and contrast ratio (W3C, Web Content Accessibility Guidelines 2.x).
double luminance(QRgb colour)
{
    const auto linear = [](int part) {
        const double c = part / 255.0;
        return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(qRed(colour)) + 0.7152 * linear(qGreen(colour))
        + 0.0722 * linear(qBlue(colour));
}

double contrast(QRgb a, QRgb b)
{
    const double one = luminance(a);
    const double other = luminance(b);
    return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

QRgb hex(unsigned rgb)
{
    return 0xff000000U | rgb;
}

Display display(double width, double height, double distance)
{
    Display d;
    d.panelSize = {Mm(width), Mm(height)};
    d.readingDistance = Mm(distance);
    return d;
}

// H = 2 D tan(angle / 2): NUREG-0700 rev. 2, 1.3.1-4 (US NRC). Heights in mm at 5, 16, 20, 22 and
// 31 arcminutes, computed from that formula.
TEST(CapHeight, FollowsTheVisualAngle)
{
    struct Row {
        double distance;
        std::array<double, 5> heights;
    };
    const std::array rows{Row{500, {0.73, 2.33, 2.91, 3.20, 4.51}},
        Row{600, {0.87, 2.79, 3.49, 3.84, 5.41}},
        Row{700, {1.02, 3.26, 4.07, 4.48, 6.31}},
        Row{800, {1.16, 3.72, 4.65, 5.12, 7.21}},
        Row{1000, {1.45, 4.65, 5.82, 6.40, 9.02}},
        Row{1500, {2.18, 6.98, 8.73, 9.60, 13.53}},
        Row{2000, {2.91, 9.31, 11.64, 12.80, 18.04}},
        Row{3000, {4.36, 13.96, 17.45, 19.20, 27.05}}};
    const std::array angles{5.0, 16.0, 20.0, 22.0, 31.0};
    for (const Row& row : rows) {
        for (std::size_t i = 0; i < angles.size(); ++i)
            EXPECT_NEAR(
                capHeightForAngle(Mm(row.distance), angles[i]).value(), row.heights[i], 0.0051);
    }
}

TEST(CapHeight, TellsTheAngleOfKnownRules)
{
    // D/200 is 17.2 arcminutes (FAA rule, via a published engineering handbook chapter).
    EXPECT_NEAR(arcminutes(Mm(5), Mm(1000)), 17.19, 0.01);
    // One inch for ten feet is 28.65 (sign makers' guides; common practice, no source).
    EXPECT_NEAR(arcminutes(inches(1), inches(120)), 28.65, 0.01);
    // 5/8 in at 72 in is 29.8 (2010 ADA Standards, table 703.5.5).
    EXPECT_NEAR(arcminutes(inches(0.625), inches(72)), 29.8, 0.05);
    EXPECT_NEAR(arcminutes(capHeightForAngle(Mm(1234), 20), Mm(1234)), 20, 1e-9);
}

TEST(TypeScale, HasTheSizesOfTheWallAndTheTable)
{
    const TypeScale wall = panelStyle(display(841, 594, 1500)).scale;
    EXPECT_NEAR(wall.body.value(), 8.73, 0.005);
    EXPECT_NEAR(wall.caption().value(), 5.59, 0.005);
    EXPECT_NEAR(wall.voice().value(), 13.64, 0.005);
    EXPECT_NEAR(wall.title().value(), 26.63, 0.005);
    EXPECT_NEAR(wall.cap(7).value(), 41.6, 0.05);
    const TypeScale table = panelStyle(display(420, 297, 1000)).scale;
    EXPECT_NEAR(table.body.value(), 5.82, 0.005);
    EXPECT_NEAR(table.caption().value(), 3.72, 0.005);
    EXPECT_NEAR(table.voice().value(), 9.09, 0.005);
    EXPECT_NEAR(table.title().value(), 17.75, 0.01);
    EXPECT_NEAR(table.cap(7).value(), 27.7, 0.05);
}

TEST(TypeScale, ShowsEachRoleAtItsAngle)
{
    const PanelStyle style = panelStyle(display(841, 594, 1500), 3);
    const Mm distance = style.readingDistance;
    EXPECT_NEAR(arcminutes(style.scale.caption(), distance), 12.8, 0.05);
    EXPECT_NEAR(arcminutes(style.scale.caption(), 0.8 * distance), 16.0, 0.05);
    EXPECT_NEAR(arcminutes(style.scale.cap(2), distance), 31.3, 0.06);
    EXPECT_NEAR(arcminutes(style.scale.voice(), distance), 39.1, 0.06);
    EXPECT_NEAR(arcminutes(style.scale.cap(6), distance), 76, 0.5);
}

TEST(Grid, HasTheMeasuresOfThePanelSizes)
{
    struct Row {
        double width, height, distance, margin, gutter, column;
        int rows;
        double unit;
    };
    const std::array rows{Row{841, 594, 1500, 33.0, 14.1, 51.6, 32, 16.94},
        Row{594, 841, 1500, 33.0, 14.1, 31.0, 46, 17.16},
        Row{420, 594, 1000, 23.3, 10.0, 21.9, 49, 11.37},
        Row{420, 297, 1000, 16.5, 7.1, 25.8, 24, 11.29},
        Row{1188, 420, 1500, 23.3, 10.0, 85.9, 23, 16.67}};
    for (const Row& row : rows) {
        const Grid grid = panelStyle(display(row.width, row.height, row.distance)).grid;
        EXPECT_NEAR(grid.margin.value(), row.margin, 0.051);
        EXPECT_NEAR(grid.gutter.value(), row.gutter, 0.051);
        EXPECT_NEAR(grid.column.value(), row.column, 0.051);
        EXPECT_EQ(grid.rows, row.rows);
        EXPECT_NEAR(grid.rowUnit.value(), row.unit, 0.0051);
    }
}

TEST(Grid, FillsThePanelBetweenItsMargins)
{
    const Grid grid = panelStyle(display(594, 841, 1500)).grid;
    const RectMm all = grid.cell(0, 0, 12, grid.rows);
    EXPECT_NEAR(all.right().value(), 594 - grid.margin.value(), 1e-9);
    EXPECT_NEAR(all.bottom().value(), 841 - grid.margin.value(), 1e-9);
    EXPECT_NEAR((grid.cell(3, 0, 1, 1).x - grid.cell(2, 0, 1, 1).right()).value(),
        grid.gutter.value(),
        1e-9);
}

TEST(Style, FallsBackToTheFirstOfAnUnknownName)
{
    Display d = display(841, 594, 1500);
    d.pairing = QStringLiteral("no such pairing");
    d.palette = QStringLiteral("rowan");
    const PanelStyle style = panelStyle(d);
    EXPECT_EQ(style.pairing.name, QStringLiteral("Schoolroom"));
    EXPECT_EQ(style.palette.name, QStringLiteral("Rowan"));
    EXPECT_EQ(pairings().size(), 6U);
    EXPECT_EQ(palettes().size(), 6U);
}

// Published pairs, each with where it was published; the formula must give them.
TEST(Contrast, GivesThePublishedPairs)
{
    EXPECT_NEAR(contrast(hex(0xFFFFFF), hex(0x000000)), 21, 1e-9); // WCAG 2: black on white
    EXPECT_NEAR(contrast(hex(0x767676), hex(0xFFFFFF)), 4.54, 0.005); // ColorfulSwift wiki
    EXPECT_NEAR(contrast(hex(0x00FF33), hex(0xFFFFFF)), 1.368, 0.0005); // accessible-colors readme
    EXPECT_NEAR(contrast(hex(0x00FF33), hex(0x616161)), 4.528, 0.0005); // the same
    EXPECT_NEAR(contrast(hex(0x00FF33), hex(0x000000)), 15.3518, 0.00005); // the same
    EXPECT_LT(contrast(hex(0x777777), hex(0xFFFFFF)), 4.5);
    EXPECT_GT(contrast(hex(0x757575), hex(0xFFFFFF)), 4.5);
    EXPECT_GT(contrast(hex(0x595959), hex(0xFFFFFF)), 7.0);
    EXPECT_LT(contrast(hex(0x5A5A5A), hex(0xFFFFFF)), 7.0);
}

// Ratios of ink, child, adult and accent on paper, tint 1 and tint 2, computed with the WCAG 2
// formula; and each tint against the paper.
TEST(Palette, HasTheContrastItWasChosenFor)
{
    struct Row {
        const char* name;
        std::array<double, 12> ratios;
        double tint1, tint2;
    };
    const std::array rows{
        Row{"Wet Slate",
            {15.05, 13.33, 13.36, 12.45, 11.03, 11.05, 8.19, 7.25, 7.27, 6.00, 5.31, 5.32},
            1.13,
            1.13},
        Row{"Rowan",
            {15.67, 13.96, 13.84, 11.40, 10.15, 10.07, 8.72, 7.77, 7.70, 6.90, 6.15, 6.09},
            1.12,
            1.13},
        Row{"Linseed",
            {15.89, 14.19, 13.93, 13.04, 11.65, 11.43, 8.06, 7.20, 7.07, 6.13, 5.47, 5.37},
            1.12,
            1.14},
        Row{"Damson",
            {16.02, 14.09, 14.27, 12.61, 11.10, 11.24, 8.21, 7.22, 7.32, 6.49, 5.71, 5.79},
            1.14,
            1.12},
        Row{"Pond Iron",
            {14.98, 13.29, 13.25, 10.84, 9.61, 9.58, 8.16, 7.24, 7.22, 6.26, 5.56, 5.54},
            1.13,
            1.13},
        Row{"Soot",
            {18.10, 16.16, 17.04, 21.00, 18.76, 19.77, 8.45, 7.55, 7.96, 6.69, 5.97, 6.30},
            1.12,
            1.06}};
    for (const Row& row : rows) {
        const Palette& p = paletteByName(QString::fromLatin1(row.name));
        ASSERT_EQ(p.name, QString::fromLatin1(row.name));
        const std::array grounds{hex(0xFFFFFF), p.tint1, p.tint2};
        const std::array inks{p.ink, p.child, p.adult, p.accent};
        for (std::size_t i = 0; i < inks.size(); ++i) {
            for (std::size_t g = 0; g < grounds.size(); ++g)
                EXPECT_NEAR(contrast(inks[i], grounds[g]), row.ratios[3 * i + g], 0.0051)
                    << row.name << " ink " << i << " ground " << g;
        }
        EXPECT_NEAR(contrast(p.tint1, hex(0xFFFFFF)), row.tint1, 0.0051);
        EXPECT_NEAR(contrast(p.tint2, hex(0xFFFFFF)), row.tint2, 0.0051);
    }
}

TEST(Palette, ReadsOnEveryGroundAndKeepsChildrenLoudest)
{
    for (const Palette& p : palettes()) {
        for (const QRgb ground : {hex(0xFFFFFF), p.tint1, p.tint2}) {
            for (const QRgb text : {p.ink, p.child, p.adult})
                EXPECT_GE(contrast(text, ground), 7.0) << qPrintable(p.name); // WCAG 2 AAA, 1.4.6
            EXPECT_GE(contrast(p.accent, ground), 4.5) << qPrintable(p.name); // WCAG 2 AA, 1.4.3
        }
        EXPECT_GE(contrast(p.child, hex(0xFFFFFF)), 1.2 * contrast(p.adult, hex(0xFFFFFF)));
    }
}

} // namespace
