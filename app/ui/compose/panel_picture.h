// A panel as a small picture for the window.
#pragma once

#include <QPixmap>

#include "layout/screen/painter.h"

namespace wainscot::ui {

// `width`: px of the screen, whatever its pixel ratio. A picture that is still loading shows as a
// calm tone.
[[nodiscard]] QPixmap panelPicture(
    const DisplayList& list, int width, double pixelRatio, PictureProvider& pictures);

} // namespace wainscot::ui
