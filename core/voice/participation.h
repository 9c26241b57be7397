// Who has been heard, and where: counts over a whole book. Never a measure of a child.
#pragma once

#include "core/model/book.h"

#include <map>
#include <set>
#include <vector>

namespace wainscot {

// Whose own voice a piece is: the child who said the quote, or the makers of the work. A photo
// shows children and is nobody's voice.
[[nodiscard]] std::set<ChildId> voicesIn(const Book& book, const Piece& piece);

// The displays on which anything of a child stands: words, work, or a picture the child is seen in.
[[nodiscard]] std::vector<const Display*> displaysWith(const Book& book, ChildId child);

// On how many displays a child's own words or work hang, for every child of the book; the display
// `except` is not counted.
[[nodiscard]] std::map<ChildId, int> wallsOfChildren(const Book& book, DisplayId except);

} // namespace wainscot
