#include "core/media/plane_map.h"

#include <cmath>
#include <cstddef>
#include <utility>

namespace wainscot {

namespace {

using Rows = std::array<std::array<double, 9>, 8>; // eight equations with their right sides

// Gauss and Jordan's elimination with the largest pivot; false when there is no single solution.
bool solve(Rows& rows)
{
    for (std::size_t column = 0; column < 8; ++column) {
        std::size_t best = column;
        for (std::size_t row = column + 1; row < 8; ++row) {
            if (std::abs(rows.at(row).at(column)) > std::abs(rows.at(best).at(column)))
                best = row;
        }
        if (!(std::abs(rows.at(best).at(column)) > 1e-12))
            return false;
        std::swap(rows.at(best), rows.at(column));
        for (std::size_t row = 0; row < 8; ++row) {
            const double factor = rows.at(row).at(column) / rows.at(column).at(column);
            if (row == column || factor == 0)
                continue;
            for (std::size_t i = column; i < 9; ++i)
                rows.at(row).at(i) -= factor * rows.at(column).at(i);
        }
    }
    return true;
}

} // namespace

std::optional<PlaneMap> PlaneMap::between(const FourPoints& from, const FourPoints& to)
{
    Rows rows{};
    for (std::size_t i = 0; i < 4; ++i) {
        const double x = from.at(i).x();
        const double y = from.at(i).y();
        const double u = to.at(i).x();
        const double v = to.at(i).y();
        rows.at(2 * i) = {x, y, 1, 0, 0, 0, -x * u, -y * u, u};
        rows.at(2 * i + 1) = {0, 0, 0, x, y, 1, -x * v, -y * v, v};
    }
    if (!solve(rows))
        return std::nullopt;
    PlaneMap map;
    for (std::size_t i = 0; i < 8; ++i)
        map.m_numbers.at(i) = rows.at(i).at(8) / rows.at(i).at(i);
    return map;
}

} // namespace wainscot
