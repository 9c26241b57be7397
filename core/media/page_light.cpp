#include "core/media/page_light.h"

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

constexpr int kFields = PageLight::kFields;
constexpr double kBrightest = 0.2; // share of a field that is surely its paper, if it has any
constexpr double kNearly = 0.85; // as bright as that
constexpr double kDarkest = 8; // of 255: below, there is no light to tell of
constexpr std::size_t kTerms = 3; // of a plane
constexpr std::array kReaches{0.6, 0.4, 0.3, 0.2, 0.15, 0.1, 0.08, 0.06, 0.05, 0.05};
constexpr double kSoftShadow = -0.36; // logarithm of 0.7
constexpr double kGreyWithin = 0.05; // between the channels' logarithms
constexpr int kRounds = 4; // of telling paper from what is painted
constexpr int kSweeps = 300; // until the light between known fields has settled

using Fields = std::array<std::vector<double>, 3>; // logarithms of brightness, by channel
using Terms = std::array<double, kTerms>;

int lightOf(QRgb pixel)
{
    return qRed(pixel) + qGreen(pixel) + qBlue(pixel);
}

// Logarithms of the mean of a field's paper: pixels nearly as bright as its brightest fifth.
std::array<double, 3> paperOf(const QImage& image, int fieldX, int fieldY)
{
    const auto edge = [](int field, int pixels) { return field * pixels / kFields; };
    const int left = std::min(edge(fieldX, image.width()), image.width() - 1);
    const int top = std::min(edge(fieldY, image.height()), image.height() - 1);
    std::vector<QRgb> pixels;
    for (int y = top; y < std::max(top + 1, edge(fieldY + 1, image.height())); ++y) {
        for (int x = left; x < std::max(left + 1, edge(fieldX + 1, image.width())); ++x)
            pixels.push_back(image.pixel(x, y));
    }
    std::sort(pixels.begin(), pixels.end(), [](QRgb a, QRgb b) { return lightOf(a) > lightOf(b); });
    const double bright = lightOf(pixels.at(std::size_t(double(pixels.size()) * kBrightest / 2)));
    std::array<double, 3> sum{};
    double count = 0;
    for (const QRgb pixel : pixels) {
        if (count > 0 && lightOf(pixel) < bright * kNearly)
            break;
        sum[0] += qRed(pixel);
        sum[1] += qGreen(pixel);
        sum[2] += qBlue(pixel);
        ++count;
    }
    for (double& channel : sum)
        channel = std::log(std::max(kDarkest, channel / count));
    return sum;
}

Terms termsAt(int field)
{
    const double x = 2 * (field % kFields + 0.5) / kFields - 1;
    const double y = 2 * (int(field / kFields) + 0.5) / kFields - 1;
    return {1, x, y};
}

double valueOf(const Terms& surface, const Terms& terms)
{
    double value = 0;
    for (std::size_t i = 0; i < kTerms; ++i)
        value += surface.at(i) * terms.at(i);
    return value;
}

// Weighted least squares by Cholesky's factors; a little is added to the diagonal, so that a page
// with paper at one side only does not run away at the other.
Terms fitted(const std::vector<double>& values, const std::vector<double>& weights)
{
    std::array<Terms, kTerms> a{};
    Terms b{};
    double all = 0;
    for (std::size_t field = 0; field < values.size(); ++field) {
        const Terms terms = termsAt(int(field));
        all += weights[field];
        for (std::size_t i = 0; i < kTerms; ++i) {
            b.at(i) += weights[field] * terms.at(i) * values[field];
            for (std::size_t j = 0; j <= i; ++j)
                a.at(i).at(j) += weights[field] * terms.at(i) * terms.at(j);
        }
    }
    for (std::size_t i = 0; i < kTerms; ++i)
        a.at(i).at(i) += (all + 1e-6) * (i == 0 ? 1e-9 : 1e-3);
    for (std::size_t i = 0; i < kTerms; ++i) {
        for (std::size_t j = 0; j <= i; ++j) {
            double sum = a.at(i).at(j);
            for (std::size_t k = 0; k < j; ++k)
                sum -= a.at(i).at(k) * a.at(j).at(k);
            a.at(i).at(j) = i == j ? std::sqrt(std::max(sum, 1e-12)) : sum / a.at(j).at(j);
        }
        for (std::size_t k = 0; k < i; ++k)
            b.at(i) -= a.at(i).at(k) * b.at(k);
        b.at(i) /= a.at(i).at(i);
    }
    for (std::size_t i = kTerms; i-- > 0;) {
        for (std::size_t k = i + 1; k < kTerms; ++k)
            b.at(i) -= a.at(k).at(i) * b.at(k);
        b.at(i) /= a.at(i).at(i);
    }
    return b;
}

std::vector<double> surfaceOf(const Terms& surface)
{
    std::vector<double> values;
    values.reserve(std::size_t(kFields) * kFields);
    for (int field = 0; field < kFields * kFields; ++field)
        values.push_back(valueOf(surface, termsAt(field)));
    return values;
}

// The plane over all three channels together: where one is dark, none is paper.
Fields envelopeOf(const Fields& fields)
{
    Fields envelope;
    std::vector<double> weights(fields[0].size(), 1);
    for (const double reach : kReaches) {
        for (std::size_t c = 0; c < 3; ++c)
            envelope.at(c) = surfaceOf(fitted(fields.at(c), weights));
        for (std::size_t field = 0; field < weights.size(); ++field) {
            double worst = 0;
            for (std::size_t c = 0; c < 3; ++c)
                worst = std::min(worst, fields.at(c)[field] - envelope.at(c)[field]);
            weights[field] = std::exp(-(worst / reach) * (worst / reach));
        }
    }
    return envelope;
}

// Whether a field is bare paper, perhaps in a soft shadow.
bool isPaper(const std::array<double, 3>& above)
{
    const auto [least, most] = std::minmax_element(above.begin(), above.end());
    return *least > kSoftShadow && *most - *least < kGreyWithin;
}

// What is not known settles between its neighbours like a skin over a frame (Laplace's equation);
// what is known keeps its mean with those neighbours that are known.
void settle(std::vector<double>& values, const std::vector<bool>& known)
{
    const auto meanOf = [&](std::size_t field, bool onlyKnown) {
        const int x = int(field) % kFields;
        const int y = int(field) / kFields;
        double sum = 0;
        int count = 0;
        for (const auto& [nx, ny] :
            {std::pair{x, y}, {x - 1, y}, {x + 1, y}, {x, y - 1}, {x, y + 1}}) {
            const auto at = std::size_t(std::clamp(ny, 0, kFields - 1)) * kFields
                + std::size_t(std::clamp(nx, 0, kFields - 1));
            if (onlyKnown ? known[at] : at != field) {
                sum += values[at];
                ++count;
            }
        }
        return count > 0 ? sum / count : values[field];
    };
    std::vector<double> smooth = values;
    for (std::size_t field = 0; field < values.size(); ++field) {
        if (known[field])
            smooth[field] = meanOf(field, true);
    }
    values = smooth;
    for (int sweep = 0; sweep < kSweeps; ++sweep) {
        for (std::size_t field = 0; field < values.size(); ++field) {
            if (!known[field])
                values[field] = meanOf(field, false);
        }
    }
}

// The light on paper: the plane, and what bare fields show beside it.
Fields lightOn(const Fields& fields)
{
    const Fields plane = envelopeOf(fields);
    Fields light = plane;
    for (int round = 0; round < kRounds; ++round) {
        std::vector<bool> paper;
        for (std::size_t field = 0; field < fields[0].size(); ++field) {
            std::array<double, 3> above{};
            for (std::size_t c = 0; c < 3; ++c)
                above.at(c) = fields.at(c)[field] - light.at(c)[field];
            paper.push_back(isPaper(above));
        }
        if (std::find(paper.begin(), paper.end(), true) == paper.end())
            return light;
        for (std::size_t c = 0; c < 3; ++c) {
            std::vector<double> beside(paper.size(), 0);
            for (std::size_t field = 0; field < paper.size(); ++field) {
                if (paper[field])
                    beside[field] = fields.at(c)[field] - plane.at(c)[field];
            }
            settle(beside, paper);
            for (std::size_t field = 0; field < paper.size(); ++field)
                light.at(c)[field] = plane.at(c)[field] + beside[field];
        }
    }
    return light;
}

class EvenedRows final : public RowSource {
public:
    EvenedRows(std::unique_ptr<RowSource> source, const PagePart& part, const PageLight& light)
        : RowSource(source->size(), source->kind())
        , m_source(std::move(source))
        , m_part(part)
        , m_light(light)
    {
    }

    bool next(std::uint8_t* row) override
    {
        if (!m_source->next(row))
            return false;
        const int channels = channelsOf(kind());
        const double y = m_part.down(m_row++);
        // The light is smooth: every eighth pixel is worked out and a straight line drawn between.
        constexpr int step = 8;
        for (int channel = 0; channel < channels; ++channel) {
            double from = m_light.gain(channel, m_part.across(0), y);
            for (int start = 0; start < size().width; start += step) {
                const double to = m_light.gain(channel, m_part.across(start + step), y);
                const int end = std::min(start + step, size().width);
                for (int x = start; x < end; ++x) {
                    std::uint8_t& value = row[std::ptrdiff_t(x) * channels + channel];
                    const double even = value * (from + (to - from) * (x - start) / step);
                    value = std::uint8_t(std::clamp(even + 0.5, 0.0, 255.0));
                }
                from = to;
            }
        }
        return true;
    }
    [[nodiscard]] bool damaged() const override { return m_source->damaged(); }

private:
    std::unique_ptr<RowSource> m_source;
    PagePart m_part;
    PageLight m_light;
    int m_row = 0;
};

} // namespace

PageLight::PageLight(const QImage& small)
{
    Fields fields;
    for (int y = 0; y < kFields; ++y) {
        for (int x = 0; x < kFields; ++x) {
            const std::array<double, 3> field = paperOf(small, x, y);
            for (std::size_t c = 0; c < 3; ++c)
                fields.at(c).push_back(field.at(c));
        }
    }
    m_paper = lightOn(fields);
}

double PageLight::at(int channel, double x, double y) const
{
    const std::vector<double>& paper = m_paper.at(std::size_t(channel));
    const double fx = std::clamp(x * kFields - 0.5, 0.0, double(kFields - 1));
    const double fy = std::clamp(y * kFields - 0.5, 0.0, double(kFields - 1));
    const int left = std::min(int(fx), kFields - 2);
    const int top = std::min(int(fy), kFields - 2);
    const auto cell = [&](int cx, int cy) {
        return paper[std::size_t(cy) * kFields + std::size_t(cx)];
    };
    const double above = std::lerp(cell(left, top), cell(left + 1, top), fx - left);
    const double below = std::lerp(cell(left, top + 1), cell(left + 1, top + 1), fx - left);
    return std::exp(std::lerp(above, below, fy - top));
}

double PageLight::gain(int channel, double x, double y) const
{
    return std::min(kMostGain, kPaperWhite / at(channel, x, y));
}

std::unique_ptr<RowSource> evened(
    std::unique_ptr<RowSource> source, const PagePart& part, const PageLight& light)
{
    return std::make_unique<EvenedRows>(std::move(source), part, light);
}

} // namespace wainscot
