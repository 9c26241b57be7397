// How a display came to be: its state after each step since the book was opened.
#pragma once

#include "core/edit/edit.h"
#include "core/model/book.h"

#include <QString>

#include <vector>

namespace wainscot::ui {

struct DisplayStep {
    QString label; // "Moved: Photo"; empty for how it was before the first step
    Book book; // as it was right after the step
};

// Newest first; only steps that changed the display, its panels or pieces, at most `most` of them,
// and last how it was before them. A display that was not there yet has no state.
[[nodiscard]] std::vector<DisplayStep> historyOf(
    const Book& now, const std::vector<const Edit*>& steps, DisplayId display, std::size_t most);

// The book of today with the display as it was: what a family has taken back since is not shown
// again by looking at an earlier state.
[[nodiscard]] Book todayWith(const Book& today, const Book& then, DisplayId display);

} // namespace wainscot::ui
