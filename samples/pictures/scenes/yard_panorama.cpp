// The whole yard in one wide picture.
#include "samples/pictures/light/noise.h"
#include "samples/pictures/light/random.h"
#include "samples/pictures/scenes/leaves.h"
#include "samples/pictures/scenes/puddle.h"
#include "samples/pictures/scenes/scenes.h"

namespace wainscot::samples {

QImage yardPanorama(QSize size, std::uint32_t seed)
{
    const GroundMaterial asphalt(GroundMaterial::Kind::Asphalt, seed);
    QImage scenery = SkyDome::emptyScenery();
    QPainter painter(&scenery);
    const double w = scenery.width(), h = scenery.height();
    Rng rng(seed);
    painter.setRenderHint(QPainter::Antialiasing);
    paintBareTree(
        painter, {w * 0.30, h * 0.975}, TreeStyle{34, 190, 10, 28, QColor(66, 58, 52)}, seed + 2);
    paintHouse(painter, {w * 0.56, h * 0.79, w * 0.36, h * 0.22}, QColor(176, 160, 142), seed);
    painter.setPen(Qt::NoPen);
    paintHedge(painter, {0, h * 0.925, w * 0.56, h * 0.085}, seed + 7);
    for (double x = 0; x < w * 0.57; x += 7.5) { // slatted fence
        const int tone = 70 + rng.index(24);
        painter.fillRect(QRectF(x, h * 0.962 + rng.range(-1, 1), 6, h * 0.04),
            QColor(tone + 8, tone, tone - 12));
    }
    painter.fillRect(QRectF(0, h * 0.972, w * 0.57, 3), QColor(88, 82, 74));
    painter.fillRect(
        QRectF(w * 0.56, h * 0.988, w * 0.36, h * 0.02), QColor(112, 110, 106)); // plinth
    paintHedge(painter, {w * 0.92, h * 0.94, w * 0.08, h * 0.07}, seed + 8);
    paintBareTree(
        painter, {w * 0.08, h * 0.99}, TreeStyle{36, 200, 10, 28, QColor(58, 50, 45)}, seed + 3);
    paintBareTree(
        painter, {w * 0.50, h * 0.985}, TreeStyle{30, 170, 10, 28, QColor(64, 56, 50)}, seed + 4);
    painter.end();
    const SkyDome sky(Weather::Breaking, scenery, 0.75f, seed + 20);
    PuddleGround ground(asphalt, sky);
    ground.shape = {
        {-0.3f, 5.2f}, {3.1f, 1.35f}, 0.05f, 0.06f, 0.0f, 0.012f, 1.1f, seed + 4, false};
    ground.light.sky = {0.95f, 1.0f, 1.08f};
    ground.overallWet = 0.6f;
    ground.breeze = 0.002f;
    ground.extraHeight = [&](Vec2 p) { // smaller puddles around
        return -0.03f * smoothstep(0.30f, 0.50f, fbm2(p.x * 0.5f + 3, p.y * 0.5f, 3, seed + 9));
    };
    LeafLitter litter(seed + 40);
    litter.scatter({-3.1f, 1.8f}, {3.1f, 3.1f}, 60, 0.07f, 0.11f, seed + 43);
    ground.overlay = [&](Vec2 p, float footprint) { return litter.at(p, footprint); };
    Camera camera{{0, -0.4f, 1.35f}, {0, 4.0f, 1.0f}, 86, 0.4f};
    ground.prepare();
    const LightBuffer buffer = traceScene(
        camera, size.width(), size.height(), 2, [&](const Ray& r) { return ground.shade(r); });
    Film film;
    film.exposure = 2.0f;
    film.contrast = 1.12f;
    film.vignette = 0.15f;
    return develop(buffer, size.width(), size.height(), film, seed);
}

} // namespace wainscot::samples
