// Photos of displays as they really hung: kept with the term, never put on a panel. Such a photo
// shows what its panels show, so whoever has words or pictures on them is in it too, unless
// somebody has said that nothing on the panels can be made out.
#pragma once

#include "core/model/book.h"

#include <vector>

namespace wainscot {

// Of one display, in the order of their days; those without a day come last.
[[nodiscard]] std::vector<const Picture*> wallPhotosOf(const Book& book, DisplayId display);
// Of all displays of an experience, in the order they were added.
[[nodiscard]] std::vector<const Picture*> wallPhotosOf(const Book& book, ExperienceId experience);

// Something said, made or photographed of the child is a piece of the display.
[[nodiscard]] bool isOnDisplay(const Book& book, DisplayId display, ChildId child);
// The child is known to be in the picture, made it, or is on the display it is a photo of.
[[nodiscard]] bool shows(const Book& book, const Picture& picture, ChildId child);

} // namespace wainscot
