// Points, sizes and rectangles in millimetres. Origin at the top left, y grows downwards.
#pragma once

#include "core/base/quantity.h"

#include <algorithm>

namespace wainscot {

struct PointMm {
    Mm x;
    Mm y;
    friend constexpr bool operator==(PointMm, PointMm) = default;
};

struct SizeMm {
    Mm width;
    Mm height;
    [[nodiscard]] constexpr bool isEmpty() const { return width <= Mm(0) || height <= Mm(0); }
    [[nodiscard]] constexpr SizeMm transposed() const { return {height, width}; }
    friend constexpr bool operator==(SizeMm, SizeMm) = default;
};

struct RectMm {
    Mm x;
    Mm y;
    Mm width;
    Mm height;

    [[nodiscard]] constexpr Mm right() const { return x + width; }
    [[nodiscard]] constexpr Mm bottom() const { return y + height; }
    [[nodiscard]] constexpr PointMm topLeft() const { return {x, y}; }
    [[nodiscard]] constexpr SizeMm size() const { return {width, height}; }
    [[nodiscard]] constexpr double areaMm2() const { return width.value() * height.value(); }
    [[nodiscard]] constexpr bool isEmpty() const { return size().isEmpty(); }
    [[nodiscard]] constexpr bool contains(PointMm p) const
    {
        return p.x >= x && p.x < right() && p.y >= y && p.y < bottom();
    }
    // Grown on all sides; a negative margin shrinks.
    [[nodiscard]] constexpr RectMm grown(Mm by) const
    {
        return {x - by, y - by, width + 2 * by, height + 2 * by};
    }
    [[nodiscard]] constexpr RectMm movedBy(Mm dx, Mm dy) const
    {
        return {x + dx, y + dy, width, height};
    }
    friend constexpr bool operator==(const RectMm&, const RectMm&) = default;
};

// The part two rectangles share; empty (zero size) when they only touch or lie apart.
[[nodiscard]] constexpr RectMm intersection(const RectMm& a, const RectMm& b)
{
    const Mm left = std::max(a.x, b.x);
    const Mm top = std::max(a.y, b.y);
    const Mm right = std::min(a.right(), b.right());
    const Mm bottom = std::min(a.bottom(), b.bottom());
    if (right <= left || bottom <= top)
        return {left, top, Mm(0), Mm(0)};
    return {left, top, right - left, bottom - top};
}

// A point and a rectangle in fractions of a picture (0..1), after its orientation is applied.
struct PointFraction {
    double x = 0.5;
    double y = 0.5;
    friend constexpr bool operator==(PointFraction, PointFraction) = default;
};

struct RectFraction {
    double x = 0;
    double y = 0;
    double width = 1;
    double height = 1;
    friend constexpr bool operator==(const RectFraction&, const RectFraction&) = default;
};

// Whole pixels of a picture.
struct SizePx {
    int width = 0;
    int height = 0;
    [[nodiscard]] constexpr bool isEmpty() const { return width <= 0 || height <= 0; }
    [[nodiscard]] constexpr double aspect() const { return double(width) / double(height); }
    friend constexpr bool operator==(SizePx, SizePx) = default;
};

} // namespace wainscot
