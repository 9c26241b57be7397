// A snail on a wet stone, as a close-up.
#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"
#include "samples/pictures/scenes/scenes.h"
#include "samples/pictures/scenes/solid.h"

namespace wainscot::samples {
namespace {

constexpr float kGrowth = 0.155f; // of the logarithmic spiral, per radian
constexpr float kRadius = 0.0125f; // centre line of the last whorl
constexpr float kTube = 0.60f; // tube radius against centre line radius

struct ShellPoint {
    float distance;
    float along; // spiral angle
    float around; // angle in the tube's cross-section
};

// Shell with its axis along y, in its own frame.
ShellPoint shellDistance(Vec3 p)
{
    const float far = length(p) - 0.021f; // a ball around it is enough from afar
    if (far > 0.006f)
        return {far / 0.8f, 0, 0};
    const float side = p.y;
    const float r = std::max(1e-5f, std::sqrt(p.x * p.x + p.z * p.z));
    const float angle = quickAtan2(p.z, p.x);
    const float turns = (std::log(r / kRadius) / kGrowth - angle) / (2 * kPi);
    ShellPoint best{1e9f, 0, 0};
    for (int k = 0; k < 2; ++k) {
        const float theta = angle + 2 * kPi * (std::floor(turns) + float(k));
        if (theta > 0.35f) // the mouth
            continue;
        const float centre = kRadius * std::exp(kGrowth * theta);
        const float tube = kTube * centre;
        const float lift = 0.35f * (kRadius - centre); // inner whorls rise a little
        const float across = r - centre * 0.96f;
        const float q = std::sqrt(across * across
            + (std::fabs(side) - lift) * (std::fabs(side) - lift)
                * (std::fabs(side) > lift ? 1.0f : 0.2f));
        const float d = q - tube;
        if (d < best.distance)
            best = {d, theta, std::atan2(side, across)};
    }
    return best;
}

const Vec3 kShellAt{0.002f, 0, 0.0195f};

Vec3 toShell(Vec3 p)
{
    const Vec3 q{kShellAt.x - p.x,
        p.y - kShellAt.y,
        p.z - kShellAt.z}; // mirrored: the whorl opens at the head
    const float a = 1.15f, c = std::cos(a), s = std::sin(a);
    const Vec3 t{c * q.x - s * q.z, q.y, s * q.x + c * q.z};
    const float b = 0.30f;
    return {t.x, std::cos(b) * t.y - std::sin(b) * t.z, std::sin(b) * t.y + std::cos(b) * t.z};
}

enum Part { kShell = 1, kBody, kEye };

float snailDistance(Vec3 p, int& part)
{
    const float shell = shellDistance(toShell(p)).distance * 0.8f;
    // Foot: a long flattened body from tail to raised head.
    const Vec3 flat{p.x, p.y, p.z * 1.5f};
    float body = capsule(flat, {0.030f, 0.002f, 0.002f}, {0.006f, 0, 0.006f}, 0.0012f, 0.0062f);
    body = smoothMin(body,
        capsule(flat, {0.006f, 0, 0.006f}, {-0.021f, -0.001f, 0.0055f}, 0.0062f, 0.0056f),
        0.004f);
    body = smoothMin(body,
        capsule(p, {-0.018f, -0.001f, 0.005f}, {-0.031f, -0.003f, 0.0125f}, 0.0054f, 0.0041f),
        0.006f);
    const float skirt = ellipsoid(
        p - Vec3{-0.002f, 0, 0.0012f}, {0.033f, 0.0085f + 0.0012f * std::sin(p.x * 420), 0.0026f});
    body = smoothMin(body, skirt, 0.003f);
    if (body < 0.001f)
        body += 0.00022f * cells2(p.x * 900 + p.z * 500, p.y * 900 + p.z * 700, 5).f1;
    const bool nearHead = p.x < -0.02f;
    for (float side : {-1.0f, 1.0f}) {
        if (!nearHead)
            break;
        const Vec3 root{-0.032f, -0.003f + side * 0.0022f, 0.0145f},
            tip{-0.042f - 0.001f * side, -0.004f + side * 0.0065f, 0.0262f + 0.0015f * side};
        body = smoothMin(body, capsule(p, root, tip, 0.0011f, 0.00065f), 0.002f);
        body = smoothMin(body,
            capsule(p,
                {-0.0345f, -0.003f + side * 0.0018f, 0.0105f},
                {-0.0395f, -0.003f + side * 0.0032f, 0.0082f},
                0.0009f,
                0.0006f),
            0.0015f);
    }
    part = kBody;
    float d = body;
    if (shell < d) {
        d = shell;
        part = kShell;
    }
    for (float side : {-1.0f, 1.0f}) {
        if (!nearHead)
            break;
        const float eye = length(p
                              - Vec3{-0.0425f - 0.001f * side,
                                  -0.004f + side * 0.0068f,
                                  0.0268f + 0.0015f * side})
            - 0.00105f;
        if (eye < d) {
            d = eye;
            part = kEye;
        }
    }
    return d;
}

Finish snailFinish(int part, Vec3 p)
{
    if (part == kEye)
        return {srgb(0x2a241e), 1.0f, 3, 200, 0};
    if (part == kBody) {
        const CellHit bumps = cells2(p.x * 900 + p.z * 500, p.y * 900 + p.z * 700, 5);
        const float tone = 0.7f + 0.5f * smoothstep(0.5f, 0.1f, bumps.f1)
            + 0.2f * smoothstep(0.0f, 0.012f, p.z) * -1.0f;
        return {srgb(0x93836a) * tone, 1.1f, 3.5f, 120, 0.3f};
    }
    const ShellPoint s = shellDistance(toShell(p));
    const float growth = noise2(s.along * 34, s.around * 1.2f, 3) * 0.6f
        + noise2(s.along * 90, s.around * 2, 4) * 0.4f;
    Vec3 c = mix(srgb(0xb58a50), srgb(0xd9b97e), 0.5f + 0.5f * growth);
    for (float band : {-1.15f, -0.45f, 0.45f, 1.15f}) {
        const float edge = std::fabs(s.around - band) + 0.05f * noise2(s.along * 8, band * 9, 6);
        const float broken = 0.6f + 0.4f * noise2(s.along * 5, band * 5, 7);
        c = mix(c, srgb(0x4b2e1c), 0.85f * smoothstep(0.24f, 0.14f, edge) * broken);
    }
    c = mix(c, srgb(0x7a5634), 0.5f * smoothstep(-9.0f, -14.0f, s.along));
    return {c * (0.9f + 0.25f * growth), 1.2f, 2.5f, 90, 0};
}

QImage gardenScenery(std::uint32_t seed)
{
    QImage scenery = SkyDome::emptyScenery();
    QPainter painter(&scenery);
    const double w = scenery.width(), h = scenery.height();
    Rng rng(seed);
    painter.setPen(Qt::NoPen);
    for (int i = 0; i < 1500; ++i) {
        const double y = h - std::fabs(rng.gauss()) * h * 0.10;
        painter.setBrush(QColor(50 + rng.index(70), 74 + rng.index(70), 34 + rng.index(30), 230));
        painter.drawEllipse(
            QPointF(rng.uniform() * w, y), 30 + rng.uniform() * 30, 24 + rng.uniform() * 20);
    }
    return scenery;
}

} // namespace

QImage snailOnStone(QSize size, std::uint32_t seed)
{
    const GroundMaterial stone(GroundMaterial::Kind::Stone, seed, 0.16f);
    const SkyDome sky(Weather::Overcast, gardenScenery(seed), 0.9f, seed + 20);
    PuddleGround ground(stone, sky);
    ground.shape = {
        {0.09f, 0.07f}, {0.06f, 0.04f}, 0.3f, 0.004f, 0.0005f, 0.004f, 1.0f, seed + 4, false};
    ground.light.sky = {0.95f, 1.0f, 1.04f};
    ground.light.sunDir = normalize(Vec3{0.35f, -0.45f, 0.8f});
    ground.light.sun = {0.35f, 0.34f, 0.31f};
    ground.overallWet = 0.95f;
    ground.breeze = 0;
    ground.tint = {1.0f, 0.95f, 0.86f};
    ground.exaggeration = 1.7f;
    const auto map = [](Vec3 p) {
        int part = 0;
        return snailDistance(p, part);
    };
    const Bounds bounds{{-0.004f, 0, 0.017f}, 0.047f};
    ground.object = [&](const Ray& ray, Sample& out) {
        float near = 0, far = 0, t = 0;
        if (!bounds.hit(ray, near, far))
            return false;
        bool found = false;
        t = near;
        for (int i = 0; i < 80 && t < far; ++i) {
            const float d = map(ray.origin + ray.dir * t);
            if (d < 0.00008f) {
                found = true;
                break;
            }
            t += d * 0.8f;
        }
        const Vec3 p = ray.origin + ray.dir * t;
        if (!found || p.z < 0.0f)
            return false;
        int part = 0;
        snailDistance(p, part);
        Vec3 n = mapNormal(map, p, 0.00015f);
        if (part == kShell) {
            const ShellPoint s = shellDistance(toShell(p));
            n = normalize(n + Vec3{0.16f, 0.02f, 0.1f} * noise2(s.along * 60, s.around * 1.5f, 9));
        }
        const float open = ambientOpenness(map, p, n, 0.012f)
            * (0.4f + 0.6f * smoothstep(0.0f, 0.012f, p.z + 0.006f * n.z));
        const float sunlit = dot(n, ground.light.sunDir) < 0
            ? 0.0f
            : softShadow(map, p + n * 0.0005f, ground.light.sunDir, 0.05f, 0.25f);
        out.color = lightSolid(snailFinish(part, p),
            n,
            ray.dir,
            Outdoors{ground.light, sky, Vec3{0.22f, 0.21f, 0.19f}},
            open,
            sunlit);
        out.depth = t;
        out.part = std::uint8_t(40 + part);
        return true;
    };
    ground.occlusion = [&](Vec2 p) {
        return dot(p, p) > 0.004f ? 1.0f : clamp01(0.25f + 55.0f * map({p.x, p.y, 0.004f}));
    };
    Camera camera{{-0.035f, -0.165f, 0.062f}, {-0.005f, 0.0f, 0.0125f}, 38, 2.0f};
    ground.prepare();
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return ground.shade(r); });
    Film film;
    film.exposure = 1.6f;
    film.contrast = 1.2f;
    film.focus = 0.168f;
    film.lensBlur = 0.022f;
    film.whiteBalance = {1.02f, 1.0f, 0.96f};
    return develop(buffer, size.width(), size.height(), film, seed);
}

} // namespace wainscot::samples
