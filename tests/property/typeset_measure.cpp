// Whatever is written and however wide the column: what was measured is what is drawn.
#include "layout/typeset/measurer.h"
#include "layout/typeset/piece_text.h"
#include "layout/typeset/typesetter.h"
#include "tests/unit/typeset_panels.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <random>
#include <thread>

namespace {

using namespace wainscot;
using namespace wainscot::testing;

constexpr std::array kKinds{PieceKind::Title,
    PieceKind::Question,
    PieceKind::Context,
    PieceKind::Label,
    PieceKind::Interpretation,
    PieceKind::NextStep,
    PieceKind::Invitation,
    PieceKind::Credits};

struct Script {
    const char* language;
    QStringList words;
};

const std::vector<Script>& scripts()
{
    static const std::vector<Script> all{
        {"en",
            QStringLiteral("the puddle went off. wall, I see it; a caterpillar is on my hand! you "
                           "so we it’s “small” ground? something wet AVATAR To")
                .split(QLatin1Char(' '))},
        {"ar",
            QStringLiteral("يدي المبلولة راحت عن الحيط، يعني البركة الأرض. كلّ صباح")
                .split(QLatin1Char(' '))},
        {"hi", QStringLiteral("मेरा गीला हाथ दीवार से गया, तो पानी भी").split(QLatin1Char(' '))},
        {"zh-Hans",
            QStringLiteral("我的湿手印从墙上走了， 所以水坑 也从地上走了。")
                .split(QLatin1Char(' '))},
        {"he", QStringLiteral("היד הרטובה שלי הלכה מהקיר, אז השלולית").split(QLatin1Char(' '))}};
    return all;
}

QString someText(std::mt19937& random, const Script& script)
{
    const int count = std::uniform_int_distribution<int>(1, 30)(random);
    QString text;
    for (int i = 0; i < count; ++i) {
        if (i > 0)
            text += std::uniform_int_distribution<int>(0, 15)(random) == 0 ? QLatin1Char('\n')
                                                                           : QLatin1Char(' ');
        text += script.words[std::uniform_int_distribution<int>(
            0, static_cast<int>(script.words.size()) - 1)(random)];
    }
    return text;
}

// The lowest baseline or filled edge below the top of the cell.
Mm drawnHeight(const DisplayList& list, const RectMm& cell)
{
    Mm height;
    for (const Mark& mark : list.marks) {
        if (const auto* run = std::get_if<GlyphRun>(&mark.shape))
            height = std::max(height, run->origin.y - cell.y);
    }
    return height;
}

// A mark that hangs outside the right edge is meant to.
Mm drawnRight(const DisplayList& list, const RectMm& cell)
{
    Mm right;
    for (const Mark& mark : list.marks) {
        const auto* run = std::get_if<GlyphRun>(&mark.shape);
        if (!run || run->glyphs.empty() || run->origin.x > cell.right())
            continue;
        for (const QPointF& at : run->positions)
            right = std::max(right, run->origin.x + unitsToMm(at.x()));
    }
    return right;
}

TEST(Measurer, IsNeverExceededByWhatIsDrawn)
{
    std::mt19937 random(20251106);
    int checked = 0;
    for (int round = 0; round < 240; ++round) {
        PanelBuilder builder({Mm(841), Mm(594)},
            Mm(1500),
            pairings()[static_cast<std::size_t>(round) % pairings().size()].name,
            QStringLiteral("Wet Slate"));
        const Script& script = scripts()[static_cast<std::size_t>(round) % scripts().size()];
        builder.language(QString::fromLatin1(script.language));
        const int columns = std::uniform_int_distribution<int>(2, 12)(random);
        RectMm cell = builder.cell(0, 1, columns, 4);
        const QString text = someText(random, script);
        if (round % 3 == 0)
            builder.quote(cell, text, QStringLiteral("Mei"));
        else
            builder.text(kKinds[static_cast<std::size_t>(round) % kKinds.size()],
                cell,
                text,
                QStringLiteral("What we make of it"));
        const PanelStyle style = builder.style();
        const PanelMeasurer measurer(builder.cleared().pieces(), style, QStringLiteral("en"));
        const engine::TextMetrics metrics = measurer.measure(1, cell.width);
        cell.height = metrics.height;
        builder.last().cell = cell;
        const ClearedPanel panel = builder.cleared();
        const DisplayList list = typeset(panel, style);
        EXPECT_LE(drawnHeight(list, cell).value(), metrics.height.value() + 1e-6)
            << qPrintable(text);
        if (metrics.fits) {
            EXPECT_LE(drawnRight(list, cell).value(), (cell.right() + Mm(0.5)).value())
                << qPrintable(text);
            EXPECT_LE(metrics.usedWidth.value(), cell.width.value() * 1.0021);
            ++checked;
        }
    }
    EXPECT_GT(checked, 120);
}

TEST(Measurer, NeverSetsALineLongerThanItsRole)
{
    std::mt19937 random(7);
    for (int round = 0; round < 200; ++round) {
        Display display;
        display.pairing = pairings()[static_cast<std::size_t>(round) % pairings().size()].name;
        const PanelStyle style = panelStyle(display);
        ClearedPiece piece;
        piece.kind = std::array{PieceKind::Quote,
            PieceKind::Context,
            PieceKind::Credits}[static_cast<std::size_t>(round) % 3];
        piece.text = someText(random, scripts().front());
        const int limit = std::array{36, 55, 52}[static_cast<std::size_t>(round) % 3];
        const PieceText text = pieceText(piece, style, QStringLiteral("en"), 5);
        const PieceLines lines =
            pieceLines(text, Mm(std::uniform_int_distribution<int>(60, 800)(random)));
        for (std::size_t p = 0; p < text.parts.size(); ++p) {
            for (std::size_t l = 0; l < lines.parts[p].ends.size(); ++l)
                EXPECT_LE(text.parts[p].block.charactersOf(lines.parts[p], l), limit);
        }
    }
}

TEST(Measurer, NeedsNoMoreRoomInAWiderColumn)
{
    std::mt19937 random(11);
    for (int round = 0; round < 60; ++round) {
        Display display;
        const PanelStyle style = panelStyle(display);
        ClearedPiece piece;
        piece.kind = PieceKind::Context;
        piece.text =
            someText(random, scripts()[static_cast<std::size_t>(round) % scripts().size()]);
        const PieceText text = pieceText(piece, style, QStringLiteral("en"), 5);
        Mm before(1e9);
        for (int columns = 1; columns <= 12; ++columns) {
            const Mm height = pieceLines(text, style.grid.width(columns)).height;
            EXPECT_LE(height, before) << qPrintable(piece.text);
            before = height;
        }
    }
}

TEST(Measurer, AnswersTheSameFromManyThreads)
{
    const PanelBuilder builder = puddlePanel();
    const ClearedPanel panel = builder.cleared();
    const PanelStyle style = builder.style();
    const PanelMeasurer shared(panel.pieces(), style, QStringLiteral("en"));
    const auto answers = [&](const PanelMeasurer& measurer) {
        std::vector<double> heights;
        for (int round = 0; round < 20; ++round) {
            for (const ClearedPiece& piece : panel.pieces()) {
                for (int columns = 1; columns <= 12; ++columns)
                    heights.push_back(measurer.measure(piece.id.number(), style.grid.width(columns))
                                          .height.value());
            }
        }
        return heights;
    };
    std::vector<std::vector<double>> found(4);
    std::vector<std::thread> threads;
    for (auto& heights : found)
        threads.emplace_back([&] { heights = answers(shared); });
    for (std::thread& thread : threads)
        thread.join();
    const PanelMeasurer alone(panel.pieces(), style, QStringLiteral("en"));
    for (const auto& heights : found)
        EXPECT_EQ(heights, answers(alone));
}

} // namespace
