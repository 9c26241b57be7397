// Children's drawings on A4, as scans, and one photographed on a table.
#pragma once

#include <QImage>
#include <QSize>

#include <cstdint>

namespace wainscot::samples {

QImage drawingPuddleArrows(QSize size, std::uint32_t seed);
QImage drawingWorm(QSize size, std::uint32_t seed);
QImage drawingCloudDrinking(QSize size, std::uint32_t seed);
QImage drawingYardMap(QSize size, std::uint32_t seed);
QImage drawingUmbrella(QSize size, std::uint32_t seed);
QImage drawingMeasuring(QSize size, std::uint32_t seed);
QImage flatSunDrawing(QSize size, std::uint32_t seed); // evenly lit sheet
QImage drawingSunDrinks(QSize size, std::uint32_t seed); // the same, photographed at an angle

} // namespace wainscot::samples
