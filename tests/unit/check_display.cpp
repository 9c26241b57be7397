// Findings about a display as a whole, and facts read from a display list.
#include "layout/check/check.h"
#include "layout/typeset/faces.h"
#include "layout/typeset/typesetter.h"
#include "tests/support/check_panel.h"

#include <gmock/gmock.h>

namespace wainscot::check {
namespace {

struct Class {
    Book book;
    Display display;
    ChildId heard;
    ChildId silent;
    ChildId forbidden;
};

ChildId addChild(Book& book, const QString& name, bool mayBeQuoted)
{
    Child child;
    child.id = book.children.newId();
    child.name = name;
    child.permissions.set(Permission::Words, Audience::Building, mayBeQuoted);
    child.permissions.set(Permission::FirstName, Audience::Building, mayBeQuoted);
    book.children.put(child);
    return child.id;
}

QuoteId addQuote(Book& book, ExperienceId experience, ChildId child)
{
    Quote quote;
    quote.id = book.quotes.newId();
    quote.experience = experience;
    quote.child = child;
    quote.words = QStringLiteral("It got smaller but it didn’t spill anywhere.");
    book.quotes.put(quote);
    return quote.id;
}

Class makeClass()
{
    Class one;
    Experience experience;
    experience.id = one.book.experiences.newId();
    one.book.experiences.put(experience);
    one.heard = addChild(one.book, QStringLiteral("Mei"), true);
    one.silent = addChild(one.book, QStringLiteral("Kwame"), true);
    one.forbidden = addChild(one.book, QStringLiteral("Noor"), false);
    const QuoteId shown = addQuote(one.book, experience.id, one.heard);
    addQuote(one.book, experience.id, one.silent);
    addQuote(one.book, experience.id, one.forbidden);
    one.display.id = one.book.displays.newId();
    one.display.experience = experience.id;
    one.display.audience = Audience::Building;
    one.book.displays.put(one.display);
    Panel panel;
    panel.id = one.book.panels.newId();
    panel.display = one.display.id;
    one.book.panels.put(panel);
    Piece piece;
    piece.id = one.book.pieces.newId();
    piece.panel = panel.id;
    piece.quote = shown;
    piece.cell = panelStyle(one.display).grid.cell(0, 0, 4, 10);
    one.book.pieces.put(piece);
    return one;
}

std::vector<std::string> saidBy(const std::vector<Finding>& findings, const char* rule)
{
    std::vector<std::string> said;
    for (const Finding& finding : findings) {
        if (finding.rule == QLatin1String(rule))
            said.push_back(finding.says.toStdString());
    }
    return said;
}

TEST(CheckDisplay, NamesChildrenWhoWereHeardButDoNotSpeak)
{
    const Class one = makeClass();
    const auto findings = checkDisplay(one.book, one.display, {goodPanel()});
    EXPECT_THAT(
        saidBy(findings, "voices.child"), ::testing::ElementsAre(::testing::HasSubstr("Kwame")));
}

TEST(CheckDisplay, AsksForCreditsAndADay)
{
    const Class one = makeClass();
    PanelFacts bare = goodPanel();
    EXPECT_THAT(saidBy(checkDisplay(one.book, one.display, {bare}), "credits.missing"),
        ::testing::IsEmpty());
    EXPECT_THAT(
        saidBy(checkDisplay(one.book, one.display, {bare}), "credits.date"), ::testing::IsEmpty());
    std::erase_if(bare.pieces, [](const ClearedPiece& piece) {
        return piece.kind == PieceKind::Credits || piece.kind == PieceKind::Label;
    });
    EXPECT_THAT(saidBy(checkDisplay(one.book, one.display, {bare}), "credits.missing"),
        ::testing::SizeIs(1));
    EXPECT_THAT(
        saidBy(checkDisplay(one.book, one.display, {bare}), "credits.date"), ::testing::SizeIs(1));
}

PanelFacts withCaption(int number, Pieces piece, const QString& caption, std::int64_t picture)
{
    PanelFacts panel = goodPanel();
    panel.number = number;
    pieceOf(panel, piece).text = caption;
    pieceOf(panel, piece).picture->id = PictureId(picture);
    return panel;
}

TEST(CheckDisplay, FindsACaptionThatStandsUnderAnotherPictureToo)
{
    const Class one = makeClass();
    const auto repeated = [&](const std::vector<PanelFacts>& panels) {
        return saidBy(checkDisplay(one.book, one.display, panels), "caption.repeated").size();
    };
    // On one panel, whatever its case and spaces.
    EXPECT_EQ(repeated({withCaption(1, kPhoto, QStringLiteral(" the  EDGE."), 77)}), 1U);
    EXPECT_EQ(repeated({withCaption(1, kPhoto, QStringLiteral("Another edge."), 77)}), 0U);
    // On the next panel: its two captions, both of other pictures than on the first.
    const PanelFacts first = withCaption(1, kPhoto, QStringLiteral("The line of chalk."), 77);
    PanelFacts second = withCaption(2, kPhoto, QStringLiteral("The line of chalk."), 78);
    EXPECT_EQ(repeated({first, second}), 1U);
    const auto findings = checkDisplay(one.book, one.display, {first, second});
    const auto at = std::find_if(findings.begin(), findings.end(), [](const Finding& finding) {
        return finding.rule == QLatin1String("caption.repeated");
    });
    ASSERT_NE(at, findings.end());
    EXPECT_EQ(at->panel, 2);
    EXPECT_EQ(at->piece, kPhoto);
    EXPECT_EQ(at->measured, 2);
    EXPECT_EQ(at->limit, 1);
    // The same picture may say the same again.
    pieceOf(second, kPhoto).picture->id = PictureId(77);
    EXPECT_EQ(repeated({first, second}), 0U);
}

TEST(CheckDisplay, FindsAShorteningThatIsNotInTheWordsTakenDown)
{
    Class one = makeClass();
    Piece piece = one.book.pieces.rows().begin()->second;
    PanelFacts panel = goodPanel();
    pieceOf(panel, kQuote).id = piece.id;
    const auto said = [&](const QString& shown) {
        piece.shownWords = shown;
        one.book.pieces.put(piece);
        return saidBy(checkDisplay(one.book, one.display, {panel}), "quote.verbatim").size();
    };
    EXPECT_EQ(said(QString()), 0U);
    EXPECT_EQ(said(QString::fromUtf8("It got smaller …")), 0U);
    EXPECT_EQ(said(QString::fromUtf8("It [the puddle] got smaller …")), 0U);
    EXPECT_EQ(said(QString::fromUtf8("It became smaller …")), 1U);
    EXPECT_EQ(said(QString::fromUtf8("It got smaller")), 1U) << "without an ellipsis";
}

// What is drawn is what may be shown, letter for letter, in scripts of either direction.
TEST(CheckDisplay, ReadsTheDrawnWordsOfEveryScript)
{
    for (const char* words : {"It got smaller but it didn’t spill anywhere.",
             "إذا طلعت لفوق، مين بيرجّعها؟",
             "水坑也从地上走了，去哪里了？",
             "बच्चों ने क्षितिज देखा, फिर पानी गया"}) {
        Class one = makeClass();
        Quote quote = one.book.quotes.rows().begin()->second;
        quote.words = QString::fromUtf8(words);
        one.book.quotes.put(quote);
        const PermissionRules rules(one.book, one.display, QDate(2026, 11, 5));
        const ClearedPanel cleared = rules.clear(*panelsOf(one.book, one.display.id).front());
        const PanelStyle style = panelStyle(one.display);
        PanelFacts facts = factsOf(cleared, style, typeset(cleared, style));
        EXPECT_THAT(saidBy(checkPanel(facts), "quote.verbatim"), ::testing::IsEmpty()) << words;
        facts.lines.front().text.remove(1, 1);
        EXPECT_THAT(saidBy(checkPanel(facts), "quote.verbatim"), ::testing::SizeIs(1)) << words;
    }
}

// The facts come from the same display list that is drawn.
TEST(PanelFacts, ReadSizesAndWordsFromTheDisplayList)
{
    const Class one = makeClass();
    const PanelStyle style = panelStyle(one.display);
    if (!isInstalled(style.pairing.voiceFamily))
        GTEST_SKIP() << "the voice face is not installed";
    const PermissionRules rules(one.book, one.display, QDate(2026, 11, 5));
    const ClearedPanel cleared = rules.clear(*panelsOf(one.book, one.display.id).front());
    const PanelFacts facts = factsOf(cleared, style, typeset(cleared, style));
    QString words;
    int voiceLines = 0;
    int smallLines = 0;
    for (const TextLine& line : facts.lines) {
        if (line.use == Use::Voice) {
            words += line.text.trimmed() + u' ';
            ++voiceLines;
            EXPECT_NEAR(line.cap.value(), style.scale.voice().value(), 0.05);
            EXPECT_GT(line.smallLetters, 0.6 * line.cap);
            EXPECT_LT(line.smallLetters, 0.85 * line.cap);
            EXPECT_EQ(line.colour, style.palette.child);
            EXPECT_EQ(line.family, style.pairing.voiceFamily);
            EXPECT_EQ(line.joinedLetters, 0);
        } else {
            ++smallLines;
            EXPECT_NEAR(line.cap.value(), style.scale.caption().value(), 0.05);
        }
    }
    EXPECT_EQ(words.trimmed(), QStringLiteral("It got smaller but it didn’t spill anywhere."));
    EXPECT_GE(voiceLines, 2);
    EXPECT_EQ(smallLines, 1);
}

// Arabic letters have no H to measure; the name under them is small print all the same.
TEST(PanelFacts, TellWordsAndNameApartInAScriptWithoutCapitals)
{
    Class one = makeClass();
    Child child = *one.book.children.find(one.heard);
    child.name = child.shownAs = QString::fromUtf8("نور");
    one.book.children.put(child);
    Quote quote = one.book.quotes.rows().begin()->second;
    quote.words = QString::fromUtf8("إذا طلعت لفوق، مين بيرجّعها؟");
    quote.language = QStringLiteral("ar");
    one.book.quotes.put(quote);
    const PermissionRules rules(one.book, one.display, QDate(2026, 11, 5));
    const ClearedPanel cleared = rules.clear(*panelsOf(one.book, one.display.id).front());
    const PanelStyle style = panelStyle(one.display);
    const PanelFacts facts = factsOf(cleared, style, typeset(cleared, style));
    ASSERT_GE(facts.lines.size(), 2U);
    for (const TextLine& line : facts.lines) {
        const bool isName = line.text.contains(child.name);
        EXPECT_EQ(line.use, isName ? Use::Small : Use::Voice) << line.text.toStdString();
    }
    EXPECT_TRUE(facts.lines.back().text.contains(child.name));
}

TEST(PanelFacts, PutARefusedPieceAmongTheStops)
{
    Class one = makeClass();
    Piece piece = one.book.pieces.rows().begin()->second;
    piece.id = one.book.pieces.newId();
    for (const auto& [id, quote] : one.book.quotes.rows()) {
        if (quote.child == one.forbidden)
            piece.quote = id;
    }
    one.book.pieces.put(piece);
    const PermissionRules rules(one.book, one.display, QDate(2026, 11, 5));
    const ClearedPanel cleared = rules.clear(*panelsOf(one.book, one.display.id).front());
    const PanelStyle style = panelStyle(one.display);
    const auto findings = checkPanel(factsOf(cleared, style, typeset(cleared, style)));
    ASSERT_THAT(saidBy(findings, "permission.piece"), ::testing::SizeIs(1));
    EXPECT_THAT(saidBy(findings, "permission.piece").front(), ::testing::HasSubstr("Noor"));
}

} // namespace
} // namespace wainscot::check
