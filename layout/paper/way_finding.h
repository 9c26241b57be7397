// How a reader finds the way through a long file: outlines, links, and the numbers of pages.
#pragma once

#include "core/base/geometry.h"
#include "layout/paper/qpdf.h"

#include <QString>

#include <string>
#include <utility>
#include <vector>

namespace wainscot::pdf {

struct OutlineEntry {
    int level = 0; // 0 or 1; an entry of level 1 belongs to the one of level 0 before it
    QString title;
    int page = 0; // index in the file
    Mm top; // from the page's upper edge
};

struct PageWay {
    int from = 0; // index of the page
    RectMm area;
    int to = 0;
};

void writeOutline(QPDF& file,
    const std::vector<OutlineEntry>& entries,
    const std::vector<QPDFObjectHandle>& pages);
void writeWays(
    QPDF& file, const std::vector<PageWay>& ways, const std::vector<QPDFObjectHandle>& pages);
// By first page: what a label dictionary says (ISO 32000-1, 12.4.2). REQUIRES: ascending
void writePageLabels(QPDF& file, const std::vector<std::pair<int, std::string>>& labels);

} // namespace wainscot::pdf
