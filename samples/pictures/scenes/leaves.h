// Fallen leaves: painted leaf shapes scattered on the ground.
#pragma once

#include <vector>

#include "samples/pictures/light/texture.h"
#include "samples/pictures/scenes/puddle.h"

namespace wainscot::samples {

struct Leaf {
    Vec2 center;
    float angle = 0, size = 0; // size: length in metres
    int kind = 0; // 0 maple, 1 beech, 2 oak, 3 birch
    Vec3 tint;
    float curl = 0;
};

class LeafLitter {
public:
    explicit LeafLitter(std::uint32_t seed);
    void scatter(Vec2 from, Vec2 to, int count, float minSize, float maxSize, std::uint32_t seed);
    void add(const Leaf& leaf);
    Overlay at(Vec2 p, float footprint) const;

private:
    static constexpr float kCell = 0.1f;
    static constexpr int kGrid = 64; // cells per side, centred on the origin
    bool sampleLeaf(const Leaf& leaf, Vec2 p, float footprint, Texel& out, Vec2& uv) const;

    std::vector<Texture> m_shapes;
    std::vector<Leaf> m_leaves;
    std::vector<std::vector<int>> m_cells;
};

} // namespace wainscot::samples
