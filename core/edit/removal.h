// Taking something out of a book together with what points at it.
#pragma once

#include "core/edit/edit.h"

namespace wainscot {

// A quote with the pieces that show it, its translations and the pairs it is kept in; groups,
// meetings and replies let go of it.
void removeQuote(EditBuilder& edit, const Book& book, QuoteId quote);

// A group; its answers stay, and meetings let go of it.
void removeGroup(EditBuilder& edit, const Book& book, GroupId group);

} // namespace wainscot
