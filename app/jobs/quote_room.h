// How much room children's words take on a display, before anything is laid out. An estimate: what
// does not fit in the end is found by the arrangement, and the room is then taken smaller.
#pragma once

#include "app/jobs/material.h"

#include <cstdint>
#include <map>

namespace wainscot {

struct QuoteRoom {
    std::int64_t roomCm2 = 0; // for all moments of the display; 0 = not known
    std::map<QuoteId, std::int64_t> momentCm2; // a quote with its label and a picture
};

// Words are measured as they will be set, in a column of a moment; room is what is left of the
// panels beside the adult's texts and the leading pictures. Optimistic.
[[nodiscard]] QuoteRoom quoteRoom(
    const Material& material, const PermissionRules& rules, int panels);

} // namespace wainscot
