#include "samples/pictures/drawings/paper.h"

#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/parallel.h"
#include "samples/pictures/light/random.h"

namespace wainscot::samples {
namespace {

// A smooth path through the given points, sampled about every 6 pixels.
std::vector<Vec2> smoothPath(const std::vector<Vec2>& p)
{
    if (p.size() < 3)
        return p;
    std::vector<Vec2> out;
    for (size_t i = 0; i + 1 < p.size(); ++i) {
        const Vec2 a = p[i ? i - 1 : 0], b = p[i], c = p[i + 1],
                   d = p[std::min(i + 2, p.size() - 1)];
        const int steps = std::max(1, int(length(c - b) / 6));
        for (int k = 0; k < steps; ++k) {
            const float t = float(k) / float(steps);
            out.push_back((b * 2.0f + (c - a) * t + (a * 2.0f - b * 5.0f + c * 4.0f - d) * (t * t)
                              + (b * 3.0f - a - c * 3.0f + d) * (t * t * t))
                * 0.5f);
        }
    }
    out.push_back(p.back());
    return out;
}

} // namespace

Paper::Paper(int width, int height, Vec3 sheet, std::uint32_t seed)
    : m_width(width)
    , m_height(height)
    , m_seed(seed)
    , m_pixels(size_t(width) * size_t(height))
    , m_load(m_pixels.size(), 0.0f)
    , m_tooth(512 * 512)
{
    for (int y = 0; y < 512; ++y)
        for (int x = 0; x < 512; ++x) {
            const float fine = fbm2(float(x) * 0.25f, float(y) * 0.25f, 2, seed + 1, 128);
            const float broad = noise2(float(x) * 0.0625f, float(y) * 0.0625f, seed + 2, 32);
            m_tooth[size_t(y) * 512 + size_t(x)] = clamp01(0.5f + 0.75f * fine + 0.16f * broad);
        }
    parallelRows(height, [&](int y) {
        for (int x = 0; x < width; ++x) {
            const float fibre = tooth(x, y) - 0.5f;
            const float cloud = noise2(float(x) * 0.004f, float(y) * 0.004f, seed + 4);
            m_pixels[size_t(y) * size_t(width) + size_t(x)] =
                sheet * (1.0f + 0.035f * fibre + 0.012f * cloud);
        }
    });
}

void Paper::draw(const Stroke& stroke)
{
    const std::vector<Vec2> path = smoothPath(stroke.points);
    if (path.empty())
        return;
    const std::uint32_t seed = m_seed + 977u * ++m_strokes;
    int left = m_width, right = 0, top = m_height, bottom = 0;
    float along = 0, total = 0;
    for (size_t i = 1; i < path.size(); ++i)
        total += length(path[i] - path[i - 1]);
    for (size_t i = 0; i < path.size(); ++i) {
        const Vec2 a = path[i], b = path[std::min(i + 1, path.size() - 1)];
        const Vec2 ab = b - a;
        const float span = length(ab);
        // Pressure drifts, is heavier at the start, lighter at the end.
        const float ends = stroke.tool == Tool::FeltPen
            ? 1.0f
            : smoothstep(-20.0f, 40.0f, along) * smoothstep(-30.0f, 90.0f, total - along);
        const float pressure = stroke.pressure * (0.45f + 0.55f * ends)
            * (1.0f + 0.28f * noise2(along * 0.006f, 1.5f, seed));
        const float half = stroke.width * 0.5f
            * (stroke.tool == Tool::FeltPen ? 1.0f + 0.06f * noise2(along * 0.02f, 3.5f, seed)
                                            : 0.8f + 0.3f * pressure);
        const int x0 = std::max(0, int(std::min(a.x, b.x) - half - 2)),
                  x1 = std::min(m_width - 1, int(std::max(a.x, b.x) + half + 2));
        const int y0 = std::max(0, int(std::min(a.y, b.y) - half - 2)),
                  y1 = std::min(m_height - 1, int(std::max(a.y, b.y) + half + 2));
        for (int y = y0; y <= y1; ++y)
            for (int x = x0; x <= x1; ++x) {
                const Vec2 ap = Vec2{float(x), float(y)} - a;
                const float t = span > 0 ? clamp01(dot(ap, ab) / (span * span)) : 0.0f;
                const Vec2 off = ap - ab * t;
                const float distance = length(off);
                if (distance > half + 1)
                    continue;
                const float side = (ab.x * off.y - ab.y * off.x) < 0 ? -1.0f : 1.0f;
                float load = 0;
                if (stroke.tool == Tool::FeltPen) {
                    load = clamp01(half - distance + 0.5f + 1.6f * (tooth(x, y) - 0.5f));
                } else {
                    const float r = distance / half;
                    const float streak =
                        noise2(side * distance * 0.22f, (along + t * span) * 0.012f, seed + 5);
                    load = pressure * (1.0f - 0.65f * r * r) * (1.0f + 0.35f * streak)
                        * clamp01((half - distance) * 0.6f);
                }
                float& cell = m_load[size_t(y) * size_t(m_width) + size_t(x)];
                cell = std::max(cell, load);
            }
        left = std::min(left, x0);
        right = std::max(right, x1);
        top = std::min(top, y0);
        bottom = std::max(bottom, y1);
        along += span;
    }
    parallelRows(bottom - top + 1, [&](int row) {
        const int y = top + row;
        for (int x = left; x <= right; ++x) {
            float& load = m_load[size_t(y) * size_t(m_width) + size_t(x)];
            if (load <= 0)
                continue;
            float a = load;
            if (stroke.tool == Tool::Crayon) {
                const float grain = tooth(x, y);
                a = smoothstep(0.98f - load - 0.16f, 0.98f - load + 0.22f, grain)
                    * (0.62f + 0.38f * load);
            } else if (stroke.tool == Tool::Pencil) {
                const float grain = tooth(x, y);
                a = smoothstep(0.80f - load - 0.2f, 0.80f - load + 0.35f, grain)
                    * (0.35f + 0.5f * load);
            } else {
                a = load * (0.86f + 0.10f * noise2(float(x) * 0.03f, float(y) * 0.03f, seed));
            }
            Vec3& p = m_pixels[size_t(y) * size_t(m_width) + size_t(x)];
            const Vec3 tinted = p * mix(Vec3{1, 1, 1}, stroke.pigment, clamp01(a));
            // Wax also covers a little, so a second layer is not pure multiplication.
            const float cover = stroke.tool == Tool::Crayon ? 0.35f * a : 0.1f * a;
            p = mix(tinted, stroke.pigment * 0.9f, cover);
            load = 0;
        }
    });
}

QImage Paper::flat() const
{
    QImage image(m_width, m_height, QImage::Format_RGB888);
    uchar* bits = image.bits();
    const qsizetype stride = image.bytesPerLine();
    std::vector<uchar> gamma(4096);
    for (size_t i = 0; i < gamma.size(); ++i)
        gamma[i] = uchar(nearest(std::pow(float(i) / 4095.0f, 1.0f / 2.2f) * 255.0f));
    parallelRows(m_height, [&](int y) {
        uchar* out = bits + y * stride;
        for (int x = 0; x < m_width; ++x) {
            const Vec3 p = m_pixels[size_t(y) * size_t(m_width) + size_t(x)];
            for (float v : {p.x, p.y, p.z})
                *out++ = gamma[size_t(clamp01(v) * 4095.0f)];
        }
    });
    return image;
}

QImage Paper::scan(float shading) const
{
    QImage image = flat();
    const int dotsPerMetre = nearest(float(std::max(m_width, m_height)) / 0.297f);
    image.setDotsPerMeterX(dotsPerMetre);
    image.setDotsPerMeterY(dotsPerMetre);
    uchar* bits = image.bits();
    const qsizetype stride = image.bytesPerLine();
    const float w = float(m_width), h = float(m_height);
    // The sheet lies slightly skewed, so the scanner's bed shows along one edge.
    const float skew = 0.0035f * noise2(3.3f, 1.1f, m_seed + 60);
    const float inset = 5.0f + 4.0f * noise2(7.7f, 2.1f, m_seed + 61);
    parallelRows(m_height, [&](int y) {
        uchar* row = bits + y * stride;
        for (int x = 0; x < m_width; ++x, row += 3) {
            const float fx = float(x) / w, fy = float(y) / h;
            const float edge = w - inset - (float(y) - h * 0.5f) * skew - float(x);
            float lit = 1.0f
                - shading
                    * (0.05f * smoothstep(0.25f, 0.0f, fx) + 0.035f * smoothstep(0.9f, 1.0f, fy));
            lit -= shading * 0.16f * std::exp(-std::max(0.0f, edge) * 0.05f); // lifted margin
            lit += 0.01f * noise2(fx * 3, fy * 3, m_seed + 63);
            const float sensor = (unit(hashCell(x, y, m_seed + 64)) - 0.5f) * 5.0f;
            for (int c = 0; c < 3; ++c) {
                float v = float(row[c]) * lit + sensor;
                if (edge < 0)
                    v = 206.0f + 12.0f * std::max(-1.0f, edge * 0.2f) + sensor;
                row[c] = uchar(std::clamp(v, 0.0f, 255.0f));
            }
        }
    });
    // A few specks of dust.
    Rng rng(m_seed + 65);
    for (int i = 0; i < 26; ++i) {
        const int cx = 4 + rng.index(m_width - 8), cy = 4 + rng.index(m_height - 8),
                  r = 1 + rng.index(2);
        for (int y = -r; y <= r; ++y)
            for (int x = -r; x <= r; ++x)
                if (x * x + y * y <= r * r)
                    for (int c = 0; c < 3; ++c) {
                        uchar& v = bits[(cy + y) * stride + (cx + x) * 3 + c];
                        v = uchar(v * 0.72f);
                    }
    }
    return image;
}

} // namespace wainscot::samples
