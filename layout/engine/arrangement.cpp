#include "layout/engine/arrangement.h"

namespace wainscot::engine {

namespace {

// Width of one column with the gutter that follows it.
Mm pitch(const PageSpec& page)
{
    return (page.size.width - 2 * page.margin + page.gutter) / page.columns;
}

} // namespace

Mm PageSpec::width(int columnCount) const
{
    return columnCount * pitch(*this) - gutter;
}

Mm PageSpec::height(int rowCount) const
{
    return rowCount * rowUnit - gutter;
}

CostTerms& CostTerms::operator+=(const CostTerms& more)
{
    crop += more.crop;
    white += more.white;
    size += more.size;
    measure += more.measure;
    reading += more.reading;
    alignment += more.alignment;
    stability += more.stability;
    likeness += more.likeness;
    return *this;
}

RectMm PageSpec::cell(const GridRect& at) const
{
    return {margin + at.x * pitch(*this), margin + at.y * rowUnit, width(at.w), height(at.h)};
}

} // namespace wainscot::engine
