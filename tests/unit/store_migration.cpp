// Books of earlier versions come up to date; those of later ones stay closed.
#include "core/store/book_store.h"

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
    QFile file(QStringLiteral(WAINSCOT_TEST_DATA "/store/") + name);
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
