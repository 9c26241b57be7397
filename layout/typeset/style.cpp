#include "layout/typeset/style.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wainscot {

namespace {

// Half of an angle given in arcminutes, in radians.
double halfAngle(double minutes)
{
    return minutes / 60.0 * std::numbers::pi / 180.0 / 2.0;
}

constexpr QRgb rgb(unsigned hex)
{
    return 0xff000000U | hex;
}

constexpr double kBodyArcminutes = 20;
constexpr double kScaleRatio = 1.25;
constexpr double kBodyLead = 1.95; // of the body cap height, before it is fitted to whole rows
constexpr double kMarginsPerShortSide = 18;
constexpr double kGuttersPerShortSide = 42;

Grid gridFor(SizeMm panel, Mm bodyCap)
{
    Grid grid;
    grid.panel = panel;
    const Mm shortSide = std::min(panel.width, panel.height);
    grid.margin = shortSide / kMarginsPerShortSide;
    grid.gutter = shortSide / kGuttersPerShortSide;
    grid.column = (panel.width - 2 * grid.margin - (grid.columns - 1) * grid.gutter) / grid.columns;
    const Mm height = panel.height - 2 * grid.margin + grid.gutter;
    grid.rows = std::max(1, static_cast<int>(std::lround(height / (kBodyLead * bodyCap))));
    grid.rowUnit = height / grid.rows;
    return grid;
}

template <class T> const T& byName(const std::vector<T>& all, const QString& name)
{
    const auto same = [&](const T& one) {
        return one.name.compare(name, Qt::CaseInsensitive) == 0;
    };
    const auto at = std::find_if(all.begin(), all.end(), same);
    return at == all.end() ? all.front() : *at;
}

} // namespace

const std::vector<Pairing>& pairings()
{
    static const std::vector<Pairing> all{
        {QStringLiteral("Schoolroom"),
            QStringLiteral("Andika"),
            QStringLiteral("Charis SIL"),
            QStringLiteral("Letters made for new readers; the adult in a book face")},
        {QStringLiteral("Many Scripts"),
            QStringLiteral("Andika"),
            QStringLiteral("Noto Serif"),
            QStringLiteral("Two languages")},
        {QStringLiteral("Reading Room"),
            QStringLiteral("Vollkorn"),
            QStringLiteral("Lato"),
            QStringLiteral("Many voices; a warm, heavy title")},
        {QStringLiteral("Fieldbook"),
            QStringLiteral("Gentium Book Plus"),
            QStringLiteral("Lato"),
            QStringLiteral("One drawing with its words")},
        {QStringLiteral("Every Desk"),
            QStringLiteral("Noto Serif"),
            QStringLiteral("Noto Sans"),
            QStringLiteral("Any script, with few fonts installed")},
        {QStringLiteral("Window Seat"),
            QStringLiteral("Lato"),
            QStringLiteral("Gentium Book Plus"),
            QStringLiteral("Plain, saves ink")},
    };
    return all;
}

const std::vector<Palette>& palettes()
{
    static const std::vector<Palette> all{
        {QStringLiteral("Wet Slate"),
            rgb(0x1D282E),
            rgb(0x10384A),
            rgb(0x4A5053),
            rgb(0xEDF2F3),
            rgb(0xF6F1E6),
            rgb(0xA8432B)},
        {QStringLiteral("Rowan"),
            rgb(0x2B211F),
            rgb(0x6E1B22),
            rgb(0x504A46),
            rgb(0xF0F3EA),
            rgb(0xF9EFE9),
            rgb(0x3E6337)},
        {QStringLiteral("Linseed"),
            rgb(0x24221D),
            rgb(0x1E3150),
            rgb(0x55503F),
            rgb(0xF7F2E2),
            rgb(0xEBF1F3),
            rgb(0x875800)},
        {QStringLiteral("Damson"),
            rgb(0x251F2C),
            rgb(0x452752),
            rgb(0x524D57),
            rgb(0xF3EFF5),
            rgb(0xF0F3EA),
            rgb(0x964815)},
        {QStringLiteral("Pond Iron"),
            rgb(0x1F2925),
            rgb(0x134539),
            rgb(0x4A514C),
            rgb(0xECF3EF),
            rgb(0xF7F0E7),
            rgb(0x994A1E)},
        {QStringLiteral("Soot"),
            rgb(0x161616),
            rgb(0x000000),
            rgb(0x4D4D4D),
            rgb(0xF2F2F2),
            rgb(0xF8F8F8),
            rgb(0x5C5C5C)},
    };
    return all;
}

const Pairing& pairingByName(const QString& name)
{
    return byName(pairings(), name);
}

const Palette& paletteByName(const QString& name)
{
    return byName(palettes(), name);
}

Mm capHeightForAngle(Mm distance, double arcminutes)
{
    return 2 * distance * std::tan(halfAngle(arcminutes));
}

double arcminutes(Mm capHeight, Mm distance)
{
    return 2 * std::atan(capHeight / (2 * distance)) * 180.0 / std::numbers::pi * 60.0;
}

Mm TypeScale::cap(int step) const
{
    return body * std::pow(kScaleRatio, step);
}

Mm Grid::x(int column_) const
{
    return margin + column_ * (column + gutter);
}

Mm Grid::y(int row) const
{
    return margin + row * rowUnit;
}

Mm Grid::width(int columns_) const
{
    return columns_ * (column + gutter) - gutter;
}

Mm Grid::height(int rows_) const
{
    return rows_ * rowUnit - gutter;
}

RectMm Grid::cell(int column_, int row, int columns_, int rows_) const
{
    return {x(column_), y(row), width(columns_), height(rows_)};
}

PlanStyle planStyle(const QString& plan)
{
    PlanStyle style;
    style.pairing = QStringLiteral("Schoolroom");
    style.palette = QStringLiteral("Wet Slate");
    if (plan == QLatin1String("voices")) {
        style.voiceStep = 3;
        style.titleStep = 6;
        style.titleLines = 2;
        style.pairing = QStringLiteral("Reading Room");
        style.palette = QStringLiteral("Rowan");
    } else if (plan == QLatin1String("evening")) {
        style.parting = Parting::Invitation;
        style.pairing = QStringLiteral("Many Scripts");
        style.palette = QStringLiteral("Pond Iron");
    } else if (plan == QLatin1String("drawing")) {
        style.pairing = QStringLiteral("Fieldbook");
        style.palette = QStringLiteral("Damson");
    } else if (plan == QLatin1String("thread")) {
        style.thread = true;
        style.parting = Parting::Invitation;
        style.pairing = QStringLiteral("Many Scripts");
        style.palette = QStringLiteral("Linseed");
    } else if (plan == QLatin1String("door")) {
        style.titleLines = 2;
        style.parting = Parting::Invitation;
    } else if (plan == QLatin1String("before")) {
        style.titleLines = 2;
        style.parting = Parting::Invitation;
        style.palette = QStringLiteral("Pond Iron");
    } else if (plan == QLatin1String("questions")) {
        style.titleLines = 2;
        style.parting = Parting::Invitation;
        style.pairing = QStringLiteral("Fieldbook");
        style.palette = QStringLiteral("Damson");
    }
    return style;
}

PanelStyle panelStyle(const Display& display, int voiceStep, int titleStep)
{
    PanelStyle style;
    style.scale.body = capHeightForAngle(display.readingDistance, kBodyArcminutes);
    style.scale.voiceStep = voiceStep;
    style.scale.titleStep = titleStep;
    style.grid = gridFor(display.panelSize, style.scale.body);
    style.readingDistance = display.readingDistance;
    style.pairing = pairingByName(display.pairing);
    style.palette = paletteByName(display.palette);
    const PlanStyle plan = planStyle(display.plan);
    style.titleLines = plan.titleLines;
    style.parting = plan.parting;
    style.thread = plan.thread;
    return style;
}

} // namespace wainscot
