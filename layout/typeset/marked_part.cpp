#include "layout/typeset/marked_part.h"

namespace wainscot {

RectMm markedPart(const ClearedPicture& picture, const RectMm& place)
{
    const RectFraction& stay = *picture.mustStay;
    const RectFraction& seen = picture.visible;
    const RectMm part{place.x + place.width * ((stay.x - seen.x) / seen.width),
        place.y + place.height * ((stay.y - seen.y) / seen.height),
        place.width * (stay.width / seen.width),
        place.height * (stay.height / seen.height)};
    return intersection(part, place);
}

} // namespace wainscot
