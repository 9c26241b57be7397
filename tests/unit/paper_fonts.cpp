#include "layout/paper/cff_charset.h"
#include "layout/paper/font_face.h"
#include "layout/paper/text_words.h"
#include "tests/golden/paper_kit.h"

#include <gtest/gtest.h>

namespace wainscot::pdf {

using paper_kit::shaped;

namespace {

QRawFont fontOf(const char* family, const QString& letters = QStringLiteral("H"))
{
    return shaped(letters, QLatin1String(family), 160, {}).font;
}

} // namespace

TEST(CffCharset, TellsCidKeyedFontsFromOthers)
{
    const QRawFont named = fontOf("Nimbus Sans");
    ASSERT_EQ(named.familyName(), QStringLiteral("Nimbus Sans"));
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
    const QByteArray whole = fontOf("Nimbus Sans").fontTable("CFF ");
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
    for (const char* family : {"Andika", "Lato", "Nimbus Sans", "Noto Sans CJK SC"}) {
        const GlyphRun run = shaped(QStringLiteral("rain"), QLatin1String(family), 160, {});
        FontFace face(run.font);
        ASSERT_TRUE(face.isEmbeddable()) << family;
        (void)wordsOf(run, face);
        const std::string part = face.subset();
        EXPECT_GT(part.size(), 300U) << family;
        EXPECT_LT(part.size(), 60000U) << family;
    }
}

TEST(FontFace, KnowsWidthsAsTheLayoutDoes)
{
    for (const char* family : {"Andika", "Nimbus Sans", "Vollkorn"}) {
        QRawFont font = fontOf(family);
        font.setPixelSize(font.unitsPerEm());
        const FontFace face(font);
        for (const char32_t letter : std::u32string(U"AVilm.")) {
            const QList<quint32> glyph{face.glyphOf(letter)};
            const double qt =
                font.advancesForGlyphIndexes(glyph, QRawFont::UseDesignMetrics)[0].x();
            EXPECT_NEAR(face.advance(glyph[0]), qt * 1000 / font.unitsPerEm(), 1) << family;
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
    EXPECT_TRUE(words[0].plain);
    EXPECT_EQ(face.used().at(run.glyphs.back()).text, QStringLiteral("ff"));
}

TEST(WordsOf, TellsAWordBesideItsGlyphsWhereGlyphsShareLetters)
{
    const GlyphRun run =
        shaped(QStringLiteral("\u0915\u094D\u0937\u093F\u0924\u093F\u091C \u0918\u0930"),
            QStringLiteral("Noto Sans Devanagari"),
            320,
            {});
    FontFace face(run.font);
    const std::vector<Word> words = wordsOf(run, face);
    ASSERT_EQ(words.size(), 3U);
    EXPECT_FALSE(words[0].plain);
    EXPECT_EQ(words[0].text, QStringLiteral("\u0915\u094D\u0937\u093F\u0924\u093F\u091C"));
    EXPECT_TRUE(words[1].space);
    EXPECT_TRUE(words[2].plain);
}

TEST(WordsOf, ToldAGlyphASecondMeaningKeepsTheFirst)
{
    GlyphRun run = shaped(QStringLiteral("ab a"), QStringLiteral("Andika"), 320, {});
    run.clusters.back().text = QStringLiteral("\u0430"); // the Cyrillic letter that looks like a
    FontFace face(run.font);
    const std::vector<Word> words = wordsOf(run, face);
    ASSERT_EQ(words.size(), 3U);
    EXPECT_TRUE(words[0].plain);
    EXPECT_FALSE(words[2].plain);
    EXPECT_EQ(words[2].text, QStringLiteral("\u0430"));
    EXPECT_EQ(face.used().at(run.glyphs.front()).text, QStringLiteral("a"));
}

} // namespace wainscot::pdf
