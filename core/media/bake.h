// From an untouched original and a recipe to the pixels that may leave the book. Every output goes
// through here: cropped, upright, sRGB, nothing hidden, no metadata.
#pragma once

#include "core/base/geometry.h"
#include "core/base/result.h"
#include "core/model/treatment.h"

#include <QByteArray>
#include <QImage>
#include <QString>

namespace wainscot {

struct PictureRecipe {
    QString path; // of the original
    QString format; // "jpeg", "png", "webp", "tiff", "heic"
    int orientation = 1; // EXIF 1..8, what turns the stored pixels upright
    SizePx size; // upright and straightened
    RectFraction visible; // part of the treated picture; nothing outside it survives
    Treatment treatment;
};

struct BakedJpeg {
    QByteArray bytes; // baseline or progressive JPEG without any metadata segment
    SizePx size;
    int components = 3; // 1 = grey, 3 = sRGB
    bool passedThrough = false; // the original's compressed data, untouched
};

// A JPEG of the visible part, at most `largest` pixels each way and never enlarged. The original's
// own data is passed through when nothing needs changing (whole, upright, small enough, sRGB/grey).
Result<BakedJpeg> bakeJpeg(const PictureRecipe& recipe, SizePx largest);

// The visible part as an image that covers `target` pixels at least one way; never enlarged.
Result<QImage> bakeImage(const PictureRecipe& recipe, SizePx target);

} // namespace wainscot
