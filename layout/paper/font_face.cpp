#include "layout/paper/font_face.h"

#include "layout/paper/cff_charset.h"
#include "layout/paper/pdf_syntax.h"

#include <QTransform>

#include <algorithm>
#include <array>
#include <cmath>
#include <hb-ot.h>
#include <hb-subset.h>
#include <stdexcept>

namespace wainscot::pdf {

namespace {

template <class T, void (*destroy)(T*)> struct Destroy {
    void operator()(T* object) const { destroy(object); }
};
using Blob = std::unique_ptr<hb_blob_t, Destroy<hb_blob_t, hb_blob_destroy>>;
using Face = std::unique_ptr<hb_face_t, Destroy<hb_face_t, hb_face_destroy>>;
using Input =
    std::unique_ptr<hb_subset_input_t, Destroy<hb_subset_input_t, hb_subset_input_destroy>>;

std::string bytesOf(hb_blob_t* blob)
{
    unsigned length = 0;
    const char* data = hb_blob_get_data(blob, &length);
    return data == nullptr ? std::string() : std::string(data, length);
}

bool has(const QRawFont& font, const char* table)
{
    return !font.fontTable(table).isEmpty();
}

// A PDF shows glyphs by number and brings its own text, so all that maps letters, positions or
// names can stay out.
constexpr std::array kDropped{"GSUB",
    "GPOS",
    "GDEF",
    "name",
    "post",
    "cmap",
    "OS/2",
    "VORG",
    "vhea",
    "vmtx",
    "DSIG",
    "gasp",
    "hdmx",
    "VDMX",
    "LTSH",
    "kern",
    "STAT",
    "MATH",
    "BASE"};

} // namespace

// One table of the font. The subsetter reads tables after it has given them back, so they are kept
// as long as the face.
hb_blob_t* FontFace::giveTable(hb_face_t* /*face*/, std::uint32_t tag, void* owner)
{
    std::array<char, 5> name{};
    hb_tag_to_string(tag, name.data());
    auto* self = static_cast<FontFace*>(owner);
    const auto [at, isNew] = self->m_tables.try_emplace(tag);
    if (isNew)
        at->second = self->m_font.fontTable(name.data());
    return hb_blob_create(at->second.constData(),
        static_cast<unsigned>(at->second.size()),
        HB_MEMORY_MODE_READONLY,
        nullptr,
        nullptr);
}

FontFace::FontFace(const QRawFont& font)
    : m_font(font)
    , m_face(hb_face_create_for_tables(giveTable, this, nullptr), hb_face_destroy)
    , m_scaled(hb_font_create(m_face.get()), hb_font_destroy)
{
    m_font.setPixelSize(1000);
    const auto em = static_cast<int>(hb_face_get_upem(m_face.get()));
    hb_font_set_scale(m_scaled.get(), em, em);
    m_next = std::max(1U, hb_face_get_glyph_count(m_face.get()));
    std::optional<CffCharset> charset;
    if (has(m_font, "CFF "))
        charset = readCffCharset(m_font.fontTable("CFF "));
    // An instance of a variable font cannot be told from its tables: embedded, it could look
    // different from what was laid out. Type 1 and bitmap fonts have no tables at all.
    if (has(m_font, "fvar") || !(charset || has(m_font, "glyf"))) {
        m_outlines = Outlines::Drawn;
        m_next = 1;
    } else if (charset) {
        m_outlines = charset->cidKeyed ? Outlines::CffByCid : Outlines::CffByGlyph;
        m_cids = charset->cidOfGlyph;
    }
}

FontFace::~FontFace() = default;

double FontFace::advance(quint32 glyph) const
{
    // Whole thousandths: some readers take no fractions, and the pen must be where they think it
    // is.
    if (m_outlines == Outlines::Drawn) {
        const QList<quint32> one{glyph};
        return std::round(
            m_font.advancesForGlyphIndexes(one, QRawFont::UseDesignMetrics).value(0).x());
    }
    return std::round(hb_font_get_glyph_h_advance(m_scaled.get(), glyph) * 1000.0
        / hb_face_get_upem(m_face.get()));
}

quint32 FontFace::glyphOf(char32_t letter) const
{
    if (m_outlines == Outlines::Drawn)
        return m_font.glyphIndexesForString(QString::fromUcs4(&letter, 1)).value(0);
    hb_codepoint_t glyph = 0;
    return hb_font_get_nominal_glyph(m_scaled.get(), letter, &glyph) != 0 ? glyph : 0;
}

QPainterPath FontFace::outline(quint32 glyph) const
{
    return QTransform::fromScale(1, -1).map(m_font.pathForGlyph(glyph));
}

std::optional<FontFace::Code> FontFace::newCode(quint32 glyph, bool first)
{
    if (m_outlines == Outlines::CffByCid || m_outlines == Outlines::CffByGlyph) {
        if (!first)
            return std::nullopt;
        if (m_outlines == Outlines::CffByGlyph)
            return static_cast<Code>(glyph);
        return glyph < m_cids.size() ? m_cids[glyph] : Code(0);
    }
    if (first && m_outlines == Outlines::TrueType)
        return static_cast<Code>(glyph);
    const unsigned last = m_outlines == Outlines::Drawn ? 0xff : 0xffff;
    if (m_next > last)
        throw std::runtime_error("too many different letters in the font " + postScriptName());
    return static_cast<Code>(m_next++);
}

std::optional<FontFace::Code> FontFace::codeFor(quint32 glyph, const QString& text)
{
    std::vector<Code>& known = m_codesOfGlyph[glyph];
    for (const Code code : known) {
        if (m_codes[code].text == text)
            return code;
    }
    const std::optional<Code> code = newCode(glyph, known.empty());
    if (code) {
        known.push_back(*code);
        m_codes[*code] = {glyph, text};
    }
    return code;
}

FontFace::Code FontFace::anyCode(quint32 glyph, const QString& text)
{
    const std::vector<Code>& known = m_codesOfGlyph[glyph];
    return known.empty() ? codeFor(glyph, text).value_or(0) : known.front();
}

std::string FontFace::spelled(Code code) const
{
    const std::string four = hexCode(code);
    return m_outlines == Outlines::Drawn ? four.substr(2) : four;
}

FaceMeasures FontFace::measures() const
{
    const double scale = 1000.0 / hb_face_get_upem(m_face.get());
    const auto metric = [&](hb_ot_metrics_tag_t tag) {
        hb_position_t value = 0;
        hb_ot_metrics_get_position_with_fallback(m_scaled.get(), tag, &value);
        return value * scale;
    };
    FaceMeasures measures;
    measures.ascent = metric(HB_OT_METRICS_TAG_HORIZONTAL_ASCENDER);
    measures.descent = metric(HB_OT_METRICS_TAG_HORIZONTAL_DESCENDER);
    measures.capHeight = metric(HB_OT_METRICS_TAG_CAP_HEIGHT);
    const QByteArray head = m_font.fontTable("head");
    const QByteArray post = m_font.fontTable("post");
    const auto word = [](const QByteArray& table, qsizetype at) {
        if (at + 1 >= table.size())
            return 0;
        return static_cast<int>(static_cast<std::int16_t>(
            static_cast<std::uint8_t>(table[at]) << 8 | static_cast<std::uint8_t>(table[at + 1])));
    };
    measures.left = word(head, 36) * scale; // xMin, yMin, xMax, yMax
    measures.bottom = word(head, 38) * scale;
    measures.right = word(head, 40) * scale;
    measures.top = word(head, 42) * scale;
    measures.italicAngle = word(post, 4); // whole degrees of a 16.16 number
    return measures;
}

std::string FontFace::postScriptName() const
{
    std::array<char, 64> name{};
    unsigned length = name.size();
    hb_ot_name_get_utf8(
        m_face.get(), HB_OT_NAME_ID_POSTSCRIPT_NAME, HB_LANGUAGE_INVALID, &length, name.data());
    std::string clean;
    for (const char c : std::string(name.data())) {
        const bool plain =
            (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '-';
        if (plain)
            clean += c;
    }
    return clean.empty() ? "Face" : clean;
}

std::string FontFace::subset() const
{
    const Input input(hb_subset_input_create_or_fail());
    if (input == nullptr)
        return {};
    hb_set_t* glyphs = hb_subset_input_glyph_set(input.get());
    hb_set_add(glyphs, 0);
    for (const auto& [code, shown] : m_codes)
        hb_set_add(glyphs, shown.glyph);
    hb_set_t* dropped = hb_subset_input_set(input.get(), HB_SUBSET_SETS_DROP_TABLE_TAG);
    for (const char* table : kDropped)
        hb_set_add(dropped, hb_tag_from_string(table, 4));
    unsigned flags = HB_SUBSET_FLAGS_NO_HINTING | HB_SUBSET_FLAGS_NOTDEF_OUTLINE;
    if (m_outlines != Outlines::CffByCid)
        flags |= HB_SUBSET_FLAGS_RETAIN_GIDS;
    hb_subset_input_set_flags(input.get(), flags);
    const Face part(hb_subset_or_fail(m_face.get(), input.get()));
    if (part == nullptr)
        return {};
    const Blob blob(m_outlines == Outlines::TrueType
            ? hb_face_reference_blob(part.get())
            : hb_face_reference_table(part.get(), HB_TAG('C', 'F', 'F', ' ')));
    return bytesOf(blob.get());
}

} // namespace wainscot::pdf
