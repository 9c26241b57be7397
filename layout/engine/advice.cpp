#include "layout/engine/advice.h"

#include "layout/engine/leaf.h"
#include "layout/engine/targets.h"

#include <algorithm>
#include <cmath>

namespace wainscot::engine {

namespace {

constexpr double kA4Mm2 = 210.0 * 297.0;
constexpr double kTouch = 1e-6;

// The grid's cells that a piece covers, by whole and part rows.
class Cover {
public:
    explicit Cover(const PageSpec& page)
        : m_page(page)
        , m_taken(std::size_t(page.columns) * std::size_t(page.rows), false)
    {
    }

    void add(const RectMm& piece)
    {
        const double pitch = (m_page.width(2) - m_page.width(1)).value();
        const double unit = m_page.rowUnit.value();
        const double left = (piece.x - m_page.margin).value() / pitch;
        const double top = (piece.y - m_page.margin).value() / unit;
        const double gutter = m_page.gutter.value();
        const double right = left + (piece.width.value() + gutter) / pitch;
        const double bottom = top + (piece.height.value() + gutter) / unit;
        for (int y = std::max(0, int(std::floor(top + kTouch)));
             y < std::min(m_page.rows, int(std::ceil(bottom - kTouch)));
             ++y)
            for (int x = std::max(0, int(std::floor(left + kTouch)));
                 x < std::min(m_page.columns, int(std::ceil(right - kTouch)));
                 ++x)
                m_taken[at(x, y)] = true;
    }

    [[nodiscard]] double free() const
    {
        const auto count = std::count(m_taken.begin(), m_taken.end(), false);
        return double(count) / double(m_taken.size());
    }

    // The largest empty rectangle: for every row as foot, the columns' free heights above it.
    void largestHole(PageUse& use) const
    {
        std::vector<int> heights(std::size_t(m_page.columns), 0);
        int best = 0;
        for (int y = 0; y < m_page.rows; ++y) {
            for (int x = 0; x < m_page.columns; ++x)
                heights[std::size_t(x)] = m_taken[at(x, y)] ? 0 : heights[std::size_t(x)] + 1;
            for (int x = 0; x < m_page.columns; ++x) {
                int least = m_page.rows;
                for (int to = x; to < m_page.columns; ++to) {
                    least = std::min(least, heights[std::size_t(to)]);
                    if (least * (to - x + 1) <= best)
                        continue;
                    best = least * (to - x + 1);
                    use.holeColumns = to - x + 1;
                    use.holeRows = least;
                }
            }
        }
        use.hole = double(best) / double(m_taken.size());
    }

private:
    [[nodiscard]] std::size_t at(int x, int y) const
    {
        return std::size_t(y) * std::size_t(m_page.columns) + std::size_t(x);
    }

    const PageSpec& m_page;
    std::vector<bool> m_taken;
};

} // namespace

PageUse pageUse(const Arrangement& arrangement, const PageSpec& page, int number)
{
    Cover cover(page);
    for (const Placement& one : arrangement.items) {
        if (one.at.page != number)
            continue;
        // A picture's cell is as wide as its column; what shows of it may be narrower.
        RectMm piece = one.cell;
        if (!one.picture.isEmpty())
            piece.width = (one.mat.isEmpty() ? one.picture : one.mat).width;
        cover.add(piece);
    }
    PageUse use;
    use.white = cover.free();
    cover.largestHole(use);
    return use;
}

bool isSparse(const PageUse& use)
{
    return use.white > kSparseWhite || use.hole > kSparseHole;
}

double a4Sheets(double mm2)
{
    return std::max(0.5, std::ceil(2 * mm2 / kA4Mm2 - kTouch) / 2);
}

double leastRoom(const std::vector<Item>& items, const PageSpec& page, const TextMeasurer& text)
{
    TextMemo memo(text);
    LeafTable leaves(page, piecesOf(items, memo), memo);
    const double cell = (page.width(2) - page.width(1)).value() * page.rowUnit.value();
    double room = 0;
    for (int i = 0; i < leaves.size(); ++i)
        room += leaves.leastCells(i) * cell;
    return room;
}

} // namespace wainscot::engine
