// Choosing whose words come onto a display: core/voice's exact selection with what a book knows.
#pragma once

#include "app/jobs/quote_room.h"
#include "core/voice/selection.h"

#include <vector>

namespace wainscot {

struct VoiceChoice {
    std::vector<const Quote*> quotes; // by day, then by number
    std::int64_t missingCm2 = 0; // more room that would let every child speak; 0 = none
};

// At most `moments` quotes that fit the room: every child before any child twice, every day (or
// every group the teacher has made) with words, no two tellings that say the same unless a child
// would stay unheard for it, the teacher's stars, and who has seldom been on a wall.
[[nodiscard]] VoiceChoice chooseVoices(
    const Material& material, int moments, const QuoteRoom& room = {});

// Children of the book whose voice is on none of the pieces, each with the reason as a sentence.
[[nodiscard]] std::vector<LeftOut> childrenUnheard(
    const Material& material, const std::vector<Piece>& pieces, std::int64_t missingCm2);

} // namespace wainscot
