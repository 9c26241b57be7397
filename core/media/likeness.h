// How pictures look, small: which are nearly equal, and which of them came out best.
#pragma once

#include "core/model/experience.h"

#include <map>
#include <vector>

class QImage;

namespace wainscot {

// Pictures are looked at in this size, so that numbers of different cameras compare.
inline constexpr int kLookSidePx = 320; // that of a thumbnail

// `upright`: the whole picture, upright, at about kLookSidePx. Whole numbers throughout: the same
// on every machine for the same pixels.
//  hash: the sign of the 8 x 8 lowest frequencies of the cosine transform of 32 x 32 means of
//    light, against their median (a widespread method; Zauner 2010 describes it).
//  sharpness: variance of the 4-neighbour Laplacian (Pech-Pacheco et al. 2000).
//  dark, bright: share of pixels below 8 and above 247 of 255. These two limits are ours.
// REQUIRES: not a null image
[[nodiscard]] PictureLook lookOf(const QImage& upright);

// In how many of 64 bits two hashes differ.
[[nodiscard]] int differenceOf(const PictureLook& a, const PictureLook& b);

// Pictures taken within this time of one another, or without times, are one burst when their hashes
// differ in no more bits than that. Set by the generated series of the tests; no source.
inline constexpr int kBurstSeconds = 10;
inline constexpr int kBurstBits = 14;
inline constexpr int kCopyBits = 3; // nearly the same pixels: alike at whatever time

// Number > 0 of its burst for every picture that has near-equal ones among these; the others are
// missing. Works and photos never mix, nor pictures of different experiences.
[[nodiscard]] std::map<PictureId, int> burstsOf(const std::vector<const Picture*>& pictures);

// Whether a picture is proposed rather than another of its burst: more stars of the teacher, then
// what is not lost in black or white, then sharpness, then the earlier number. A strict order.
[[nodiscard]] bool isProposedBefore(const Picture& a, const Picture& b);

} // namespace wainscot
