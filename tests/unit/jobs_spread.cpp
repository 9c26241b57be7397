// A display over several panels: where it breaks, what each panel begins with and what the last
// one ends with.
#include "tests/support/puddle_book.h"

#include <gmock/gmock.h>

#include <limits>
#include <set>

namespace wainscot {
namespace {

using ::testing::Contains;
using ::testing::Each;
using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;
using ::testing::Truly;

// A telling of another child for each day that is listed, and photos of those days.
Puddle onDays(const std::vector<int>& days)
{
    static const std::vector<const char*> words{"We put a line so it can’t go without us seeing.",
        "The ground was thirsty in the night, I heard it.",
        "My wet hand went off the wall in the sun.",
        "It got smaller but it didn’t spill anywhere.",
        "The edge went inside and nobody pushed it.",
        "It goes up so quiet that the sky is not fuller.",
        "If you put a lid on it, it has to stay.",
        "Maybe a dog drank from the other side."};
    Puddle puddle;
    for (std::size_t i = 0; i < days.size(); ++i) {
        const std::string name = "Child " + std::string(1, char('A' + int(i)));
        const ChildId who = puddle.child(name.c_str(), Permissions::all(), "2020-06-01");
        puddle.said(who, days[i], words[i % words.size()]);
        puddle.took(days[i]);
    }
    for (const int day : std::set<int>(days.begin(), days.end()))
        puddle.took(day);
    return puddle;
}

std::vector<Piece> piecesOn(const ArrangeOutcome& outcome, int panel, PieceKind kind)
{
    std::vector<Piece> found;
    for (const ArrangedPiece& one : outcome.pieces) {
        if (one.panel == panel && one.piece.kind == kind)
            found.push_back(one.piece);
    }
    return found;
}

// The days of the words on each panel, in reading order.
std::vector<std::vector<int>> daysOf(const Puddle& puddle, const ArrangeOutcome& outcome)
{
    std::vector<std::vector<int>> days(std::size_t(outcome.panels));
    for (const ArrangedPiece& one : outcome.pieces) {
        if (const Quote* quote = puddle.book.quotes.find(one.piece.quote))
            days[std::size_t(one.panel) - 1].push_back(quote->on->day());
    }
    return days;
}

std::vector<std::string> labelsOn(const ArrangeOutcome& outcome, int panel)
{
    std::vector<std::string> texts;
    for (const Piece& piece : piecesOn(outcome, panel, PieceKind::Label))
        texts.push_back(piece.text.toStdString());
    return texts;
}

TEST(SpreadOverPanels, ADayStaysWholeWhereItCan)
{
    const Hung hung(onDays({3, 3, 3, 4, 4}), 2);
    EXPECT_THAT(
        daysOf(hung.puddle, hung.last), ElementsAre(ElementsAre(3, 3, 3), ElementsAre(4, 4)));
    EXPECT_THAT(labelsOn(hung.last, 2), ElementsAre("Tuesday, 4 November", "Tuesday, 4 November"));
}

TEST(SpreadOverPanels, ADayThatGoesOnSaysSo)
{
    Hung hung(onDays({3, 4, 4, 4, 4, 4}), 2);
    const auto days = daysOf(hung.puddle, hung.last);
    ASSERT_EQ(days.size(), 2U);
    ASSERT_THAT(days[1], Each(4));
    ASSERT_GE(days[0].size(), 2U) << "one day alone would leave the first panel bare";
    auto labels = labelsOn(hung.last, 2);
    ASSERT_FALSE(labels.empty());
    EXPECT_EQ(labels.front(), "Tuesday, 4 November (continued)");
    EXPECT_EQ(std::count(labels.begin(), labels.end(), labels.front()), 1);
    for (const std::string& label : labelsOn(hung.last, 1))
        EXPECT_THAT(label, Not(HasSubstr("continued")));
    // A wish that hangs on such a label outlives a proposal anew, for that label alone.
    Piece label = piecesOn(hung.last, 2, PieceKind::Label).front();
    label.palette = QStringLiteral("Rowan");
    hung.puddle.book.pieces.put(label);
    hung.again();
    EXPECT_EQ(labelsOn(hung.last, 2), labels);
    const auto now = piecesOn(hung.last, 2, PieceKind::Label);
    EXPECT_EQ(now.front().palette, label.palette);
    EXPECT_NE(now.back().palette, label.palette);
}

TEST(SpreadOverPanels, EachHasItsWayInAndTheLastOneEnds)
{
    for (const int panels : {2, 3}) {
        SCOPED_TRACE(panels);
        const Hung hung(onDays({3, 3, 4, 4, 5, 5, 6}), panels);
        for (int panel = 1; panel <= panels; ++panel) {
            SCOPED_TRACE(panel);
            const bool isFirst = panel == 1;
            const bool isLast = panel == panels;
            const auto count = [&](PieceKind kind) {
                return piecesOn(hung.last, panel, kind).size();
            };
            EXPECT_EQ(count(PieceKind::Title), 1U);
            EXPECT_EQ(count(PieceKind::Context), isFirst ? 1U : 0U);
            EXPECT_EQ(count(PieceKind::Credits), isLast ? 1U : 0U);
            EXPECT_EQ(count(PieceKind::Interpretation), isLast ? 1U : 0U);
            EXPECT_EQ(count(PieceKind::NextStep), isLast ? 1U : 0U);
            EXPECT_GE(count(PieceKind::Quote), 1U);
            const auto photos = piecesOn(hung.last, panel, PieceKind::Photo);
            ASSERT_EQ(std::count_if(photos.begin(),
                          photos.end(),
                          [](const Piece& piece) { return piece.dominant; }),
                1);
            // It is of a day that the panel tells.
            const auto days = daysOf(hung.puddle, hung.last)[std::size_t(panel) - 1];
            for (const Piece& photo : photos) {
                const Picture* picture = hung.puddle.book.pictures.find(photo.picture);
                EXPECT_THAT(days, Contains(picture->captured->local.date().day()));
            }
        }
    }
}

TEST(SpreadOverPanels, WordsKeepTheOrderOfTime)
{
    const Hung hung(onDays({3, 4, 4, 5, 6, 6, 7}), 3);
    std::vector<int> all;
    for (const auto& days : daysOf(hung.puddle, hung.last))
        all.insert(all.end(), days.begin(), days.end());
    EXPECT_THAT(all, ElementsAre(3, 4, 4, 5, 6, 6, 7));
}

TEST(SpreadOverPanels, WhatIsTogetherWithAPinGoesToItsPanel)
{
    Hung hung(onDays({3, 3, 4, 4}), 2);
    Piece pinned = piecesOn(hung.last, 2, PieceKind::Quote).back();
    pinned.pinned = true;
    pinned.together = 1;
    hung.puddle.book.pieces.put(pinned);
    Piece mate = piecesOn(hung.last, 1, PieceKind::Quote).back();
    mate.together = 1;
    hung.puddle.book.pieces.put(mate);
    hung.again();
    const Piece* there = hung.showing(pinned.quote);
    const Piece* here = hung.showing(mate.quote);
    ASSERT_TRUE(there != nullptr && here != nullptr);
    EXPECT_EQ(there->cell, pinned.cell);
    EXPECT_EQ(here->panel, there->panel);
}

// The price of the display when its panels begin with these words, forced one way after the other.
double cheapestForced(const Hung& hung, const std::vector<QuoteId>& quotes, int panels)
{
    double cheapest = std::numeric_limits<double>::infinity();
    const auto count = quotes.size();
    for (std::size_t one = 1; one < count; ++one) {
        for (std::size_t other = one; other < count; ++other) {
            if ((panels == 2) != (one == other))
                continue;
            Hung forced = hung;
            for (const std::size_t at : {one, other}) {
                Piece piece = *forced.showing(quotes[at]);
                piece.startsPanel = true;
                forced.puddle.book.pieces.put(piece);
            }
            forced.again();
            EXPECT_TRUE(forced.last.breaks.has_value());
            EXPECT_THAT(forced.last.droppedWishes, Each(Truly([](const QString& sentence) {
                return !sentence.contains(QStringLiteral("begin a panel"));
            })));
            cheapest = std::min(cheapest, forced.last.breaks->cost);
        }
    }
    return cheapest;
}

TEST(SpreadOverPanels, TheBreaksAreTheCheapestOfAll)
{
    struct Case {
        std::vector<int> days;
        int panels;
    };
    const std::vector<Case> cases{
        {{3, 3, 3, 4, 4}, 2}, {{3, 4, 4, 4, 5, 6}, 2}, {{3, 3, 4, 5, 5}, 3}};
    for (const auto& [days, panels] : cases) {
        SCOPED_TRACE(testing::Message() << days.size() << " on " << panels);
        const Hung hung(onDays(days), panels);
        std::vector<QuoteId> quotes;
        for (const ArrangedPiece& one : hung.last.pieces) {
            if (one.piece.kind == PieceKind::Quote)
                quotes.push_back(one.piece.quote);
        }
        ASSERT_EQ(quotes.size(), days.size());
        ASSERT_TRUE(hung.last.breaks.has_value());
        EXPECT_TRUE(hung.last.breaks->proven());
        EXPECT_NEAR(hung.last.breaks->cost, cheapestForced(hung, quotes, panels), 1e-6);
    }
}

} // namespace
} // namespace wainscot
