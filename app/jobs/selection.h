// Which words and pictures come onto a display: the words chosen exactly (voices.h), pictures of
// the same day beside them, in the order of time.
#pragma once

#include "app/jobs/voices.h"

#include <QString>

#include <vector>

namespace wainscot {

// One telling with the picture it belongs to, under a label.
struct Moment {
    std::optional<QDate> day;
    QString label;
    const Quote* quote = nullptr;
    const Picture* picture = nullptr; // nothing suits = no picture
};

struct Selection {
    std::vector<const Picture*> leads; // the dominant picture of each panel; may be fewer
    std::vector<Moment> moments; // in the order of time
    std::int64_t missingCm2 = 0; // more room that would let every child speak; 0 = none
};

// At most `moments` moments, and a picture to lead each of `panels` panels.
[[nodiscard]] Selection selectDays(
    const Material& material, int moments, int panels, const QuoteRoom& room = {});

// A drawing with its maker's words about it.
struct DrawingChoice {
    const Picture* work = nullptr;
    const Quote* quote = nullptr;
};

// Up to `count` drawings by different children, the best told first: stars, then length.
[[nodiscard]] std::vector<DrawingChoice> selectDrawings(const Material& material, int count);

} // namespace wainscot
