// Pictures turned and treated: what was marked in them, and every piece that shows them, follow.
#pragma once

#include "core/edit/edit.h"
#include "core/model/book.h"

namespace wainscot::ui {

// How often the stored pixels are turned a quarter clockwise from one EXIF orientation to another;
// 0 when one of them is mirrored and the other is not.
[[nodiscard]] int quartersBetween(int from, int to);

// The picture's size before it was straightened.
[[nodiscard]] SizePx uprightSize(const Picture& picture);

// A quarter clockwise, with what is covered and marked in it.
[[nodiscard]] Picture quarterTurned(const Picture& picture);
// The same original with another treatment; the part that must stay is found again in it.
[[nodiscard]] Picture treatedAs(const Picture& picture, const Treatment& treatment);

// `after` in the book's place of the same picture. On every panel photos keep what they show, and
// work stands whole on its mat, on the same line.
[[nodiscard]] Edit changePicture(
    const Book& book, const Picture& after, const QString& label, int gesture = 0);

} // namespace wainscot::ui
