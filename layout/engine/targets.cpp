#include "layout/engine/targets.h"

#include "layout/engine/faults.h"

#include <algorithm>
#include <cmath>

namespace wainscot::engine {

namespace {

// Shares of the panel (style: a dominant picture has 10-23 % among many pieces, 35 % alone).
constexpr double kDominantMost = 0.20;
constexpr double kDominantLeast = 0.12;
constexpr double kAloneMost = 0.30;
constexpr double kOtherMost = 0.075;
constexpr double kPicturesMost = 0.27; // all together: what ink allows at the usual tone
constexpr double kLeadMost = 1.25; // times its target; more would be to fill space
constexpr double kDominantWeight = 3.2;
constexpr double kUsed = 0.90; // of the room; the rest is gaps and white
constexpr double kPictureShare = 0.065; // of a page, comfortable

double weightOf(const Piece& piece, bool dominant)
{
    if (dominant)
        return kDominantWeight;
    if (piece.isSample())
        return 0.85;
    return piece.item.importance >= 2 ? 1.4 : 1;
}

double panelArea(const PageSpec& page)
{
    return page.size.width.value() * page.size.height.value();
}

// Area in mm2, gaps included, that a text takes at a comfortable width.
double textArea(const Piece& piece, const PageSpec& page, TextMemo& text)
{
    const double gutter = page.gutter.value();
    const double aim =
        (piece.spec.minChars + piece.spec.maxChars) / 2 * piece.spec.meanChar.value();
    for (int w = 1; w <= page.columns; ++w) {
        const Mm width = page.width(w);
        if (width.value() < aim && w < page.columns)
            continue;
        const TextMetrics& metrics = text.measure(piece.item.id, width);
        if (metrics.fits || w == page.columns)
            return (metrics.height.value() + gutter + page.rowUnit.value() / 2)
                * (width.value() + gutter);
    }
    return 0;
}

double roomFor(const std::vector<Piece>& pieces, const PageSpec& page, int pages, TextMemo& text)
{
    const double gutter = page.gutter.value();
    const double usable =
        (page.width(page.columns).value() + gutter) * (page.height(page.rows).value() + gutter);
    double taken = 0;
    for (const Piece& piece : pieces) {
        if (piece.blank)
            continue;
        if (piece.isPicture()) // its caption and gap
            taken += (gutter + 2 * piece.spec.lead.value()) * (page.width(4).value() + gutter);
        else
            taken += textArea(piece, page, text);
    }
    return pages * usable * kUsed - taken;
}

// Lines at the text's own measure, times their width: near enough to weigh voices against each
// other.
double lettersOf(const Piece& piece, TextMemo& text)
{
    const double meanChar = piece.spec.meanChar.value();
    if (piece.isPicture() || meanChar <= 0)
        return 0;
    const TextMetrics metrics =
        text.measure(piece.item.id, Mm(piece.spec.maxChars * piece.spec.meanChar.value()));
    return metrics.lines * metrics.usedWidth.value() / meanChar;
}

} // namespace

namespace {

// A teacher's "bigger" may rival the dominant picture; "smaller" may go below any floor.
void boundByWish(Piece& piece)
{
    const double scale = piece.item.wish.scale;
    if (scale == 1 || piece.item.wish.area <= 0)
        return;
    if (scale > 1) {
        piece.floorMm2 = std::max(piece.floorMm2, piece.targetMm2 * 0.95);
        piece.ceilingMm2 =
            piece.ceilingMm2 > 0 ? std::max(piece.ceilingMm2, piece.targetMm2 * 1.2) : 0;
    } else {
        piece.ceilingMm2 = piece.targetMm2 * 1.05;
        piece.floorMm2 = 0;
    }
}

} // namespace

std::vector<Piece> piecesOf(const std::vector<Item>& items, TextMemo& text)
{
    std::vector<Piece> pieces;
    for (const Item& item : items) {
        Piece piece;
        piece.item = item;
        piece.blank = item.id == kBlankItem;
        if (!piece.blank) {
            piece.spec = text.spec(item.id);
            piece.said = piece.spec.words > 0 ? piece.spec.words : lettersOf(piece, text);
        }
        pieces.push_back(piece);
    }
    return pieces;
}

int pagesWanted(const std::vector<Piece>& pieces, const PageSpec& page, TextMemo& text)
{
    double wanted = 0;
    for (const Piece& piece : pieces)
        if (piece.isPicture())
            wanted += weightOf(piece, piece.item.importance >= 3) * kPictureShare * 0.8;
    const double usable = roomFor({}, page, 1, text);
    const double texts = usable - roomFor(pieces, page, 1, text);
    return std::max(1, int(std::lround((texts + wanted * panelArea(page)) / usable + 0.05)));
}

int dominantOf(const std::vector<Piece>& pieces, int rank)
{
    std::vector<std::pair<double, int>> scores;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        const Piece& piece = pieces[i];
        if (!piece.isPicture())
            continue;
        if (piece.item.importance >= 3 && rank > 0)
            return -1; // somebody has chosen
        const SizePx size = piece.item.picture->size;
        const double pixels = std::min(1.0, double(size.width) * size.height / 8e6);
        const double score = (piece.isSample() ? 0.4 : 1) * (size.width >= size.height ? 1.3 : 1)
                * pixels * (1 - 0.02 * double(i)) // early, wide and sharp
            + 10 * piece.item.importance;
        scores.emplace_back(-score, int(i));
    }
    std::sort(scores.begin(), scores.end());
    return std::size_t(rank) < scores.size() ? scores[std::size_t(rank)].second : -1;
}

void setTargets(std::vector<Piece>& pieces,
    const PageSpec& page,
    int pages,
    TextMemo& text,
    const Leader& leader)
{
    const int likeliest = leader.piece >= 0 ? leader.piece : dominantOf(pieces);
    const bool led = leader.pinnedMm2 > 0;
    const int dominant = pages == 1 && !led ? likeliest : -1;
    double weights = 0;
    int pictures = 0;
    for (std::size_t i = 0; i < pieces.size(); ++i)
        if (pieces[i].isPicture()) {
            const bool leads = dominant < 0 ? pieces[i].item.importance >= 3 : int(i) == dominant;
            weights += weightOf(pieces[i], leads);
            ++pictures;
        }
    if (pictures == 0)
        return;
    const double panel = panelArea(page);
    const double share = std::max(panel * 0.012,
        (roomFor(pieces, page, pages, text) - leader.takenMm2) / std::max(1.0, weights));
    const double most = panel * (pictures == 1 ? kAloneMost : kDominantMost);
    double lead = std::min(share * kDominantWeight, most);
    const double together =
        lead + (weights - kDominantWeight) * std::min(share, panel * kOtherMost);
    const double held = std::min(1.0, panel * kPicturesMost * pages / std::max(1.0, together));
    lead = pictures > 1 ? std::max(lead * held, panel * kDominantLeast) : lead;
    if (dominant >= 0 && pieces[std::size_t(dominant)].item.wish.area > 0)
        lead = panel * pieces[std::size_t(dominant)].item.wish.area;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        Piece& piece = pieces[i];
        if (!piece.isPicture())
            continue;
        const bool leads = dominant < 0 ? piece.item.importance >= 3 : int(i) == dominant;
        piece.targetMm2 =
            leads ? lead : held * std::min(share * weightOf(piece, false), panel * kOtherMost);
        if (piece.item.wish.area > 0)
            piece.targetMm2 = panel * piece.item.wish.area;
        piece.floorMm2 = 0;
        piece.ceilingMm2 = led ? leader.pinnedMm2 / kDominance : 0;
        if (dominant < 0 || pictures == 1) {
            boundByWish(piece);
            continue;
        }
        // The dominant picture may be a little smaller than aimed at, the others stay under half.
        const double floor = lead * 0.8;
        piece.floorMm2 = leads ? floor : 0;
        piece.ceilingMm2 = leads ? lead * kLeadMost : floor / (kDominance * 1.02);
        if (!leads && piece.item.wish.scale == 1)
            piece.targetMm2 = std::min(piece.targetMm2, piece.ceilingMm2 * 0.85);
        boundByWish(piece);
    }
}

} // namespace wainscot::engine
