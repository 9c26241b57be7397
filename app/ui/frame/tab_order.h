// Where Tab goes: the controls in the order they are read in, however late a page was built.
#pragma once

#include <QWidget>

namespace wainscot::ui {

// The next control in `window` that takes the focus by Tab, or the one before; round at the end.
// What stands in one row is read in the direction of the interface, rows from the top; what a
// widget holds is read before its neighbour. What another covers whole is passed over. Null when
// there is none.
[[nodiscard]] QWidget* nextStop(const QWidget& window, const QWidget* from, bool forward);

} // namespace wainscot::ui
