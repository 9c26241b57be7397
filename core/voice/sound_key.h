// How a word sounds, roughly, so that a child's own spelling meets the usual one.
#pragma once

#include <QString>

namespace wainscot {

// The consonants of a word by the rules of Metaphone (Lawrence Philips, Computer Language, December
// 1990): "nite" and "night" are both "NT"; X stands for sh and 0 for th; a vowel is kept only at
// the beginning. English rules: accents are taken off first. Empty for a word without a Latin
// letter, and for one whose every letter is silent.
[[nodiscard]] QString soundKey(const QString& word);

} // namespace wainscot
