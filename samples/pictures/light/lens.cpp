#include "samples/pictures/light/lens.h"

#include <array>

#include "samples/pictures/light/parallel.h"
#include "samples/pictures/light/random.h"

namespace wainscot::samples {
namespace {

// Replaces depth by the signed blur radius in pixels: negative in front of the
// focus, positive behind it. The order of depths is kept.
void depthToBlur(LightBuffer& buffer, const Film& film)
{
    const float scale = film.lensBlur * float(buffer.width);
    parallelRows(buffer.height, [&](int y) {
        for (int x = 0; x < buffer.width; ++x) {
            float& depth = buffer.at(x, y).depth;
            depth = scale * (depth - film.focus) / std::max(depth, 1e-3f);
        }
    });
}

// Largest blur of nearer-than-focus surfaces around each tile, so that blurred
// foreground can spread over sharp surfaces behind it.
std::vector<float> foregroundBlur(const LightBuffer& buffer, int tile, int tilesX, int tilesY)
{
    std::vector<float> own(size_t(tilesX) * size_t(tilesY), 0.0f), spread = own;
    for (int y = 0; y < buffer.height; y += 2)
        for (int x = 0; x < buffer.width; x += 2) {
            float& cell = own[size_t(y / tile) * size_t(tilesX) + size_t(x / tile)];
            cell = std::max(cell, -buffer.at(x, y).depth);
        }
    for (int ty = 0; ty < tilesY; ++ty)
        for (int tx = 0; tx < tilesX; ++tx)
            for (int j = -2; j <= 2; ++j)
                for (int i = -2; i <= 2; ++i) {
                    const int sx = std::clamp(tx + i, 0, tilesX - 1),
                              sy = std::clamp(ty + j, 0, tilesY - 1);
                    const float r = own[size_t(sy) * size_t(tilesX) + size_t(sx)];
                    const float reach = float(std::max(std::abs(i), std::abs(j)) - 1) * float(tile);
                    float& cell = spread[size_t(ty) * size_t(tilesX) + size_t(tx)];
                    if (r > reach)
                        cell = std::max(cell, r);
                }
    return spread;
}

std::vector<Vec2> sunflowerDisc(int taps)
{
    std::vector<Vec2> disc;
    for (int i = 0; i < taps; ++i) {
        const float r = std::sqrt((float(i) + 0.5f) / float(taps)), a = float(i) * 2.3999632f;
        disc.push_back({r * std::cos(a), r * std::sin(a)});
    }
    return disc;
}

} // namespace

// Gathers over a sunflower disc; a neighbour counts when its own blur reaches us.
std::vector<Vec3> lensBlurred(LightBuffer& buffer, const Film& film)
{
    std::vector<Vec3> out(buffer.pixels.size());
    for (size_t i = 0; i < out.size(); ++i)
        out[i] = buffer.pixels[i].color;
    if (film.lensBlur <= 0)
        return out;
    depthToBlur(buffer, film);
    const std::vector<Vec2> small = sunflowerDisc(9), middle = sunflowerDisc(18),
                            large = sunflowerDisc(40);
    std::array<Vec2, 64> turns;
    for (size_t i = 0; i < turns.size(); ++i)
        turns[i] = rotate({1, 0}, float(i) * 2 * kPi / 64);
    constexpr int kTile = 16;
    const int tilesX = (buffer.width + kTile - 1) / kTile,
              tilesY = (buffer.height + kTile - 1) / kTile;
    const std::vector<float> front = foregroundBlur(buffer, kTile, tilesX, tilesY);
    parallelRows(buffer.height, [&](int y) {
        for (int x = 0; x < buffer.width; ++x) {
            const Sample& own = buffer.at(x, y);
            const float ownRadius = std::fabs(own.depth);
            const float radius =
                std::max(ownRadius, front[size_t(y / kTile) * size_t(tilesX) + size_t(x / kTile)]);
            if (radius < 0.8f)
                continue;
            Vec3 sum = own.color;
            float weight = 1;
            const Vec2 turn = turns[hashCell(x, y, 77u) & 63u];
            for (const Vec2& tap : radius < 2.5f ? small : radius < 6 ? middle : large) {
                const float ox = (turn.x * tap.x - turn.y * tap.y) * radius,
                            oy = (turn.y * tap.x + turn.x * tap.y) * radius;
                const int sx = std::clamp(nearest(float(x) + ox), 0, buffer.width - 1);
                const int sy = std::clamp(nearest(float(y) + oy), 0, buffer.height - 1);
                const Sample& other = buffer.at(sx, sy);
                float reach = std::fabs(other.depth);
                if (other.depth > own.depth)
                    reach = std::min(reach, ownRadius * 1.5f);
                const float w = clamp01(reach - std::sqrt(ox * ox + oy * oy) + 1.0f);
                sum += other.color * w;
                weight += w;
            }
            out[size_t(y) * size_t(buffer.width) + size_t(x)] = sum * (1.0f / weight);
        }
    });
    return out;
}

// A wide soft halo around very bright parts, computed at 1/8 size.
void applyGlare(std::vector<Vec3>& pixels, int width, int height, float amount)
{
    if (amount <= 0)
        return;
    constexpr int kStep = 8;
    const int w = (width + kStep - 1) / kStep, h = (height + kStep - 1) / kStep;
    std::vector<Vec3> small(size_t(w) * size_t(h)), other(small.size());
    parallelRows(h, [&](int y) {
        for (int x = 0; x < w; ++x) {
            Vec3 sum;
            int n = 0;
            for (int j = 0; j < kStep; j += 2)
                for (int i = 0; i < kStep; i += 2) {
                    const int sx = x * kStep + i, sy = y * kStep + j;
                    if (sx < width && sy < height) {
                        const Vec3 c = pixels[size_t(sy) * size_t(width) + size_t(sx)];
                        sum += Vec3{std::min(c.x, 8.f), std::min(c.y, 8.f), std::min(c.z, 8.f)};
                        ++n;
                    }
                }
            small[size_t(y) * size_t(w) + size_t(x)] = sum * (1.0f / float(std::max(1, n)));
        }
    });
    const int radius = std::max(2, w / 40);
    for (int pass = 0; pass < 3; ++pass) { // three box blurs make a soft kernel
        const auto box = [&](const std::vector<Vec3>& in,
                             std::vector<Vec3>& out,
                             int lines,
                             int count,
                             size_t line,
                             size_t step) {
            for (int l = 0; l < lines; ++l)
                for (int i = 0; i < count; ++i) {
                    Vec3 sum;
                    for (int k = -radius; k <= radius; ++k)
                        sum +=
                            in[size_t(l) * line + size_t(std::clamp(i + k, 0, count - 1)) * step];
                    out[size_t(l) * line + size_t(i) * step] = sum * (1.0f / float(2 * radius + 1));
                }
        };
        box(small, other, h, w, size_t(w), 1);
        box(other, small, w, h, 1, size_t(w));
    }
    parallelRows(height, [&](int y) {
        for (int x = 0; x < width; ++x) {
            const float gx = std::max(0.0f, (float(x) + 0.5f) / kStep - 0.5f),
                        gy = std::max(0.0f, (float(y) + 0.5f) / kStep - 0.5f);
            const int x0 = std::min(int(gx), w - 1), y0 = std::min(int(gy), h - 1);
            const int x1 = std::min(x0 + 1, w - 1), y1 = std::min(y0 + 1, h - 1);
            const float fx = gx - float(x0), fy = gy - float(y0);
            const auto at = [&](int i, int j) { return small[size_t(j) * size_t(w) + size_t(i)]; };
            const Vec3 halo =
                mix(mix(at(x0, y0), at(x1, y0), fx), mix(at(x0, y1), at(x1, y1), fx), fy);
            Vec3& p = pixels[size_t(y) * size_t(width) + size_t(x)];
            p = mix(p, halo, amount);
        }
    });
}

} // namespace wainscot::samples
