// Plane to plane as a camera sees it: what makes a page photographed from the side a rectangle.
#pragma once

#include <QPointF>

#include <array>
#include <optional>

namespace wainscot {

using FourPoints = std::array<QPointF, 4>;

// A projective map, as eight numbers:
//   u = (a x + b y + c) / (g x + h y + 1),  v = (d x + e y + f) / (g x + h y + 1)
// (Hartley and Zisserman, Multiple View Geometry, 2nd ed., chapter 4.1: the linear system of four
// pairs of points).
class PlaneMap {
public:
    // Nothing when three of the points lie on one line.
    [[nodiscard]] static std::optional<PlaneMap> between(
        const FourPoints& from, const FourPoints& to);

    [[nodiscard]] QPointF at(double x, double y) const
    {
        const double w = m_numbers[6] * x + m_numbers[7] * y + 1;
        return {(m_numbers[0] * x + m_numbers[1] * y + m_numbers[2]) / w,
            (m_numbers[3] * x + m_numbers[4] * y + m_numbers[5]) / w};
    }
    [[nodiscard]] QPointF at(QPointF point) const { return at(point.x(), point.y()); }

private:
    std::array<double, 8> m_numbers{1, 0, 0, 0, 1, 0, 0, 0};
};

} // namespace wainscot
