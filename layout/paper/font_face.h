// One face used on the pages: which codes its glyphs get, what they stand for, and the part of the
// font that is embedded.
#pragma once

#include <QRawFont>
#include <QString>

#include <cstdint>
#include <map>
#include <memory>
#include <string>
#include <vector>

struct hb_face_t;
struct hb_font_t;

namespace wainscot::pdf {

// Measures in thousandths of the em, as a font descriptor wants them.
struct FaceMeasures {
    double ascent = 0;
    double descent = 0; // negative
    double capHeight = 0;
    double italicAngle = 0; // degrees, negative = leaning right
    double left = 0; // box around all glyphs
    double bottom = 0;
    double right = 0;
    double top = 0;
};

// How the glyphs are stored, and so how a PDF finds one by its code.
enum class Outlines {
    TrueType, // code = glyph
    CffByGlyph, // code = glyph
    CffByCid, // code = character id of the font's charset
};

class FontFace {
public:
    explicit FontFace(const QRawFont& font);
    FontFace(const FontFace&) = delete;
    FontFace& operator=(const FontFace&) = delete;
    ~FontFace();

    // False: a variable or bitmap font, or one whose tables contradict themselves.
    [[nodiscard]] bool isEmbeddable() const { return m_embeddable; }
    [[nodiscard]] Outlines outlines() const { return m_outlines; }
    [[nodiscard]] std::uint16_t codeOf(quint32 glyph) const;
    [[nodiscard]] double advance(quint32 glyph) const; // thousandths of the em
    [[nodiscard]] quint32 glyphOf(char32_t letter) const; // 0 = none
    [[nodiscard]] FaceMeasures measures() const;
    [[nodiscard]] std::string postScriptName() const; // letters, digits and hyphens

    // Notes that a glyph is shown and stands for `text`. False: it already stands for something
    // else, so that this occurrence needs its text told another way.
    bool standsFor(quint32 glyph, const QString& text);
    // Notes a glyph whose text is told another way; `text` counts only until a better one comes.
    void uses(quint32 glyph, const QString& text);

    struct Meaning {
        QString text;
        bool firm = false;
    };
    [[nodiscard]] const std::map<quint32, Meaning>& used() const { return m_used; }

    // The font program with the used glyphs only: a TrueType font or a bare CFF table. Glyph
    // numbers stay as they are where codes are glyph numbers. Empty = the subsetter refused.
    [[nodiscard]] std::string subset() const;

private:
    QRawFont m_font;
    std::unique_ptr<hb_face_t, void (*)(hb_face_t*)> m_face;
    std::unique_ptr<hb_font_t, void (*)(hb_font_t*)> m_scaled; // one unit = one font unit
    Outlines m_outlines = Outlines::TrueType;
    std::vector<std::uint16_t> m_cids;
    std::map<quint32, Meaning> m_used;
    bool m_embeddable = true;
};

} // namespace wainscot::pdf
