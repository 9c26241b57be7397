#include "core/voice/worth.h"

#include <algorithm>
#include <array>

namespace wainscot {

std::int64_t worthOfStars(int stars)
{
    static constexpr std::array<std::int64_t, 4> kWorth{300, 1000, 3000, 9000};
    return kWorth[static_cast<std::size_t>(std::clamp(stars, 0, 3))];
}

std::int64_t worthOfPicture(int stars)
{
    return worthOfStars(stars) * 6 / 5;
}

std::int64_t worthOfBeingSeldom(int walls, int fewest)
{
    constexpr std::int64_t kMost = 600;
    return kMost / (1 + std::max(0, walls - fewest));
}

} // namespace wainscot
