// How large things come out on this very screen.
#pragma once

class QWidget;

namespace wainscot::ui {

// Logical pixels that make one millimetre on the screen the widget is on. What the screen says of
// itself is believed between 50 and 400 dots per inch; else 96 per inch. A person who has held a
// ruler against the screen knows better: see setPixelsPerMm.
[[nodiscard]] double pixelsPerMm(const QWidget& widget);
[[nodiscard]] bool screenSizeIsMeasured(const QWidget& widget); // by a person
// Kept for this screen, by its name; 0 forgets it.
void setPixelsPerMm(const QWidget& widget, double pixels);

} // namespace wainscot::ui
