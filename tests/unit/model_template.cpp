// A teacher's own template: made from a panel as it hangs, kept as a file, and refused by field.
#include "core/model/template_file.h"

#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace wainscot {
namespace {

PanelTemplate morningWall()
{
    PanelTemplate made;
    made.name = QStringLiteral("Morning wall");
    made.panelSize = {Mm(594), Mm(841)};
    made.voiceStep = 3;
    TemplateSlot title;
    title.kind = PieceKind::Title;
    title.column = 0;
    title.columns = 12;
    TemplateSlot photo;
    photo.kind = PieceKind::Photo;
    photo.columns = 7;
    photo.column = 0;
    photo.rows = 0.3;
    photo.area = 0.125;
    photo.dominant = true;
    TemplateSlot credits;
    credits.kind = PieceKind::Credits;
    credits.optional = true;
    TemplateSlot note;
    note.kind = PieceKind::Interpretation;
    note.fixed = true;
    note.column = 0;
    note.columns = 5;
    note.top = 0.9;
    note.rows = 0.1;
    made.places = {title, photo, credits, note};
    return made;
}

QString faultOf(const QByteArray& json)
{
    const auto read = templateFromJson(json, QStringLiteral("wall.json"));
    EXPECT_FALSE(read.ok()) << json.toStdString();
    if (read.ok())
        return {};
    EXPECT_EQ(read.error().code, ErrorCode::Damaged);
    EXPECT_EQ(read.error().subject, QStringLiteral("wall.json"));
    return read.error().detail;
}

QByteArray withPlaces(const char* places)
{
    return QByteArray(R"({"wainscot_template": 1, "name": "W", "places": [)") + places + "]}";
}

TEST(TemplateFile, SaysWhatItHoldsAndReadsItBack)
{
    const QByteArray json = templateToJson(morningWall());
    EXPECT_TRUE(json.contains("\"optional\": true"));
    EXPECT_FALSE(json.contains("group")) << "a wish nobody has is no line in the file";
    const auto read = templateFromJson(json, {});
    ASSERT_TRUE(read.ok()) << qPrintable(read.error().detail);
    EXPECT_EQ(*read, morningWall());
}

TEST(TemplateFile, GoesThroughAFile)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("wall.json"));
    ASSERT_TRUE(writeTemplate(path, morningWall()).ok());
    const auto read = readTemplate(path);
    ASSERT_TRUE(read.ok());
    EXPECT_EQ(*read, morningWall());
    EXPECT_EQ(
        readTemplate(folder.filePath(QStringLiteral("none"))).error().code, ErrorCode::NotFound);
    EXPECT_EQ(writeTemplate(folder.filePath(QStringLiteral("no/such")), morningWall()).error().code,
        ErrorCode::CannotWrite);
}

TEST(TemplateFile, NamesTheFieldThatMakesNoSense)
{
    EXPECT_EQ(faultOf(withPlaces(R"({"kind": "quote"}, {"kind": "poem"})")),
        QStringLiteral("places[1].kind: \"poem\" is no kind of piece"));
    EXPECT_EQ(faultOf(withPlaces(R"({"kind": "quote", "columns": 14})")),
        QStringLiteral("places[0].columns: 14 is not 1 to 12"));
    EXPECT_EQ(faultOf(withPlaces(R"({"kind": "quote", "columns": 2.5})")),
        QStringLiteral("places[0].columns: 2.5 is no whole number"));
    EXPECT_EQ(faultOf(withPlaces(R"({"kind": "quote", "column": 9, "columns": 4})")),
        QStringLiteral("places[0].columns: it runs past the last of 12 columns"));
    EXPECT_EQ(faultOf(withPlaces(R"({"kind": "quote", "colums": 4})")),
        QStringLiteral("places[0].colums: there is no such field"));
    EXPECT_EQ(faultOf(withPlaces(R"({"kind": "quote", "area": 0.2})")),
        QStringLiteral("places[0].area: only pictures have one"));
    EXPECT_EQ(faultOf(withPlaces(R"({"kind": "quote", "fixed": true, "columns": 3})")),
        QStringLiteral("places[0].fixed: a fixed piece needs column, columns and rows"));
    EXPECT_EQ(faultOf(R"({"wainscot_template": 1, "name": " ", "places": [{"kind": "title"}]})"),
        QStringLiteral("name: a template needs a name"));
    EXPECT_EQ(faultOf(R"({"wainscot_template": 1, "name": "W", "places": []})"),
        QStringLiteral("places: a template needs at least one place"));
    EXPECT_EQ(faultOf(R"({"title": "a letter"})"),
        QStringLiteral("wainscot_template: it does not say that it is a template"));
    EXPECT_TRUE(faultOf("{\"wainscot_template\": 1,").startsWith(QStringLiteral("byte ")));
}

TEST(TemplateFile, RefusesFixedPlacesOverEachOther)
{
    EXPECT_EQ(
        faultOf(withPlaces(
            R"({"kind": "photo", "fixed": true, "column": 0, "columns": 6, "top": 0, "rows": 0.5},
               {"kind": "title", "fixed": true, "column": 5, "columns": 3, "top": 0.4, "rows": 0.2})")),
        QStringLiteral("places[1]: it lies over places[0]"));
}

TEST(TemplateFile, OfALaterFormStaysClosed)
{
    const auto read = templateFromJson(R"({"wainscot_template": 2})", {});
    ASSERT_FALSE(read.ok());
    EXPECT_EQ(read.error().code, ErrorCode::TooNew);
}

// Margin 33, gutter 14.14, column pitch 65.75 mm on A1 landscape (short side / 18 and / 42).
TEST(TemplateFromAPanel, KeepsColumnsSharesAndWhatIsPinned)
{
    Display display;
    display.pairing = QStringLiteral("Reading Room");
    Piece title;
    title.kind = PieceKind::Title;
    title.cell = {Mm(33), Mm(33), Mm(248.9), Mm(105)};
    Piece photo;
    photo.kind = PieceKind::Photo;
    photo.dominant = true;
    photo.pinned = true;
    photo.cell = {Mm(296), Mm(33), Mm(314.6), Mm(240)};
    photo.picturePlace = {Mm(296), Mm(33), Mm(314.6), Mm(220)};
    Piece credits;
    credits.kind = PieceKind::Credits;
    credits.cell = {Mm(33), Mm(240), Mm(248.9), Mm(20)};
    const Piece waiting; // not on the panel yet
    const PanelTemplate made = templateOf(display, {&title, &photo, &credits, &waiting});
    ASSERT_EQ(made.places.size(), 3U);
    EXPECT_EQ(made.pairing, QStringLiteral("Reading Room"));
    EXPECT_EQ(made.places[0].column, 0);
    EXPECT_EQ(made.places[0].columns, 4);
    EXPECT_FALSE(made.places[0].fixed);
    EXPECT_EQ(made.places[1].column, 4);
    EXPECT_EQ(made.places[1].columns, 5);
    EXPECT_TRUE(made.places[1].fixed);
    EXPECT_TRUE(made.places[1].dominant);
    EXPECT_NEAR(made.places[1].area, 314.6 * 220 / (841.0 * 594), 0.001);
    EXPECT_TRUE(made.places[2].optional);
}

} // namespace
} // namespace wainscot
