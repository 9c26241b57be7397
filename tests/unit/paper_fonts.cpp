#include "layout/paper/cff_charset.h"
#include "layout/paper/font_face.h"
#include "layout/paper/text_words.h"
#include "tests/golden/paper_kit.h"

#include <gtest/gtest.h>

namespace wainscot::pdf {

using paper_kit::plainRun;
using paper_kit::shaped;

namespace {

// A face by its file, where its family alone could mean a Type 1 font of the same name.
constexpr auto kNamedCff = "/usr/share/fonts/opentype/urw-base35/NimbusSans-Regular.otf";

QRawFont fontOf(const char* family, const QString& letters = QStringLiteral("H"))
{
    return shaped(letters, QLatin1String(family), 160, {}).font;
}

QRawFont namedCff()
{
    return QRawFont(QLatin1String(kNamedCff), 160);
}

} // namespace

TEST(CffCharset, TellsCidKeyedFontsFromOthers)
{
    const QRawFont named = namedCff();
    ASSERT_TRUE(named.isValid()) << kNamedCff;
    const auto plain = readCffCharset(named.fontTable("CFF "));
    ASSERT_TRUE(plain.has_value());
    EXPECT_FALSE(plain->cidKeyed);

    const QRawFont chinese = fontOf("Noto Sans CJK SC", QStringLiteral("\u6C34"));
    const auto keyed = readCffCharset(chinese.fontTable("CFF "));
    ASSERT_TRUE(keyed.has_value());
    EXPECT_TRUE(keyed->cidKeyed);
    EXPECT_GT(keyed->cidOfGlyph.size(), 20000U);
}

// Whatever the bytes: an answer or none, never a read past the end (run under the sanitizer).
TEST(CffCharset, RefusesTruncatedTables)
{
    const QByteArray whole = namedCff().fontTable("CFF ");
    for (qsizetype length = 0; length < 400; ++length) {
        const auto charset = readCffCharset(whole.left(length));
        if (length < 20) {
            EXPECT_FALSE(charset.has_value()) << length;
        }
    }
    EXPECT_FALSE(readCffCharset(QByteArray(64, '\xff')).has_value());
}

TEST(FontFace, EmbedsOnlyWhatIsShown)
{
    const std::pair<QRawFont, Outlines> fonts[]{{fontOf("Andika"), Outlines::TrueType},
        {namedCff(), Outlines::CffByGlyph},
        {fontOf("Noto Sans CJK SC"), Outlines::CffByCid}};
    for (const auto& [font, kind] : fonts) {
        const GlyphRun run = plainRun(font, QStringLiteral("rain"), {});
        FontFace face(run.font);
        EXPECT_EQ(face.outlines(), kind) << qPrintable(font.familyName());
        (void)wordsOf(run, face);
        const std::string part = face.subset();
        EXPECT_GT(part.size(), 300U) << qPrintable(font.familyName());
        EXPECT_LT(part.size(), 60000U) << qPrintable(font.familyName());
    }
}

TEST(FontFace, DrawsWhatCannotBeEmbedded)
{
    const QRawFont type1(
        QStringLiteral("/usr/share/fonts/type1/urw-base35/NimbusSans-Regular.t1"), 160);
    ASSERT_TRUE(type1.isValid());
    const GlyphRun run = plainRun(type1, QStringLiteral("HI"), {});
    FontFace face(type1);
    EXPECT_EQ(face.outlines(), Outlines::Drawn);
    (void)wordsOf(run, face);
    ASSERT_EQ(face.codes().size(), 2U);
    EXPECT_EQ(face.codes().at(1).text, QStringLiteral("H"));
    EXPECT_EQ(face.spelled(2), "02");
    const QRectF drawn = face.outline(run.glyphs[0]).boundingRect();
    EXPECT_NEAR(drawn.height(), 729, 5); // cap height of the face, in thousandths
    EXPECT_NEAR(drawn.top(), 0, 3); // y upwards: on the baseline
}

TEST(FontFace, KnowsWidthsAsTheLayoutDoes)
{
    for (QRawFont font : {fontOf("Andika"), namedCff(), fontOf("Vollkorn")}) {
        const FontFace face(font);
        font.setPixelSize(font.unitsPerEm());
        for (const char32_t letter : std::u32string(U"AVilm.")) {
            const QList<quint32> glyph{face.glyphOf(letter)};
            const double qt =
                font.advancesForGlyphIndexes(glyph, QRawFont::UseDesignMetrics)[0].x();
            EXPECT_NEAR(face.advance(glyph[0]), qt * 1000 / font.unitsPerEm(), 0.51)
                << qPrintable(font.familyName());
        }
    }
}

TEST(WordsOf, LetsALigatureStandForAllItsLetters)
{
    const GlyphRun run = shaped(QStringLiteral("off"), QStringLiteral("Lato"), 320, {});
    ASSERT_LT(run.glyphs.size(), 3U) << "the font draws no ligature: test another word";
    FontFace face(run.font);
    const std::vector<Word> words = wordsOf(run, face);
    ASSERT_EQ(words.size(), 1U);
    EXPECT_FALSE(words[0].told);
    EXPECT_EQ(face.codes().at(words[0].glyphs.back().code).text, QStringLiteral("ff"));
}

TEST(WordsOf, SpellsAWordInGlyphOrderWhereGlyphsShareLetters)
{
    const QString first = QStringLiteral("\u0915\u094D\u0937\u093F\u0924\u093F\u091C");
    const GlyphRun run = shaped(
        first + QStringLiteral(" \u0918\u0930"), QStringLiteral("Noto Sans Devanagari"), 320, {});
    FontFace face(run.font);
    const std::vector<Word> words = wordsOf(run, face);
    ASSERT_EQ(words.size(), 3U);
    EXPECT_TRUE(words[0].told);
    EXPECT_EQ(words[0].text, first);
    QString spelled;
    for (const CodedGlyph& glyph : words[0].glyphs) {
        const FontFace::Shown& shown = face.codes().at(glyph.code);
        EXPECT_EQ(shown.glyph, run.glyphs[glyph.index]);
        spelled += shown.text;
    }
    EXPECT_EQ(spelled, first) << qPrintable(spelled);
    EXPECT_TRUE(words[1].space);
    EXPECT_FALSE(words[2].told);
}

TEST(WordsOf, GivesAGlyphASecondCodeForASecondMeaning)
{
    GlyphRun run = shaped(QStringLiteral("ab a"), QStringLiteral("Andika"), 320, {});
    run.clusters.back().text = QStringLiteral("\u0430"); // the Cyrillic letter that looks like a
    FontFace face(run.font);
    const std::vector<Word> words = wordsOf(run, face);
    ASSERT_EQ(words.size(), 3U);
    EXPECT_NE(words[0].glyphs[0].code, words[2].glyphs[0].code);
    EXPECT_EQ(face.codes().at(words[2].glyphs[0].code).text, QStringLiteral("\u0430"));
    EXPECT_FALSE(words[2].told);
}

// A CFF font knows one code a glyph.
TEST(WordsOf, TellsTheWordWhereAGlyphCannotHaveASecondCode)
{
    GlyphRun run = plainRun(namedCff(), QStringLiteral("ab a"), {});
    run.clusters.back().text = QStringLiteral("\u0430");
    FontFace face(run.font);
    const std::vector<Word> words = wordsOf(run, face);
    ASSERT_EQ(words.size(), 3U);
    EXPECT_FALSE(words[0].told);
    EXPECT_TRUE(words[2].told);
    EXPECT_EQ(words[2].text, QStringLiteral("\u0430"));
}

TEST(WordsOf, KeepsLettersThatHaveNoGlyph)
{
    GlyphRun run = shaped(QStringLiteral("ab"), QStringLiteral("Andika"), 320, {});
    run.clusters.insert(run.clusters.begin() + 1, Cluster{1, 0, QStringLiteral("\u200D")});
    FontFace face(run.font);
    const std::vector<Word> words = wordsOf(run, face);
    ASSERT_EQ(words.size(), 1U);
    EXPECT_EQ(words[0].text, QStringLiteral("a\u200Db"));
}

} // namespace wainscot::pdf
