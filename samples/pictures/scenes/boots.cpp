// Rubber boots in a puddle, seen from the knee down.
#include "samples/pictures/light/noise.h"
#include "samples/pictures/scenes/leaves.h"
#include "samples/pictures/scenes/scenes.h"
#include "samples/pictures/scenes/solid.h"

namespace wainscot::samples {
namespace {

struct BootPose {
    Vec3 at;
    float turn = 0;
};
const BootPose kPoses[2] = {{{-0.082f, 0.02f, 0}, 0.22f}, {{0.078f, -0.035f, 0}, -0.30f}};

enum Part { kRubber = 1, kSole, kRim, kTrousers };

Vec3 toBoot(Vec3 p, const BootPose& pose)
{
    const Vec2 q = rotate({p.x - pose.at.x, p.y - pose.at.y}, -pose.turn);
    return {q.x, q.y, p.z - pose.at.z};
}

// One boot, toe towards -y.
float bootDistance(Vec3 p, int& part)
{
    const float squash =
        1.0f + 1.1f * std::max(0.0f, 0.03f - p.z); // the vamp spreads over the sole
    const Vec3 f{p.x / squash, p.y, p.z};
    // Far away a plain capsule around the whole leg is enough.
    const float rough = std::min(capsule(p, {0, 0.01f, 0.06f}, {0, 0.012f, 0.62f}, 0.075f, 0.08f),
        capsule(p, {0, 0.02f, 0.05f}, {0, -0.10f, 0.04f}, 0.06f, 0.06f));
    if (rough > 0.03f) {
        part = kRubber;
        return rough;
    }
    float foot = capsule(f, {0, 0.022f, 0.046f}, {0.004f, -0.098f, 0.036f}, 0.039f, 0.039f);
    foot = smoothMin(
        foot, ellipsoid(p - Vec3{0.003f, -0.098f, 0.038f}, {0.044f, 0.05f, 0.036f}), 0.02f);
    // Slack rubber folds at the ankle.
    const float fold = p.z < 0.04f || p.z > 0.17f
        ? 0.0f
        : 0.0022f * std::sin(p.z * 150 + 3 * noise2(p.x * 30 + 5, p.y * 30, 3))
            * smoothstep(0.05f, 0.085f, p.z) * smoothstep(0.16f, 0.11f, p.z);
    const Vec3 s{p.x, (p.y - 0.012f) * 0.88f, p.z};
    const float shaft = capsule(s, {0, 0.0f, 0.07f}, {0, 0.006f, 0.225f}, 0.040f, 0.053f) + fold;
    float rubber = smoothMin(foot, shaft, 0.05f);
    const float top = p.z - 0.222f - 0.012f * p.y / 0.05f;
    rubber = smoothMax(rubber, top, 0.006f);
    rubber = std::max(rubber,
        -(shaft + 0.0045f) * (p.z > 0.15f ? 1.0f : -1.0f) - (p.z > 0.15f ? 0.0f : 1.0f)); // hollow
    const Vec2 outline{p.x, std::clamp(p.y, -0.100f, 0.026f) - p.y};
    const float ball = 0.041f + 0.006f * smoothstep(-0.02f, -0.09f, p.y)
        - 0.004f * smoothstep(0.05f, 0.0f, std::fabs(p.y + 0.025f));
    const float flat = std::sqrt(outline.x * outline.x + outline.y * outline.y) - ball;
    const float ridge = 0.0008f * std::sin(p.y * 900 + p.x * 500);
    const Vec2 q{
        std::max(flat + ridge + 0.004f, 0.0f), std::max(std::fabs(p.z - 0.010f) - 0.008f, 0.0f)};
    const float sole = length(q) - 0.004f;
    const Vec3 r{s.x, s.y - 0.005f, p.z - 0.217f - 0.012f * p.y / 0.05f};
    const float rim = torus({r.x, r.y, r.z * 0.55f}, 0.0525f, 0.0042f);
    // Trousers: a bunched tube that disappears in the shaft.
    const float tube = capsule(s, {0, 0.006f, 0.19f}, {0, 0.01f, 0.62f}, 0.045f, 0.068f);
    const float crease = tube > 0.02f || p.z < 0.2f
        ? 0.0f
        : 0.006f * noise3(p.x * 24, p.y * 24, p.z * 40, 11)
            + 0.004f * noise3(p.x * 30 + p.z * 22, p.y * 30, p.z * 46 - p.x * 25, 12);
    const float legs = tube + 0.75f * crease * smoothstep(0.2f, 0.26f, p.z);
    part = kRubber;
    float d = rubber;
    if (sole < d) {
        d = sole;
        part = kSole;
    }
    if (rim < d) {
        d = rim;
        part = kRim;
    }
    if (legs < d) {
        d = legs;
        part = kTrousers;
    }
    return d;
}

// Distance to both boots; `part` names the surface.
float bootsDistance(Vec3 p, int& part)
{
    float best = 1e9f;
    for (const BootPose& pose : kPoses) {
        int own = 0;
        const float d = bootDistance(toBoot(p, pose), own);
        if (d < best) {
            best = d;
            part = own;
        }
    }
    return best;
}

Finish bootFinish(int part, Vec3 p)
{
    const float dirt = smoothstep(0.10f, 0.01f, p.z)
        * clamp01(0.35f + 1.1f * fbm3(p.x * 40, p.y * 40, p.z * 40, 3, 5));
    const float specks = fbm3(p.x * 120 + 3, p.y * 120, p.z * 120, 3, 6);
    const float splash =
        smoothstep(0.30f, 0.38f, specks + 0.25f * smoothstep(0.12f, 0.02f, p.z) - 0.06f)
        * smoothstep(0.24f, 0.05f, p.z);
    Finish m;
    switch (part) {
    case kSole:
        m = {srgb(0x6a5a3a), 0.35f, 4.5f, 30, 0};
        break;
    case kRim:
        m = {srgb(0xb98a10), 1.0f, 3.0f, 90, 0};
        break;
    case kTrousers: {
        const float weave =
            0.5f + 0.5f * std::sin((p.x + p.z) * 2600) * std::sin((p.y - p.z) * 2600);
        m = {srgb(0x3c4450)
                * (0.8f + 0.3f * weave + 0.3f * fbm3(p.x * 30, p.y * 30, p.z * 30, 3, 8)),
            0,
            4,
            20,
            0.5f};
        const float damp = smoothstep(0.33f, 0.24f, p.z + 0.03f * noise3(p.x * 25, p.y * 25, 1, 9));
        m.albedo = m.albedo * (1 - 0.4f * damp);
        break;
    }
    default:
        m = {srgb(0xe2aa12) * (0.95f + 0.12f * fbm3(p.x * 12, p.y * 12, p.z * 12, 3, 7)),
            1.25f,
            2.0f,
            140,
            0};
        break;
    }
    const Vec3 mud = srgb(0x6b5a46);
    const float a = part == kTrousers ? 0.4f * splash : clamp01(0.75f * dirt + 0.8f * splash);
    m.albedo = mix(m.albedo, mud, a);
    m.gloss *= 1 - 0.6f * a;
    return m;
}

QImage schoolScenery(std::uint32_t seed)
{
    QImage scenery = SkyDome::emptyScenery();
    QPainter painter(&scenery);
    const double w = scenery.width(), h = scenery.height();
    paintHouse(painter, {w * 0.04, h * 0.70, w * 0.38, h * 0.31}, QColor(166, 118, 96), seed);
    paintHedge(painter, {0, h * 0.945, w, h * 0.06}, seed + 8);
    paintBareTree(painter, {w * 0.68, h}, TreeStyle{44, 300, 10, 28, QColor(42, 36, 32)}, seed + 6);
    paintBareTree(painter, {w * 0.92, h}, TreeStyle{30, 240, 9, 28, QColor(56, 50, 46)}, seed + 7);
    return scenery;
}

} // namespace

QImage rubberBoots(QSize size, std::uint32_t seed)
{
    const GroundMaterial asphalt(GroundMaterial::Kind::Asphalt, seed);
    const SkyDome sky(Weather::Breaking, schoolScenery(seed), 0.6f, seed + 20);
    PuddleGround ground(asphalt, sky);
    ground.shape = {{0.0f, 0.02f}, {0.62f, 0.42f}, 0.1f, 0.03f, 0.0f, 0.01f, 0.8f, seed + 4, false};
    ground.light.sky = {0.92f, 0.97f, 1.05f};
    ground.light.sunDir = normalize(Vec3{-0.6f, -0.35f, 0.7f});
    ground.light.sun = {0.35f, 0.33f, 0.29f};
    ground.overallWet = 0.7f;
    ground.breeze = 0.006f;
    ground.rings = {{{-0.08f, -0.02f}, 0.17f, 0.0006f, 0.026f, 0.035f},
        {{0.08f, -0.07f}, 0.14f, 0.0007f, 0.024f, 0.03f},
        {{0.07f, -0.06f}, 0.09f, 0.0004f, 0.02f, 0.02f}};
    const auto map = [](Vec3 p) {
        int part = 0;
        return bootsDistance(p, part);
    };
    std::vector<Hull> hulls;
    for (const BootPose& pose : kPoses) {
        const Vec2 toe = rotate({0, -0.10f}, pose.turn);
        hulls.push_back(
            {pose.at + Vec3{0, 0.01f, 0.05f}, pose.at + Vec3{0, 0.012f, 0.62f}, 0.088f});
        hulls.push_back({pose.at + Vec3{0, 0, 0.03f}, pose.at + Vec3{toe.x, toe.y, 0.03f}, 0.07f});
    }
    ground.object = [&](const Ray& ray, Sample& out) {
        float near = 1e9f, far = 0, t = 0;
        bool close = false;
        for (const Hull& hull : hulls)
            close |= hull.touches(ray, near, far);
        if (!close || !march(map, ray, near, far, t, 70))
            return false;
        const Vec3 p = ray.origin + ray.dir * t;
        if (p.z < 0.0f)
            return false;
        int part = 0;
        bootsDistance(p, part);
        const Vec3 n = mapNormal(map, p, 0.0006f);
        const float open = ambientOpenness(map, p, n, 0.09f)
            * (0.45f + 0.55f * smoothstep(0.0f, 0.12f, p.z + 0.05f * n.z));
        const float sunlit = dot(n, ground.light.sunDir) < 0
            ? 0.0f
            : softShadow(map, p + n * 0.002f, ground.light.sunDir, 0.25f, 0.08f);
        out.color = lightSolid(bootFinish(part, p),
            n,
            ray.dir,
            Outdoors{ground.light, sky, Vec3{0.20f, 0.20f, 0.20f}},
            open,
            sunlit);
        out.depth = t;
        out.part = std::uint8_t(40 + part);
        return true;
    };
    ground.occlusion = [&](Vec2 p) {
        return dot(p, p) > 0.055f ? 1.0f : clamp01(0.30f + 6.0f * map({p.x, p.y, 0.03f}));
    };
    Camera camera{{0.12f, -1.02f, 0.42f}, {0.01f, 0.0f, 0.135f}, 40, -1.5f};
    ground.prepare();
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return ground.shade(r); });
    Film film;
    film.exposure = 1.5f;
    film.contrast = 1.15f;
    film.focus = 1.02f;
    film.lensBlur = 0.012f;
    return develop(buffer, size.width(), size.height(), film, seed);
}

} // namespace wainscot::samples
