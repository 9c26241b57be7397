#include "layout/paper/original_pictures.h"

namespace wainscot {

OriginalPictures::OriginalPictures(std::function<QString(const ClearedPicture&)> pathOf)
    : m_pathOf(std::move(pathOf))
{
}

Result<BakedJpeg> OriginalPictures::bake(const ClearedPicture& picture, SizePx largest)
{
    return bakeJpeg({m_pathOf(picture),
                        picture.format,
                        picture.orientation,
                        picture.size,
                        picture.visible,
                        picture.treatment},
        largest);
}

} // namespace wainscot
