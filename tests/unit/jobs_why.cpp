// Why it is here, and other ways: sentences and edits of one panel.
#include "app/jobs/alternatives_job.h"
#include "app/jobs/why_job.h"
#include "tests/support/class_book.h"

#include <gmock/gmock.h>

namespace wainscot {
namespace {

using ::testing::HasSubstr;

TEST(CropInWords, NamesTheSideAndTheShare)
{
    EXPECT_EQ(cropInWords({0, 0.08, 1, 0.92}, 0.08), QStringLiteral("8 % cropped at the top"));
    EXPECT_EQ(cropInWords({0.03, 0, 0.92, 1}, 0.08),
        QStringLiteral("3 % cropped at the left and 5 % cropped at the right"));
    EXPECT_EQ(cropInWords({0, 0, 1, 1}, 0), QString());
    EXPECT_EQ(cropInWords({0, 0, 1, 1}, 0.06), QStringLiteral("6 % cropped"));
}

TEST(EmptinessInWords, ComparesWithTheNextBest)
{
    EXPECT_EQ(emptinessInWords(0.64, 0.60),
        QStringLiteral("This panel is 4 % emptier than the next best arrangement."));
    EXPECT_EQ(emptinessInWords(0.58, 0.60),
        QStringLiteral("This panel is 2 % fuller than the next best arrangement."));
    EXPECT_EQ(emptinessInWords(0.601, 0.60),
        QStringLiteral("This panel is as full as the next best arrangement."));
}

// A panel of a title, two photos and two quotes, placed by hand.
struct Hung : ClassBook {
    Hung()
    {
        display = ClassBook::display(Audience::Classroom);
        Display value = *book.displays.find(display);
        value.panelSize = {Mm(594), Mm(420)};
        book.displays.put(value);
        const ChildId ada = child("Ada",
            only(Audience::Classroom,
                {Permission::Words, Permission::FirstName, Permission::Photo}));
        title = hang(display, PieceKind::Title, QStringLiteral("Where does it go?"));
        for (int k = 0; k < 2; ++k) {
            const PictureId id = picture(PictureKind::Photo, {true, {}});
            Picture shot = *book.pictures.find(id);
            shot.size = {4000, 3000};
            book.pictures.put(shot);
            photos.push_back(hang(display, id, QStringLiteral("Ten o'clock.")));
            quotes.push_back(
                hang(display, quote(ada, QStringLiteral("It is up there, number %1.").arg(k))));
        }
        set(title, {Mm(30), Mm(30), Mm(250), Mm(30)}, {});
        set(photos[0], {Mm(30), Mm(80), Mm(240), Mm(200)}, {Mm(30), Mm(80), Mm(240), Mm(160)});
        set(photos[1], {Mm(300), Mm(80), Mm(120), Mm(120)}, {Mm(300), Mm(80), Mm(120), Mm(90)});
        set(quotes[0], {Mm(300), Mm(220), Mm(120), Mm(60)}, {});
        set(quotes[1], {Mm(440), Mm(220), Mm(120), Mm(60)}, {});
    }

    void set(PieceId id, const RectMm& cell, const RectMm& place)
    {
        Piece piece = *book.pieces.find(id);
        piece.cell = cell;
        piece.picturePlace = place;
        book.pieces.put(piece);
    }

    WhyOutcome why(PieceId piece = {})
    {
        const auto out = WhyJob{panelOf(display).id, piece}.run(book, run);
        EXPECT_TRUE(out.ok());
        return out ? *out : WhyOutcome();
    }

    JobRun run{{}, {}, nullptr, kTestDay};
    DisplayId display;
    PieceId title;
    std::vector<PieceId> photos;
    std::vector<PieceId> quotes;
};

TEST(WhyJob, SaysThatAPinnedPieceIsPinned)
{
    Hung hung;
    Piece piece = *hung.book.pieces.find(hung.quotes[0]);
    piece.pinned = true;
    hung.book.pieces.put(piece);
    EXPECT_THAT(
        hung.why(hung.quotes[0]).says.first().toStdString(), HasSubstr("because you pinned it"));
}

TEST(WhyJob, SaysWhomAPieceBelongsWith)
{
    Hung hung;
    for (const PieceId id : {hung.photos[1], hung.quotes[0]}) {
        Piece piece = *hung.book.pieces.find(id);
        piece.group = 3;
        hung.book.pieces.put(piece);
    }
    EXPECT_THAT(hung.why(hung.photos[1]).says.first().toStdString(),
        HasSubstr("belongs with what Ada said"));
    EXPECT_THAT(hung.why(hung.title).says.first().toStdString(), HasSubstr("begins with it"));
}

TEST(WhyJob, SaysHowMuchOfAPhotoIsCroppedAndWhichOneLeads)
{
    Hung hung;
    // 4 : 3 shown as 3 : 2 keeps 8/9 of the height, by default around the middle.
    const QString all = hung.why(hung.photos[0]).says.join(QLatin1Char(' '));
    EXPECT_THAT(all.toStdString(),
        HasSubstr("The photo \u201cTen o'clock\u201d is 6 % cropped at the top and 6 % cropped at "
                  "the foot."));
    EXPECT_THAT(all.toStdString(), HasSubstr("largest picture, 3.6 times the next"));
}

TEST(WhyJob, ComparesThePanelWithTheNextBest)
{
    Hung hung;
    const QString first = hung.why().says.first();
    EXPECT_THAT(first.toStdString(), HasSubstr("next best arrangement"));
}

TEST(WhyJob, DoesNotKnowAPieceWithoutAPlace)
{
    Hung hung;
    hung.set(hung.quotes[1], {}, {});
    const auto out = WhyJob{hung.panelOf(hung.display).id, hung.quotes[1]}.run(hung.book, hung.run);
    ASSERT_FALSE(out.ok());
    EXPECT_EQ(out.error().code, ErrorCode::NotFound);
}

TEST(AlternativesJob, OffersOtherPlacesForTheSamePieces)
{
    Hung hung;
    const auto out = AlternativesJob{hung.panelOf(hung.display).id}.run(hung.book, hung.run);
    ASSERT_TRUE(out.ok());
    ASSERT_FALSE(out->ways.empty());
    EXPECT_EQ(out->says.isEmpty(), out->ways.size() == 3);
    for (const OtherWay& way : out->ways) {
        EXPECT_LE(way.costRatio, 1.3);
        EXPECT_EQ(way.drawn.cleared.pieces().size(), 5U);
        bool moved = false;
        for (const ClearedPiece& piece : way.drawn.cleared.pieces())
            moved = moved || piece.cell != hung.book.pieces.find(piece.id)->cell;
        EXPECT_TRUE(moved);
    }
}

TEST(AlternativesJob, LeavesPinnedPiecesWhereTheyAre)
{
    Hung hung;
    Piece piece = *hung.book.pieces.find(hung.photos[0]);
    piece.pinned = true;
    hung.book.pieces.put(piece);
    const auto out = AlternativesJob{hung.panelOf(hung.display).id}.run(hung.book, hung.run);
    ASSERT_TRUE(out.ok());
    for (const OtherWay& way : out->ways)
        for (const ClearedPiece& one : way.drawn.cleared.pieces())
            if (one.id == piece.id) {
                EXPECT_EQ(one.cell, piece.cell);
            }
}

TEST(AlternativesJob, StopsWhenToldTo)
{
    Hung hung;
    const std::atomic<bool> stop = true;
    hung.run.cancel = &stop;
    const auto out = AlternativesJob{hung.panelOf(hung.display).id}.run(hung.book, hung.run);
    ASSERT_FALSE(out.ok());
    EXPECT_EQ(out.error().code, ErrorCode::Cancelled);
}

} // namespace
} // namespace wainscot
