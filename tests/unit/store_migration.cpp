// Books of earlier versions come up to date; those of later ones stay closed.
#include "core/model/wall_photo.h"
#include "core/store/book_store.h"
#include "core/store/made_files.h"
#include "tests/support/places.h"

#include <QFile>
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace wainscot {

namespace {

const QLatin1String kConnection("by hand");

// Works on a book's file past the program.
void byHand(const QString& file, const QStringList& statements)
{
    {
        QSqlDatabase db = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), kConnection);
        db.setDatabaseName(file);
        ASSERT_TRUE(db.open());
        for (const QString& statement : statements) {
            if (statement.trimmed().isEmpty())
                continue;
            QSqlQuery query(db);
            ASSERT_TRUE(query.exec(statement)) << query.lastError().text().toStdString();
        }
        db.close();
    }
    QSqlDatabase::removeDatabase(kConnection);
}

QStringList statementsOf(const QString& name)
{
    QFile file(testData("store/") + name);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return QString::fromUtf8(file.readAll()).split(QStringLiteral(";\n"), Qt::SkipEmptyParts);
}

class EarlierBook : public ::testing::Test {
protected:
    [[nodiscard]] QString file() const { return m_place.filePath(QStringLiteral("book.wainscot")); }
    QTemporaryDir m_place;
};

TEST_F(EarlierBook, OfVersion1OpensWithAllItHolds)
{
    byHand(file(), statementsOf(QStringLiteral("book_v1.sql")));
    auto store = BookStore::open(file());
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    const Book& book = (*store)->book();
    EXPECT_EQ(book.info.title, QStringLiteral("Otters 2024"));
    ASSERT_EQ(book.children.size(), 2U);
    EXPECT_TRUE(
        book.children.find(ChildId(7))->permissions.allows(Permission::Photo, Audience::Classroom));
    EXPECT_EQ(book.promptSets.find(PromptSetId(1))->prompts.size(), 1U);
    EXPECT_EQ(book.quotes.find(QuoteId(3))->words, QStringLiteral("it is all wobly"));
    EXPECT_EQ(book.groups.find(GroupId(1))->quotes, std::vector{QuoteId(3)});
    EXPECT_EQ(book.children.lastNumber(), 7);
}

TEST_F(EarlierBook, OfVersion1IsFullyUpToDateAfterwards)
{
    byHand(file(), statementsOf(QStringLiteral("book_v1.sql")));
    ASSERT_TRUE(BookStore::open(file()).ok());
    auto store = BookStore::open(file(), Access::ReadOnly);
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    EXPECT_EQ((*store)->book().children.size(), 2U);
}

TEST_F(EarlierBook, OfVersion2KeepsItsWallsAndGetsRoomForMore)
{
    byHand(file(), statementsOf(QStringLiteral("book_v2.sql")));
    {
        auto store = BookStore::open(file());
        ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
        const Book& book = (*store)->book();
        EXPECT_EQ(book.displays.find(DisplayId(1))->voiceStep, 0);
        EXPECT_EQ(book.displays.find(DisplayId(1))->plan, QStringLiteral("days"));
        EXPECT_EQ(book.pieces.find(PieceId(5))->secondLanguage, QString());
        EXPECT_EQ(book.pieces.find(PieceId(5))->framing.zoom, 1.5);
        EXPECT_EQ(book.experiences.find(ExperienceId(1))->invitation, QString());
        EditBuilder edit((*store)->book(), QStringLiteral("Keep this as a template"));
        PanelTemplate made;
        made.id = edit.newId<PanelTemplate>();
        made.name = QStringLiteral("Morning wall");
        made.places = {{PieceKind::Title, 0, 0, 4, 0.2}};
        edit.put(made);
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
    }
    const auto store = BookStore::open(file(), Access::ReadOnly);
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    const PanelTemplate* kept = templateByName((*store)->book(), QStringLiteral("morning WALL"));
    ASSERT_NE(kept, nullptr);
    EXPECT_EQ(kept->places.size(), 1U);
}

TEST_F(EarlierBook, OfVersion3OpensWithItsPicturesUntreated)
{
    byHand(file(), statementsOf(QStringLiteral("book_v3.sql")));
    auto store = BookStore::open(file());
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    const Book& book = (*store)->book();
    const Picture* picture = book.pictures.find(PictureId(4));
    ASSERT_NE(picture, nullptr);
    EXPECT_TRUE(picture->treatment.isNothing());
    EXPECT_EQ(picture->mustStay, (RectFraction{0.1, 0.2, 0.5, 0.5}));
    const Piece* piece = book.pieces.find(PieceId(9));
    ASSERT_NE(piece, nullptr);
    EXPECT_EQ(piece->cell, (RectMm{Mm(33), Mm(33), Mm(180), Mm(60)}));
    EXPECT_TRUE(piece->shownWords.isEmpty());
    EXPECT_TRUE(piece->pairing.isEmpty());
    EXPECT_EQ(book.displays.find(DisplayId(2))->palette, QStringLiteral("Rowan"));
}

TEST_F(EarlierBook, OfVersion1HasWallsWithoutWishes)
{
    QStringList statements = statementsOf(QStringLiteral("book_v1.sql"));
    statements << QStringLiteral("INSERT INTO displays VALUES (1, NULL, 'Hall', 'classroom', 841, "
                                 "594, 1500, 'Schoolroom', 'Wet Slate', 'days', 'en')")
               << QStringLiteral("INSERT INTO panels VALUES (2, 1, 1)")
               << QStringLiteral("INSERT INTO pieces VALUES (3, 2, 'title', NULL, NULL, '', "
                                 "'Puddles', '', 0, 1, 0, 33, 33, 200, 60, 0, 0, 0, 0, 1, .5, .5, "
                                 "1)");
    byHand(file(), statements);
    auto store = BookStore::open(file());
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    const Book& book = (*store)->book();
    EXPECT_FALSE(book.panels.find(PanelId(2))->locked);
    const Piece& title = *book.pieces.find(PieceId(3));
    EXPECT_TRUE(title.pinned);
    EXPECT_EQ(title.size, 0);
    EXPECT_EQ(title.together, 0);
    EXPECT_FALSE(title.startsPanel);
}

TEST_F(EarlierBook, OfVersion4HasPicturesThatWereNotYetLookedAtSmall)
{
    byHand(file(), statementsOf(QStringLiteral("book_v4.sql")));
    {
        auto store = BookStore::open(file());
        ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
        const Picture* picture = (*store)->book().pictures.find(PictureId(4));
        ASSERT_NE(picture, nullptr);
        EXPECT_FALSE(picture->look.has_value());
        EXPECT_EQ(picture->stars, 1);
        Picture seen = *picture;
        seen.look = PictureLook{0xf00000000000000fU, 812, 120, 3, 41};
        EditBuilder edit((*store)->book(), QStringLiteral("Look"));
        edit.put(seen);
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
    }
    const auto store = BookStore::open(file(), Access::ReadOnly);
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    const auto look = (*store)->book().pictures.find(PictureId(4))->look;
    ASSERT_TRUE(look.has_value());
    EXPECT_EQ(*look, (PictureLook{0xf00000000000000fU, 812, 120, 3, 41}));
}

TEST_F(EarlierBook, OfVersion5KeepsWhatATeacherAskedOfAnArrangement)
{
    byHand(file(), statementsOf(QStringLiteral("book_v5.sql")));
    const auto store = BookStore::open(file());
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    const Book& book = (*store)->book();
    EXPECT_TRUE(book.panels.find(PanelId(5))->locked);
    const Piece& piece = *book.pieces.find(PieceId(9));
    EXPECT_EQ(piece.size, 2);
    EXPECT_EQ(piece.together, 1);
    EXPECT_TRUE(piece.startsPanel);
    EXPECT_FALSE(book.pictures.find(PictureId(4))->look.has_value());
    EXPECT_TRUE((*store)->verify().ok());
}

TEST_F(EarlierBook, OfVersion6HasRoomForHowWordsCameAboutAndForMeetings)
{
    byHand(file(), statementsOf(QStringLiteral("book_v6.sql")));
    {
        auto store = BookStore::open(file());
        ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
        const Book& book = (*store)->book();
        const Quote& quote = *book.quotes.find(QuoteId(3));
        EXPECT_EQ(quote.firstWords, QString());
        EXPECT_FALSE(quote.repliesTo.isValid());
        EXPECT_FALSE(book.groups.find(GroupId(1))->keptByHand);
        const Meeting& meeting = *book.meetings.find(MeetingId(2));
        EXPECT_TRUE(meeting.done) << "until now only meetings that were held could be kept";
        EXPECT_EQ(meeting.groups, std::vector{GroupId(1)});
        EXPECT_EQ(book.promptSets.find(PromptSetId(1))->asked, Asked::Children);
        EditBuilder edit(book, QStringLiteral("Carry on"));
        Meeting more = meeting;
        more.readOut = {quote.id};
        more.carriedOver = {GroupId(1)};
        more.happened = {
            {MeetingNoteKind::ChangedMind, QStringLiteral("It melts."), GroupId(1), ChildId(7)}};
        edit.put(more);
        PromptSet set = *book.promptSets.find(PromptSetId(1));
        set.prompts.front().others = {
            {QStringLiteral("pt"), QStringLiteral("O que \u00e9 que tu notas?")}};
        edit.put(set);
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
    }
    const auto store = BookStore::open(file(), Access::ReadOnly);
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    const Meeting& kept = *(*store)->book().meetings.find(MeetingId(2));
    EXPECT_EQ(kept.readOut, std::vector{QuoteId(3)});
    ASSERT_EQ(kept.happened.size(), 1U);
    EXPECT_EQ(kept.happened.front().child, ChildId(7));
    const PromptSet& set = *(*store)->book().promptSets.find(PromptSetId(1));
    EXPECT_EQ(set.prompts.front().textIn(QStringLiteral("PT")),
        QStringLiteral("O que \u00e9 que tu notas?"));
    EXPECT_EQ(
        set.prompts.front().textIn(QStringLiteral("de")), QStringLiteral("What do you notice?"));
}

TEST_F(EarlierBook, OfVersion7KeepsItsMeetingsAndWhatFamiliesSaid)
{
    byHand(file(), statementsOf(QStringLiteral("book_v7.sql")));
    {
        auto store = BookStore::open(file());
        ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    }
    const auto store = BookStore::open(file(), Access::ReadOnly);
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    const Book& book = (*store)->book();
    const PermissionRecord& said = *book.permissionRecords.find(PermissionRecordId(1));
    EXPECT_EQ(said.by, QStringLiteral("her father"));
    EXPECT_EQ(said.answer(Permission::Words), FamilyAnswer::Yes);
    EXPECT_EQ(said.answer(Permission::Photo), FamilyAnswer::No);
    EXPECT_EQ(book.noAnswers.find(NoAnswerId(2))->child, ChildId(7));
    const Meeting& meeting = *book.meetings.find(MeetingId(2));
    ASSERT_EQ(meeting.happened.size(), 1U);
    EXPECT_EQ(meeting.happened.front().text, QStringLiteral("Ice is water that waits."));
    EXPECT_EQ(
        book.reflections.find(ReflectionId(4))->answer, QStringLiteral("Those who had to wait."));
    EXPECT_EQ(book.quotes.find(QuoteId(3))->goals, std::vector{GoalId(5)});
    EXPECT_TRUE(book.walls.isEmpty());
}

TEST_F(EarlierBook, OfVersion8KeepsItsWallAndGetsRoomForPairs)
{
    byHand(file(), statementsOf(QStringLiteral("book_v8.sql")));
    KeptPair pair;
    {
        auto store = BookStore::open(file());
        ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
        const Book& book = (*store)->book();
        EXPECT_TRUE(book.keptPairs.isEmpty());
        ASSERT_EQ(book.walls.size(), 1U);
        EXPECT_EQ(book.walls.rows().begin()->second.name, QStringLiteral("By the door"));
        EditBuilder edit(book, QStringLiteral("Keep apart"));
        Quote more = *book.quotes.find(QuoteId(3));
        more.id = edit.newId<Quote>();
        edit.put(more);
        pair = {edit.newId<KeptPair>(), more.id, QuoteId(3), true};
        edit.put(pair);
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
    }
    const auto store = BookStore::open(file(), Access::ReadOnly);
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    ASSERT_EQ((*store)->book().keptPairs.size(), 1U);
    EXPECT_EQ(*(*store)->book().keptPairs.find(pair.id), pair);
}

TEST_F(EarlierBook, OfVersion8KeepsItsWallAndCanRememberFiles)
{
    byHand(file(), statementsOf(QStringLiteral("book_v8.sql")));
    EXPECT_EQ(madeFilesOf(file()).error().code, ErrorCode::CannotRead) << "not yet up to date";
    MadeFile made;
    made.name = QStringLiteral("hall.pdf");
    made.on = QDate(2026, 11, 29);
    made.audience = Audience::Building;
    {
        auto store = BookStore::open(file());
        ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
        EXPECT_TRUE(madeFilesOf(file())->empty());
        ASSERT_TRUE(rememberMadeFile(file(), made).ok());
    }
    const auto store = BookStore::open(file(), Access::ReadOnly);
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    EXPECT_EQ((*store)->book().walls.rows().begin()->second.name, QStringLiteral("By the door"));
    EXPECT_EQ(*madeFilesOf(file()), std::vector{made});
}

TEST_F(EarlierBook, OfVersion1HasNoWallAndCanKeepOneAndAReason)
{
    QStringList statements = statementsOf(QStringLiteral("book_v1.sql"));
    statements << QStringLiteral("INSERT INTO displays VALUES (1, NULL, 'Hall', 'classroom', 841, "
                                 "594, 1500, 'Schoolroom', 'Wet Slate', 'days', 'en')")
               << QStringLiteral("INSERT INTO panels VALUES (2, 1, 1)");
    byHand(file(), statements);
    Wall wall;
    {
        auto store = BookStore::open(file());
        ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
        const Book& book = (*store)->book();
        EXPECT_TRUE(book.walls.isEmpty());
        Panel panel = *book.panels.find(PanelId(2));
        EXPECT_TRUE(panel.left.empty());
        panel.left = {{QStringLiteral("panel.ink"), {}, QStringLiteral("It is night.")}};
        EditBuilder edit(book, QStringLiteral("Measure"));
        wall.id = edit.newId<Wall>();
        wall.name = QStringLiteral("By the door");
        wall.fittings = {{FittingKind::Door, usualPlace(FittingKind::Door, wall.size)}};
        wall.panels = {{panel.id, {Mm(1850), Mm(1400)}}};
        edit.put(wall);
        edit.put(panel);
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
    }
    const auto store = BookStore::open(file(), Access::ReadOnly);
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    ASSERT_NE((*store)->book().walls.find(wall.id), nullptr);
    EXPECT_EQ(*(*store)->book().walls.find(wall.id), wall);
    ASSERT_EQ((*store)->book().panels.find(PanelId(2))->left.size(), 1U);
    EXPECT_EQ(
        (*store)->book().panels.find(PanelId(2))->left.front().why, QStringLiteral("It is night."));
}

TEST_F(EarlierBook, OfVersion8KeepsItsWallAndTakesAPhotoOfIt)
{
    byHand(file(), statementsOf(QStringLiteral("book_v8.sql")));
    Display display;
    {
        auto store = BookStore::open(file());
        ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
        const Book& book = (*store)->book();
        Picture photo = *book.pictures.find(PictureId(4));
        EXPECT_FALSE(photo.display.isValid());
        EXPECT_FALSE(photo.hungOn.has_value());
        EXPECT_EQ(book.walls.rows().begin()->second.name, QStringLiteral("By the door"));
        EditBuilder edit(book, QStringLiteral("Photograph the wall"));
        display.id = edit.newId<Display>();
        display.experience = photo.experience;
        edit.put(display);
        photo.id = edit.newId<Picture>();
        photo.display = display.id;
        photo.hungOn = QDate(2024, 10, 4);
        EXPECT_TRUE(photo.panelsLegible);
        photo.panelsLegible = false;
        edit.put(photo);
        ASSERT_TRUE((*store)->history().perform(edit.take()).ok());
    }
    const auto store = BookStore::open(file(), Access::ReadOnly);
    ASSERT_TRUE(store.ok()) << store.error().detail.toStdString();
    const auto photos = wallPhotosOf((*store)->book(), display.id);
    ASSERT_EQ(photos.size(), 1U);
    EXPECT_EQ(photos.front()->hungOn, QDate(2024, 10, 4));
    EXPECT_FALSE(photos.front()->panelsLegible);
    EXPECT_EQ(picturesOf((*store)->book(), display.experience).size(), 1U)
        << "a photo of the wall is nothing to put on a panel";
}

TEST_F(EarlierBook, CannotBeBroughtUpToDateWhileOnlyReading)
{
    byHand(file(), statementsOf(QStringLiteral("book_v1.sql")));
    const auto store = BookStore::open(file(), Access::ReadOnly);
    ASSERT_FALSE(store.ok());
    EXPECT_EQ(store.error().code, ErrorCode::CannotRead);
}

TEST_F(EarlierBook, OrRatherALaterOneStaysClosedAndUntouched)
{
    ASSERT_TRUE(BookStore::create(m_place.path(), {QStringLiteral("Later"), {}}).ok());
    byHand(file(), {QStringLiteral("PRAGMA user_version = 99")});
    QFile before(file());
    ASSERT_TRUE(before.open(QIODevice::ReadOnly));
    const QByteArray bytes = before.readAll();
    const auto store = BookStore::open(file());
    ASSERT_FALSE(store.ok());
    EXPECT_EQ(store.error().code, ErrorCode::TooNew);
    before.seek(0);
    EXPECT_EQ(before.readAll(), bytes);
}

TEST_F(EarlierBook, OfAnotherProgramIsNoBook)
{
    byHand(file(), {QStringLiteral("CREATE TABLE recipes (name TEXT)")});
    const auto store = BookStore::open(file());
    ASSERT_FALSE(store.ok());
    EXPECT_EQ(store.error().code, ErrorCode::Damaged);
    EXPECT_EQ(store.error().detail, QStringLiteral("it is not a book of this program"));
}

TEST_F(EarlierBook, WithARowThatMakesNoSenseSaysWhich)
{
    ASSERT_TRUE(BookStore::create(m_place.path(), {QStringLiteral("Odd"), {}}).ok());
    byHand(file(),
        {QStringLiteral("INSERT INTO displays VALUES (4, NULL, 'Hall', 'martians', 1, 1, 1, '', "
                        "'', '', '', 0)")});
    const auto store = BookStore::open(file());
    ASSERT_FALSE(store.ok());
    EXPECT_EQ(store.error().code, ErrorCode::Damaged);
    EXPECT_EQ(store.error().detail, QStringLiteral("row 4 of displays makes no sense"));
}

} // namespace

} // namespace wainscot
