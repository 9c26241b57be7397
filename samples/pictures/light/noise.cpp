#include "samples/pictures/light/noise.h"

#include "samples/pictures/light/math.h"
#include "samples/pictures/light/random.h"

namespace wainscot::samples {
namespace {

int floorInt(float v)
{
    const int i = int(v);
    return i - (v < float(i));
}
int wrap(int v, int period)
{
    if (period <= 0)
        return v;
    const int r = v % period;
    return r < 0 ? r + period : r;
}
float fade(float t)
{
    return t * t * t * (t * (t * 6.0f - 15.0f) + 10.0f);
}

// One of eight cheap gradient directions.
float gradient(std::uint32_t h, float x, float y)
{
    const float u = (h & 1u) ? x : y, v = (h & 1u) ? y : x;
    return ((h & 2u) ? -u : u) + ((h & 4u) ? -0.5f : 0.5f) * v;
}
float value3(int x, int y, int z, std::uint32_t seed)
{
    return unit(hashCell(x, y, seed + std::uint32_t(z) * 0x27d4eb2fu)) * 2.0f - 1.0f;
}

} // namespace

float noise2(float x, float y, std::uint32_t seed, int period)
{
    const int ix = floorInt(x), iy = floorInt(y);
    const float fx = x - float(ix), fy = y - float(iy);
    const int x0 = wrap(ix, period), x1 = wrap(ix + 1, period);
    const int y0 = wrap(iy, period), y1 = wrap(iy + 1, period);
    const float a = gradient(hashCell(x0, y0, seed), fx, fy);
    const float b = gradient(hashCell(x1, y0, seed), fx - 1, fy);
    const float c = gradient(hashCell(x0, y1, seed), fx, fy - 1);
    const float d = gradient(hashCell(x1, y1, seed), fx - 1, fy - 1);
    const float u = fade(fx), v = fade(fy);
    return 1.4f * mix(mix(a, b, u), mix(c, d, u), v);
}

float noise3(float x, float y, float z, std::uint32_t seed)
{
    const int ix = floorInt(x), iy = floorInt(y), iz = floorInt(z);
    const float u = fade(x - float(ix)), v = fade(y - float(iy)), w = fade(z - float(iz));
    float layer[2];
    for (int k = 0; k < 2; ++k) {
        const float a = mix(value3(ix, iy, iz + k, seed), value3(ix + 1, iy, iz + k, seed), u);
        const float b =
            mix(value3(ix, iy + 1, iz + k, seed), value3(ix + 1, iy + 1, iz + k, seed), u);
        layer[k] = mix(a, b, v);
    }
    return mix(layer[0], layer[1], w);
}

float fbm2(float x, float y, int octaves, std::uint32_t seed, int period)
{
    float sum = 0, amplitude = 0.5f;
    for (int i = 0; i < octaves; ++i) {
        sum += amplitude * noise2(x, y, seed + std::uint32_t(i) * 101u, period);
        x *= 2.0f;
        y *= 2.0f;
        period *= 2;
        amplitude *= 0.5f;
    }
    return sum;
}

float fbm3(float x, float y, float z, int octaves, std::uint32_t seed)
{
    float sum = 0, amplitude = 0.5f;
    for (int i = 0; i < octaves; ++i) {
        sum += amplitude * noise3(x, y, z, seed + std::uint32_t(i) * 101u);
        x *= 2.03f;
        y *= 2.03f;
        z *= 2.03f;
        amplitude *= 0.5f;
    }
    return sum;
}

CellHit cells2(float x, float y, std::uint32_t seed, int period)
{
    const int ix = floorInt(x), iy = floorInt(y);
    CellHit hit{9, 9, 0, 0, 0};
    for (int j = -1; j <= 1; ++j) {
        for (int i = -1; i <= 1; ++i) {
            const std::uint32_t h = hashCell(wrap(ix + i, period), wrap(iy + j, period), seed);
            const float dx = x - float(ix + i) - float(h & 0xffffu) * (1.0f / 65536.0f);
            const float dy = y - float(iy + j) - float(h >> 16) * (1.0f / 65536.0f);
            const float d = dx * dx + dy * dy;
            if (d < hit.f1) {
                hit.f2 = hit.f1;
                hit.f1 = d;
                hit.cell = hash32(h);
                hit.dx = dx;
                hit.dy = dy;
            } else if (d < hit.f2) {
                hit.f2 = d;
            }
        }
    }
    hit.f1 = std::sqrt(hit.f1);
    hit.f2 = std::sqrt(hit.f2);
    return hit;
}

} // namespace wainscot::samples
