// What the program writes on walls, in every language it has words for.
#include "core/base/in_words.h"
#include "core/base/wall_text.h"

#include <QLocale>
#include <QRegularExpression>

#include <gmock/gmock.h>

namespace wainscot {
namespace {

using ::testing::ElementsAre;

const QString en = QStringLiteral("en");
const QString es = QStringLiteral("es");
const QDate kMonday(2026, 11, 2);

QStringList placesIn(const QString& text)
{
    static const QRegularExpression place(QStringLiteral("%\\d"));
    QStringList places;
    for (auto at = place.globalMatch(text); at.hasNext();)
        places << at.next().captured();
    places.sort();
    return places;
}

std::vector<WallText> allTexts()
{
    std::vector<WallText> all;
    for (int at = 0; at <= int(WallText::NotYetHeard); ++at)
        all.push_back(WallText(at));
    return all;
}

TEST(WallTexts, SpeakFiveLanguages)
{
    EXPECT_THAT(wallLanguages(),
        ElementsAre(en, QStringLiteral("de"), es, QStringLiteral("fr"), QStringLiteral("pt")));
    EXPECT_TRUE(hasWallTexts(QStringLiteral("pt-BR")));
    EXPECT_FALSE(hasWallTexts(QStringLiteral("so")));
    EXPECT_FALSE(hasWallTexts({}));
}

TEST(WallTexts, AreAllThereWithTheSamePlacesForValues)
{
    for (const QString& language : wallLanguages()) {
        int asInEnglish = 0;
        for (const WallText text : allTexts()) {
            const QString said = wallText(text, language);
            EXPECT_FALSE(said.isEmpty());
            EXPECT_EQ(placesIn(said), placesIn(wallText(text, en)))
                << language.toStdString() << ": " << said.toStdString();
            asInEnglish += said == wallText(text, en) ? 1 : 0;
        }
        const int most = language == en ? asInEnglish : 12; // "Photo", "Notes", forms of days
        EXPECT_LE(asInEnglish, most) << language.toStdString();
    }
}

TEST(WallTexts, CountToEightInWords)
{
    for (const QString& language : wallLanguages())
        EXPECT_EQ(wallText(WallText::NumbersInWords, language).split(QLatin1Char(' ')).size(), 9);
}

TEST(WallTexts, AreEnglishWhereNobodyWroteThem)
{
    EXPECT_EQ(wallText(WallText::AChild, QStringLiteral("so")), QStringLiteral("a child"));
    EXPECT_EQ(dayInWords(kMonday, QStringLiteral("so")), QStringLiteral("Monday, 2 November"));
}

// Unicode CLDR, as Qt carries it: the long form of a date.
TEST(Days, StandInTheOrderOfTheirLanguage)
{
    for (const QString& language : wallLanguages()) {
        const QLocale locale =
            language == en ? QLocale(QLocale::English, QLocale::UnitedKingdom) : QLocale(language);
        QString known = locale.toString(kMonday, QLocale::LongFormat);
        known[0] = known.at(0).toUpper();
        EXPECT_EQ(dayOfRecord(kMonday, language), known);
    }
}

TEST(Days, BeginALineWithACapital)
{
    EXPECT_EQ(dayInWords(kMonday, es), QStringLiteral("Lunes, 2 de noviembre"));
    EXPECT_EQ(weekdayInWords(kMonday, es), QStringLiteral("lunes"));
    EXPECT_EQ(dateInWords(kMonday, es), QStringLiteral("2 de noviembre de 2026"));
}

TEST(Days, AreToldFromTheFirstToTheLast)
{
    const QDate before(2026, 10, 30);
    EXPECT_EQ(daysInWords(kMonday, kMonday, en), QStringLiteral("2 November"));
    EXPECT_EQ(daysInWords(kMonday, kMonday.addDays(3), en), QStringLiteral("2\u20135 November"));
    EXPECT_EQ(daysInWords(before, kMonday, en), QStringLiteral("30 October \u2013 2 November"));
    EXPECT_EQ(
        daysInWords(kMonday, kMonday.addDays(3), es), QStringLiteral("2\u20135 de noviembre"));
    EXPECT_EQ(daysInWords(kMonday, kMonday.addDays(3), QStringLiteral("de")),
        QStringLiteral("2.\u20135. November"));
    EXPECT_EQ(daysOfTerm(QDate(2026, 9, 1), QDate(2026, 12, 18), en),
        QStringLiteral("1 September to 18 December 2026"));
    EXPECT_EQ(daysOfTerm(QDate(2026, 9, 1), QDate(2027, 1, 8), es),
        QStringLiteral("Del 1 de septiembre de 2026 al 8 de enero de 2027"));
}

// Real Academia, Diccionario panhispanico de dudas, "y": e before the sound of i, not before a
// diphthong.
TEST(Lists, SayTheSpanishAnd)
{
    const auto listed = [](const char* last) {
        return listInWords({QStringLiteral("Mei"), QString::fromUtf8(last)}, es).toStdString();
    };
    EXPECT_EQ(listed("Kofi"), "Mei y Kofi");
    EXPECT_EQ(listed("In\u00e9s"), "Mei e In\u00e9s");
    EXPECT_EQ(listed("Hilda"), "Mei e Hilda");
    EXPECT_EQ(listed("hielo"), "Mei y hielo");
    EXPECT_EQ(listed("Iona"), "Mei y Iona");
    EXPECT_EQ(
        listInWords({QStringLiteral("Mei"), QStringLiteral("Ada"), QStringLiteral("Ines")}, en),
        QStringLiteral("Mei, Ada and Ines"));
    EXPECT_EQ(listInWords({}, en), QString());
}

} // namespace
} // namespace wainscot
