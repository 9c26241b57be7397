// A font whose glyphs are drawn one by one, for faces whose font program cannot be embedded.
#pragma once

#include "layout/paper/font_face.h"
#include "layout/paper/qpdf.h"

namespace wainscot::pdf {

// A Type 3 font (ISO 32000-1, 9.6.5): the outlines as Qt draws them, so that any face prints as it
// was laid out and its words can be found.
void fillInDrawn(QPDF& file, QPDFObjectHandle& font, const FontFace& face);

} // namespace wainscot::pdf
