// A panel as drawn: glyph runs with their text, pictures, fills, and the structure behind them.
// Laid out once; played into QPainter by layout/screen and into PDF by layout/paper.
#pragma once

#include "core/base/geometry.h"
#include "core/permit/cleared.h"

#include <QPainterPath>
#include <QPointF>
#include <QRawFont>
#include <QRgb>
#include <QString>

#include <variant>
#include <vector>

namespace wainscot {

// Text is laid out in sixteenths of a point: sizes are whole units, so that screen and paper break
// lines alike at every zoom (Qt rounds a font's pixel size to a whole number).
inline constexpr double kUnitsPerPt = 16.0;

enum class Role {
    Document, // the root, element 0
    Heading1, // the title
    Heading2, // headings of adult panels, labels of groups
    Paragraph,
    Quote, // a child's words with name and status
    Figure, // a picture; its caption is a child element
    Caption,
};

// A node of the structure, in reading order. `parent` is an index into DisplayList::elements.
struct Element {
    Role role = Role::Paragraph;
    int parent = 0; // -1 for the document only
    PieceId piece;
    QString language; // BCP 47; empty = the parent's
    QString alternative; // of a figure
    RectMm bounds; // of a figure
};

// Neighbouring glyphs that stand for a stretch of text together.
struct Cluster {
    int firstGlyph = 0;
    int glyphCount = 0;
    QString text; // what was typed, letter for letter
};

// Glyphs of one font, size, colour and direction on one baseline.
struct GlyphRun {
    QRawFont font; // pixel size = size in units, no hinting
    int sizeUnits = 0; // em in sixteenths of a point
    QRgb colour = 0xff000000;
    PointMm origin; // positions count from here
    std::vector<quint32> glyphs;
    std::vector<QPointF> positions; // baseline points, in units, y down
    std::vector<Cluster> clusters; // in logical order; together all of the run's text
    bool rightToLeft = false;
    bool endsLine = false; // a soft line break follows: text goes on after a space
};

struct PlacedPicture {
    ClearedPicture picture;
    RectMm place; // where the visible part goes
};

struct Fill {
    RectMm rect;
    QRgb colour = 0xffffffff;
};

// A knot of the thread, or the open ring at its end.
struct Disc {
    PointMm centre;
    Mm radius; // to the outer edge
    Mm ring; // width of a ring; 0 = filled
    QRgb colour = 0xff000000;
};

// A drawing in lines, already as wide as they are drawn: a sign beside a question.
struct Shape {
    QPainterPath area; // mm; filled wherever the path winds around
    QRgb colour = 0xff000000;
};

// One thing to draw. `element` -1 = decoration (rules, tints, mats): no meaning of its own.
struct Mark {
    int element = -1;
    PieceId piece;
    std::variant<Fill, PlacedPicture, GlyphRun, Disc, Shape> shape;
};

// Text that another font draws than the style asks for: reported, never silent.
struct FontGap {
    PieceId piece;
    QString wanted; // family
    QString used; // family; empty: no installed font has these characters
    QString text;
    friend bool operator==(const FontGap&, const FontGap&) = default;
};

struct DisplayList {
    SizeMm size;
    QString title;
    QString language;
    std::vector<Element> elements; // reading order
    std::vector<Mark> marks; // drawing order
    std::vector<FontGap> fontGaps;
};

} // namespace wainscot
