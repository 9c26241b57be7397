// What the words editor says, quietly, about how an adult's text reads.
#pragma once

#include <QString>

namespace wainscot::ui {

// "26 words, longest sentence 14. Flesch 72, grade 6.1." for running text in English; elsewhere
// the lengths, and that there is no formula for that language. `running` is false for titles and
// captions, which are too short for a formula. Empty while nothing is written.
[[nodiscard]] QString readingLine(const QString& text, const QString& language, bool running);

// The limits the check holds the text against, and who set them.
[[nodiscard]] QString readingLimits();

} // namespace wainscot::ui
