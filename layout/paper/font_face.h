// One face used on the pages: which codes its glyphs get, what they stand for, and the part of the
// font that is embedded.
#pragma once

#include <QPainterPath>
#include <QRawFont>
#include <QString>

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

struct hb_blob_t;
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
    TrueType, // code = glyph, or by a map that comes with the font
    CffByGlyph, // code = glyph
    CffByCid, // code = character id of the font's charset
    Drawn, // cannot be embedded: glyphs are drawn one by one, codes 1 to 255 as they come
};

class FontFace {
public:
    using Code = std::uint16_t;
    struct Shown {
        quint32 glyph = 0;
        QString text;
    };

    explicit FontFace(const QRawFont& font);
    FontFace(const FontFace&) = delete;
    FontFace& operator=(const FontFace&) = delete;
    ~FontFace();

    [[nodiscard]] Outlines outlines() const { return m_outlines; }
    [[nodiscard]] double advance(quint32 glyph) const; // thousandths of the em, whole
    [[nodiscard]] quint32 glyphOf(char32_t letter) const; // 0 = none
    [[nodiscard]] FaceMeasures measures() const;
    [[nodiscard]] std::string postScriptName() const; // letters, digits and hyphens
    // Of a glyph, in thousandths of the em, y upwards.
    [[nodiscard]] QPainterPath outline(quint32 glyph) const;

    // The code under which a glyph stands for a text, made when there is none yet. Nothing if the
    // glyph already stands for something else and the kind of font knows only one code for it.
    // Throws a std::runtime_error when the font has run out of codes.
    [[nodiscard]] std::optional<Code> codeFor(quint32 glyph, const QString& text);
    // The glyph's first code, whatever it stands for; made for `text` when there is none yet.
    [[nodiscard]] Code anyCode(quint32 glyph, const QString& text);
    [[nodiscard]] std::string spelled(Code code) const; // hexadecimal digits

    [[nodiscard]] const std::map<Code, Shown>& codes() const { return m_codes; }

    // The font program with the shown glyphs only: a TrueType font or a bare CFF table. Glyph
    // numbers stay as they are where codes are glyph numbers. Empty = the subsetter refused.
    [[nodiscard]] std::string subset() const;

private:
    static hb_blob_t* giveTable(hb_face_t* face, std::uint32_t tag, void* owner);
    [[nodiscard]] std::optional<Code> newCode(quint32 glyph, bool first);

    QRawFont m_font; // an em of 1000 pixels
    std::map<std::uint32_t, QByteArray> m_tables; // by tag, as asked for
    std::unique_ptr<hb_face_t, void (*)(hb_face_t*)> m_face;
    std::unique_ptr<hb_font_t, void (*)(hb_font_t*)> m_scaled; // one unit = one font unit
    Outlines m_outlines = Outlines::TrueType;
    std::vector<Code> m_cids;
    std::map<Code, Shown> m_codes;
    std::map<quint32, std::vector<Code>> m_codesOfGlyph;
    unsigned m_next = 1; // code for a further meaning
};

} // namespace wainscot::pdf
