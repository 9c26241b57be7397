// A small hand: wobbly lines, circles that do not quite close, scribbled
// fills, and capital letters from a stroke alphabet.
#pragma once

#include <QString>

#include "samples/pictures/drawings/paper.h"
#include "samples/pictures/light/random.h"

namespace wainscot::samples {

namespace pigments {
inline const Vec3 black = srgb(0x2a2826), blue = srgb(0x2c5fb8), sky = srgb(0x6aa8e0),
                  red = srgb(0xd23a34), orange = srgb(0xef8a2e), yellow = srgb(0xf6d23a),
                  green = srgb(0x4a9a48), brown = srgb(0x7c4f30), pink = srgb(0xe888a8),
                  purple = srgb(0x7a4c9c), skin = srgb(0xf0b890), graphite = srgb(0x6a6a6c),
                  grey = srgb(0x8e9298);
}

class Hand {
public:
    // unit: pixels per millimetre. steadiness 0 (shaky) .. 1.
    Hand(Paper& paper, float unit, float steadiness, std::uint32_t seed)
        : m_paper(paper)
        , m_unit(unit)
        , m_steadiness(steadiness)
        , m_rng(seed)
        , m_seed(seed)
    {
    }

    void take(Tool tool, Vec3 pigment, float widthMm, float pressure);

    // All coordinates in millimetres on the sheet.
    void line(std::vector<Vec2> points);
    void curve(const std::vector<Vec2>& points); // rounds the corners
    void circle(Vec2 center, Vec2 radii, float overlap = 0.25f); // overlap in turns
    void blob(Vec2 center, Vec2 radii, float lumps, float amount);
    void arrow(Vec2 from, Vec2 to, float head = 7);
    void scribble(Vec2 center, Vec2 radii, float gap, float angle); // zigzag fill of an ellipse
    void scribbleBox(Vec2 a, Vec2 b, float gap, float angle);
    void drop(Vec2 at, float size);
    void write(const QString& text, Vec2 at, float size, float slope = 0);
    void dab(Vec2 at, float size);
    Rng& rng() { return m_rng; }

private:
    void draw(std::vector<Vec2> mm, bool keepCorners);
    void zigzag(const std::vector<Vec2>& turns);

    Paper& m_paper;
    float m_unit, m_steadiness;
    Rng m_rng;
    std::uint32_t m_seed;
    Stroke m_stroke;
};

} // namespace wainscot::samples
