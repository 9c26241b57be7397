#include "layout/typeset/faces.h"

#include <QFontMetricsF>
#include <QPainterPath>

#include <gtest/gtest.h>

#include <array>

namespace {

using namespace wainscot;

// Read from the font files of Debian 12 with another reader of outlines (fontTools): height of H
// and x, mean character, advance of the opening mark in parts of H.
struct Row {
    const char* family;
    double cap, x, mean, mark;
};
constexpr std::array kMeasured{Row{"Andika", .713, .498, .460, .72}, // fonts-sil-andika 6.101
    Row{"Charis SIL", .671, .482, .444, .68}, // fonts-sil-charis 6.101
    Row{"Gentium Book Plus", .615, .454, .417, .74}, // fonts-sil-gentiumplus 6.101
    Row{"Vollkorn", .679, .460, .431, .57}, // fonts-vollkorn 4.105
    Row{"Lato", .717, .506, .436, .51}, // fonts-lato 2.0
    Row{"Noto Serif", .714, .536, .475, .63}, // fonts-noto-core 20201225
    Row{"Noto Sans", .714, .536, .469, .50}};

TEST(FaceMetrics, AreThoseOfTheOutlines)
{
    for (const Row& row : kMeasured) {
        const auto metrics = faceMetrics(QString::fromLatin1(row.family), Weight::Regular);
        ASSERT_TRUE(metrics) << row.family;
        EXPECT_NEAR(metrics->capHeight, row.cap, 0.001) << row.family;
        EXPECT_NEAR(metrics->xHeight, row.x, 0.001) << row.family;
        EXPECT_NEAR(metrics->meanCharacter, row.mean, 0.001) << row.family;
        EXPECT_NEAR(metrics->openingMark / metrics->capHeight, row.mark, 0.011) << row.family;
    }
}

TEST(FaceMetrics, DoNotTrustTheFontsOwnTable)
{
    FaceChoice andika;
    andika.family = QStringLiteral("Andika");
    andika.spare = QStringLiteral("Noto Sans");
    andika.emUnits = 1000;
    const double told = QFontMetricsF(layoutFont(andika)).capHeight() / 1000;
    const double drawn = faceMetrics(andika.family, Weight::Regular)->capHeight;
    EXPECT_GT(told / drawn, 1.01);
}

TEST(Faces, ComeAtTheSizeWhoseHIsTheCapHeight)
{
    for (const Row& row : kMeasured) {
        const QString family = QString::fromLatin1(row.family);
        const Mm cap(13.636);
        const int units = emUnits(cap, faceMetrics(family, Weight::Regular).value().capHeight);
        const Result<QRawFont> font = rawFont(family, Weight::Regular, units);
        ASSERT_TRUE(font);
        EXPECT_EQ(font->familyName(), family);
        EXPECT_DOUBLE_EQ(font->pixelSize(), units);
        const QPainterPath h =
            font->pathForGlyph(font->glyphIndexesForString(QStringLiteral("H")).front());
        EXPECT_NEAR(unitsToMm(-h.boundingRect().top()) / cap, 1, 0.005) << row.family;
    }
}

TEST(Faces, ReportAFamilyThatIsNotInstalled)
{
    const QString missing = QStringLiteral("No Such Face 7");
    EXPECT_FALSE(isInstalled(missing));
    EXPECT_FALSE(faceMetrics(missing, Weight::Regular));
    const Result<QRawFont> font = rawFont(missing, Weight::Regular, 100);
    ASSERT_FALSE(font);
    EXPECT_EQ(font.error().code, ErrorCode::NotFound);
    EXPECT_EQ(font.error().subject, missing);
}

TEST(Pairings, AreInstalledAndPairASerifWithASans)
{
    for (const Pairing& pairing : pairings()) {
        for (const QString& family : {pairing.voiceFamily, pairing.adultFamily}) {
            EXPECT_TRUE(rawFont(family, Weight::Regular, 100)) << qPrintable(family);
            const Result<QRawFont> bold = rawFont(family, Weight::Bold, 100);
            ASSERT_TRUE(bold) << qPrintable(family);
            EXPECT_EQ(bold->weight(), 700) << qPrintable(family);
        }
        EXPECT_NE(skeletonOf(pairing.voiceFamily), skeletonOf(pairing.adultFamily))
            << qPrintable(pairing.name);
        const auto ratio = [](const QString& family) {
            const FaceMetrics m = faceMetrics(family, Weight::Regular).value();
            return m.xHeight / m.capHeight;
        };
        EXPECT_NEAR(ratio(pairing.voiceFamily), ratio(pairing.adultFamily), 0.08)
            << qPrintable(pairing.name);
    }
}

TEST(Companions, SpeakWithTheVoiceOfTheirRole)
{
    const Pairing& pairing = pairingByName(QStringLiteral("Many Scripts"));
    FaceQuery query;
    query.capHeight = Mm(9.09);
    query.voice = Voice::Child;
    query.role = TypeRole::ChildsWords;
    const FaceChoice latin = chooseFace(pairing, query, QChar::Script_Latin);
    const FaceChoice arabic = chooseFace(pairing, query, QChar::Script_Arabic);
    EXPECT_EQ(latin.family, QStringLiteral("Andika"));
    EXPECT_TRUE(latin.ligaturesOff);
    EXPECT_EQ(arabic.family, QStringLiteral("Noto Sans Arabic"));
    EXPECT_FALSE(arabic.ligaturesOff);
    EXPECT_NEAR(double(arabic.emUnits) / latin.emUnits, 1.02, 0.002);
    const FaceChoice chinese = chooseFace(pairing, query, QChar::Script_Han);
    EXPECT_EQ(chinese.family, QStringLiteral("Noto Sans CJK SC"));
    EXPECT_EQ(chinese.emUnits, latin.emUnits);
    query.voice = Voice::Adult;
    query.role = TypeRole::Body;
    const int serifEm = chooseFace(pairing, query, QChar::Script_Latin).emUnits;
    const FaceChoice naskh = chooseFace(pairing, query, QChar::Script_Arabic);
    EXPECT_EQ(naskh.family, QStringLiteral("Noto Naskh Arabic"));
    EXPECT_NEAR(double(naskh.emUnits) / serifEm, 1.08, 0.002);
    EXPECT_EQ(chooseFace(pairing, query, QChar::Script_Devanagari).family,
        QStringLiteral("Noto Serif Devanagari"));
    EXPECT_EQ(chooseFace(pairing, query, QChar::Script_Hebrew).family,
        QStringLiteral("Noto Serif Hebrew"));
    query.language = QStringLiteral("ja");
    EXPECT_EQ(
        chooseFace(pairing, query, QChar::Script_Han).family, QStringLiteral("Noto Serif CJK JP"));
}

} // namespace
