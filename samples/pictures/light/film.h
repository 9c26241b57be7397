// From rendered light to a camera-like picture: lens blur, glare, tone curve,
// colour grade, vignette, grain, upsampling.
#pragma once

#include <QImage>

#include <cstdint>
#include <functional>
#include <vector>

#include "samples/pictures/light/camera.h"

namespace wainscot::samples {

struct Sample {
    Vec3 color;
    float depth = 1; // distance to the surface, metres
    std::uint8_t part = 0; // which object; differing neighbours get more rays
};

struct LightBuffer {
    int width = 0, height = 0;
    std::vector<Sample> pixels;
    Sample& at(int x, int y) { return pixels[size_t(y) * size_t(width) + size_t(x)]; }
    const Sample& at(int x, int y) const { return pixels[size_t(y) * size_t(width) + size_t(x)]; }
};

struct Film {
    float exposure = 1;
    Vec3 whiteBalance{1, 1, 1};
    float contrast = 1.0f; // strength of the S in the tone curve
    float saturation = 0.86f;
    Vec3 shadowTint{0, 0, 0}; // added to the darks, display units
    float vignette = 0.25f;
    float grain = 1.0f;
    float focus = 1; // metres
    float lensBlur = 0; // blur radius at infinity / picture width
    float glare = 0.05f;
    float fringe = 0.0006f; // red/blue magnification difference
};

using Shader = std::function<Sample(const Ray&)>;

// Traces the scene at 1/reduce of the final size; edges get extra rays.
LightBuffer traceScene(
    const Camera& camera, int width, int height, int reduce, const Shader& shader);

// Develops a buffer into the final picture.
QImage develop(LightBuffer buffer, int width, int height, const Film& film, std::uint32_t seed);

} // namespace wainscot::samples
