// Hashing and a small generator. Everything derives from explicit seeds.
#pragma once

#include <cmath>
#include <cstdint>

namespace wainscot::samples {

inline std::uint32_t hash32(std::uint32_t x)
{
    x ^= x >> 16;
    x *= 0x7feb352du;
    x ^= x >> 15;
    x *= 0x846ca68bu;
    x ^= x >> 16;
    return x;
}
inline std::uint32_t hashCell(int x, int y, std::uint32_t seed)
{
    return hash32(
        std::uint32_t(x) * 0x9e3779b1u + std::uint32_t(y) * 0x85ebca77u + seed * 0xc2b2ae3du);
}
inline float unit(std::uint32_t h)
{
    return float(h >> 8) * (1.0f / 16777216.0f);
}

class Rng {
public:
    explicit Rng(std::uint32_t seed)
        : m_state(hash32(seed ^ 0x5bd1e995u))
    {
    }
    std::uint32_t next() { return hash32(m_state += 0x9e3779b9u); }
    float uniform() { return unit(next()); }
    float range(float a, float b) { return a + (b - a) * uniform(); }
    int index(int n) { return int(next() % std::uint32_t(n)); }
    float gauss() // sum of four uniforms, unit variance
    {
        return (uniform() + uniform() + uniform() + uniform() - 2.0f) * 1.7320508f;
    }

private:
    std::uint32_t m_state;
};

} // namespace wainscot::samples
