#include "core/media/cover.h"

#include <QRect>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace wainscot {

namespace {

constexpr int kPatches = 3;
constexpr double kMosaicEdge = 0.55;
constexpr int kMixedPx = 2; // how far shrinking reaches

// From..end of the pixels that a span of the picture touches; never empty, always inside.
struct Span {
    int from = 0;
    int end = 0;
};
Span touched(double from, double length, int pixels)
{
    const int first = std::clamp(int(std::floor(from * pixels)), 0, pixels - 1);
    return {first, std::clamp(int(std::ceil((from + length) * pixels)), first + 1, pixels)};
}

ColourBytes mean(const QImage& image, Span across, Span down)
{
    ColourBytes sum{};
    for (int y = down.from; y < down.end; ++y) {
        for (int x = across.from; x < across.end; ++x) {
            const QRgb pixel = image.pixel(x, y);
            sum[0] += qRed(pixel);
            sum[1] += qGreen(pixel);
            sum[2] += qBlue(pixel);
        }
    }
    for (double& channel : sum)
        channel /= double(across.end - across.from) * (down.end - down.from);
    return sum;
}

// Between which two patches a place lies, and how far towards the second.
struct Between {
    int first = 0;
    int second = 0;
    double share = 0;
};
Between between(double at, int patches, double edge)
{
    const double place = std::clamp(at * patches - 0.5, 0.0, double(patches - 1));
    const int first = std::min(int(place), patches - 1);
    const double way = std::clamp((place - first - 0.5) / edge + 0.5, 0.0, 1.0);
    // Half a cosine: no corner where two patches meet, so nothing that looks like detail.
    return {first, std::min(first + 1, patches - 1), 0.5 - 0.5 * std::cos(way * std::numbers::pi)};
}

ColourBytes mixed(const ColourBytes& a, const ColourBytes& b, double share)
{
    ColourBytes out{};
    for (std::size_t i = 0; i < out.size(); ++i)
        out.at(i) = a.at(i) + (b.at(i) - a.at(i)) * share;
    return out;
}

// Pixels of the rows that a region reaches, its mixed neighbours included; may be empty.
Span reached(double from, double length, int whole, int partFrom, int partLength, int pixels)
{
    const double scale = double(pixels) / partLength;
    const int first = int(std::floor((from * whole - partFrom) * scale)) - kMixedPx;
    const int end = int(std::ceil(((from + length) * whole - partFrom) * scale)) + kMixedPx;
    return {std::clamp(first, 0, pixels), std::clamp(end, 0, pixels)};
}

class CoveredRows final : public RowSource {
public:
    CoveredRows(
        std::unique_ptr<RowSource> source, const PagePart& part, std::vector<CoverPatches> patches)
        : RowSource(source->size(), source->kind())
        , m_source(std::move(source))
        , m_part(part)
        , m_patches(std::move(patches))
    {
    }

    bool next(std::uint8_t* row) override
    {
        if (!m_source->next(row))
            return false;
        for (const CoverPatches& patches : m_patches)
            cover(row, patches);
        ++m_row;
        return true;
    }
    [[nodiscard]] bool damaged() const override { return m_source->damaged(); }

private:
    void cover(std::uint8_t* row, const CoverPatches& patches) const
    {
        const RectFraction& region = patches.region();
        const RectPx& part = m_part.part;
        const SizePx whole = m_part.whole;
        const Span down =
            reached(region.y, region.height, whole.height, part.y, part.height, size().height);
        if (m_row < down.from || m_row >= down.end)
            return;
        const Span box =
            reached(region.x, region.width, whole.width, part.x, part.width, size().width);
        const Span across = patches.isOval() ? chord(region) : box;
        const auto channels = std::size_t(channelsOf(kind()));
        const auto within = [](double at, double from, double length) {
            return length > 0 ? std::clamp((at - from) / length, 0.0, 1.0) : 0.5;
        };
        const double y = within(m_part.down(m_row), region.y, region.height);
        for (int x = across.from; x < across.end; ++x) {
            const ColourBytes colour =
                patches.at(within(m_part.across(x), region.x, region.width), y);
            for (std::size_t i = 0; i < channels; ++i)
                row[std::size_t(x) * channels + i] = std::uint8_t(std::lround(colour.at(i)));
        }
    }

    // What the ellipse that fills a region takes of this row, reaching as far beyond it.
    [[nodiscard]] Span chord(const RectFraction& region) const
    {
        const double across = double(size().width) / m_part.part.width;
        const double down = double(size().height) / m_part.part.height;
        const double halfWidth = region.width / 2 * m_part.whole.width * across + 2.0 * kMixedPx;
        const double halfHeight = region.height / 2 * m_part.whole.height * down + 2.0 * kMixedPx;
        const double x =
            ((region.x + region.width / 2) * m_part.whole.width - m_part.part.x) * across;
        const double y =
            ((region.y + region.height / 2) * m_part.whole.height - m_part.part.y) * down;
        const double away = (m_row + 0.5 - y) / halfHeight;
        const double reach = halfWidth * std::sqrt(std::max(0.0, 1 - away * away));
        const auto inside = [&](double at) { return std::clamp(at, 0.0, double(size().width)); };
        return {int(inside(std::floor(x - reach))), int(inside(std::ceil(x + reach)))};
    }

    std::unique_ptr<RowSource> m_source;
    PagePart m_part;
    std::vector<CoverPatches> m_patches;
    int m_row = 0;
};

} // namespace

CoverPatches::CoverPatches(const CoveredRegion& region, const QImage& small)
    : m_region(region.region)
    , m_oval(region.oval)
    , m_edge(region.cover == Cover::Mosaic ? kMosaicEdge : 1)
{
    const Span across = touched(m_region.x, m_region.width, small.width());
    const Span down = touched(m_region.y, m_region.height, small.height());
    const int most = region.cover == Cover::Flat ? 1 : kPatches;
    m_across = std::min(most, across.end - across.from);
    m_down = std::min(most, down.end - down.from);
    const auto share = [](Span span, int index, int count) {
        const int length = span.end - span.from;
        return Span{span.from + length * index / count, span.from + length * (index + 1) / count};
    };
    for (int y = 0; y < m_down; ++y) {
        for (int x = 0; x < m_across; ++x)
            m_colours.push_back(mean(small, share(across, x, m_across), share(down, y, m_down)));
    }
}

const ColourBytes& CoverPatches::patch(int x, int y) const
{
    return m_colours.at(std::size_t(y) * std::size_t(m_across) + std::size_t(x));
}

ColourBytes CoverPatches::at(double across, double down) const
{
    const Between column = between(across, m_across, m_edge);
    const Between row = between(down, m_down, m_edge);
    const ColourBytes above =
        mixed(patch(column.first, row.first), patch(column.second, row.first), column.share);
    const ColourBytes below =
        mixed(patch(column.first, row.second), patch(column.second, row.second), column.share);
    return mixed(above, below, row.share);
}

std::unique_ptr<RowSource> covered(
    std::unique_ptr<RowSource> source, const PagePart& part, std::vector<CoverPatches> patches)
{
    if (patches.empty())
        return source;
    return std::make_unique<CoveredRows>(std::move(source), part, std::move(patches));
}

} // namespace wainscot
