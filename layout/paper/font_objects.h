// All faces of a file, and the PDF objects that embed them.
#pragma once

#include "layout/paper/font_face.h"
#include "layout/paper/qpdf.h"

#include <memory>
#include <string>
#include <vector>

namespace wainscot::pdf {

// The program text of a map from codes to what they stand for.
[[nodiscard]] std::string toUnicodeMap(const FontFace& face);

class FontObjects {
public:
    explicit FontObjects(QPDF& file);

    struct Entry {
        FontFace face;
        std::string name; // in page resources, "/F1"
        QPDFObjectHandle object; // filled in by embed()
    };
    // The same face at any size is one entry.
    [[nodiscard]] Entry& entry(const QRawFont& font);

    // Fills in every entry's object from what its glyphs have come to stand for. Throws a
    // std::runtime_error that names a face the subsetter refused.
    void embed();

    // A glyph was shown that is nothing to see, or the box for a letter no font has.
    [[nodiscard]] bool showsMissingGlyph() const;

private:
    QPDF& m_file;
    std::vector<std::pair<QByteArray, std::unique_ptr<Entry>>> m_entries; // by key of the face
};

} // namespace wainscot::pdf
