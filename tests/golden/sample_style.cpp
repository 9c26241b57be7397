// The panels of the sample class keep the style's own tests: what the check computes finds nothing,
// and what only the drawn page can tell (white, ink, grey, order, ornament) is measured on it.
#include "app/jobs/arrange_job.h"
#include "app/jobs/book_jobs.h"
#include "app/jobs/check_job.h"
#include "app/jobs/drawn_display.h"
#include "app/jobs/export_job.h"
#include "core/store/book_store.h"

#include <QImage>
#include <QTemporaryDir>

#include <cmath>
#include <set>

#include <gtest/gtest.h>

#include "layout/check/panel_facts.h"

namespace wainscot {
namespace {

constexpr int kDpi = 40;

JobRun onTheDay()
{
    JobRun run;
    run.today = QDate(2026, 11, 6);
    return run;
}

// The class with pictures of a tenth of the camera's size, told to be ten times as large: drawn in
// a moment, arranged as the real ones.
class SampleStyle : public ::testing::Test {
protected:
    static void SetUpTestSuite()
    {
        s_folder = new QTemporaryDir;
        SampleJob job;
        job.folder = s_folder->filePath(QStringLiteral("sample"));
        job.small = true;
        const auto made = job.run(onTheDay());
        ASSERT_TRUE(made.ok());
        auto opened = BookStore::open(made->book);
        ASSERT_TRUE(opened.ok());
        s_store = std::move(*opened).release();
        EditBuilder larger(s_store->book(), QStringLiteral("camera size"));
        for (const auto& [id, picture] : s_store->book().pictures.rows()) {
            Picture changed = picture;
            changed.size = {picture.size.width * 10, picture.size.height * 10};
            larger.put(changed);
        }
        ASSERT_TRUE(s_store->history().perform(larger.take()).ok());
        arrange("Hallway", "Where does the puddle go?", Audience::Building, {Mm(841), Mm(594)});
        arrange("Door", "The cloud that drinks", Audience::Classroom, {Mm(420), Mm(297)});
    }
    static void TearDownTestSuite()
    {
        delete s_store;
        delete s_folder;
    }

    static void arrange(const char* display, const char* experience, Audience audience, SizeMm size)
    {
        ArrangeJob job;
        job.display = QString::fromLatin1(display);
        job.experience = QString::fromLatin1(experience);
        job.audience = audience;
        job.panelSize = size;
        auto arranged = job.run(s_store->book(), onTheDay());
        ASSERT_TRUE(arranged.ok());
        ASSERT_TRUE(std::holds_alternative<ArrangeOutcome>(*arranged));
        ASSERT_TRUE(s_store->history().perform(std::get<ArrangeOutcome>(*arranged).edit).ok());
    }

    static DrawnPanel drawn(const char* display)
    {
        auto panels = drawDisplay(s_store->book(), QString::fromLatin1(display), onTheDay().today);
        EXPECT_TRUE(panels.ok());
        EXPECT_EQ(panels->panels.size(), 1U);
        return panels->panels.front();
    }

    static QImage seen(const char* display)
    {
        ExportPictureJob job;
        job.display = QString::fromLatin1(display);
        job.file = s_folder->filePath(job.display + QStringLiteral(".png"));
        job.picturesFolder = s_store->picturesFolder();
        job.dpi = kDpi;
        const auto exported = job.run(s_store->book(), onTheDay());
        EXPECT_TRUE(exported.ok());
        return QImage(job.file).convertToFormat(QImage::Format_RGB32);
    }

    static inline QTemporaryDir* s_folder = nullptr;
    static inline BookStore* s_store = nullptr;
};

// Share of the page that no ink touches, and mean coverage, of the three inks' average.
struct Inked {
    double white = 0;
    double coverage = 0;
};

Inked inkOf(const QImage& page)
{
    Inked ink;
    for (int y = 0; y < page.height(); ++y) {
        const auto* row = reinterpret_cast<const QRgb*>(page.constScanLine(y));
        for (int x = 0; x < page.width(); ++x) {
            const int sum = qRed(row[x]) + qGreen(row[x]) + qBlue(row[x]);
            ink.white += sum == 3 * 255 ? 1 : 0;
            ink.coverage += 1 - sum / (3 * 255.0);
        }
    }
    const double pixels = double(page.width()) * page.height();
    return {ink.white / pixels, ink.coverage / pixels};
}

double lightness(QRgb colour)
{
    return 0.2126 * qRed(colour) + 0.7152 * qGreen(colour) + 0.0722 * qBlue(colour);
}

TEST_F(SampleStyle, TheCheckFindsOnlyChildrenWhoAreHeardElsewhere)
{
    for (const char* display : {"Hallway", "Door"}) {
        CheckJob job;
        job.display = QString::fromLatin1(display);
        const auto outcome = job.run(s_store->book(), onTheDay());
        ASSERT_TRUE(outcome.ok());
        for (const Finding& finding : outcome->findings) {
            EXPECT_EQ(finding.rule, QStringLiteral("voices.child"))
                << display << ": " << finding.says.toStdString();
        }
    }
}

TEST_F(SampleStyle, HalfThePaperStaysUntouched)
{
    EXPECT_GE(inkOf(seen("Hallway")).white, 0.50);
    EXPECT_GE(inkOf(seen("Door")).white, 0.50); // although the scan's own paper counts as touched
}

TEST_F(SampleStyle, InkCoversAtMostASixthOfThePage)
{
    EXPECT_LE(inkOf(seen("Hallway")).coverage, 0.16);
    EXPECT_LE(inkOf(seen("Door")).coverage, 0.16);
}

TEST_F(SampleStyle, VoicesDifferWithoutColour)
{
    const DrawnPanel panel = drawn("Hallway");
    const check::PanelFacts facts = check::factsOf(panel.cleared, panel.style, panel.list);
    std::set<QString> voices;
    std::set<QString> adults;
    for (const Mark& mark : panel.list.marks) {
        const auto* run = std::get_if<GlyphRun>(&mark.shape);
        if (run == nullptr || mark.element < 0)
            continue;
        const Element& element = panel.list.elements[std::size_t(mark.element)];
        const ClearedPiece* piece = facts.piece(mark.piece);
        ASSERT_NE(piece, nullptr);
        if (piece->kind == PieceKind::Interpretation && element.role == Role::Paragraph)
            adults.insert(run->font.familyName());
        if (piece->kind == PieceKind::Quote
            && std::abs(lightness(run->colour) - lightness(panel.style.palette.child)) < 0.5)
            voices.insert(run->font.familyName());
    }
    ASSERT_FALSE(voices.empty());
    ASSERT_FALSE(adults.empty());
    for (const QString& family : voices)
        EXPECT_EQ(adults.count(family), 0U) << family.toStdString();
    EXPECT_GE(panel.style.scale.voice() / panel.style.scale.body, 1.25);
}

TEST_F(SampleStyle, DaysFollowOneAnotherRowByRow)
{
    const DrawnPanel panel = drawn("Hallway");
    std::vector<const ClearedPiece*> labels;
    for (const ClearedPiece& piece : panel.cleared.pieces()) {
        if (piece.kind == PieceKind::Label)
            labels.push_back(&piece);
    }
    ASSERT_EQ(labels.size(), 4U);
    std::stable_sort(labels.begin(), labels.end(), [](const auto* a, const auto* b) {
        return std::pair(a->cell.y, a->cell.x) < std::pair(b->cell.y, b->cell.x);
    });
    const char* days[] = {"Monday", "Tuesday", "Wednesday", "Thursday"};
    for (std::size_t i = 0; i < labels.size(); ++i)
        EXPECT_TRUE(labels[i]->text.startsWith(QString::fromLatin1(days[i])))
            << labels[i]->text.toStdString();
}

// Where a display of three panels breaks: the texts an adult reads to find the way, panel by panel.
TEST_F(SampleStyle, BreaksThreePanelsBetweenItsDays)
{
    ArrangeJob job;
    job.display = QStringLiteral("Three");
    job.experience = QStringLiteral("Where does the puddle go?");
    job.audience = Audience::Building;
    job.panels = 3;
    const auto arranged = job.run(s_store->book(), onTheDay());
    ASSERT_TRUE(arranged.ok());
    const auto* outcome = std::get_if<ArrangeOutcome>(&*arranged);
    ASSERT_NE(outcome, nullptr);
    ASSERT_TRUE(outcome->breaks.has_value());
    EXPECT_TRUE(outcome->breaks->proven());
    std::string read;
    for (const ArrangedPiece& one : outcome->pieces) {
        const PieceKind kind = one.piece.kind;
        const bool isText = kind == PieceKind::Title || kind == PieceKind::Label;
        if (isText || one.piece.dominant || kind == PieceKind::Context
            || kind == PieceKind::Interpretation || kind == PieceKind::NextStep
            || kind == PieceKind::Credits)
            read += std::to_string(one.panel) + " "
                + (isText ? one.piece.text : nameOf(kind)).toStdString() + "\n";
    }
    EXPECT_EQ(read,
        "1 Where does the puddle go?\n"
        "1 context\n"
        "1 photo\n"
        "1 Monday, 2 November\n"
        "1 Monday, 2 November\n"
        "1 Tuesday, 3 November\n"
        "1 Tuesday, 3 November\n"
        "2 Wednesday and Thursday\n"
        "2 photo\n"
        "2 Wednesday, 4 November\n"
        "2 Wednesday, 4 November\n"
        "2 Thursday, 5 November\n"
        "2 Thursday, 5 November\n"
        "3 Thursday\n"
        "3 credits\n"
        "3 photo\n"
        "3 Thursday, 5 November (continued)\n"
        "3 Thursday, 5 November\n"
        "3 Thursday, 5 November\n"
        "3 Thursday, 5 November\n"
        "3 interpretation\n"
        "3 next_step\n");
}

// Corners, shadows and turns cannot be said in a display list; what remains is which fills there
// are: pale grounds and hairlines.
TEST_F(SampleStyle, DrawsNoOrnament)
{
    for (const char* display : {"Hallway", "Door"}) {
        const DrawnPanel panel = drawn(display);
        const Palette& palette = panel.style.palette;
        for (const Mark& mark : panel.list.marks) {
            const auto* fill = std::get_if<Fill>(&mark.shape);
            if (fill == nullptr)
                continue;
            const bool ground = fill->colour == palette.tint1 || fill->colour == palette.tint2;
            const bool hairline = fill->rect.height <= Mm(0.36);
            EXPECT_TRUE(ground || hairline) << display;
        }
    }
}

} // namespace
} // namespace wainscot
