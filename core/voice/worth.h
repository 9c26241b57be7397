// What a piece is worth on a wall, in whole hundredths of a plain piece's third: the teacher's
// stars first, then who has been seldom heard. Never a judgement of what a child said.
#pragma once

#include <cstdint>

namespace wainscot {

// 0, 1, 2 or 3 stars: 300, 1000, 3000, 9000. Each star outweighs everything else that is counted,
// and three pieces of one star less about make up for it. Common practice has no numbers; ours.
[[nodiscard]] std::int64_t worthOfStars(int stars);

// A picture is seen from further away than words are read: six fifths. Ours, no source.
[[nodiscard]] std::int64_t worthOfPicture(int stars);

// Added to whatever lets the child speak: 600 / (1 + walls - fewest), rounded down, where `walls`
// counts earlier displays that carry the child's own words or work and `fewest` is the least of
// that in the class. Never rises with `walls`; whoever has been on fewest walls gets all of it. It
// stays below the step from no star to one. REQUIRES: 0 <= fewest <= walls
[[nodiscard]] std::int64_t worthOfBeingSeldom(int walls, int fewest);

} // namespace wainscot
