// A drawing photographed on the table it was made on.
#include "samples/pictures/drawings/drawings.h"
#include "samples/pictures/light/film.h"
#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/texture.h"
#include "samples/pictures/scenes/table.h"

namespace wainscot::samples {

QImage drawingSunDrinks(QSize size, std::uint32_t seed)
{
    const Texture sheet =
        textureFromImage(flatSunDrawing({2480, 1754}, seed), Texture::Edge::Clamp);
    const WindowLight light;
    constexpr float kHalfX = 0.1485f, kHalfY = 0.105f;
    const auto shade = [&](const Ray& ray) {
        Sample out;
        const float t = -ray.origin.z / ray.dir.z;
        const Vec3 p = ray.origin + ray.dir * t;
        const float footprint = ray.pixelAngle * t / std::max(0.2f, -ray.dir.z);
        const Vec2 q = rotate({p.x, p.y}, 0.16f);
        // The sheet curls up at two corners: lighter there, with a shadow beside.
        const float curl = smoothstep(0.6f, 1.5f, q.x / kHalfX - q.y / kHalfY)
            + 0.7f * smoothstep(0.9f, 1.7f, q.y / kHalfY - q.x / kHalfX);
        const float bx = std::fabs(q.x) - kHalfX, by = std::fabs(q.y) - kHalfY;
        // Window light from the left, broken by the glazing bar's soft shadow.
        const float fall = 0.30f + 0.95f * smoothstep(0.28f, -0.32f, p.x + 0.25f * p.y);
        const float bar =
            1 - 0.30f * std::exp(-std::pow((p.x + 0.45f * p.y - 0.05f) / 0.030f, 2.0f));
        const float photographer =
            1 - 0.38f * smoothstep(0.22f, 0.0f, length(Vec2{(p.x - 0.13f) * 0.8f, p.y + 0.20f}));
        const float lit = fall * bar * photographer;
        out.depth = t;
        if (bx < 0 && by < 0) {
            const float u = q.x / (2 * kHalfX) + 0.5f, v = 0.5f - q.y / (2 * kHalfY);
            const Texel s =
                sheet.sample(u, v, std::log2(std::max(1.0f, footprint * 2480 / 0.297f)));
            const float buckle =
                noise2(q.x * 9, q.y * 7, seed + 3) + 0.4f * noise2(q.x * 30, q.y * 26, seed + 4);
            const float tilt = 1 + 0.05f * buckle + 0.14f * curl;
            out.color = Vec3{s.v[0], s.v[1], s.v[2]}
                * (light.room * 1.3f + light.color * (0.60f * lit * tilt));
            out.part = 5;
            return out;
        }
        const float away = length(Vec2{std::max(0.0f, bx), std::max(0.0f, by)});
        const float shadow = 1 - 0.5f * smoothstep(0.004f + 0.018f * curl, 0.0f, away);
        const TableView view{ray.dir, footprint, 0.75f * lit * shadow, 0.55f + 0.45f * shadow};
        out.color = tableLight(p, view, light, false, seed);
        out.part = 6;
        return out;
    };
    Camera camera{{0.07f, -0.29f, 0.33f}, {0.005f, -0.012f, 0.0f}, 52, -4.0f};
    const LightBuffer buffer = traceScene(camera, size.width(), size.height(), 2, shade);
    Film film;
    film.exposure = 0.95f;
    film.contrast = 1.1f;
    film.focus = 0.42f;
    film.lensBlur = 0.008f;
    film.vignette = 0.4f;
    film.grain = 1.4f;
    film.whiteBalance = {1.06f, 1.0f, 0.90f};
    return develop(buffer, size.width(), size.height(), film, seed);
}

} // namespace wainscot::samples
