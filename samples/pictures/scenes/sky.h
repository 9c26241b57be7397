// A painted sky dome: clouds from noise, trees and houses drawn with QPainter
// in azimuth/elevation space. Puddles and wet things reflect it.
#pragma once

#include <QImage>
#include <QPainter>

#include <cstdint>

#include "samples/pictures/light/texture.h"

namespace wainscot::samples {

enum class Weather { Overcast, Breaking, Clear };

// Light of the bare sky in a direction given by azimuth and elevation (radians).
Vec3 skyLight(Weather weather, float azimuth, float elevation, std::uint32_t seed);

class SkyDome {
public:
    static constexpr int kWidth = 1792, kHeight = 1440;
    static constexpr float kHalfSpan = kPi / 4; // azimuths -45..45 degrees around +y

    // scenery: transparent picture of kWidth x kHeight, bottom row = horizon.
    SkyDome(Weather weather, const QImage& scenery, float sceneryLight, std::uint32_t seed);
    Vec3 light(Vec3 dir, float lod = 0) const;
    Vec3 averageLight() const { return m_average; }

    static QImage emptyScenery();

private:
    Texture m_texture;
    Vec3 m_average;
};

struct TreeStyle {
    double trunkWidth = 46;
    double length = 300;
    int depth = 9;
    double spread = 30; // degrees
    QColor color{38, 33, 30};
};
void paintBareTree(QPainter& painter, QPointF foot, const TreeStyle& style, std::uint32_t seed);

// A plain house front with a row of windows; rect in scenery pixels.
void paintHouse(QPainter& painter, const QRectF& rect, QColor wall, std::uint32_t seed);

void paintHedge(QPainter& painter, const QRectF& rect, std::uint32_t seed);

} // namespace wainscot::samples
