// A panel that hangs too high or too low, at the eyes of those in front of its wall.
#pragma once

#include "core/model/book.h"

#include <optional>

namespace wainscot {

// The first wall a panel hangs on, with the panel straight up or down from where it is, so that its
// middle is at the viewers' eyes (the children's where both stand there). Nothing when it hangs
// nowhere, hangs so already, or would lie over another panel or what stays clear.
[[nodiscard]] std::optional<Wall> withPanelAtEyes(const Book& book, PanelId panel);

} // namespace wainscot
