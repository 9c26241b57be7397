// A wooden table by a tall window, and the light in that room.
#pragma once

#include <cstdint>

#include "samples/pictures/light/math.h"

namespace wainscot::samples {

// A tall window to the left; soft light falls off into the room.
struct WindowLight {
    Vec3 dir = normalize(Vec3{-0.82f, 0.25f, 0.52f});
    Vec3 color{1.75f, 1.8f, 1.9f};
    Vec3 room{0.26f, 0.245f, 0.225f};

    Vec3 reflectedRoom(Vec3 r, float soft) const; // what a mirror pointing along r sees
};

// How a spot of the table is seen.
struct TableView {
    Vec3 along; // of the line of sight
    float footprint = 0; // of one picture element, metres
    float lit = 1; // how much of the window it sees, 0..1
    float open = 1; // how much of the room
};

// Oiled beech boards along x; `spilt` = with drops of water from a jug.
Vec3 tableLight(
    Vec3 p, const TableView& view, const WindowLight& light, bool spilt, std::uint32_t seed);

} // namespace wainscot::samples
