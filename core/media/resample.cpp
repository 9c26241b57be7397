#include "core/media/resample.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstring>

namespace wainscot {

namespace {

// Four floats that the compiler keeps in one register.
using Four = float __attribute__((vector_size(16)));
using FourInts = std::int32_t __attribute__((vector_size(16)));

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

// Sixteen floats, rounded and kept within a byte.
void toBytes(const float* from, std::uint8_t* to)
{
    const Four none = {};
    const Four most = none + 255.0F;
    std::array<std::int32_t, kStride> whole{};
    for (std::size_t i = 0; i < kStride; i += 4) {
        Four value = load(from + i) + 0.5F;
        value = value < none ? none : value;
        value = value > most ? most : value;
        const FourInts ints = __builtin_convertvector(value, FourInts);
        std::memcpy(whole.data() + i, &ints, sizeof ints);
    }
    for (std::size_t i = 0; i < kStride; ++i)
        to[i] = static_cast<std::uint8_t>(whole[i]);
}

// Reads up to fifteen floats past the last.
void toBytes(const float* from, std::uint8_t* to, std::size_t count)
{
    std::size_t i = 0;
    for (; i + kStride <= count; i += kStride)
        toBytes(from + i, to + i);
    std::array<std::uint8_t, kStride> rest{};
    toBytes(from + i, rest.data());
    std::copy_n(rest.data(), count - i, to + i);
}

// The taps across a row, all as many: where fewer are needed, or the row ends, some weigh nothing.
// Each weight stands there four times, ready to be multiplied with a pixel.
struct EvenTaps {
    std::size_t count = 0;
    std::vector<std::size_t> firsts;
    std::vector<float> weights; // count * 4 for each output

    explicit EvenTaps(const std::vector<Taps>& all, int width)
    {
        for (const Taps& taps : all)
            count = std::max(count, taps.weights.size());
        firsts.reserve(all.size());
        weights.reserve(all.size() * count * 4);
        for (const Taps& taps : all) {
            const int first = std::min(taps.first, width - int(count));
            firsts.push_back(std::size_t(first));
            for (int i = first; i < first + int(count); ++i) {
                const bool isOne = i >= taps.first && i < taps.end();
                weights.insert(
                    weights.end(), 4, isOne ? taps.weights[std::size_t(i - taps.first)] : 0.0F);
            }
        }
    }
};

class Resampled final : public RowSource {
public:
    Resampled(std::unique_ptr<RowSource> source, SizePx to)
        : RowSource(to, source->kind())
        , m_source(std::move(source))
        , m_across(tapsFor(m_source->size().width, to.width), m_source->size().width)
        , m_down(tapsFor(m_source->size().height, to.height))
        , m_bytes(m_source->rowBytes())
        // Up to three floats past the last are touched where pixels go through registers of four.
        , m_mixed((m_source->rowBytes() + 3 + kStride - 1) / kStride * kStride)
        // The same, and bytes are made of sixteen at a time.
        , m_shrunk(rowBytes() + kStride)
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
        if (kind() == PixelForm::Grey)
            mixGrey();
        else
            mixColour();
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
        const float* weight = m_across.weights.data();
        for (const std::size_t first : m_across.firsts) {
            const float* from = m_mixed.data() + first;
            float sum = 0;
            for (std::size_t t = 0; t < m_across.count; ++t, weight += 4)
                sum += *weight * from[t];
            *to++ = sum;
        }
    }

    // A pixel fits one register; what is written past it is overwritten by the next. `Count`: how
    // many taps there are, known when this is compiled; 0 = it is not.
    template <std::size_t Count> void mixColour(std::size_t channels)
    {
        const std::size_t count = Count > 0 ? Count : m_across.count;
        float* to = m_shrunk.data();
        const float* weight = m_across.weights.data();
        for (const std::size_t first : m_across.firsts) {
            const float* from = m_mixed.data() + first * channels;
            Four sum = {};
            for (std::size_t t = 0; t < count; ++t)
                sum += load(weight + 4 * t) * load(from + t * channels);
            store(to, sum);
            to += channels;
            weight += 4 * count;
        }
    }

    // Decoders shrink to within a third of what is wanted, so these are the usual ones.
    void mixColour()
    {
        const auto channels = static_cast<std::size_t>(channelsOf(kind()));
        switch (m_across.count) {
        case 4:
            return mixColour<4>(channels);
        case 5:
            return mixColour<5>(channels);
        case 6:
            return mixColour<6>(channels);
        default:
            return mixColour<0>(channels);
        }
    }

    std::unique_ptr<RowSource> m_source;
    EvenTaps m_across;
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
