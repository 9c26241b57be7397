// Where things are: on the paper, off each other, on the grid, with white around them.
#include "layout/check/rules.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "core/base/says.h"

namespace wainscot::check {

namespace {

// How far a rectangle lies inside the panel, at its nearest edge; negative = sticks out.
double inside(const RectMm& rect, SizeMm panel)
{
    return std::min({rect.x.value(),
        rect.y.value(),
        (panel.width - rect.right()).value(),
        (panel.height - rect.bottom()).value()});
}

RectMm boxOf(const TextLine& line)
{
    return {line.left, line.capLine(), line.right - line.left, line.cap};
}

bool isTint(const FillFact& fill, const PanelStyle& style)
{
    return fill.colour == style.palette.tint1 || fill.colour == style.palette.tint2;
}

// Distance of a place from the nearest line of an even grid.
double offLines(Mm place, Mm first, Mm step)
{
    const double steps = std::round((place - first) / step);
    return std::abs((place - first - steps * step).value());
}

// A quote may be moved in by a gutter, to make room for its hanging mark, and its credits with it.
double offColumns(const ClearedPiece& piece, const Grid& grid)
{
    const Mm step = grid.column + grid.gutter;
    const double plain = offLines(piece.cell.x, grid.margin, step);
    if (piece.kind != PieceKind::Quote && piece.kind != PieceKind::Credits)
        return plain;
    return std::min(plain, offLines(piece.cell.x, grid.margin + grid.gutter, step));
}

// Credits stand on the foot of what is beside them; everything else hangs from a row line.
double offRows(const ClearedPiece& piece, const Grid& grid)
{
    if (piece.kind == PieceKind::Credits)
        return 0;
    return offLines(piece.cell.y, grid.margin, grid.rowUnit);
}

} // namespace

void checkOutside(const PanelFacts& panel, Notebook& notes)
{
    const SizeMm size = panel.display.panelSize;
    std::set<PieceId> said;
    const auto tell = [&](PieceId piece, double depth) {
        if (depth >= -0.05 || !said.insert(piece).second)
            return;
        notes.add(Limit::Outside,
            piece,
            -depth,
            Says::tr("%1 goes %2 mm over the edge of the paper and would be cut off.")
                .arg(called(panel, piece), number(-depth)));
    };
    for (const TextLine& line : panel.lines)
        tell(line.piece, inside(boxOf(line), size));
    for (const PictureFact& picture : panel.pictures)
        tell(picture.piece, inside(picture.place, size));
    for (const ClearedPiece& piece : panel.pieces) {
        if (!piece.cell.isEmpty())
            tell(piece.id, inside(piece.cell, size));
    }
}

void checkTrimEdge(const PanelFacts& panel, Notebook& notes)
{
    const double least = panel.limits.of(Limit::TrimEdge);
    std::set<PieceId> said;
    for (const TextLine& line : panel.lines) {
        const double depth = inside(boxOf(line), panel.display.panelSize);
        if (depth >= least || depth < -0.05 || !said.insert(line.piece).second)
            continue;
        notes.add(Limit::TrimEdge,
            line.piece,
            depth,
            Says::tr("Text of %1 stands %2 mm from the edge; printers may lose what is "
                     "nearer than %3 mm.")
                .arg(called(panel, line.piece), number(depth), number(least)));
    }
    const double margin = panel.style.grid.margin.value();
    if (margin < panel.limits.of(Limit::Margin)) {
        notes.add(Limit::Margin,
            {},
            margin,
            Says::tr("The margin of this format is %1 mm; %2 mm look calm.")
                .arg(number(margin), number(panel.limits.of(Limit::Margin))));
    }
}

void checkOverlaps(const PanelFacts& panel, Notebook& notes)
{
    const Mm tolerance(panel.limits.of(Limit::Overlap));
    for (auto one = panel.pieces.begin(); one != panel.pieces.end(); ++one) {
        for (auto other = one + 1; other != panel.pieces.end(); ++other) {
            const RectMm shared = intersection(one->cell, other->cell);
            if (shared.width <= tolerance || shared.height <= tolerance)
                continue;
            const double depth = std::min(shared.width, shared.height).value();
            notes.add(Limit::Overlap,
                other->id,
                depth,
                Says::tr("%1 lies %2 mm over %3.")
                    .arg(called(panel, other->id), number(depth), called(panel, one->id)));
        }
    }
}

void checkPastCell(const PanelFacts& panel, Notebook& notes)
{
    const double tolerance = panel.limits.of(Limit::PastCell);
    std::set<PieceId> said;
    for (const TextLine& line : panel.lines) {
        const ClearedPiece* piece = panel.piece(line.piece);
        if (piece == nullptr || piece->cell.isEmpty())
            continue;
        const double over = std::max((line.right - piece->cell.right()).value(),
            (line.baseline - piece->cell.bottom()).value());
        if (over <= tolerance || !said.insert(line.piece).second)
            continue;
        notes.add(Limit::PastCell,
            line.piece,
            over,
            Says::tr("The text of %1 is %2 mm too long for its place; give it more room.")
                .arg(called(panel, line.piece), number(over)));
    }
}

// Cells that begin on the lines of one grid have one gutter, or a gutter and whole rows, between
// them.
void checkGrid(const PanelFacts& panel, Notebook& notes)
{
    const Grid& grid = panel.style.grid;
    for (const ClearedPiece& piece : panel.pieces) {
        if (piece.cell.isEmpty())
            continue;
        const double off = std::max(offColumns(piece, grid), offRows(piece, grid));
        if (off > panel.limits.of(Limit::Grid)) {
            notes.add(Limit::Grid,
                piece.id,
                off,
                Says::tr("%1 stands %2 mm off the grid that everything else begins on.")
                    .arg(called(panel, piece.id), number(off)));
        }
    }
}

void checkLeftEdges(const PanelFacts& panel, Notebook& notes)
{
    std::set<long> edges;
    for (const ClearedPiece& piece : panel.pieces) {
        if (!piece.cell.isEmpty())
            edges.insert(std::lround(piece.cell.x.value() * 2));
    }
    const double most = panel.limits.of(Limit::LeftEdges) - (panel.isLandscape() ? 0 : 1);
    const auto count = static_cast<double>(edges.size());
    if (count > most) {
        notes.addAgainst(Limit::LeftEdges,
            most,
            {},
            count,
            Says::tr("Pieces begin at %1 different left edges; with %2 at most the page "
                     "looks calm.")
                .arg(edges.size())
                .arg(number(most, 0)));
    }
}

void checkTints(const PanelFacts& panel, Notebook& notes)
{
    double area = 0;
    const Mm row = panel.style.grid.rowUnit;
    for (const FillFact& fill : panel.fills) {
        if (!isTint(fill, panel.style))
            continue;
        const ClearedPiece* piece = panel.piece(fill.piece);
        if (piece != nullptr && isPicture(piece->kind))
            continue; // a mat has its own rule
        area += fill.rect.areaMm2();
        const auto lines = panel.linesOf(fill.piece);
        if (lines.empty())
            continue;
        // What is left below the text once the padding above it is taken off again.
        const Mm padding = lines.front()->capLine() - fill.rect.y;
        const Mm slack = fill.rect.bottom() - lines.back()->baseline - padding;
        if (slack / row >= panel.limits.of(Limit::TintHugs) + 0.02) {
            notes.add(Limit::TintHugs,
                fill.piece,
                slack / row,
                Says::tr("The ground of %1 goes on for %2 rows below its text.")
                    .arg(called(panel, fill.piece), number(slack / row)));
        }
    }
    const SizeMm size = panel.display.panelSize;
    const double share = 100 * area / (size.width.value() * size.height.value());
    if (share > panel.limits.of(Limit::TintShare)) {
        notes.add(Limit::TintShare,
            {},
            share,
            Says::tr("Tinted grounds cover %1 % of the panel; up to %2 % they stay quiet.")
                .arg(number(share), number(panel.limits.of(Limit::TintShare))));
    }
}

void checkWhite(const PanelFacts& panel, Notebook& notes)
{
    double touched = 0;
    for (const FillFact& fill : panel.fills) {
        if (isTint(fill, panel.style))
            touched += fill.rect.areaMm2();
    }
    for (const PictureFact& picture : panel.pictures) {
        const bool onMat =
            std::any_of(panel.fills.begin(), panel.fills.end(), [&](const FillFact& fill) {
                return fill.piece == picture.piece && fill.rect.contains(picture.place.topLeft());
            });
        touched += onMat ? 0 : picture.place.areaMm2();
    }
    // Letters leave most of their line untouched: about a quarter of the cap band is ink.
    for (const TextLine& line : panel.lines)
        touched += 0.25 * boxOf(line).areaMm2();
    const SizeMm size = panel.display.panelSize;
    const double white = 100 - 100 * touched / (size.width.value() * size.height.value());
    if (white < panel.limits.of(Limit::White)) {
        notes.add(Limit::White,
            {},
            white,
            Says::tr("About %1 % of the paper stays white; half of it lets the rest be seen.")
                .arg(number(white, 0)));
    }
}

void checkEntry(const PanelFacts& panel, Notebook& notes)
{
    Mm titleCap(0);
    Mm voiceCap(0);
    const TextLine* last = nullptr;
    for (const TextLine& line : panel.lines) {
        if (line.use == Use::Title) {
            titleCap = std::max(titleCap, line.cap);
            last = &line;
        }
        if (line.use == Use::Voice)
            voiceCap = std::max(voiceCap, line.cap);
    }
    if (last == nullptr) {
        // A single drawing is its own way in.
        if (panel.display.plan != QLatin1String("drawing")) {
            notes.add(Limit::EntryMissing,
                {},
                0,
                Says::tr("Panel %1 has no title to begin with.").arg(panel.number));
        }
        return;
    }
    if (voiceCap > Mm(0) && titleCap > Mm(0)
        && titleCap / voiceCap < panel.limits.of(Limit::EntryRatio) * 0.995) {
        notes.add(Limit::EntryRatio,
            last->piece,
            titleCap / voiceCap,
            Says::tr("The title is %1 times as large as the children's words; from %2 times "
                     "on it is found first.")
                .arg(
                    number(titleCap / voiceCap, 2), number(panel.limits.of(Limit::EntryRatio), 2)));
    }
    const Mm row = panel.style.grid.rowUnit;
    for (const TextLine& line : panel.lines) {
        const bool under = line.use != Use::Title && line.right > last->left
            && line.left < last->right && line.capLine() > last->baseline;
        const double rows = (line.capLine() - last->baseline) / row;
        if (under && rows < panel.limits.of(Limit::EntryClear) - 0.05) {
            notes.add(Limit::EntryClear,
                line.piece,
                rows,
                Says::tr("%1 follows the title after %2 rows; %3 let the title stand.")
                    .arg(called(panel, line.piece),
                        number(rows),
                        number(panel.limits.of(Limit::EntryClear))));
            return;
        }
    }
}

} // namespace wainscot::check
