#include "samples/pictures/light/film.h"

#include <array>

#include "samples/pictures/light/lens.h"
#include "samples/pictures/light/parallel.h"
#include "samples/pictures/light/random.h"

namespace wainscot::samples {
namespace {

bool isEdge(const std::vector<std::uint8_t>& parts, int w, int h, int x, int y)
{
    const std::uint8_t own = parts[size_t(y) * size_t(w) + size_t(x)];
    const auto differs = [&](int nx, int ny) {
        if (nx < 0 || ny < 0 || nx >= w || ny >= h)
            return false;
        return parts[size_t(ny) * size_t(w) + size_t(nx)] != own;
    };
    return differs(x - 1, y) || differs(x + 1, y) || differs(x, y - 1) || differs(x, y + 1);
}

// Filmic curve with a toe and a soft shoulder, then display gamma.
class ToneCurve {
public:
    explicit ToneCurve(float contrast)
    {
        for (int i = 0; i < kSize; ++i) {
            const float root = float(i) / float(kSize - 1) * 3.0f;
            const float light = root * root;
            const float film =
                light * (2.51f * light + 0.03f) / (light * (2.43f * light + 0.59f) + 0.14f);
            float display = std::pow(clamp01(film), 1.0f / 2.2f);
            const float s = display * display * (3.0f - 2.0f * display);
            display = mix(display, s, (contrast - 1.0f));
            m_table[size_t(i)] = clamp01(display);
        }
    }
    float operator()(float light) const
    {
        const float root = std::sqrt(std::max(0.0f, light)) * (float(kSize - 1) / 3.0f);
        const int i = std::min(int(root), kSize - 2);
        return mix(m_table[size_t(i)], m_table[size_t(i) + 1], std::min(1.0f, root - float(i)));
    }

private:
    static constexpr int kSize = 2048;
    std::array<float, kSize> m_table{};
};

// A tile of slightly clumped noise, as left by demosaicing.
class GrainTile {
public:
    explicit GrainTile(std::uint32_t seed)
        : m_values(size_t(kSize) * size_t(kSize))
    {
        std::vector<float> raw(m_values.size());
        Rng rng(seed);
        for (float& v : raw)
            v = rng.gauss();
        parallelRows(kSize, [&](int y) {
            for (int x = 0; x < kSize; ++x) {
                float sum = 0;
                for (int j = -1; j <= 1; ++j)
                    for (int i = -1; i <= 1; ++i)
                        sum += raw[size_t((y + j) & (kSize - 1)) * kSize
                                   + size_t((x + i) & (kSize - 1))]
                            * ((i && j)        ? 0.25f
                                    : (i || j) ? 0.45f
                                               : 0.8f);
                m_values[size_t(y) * kSize + size_t(x)] = sum * 0.6f;
            }
        });
    }
    float at(int x, int y) const
    {
        return m_values[size_t(y & (kSize - 1)) * kSize + size_t(x & (kSize - 1))];
    }

private:
    static constexpr int kSize = 512;
    std::vector<float> m_values;
};

// Exposure, white balance, vignette, fringing and tone at the traced size.
std::vector<Vec3> gradePixels(
    const std::vector<Vec3>& pixels, int width, int height, const Film& film)
{
    const ToneCurve curve(film.contrast);
    std::vector<Vec3> out(pixels.size());
    const float cx = float(width) * 0.5f, cy = float(height) * 0.5f;
    const float corner = 1.0f / (cx * cx + cy * cy);
    const auto at = [&](int x, int y) { return pixels[size_t(y) * size_t(width) + size_t(x)]; };
    const auto fetch = [&](float x, float y) {
        const int sx = std::clamp(int(x), 0, width - 2), sy = std::clamp(int(y), 0, height - 2);
        const float fx = clamp01(x - float(sx)), fy = clamp01(y - float(sy));
        return mix(
            mix(at(sx, sy), at(sx + 1, sy), fx), mix(at(sx, sy + 1), at(sx + 1, sy + 1), fx), fy);
    };
    parallelRows(height, [&](int y) {
        for (int x = 0; x < width; ++x) {
            const float dx = float(x) - cx, dy = float(y) - cy;
            Vec3 c = at(x, y);
            if (film.fringe > 0) {
                c.x = fetch(cx + dx * (1 + film.fringe), cy + dy * (1 + film.fringe)).x;
                c.z = fetch(cx + dx * (1 - film.fringe), cy + dy * (1 - film.fringe)).z;
            }
            const float r2 = (dx * dx + dy * dy) * corner;
            c = c * film.whiteBalance
                * (film.exposure * (1.0f - film.vignette * r2 * (0.4f + 0.6f * r2)));
            Vec3 d{curve(c.x), curve(c.y), curve(c.z)};
            const float l = luminance(d);
            d = mix(Vec3{l, l, l}, d, film.saturation);
            const float dark = (1.0f - l) * (1.0f - l);
            out[size_t(y) * size_t(width) + size_t(x)] = d + film.shadowTint * dark;
        }
    });
    return out;
}

struct Taps {
    int index; // first of four
    float weight[4];
};

// Catmull-Rom taps mapping `count` output pixels to `size` input pixels.
std::vector<Taps> upsampleTaps(int size, int count)
{
    std::vector<Taps> taps(static_cast<size_t>(count));
    for (int i = 0; i < count; ++i) {
        const float p = (float(i) + 0.5f) * float(size) / float(count) - 0.5f;
        const float f = std::floor(p), t = p - f;
        Taps& k = taps[size_t(i)];
        k.index = int(f) - 1;
        k.weight[0] = t * (-0.5f + t * (1.0f - 0.5f * t));
        k.weight[1] = 1.0f + t * t * (-2.5f + 1.5f * t);
        k.weight[2] = t * (0.5f + t * (2.0f - 1.5f * t));
        k.weight[3] = t * t * (-0.5f + 0.5f * t);
    }
    return taps;
}

} // namespace

LightBuffer traceScene(
    const Camera& camera, int width, int height, int reduce, const Shader& shader)
{
    LightBuffer buffer;
    buffer.width = width / reduce;
    buffer.height = height / reduce;
    buffer.pixels.resize(size_t(buffer.width) * size_t(buffer.height));
    const Projector lens(camera, buffer.width, buffer.height);
    parallelRows(buffer.height, [&](int y) {
        for (int x = 0; x < buffer.width; ++x)
            buffer.at(x, y) = shader(lens.ray(float(x) + 0.5f, float(y) + 0.5f));
    });
    std::vector<std::uint8_t> parts(buffer.pixels.size());
    for (size_t i = 0; i < parts.size(); ++i)
        parts[i] = buffer.pixels[i].part;
    static constexpr float kOffsets[4][2] = {
        {0.38f, 0.12f}, {0.88f, 0.38f}, {0.12f, 0.62f}, {0.62f, 0.88f}};
    parallelRows(buffer.height, [&](int y) {
        for (int x = 0; x < buffer.width; ++x) {
            if (!isEdge(parts, buffer.width, buffer.height, x, y))
                continue;
            Vec3 sum = buffer.at(x, y).color;
            for (const auto& o : kOffsets)
                sum += shader(lens.ray(float(x) + o[0], float(y) + o[1])).color;
            buffer.at(x, y).color = sum * 0.2f;
        }
    });
    return buffer;
}

QImage develop(LightBuffer buffer, int width, int height, const Film& film, std::uint32_t seed)
{
    std::vector<Vec3> light = lensBlurred(buffer, film);
    const int w = buffer.width, h = buffer.height;
    buffer = {};
    applyGlare(light, w, h, film.glare);
    const std::vector<Vec3> graded = gradePixels(light, w, h, film);
    const GrainTile grain(seed ^ 0x9a17u);
    const std::vector<Taps> across = upsampleTaps(w, width), down = upsampleTaps(h, height);
    QImage image(width, height, QImage::Format_RGB888);
    image.setDotsPerMeterX(2835); // 72 dpi, as cameras write; never the screen's
    image.setDotsPerMeterY(2835);
    uchar* bits = image.bits();
    const qsizetype stride = image.bytesPerLine();
    parallelRows(height, [&](int y) {
        std::vector<Vec3> column(static_cast<size_t>(w) + 4);
        const Taps& v = down[size_t(y)];
        for (int k = 0; k < 4; ++k) {
            const Vec3* row = &graded[size_t(std::clamp(v.index + k, 0, h - 1)) * size_t(w)];
            for (int x = 0; x < w; ++x)
                column[size_t(x) + 2] += row[x] * v.weight[k];
        }
        column[0] = column[1] = column[2];
        column[size_t(w) + 2] = column[size_t(w) + 3] = column[size_t(w) + 1];
        uchar* out = bits + y * stride;
        const int slide = int(hash32(std::uint32_t(y / 512) + seed) & 511u);
        for (int x = 0; x < width; ++x) {
            const Taps& t = across[size_t(x)];
            const Vec3* p = &column[size_t(t.index) + 2];
            Vec3 c =
                p[0] * t.weight[0] + p[1] * t.weight[1] + p[2] * t.weight[2] + p[3] * t.weight[3];
            const float l = clamp01(c.y);
            const float strength =
                film.grain * (0.004f + 0.020f * (1.0f - l) * std::sqrt(l + 0.02f));
            const float g = grain.at(x + slide, y) * strength;
            const float chroma = grain.at((x >> 1) + slide + 211, (y >> 1) + 97) * strength * 0.35f;
            c.x += g + chroma;
            c.y += g;
            c.z += g - chroma;
            *out++ = uchar(nearest(clamp01(c.x) * 255.0f));
            *out++ = uchar(nearest(clamp01(c.y) * 255.0f));
            *out++ = uchar(nearest(clamp01(c.z) * 255.0f));
        }
    });
    return image;
}

} // namespace wainscot::samples
