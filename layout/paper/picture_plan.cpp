#include "layout/paper/picture_plan.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace wainscot::pdf {

int PicturePlan::find(const ClearedPicture& picture) const
{
    const auto found =
        std::find_if(m_pictures.begin(), m_pictures.end(), [&](const PlannedPicture& known) {
            return known.picture.sha256 == picture.sha256
                && known.picture.visible == picture.visible
                && known.picture.orientation == picture.orientation
                && known.picture.treatment == picture.treatment;
        });
    return found == m_pictures.end() ? -1 : static_cast<int>(found - m_pictures.begin());
}

void PicturePlan::add(const DisplayList& list, DotsPerInch resolution)
{
    const auto pixels = [&](Mm length) {
        // Rounded down, so that the resolution is never above the wanted one; the small addition
        // keeps a place of exactly n inches at n times the resolution.
        return std::max(1, static_cast<int>(std::floor(toPx(length, resolution).value() + 1e-6)));
    };
    for (const Mark& mark : list.marks) {
        const auto* placed = std::get_if<PlacedPicture>(&mark.shape);
        if (placed == nullptr)
            continue;
        const SizePx size{pixels(placed->place.width), pixels(placed->place.height)};
        const int known = find(placed->picture);
        if (known < 0) {
            m_pictures.push_back({placed->picture, size});
            continue;
        }
        SizePx& largest = m_pictures[static_cast<std::size_t>(known)].largest;
        largest.width = std::max(largest.width, size.width);
        largest.height = std::max(largest.height, size.height);
    }
}

int PicturePlan::indexOf(const PlacedPicture& placed) const
{
    const int index = find(placed.picture);
    if (index < 0)
        throw std::logic_error("a picture is drawn that was not planned");
    return index;
}

} // namespace wainscot::pdf
