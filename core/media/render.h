// The one way from a picture file to upright sRGB rows, before any treatment (treat.h).
#pragma once

#include "core/media/bake.h"
#include "core/media/rows.h"

#include <QImage>

namespace wainscot {

struct OpenedPicture {
    QByteArray file;
    PictureHeader header;
};

// The file's bytes and header, within the limits of intake.
// Errors: CannotRead, Refused, Damaged; `subject` is the file name
Result<OpenedPicture> openPicture(const QString& path);

// The visible part in whole upright pixels, rounded inwards, never empty.
[[nodiscard]] RectPx visiblePixels(const RectFraction& visible, SizePx upright);

// As large as fits `within` (or, the other way round, covers it), never enlarged.
[[nodiscard]] SizePx fitted(SizePx size, SizePx within);
[[nodiscard]] SizePx covering(SizePx size, SizePx target);

struct RenderRequest {
    int orientation = 1;
    RectPx part; // upright
    SizePx size; // upright, of the result; no larger than `part`
    bool yCbCr = false; // rows may come in JPEG's own colour space
    qint64 heldBesides = 0; // bytes that whoever takes the rows will hold of them
};

// No pixel outside the part is in the rows. Large pictures that must be decoded whole wait for one
// another, so keep the rows no longer than needed and open no second picture beside them.
// Errors: Damaged
Result<std::unique_ptr<RowSource>> render(
    const OpenedPicture& picture, const RenderRequest& request);

// Format_RGB32 or Format_Grayscale8. Errors: Damaged
// REQUIRES: source is grey or RGB
Result<QImage> toImage(RowSource& source);

// The same error, about the file at `path`.
[[nodiscard]] Error about(const QString& path, Error error);

} // namespace wainscot
