// Plays a display list into QPainter: canvas, thumbnails, pictures of a panel, the printer.
#pragma once

#include "core/base/quantity.h"
#include "core/base/result.h"
#include "layout/typeset/display_list.h"

#include <QImage>

class QPainter;

namespace wainscot {

// Pixels of a picture, and which part of the upright picture they show.
struct ProvidedPicture {
    QImage image; // null = not there (yet)
    RectFraction part; // the whole picture, or at least its visible part
};

class PictureProvider {
public:
    PictureProvider() = default;
    PictureProvider(const PictureProvider&) = delete;
    PictureProvider& operator=(const PictureProvider&) = delete;
    virtual ~PictureProvider() = default;
    // `wanted`: device pixels the visible part will cover. Smaller or larger is welcome; a null
    // image means that it is still loading or cannot be read.
    [[nodiscard]] virtual ProvidedPicture picture(const ClearedPicture& picture, SizePx wanted) = 0;
};

enum class PaintPurpose {
    Screen, // a picture that is not there yet shows as a calm tone
    Output, // every picture must be there
};

// Paints with the painter's present transform, one unit = one millimetre of the panel; paints no
// ground. Only what meets `part` (mm) is drawn; an empty part means all of it.
//
// Errors (purpose Output): CannotRead naming the first picture that is not there; the rest is
// painted.
Result<> paint(QPainter& painter,
    const DisplayList& list,
    PictureProvider& pictures,
    PaintPurpose purpose,
    const RectMm& part = {});

// The panel on white paper. Errors: WrongUse for a resolution that makes no image (no size, or more
// than memory allows), CannotRead as above.
Result<QImage> toImage(const DisplayList& list, DotsPerInch resolution, PictureProvider& pictures);

// A provider for lists without pictures, and for tests of everything else: none is ever there.
class NoPictures final : public PictureProvider {
public:
    [[nodiscard]] ProvidedPicture picture(const ClearedPicture&, SizePx) override { return {}; }
};

} // namespace wainscot
