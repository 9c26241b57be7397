// What a screen reader is told about the canvas: one element for each piece, in reading order.
#pragma once

namespace wainscot::ui {

// Once per program, before a canvas is shown.
void installCanvasAccess();

} // namespace wainscot::ui
