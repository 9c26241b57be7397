#include "layout/engine/faults.h"

#include "layout/engine/reading.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace wainscot::engine {

namespace {

constexpr int kLandscapeEdges = 6;
constexpr int kPortraitEdges = 5;
constexpr int kHoleColumns = 3;
constexpr int kHoleRows = 6;
// Mean coverage of the pictures of a class, measured on the sample; of pale grounds and of letters.
constexpr double kPhotoInk = 0.45;
constexpr double kWorkInk = 0.15;
constexpr double kTintInk = 0.05;
constexpr double kTextInk = 0.09; // of a block of text, leading included
constexpr double kMostInk = 0.150;
constexpr double kLeastWhite = 0.51;
constexpr double kMostImbalance = 0.09;
constexpr double kLeastLead = 0.10;
constexpr double kMostLead = 0.23;
constexpr double kTouch = 0.2; // mm; less of a row or column is not to be seen

struct Cover {
    RectMm box;
    double ink;
    double touched;
};

// What a piece covers: words as wide as they are, picture, ground.
std::vector<Cover> coversOf(const Placement& one, const Piece& piece, TextMemo& text)
{
    const Mm used = text.measure(one.id, one.cell.width).usedWidth;
    RectMm words = one.cell;
    words.width = std::min(used, one.cell.width);
    if (!piece.isPicture()) {
        const double letters = kTextInk + (piece.spec.tinted ? kTintInk : 0);
        return {{piece.spec.tinted ? one.cell : words, letters, piece.spec.tinted ? 1 : kTextInk}};
    }
    const RectMm& shown = one.mat.isEmpty() ? one.picture : one.mat;
    std::vector<Cover> out{{shown, one.mat.isEmpty() ? kPhotoInk : kWorkInk, 1}};
    words.height -= shown.bottom() - words.y;
    words.y = shown.bottom();
    if (used > Mm(0) && words.height > Mm(0))
        out.push_back({words, kTextInk, kTextInk});
    return out;
}

class Covered {
public:
    Covered(const std::vector<Cover>& covers, const PageSpec& page)
        : m_columns(page.columns)
        , m_rows(page.rows)
        , m_white(std::size_t(m_columns) * std::size_t(m_rows), 1)
    {
        const double across = (page.width(1) + page.gutter).value();
        const double down = page.rowUnit.value();
        // The first and last column or row that is covered by more than a touch.
        const auto from = [](Mm edge, double step) {
            return int(std::floor((edge.value() + kTouch) / step));
        };
        const auto to = [](Mm edge, double step) {
            return int(std::ceil((edge.value() - kTouch) / step)) - 1;
        };
        for (const Cover& cover : covers) {
            const RectMm& box = cover.box;
            const int left = from(box.x - page.margin, across);
            const int right = to(box.right() - page.margin, across);
            const int top = from(box.y - page.margin, down);
            const int bottom = to(box.bottom() - page.margin, down);
            for (int r = std::max(0, top); r <= std::min(bottom, m_rows - 1); ++r)
                for (int c = std::max(0, left); c <= std::min(right, m_columns - 1); ++c)
                    at(c, r) = 0;
        }
    }

    // Fills the largest hole and gives its size; 0 = there is none.
    int fillHole()
    {
        int best = kHoleColumns * kHoleRows;
        GridRect hole;
        for (int c = 0; c < m_columns; ++c) {
            std::vector<int> whiteTo(std::size_t(m_rows), m_columns); // white from column c on
            for (int r = 0; r < m_rows; ++r)
                for (int e = c; e < m_columns; ++e)
                    if (at(e, r) == 0) {
                        whiteTo[std::size_t(r)] = e;
                        break;
                    }
            for (int end = c + kHoleColumns; end <= m_columns; ++end)
                for (int r = 0, from = 0; r <= m_rows; ++r) {
                    if (r < m_rows && whiteTo[std::size_t(r)] >= end)
                        continue;
                    const int high = r - from;
                    if (r < m_rows && high >= kHoleRows && high * (end - c) > best) {
                        best = high * (end - c);
                        hole = {0, c, from, end - c, high};
                    }
                    from = r + 1;
                }
        }
        for (int r = hole.y; r < hole.y + hole.h; ++r)
            for (int c = hole.x; c < hole.x + hole.w; ++c)
                at(c, r) = 0;
        return hole.w * hole.h;
    }

private:
    char& at(int column, int row)
    {
        return m_white[std::size_t(row) * std::size_t(m_columns) + std::size_t(column)];
    }

    int m_columns;
    int m_rows;
    std::vector<char> m_white;
};

void measureCover(const std::vector<Cover>& covers, const PageSpec& page, PageFaults& out)
{
    const double panel = page.size.width.value() * page.size.height.value();
    double quarters[4] = {};
    out.white = 1;
    for (const Cover& cover : covers) {
        out.ink += cover.ink * cover.box.areaMm2() / panel;
        out.white -= cover.touched * cover.box.areaMm2() / panel;
        for (int q = 0; q < 4; ++q) {
            const RectMm quarter{page.size.width / 2 * (q % 2),
                page.size.height / 2 * (q < 2 ? 0 : 1),
                page.size.width / 2,
                page.size.height / 2};
            quarters[q] += intersection(cover.box, quarter).areaMm2() / panel * 4;
        }
    }
    const double mean = (quarters[0] + quarters[1] + quarters[2] + quarters[3]) / 4;
    double variance = 0;
    for (const double quarter : quarters)
        variance += (quarter - mean) * (quarter - mean) / 4;
    out.imbalance = std::sqrt(variance);
}

// A leading picture has 10 to 23 % of the panel (panel style 7).
bool leadsBadly(const PageFaults& faults)
{
    return faults.lead > 0 && (faults.lead < kLeastLead || faults.lead > kMostLead);
}

double beyond(double value, double limit)
{
    return std::max(0.0, value - limit);
}

} // namespace

PageFaults faultsOf(const Arrangement& arrangement,
    int page,
    const std::vector<Piece>& pieces,
    const PageSpec& spec,
    TextMemo& text)
{
    PageFaults out;
    std::map<ItemId, const Piece*> byId;
    for (const Piece& piece : pieces)
        byId[piece.item.id] = &piece;
    std::vector<Cover> covers;
    std::vector<double> areas;
    std::map<long, int> edges;
    for (const Placement& one : arrangement.items) {
        const auto piece = byId.find(one.id);
        if (one.at.page != page || piece == byId.end())
            continue;
        for (const Cover& cover : coversOf(one, *piece->second, text))
            covers.push_back(cover);
        ++edges[std::lround(one.cell.x.value() * 2)];
        if (!one.picture.isEmpty())
            areas.push_back(one.picture.areaMm2());
    }
    const bool landscape = spec.size.width >= spec.size.height;
    out.edges = std::max(0, int(edges.size()) - (landscape ? kLandscapeEdges : kPortraitEdges));
    std::sort(areas.rbegin(), areas.rend());
    out.dominance = areas.size() < 2 ? 0 : areas[0] / areas[1];
    if (areas.size() > 1)
        out.lead = areas[0] / (spec.size.width.value() * spec.size.height.value());
    measureCover(covers, spec, out);
    Covered covered(covers, spec);
    while (const int cells = covered.fillHole()) {
        ++out.holes;
        out.holeCells += cells;
    }
    return out;
}

double priceOf(const PageFaults& faults, const Weights& weights)
{
    double price = weights.edge * faults.edges;
    price += weights.hole * (faults.holes + faults.holeCells / 60.0);
    price += weights.lean * beyond(faults.imbalance, kMostImbalance);
    price += weights.ink * beyond(faults.ink, kMostInk);
    price += weights.ink * beyond(kLeastWhite, faults.white);
    if (leadsBadly(faults))
        price += weights.lead;
    if (faults.dominance > 0 && faults.dominance < kDominance)
        price += weights.rival * (1 + 4 * steadyLog(kDominance / faults.dominance));
    return price;
}

bool isSound(const PageFaults& faults)
{
    return faults.edges == 0 && faults.holes == 0 && !leadsBadly(faults)
        && faults.imbalance <= kMostImbalance && faults.ink <= kMostInk
        && faults.white >= kLeastWhite && (faults.dominance <= 0 || faults.dominance >= kDominance);
}

} // namespace wainscot::engine
