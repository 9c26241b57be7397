// A panel as a small picture for the window.
#pragma once

#include <QPixmap>

#include "core/model/book.h"
#include "layout/screen/painter.h"

namespace wainscot::ui {

// `width`: px of the screen, whatever its pixel ratio. A picture that is still loading shows as a
// calm tone.
[[nodiscard]] QPixmap panelPicture(
    const DisplayList& list, int width, double pixelRatio, PictureProvider& pictures);

// A panel of a book as its audience may see it today.
[[nodiscard]] QPixmap panelPicture(
    const Book& book, PanelId panel, int width, PictureProvider& pictures);

// Of panels that are shown to choose from.
inline constexpr int kOfferWidthPx = 320;

} // namespace wainscot::ui
