// What is written and shown on panels, as data for a program that reads it in other years.
#pragma once

#include "layout/paper/pdf_writer.h"

#include <QByteArray>

#include <span>

namespace wainscot {

// JSON: the display's audience and language, its panels with titles and sizes, and their pieces in
// reading order with kind, place in millimetres from the upper left, text, language and the name
// that stands beneath. It is made of cleared panels alone, so it tells what the paper shows and
// nothing else: no child who is not named there, no file, no number of the book.
[[nodiscard]] QByteArray displayData(std::span<const PaperPanel> panels);

} // namespace wainscot
