// How numbers, text and colours are spelled in a PDF content stream or object.
#pragma once

#include "core/base/quantity.h"

#include <QRgb>
#include <QString>

#include <string>

namespace wainscot::pdf {

// At most four decimals (1/10000 pt = 0.00004 mm), never an exponent, never "-0".
[[nodiscard]] std::string number(double value);

// A length as a number of points.
[[nodiscard]] std::string points(Mm length);

// Four hexadecimal digits. REQUIRES: code <= 0xffff
[[nodiscard]] std::string hexCode(unsigned code);

// UTF-16, big endian, in hexadecimal digits without brackets.
[[nodiscard]] std::string utf16Hex(const QString& text);

// A text string object: "<FEFF...>".
[[nodiscard]] std::string textString(const QString& text);

// "r g b" from 0 to 1. Pages carry no transparency: a colour with alpha is laid over white paper.
[[nodiscard]] std::string rgb(QRgb colour);

} // namespace wainscot::pdf
