// How an answer names its child and whom it answers.
#pragma once

#include "core/model/book.h"

#include <QString>

namespace wainscot::ui {

// "Hugo, answering Aurelie"; "Ceri, thinking on" for an answer to one's own idea; "Ceri" for an
// idea that answers nobody's. Empty for a child the book does not know.
[[nodiscard]] QString whoAnswers(const Book& book, const Quote& quote);

} // namespace wainscot::ui
