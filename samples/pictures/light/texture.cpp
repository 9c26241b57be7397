#include "samples/pictures/light/texture.h"

namespace wainscot::samples {
namespace {

int wrapIndex(int v, int n)
{
    const int r = v % n;
    return r < 0 ? r + n : r;
}

} // namespace

void Texture::buildMips()
{
    m_levels.resize(1);
    while (m_levels.back().width > 4 && m_levels.back().height > 4) {
        const Level& fine = m_levels.back();
        Level coarse{fine.width / 2, fine.height / 2, {}};
        coarse.texels.resize(size_t(coarse.width) * size_t(coarse.height));
        for (int y = 0; y < coarse.height; ++y) {
            for (int x = 0; x < coarse.width; ++x) {
                const Texel* a = &fine.texels[size_t(2 * y) * size_t(fine.width) + size_t(2 * x)];
                const Texel* b = a + fine.width;
                Texel& out = coarse.texels[size_t(y) * size_t(coarse.width) + size_t(x)];
                for (int c = 0; c < 4; ++c)
                    out.v[c] = 0.25f * (a[0].v[c] + a[1].v[c] + b[0].v[c] + b[1].v[c]);
            }
        }
        m_levels.push_back(std::move(coarse));
    }
}

Texel Texture::bilinear(const Level& level, float u, float v) const
{
    const float x = u * float(level.width) - 0.5f, y = v * float(level.height) - 0.5f;
    const float xf = std::floor(x), yf = std::floor(y);
    const float fx = x - xf, fy = y - yf;
    int x0 = int(xf), y0 = int(yf), x1 = x0 + 1, y1 = y0 + 1;
    if (m_edge == Edge::Repeat) {
        x0 = wrapIndex(x0, level.width);
        x1 = wrapIndex(x1, level.width);
        y0 = wrapIndex(y0, level.height);
        y1 = wrapIndex(y1, level.height);
    } else {
        x0 = std::clamp(x0, 0, level.width - 1);
        x1 = std::clamp(x1, 0, level.width - 1);
        y0 = std::clamp(y0, 0, level.height - 1);
        y1 = std::clamp(y1, 0, level.height - 1);
    }
    const Texel* row0 = &level.texels[size_t(y0) * size_t(level.width)];
    const Texel* row1 = &level.texels[size_t(y1) * size_t(level.width)];
    Texel out{};
    for (int c = 0; c < 4; ++c) {
        const float top = mix(row0[x0].v[c], row0[x1].v[c], fx);
        const float bottom = mix(row1[x0].v[c], row1[x1].v[c], fx);
        out.v[c] = mix(top, bottom, fy);
    }
    return out;
}

Texel Texture::sample(float u, float v, float lod) const
{
    const float limited = std::clamp(lod, 0.0f, float(m_levels.size() - 1));
    const int fine = int(limited);
    const float t = limited - float(fine);
    Texel a = bilinear(m_levels[size_t(fine)], u, v);
    if (t < 0.02f)
        return a;
    const Texel b = bilinear(m_levels[size_t(fine) + 1], u, v);
    for (int c = 0; c < 4; ++c)
        a.v[c] = mix(a.v[c], b.v[c], t);
    return a;
}

Texture textureFromImage(const QImage& image, Texture::Edge edge)
{
    const QImage argb = image.convertToFormat(QImage::Format_ARGB32);
    float linear[256];
    for (int i = 0; i < 256; ++i)
        linear[i] = std::pow(float(i) / 255.0f, 2.2f);
    Texture texture(argb.width(), argb.height(), edge);
    texture.fill([&](int x, int y) {
        const QRgb p = reinterpret_cast<const QRgb*>(argb.constScanLine(y))[x];
        return Texel{
            {linear[qRed(p)], linear[qGreen(p)], linear[qBlue(p)], float(qAlpha(p)) / 255.0f}};
    });
    texture.buildMips();
    return texture;
}

void storeSlopes(Texture& texture, float metresPerTexel)
{
    const int w = texture.width(), h = texture.height();
    const float inv = 0.5f / metresPerTexel;
    parallelRows(h, [&](int y) {
        for (int x = 0; x < w; ++x) {
            Texel& t = texture.at(x, y);
            t.v[1] =
                (texture.at(wrapIndex(x + 1, w), y).v[0] - texture.at(wrapIndex(x - 1, w), y).v[0])
                * inv;
            t.v[2] =
                (texture.at(x, wrapIndex(y + 1, h)).v[0] - texture.at(x, wrapIndex(y - 1, h)).v[0])
                * inv;
        }
    });
}

} // namespace wainscot::samples
