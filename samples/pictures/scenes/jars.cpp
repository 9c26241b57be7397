// Four jars on a window sill, one for each day, the last one empty; tape marks and letters.
// Jars are traced exactly: outer wall, inner wall, water as a solid lens.
#include <QPainter>

#include <array>

#include "samples/pictures/drawings/hand.h"
#include "samples/pictures/light/film.h"
#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"
#include "samples/pictures/light/texture.h"
#include "samples/pictures/scenes/scenes.h"

namespace wainscot::samples {
namespace {

constexpr float kJarHeight = 0.150f, kOuter = 0.046f, kWall = 0.0032f, kBase = 0.007f;
constexpr float kSillDepth = 0.12f; // the sill ends this far behind the jars

struct Jar {
    float x, y;
    float level; // water height above the sill
    float turn; // where the tape sits, radians from the front
};

QImage paintGarden(std::uint32_t seed)
{
    QImage image(1024, 512, QImage::Format_ARGB32_Premultiplied);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    QLinearGradient sky(0, 0, 0, 330);
    sky.setColorAt(0, QColor(205, 222, 240));
    sky.setColorAt(1, QColor(246, 246, 240));
    painter.fillRect(image.rect(), sky);
    Rng rng(seed);
    painter.setPen(Qt::NoPen);
    for (int i = 0; i < 700; ++i) {
        const double x = rng.uniform() * 1024,
                     y = 330 + rng.gauss() * 55 - 60 * std::exp(-std::pow((x - 700) / 120, 2));
        painter.setBrush(QColor(74 + rng.index(44), 88 + rng.index(44), 62 + rng.index(26)));
        painter.drawEllipse(QPointF(x, y), 18 + rng.uniform() * 22, 16 + rng.uniform() * 16);
    }
    painter.fillRect(QRectF(0, 400, 1024, 112), QColor(136, 142, 112));
    painter.fillRect(QRectF(130, 250, 180, 160), QColor(150, 108, 90));
    painter.setBrush(QColor(108, 62, 50));
    painter.drawPolygon(QPolygonF({QPointF(110, 256), QPointF(220, 176), QPointF(330, 256)}));
    return image;
}

// Masking tape with a day lettered by a child.
QImage paintTape(const QString& text, std::uint32_t seed)
{
    constexpr float kMillimetre = 512.0f / 62.0f;
    Paper tape(512, 160, srgb(0xe6d4a8), seed);
    Hand hand(tape, kMillimetre, 0.75f, seed);
    hand.take(Tool::FeltPen, srgb(0x24347a), 1.9f, 1);
    hand.write(text, {14, 3.5f}, 12);
    return tape.flat();
}

class JarScene {
public:
    explicit JarScene(std::uint32_t seed)
        : m_seed(seed)
    {
        const QImage garden = paintGarden(seed);
        m_garden = textureFromImage(garden, Texture::Edge::Clamp);
        static const char* const days[] = {"MO", "TU", "WE", "TH"};
        static constexpr float kLevels[] = {0.118f, 0.083f, 0.043f, kBase};
        for (size_t i = 0; i < m_jars.size(); ++i) {
            Rng rng(seed + 10u * std::uint32_t(i));
            m_jars[i] = {-0.186f + 0.124f * float(i) + rng.range(-0.006f, 0.006f),
                rng.range(-0.008f, 0.008f),
                kLevels[i],
                rng.range(-0.25f, 0.25f)};
            m_tapes.push_back(textureFromImage(
                paintTape(QString::fromLatin1(days[i]), seed + 70u + std::uint32_t(i)),
                Texture::Edge::Clamp));
        }
    }

    Sample shade(const Ray& ray) const
    {
        Sample out;
        out.color = trace(ray.origin, ray.dir, 0, &out);
        return out;
    }

private:
    static bool hitCylinder(
        Vec3 o, Vec3 d, float cx, float cy, float radius, float& near, float& far)
    {
        const float ox = o.x - cx, oy = o.y - cy;
        const float a = d.x * d.x + d.y * d.y, b = ox * d.x + oy * d.y,
                    c = ox * ox + oy * oy - radius * radius;
        const float disc = b * b - a * c;
        if (disc <= 0 || a < 1e-9f)
            return false;
        const float root = std::sqrt(disc);
        near = (-b - root) / a;
        far = (-b + root) / a;
        return far > 1e-5f;
    }

    // The garden beyond the pane, out of focus, with the window's frame.
    Vec3 beyond(Vec3 o, Vec3 d, float lod) const
    {
        if (d.y < 0.02f) { // towards the room
            const float lamp =
                std::exp(-8.0f * ((d.x - 0.5f) * (d.x - 0.5f) + (d.z - 0.35f) * (d.z - 0.35f)));
            return Vec3{0.10f, 0.085f, 0.07f} + Vec3{0.5f, 0.42f, 0.32f} * lamp;
        }
        const float t = (0.16f - o.y) / d.y;
        const float fx = o.x + d.x * t, fz = o.z + d.z * t; // on the window plane
        const float soft = 0.004f + 0.003f * lod;
        float frame = smoothstep(0.022f + soft, 0.022f - soft, std::fabs(fx - 0.325f));
        frame = std::max(frame, smoothstep(0.035f + soft, 0.035f - soft, fz - 0.0f));
        const float u = 0.5f + std::atan2(d.x, d.y) / 1.5f,
                    v = 0.66f - std::asin(std::clamp(d.z, -1.0f, 1.0f)) / 0.75f;
        const float o2 = 0.012f;
        const auto tap = [&](float a, float b) {
            const Texel x = m_garden.sample(clamp01(a), clamp01(b), lod);
            return Vec3{x.v[0], x.v[1], x.v[2]};
        };
        const Vec3 garden =
            (tap(u - o2, v) + tap(u + o2, v) + tap(u, v - o2) + tap(u, v + o2)) * (0.25f * 1.55f);
        return mix(garden, Vec3{0.50f, 0.49f, 0.47f}, frame);
    }

    Vec3 sill(Vec3 p, Vec3 d, int depth) const
    {
        if (p.y > kSillDepth)
            return beyond(p, Vec3{d.x, std::fabs(d.y), 0.05f}, 3);
        // White gloss paint, a little worn; light comes from the window.
        const float brush = noise2(p.x * 18, p.y * 420, m_seed + 5) * 0.5f
            + fbm2(p.x * 30, p.y * 30, 3, m_seed + 6);
        Vec3 albedo = Vec3{0.74f, 0.73f, 0.69f} * (1.0f + 0.035f * brush);
        float lit = 0.62f + 0.9f * smoothstep(-0.35f, 0.15f, p.y);
        Vec3 caustic{0, 0, 0};
        for (const Jar& jar : m_jars) {
            // Shadow and focused light fall towards the room.
            const float along = jar.y - p.y,
                        across = (p.x - jar.x - 0.18f * along)
                / (kOuter * (1 + 0.5f * std::max(0.0f, along)));
            const float r = std::hypot(p.x - jar.x, p.y - jar.y) / kOuter;
            lit *= 1.0f - 0.45f * smoothstep(1.35f, 0.95f, r);
            if (along > 0 && along < 0.28f) {
                const float fade = std::exp(-along * 9);
                const float body = smoothstep(1.15f, 0.8f, std::fabs(across));
                lit *= 1.0f - 0.42f * body * fade;
                const float focus = std::exp(-across * across * mix(30, 7, clamp01(along / 0.2f)));
                const float water = jar.level / 0.12f;
                caustic += Vec3{1.05f, 1.0f, 0.92f}
                    * (focus * fade * smoothstep(0.02f, 0.07f, along) * 0.95f * water);
                caustic += Vec3{1, 1, 1}
                    * (0.18f * fade
                        * std::exp(
                            -60 * (std::fabs(across) - 0.93f) * (std::fabs(across) - 0.93f)));
            }
        }
        Vec3 c = albedo * (Vec3{0.98f, 1.0f, 1.02f} * (lit * 0.72f) + caustic);
        if (depth == 0) {
            const float f = 0.5f * fresnel(-d.z, 0.04f);
            const Vec3 r{d.x + 0.01f * noise2(p.x * 60, p.y * 200, 3), d.y, -d.z};
            c = c * (1 - f) + trace({p.x, p.y, 1e-4f}, normalize(r), 1, nullptr) * f;
        }
        return c;
    }

    Vec3 background(Vec3 o, Vec3 d, int depth, float lod) const
    {
        if (d.z < -1e-4f) {
            const float t = -o.z / d.z;
            const Vec3 p = o + d * t;
            if (t > 0 && p.y < kSillDepth)
                return sill(p, d, depth);
        }
        return beyond(o, d, lod);
    }

    bool tapeAt(const Jar& jar, size_t index, Vec3 p, Vec3 n, Vec3& color) const
    {
        float angle = std::atan2(n.x, -n.y) - jar.turn;
        const float u = angle * kOuter / 0.062f + 0.5f;
        const float middle = 0.118f + 0.0115f; // label sits at Monday's level
        const float v = 0.5f - (p.z - middle - 0.06f * (u - 0.5f) * 0.05f) / 0.0195f;
        if (u > 0.0f && u < 1.0f && v > 0 && v < 1) {
            const float torn = 0.012f * noise2(v * 9, float(index) * 5, m_seed + 30);
            if (u > 0.02f + torn && u < 0.98f + torn) {
                const Texel t = m_tapes[index].sample(u, v, 1.0f);
                color = Vec3{t.v[0], t.v[1], t.v[2]};
                return true;
            }
        }
        // Thin marks at the levels so far.
        for (size_t k = 0; k <= index; ++k) {
            const float z = m_jars[k].level;
            const float span = 0.011f + 0.003f * noise2(float(k) * 3, float(index), m_seed + 31);
            const float offset =
                angle * kOuter + 0.003f * noise2(float(k) * 9, float(index) * 3, m_seed + 33);
            if (std::fabs(p.z - z - 0.03f * offset) < 0.0013f && std::fabs(offset) < span) {
                color = k == index ? Vec3{0.62f, 0.05f, 0.05f} : Vec3{0.06f, 0.10f, 0.36f};
                return true;
            }
        }
        return false;
    }

    // Light arriving along (o, d); fills depth and part for primary rays.
    Vec3 trace(Vec3 o, Vec3 d, int depth, Sample* info) const
    {
        int best = -1;
        float nearest = 1e9f, exit = 0;
        for (size_t i = 0; i < m_jars.size(); ++i) {
            float near = 0, far = 0;
            if (!hitCylinder(o, d, m_jars[i].x, m_jars[i].y, kOuter, near, far) || near < 1e-4f)
                continue;
            float enter = near;
            const float z = o.z + d.z * near;
            if (z > kJarHeight) { // over the rim: enters through the open top
                if (d.z >= 0)
                    continue;
                enter = (kJarHeight - o.z) / d.z;
                if (enter > far)
                    continue;
            } else if (z < 0) {
                continue;
            }
            if (enter < nearest) {
                nearest = enter;
                exit = far;
                best = int(i);
            }
        }
        if (best < 0) {
            if (info) {
                info->depth =
                    d.z < -1e-4f && (o + d * (-o.z / d.z)).y < kSillDepth ? -o.z / d.z : 3.0f;
                info->part = info->depth == 3.0f ? 1 : 2;
            }
            return background(o, d, depth, 5.1f);
        }
        const Jar& jar = m_jars[size_t(best)];
        const Vec3 p = o + d * nearest;
        const bool overRim = p.z > kJarHeight - 1e-4f;
        const Vec3 n = overRim ? Vec3{0, 0, 1} : normalize(Vec3{p.x - jar.x, p.y - jar.y, 0});
        if (info) {
            info->depth = nearest;
            info->part = std::uint8_t(10 + best);
        }
        Vec3 tape;
        if (!overRim && tapeAt(jar, size_t(best), p, n, tape)) {
            if (info)
                info->part = std::uint8_t(30 + best);
            const float crinkle = 1.0f + 0.12f * noise2(p.x * 300, p.z * 300, 9);
            const float side = 0.5f + 0.5f * std::fabs(n.x);
            return tape * (Vec3{0.62f, 0.6f, 0.56f} * (crinkle * (0.55f + 0.45f * side)));
        }
        return glass(jar, p, d, n, exit - nearest, overRim, depth);
    }

    Vec3 glass(const Jar& jar, Vec3 p, Vec3 d, Vec3 n, float span, bool overRim, int depth) const
    {
        const float cosIn = std::max(0.0f, -dot(d, n));
        const float f = overRim ? 0 : fresnel(cosIn, 0.045f);
        const Vec3 mirrored = beyond(p, reflect(d, n), 3) * 1.0f;
        const float clear = length(Vec2{p.x - jar.x, p.y - jar.y});
        Vec3 tint{0.93f, 0.96f, 0.945f};
        Vec3 through;
        // Does the straight line meet the inside of the jar at all?
        float near = 0, far = 0;
        const bool inside = hitCylinder(p - d * 0.001f, d, jar.x, jar.y, kOuter - kWall, near, far);
        if (!inside && !overRim) {
            // Only the wall: a strong lens near the silhouette.
            Vec3 bent;
            refract(d, n, 1 / 1.5f, bent);
            const Vec3 q = p + bent * 0.02f;
            through = background(q, normalize(mix(bent, d, 0.3f)), depth + 1, 2.5f)
                * Vec3{0.50f, 0.56f, 0.54f};
        } else if (overRim && clear > kOuter - kWall) {
            return Vec3{0.86f, 0.9f, 0.9f} * 0.9f; // the bright ground rim
        } else if (p.z < kBase) {
            Vec3 bent;
            refract(d, n, 1 / 1.5f, bent);
            through = background(p + bent * (2 * kOuter),
                          Vec3{bent.x * 1.6f, bent.y, bent.z * 0.4f + 0.12f},
                          depth + 1,
                          3)
                * Vec3{0.72f, 0.80f, 0.78f};
        } else if (p.z < jar.level && !overRim) {
            through = throughWater(jar, p, d, n, depth);
        } else {
            // Air side: straight on until the water surface or the far wall.
            const float down = d.z < 0 ? (jar.level - p.z) / d.z : 1e9f;
            if (down < span) {
                const Vec3 s = p + d * down;
                const float fs = fresnel(-d.z, 0.02f);
                const float meniscus = smoothstep(
                    kOuter - 0.012f, kOuter - kWall, length(Vec2{s.x - jar.x, s.y - jar.y}));
                const Vec3 up = normalize(Vec3{d.x, d.y, -d.z + 0.25f * meniscus});
                Vec3 bent;
                refract(d, Vec3{0, 0, 1}, 1 / 1.33f, bent);
                const Vec3 below = throughWater(jar, s, bent, Vec3{0, 0, 1}, depth);
                through = below * (1 - fs) + beyond(s, up, 2.5f) * fs * 1.2f;
            } else {
                const float far2 = fresnel(cosIn, 0.045f);
                through = background(p + d * span, d, depth + 1, 3.6f) * (1 - far2) * 0.97f
                    + Vec3{0.9f, 0.95f, 1.0f} * (0.03f + far2 * 0.4f);
            }
        }
        // Smears and the maker's ripples catch a little light.
        const float smear = clamp01(fbm2(p.x * 40 + jar.x * 90, p.z * 18, 4, m_seed + 12));
        return through * tint * (1 - f) + mirrored * f + Vec3{0.05f, 0.052f, 0.055f} * smear;
    }

    // Refracts into the water body and out at the far wall.
    Vec3 throughWater(const Jar& jar, Vec3 p, Vec3 d, Vec3 n, int depth) const
    {
        Vec3 bent = d;
        if (n.z < 0.5f)
            refract(d, n, 1 / 1.33f, bent);
        float near = 0, far = 0;
        if (!hitCylinder(p, bent, jar.x, jar.y, kOuter - kWall * 0.5f, near, far))
            return background(p, bent, depth + 1, 3);
        Vec3 q = p + bent * far;
        if (q.z > jar.level && bent.z > 0) { // mirrored under the surface
            const float t = (jar.level - p.z) / bent.z;
            const Vec3 s = p + bent * t;
            bent.z = -bent.z;
            if (!hitCylinder(s, bent, jar.x, jar.y, kOuter - kWall * 0.5f, near, far))
                return Vec3{0.5f, 0.5f, 0.5f};
            q = s + bent * far;
        }
        if (q.z < kBase)
            return sill(Vec3{q.x, q.y, 0}, Vec3{0, 0.7f, -0.7f}, 2) * Vec3{0.8f, 0.86f, 0.85f};
        const Vec3 m = normalize(Vec3{jar.x - q.x, jar.y - q.y, 0});
        Vec3 out;
        if (!refract(bent, m, 1.33f, out))
            out = reflect(bent, m);
        const Vec3 c = background(q, normalize(out), depth + 1, 2.2f);
        const float edge = 1 - 0.35f * smoothstep(0.5f, 0.1f, -dot(bent, m));
        return c * Vec3{0.93f, 0.965f, 0.965f} * edge;
    }

    std::uint32_t m_seed;
    std::array<Jar, 4> m_jars{};
    std::vector<Texture> m_tapes;
    Texture m_garden;
};

} // namespace

QImage jarRow(QSize size, std::uint32_t seed)
{
    const JarScene scene(seed);
    Camera camera{{-0.07f, -0.63f, 0.165f}, {-0.006f, 0.0f, 0.060f}, 48, -0.8f};
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return scene.shade(r); });
    Film film;
    film.exposure = 0.72f;
    film.contrast = 1.3f;
    film.saturation = 0.95f;
    film.focus = 0.60f;
    film.lensBlur = 0.010f;
    film.glare = 0.12f;
    film.whiteBalance = {1.02f, 1.0f, 0.97f};
    return develop(buffer, size.width(), size.height(), film, seed);
}

} // namespace wainscot::samples
