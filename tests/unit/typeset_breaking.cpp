#include "layout/typeset/piece_text.h"
#include "layout/typeset/writing.h"

#include <gmock/gmock.h>

namespace {

using namespace wainscot;
using ::testing::ElementsAre;

// Words of a made-up width: ten units a letter.
std::vector<BreakUnit> words(const QString& text)
{
    std::vector<BreakUnit> units;
    for (const Unit& place : lineUnits(text)) {
        BreakUnit unit;
        unit.text = text.mid(place.start, place.length);
        unit.width = 10 * place.length;
        unit.space = 10 * place.spaces;
        unit.characters = place.length;
        unit.spaces = place.spaces;
        unit.insidePhrase = place.insidePhrase;
        unit.noBreak = place.noBreak;
        units.push_back(unit);
    }
    return units;
}

std::vector<std::string> split(const std::vector<BreakUnit>& units, const LineBreaks& breaks)
{
    std::vector<std::string> lines;
    int first = 0;
    for (const int end : breaks.ends) {
        QString line;
        for (int i = first; i < end; ++i) {
            const BreakUnit& unit = units[static_cast<std::size_t>(i)];
            line += unit.text;
            if (i + 1 < end)
                line += QString(unit.spaces, QLatin1Char(' '));
        }
        lines.push_back(line.toStdString());
        first = end;
    }
    return lines;
}

// Lines of a child's words in the voice face of a pairing, with the closing mark on the last.
std::vector<std::string> linesOf(
    const QString& text, const QString& pairing, int voiceStep, double widthMm)
{
    Display display;
    display.pairing = pairing;
    const PanelStyle style = panelStyle(display, voiceStep);
    ClearedPiece piece;
    piece.text = text;
    const PieceText set = pieceText(piece, style, QStringLiteral("en"), 5);
    const PieceLines lines = pieceLines(set, Mm(widthMm));
    EXPECT_TRUE(lines.fits);
    return split(set.parts.front().block.units(), lines.parts.front());
}

// Lines that were looked at on drawn panels and found to sound as they were said.
TEST(BreakBySense, KeepsTheLinesThatWereChecked)
{
    const QString schoolroom = QStringLiteral("Schoolroom");
    EXPECT_THAT(
        linesOf(
            QStringLiteral("We put a line so it can’t go without us seeing."), schoolroom, 2, 183),
        ElementsAre("We put a line", "so it can’t go", "without us seeing.”"));
    EXPECT_THAT(
        linesOf(QStringLiteral("My wet hand went off the wall. So the puddle went off the ground."),
            schoolroom,
            2,
            183),
        ElementsAre("My wet hand", "went off the wall.", "So the puddle went", "off the ground.”"));
    EXPECT_THAT(linesOf(QStringLiteral("Into the ground. The ground was thirsty."),
                    QStringLiteral("Reading Room"),
                    3,
                    198),
        ElementsAre("Into the ground.", "The ground", "was thirsty.”"));
    EXPECT_THAT(
        linesOf(QStringLiteral("It is up there and it is coming back, but not the same one."),
            QStringLiteral("Reading Room"),
            3,
            258),
        ElementsAre("It is up there and", "it is coming back,", "but not the same one.”"));
    EXPECT_THAT(
        linesOf(QStringLiteral("It got smaller but it didn’t spill anywhere."), schoolroom, 2, 183),
        ElementsAre("It got smaller", "but it didn’t", "spill anywhere.”"));
}

TEST(BreakBySense, PrefersTheEndOfASentenceToAnEvenLine)
{
    // By width alone "It was dry. We / looked again" would be the more even pair.
    const auto units = words(QStringLiteral("It was dry. We looked again"));
    EXPECT_THAT(split(units, breakBySense(units, {150, 0}, QStringLiteral("en"))),
        ElementsAre("It was dry.", "We looked again"));
}

TEST(BreakBySense, LeavesNoShortWordAlone)
{
    const auto units = words(QStringLiteral("The worm is drinking all of the water now"));
    const auto lines = split(units, breakBySense(units, {400, 0}, QStringLiteral("en")));
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_GT(lines.back().size(), 8U);
}

TEST(BreakBySense, SaysWhenAWordIsTooWide)
{
    const auto units = words(QStringLiteral("a caterpillar"));
    const LineBreaks breaks = breakBySense(units, {60, 0}, QStringLiteral("en"));
    EXPECT_FALSE(breaks.fits);
    EXPECT_THAT(split(units, breaks), ElementsAre("a", "caterpillar"));
}

TEST(BreakBySense, NeverHasMoreCharactersThanAllowed)
{
    const auto units = words(QStringLiteral("ill till kill ill till kill ill till kill ill till"));
    const LineBreaks breaks = breakBySense(units, {10000, 20}, QStringLiteral("en"));
    int first = 0;
    for (const int end : breaks.ends) {
        EXPECT_LE(lineCharacters(units, first, end), 20);
        first = end;
    }
    EXPECT_GE(breaks.ends.size(), 3U);
}

TEST(BreakParagraph, FillsTheLastLineToAThird)
{
    const auto units = words(
        QStringLiteral("Last week the children kept a puddle and they chalked round it every day "
                       "until one morning it had gone"));
    const LineBreaks breaks = breakParagraph(units, {300, 0});
    const int before = breaks.ends[breaks.ends.size() - 2];
    EXPECT_GE(lineWidth(units, before, breaks.ends.back()), 100);
    // Breaking each line as full as it goes would have left a stub, or this shows nothing.
    int lines = 1;
    double width = 0;
    for (const BreakUnit& unit : units) {
        if (width > 0 && width + unit.width > 300) {
            ++lines;
            width = 0;
        }
        width += unit.width + unit.space;
    }
    EXPECT_EQ(static_cast<int>(breaks.ends.size()), lines);
}

TEST(BreakParagraph, DoesNotBeginASentenceAtTheEndOfALine)
{
    const auto units =
        words(QStringLiteral("A wet hand, once a minute. The first is nearly gone."));
    EXPECT_THAT(split(units, breakParagraph(units, {310, 0})),
        ElementsAre("A wet hand, once a minute.", "The first is nearly gone."));
}

TEST(BreakParagraph, IsOneLineWhereItFits)
{
    const auto units = words(QStringLiteral("No stamping."));
    EXPECT_THAT(breakParagraph(units, {120, 0}).ends, ElementsAre(2));
    EXPECT_TRUE(breakParagraph({}, {120, 0}).ends.empty());
    EXPECT_TRUE(breakBySense({}, {120, 0}, {}).ends.empty());
}

TEST(LineUnits, KeepNoBreakSpacesAndHyphens)
{
    const QString text = QStringLiteral("5\u00A0jars of well-water «\u202Foui\u202F»");
    std::vector<std::string> units;
    for (const Unit& unit : lineUnits(text))
        units.push_back(text.mid(unit.start, unit.length).toStdString());
    EXPECT_THAT(units, ElementsAre("5\u00A0jars", "of", "well-water", "«\u202Foui\u202F»"));
}

TEST(LineUnits, PartChineseOnlyWhereLinesMayEnd)
{
    const QString text = QStringLiteral("水坑走了，没有了。");
    const std::vector<Unit> units = lineUnits(text);
    QString together;
    for (const Unit& unit : units) {
        const QString part = text.mid(unit.start, unit.length);
        EXPECT_FALSE(
            part.startsWith(QStringLiteral("，")) || part.startsWith(QStringLiteral("。")));
        together += part;
    }
    EXPECT_EQ(together, text);
    EXPECT_TRUE(units.front().noBreak); // not after the first character of a phrase
}

TEST(Units, KeepAnInsertionsShortFirstWordWithTheNext)
{
    const auto units = lineUnits(QStringLiteral("Then [a child] and [our tank] [alguien de]"));
    QStringList together;
    for (const Unit& one : units) {
        if (one.noBreak)
            together << QStringLiteral("Then [a child] and [our tank] [alguien de]")
                            .mid(one.start, one.length);
    }
    EXPECT_EQ(together, (QStringList{QStringLiteral("[a"), QStringLiteral("[our")}));
}

TEST(BreakBySense, BreaksChineseAfterItsPoints)
{
    const auto units = words(QStringLiteral("我的湿手印从墙上走了，所以水坑也从地上走了。"));
    EXPECT_THAT(split(units, breakBySense(units, {130, 0}, QStringLiteral("zh-Hans"))),
        ElementsAre("我的湿手印从墙上走了，", "所以水坑也从地上走了。"));
}

TEST(Writing, RunsTheWayOfItsLetters)
{
    EXPECT_EQ(directionOf(QStringLiteral("يدي"), {}), Direction::RightToLeft);
    EXPECT_EQ(directionOf(QStringLiteral("5. היד"), {}), Direction::RightToLeft);
    EXPECT_EQ(directionOf(QStringLiteral("12"), QStringLiteral("ar")), Direction::RightToLeft);
    EXPECT_EQ(directionOf(QStringLiteral("Mei"), QStringLiteral("ar")), Direction::LeftToRight);
}

// The usual marks of printed books (all but English from memory).
TEST(Writing, QuotesInTheMarksOfTheLanguage)
{
    EXPECT_EQ(quoteMarks(QStringLiteral("en-GB")).opening, QStringLiteral("“"));
    EXPECT_EQ(quoteMarks(QStringLiteral("de")).opening, QStringLiteral("„"));
    EXPECT_EQ(quoteMarks(QStringLiteral("de")).closing, QStringLiteral("“"));
    EXPECT_EQ(quoteMarks(QStringLiteral("es")).opening, QStringLiteral("«"));
    EXPECT_EQ(quoteMarks(QStringLiteral("pl")).closing, QStringLiteral("”"));
    EXPECT_EQ(quoteMarks(QStringLiteral("xx")).opening, QStringLiteral("“"));
    EXPECT_EQ(quoteMarks(QStringLiteral("fr")).closing, QStringLiteral("\u202F»"));
    EXPECT_EQ(quoteMarks(QStringLiteral("ar")).opening, QStringLiteral("«"));
    EXPECT_EQ(quoteMarks(QStringLiteral("he")).opening, QStringLiteral("”"));
}

TEST(Writing, FindsAChildsWordsInAnAdultsSentence)
{
    const QString text = QStringLiteral("It turned “it is smaller” into something. “Open");
    const auto ranges = quotedWords(text);
    ASSERT_EQ(ranges.size(), 1U);
    EXPECT_EQ(text.mid(ranges[0].start, ranges[0].length), QStringLiteral("“it is smaller”"));
}

} // namespace
