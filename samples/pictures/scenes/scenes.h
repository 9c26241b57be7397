// All photo-like scenes. Each returns a finished picture of the size it was
// asked for and depends only on that size and the seed.
#pragma once

#include <QImage>
#include <QSize>

#include <cstdint>

namespace wainscot::samples {

QImage puddleWithBranches(QSize size, std::uint32_t seed);
QImage puddleRaindrops(QSize size, std::uint32_t seed);
QImage chalkFirstDay(QSize size, std::uint32_t seed);
QImage chalkShrinking(QSize size, std::uint32_t seed);
QImage puddleGone(QSize size, std::uint32_t seed);
QImage yardPanorama(QSize size, std::uint32_t seed);
QImage wetLeaves(QSize size, std::uint32_t seed);
QImage stringAroundPuddle(QSize size, std::uint32_t seed);
QImage mudPrints(QSize size, std::uint32_t seed);
QImage rubberBoots(QSize size, std::uint32_t seed);
QImage windowDrops(QSize size, std::uint32_t seed);
QImage cloudOverRoofs(QSize size, std::uint32_t seed);
QImage jarRow(QSize size, std::uint32_t seed);
QImage jugAndFunnel(QSize size, std::uint32_t seed);
QImage snailOnStone(QSize size, std::uint32_t seed);
QImage sieveOnSand(QSize size, std::uint32_t seed);
QImage wetHands(QSize size, std::uint32_t seed);

} // namespace wainscot::samples
