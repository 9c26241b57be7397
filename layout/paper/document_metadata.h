// What a file says about itself: title, language, dates and the colours its numbers mean. Nothing
// else: no program, no person, no path.
#pragma once

#include "layout/paper/qpdf.h"

#include <QDateTime>
#include <QString>

namespace wainscot::pdf {

struct DocumentFacts {
    QString title;
    QString language; // BCP 47
    QDateTime created; // invalid = none
    int archivalPart = 2; // declares PDF/A of this part, level U; 0 = declares nothing
};

void writeMetadata(QPDF& file, const DocumentFacts& facts);

} // namespace wainscot::pdf
