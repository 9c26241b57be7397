#include "core/media/resample.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>

namespace wainscot {

namespace {

// Four floats that the compiler keeps in one register.
using Four = float __attribute__((vector_size(16)));

constexpr std::size_t kStride = 16; // floats that are mixed in one step

Four load(const float* from)
{
    Four value;
    std::memcpy(&value, from, sizeof value);
    return value;
}

void store(float* to, Four value)
{
    std::memcpy(to, &value, sizeof value);
}

double catmullRom(double x)
{
    x = std::abs(x);
    if (x < 1)
        return (1.5 * x - 2.5) * x * x + 1;
    if (x < 2)
        return ((-0.5 * x + 2.5) * x - 4) * x + 2;
    return 0;
}

// Which inputs make one output, with their weights (which sum to 1).
struct Taps {
    int first = 0;
    std::vector<float> weights;
    [[nodiscard]] int count() const { return static_cast<int>(weights.size()); }
    [[nodiscard]] int end() const { return first + count(); }
};

std::vector<Taps> tapsFor(int from, int to)
{
    const double ratio = double(from) / double(to);
    const double stretch = std::max(1.0, ratio);
    std::vector<Taps> all(static_cast<std::size_t>(to));
    for (int i = 0; i < to; ++i) {
        const double centre = (i + 0.5) * ratio;
        const int first = std::max(0, int(std::ceil(centre - 2 * stretch - 0.5)));
        const int end = std::min(from, int(std::floor(centre + 2 * stretch - 0.5)) + 1);
        std::vector<double> weights;
        double sum = 0;
        for (int j = first; j < end; ++j) {
            weights.push_back(catmullRom((j + 0.5 - centre) / stretch));
            sum += weights.back();
        }
        Taps& taps = all[static_cast<std::size_t>(i)];
        taps.first = first;
        for (const double weight : weights)
            taps.weights.push_back(static_cast<float>(weight / sum));
    }
    return all;
}

void toBytes(const float* from, std::uint8_t* to, std::size_t count)
{
    for (std::size_t i = 0; i < count; ++i) {
        const float value = from[i] + 0.5F;
        const float floored = value < 0 ? 0 : value;
        to[i] = static_cast<std::uint8_t>(static_cast<int>(floored > 255 ? 255 : floored));
    }
}

class Resampled final : public RowSource {
public:
    Resampled(std::unique_ptr<RowSource> source, SizePx to)
        : RowSource(to, source->kind())
        , m_source(std::move(source))
        , m_across(tapsFor(m_source->size().width, to.width))
        , m_down(tapsFor(m_source->size().height, to.height))
        , m_bytes(m_source->rowBytes())
        // Up to three floats past the last are touched where pixels go through registers of four.
        , m_mixed((m_source->rowBytes() + 3 + kStride - 1) / kStride * kStride)
        , m_shrunk(rowBytes() + 3)
    {
        int most = 0;
        for (const Taps& taps : m_down)
            most = std::max(most, taps.count());
        m_ring.assign(static_cast<std::size_t>(most), std::vector<float>(m_mixed.size()));
        m_picked.resize(m_ring.size());
    }

    bool next(std::uint8_t* row) override
    {
        const Taps& taps = m_down[static_cast<std::size_t>(m_row++)];
        for (; m_taken < taps.end(); ++m_taken) {
            if (!m_source->next(m_bytes.data()))
                return false;
            std::copy(m_bytes.begin(), m_bytes.end(), slot(m_taken).begin());
        }
        mixRows(taps);
        if (channelsOf(kind()) == 1)
            mixGrey();
        else
            mixColour(static_cast<std::size_t>(channelsOf(kind())));
        toBytes(m_shrunk.data(), row, rowBytes());
        return true;
    }

    [[nodiscard]] bool damaged() const override { return m_source->damaged(); }

private:
    std::vector<float>& slot(int row)
    {
        return m_ring[static_cast<std::size_t>(row) % m_ring.size()];
    }

    void mixRows(const Taps& taps)
    {
        const auto count = static_cast<std::size_t>(taps.count());
        for (std::size_t t = 0; t < count; ++t)
            m_picked[t] = slot(taps.first + static_cast<int>(t)).data();
        // Sixteen at a time, so that each weight is fetched once for four registers.
        for (std::size_t x = 0; x < m_mixed.size(); x += kStride) {
            Four a = {};
            Four b = {};
            Four c = {};
            Four d = {};
            for (std::size_t t = 0; t < count; ++t) {
                const float weight = taps.weights[t];
                const float* from = m_picked[t] + x;
                a += weight * load(from);
                b += weight * load(from + 4);
                c += weight * load(from + 8);
                d += weight * load(from + 12);
            }
            store(m_mixed.data() + x, a);
            store(m_mixed.data() + x + 4, b);
            store(m_mixed.data() + x + 8, c);
            store(m_mixed.data() + x + 12, d);
        }
    }

    void mixGrey()
    {
        float* to = m_shrunk.data();
        for (const Taps& taps : m_across) {
            const float* from = m_mixed.data() + taps.first;
            float sum = 0;
            for (const float weight : taps.weights)
                sum += weight * *from++;
            *to++ = sum;
        }
    }

    // A pixel fits one register; what is written past it is overwritten by the next.
    void mixColour(std::size_t channels)
    {
        float* to = m_shrunk.data();
        for (const Taps& taps : m_across) {
            const float* from = m_mixed.data() + static_cast<std::size_t>(taps.first) * channels;
            Four sum = {};
            for (const float weight : taps.weights) {
                sum += weight * load(from);
                from += channels;
            }
            store(to, sum);
            to += channels;
        }
    }

    std::unique_ptr<RowSource> m_source;
    std::vector<Taps> m_across;
    std::vector<Taps> m_down;
    std::vector<std::uint8_t> m_bytes;
    std::vector<float> m_mixed; // one output row before it is shrunk across
    std::vector<float> m_shrunk; // and after
    std::vector<std::vector<float>> m_ring; // the last source rows
    std::vector<const float*> m_picked;
    int m_row = 0;
    int m_taken = 0;
};

} // namespace

std::unique_ptr<RowSource> resampled(std::unique_ptr<RowSource> source, SizePx to)
{
    if (source->size() == to)
        return source;
    return std::make_unique<Resampled>(std::move(source), to);
}

} // namespace wainscot
