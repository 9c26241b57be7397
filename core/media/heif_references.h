// What the pictures of a HEIF file are made of, looked at before the library follows it.
#pragma once

#include "core/base/result.h"

#include <QByteArrayView>

namespace wainscot {

// A derived picture (a grid of tiles, an overlay) names the pictures it is made of, and a picture
// the one that holds its transparency. libheif follows both without looking back and begins threads
// on the way: a picture that is part of itself ends the program. ISO/IEC 14496-12, 8.11.12 (item
// references); ISO/IEC 23008-12, 6.4 (derived and auxiliary items).
//
// Errors: Damaged where a picture is part of itself, where pictures are made of pictures more than
// kMostDerived times over, where following all of them takes more than kMostParts steps, or where
// the list cannot be read.
inline constexpr int kMostDerived = 5;
inline constexpr int kMostParts = 200'000; // a grid has at most 256 x 256 tiles
[[nodiscard]] Result<> checkHeifReferences(QByteArrayView file);

} // namespace wainscot
