// Each template shown by the sample's kind of material, a teacher's own, and advice that was tried.
#include "app/jobs/advice.h"
#include "app/jobs/arrange_job.h"
#include "app/jobs/plan_sentences.h"
#include "app/jobs/template_job.h"
#include "core/model/template_file.h"
#include "tests/support/class_book.h"

#include <QFile>
#include <QTemporaryDir>

#include <algorithm>

#include <gtest/gtest.h>

namespace wainscot {
namespace {

TEST(Advice, NamesStandardPapersBelowTheSameWayRound)
{
    const auto below = smallerPanels({Mm(841), Mm(594)});
    ASSERT_EQ(below.size(), 2U);
    EXPECT_EQ(below[0], (SizeMm{Mm(594), Mm(420)}));
    EXPECT_EQ(below[1], (SizeMm{Mm(420), Mm(297)}));
    EXPECT_TRUE(smallerPanels({Mm(297), Mm(420)}).empty());
}

TEST(Advice, SaysItsNumbersInOneSentence)
{
    Advice advice;
    advice.kind = AdviceKind::SmallerPanel;
    advice.panelSize = {Mm(594), Mm(420)};
    advice.whiteNow = 0.614;
    advice.whiteThen = 0.337;
    EXPECT_EQ(sentenceFor(advice),
        QStringLiteral("61 % of the panel is white; on A2 everything fits and 34 % is."));
    advice.kind = AdviceKind::MorePanels;
    advice.panels = 2;
    advice.quotes = {4};
    advice.missingMm2 = 62000;
    EXPECT_EQ(sentenceFor(advice),
        QStringLiteral("One quote that was meant for it has no room: 620 square centimetres, about "
                       "one A4 sheet. On 2 panels it fits."));
}

TEST(DroppedWishes, AreSaidInWholeSentences)
{
    engine::DroppedWish wish;
    wish.plan = "door";
    wish.what = engine::WishAbout::Plan;
    wish.why = engine::WishReason::NoRoom;
    EXPECT_EQ(sentenceFor(wish, {}),
        QStringLiteral("The template “door” is not kept: the pieces do not fit into it. The panel "
                       "is arranged freely."));
    wish.what = engine::WishAbout::OptionalPieces;
    EXPECT_EQ(sentenceFor(wish, {QStringLiteral("the credits")}),
        QStringLiteral(
            "The template “door” can do without the credits, so it is left out: there is "
            "not enough room."));
    EXPECT_EQ(
        sentenceFor(wish, {QStringLiteral("the next step"), QStringLiteral("what Mina said")}),
        QStringLiteral("The template “door” can do without the next step and what Mina said, so "
                       "they are left out: there is not enough room."));
}

struct Wall : ClassBook {
    Wall()
    {
        hall = display(Audience::Classroom);
        const PieceId title = hang(hall, PieceKind::Title, QStringLiteral("Ice"));
        Piece placed = *book.pieces.find(title);
        placed.cell = {Mm(33), Mm(33), Mm(248.9), Mm(105)};
        book.pieces.put(placed);
    }
    DisplayId hall;
};

TEST(KeepTemplate, TakesThePlacedPiecesUnderAName)
{
    Wall wall;
    const auto kept =
        KeepTemplateJob{QStringLiteral("Hall"), 1, QStringLiteral(" My wall ")}.run(wall.book);
    ASSERT_TRUE(kept.ok());
    EXPECT_FALSE(kept->replaces);
    apply(kept->edit, wall.book);
    const PanelTemplate* made = templateByName(wall.book, QStringLiteral("my wall"));
    ASSERT_NE(made, nullptr);
    ASSERT_EQ(made->places.size(), 1U);
    EXPECT_EQ(made->places[0].kind, PieceKind::Title);
    EXPECT_EQ(made->places[0].columns, 4);
    const auto again =
        KeepTemplateJob{QStringLiteral("Hall"), 1, QStringLiteral("My wall")}.run(wall.book);
    ASSERT_TRUE(again.ok());
    EXPECT_TRUE(again->replaces);
    EXPECT_EQ(again->made.id, made->id);
}

TEST(KeepTemplate, RefusesNamesAndPanelsThatDoNotGo)
{
    Wall wall;
    const auto fault = [&](const char* display, int panel, const char* name) {
        return KeepTemplateJob{QString::fromLatin1(display), panel, QString::fromLatin1(name)}
            .run(wall.book)
            .error()
            .code;
    };
    EXPECT_EQ(fault("Hall", 1, "days"), ErrorCode::WrongUse);
    EXPECT_EQ(fault("Hall", 1, " "), ErrorCode::WrongUse);
    EXPECT_EQ(fault("Hall", 2, "Mine"), ErrorCode::NotFound);
    EXPECT_EQ(fault("Attic", 1, "Mine"), ErrorCode::NotFound);
}

TEST(TakeTemplate, NamesFileFieldAndCause)
{
    const Wall wall;
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("wall.json"));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(R"({"wainscot_template": 1, "name": "W", "places": [{"kind": "song"}]})");
    file.close();
    const auto taken = TakeTemplateJob{path}.run(wall.book);
    ASSERT_FALSE(taken.ok());
    EXPECT_EQ(taken.error().subject, path);
    EXPECT_EQ(taken.error().detail, QStringLiteral("places[0].kind: \"song\" is no kind of piece"));
}

// A class in two languages: what a family panel needs, but for what a test leaves out.
struct Evening : ClassBook {
    Evening()
    {
        Experience told = *book.experiences.find(experience);
        told.language = QStringLiteral("en");
        told.title = QStringLiteral("Where does ice go?");
        told.context = QStringLiteral("The bowl froze on Monday. By noon it was water.");
        told.invitation = QStringLiteral("What ice do you remember? Write it here.");
        book.experiences.put(told);
        const ChildId mina = child("Mina", Permissions::fromBits((1U << 20U) - 1));
        const QuoteId melted = quote(mina, QStringLiteral("It went into the spoon."));
        add(Translated::Title, "Wohin geht das Eis?");
        add(Translated::Context, "Am Montag war die Schüssel gefroren. Mittags war es Wasser.");
        add(Translated::Invitation, "An welches Eis erinnern Sie sich? Schreiben Sie es hier auf.");
        add(Translated::Words, "Es ist in den Löffel gegangen.", melted);
        picture(PictureKind::Photo, {true, {}});
    }

    void add(Translated what, const char* text, QuoteId of = {})
    {
        Translation translation;
        translation.id = book.translations.newId();
        translation.experience = experience;
        translation.what = what;
        translation.quote = of;
        translation.language = QStringLiteral("de");
        translation.text = QString::fromUtf8(text);
        book.translations.put(translation);
    }

    ArrangeOutcome arranged()
    {
        ArrangeJob job;
        job.experience = QStringLiteral("Where does ice go?");
        job.display = QStringLiteral("Evening");
        job.audience = Audience::Families;
        job.panelSize = {Mm(420), Mm(594)};
        job.readingDistance = Mm(1000);
        JobRun run;
        run.today = kTestDay;
        const auto outcome = job.run(book, run);
        if (!outcome || !std::holds_alternative<ArrangeOutcome>(*outcome)) {
            ADD_FAILURE() << "no arrangement";
            return {};
        }
        return std::get<ArrangeOutcome>(*outcome);
    }
};

TEST(EveningDraft, HoldsEveryTextInBothLanguagesSideBySide)
{
    Evening evening;
    const ArrangeOutcome outcome = evening.arranged();
    EXPECT_EQ(outcome.display.plan, QStringLiteral("evening"));
    EXPECT_TRUE(outcome.droppedWishes.empty());
    for (const PieceKind kind :
        {PieceKind::Title, PieceKind::Context, PieceKind::Quote, PieceKind::Invitation}) {
        std::vector<RectMm> cells;
        for (const ArrangedPiece& one : outcome.pieces) {
            if (one.piece.kind == kind)
                cells.push_back(one.piece.cell);
        }
        ASSERT_EQ(cells.size(), 2U) << qPrintable(nameOf(kind));
        EXPECT_LT(cells[0].x, cells[1].x) << qPrintable(nameOf(kind));
        EXPECT_GT(cells[1].x, Mm(210)) << qPrintable(nameOf(kind));
    }
}

TEST(EveningDraft, SaysWhichTextIsInOneLanguageOnly)
{
    Evening evening;
    evening.book.translations.remove(TranslationId(2)); // of the context
    const ArrangeOutcome outcome = evening.arranged();
    const auto says = QStringLiteral("The context is in one language only: the panel is not "
                                     "finished before it is in both.");
    EXPECT_NE(std::find(outcome.droppedWishes.begin(), outcome.droppedWishes.end(), says),
        outcome.droppedWishes.end());
}

} // namespace
} // namespace wainscot
