// Where on a panel the part of a picture lies that must stay in view.
#pragma once

#include "core/permit/cleared.h"

namespace wainscot {

// `place`: where the visible part of the picture is drawn. Empty when the marked part is cropped
// away. REQUIRES: picture.mustStay
[[nodiscard]] RectMm markedPart(const ClearedPicture& picture, const RectMm& place);

} // namespace wainscot
