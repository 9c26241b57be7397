// Every rule of the check: the good panel passes it, and a panel with one thing spoiled does not.
#include "layout/check/check.h"
#include "layout/check/limits.h"
#include "tests/support/check_panel.h"

#include <gmock/gmock.h>

#include <cmath>
#include <functional>
#include <set>

namespace wainscot::check {
namespace {

std::vector<std::string> rulesIn(const std::vector<Finding>& findings)
{
    std::vector<std::string> rules;
    for (const Finding& finding : findings)
        rules.push_back(finding.rule.toStdString());
    return rules;
}

struct Spoiled {
    const char* rule;
    std::function<void(PanelFacts&)> spoil;
};

void shrink(PanelFacts& panel, Pieces piece, double factor)
{
    for (TextLine& line : panel.lines) {
        if (line.piece == PieceId(piece))
            line.cap *= factor;
    }
}

QString words(int count, const QString& end = {})
{
    QStringList list;
    for (int i = 0; i < count; ++i)
        list.append(QStringLiteral("word"));
    return list.join(QLatin1Char(' ')) + end;
}

const std::vector<Spoiled>& spoiledPanels()
{
    static const std::vector<Spoiled> all{
        {"type.title", [](PanelFacts& p) { shrink(p, kTitle, 0.5); }},
        {"type.voice", [](PanelFacts& p) { shrink(p, kQuote, 0.5); }},
        {"type.body", [](PanelFacts& p) { shrink(p, kContext, 0.8); }},
        {"type.caption", [](PanelFacts& p) { shrink(p, kCredits, 0.8); }},
        {"type.x_height",
            [](PanelFacts& p) {
                lineOf(p, kCredits).smallLetters = 0.5 * lineOf(p, kCredits).cap;
            }},
        {"type.scale", [](PanelFacts& p) { shrink(p, kContext, 1.01); }},
        {"type.steps", [](PanelFacts& p) { lineOf(p, kLabel).cap = p.style.scale.cap(3); }},
        {"type.loud", [](PanelFacts& p) { shrink(p, kContext, 1.5625); }},
        {"type.faces",
            [](PanelFacts& p) { lineOf(p, kQuote).family = p.style.pairing.adultFamily; }},
        // The edge of 4.5 on white lies between #767676 and #777777 (WCAG formula).
        {"contrast.text", [](PanelFacts& p) { lineOf(p, kCredits).colour = 0xff777777; }},
        {"contrast.running", [](PanelFacts& p) { lineOf(p, kContext).colour = 0xff5a5a5a; }},
        {"contrast.voices", [](PanelFacts& p) { p.style.palette.child = p.style.palette.adult; }},
        {"line.voice", [](PanelFacts& p) { lineOf(p, kQuote).text = QString(37, u'a'); }},
        {"line.body", [](PanelFacts& p) { lineOf(p, kContext).text = QString(56, u'a'); }},
        {"line.caption", [](PanelFacts& p) { lineOf(p, kCredits).text = QString(53, u'a'); }},
        {"words.label", [](PanelFacts& p) { pieceOf(p, kContext).text = words(76); }},
        {"words.sentence",
            [](PanelFacts& p) { pieceOf(p, kContext).text = words(26, QStringLiteral(".")); }},
        {"words.context", [](PanelFacts& p) { pieceOf(p, kContext).text = words(31); }},
        {"words.interpretation", [](PanelFacts& p) { pieceOf(p, kMeaning).text = words(41); }},
        {"words.credits", [](PanelFacts& p) { pieceOf(p, kCredits).text = words(21); }},
        {"words.next_step",
            [](PanelFacts& p) {
                pieceOf(p, kMeaning).kind = PieceKind::NextStep;
                pieceOf(p, kMeaning).text = words(21);
            }},
        {"words.level",
            [](PanelFacts& p) {
                pieceOf(p, kMeaning).language = QStringLiteral("en");
                pieceOf(p, kMeaning).text = QStringLiteral(
                    "Conceptual investigation of evaporation necessitated collaborative "
                    "documentation, facilitating metacognitive development. Participants "
                    "subsequently demonstrated increasingly sophisticated understanding regarding "
                    "environmental transformation and observable phenomena.");
            }},
        {"words.balance", [](PanelFacts& p) { pieceOf(p, kQuote).text = words(9); }},
        {"place.outside", [](PanelFacts& p) { lineOf(p, kQuote).right = Mm(842); }},
        {"place.edge", [](PanelFacts& p) { lineOf(p, kContext).left = Mm(6.9); }},
        {"place.margin", [](PanelFacts& p) { p.style.grid.margin = Mm(11.9); }},
        {"place.overlap", [](PanelFacts& p) { pieceOf(p, kCredits).cell.y = p.style.grid.y(7); }},
        {"place.past_cell",
            [](PanelFacts& p) {
                lineOf(p, kMeaning).right = pieceOf(p, kMeaning).cell.right() + Mm(0.6);
            }},
        {"place.grid", [](PanelFacts& p) { pieceOf(p, kContext).cell.y += Mm(0.3); }},
        {"place.left_edges",
            [](PanelFacts& p) {
                // A seventh left edge; four are there.
                pieceOf(p, kContext).cell.x = p.style.grid.x(1);
                pieceOf(p, kCredits).cell.x = p.style.grid.x(2);
                pieceOf(p, kWork).cell.x = p.style.grid.x(3);
                pieceOf(p, kMeaning).cell.x = p.style.grid.x(7);
            }},
        {"place.tint",
            [](PanelFacts& p) { p.fills.front().rect.height += p.style.grid.rowUnit * 1.1; }},
        {"ink.tint", [](PanelFacts& p) { p.fills.front().rect.height = Mm(400); }},
        {"ink.white",
            [](PanelFacts& p) {
                pictureOf(p, kLead).place = {Mm(0), Mm(0), Mm(841), Mm(300)};
            }},
        {"entry.missing",
            [](PanelFacts& p) {
                std::erase_if(p.lines, [](const TextLine& line) { return line.use == Use::Title; });
            }},
        {"entry.ratio", [](PanelFacts& p) { shrink(p, kQuote, 2.5); }},
        {"entry.clear",
            [](PanelFacts& p) {
                lineOf(p, kContext).baseline = lineOf(p, kTitle).baseline + p.style.grid.rowUnit;
            }},
        {"picture.sharpness",
            [](PanelFacts& p) {
                pictureOf(p, kLead).picture.size = {700, 450};
            }},
        {"picture.floor",
            [](PanelFacts& p) {
                pictureOf(p, kLead).picture.size = {1100, 700};
            }},
        {"picture.dominant",
            [](PanelFacts& p) { pictureOf(p, kPhoto).place = pictureOf(p, kLead).place; }},
        {"picture.work_whole",
            [](PanelFacts& p) { pictureOf(p, kWork).picture.visible.width = 0.9; }},
        {"picture.work_share", [](PanelFacts& p) { p.display.plan = QStringLiteral("drawing"); }},
        {"picture.mat", [](PanelFacts& p) { pictureOf(p, kWork).place.x += Mm(0.5); }},
        {"picture.must_stay",
            [](PanelFacts& p) {
                pictureOf(p, kLead).picture.visible = {0.1, 0, 0.9, 1};
                pictureOf(p, kLead).picture.mustStay = RectFraction{0.12, 0.2, 0.3, 0.3};
            }},
        {"caption.missing",
            [](PanelFacts& p) {
                std::erase_if(
                    p.lines, [](const TextLine& line) { return line.piece == PieceId(kLead); });
            }},
        {"caption.lines",
            [](PanelFacts& p) {
                const TextLine line = lineOf(p, kLead);
                p.lines.push_back(line);
                p.lines.push_back(line);
            }},
        {"caption.distance", [](PanelFacts& p) { lineOf(p, kLead).baseline += Mm(3); }},
        {"quote.apart",
            [](PanelFacts& p) {
                TextLine next = lineOf(p, kQuote);
                next.piece = PieceId(99);
                const TextLine& name = lineOf(p, kQuote, 2);
                next.baseline = name.baseline + next.cap + Mm(5);
                p.lines.push_back(next);
            }},
        {"quote.last_word",
            [](PanelFacts& p) { lineOf(p, kQuote, 1).text = QStringLiteral("all"); }},
        {"quote.hyphen",
            [](PanelFacts& p) { lineOf(p, kQuote).text = QStringLiteral("We put a li-"); }},
        {"quote.verbatim",
            [](PanelFacts& p) { lineOf(p, kQuote).text = QStringLiteral("We drew a line so it"); }},
        {"quote.ligature", [](PanelFacts& p) { lineOf(p, kQuote).joinedLetters = 1; }},
        {"permission.piece",
            [](PanelFacts& p) {
                p.leftOut.push_back(
                    {QStringLiteral("photo"), 4, PieceId(20), QStringLiteral("No.")});
            }},
        {"permission.name",
            [](PanelFacts& p) {
                p.leftOut.push_back({QStringLiteral("name"), 4, PieceId(7), QStringLiteral("No.")});
            }},
    };
    return all;
}

TEST(CheckRules, SayOnceOfAChildThatItIsNotNamed)
{
    PanelFacts panel = goodPanel();
    for (const int piece : {7, 8, 7})
        panel.leftOut.push_back(
            {QStringLiteral("name"), 4, PieceId(piece), QStringLiteral("Mei is not named.")});
    panel.leftOut.push_back(
        {QStringLiteral("name"), 5, PieceId(7), QStringLiteral("Ada is not named.")});
    const auto findings = checkPanel(panel);
    ASSERT_EQ(findings.size(), 2U);
    EXPECT_EQ(findings.front().piece, 7);
    EXPECT_EQ(findings.back().says, QStringLiteral("Ada is not named."));
}

TEST(CheckRules, FindNothingOnAGoodPanel)
{
    std::vector<std::string> said;
    for (const Finding& finding : checkPanel(goodPanel()))
        said.push_back((finding.rule + QStringLiteral(": ") + finding.says).toStdString());
    EXPECT_THAT(said, ::testing::IsEmpty());
}

TEST(CheckRules, FindWhatIsSpoiled)
{
    for (const Spoiled& spoiled : spoiledPanels()) {
        PanelFacts panel = goodPanel();
        spoiled.spoil(panel);
        EXPECT_THAT(rulesIn(checkPanel(panel)), ::testing::Contains(std::string(spoiled.rule)));
    }
}

TEST(CheckRules, AreAllTried)
{
    // Of the whole display and of sheets: check_display, check_mounted, jobs_check.
    std::set<std::string> tried{"credits.missing",
        "credits.date",
        "voices.child",
        "caption.repeated",
        "type.mounted",
        "seam.marked",
        "seam.work",
        "seam.lines"};
    for (const Spoiled& spoiled : spoiledPanels())
        tried.insert(spoiled.rule);
    std::set<std::string> known;
    for (const LimitRow& row : allLimits())
        known.insert(row.rule);
    EXPECT_EQ(tried, known);
}

TEST(CheckRules, SayMeasureLimitUnitAndSource)
{
    for (const Spoiled& spoiled : spoiledPanels()) {
        PanelFacts panel = goodPanel();
        panel.number = 3;
        spoiled.spoil(panel);
        for (const Finding& finding : checkPanel(panel)) {
            EXPECT_EQ(finding.panel, 3);
            EXPECT_TRUE(finding.limit.has_value()) << finding.rule.toStdString();
            EXPECT_FALSE(finding.source.isEmpty()) << finding.rule.toStdString();
            EXPECT_TRUE(finding.says.endsWith(u'.') || finding.says.endsWith(u'?'))
                << finding.says.toStdString();
        }
    }
}

// Only what may not be printed stops; taste never does.
TEST(CheckRules, StopOnlyForPermissionAndLostContent)
{
    std::set<std::string> stops;
    for (const LimitRow& row : allLimits()) {
        if (row.severity == Severity::Stop)
            stops.insert(row.rule);
    }
    EXPECT_THAT(stops, ::testing::ElementsAre("permission.piece", "place.outside"));
}

TEST(CheckRules, MeasureSharpnessByOnePixelAnArcminute)
{
    // 87.3 pixels an inch at 1 m; captions and pictures are looked at from 0.8 of 1.5 m.
    PanelFacts panel = goodPanel();
    pictureOf(panel, kLead).picture.size = {700, 450};
    for (const Finding& finding : checkPanel(panel)) {
        if (finding.rule == QLatin1String("picture.sharpness")) {
            EXPECT_NEAR(*finding.limit, 72.75, 0.01);
        }
    }
}

// Easy words in short sentences pass, and what is no English text has no grade.
TEST(CheckRules, MeasureTheLevelOfEnglishTextsOfSomeLength)
{
    const auto levels = [](const QString& text, const QString& language) {
        PanelFacts panel = goodPanel();
        pieceOf(panel, kMeaning).text = text;
        pieceOf(panel, kMeaning).language = language;
        const auto rules = rulesIn(checkPanel(panel));
        return std::count(rules.begin(), rules.end(), "words.level");
    };
    const QString hard = QStringLiteral("Documentation facilitates understanding ").repeated(7);
    EXPECT_EQ(levels(hard, QStringLiteral("en-GB")), 1);
    EXPECT_EQ(levels(hard, QStringLiteral("es")), 0) << "the formula is of English";
    EXPECT_EQ(levels(hard.left(80), QStringLiteral("en")), 0) << "too short to tell";
    EXPECT_EQ(levels(QStringLiteral("The sun took the water up. ").repeated(5), u"en"_qs), 0);
}

// Every limit that is a measure can be set; the finding then says so and what is usual.
TEST(CheckRules, MeasureAgainstLimitsSomebodySet)
{
    PanelFacts panel = goodPanel();
    EXPECT_TRUE(panel.limits.set(Limit::VoiceLine, 20));
    const std::vector<Finding> found = checkPanel(panel);
    ASSERT_EQ(rulesIn(found), std::vector<std::string>{"line.voice"});
    EXPECT_EQ(found.front().limit, 20);
    EXPECT_EQ(
        found.front().source, QStringLiteral("set here; 36 is usual (Wainscot's panel style)"));
    EXPECT_TRUE(panel.limits.set(Limit::VoiceLine, 36));
    EXPECT_FALSE(panel.limits.isOwn(Limit::VoiceLine)) << "the usual value is no change";
    EXPECT_THAT(checkPanel(panel), ::testing::IsEmpty());
}

TEST(CheckRules, HaveANameForEveryLimit)
{
    std::set<std::string> names;
    for (const LimitRow& row : allLimits()) {
        names.insert(nameOf(row.limit));
        EXPECT_STRNE(nameOf(row.limit), "") << row.rule;
    }
    EXPECT_EQ(names.size(), allLimits().size());
}

TEST(CheckRules, LetNobodySetPermissionOrNonsense)
{
    Limits limits;
    EXPECT_FALSE(limits.set(Limit::NotCleared, 3));
    EXPECT_FALSE(limits.set(Limit::NotNamed, 3));
    EXPECT_FALSE(limits.set(Limit::Outside, 3));
    EXPECT_FALSE(limits.set(Limit::NotVerbatim, 3));
    EXPECT_FALSE(limits.set(Limit::VoiceAngle, -1));
    EXPECT_FALSE(limits.set(Limit::VoiceAngle, std::nan("")));
    EXPECT_TRUE(limits.own().empty());
}

// Every measure decides: at one extreme the rule that uses it speaks, at the other it is silent.
TEST(CheckRules, ReallyUseEveryLimitThatCanBeSet)
{
    const auto hears = [](PanelFacts panel, const LimitRow& row, double value) {
        EXPECT_TRUE(panel.limits.set(row.limit, value)) << row.rule;
        const auto rules = rulesIn(checkPanel(panel));
        return std::count(rules.begin(), rules.end(), row.rule) > 0;
    };
    for (const Spoiled& spoiled : spoiledPanels()) {
        const LimitRow& row = *limitCalled(QString::fromLatin1(spoiled.rule));
        if (!isMeasure(row))
            continue;
        PanelFacts panel = goodPanel();
        spoiled.spoil(panel);
        EXPECT_NE(hears(panel, row, 0), hears(panel, row, Limits::kGreatest)) << row.rule;
    }
}

TEST(CheckRules, SortStopsFirstAndThenByPanel)
{
    std::vector<Finding> findings(3);
    findings[0].severity = Severity::Note;
    findings[1].severity = Severity::Stop;
    findings[1].panel = 2;
    findings[2].severity = Severity::Stop;
    findings[2].panel = 1;
    sortFindings(findings);
    EXPECT_EQ(findings[0].panel, 1);
    EXPECT_EQ(findings[1].panel, 2);
    EXPECT_EQ(findings[2].severity, Severity::Note);
}

} // namespace
} // namespace wainscot::check
