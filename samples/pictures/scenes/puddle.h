// A stretch of ground with a puddle: relief decides where the water stands.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "samples/pictures/light/film.h"
#include "samples/pictures/scenes/ground.h"
#include "samples/pictures/scenes/sky.h"

namespace wainscot::samples {

struct PuddleShape {
    Vec2 center{0, 0};
    Vec2 radii{0.6f, 0.4f};
    float angle = 0;
    float slope = 0.022f; // metres of rise per unit of the shape function
    float level = 0; // water level against the rim, metres; lower = smaller puddle
    float damp = 0.006f; // height of the damp band above the water
    float raggedness = 1;
    std::uint32_t seed = 1;
    bool dry = false;
};

struct Ring {
    Vec2 center;
    float radius = 0, amplitude = 0, wavelength = 0, width = 0;
};

struct Daylight {
    Vec3 sunDir = normalize(Vec3{-0.5f, 0.35f, 0.75f});
    Vec3 sun{0, 0, 0};
    Vec3 sky{0.85f, 0.9f, 1.0f};
};

// Something lying flat: linear colour, coverage and lift of the surface.
struct Overlay {
    Vec3 color;
    float alpha = 0;
    Vec2 slope{0, 0};
    float gloss = 0;
    float shadow = 0; // darkens what lies below
    float grip = 0; // 1: sits only on the high grains, like chalk
    bool floats = false; // shown on top of water
    std::uint8_t part = 0;
};

class PuddleGround {
public:
    PuddleGround(const GroundMaterial& material, const SkyDome& sky)
        : m_material(material)
        , m_sky(sky)
    {
    }

    PuddleShape shape;
    Daylight light;
    std::vector<Ring> rings;
    Vec3 tint{1.0f, 0.98f, 0.95f};
    Vec3 waterTint{0.060f, 0.054f, 0.042f};
    float murk = 22; // per metre
    float breeze = 0.004f;
    float overallWet = 0; // 0 dry .. 1 rained on
    float exaggeration = 1; // of the relief's slopes
    std::function<Overlay(Vec2, float footprint)> overlay;
    std::function<float(Vec2)> sunVisible; // 0..1
    std::function<float(Vec2)> occlusion; // sky visibility 0..1
    std::function<float(Vec2)> extraHeight; // metres, added to the ground
    std::function<float(Vec2)> flatten; // 0..1, presses the fine relief flat
    std::function<bool(const Ray&, Sample&)>
        object; // things standing on the ground, seen in the water too

    // Tabulates the slow shapes; call once after setting `shape`.
    void prepare();
    Sample shade(const Ray& ray) const;
    float bowl(Vec2 p) const; // ground height without fine relief

private:
    struct Slow {
        float bowl = 0, patch = 0, dampNoise = 0;
    };
    float bareBowl(Vec2 p) const;
    Slow slowShapes(Vec2 p) const;
    Vec2 rippleSlope(Vec2 p, float footprint) const;
    struct Spot;
    Spot spotAt(Vec2 p, float footprint) const;
    Vec3 groundLight(const Spot& spot, Vec3 view) const;
    Vec3 waterLight(const Spot& spot, const Ray& ray) const;

    static constexpr float kMapHalf = 1.6f; // metres covered by the table, to each side
    Texture m_slow;
    const GroundMaterial& m_material;
    const SkyDome& m_sky;
};

std::vector<Ring> rainRings(Vec2 center, Vec2 spread, int count, std::uint32_t seed);

} // namespace wainscot::samples
