// Which pictures a file needs: each crop of an original once, as large as its largest place asks.
#pragma once

#include "core/base/geometry.h"
#include "layout/typeset/display_list.h"

#include <vector>

namespace wainscot::pdf {

struct PlannedPicture {
    ClearedPicture picture;
    SizePx largest; // pixels at the wanted resolution in its largest place
};

class PicturePlan {
public:
    // A picture placed twice is stored once, in the pixels of its larger place: one more copy would
    // only add bytes. Its smaller place then has more than the wanted resolution.
    void add(const DisplayList& list, DotsPerInch resolution);

    [[nodiscard]] const std::vector<PlannedPicture>& pictures() const { return m_pictures; }
    // REQUIRES: the picture was in a list that was added
    [[nodiscard]] int indexOf(const PlacedPicture& placed) const;

private:
    [[nodiscard]] int find(const ClearedPicture& picture) const; // -1 = not there
    std::vector<PlannedPicture> m_pictures; // in the order of their first place
};

} // namespace wainscot::pdf
