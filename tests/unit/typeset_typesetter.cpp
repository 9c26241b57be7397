#include "layout/typeset/typesetter.h"

#include "layout/typeset/group_rules.h"
#include "layout/typeset/measurer.h"
#include "layout/typeset/piece_text.h"
#include "tests/unit/typeset_panels.h"

#include <QPainterPath>

#include <gmock/gmock.h>

#include <map>

namespace {

using namespace wainscot;
using namespace wainscot::testing;
using ::testing::ElementsAre;

struct Set {
    explicit Set(const PanelBuilder& builder)
        : panel(builder.cleared())
        , style(builder.style())
        , list(typeset(panel, style))
    {
    }
    ClearedPanel panel;
    PanelStyle style;
    DisplayList list;

    [[nodiscard]] std::vector<GlyphRun> runsOf(PieceId piece) const
    {
        std::vector<GlyphRun> runs;
        for (const Mark& mark : list.marks) {
            if (mark.piece == piece && std::holds_alternative<GlyphRun>(mark.shape))
                runs.push_back(std::get<GlyphRun>(mark.shape));
        }
        return runs;
    }
    [[nodiscard]] std::vector<Fill> fillsOf(PieceId piece) const
    {
        std::vector<Fill> fills;
        for (const Mark& mark : list.marks) {
            if (mark.piece == piece && std::holds_alternative<Fill>(mark.shape))
                fills.push_back(std::get<Fill>(mark.shape));
        }
        return fills;
    }
    [[nodiscard]] std::vector<const ClearedPiece*> all(PieceKind kind) const
    {
        std::vector<const ClearedPiece*> found;
        for (const ClearedPiece& piece : panel.pieces()) {
            if (piece.kind == kind)
                found.push_back(&piece);
        }
        return found;
    }
    [[nodiscard]] const ClearedPiece& first(PieceKind kind) const { return *all(kind).front(); }
};

QString textOf(const GlyphRun& run)
{
    QString text;
    for (const Cluster& cluster : run.clusters)
        text += cluster.text;
    return text;
}

QRectF inkOf(const GlyphRun& run) // millimetres
{
    QRectF ink;
    for (std::size_t i = 0; i < run.glyphs.size(); ++i)
        ink |= run.font.pathForGlyph(run.glyphs[i]).boundingRect().translated(run.positions[i]);
    const double scale = unitsToMm(1).value();
    return {run.origin.x.value() + ink.x() * scale,
        run.origin.y.value() + ink.y() * scale,
        ink.width() * scale,
        ink.height() * scale};
}

double left(const GlyphRun& run) // of the text edge
{
    return (run.origin.x + unitsToMm(run.positions.front().x())).value();
}

TEST(Quote, HangsItsMarkOutsideTheTextEdge)
{
    for (const Set& set : {Set(puddlePanel()), Set(voicesPanel()), Set(drawingPanel())}) {
        for (const ClearedPiece* quote : set.all(PieceKind::Quote)) {
            const auto runs = set.runsOf(quote->id);
            const double em = unitsToMm(runs[1].sizeUnits).value();
            const double cap = set.style.scale.voice().value();
            const double edge = quote->cell.x.value();
            EXPECT_EQ(textOf(runs[0]), QStringLiteral("“"));
            // Lines begin on one edge; the name below, too.
            double baseline = 0;
            for (std::size_t i = 1; i < runs.size(); ++i) {
                if (runs[i].origin.y.value() > baseline + 0.1) {
                    EXPECT_NEAR(left(runs[i]), edge, 0.02 * em);
                }
                baseline = runs[i].origin.y.value();
            }
            const auto advance = runs[0].font.advancesForGlyphIndexes(
                QList<quint32>{runs[0].glyphs.front()}, QRawFont::UseDesignMetrics);
            EXPECT_NEAR(left(runs[0]) + unitsToMm(advance.front().x()).value(),
                edge - 0.06 * em,
                0.01 * em);
            EXPECT_NEAR(inkOf(runs[0]).top(), quote->cell.y.value(), 0.05 * cap);
            EXPECT_LT(inkOf(runs[0]).right(), edge);
        }
    }
}

TEST(Quote, BeginsOnItsCapLineAndNamesBelow)
{
    const Set set(puddlePanel());
    const ClearedPiece& quote = set.first(PieceKind::Quote);
    const auto runs = set.runsOf(quote.id);
    const Mm cap = set.style.scale.voice();
    EXPECT_NEAR((runs[1].origin.y - quote.cell.y).value(), cap.value(), 1e-6);
    EXPECT_NEAR((runs[2].origin.y - runs[1].origin.y).value(), 1.82 * cap.value(), 1e-6);
    const GlyphRun& name = runs.back();
    EXPECT_EQ(textOf(name), QStringLiteral("Freya, 5"));
    EXPECT_EQ(name.colour, set.style.palette.accent);
    EXPECT_EQ(name.font.weight(), 700);
    const Mm lastBaseline = runs[runs.size() - 2].origin.y;
    EXPECT_NEAR((name.origin.y - set.style.scale.caption() - lastBaseline).value(),
        0.78 * cap.value(),
        1e-6);
}

TEST(Quote, TellsHowTheWordsWereTakenDownInTheAdultsVoice)
{
    const Set set(familiesPanel());
    const auto runs = set.runsOf(set.first(PieceKind::Quote).id);
    EXPECT_EQ(textOf(runs.back()), QStringLiteral(", worked up together"));
    EXPECT_EQ(runs.back().colour, set.style.palette.adult);
    EXPECT_EQ(runs.back().font.weight(), 400);
}

TEST(Quote, IsMirroredFromRightToLeft)
{
    const Set set(familiesPanel());
    const ClearedPiece& quote = *set.all(PieceKind::Quote)[1];
    const auto runs = set.runsOf(quote.id);
    EXPECT_EQ(textOf(runs[0]), QStringLiteral("«"));
    EXPECT_GT(inkOf(runs[0]).left(), quote.cell.right().value());
    EXPECT_LT(inkOf(runs[0]).right(), (quote.cell.right() + set.style.grid.margin).value());
    for (std::size_t i = 1; i < runs.size(); ++i)
        EXPECT_LE(inkOf(runs[i]).right(), quote.cell.right().value() + 0.5);
    EXPECT_GT(inkOf(runs[1]).right(), quote.cell.right().value() - 3);
}

TEST(Quote, HasItsNameReadTheWayItsWordsAre)
{
    const Set set(familiesPanel());
    ClearedPiece quote = set.first(PieceKind::Quote);
    const auto nameLine = [&](const char* words, const char* name, const char* status) {
        quote.text = QString::fromUtf8(words);
        quote.name = QString::fromUtf8(name);
        quote.status = QString::fromUtf8(status);
        return pieceText(quote, set.style, QStringLiteral("en"), 2).parts.back().block.direction();
    };
    EXPECT_EQ(nameLine("It went", "نور", "translated from Arabic"), Direction::LeftToRight);
    EXPECT_EQ(nameLine("It went", "نور", ""), Direction::LeftToRight);
    EXPECT_EQ(nameLine("المياه راحت", "Wren", ""), Direction::RightToLeft);
    EXPECT_EQ(nameLine("المياه راحت", "نور", ""), Direction::RightToLeft);
}

TEST(Quote, PartsItsParagraphsAndMarksThemOnce)
{
    const Set set(drawingPanel());
    const auto runs = set.runsOf(set.first(PieceKind::Quote).id);
    int opening = 0;
    int closing = 0;
    std::map<double, int> gaps;
    for (std::size_t i = 0; i < runs.size(); ++i) {
        opening += textOf(runs[i]).count(QStringLiteral("“"));
        closing += textOf(runs[i]).count(QStringLiteral("”"));
    }
    EXPECT_EQ(opening, 1);
    EXPECT_EQ(closing, 1);
    const Mm lead = 1.82 * set.style.scale.voice();
    const Mm wide = lead + 0.35 * set.style.grid.rowUnit;
    int paragraphs = 1;
    for (std::size_t i = 2; i + 2 < runs.size(); ++i) {
        const Mm step = runs[i].origin.y - runs[i - 1].origin.y;
        if (std::abs((step - wide).value()) < 0.01)
            ++paragraphs;
    }
    EXPECT_EQ(paragraphs, 3);
}

TEST(Interpretation, HugsItsTintToWholeRows)
{
    const Set set(puddlePanel());
    for (const PieceKind kind : {PieceKind::Interpretation, PieceKind::NextStep}) {
        const ClearedPiece& piece = set.first(kind);
        const auto fills = set.fillsOf(piece.id);
        ASSERT_EQ(fills.size(), 1U);
        const RectMm tint = fills[0].rect;
        const double rows = (tint.height + set.style.grid.gutter) / set.style.grid.rowUnit;
        EXPECT_NEAR(rows, std::round(rows), 1e-6);
        const Mm padding = 0.62 * set.style.grid.rowUnit;
        const auto runs = set.runsOf(piece.id);
        EXPECT_NEAR((runs[0].origin.x - tint.x).value(), padding.value(), 1e-6);
        EXPECT_NEAR(
            (runs[0].origin.y - set.style.scale.caption() - tint.y).value(), padding.value(), 1e-6);
        const Mm slack = tint.bottom() - padding - runs.back().origin.y;
        EXPECT_GE(slack, Mm(-1e-6));
        EXPECT_LT(slack, set.style.grid.rowUnit);
    }
}

TEST(Interpretation, ShowsAChildsWordsInTheChildsColour)
{
    const Set set(puddlePanel());
    QString quoted;
    for (const GlyphRun& run : set.runsOf(set.first(PieceKind::Interpretation).id)) {
        if (run.colour == set.style.palette.child)
            quoted += textOf(run) + (run.endsLine ? QStringLiteral(" ") : QString());
        else
            EXPECT_TRUE(
                run.colour == set.style.palette.adult || run.colour == set.style.palette.ink);
    }
    EXPECT_EQ(quoted, QStringLiteral("“it is smaller”"));
}

TEST(Piece, IsSetInColoursAndLettersOfItsOwn)
{
    PanelBuilder builder(
        {Mm(841), Mm(594)}, Mm(1500), QStringLiteral("Schoolroom"), QStringLiteral("Wet Slate"));
    Piece& usual = builder.quote(
        builder.cell(0, 0, 4, 10), QStringLiteral("It is under the sky."), QStringLiteral("Wren"));
    const PieceId asAll = usual.id;
    Piece& own = builder.quote(
        builder.cell(6, 0, 4, 10), QStringLiteral("It is under the sky."), QStringLiteral("Wren"));
    own.palette = QStringLiteral("Rowan");
    own.pairing = QStringLiteral("Reading Room");
    const PieceId asItself = own.id;
    const Set set(builder);
    const auto hasColour = [&](PieceId piece, QRgb colour) {
        const auto runs = set.runsOf(piece);
        return std::any_of(
            runs.begin(), runs.end(), [&](const GlyphRun& run) { return run.colour == colour; });
    };
    EXPECT_TRUE(hasColour(asAll, paletteByName(QStringLiteral("Wet Slate")).child));
    EXPECT_FALSE(hasColour(asAll, paletteByName(QStringLiteral("Rowan")).child));
    EXPECT_TRUE(hasColour(asItself, paletteByName(QStringLiteral("Rowan")).child));
    EXPECT_FALSE(hasColour(asItself, paletteByName(QStringLiteral("Wet Slate")).child));
    const auto family = [&](PieceId piece) {
        return set.runsOf(piece).back().font.familyName().toStdString();
    };
    EXPECT_NE(family(asAll), family(asItself));
}

TEST(Photo, CarriesItsCaptionCloseBelow)
{
    const Set set(puddlePanel());
    for (const ClearedPiece* photo : set.all(PieceKind::Photo)) {
        const auto runs = set.runsOf(photo->id);
        const Mm cap = set.style.scale.caption();
        const Mm capLine = runs.front().origin.y - cap;
        EXPECT_NEAR((capLine - photo->picturePlace.bottom()) / cap, 0.85, 1e-6);
        EXPECT_EQ(runs.front().origin.x, photo->cell.x);
        EXPECT_LE(runs.back().origin.y, photo->cell.bottom() + Mm(1e-6));
    }
}

TEST(Work, StandsWholeOnAMatOfEqualBorders)
{
    const Set set(drawingPanel());
    const ClearedPiece& work = set.first(PieceKind::Work);
    const auto fills = set.fillsOf(work.id);
    ASSERT_EQ(fills.size(), 1U);
    RectMm place;
    for (const Mark& mark : set.list.marks) {
        if (const auto* placed = std::get_if<PlacedPicture>(&mark.shape))
            place = placed->place;
    }
    const Mm border = 0.6 * set.style.grid.gutter;
    EXPECT_NEAR((place.x - fills[0].rect.x).value(), border.value(), 1e-6);
    EXPECT_NEAR((place.y - fills[0].rect.y).value(), border.value(), 1e-6);
    EXPECT_NEAR((fills[0].rect.right() - place.right()).value(), border.value(), 1e-6);
    EXPECT_NEAR((fills[0].rect.bottom() - place.bottom()).value(), border.value(), 1e-6);
    EXPECT_NEAR(place.width / place.height, 3508.0 / 2480, 1e-6);
    EXPECT_LE(fills[0].rect.bottom(), work.cell.bottom() + Mm(1e-6));
}

TEST(Credits, StandOnTheFootOfTheirCell)
{
    const Set set(puddlePanel());
    const ClearedPiece& credits = set.first(PieceKind::Credits);
    EXPECT_NEAR(
        set.runsOf(credits.id).back().origin.y.value(), credits.cell.bottom().value(), 1e-6);
}

TEST(Invitation, LeavesLinesToWriteOnAcrossBothLanguages)
{
    const Set set(familiesPanel());
    const auto invitations = set.all(PieceKind::Invitation);
    std::vector<Fill> lines;
    for (const ClearedPiece* piece : invitations) {
        for (const Fill& fill : set.fillsOf(piece->id))
            lines.push_back(fill);
    }
    ASSERT_GE(lines.size(), 3U);
    const Mm lowest = std::max(set.runsOf(invitations[0]->id).back().origin.y,
        set.runsOf(invitations[1]->id).back().origin.y);
    EXPECT_NEAR((lines[0].rect.y + lines[0].rect.height / 2 - lowest).value(), 1.5 * 13.6, 1e-6);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        EXPECT_NEAR(lines[i].rect.height.value(), 0.3, 1e-9);
        EXPECT_EQ(lines[i].rect.x, invitations[0]->cell.x);
        EXPECT_NEAR(lines[i].rect.right().value(), invitations[1]->cell.right().value(), 1e-6);
        if (i > 0) {
            EXPECT_NEAR((lines[i].rect.y - lines[i - 1].rect.y).value(), 13.6, 1e-6);
        }
    }
}

TEST(Title, TakesTheLargestStepItsCellHasRoomFor)
{
    const PanelBuilder builder = puddlePanel();
    const PanelStyle style = builder.style();
    ClearedPiece title = Set(builder).first(PieceKind::Title);
    EXPECT_EQ(titleStep(title, style), 5);
    title.cell = style.grid.cell(0, 0, 12, 6);
    EXPECT_EQ(titleStep(title, style), 7);
    title.cell = style.grid.cell(0, 0, 2, 6);
    EXPECT_EQ(titleStep(title, style), 5); // the smallest of a large panel
    const PanelStyle small = drawingPanel().style();
    title.text = QStringLiteral("Where does the water in the puddle go when it has gone?");
    title.cell = small.grid.cell(0, 0, 4, 8);
    EXPECT_EQ(titleStep(title, small), 4); // A3 has one more
}

TEST(Title, HasOneSizeInTwoLanguages)
{
    const Set set(familiesPanel());
    const auto titles = set.all(PieceKind::Title);
    ASSERT_EQ(titles.size(), 2U);
    const GlyphRun english = set.runsOf(titles[0]->id).front();
    const GlyphRun arabic = set.runsOf(titles[1]->id).front();
    EXPECT_NEAR(double(arabic.sizeUnits) / english.sizeUnits, 0.94, 0.002);
}

TEST(Panel, HasFourSizesOfLatinType)
{
    for (const Set& set : {Set(puddlePanel()), Set(voicesPanel()), Set(drawingPanel())}) {
        std::map<int, int> steps;
        const TypeScale& scale = set.style.scale;
        for (const Mark& mark : set.list.marks) {
            const auto* run = std::get_if<GlyphRun>(&mark.shape);
            if (!run)
                continue;
            const QPainterPath h = run->font.pathForGlyph(
                run->font.glyphIndexesForString(QStringLiteral("H")).front());
            const double cap = unitsToMm(-h.boundingRect().top()).value();
            const double step = std::log(cap / scale.body.value()) / std::log(1.25);
            EXPECT_NEAR(std::pow(1.25, step - std::round(step)), 1, 0.005); // never off the scale
            ++steps[static_cast<int>(std::lround(step))];
        }
        EXPECT_LE(steps.size(), 4U);
    }
}

TEST(Structure, IsInReadingOrder)
{
    const Set set(puddlePanel());
    const auto& elements = set.list.elements;
    ASSERT_EQ(elements[0].role, Role::Document);
    EXPECT_EQ(elements[0].parent, -1);
    EXPECT_EQ(elements[0].language, QStringLiteral("en"));
    std::vector<Role> roles;
    for (std::size_t i = 1; i < 9; ++i)
        roles.push_back(elements[i].role);
    EXPECT_THAT(roles,
        ElementsAre(Role::Heading1,
            Role::Paragraph,
            Role::Paragraph,
            Role::Figure,
            Role::Caption,
            Role::Heading2,
            Role::Figure,
            Role::Caption));
    for (std::size_t i = 1; i < elements.size(); ++i) {
        EXPECT_LT(elements[i].parent, static_cast<int>(i));
        if (elements[i].role == Role::Caption) {
            EXPECT_EQ(elements[static_cast<std::size_t>(elements[i].parent)].role, Role::Figure);
        }
        if (elements[i].role == Role::Figure) {
            EXPECT_FALSE(elements[i].alternative.isEmpty());
            EXPECT_FALSE(elements[i].bounds.isEmpty());
        }
    }
    int last = 0;
    for (const Mark& mark : set.list.marks) {
        if (mark.element >= 0) {
            EXPECT_GE(mark.element, last);
            last = mark.element;
        }
    }
}

TEST(Structure, NamesTheLanguageWhereItChanges)
{
    const Set set(manyScriptsPanel());
    std::map<QString, int> languages;
    for (const Element& element : set.list.elements)
        ++languages[element.language];
    EXPECT_EQ(languages[QStringLiteral("ar")], 2);
    EXPECT_EQ(languages[QStringLiteral("zh-Hans")], 2);
    EXPECT_EQ(languages[QStringLiteral("hi")], 1);
    EXPECT_EQ(languages[QStringLiteral("he")], 1);
}

TEST(Panel, FindsAFontForEverything)
{
    for (const Set& set : {Set(puddlePanel()),
             Set(voicesPanel()),
             Set(drawingPanel()),
             Set(familiesPanel()),
             Set(manyScriptsPanel())}) {
        EXPECT_TRUE(set.list.fontGaps.empty());
        for (const Mark& mark : set.list.marks) {
            if (const auto* run = std::get_if<GlyphRun>(&mark.shape)) {
                EXPECT_TRUE(run->font.isValid());
            }
        }
    }
}

TEST(GroupRules, PartDaysThatFollowDownThePanel)
{
    const Set set(puddlePanel());
    const auto rules = groupRules(set.panel.pieces(), set.style.grid);
    ASSERT_EQ(rules.size(), 1U);
    const Grid& grid = set.style.grid;
    EXPECT_NEAR(rules[0].height.value(), 0.35, 1e-9);
    EXPECT_NEAR((rules[0].y + rules[0].height / 2).value(),
        (grid.y(16) - 0.65 * grid.rowUnit).value(),
        1e-6);
    EXPECT_NEAR(rules[0].x.value(), grid.margin.value(), 1e-6);
    EXPECT_NEAR(rules[0].width.value(), grid.width(12).value(), 1e-6);
}

TEST(GroupRules, NeedAFreeRowAndTwoGroups)
{
    const Grid grid = puddlePanel().style().grid;
    const auto piece = [&](RectMm cell, int group) {
        ClearedPiece p;
        p.cell = cell;
        p.group = group;
        return p;
    };
    const auto at = [&](int row, int rows) { return grid.cell(0, row, 12, rows); };
    EXPECT_EQ(groupRules({piece(at(0, 4), 1), piece(at(5, 4), 2)}, grid).size(), 1U);
    EXPECT_TRUE(groupRules({piece(at(0, 4), 1), piece(at(4, 4), 2)}, grid).empty());
    EXPECT_TRUE(groupRules({piece(at(0, 4), 1), piece(at(5, 4), 1)}, grid).empty());
    EXPECT_TRUE(groupRules({piece(at(0, 4), 0), piece(at(5, 4), 2)}, grid).empty());
    // In one of two columns only: as wide as that column.
    const auto rules = groupRules({piece(grid.cell(0, 0, 6, 4), 1),
                                      piece(grid.cell(0, 5, 6, 4), 2),
                                      piece(grid.cell(6, 0, 6, 9), 3)},
        grid);
    ASSERT_EQ(rules.size(), 1U);
    EXPECT_NEAR(rules[0].width.value(), grid.width(6).value(), 1e-6);
}

TEST(Measurer, AsksForAnIndentOnlyWhereTheMarkNeedsIt)
{
    const auto indent = [](const PanelBuilder& builder) {
        const Set set(builder);
        const PanelMeasurer measurer(set.panel.pieces(), set.style, QStringLiteral("en"));
        return measurer.indent(set.first(PieceKind::Quote).id.number());
    };
    EXPECT_EQ(indent(puddlePanel()), Mm(0));
    EXPECT_EQ(indent(drawingPanel()), drawingPanel().style().grid.gutter);
}

TEST(Measurer, AsksForAnIndentWhereTheLinesRunAgainstThePage)
{
    const Set set(puddlePanel());
    ClearedPiece quote = set.first(PieceKind::Quote);
    const auto indent = [&](const char* words, const char* of, const char* page) {
        quote.text = QString::fromUtf8(words);
        quote.language = QLatin1String(of);
        const PanelMeasurer measurer({quote}, set.style, QLatin1String(page));
        return measurer.indent(quote.id.number());
    };
    const Mm gutter = set.style.grid.gutter;
    EXPECT_EQ(indent("המים הלכו", "he", "en"), gutter);
    EXPECT_EQ(indent("המים הלכו", "he", "he"), Mm(0));
    EXPECT_EQ(indent("It went", "en", "he"), gutter);
    EXPECT_EQ(indent("It went", "en", "en"), Mm(0));
}

TEST(Measurer, CountsWordsBehindOpeningMarksToo)
{
    const Set set(puddlePanel());
    ClearedPiece quote = set.first(PieceKind::Quote);
    const auto words = [&](const char* text) {
        quote.text = QString::fromUtf8(text);
        const PanelMeasurer measurer({quote}, set.style, QStringLiteral("en"));
        return measurer.spec(quote.id.number()).words;
    };
    EXPECT_EQ(words("It went away"), 3);
    EXPECT_EQ(words("¿Dónde está (el agua)?"), 4);
    EXPECT_EQ(words("It’s “gone” – all"), 3);
    EXPECT_EQ(words("水坑走了"), 2);
}

TEST(Measurer, RefusesAColumnTooNarrowForAVoice)
{
    const Set set(puddlePanel());
    const PanelMeasurer measurer(set.panel.pieces(), set.style, QStringLiteral("en"));
    const auto id = set.first(PieceKind::Quote).id.number();
    EXPECT_FALSE(measurer.measure(id, set.style.grid.width(2)).fits);
    EXPECT_TRUE(measurer.measure(id, set.style.grid.width(3)).fits);
    EXPECT_FALSE(measurer.measure(set.first(PieceKind::Context).id.number(), Mm(30)).fits);
}

TEST(Measurer, TellsTheHeightFromCapLineToLastBaseline)
{
    for (const Set& set : {Set(puddlePanel()), Set(drawingPanel()), Set(familiesPanel())}) {
        const PanelMeasurer measurer(set.panel.pieces(), set.style, QStringLiteral("en"));
        for (const ClearedPiece& piece : set.panel.pieces()) {
            if (isPicture(piece.kind) || piece.kind == PieceKind::Invitation
                || piece.kind == PieceKind::Credits)
                continue;
            const bool tinted = measurer.spec(piece.id.number()).tinted;
            const Mm padding = tinted ? 0.62 * set.style.grid.rowUnit : Mm();
            const Mm text = set.runsOf(piece.id).back().origin.y - piece.cell.y;
            const Mm height = measurer.measure(piece.id.number(), piece.cell.width).height;
            EXPECT_NEAR((height - padding - text).value(), 0, 1e-6) << qPrintable(piece.text);
        }
    }
}

TEST(Measurer, KnowsCaptionsAloneAndNothingOfStrangers)
{
    const Set set(puddlePanel());
    const PanelMeasurer measurer(set.panel.pieces(), set.style, QStringLiteral("en"));
    const ClearedPiece& photo = set.first(PieceKind::Photo);
    const auto metrics = measurer.measure(photo.id.number(), photo.cell.width);
    const Mm cap = set.style.scale.caption();
    EXPECT_EQ(metrics.lines, 2);
    EXPECT_NEAR(metrics.height.value(), (cap + 1.95 * cap).value(), 1e-6);
    EXPECT_NEAR(measurer.spec(photo.id.number()).captionGap / cap, 0.85, 1e-9);
    EXPECT_EQ(measurer.measure(4711, Mm(100)).height, Mm(0));
    EXPECT_TRUE(measurer.measure(4711, Mm(100)).fits);
}

} // namespace
