#include "core/media/straighten.h"

#include "core/media/plane_map.h"

#include <algorithm>
#include <cmath>
#include <deque>

namespace wainscot {

namespace {

constexpr int kReach = 2; // pixels that Catmull-Rom looks to each side
constexpr int kMostPlaces = 6; // along each side of a pixel of the page
constexpr double kLeastShrink = 1.0 / 64;

FourPoints cornersOf(SizePx size)
{
    const double w = size.width;
    const double h = size.height;
    return {QPointF(0, 0), QPointF(w, 0), QPointF(w, h), QPointF(0, h)};
}

// From pixels of the wanted rows to pixels of the upright picture.
PlaneMap toUpright(const PagePart& page, const Corners& corners, SizePx upright)
{
    FourPoints to;
    for (std::size_t i = 0; i < 4; ++i)
        to.at(i) = {corners.at(i).x * upright.width, corners.at(i).y * upright.height};
    const auto map = PlaneMap::between(cornersOf(page.whole), to);
    if (!map)
        return {};
    const RectPx& part = page.part;
    FourPoints ends;
    const FourPoints own = cornersOf({part.width, part.height});
    for (std::size_t i = 0; i < 4; ++i)
        ends.at(i) = map->at(own.at(i) + QPointF(part.x, part.y));
    return PlaneMap::between(cornersOf(page.size), ends).value_or(PlaneMap());
}

double lengthOf(QPointF way)
{
    return std::hypot(way.x(), way.y());
}

// Pixels of the upright picture for one of the page, where that is least: at one of its corners.
double leastPixels(const PlaneMap& map, SizePx page)
{
    double least = 1e9;
    for (const int x : {0, page.width - 1}) {
        for (const int y : {0, page.height - 1}) {
            least = std::min({least,
                lengthOf(map.at(x + 1, y) - map.at(x, y)),
                lengthOf(map.at(x, y + 1) - map.at(x, y))});
        }
    }
    return least;
}

// Source rows that each row of the page needs; rows before `first` are needed no more.
struct Needs {
    std::vector<int> first;
    std::vector<int> end;
};
Needs needsOf(const PlaneMap& map, SizePx page, int sourceRows)
{
    Needs needs;
    for (int y = 0; y < page.height; ++y) {
        // A straight line stays one: its ends reach farthest.
        const auto [low, high] = std::minmax({map.at(0, y).y(),
            map.at(page.width, y).y(),
            map.at(0, y + 1).y(),
            map.at(page.width, y + 1).y()});
        needs.first.push_back(
            int(std::clamp(std::floor(low) - kReach - 1, 0.0, double(sourceRows - 1))));
        needs.end.push_back(int(std::clamp(std::ceil(high) + kReach + 1, 1.0, double(sourceRows))));
    }
    for (std::size_t y = needs.first.size() - 1; y-- > 0;)
        needs.first[y] = std::min(needs.first[y], needs.first[y + 1]);
    for (std::size_t y = 0; y < needs.end.size(); ++y)
        needs.end[y] = std::max(needs.end[y], needs.first[y] + 1);
    return needs;
}

// Upright pixels to those of the shrunk rows.
PlaneMap toSource(const StraightenPlan& plan)
{
    const PlaneMap map = toUpright(plan.page, plan.corners, plan.upright);
    const double across = double(plan.neededSize.width) / plan.needed.width;
    const double down = double(plan.neededSize.height) / plan.needed.height;
    FourPoints to;
    const FourPoints from = cornersOf(plan.page.size);
    for (std::size_t i = 0; i < 4; ++i) {
        const QPointF at = map.at(from.at(i));
        to.at(i) = {(at.x() - plan.needed.x) * across, (at.y() - plan.needed.y) * down};
    }
    return PlaneMap::between(from, to).value_or(PlaneMap());
}

std::array<float, 4> catmullRom(float t)
{
    return {((-0.5F * t + 1) * t - 0.5F) * t,
        (1.5F * t - 2.5F) * t * t + 1,
        ((-1.5F * t + 2) * t + 0.5F) * t,
        (0.5F * t - 0.5F) * t * t};
}

class StraightenedRows final : public RowSource {
public:
    StraightenedRows(std::unique_ptr<RowSource> source, const StraightenPlan& plan)
        : RowSource(plan.page.size, source->kind())
        , m_source(std::move(source))
        , m_map(toSource(plan))
        , m_needs(needsOf(m_map, plan.page.size, m_source->size().height))
        , m_channels(std::size_t(channelsOf(kind())))
    {
    }

    bool next(std::uint8_t* row) override
    {
        const auto y = std::size_t(m_row);
        for (; m_taken < m_needs.end[y]; ++m_taken) {
            std::vector<std::uint8_t> taken(m_source->rowBytes());
            if (!m_source->next(taken.data()))
                return false;
            m_rows.push_back(std::move(taken));
        }
        for (; m_first < m_needs.first[y]; ++m_first)
            m_rows.pop_front();
        for (int x = 0; x < size().width; ++x)
            takePixel(x, row + std::size_t(x) * m_channels);
        ++m_row;
        return true;
    }
    [[nodiscard]] bool damaged() const override { return m_source->damaged(); }

private:
    void takePixel(int x, std::uint8_t* to)
    {
        const QPointF middle = m_map.at(x + 0.5, m_row + 0.5);
        const QPointF across = m_map.at(x + 1, m_row + 0.5) - m_map.at(x, m_row + 0.5);
        const QPointF down = m_map.at(x + 0.5, m_row + 1) - m_map.at(x + 0.5, m_row);
        const auto places = [](QPointF way) {
            return std::clamp(int(std::ceil(lengthOf(way) - 0.25)), 1, kMostPlaces);
        };
        const int columns = places(across);
        const int rows = places(down);
        std::array<float, 3> sum{};
        for (int j = 0; j < rows; ++j) {
            for (int i = 0; i < columns; ++i) {
                const double right = (i + 0.5) / columns - 0.5;
                const double below = (j + 0.5) / rows - 0.5;
                addPlace(middle + across * right + down * below, sum);
            }
        }
        for (std::size_t c = 0; c < m_channels; ++c) {
            const float value = sum.at(c) / float(columns * rows) + 0.5F;
            to[c] = std::uint8_t(std::clamp(value, 0.0F, 255.0F));
        }
    }

    // Beyond the picture its edge goes on.
    void addPlace(QPointF at, std::array<float, 3>& sum) const
    {
        const SizePx source = m_source->size();
        const double x = std::clamp(at.x() - 0.5, -0.5, source.width - 0.5);
        const double y = std::clamp(at.y() - 0.5, -0.5, source.height - 0.5);
        const int left = int(std::floor(x));
        const int top = int(std::floor(y));
        const std::array<float, 4> across = catmullRom(float(x - left));
        const std::array<float, 4> down = catmullRom(float(y - top));
        for (int j = 0; j < 4; ++j) {
            const auto held = std::clamp(top - 1 + j - m_first, 0, int(m_rows.size()) - 1);
            const std::uint8_t* row = m_rows[std::size_t(held)].data();
            std::array<float, 3> line{};
            for (int i = 0; i < 4; ++i) {
                const auto column = std::size_t(std::clamp(left - 1 + i, 0, source.width - 1));
                for (std::size_t c = 0; c < m_channels; ++c)
                    line.at(c) += across.at(std::size_t(i)) * row[column * m_channels + c];
            }
            for (std::size_t c = 0; c < m_channels; ++c)
                sum.at(c) += down.at(std::size_t(j)) * line.at(c);
        }
    }

    std::unique_ptr<RowSource> m_source;
    PlaneMap m_map; // from the page to the source
    Needs m_needs;
    std::size_t m_channels;
    std::deque<std::vector<std::uint8_t>> m_rows; // of the source, from m_first on
    int m_first = 0;
    int m_taken = 0;
    int m_row = 0;
};

} // namespace

StraightenPlan planStraightening(const PagePart& page, const Corners& corners, SizePx upright)
{
    StraightenPlan plan;
    plan.page = page;
    plan.corners = corners;
    plan.upright = upright;
    const PlaneMap map = toUpright(page, corners, upright);
    double left = upright.width;
    double right = 0;
    double top = upright.height;
    double bottom = 0;
    for (const QPointF corner : cornersOf(page.size)) {
        const QPointF at = map.at(corner);
        left = std::min(left, at.x());
        right = std::max(right, at.x());
        top = std::min(top, at.y());
        bottom = std::max(bottom, at.y());
    }
    // The camera never gives less than it has: a pixel of the page takes one of its, or more.
    const double shrink = std::clamp(1 / leastPixels(map, page.size), kLeastShrink, 1.0);
    const int reach = int(std::ceil((kReach + 1) / shrink));
    const auto span = [reach](double from, double to, int whole, int& start, int& count) {
        start = std::clamp(int(std::floor(from)) - reach, 0, whole - 1);
        count = std::clamp(int(std::ceil(to)) + reach, start + 1, whole) - start;
    };
    span(left, right, upright.width, plan.needed.x, plan.needed.width);
    span(top, bottom, upright.height, plan.needed.y, plan.needed.height);
    const auto shrunk = [shrink](int length) {
        return std::clamp(int(std::ceil(length * shrink)), 1, length);
    };
    plan.neededSize = {shrunk(plan.needed.width), shrunk(plan.needed.height)};
    return plan;
}

std::unique_ptr<RowSource> straightened(
    std::unique_ptr<RowSource> source, const StraightenPlan& plan)
{
    return std::make_unique<StraightenedRows>(std::move(source), plan);
}

qint64 bytesHeld(const StraightenPlan& plan)
{
    const Needs needs = needsOf(toSource(plan), plan.page.size, plan.neededSize.height);
    int most = 0;
    for (std::size_t y = 0; y < needs.end.size(); ++y)
        most = std::max(most, needs.end[y] - needs.first[y]);
    return qint64(most) * plan.neededSize.width * 3;
}

} // namespace wainscot
