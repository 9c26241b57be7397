#include "layout/typeset/text_block.h"

#include <gtest/gtest.h>

#include <array>

namespace {

using namespace wainscot;

TextSpan spanOf(const QString& text, Voice voice = Voice::Child)
{
    TextSpan span;
    span.text = text;
    span.face = {voice,
        Weight::Regular,
        voice == Voice::Child ? TypeRole::ChildsWords : TypeRole::Body,
        Mm(9.09),
        {}};
    return span;
}

TextBlock block(const QString& text,
    const QString& language = QStringLiteral("en"),
    const char* pairing = "Many Scripts")
{
    return TextBlock(pairingByName(QString::fromLatin1(pairing)), {spanOf(text)}, language);
}

std::vector<GlyphRun> drawn(const TextBlock& text, double columnMm)
{
    return text.draw(text.lines(Breaking::Sense, Mm(columnMm)), {Mm(0), false, Mm(0), Mm(20)}).runs;
}

QString textOf(const std::vector<GlyphRun>& runs)
{
    QString text;
    for (const GlyphRun& run : runs) {
        for (const Cluster& cluster : run.clusters)
            text += cluster.text;
        if (run.endsLine)
            text += QLatin1Char(' ');
    }
    return text;
}

struct Sample {
    const char* language;
    QString text;
};
const std::array kSamples{
    Sample{"en", QStringLiteral("It got smaller, office fluffy AVATAR “first” fi ti tt.")},
    Sample{"en", QStringLiteral("e\u0301cole a\u0308 \U0001F4A7 naïve")},
    Sample{"vi", QStringLiteral("Vũng nước đi đâu? Nó bốc hơi.")},
    Sample{"pl", QStringLiteral("Żółw wypił wodę i poszedł spać.")},
    Sample{"el", QStringLiteral("Πού πάει το νερό;")},
    Sample{"ru", QStringLiteral("Куда уходит вода?")},
    Sample{"ar", QStringLiteral("لا إله إلى الأرض، يعني البركة راحت.")},
    Sample{"hi", QStringLiteral("बच्चों ने क्षितिज देखा, प्रश्न पूछे")},
    Sample{"zh-Hans", QStringLiteral("我的湿手印从墙上走了，所以水坑也从地上走了。")},
    Sample{"he", QStringLiteral("היד הרטובה שלי הלכה מהקיר, אז 5 שלוליות.")},
    Sample{"th", QStringLiteral("น้ำไปไหนแล้วไม่รู้")},
    Sample{"ar", QStringLiteral("قال Mei إنها 5 أمتار و puddle هناك.")}};

TEST(GlyphRuns, SayLetterForLetterWhatWasTyped)
{
    for (const Sample& sample : kSamples) {
        for (const double column : {500.0, 80.0, 50.0}) {
            const TextBlock text = block(sample.text, QString::fromLatin1(sample.language));
            EXPECT_EQ(textOf(drawn(text, column)), sample.text) << qPrintable(sample.text);
        }
    }
}

TEST(GlyphRuns, ClustersCoverEveryGlyphOnce)
{
    for (const Sample& sample : kSamples) {
        for (const GlyphRun& run : drawn(block(sample.text), 80)) {
            ASSERT_EQ(run.glyphs.size(), run.positions.size());
            int next = 0;
            for (const Cluster& cluster : run.clusters) {
                EXPECT_EQ(cluster.firstGlyph, next);
                EXPECT_FALSE(cluster.text.isEmpty());
                next += cluster.glyphCount;
            }
            EXPECT_EQ(next, static_cast<int>(run.glyphs.size()));
            // No glyph is drawn twice in one place.
            for (std::size_t i = 0; i < run.glyphs.size(); ++i) {
                for (std::size_t j = i + 1; j < run.glyphs.size(); ++j) {
                    EXPECT_FALSE(
                        run.glyphs[i] == run.glyphs[j] && run.positions[i] == run.positions[j])
                        << qPrintable(sample.text);
                }
            }
        }
    }
}

// A new reader must find every letter.
TEST(GlyphRuns, HaveOneGlyphForEveryLatinLetter)
{
    const QString words = QStringLiteral("off fi ti fl ffi tt office fluffy waffle");
    for (const Pairing& pairing : pairings()) {
        for (const Voice voice : {Voice::Child, Voice::Adult}) {
            const TextBlock text(pairing, {spanOf(words, voice)}, QStringLiteral("en"));
            std::size_t glyphs = 0;
            for (const GlyphRun& run : drawn(text, 1000))
                glyphs += run.glyphs.size();
            EXPECT_EQ(glyphs, static_cast<std::size_t>(words.size())) << qPrintable(pairing.name);
        }
    }
}

TEST(GlyphRuns, KeepTheLigaturesArabicNeeds)
{
    const std::vector<GlyphRun> runs =
        drawn(block(QStringLiteral("لا"), QStringLiteral("ar")), 500);
    ASSERT_EQ(runs.size(), 1U);
    ASSERT_EQ(runs[0].clusters.size(), 1U);
    EXPECT_EQ(runs[0].clusters[0].text, QStringLiteral("لا"));
    EXPECT_TRUE(runs[0].rightToLeft);
}

TEST(GlyphRuns, JoinTheLettersOfASyllable)
{
    const std::vector<GlyphRun> runs =
        drawn(block(QStringLiteral("क्षि"), QStringLiteral("hi")), 500);
    ASSERT_EQ(runs.size(), 1U);
    ASSERT_EQ(runs[0].clusters.size(), 1U);
    EXPECT_EQ(runs[0].clusters[0].text, QStringLiteral("क्षि"));
    EXPECT_GE(runs[0].clusters[0].glyphCount, 2);
}

TEST(GlyphRuns, TellNeighbouringEqualLettersApart)
{
    const std::vector<GlyphRun> runs =
        drawn(block(QStringLiteral("ללל"), QStringLiteral("he")), 500);
    ASSERT_EQ(runs.size(), 1U);
    EXPECT_EQ(runs[0].clusters.size(), 3U);
}

TEST(GlyphRuns, ComeInTheFaceThatWasAskedFor)
{
    for (const Sample& sample : kSamples) {
        if (sample.text.contains(QStringLiteral("\U0001F4A7")))
            continue;
        const TextBlock text = block(sample.text, QString::fromLatin1(sample.language));
        const auto result = text.draw(text.lines(Breaking::Sense, Mm(500)), {});
        EXPECT_TRUE(result.gaps.empty()) << qPrintable(sample.text);
        for (const GlyphRun& run : result.runs) {
            EXPECT_DOUBLE_EQ(run.font.pixelSize(), run.sizeUnits);
            for (const quint32 glyph : run.glyphs)
                EXPECT_NE(glyph, 0U);
        }
    }
}

TEST(FontGaps, NameTheFaceThatIsMissing)
{
    Pairing pairing = pairings().front();
    pairing.voiceFamily = QStringLiteral("No Such Face 7");
    const TextBlock text(pairing, {spanOf(QStringLiteral("We put a line"))}, QStringLiteral("en"));
    const auto result = text.draw(text.lines(Breaking::Sense, Mm(500)), {});
    ASSERT_EQ(result.gaps.size(), 1U);
    EXPECT_EQ(result.gaps[0].wanted, QStringLiteral("No Such Face 7"));
    EXPECT_EQ(result.gaps[0].used, QStringLiteral("Noto Sans"));
    EXPECT_EQ(result.gaps[0].text, QStringLiteral("We put a line"));
}

TEST(FontGaps, NameTheLettersNoFaceOfThePairingHas)
{
    const TextBlock text = block(QStringLiteral("drop \U0001F4A7"));
    const auto result = text.draw(text.lines(Breaking::Sense, Mm(500)), {});
    ASSERT_EQ(result.gaps.size(), 1U);
    EXPECT_EQ(result.gaps[0].text, QStringLiteral("\U0001F4A7"));
    EXPECT_EQ(result.gaps[0].wanted, QStringLiteral("Andika"));
}

TEST(TextBlock, AlignsLinesFromRightToLeftAtTheirRightSide)
{
    const TextBlock text =
        block(QStringLiteral("يدي المبلولة راحت عن الحيط، يعني البركة"), QStringLiteral("ar"));
    const LineBreaks breaks = text.lines(Breaking::Sense, Mm(70));
    ASSERT_GE(breaks.ends.size(), 2U);
    const auto result = text.draw(breaks, {Mm(200), true, Mm(10), Mm(15)});
    std::size_t line = 0;
    for (const GlyphRun& run : result.runs) {
        EXPECT_NEAR((run.origin.x + text.widthOf(breaks, line)).value(), 200, 0.3);
        line += run.endsLine ? 1 : 0;
    }
    EXPECT_EQ(line + 1, breaks.ends.size());
}

TEST(TextBlock, DrawsLinesAsWideAsItSaid)
{
    const TextBlock text = block(QStringLiteral("My wet hand went off the wall. So the puddle"));
    const LineBreaks breaks = text.lines(Breaking::Sense, Mm(120));
    const auto runs = text.draw(breaks, {}).runs;
    ASSERT_EQ(runs.size(), breaks.ends.size());
    for (std::size_t i = 0; i < runs.size(); ++i) {
        const GlyphRun& run = runs[i];
        for (const QPointF& at : run.positions)
            EXPECT_NEAR(at.y(), 0, 1e-6); // on the baseline, whatever the face's ascent
        const auto advances = run.font.advancesForGlyphIndexes(
            QList<quint32>{run.glyphs.back()}, QRawFont::UseDesignMetrics);
        const Mm right = unitsToMm(run.positions.back().x() + advances.front().x());
        EXPECT_NEAR(right.value(), text.widthOf(breaks, i).value(), 0.05);
    }
}

TEST(TextBlock, MovesAClosingMarkTowardsItsWord)
{
    const Pairing& pairing = pairings().front();
    TextSpan mark = spanOf(QStringLiteral("”"));
    mark.colour = 0xffa8432b;
    TextSpan drawnIn = mark;
    drawnIn.drawnInEm = 0.05;
    const TextBlock apart(pairing, {spanOf(QStringLiteral("wall.")), mark}, {});
    const TextBlock close(pairing, {spanOf(QStringLiteral("wall.")), drawnIn}, {});
    const auto lastX = [](const TextBlock& text) {
        return drawn(text, 500).back().positions.back().x();
    };
    const double em = drawn(close, 500).back().sizeUnits;
    // Standing by itself it is not kerned, so only the order of the two is sure.
    EXPECT_EQ(drawn(close, 500).size(), 2U);
    EXPECT_LT(std::abs(lastX(apart) - lastX(close)), 0.3 * em);
    EXPECT_EQ(drawn(close, 500).back().colour, 0xffa8432bU);
}

} // namespace
