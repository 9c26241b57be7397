// The pictures of a book as a source for paper.
#pragma once

#include "layout/paper/pdf_writer.h"

#include <functional>

namespace wainscot {

class OriginalPictures final : public PictureSource {
public:
    // `pathOf` finds the untouched original of a picture. REQUIRES: thread-safe
    explicit OriginalPictures(std::function<QString(const ClearedPicture&)> pathOf);
    Result<BakedJpeg> bake(const ClearedPicture& picture, SizePx largest) override;

private:
    std::function<QString(const ClearedPicture&)> m_pathOf;
};

} // namespace wainscot
