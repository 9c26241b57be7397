// What a book remembers of files made of it: what is in them by numbers, and no folder.
#include "core/store/book_data.h"
#include "core/store/book_store.h"
#include "core/store/made_files.h"
#include "tests/support/book_equality.h"
#include "tests/support/packed_book.h"

#include <QFile>

#include <gmock/gmock.h>

namespace wainscot {

namespace {

using ::testing::ElementsAre;

MadeFile termFile()
{
    MadeFile made;
    made.kind = MadeFileKind::TermFile;
    made.name = QStringLiteral("autumn.pdf");
    made.on = QDate(2026, 12, 18);
    made.audience = Audience::Families;
    made.displays = {DisplayId(2)};
    made.experiences = {ExperienceId(1)};
    made.words = {QuoteId(3), QuoteId(5)};
    made.pictures = {PictureId(9)};
    made.named = {ChildId(7)};
    return made;
}

class MadeFiles : public BookToPack {
protected:
    void reopen()
    {
        m_store.reset();
        auto opened = BookStore::open(at("book"));
        ASSERT_TRUE(opened.ok()) << opened.error().detail.toStdString();
        m_store = std::move(*opened);
    }
    Result<> remember(const MadeFile& made) { return rememberMadeFile(at("book"), made); }
    [[nodiscard]] std::vector<MadeFile> known() const
    {
        const auto made = madeFilesOf(at("book"));
        EXPECT_TRUE(made.ok());
        return made ? *made : std::vector<MadeFile>();
    }
};

TEST_F(MadeFiles, AreRememberedWithAllTheyHold)
{
    EXPECT_TRUE(known().empty());
    MadeFile pack;
    pack.kind = MadeFileKind::PackedBook;
    pack.name = QStringLiteral("class.zip");
    pack.on = QDate(2026, 12, 19);
    ASSERT_TRUE(remember(termFile()).ok());
    ASSERT_TRUE(remember(pack).ok());
    reopen();
    EXPECT_THAT(known(), ElementsAre(termFile(), pack));
}

TEST_F(MadeFiles, MadeAnewAreTheSameFile)
{
    ASSERT_TRUE(remember(termFile()).ok());
    MadeFile anew = termFile();
    anew.on = QDate(2027, 1, 8);
    anew.words = {QuoteId(3)};
    ASSERT_TRUE(remember(anew).ok());
    MadeFile forOthers = termFile();
    forOthers.audience = Audience::Public;
    ASSERT_TRUE(remember(forOthers).ok());
    EXPECT_THAT(known(), ElementsAre(anew, forOthers));
}

// Some sheets were printed again; the others are still about.
TEST_F(MadeFiles, PrintedInPartJoinWhatWasPrintedBefore)
{
    MadeFile printed = termFile();
    printed.kind = MadeFileKind::PrintedPanels;
    ASSERT_TRUE(remember(printed).ok());
    MadeFile again = printed;
    again.on = QDate(2027, 1, 8);
    again.words = {QuoteId(11)};
    again.named = {};
    ASSERT_TRUE(rememberMadeFile(at("book"), again, Earlier::Joined).ok());
    MadeFile both = printed;
    both.on = again.on;
    both.words = {QuoteId(3), QuoteId(5), QuoteId(11)};
    EXPECT_THAT(known(), ElementsAre(both));
    ASSERT_TRUE(remember(again).ok());
    EXPECT_THAT(known(), ElementsAre(again)) << "all printed anew";
}

TEST_F(MadeFiles, HaveANameForEveryKind)
{
    for (const MadeFileKind kind : {MadeFileKind::Panels,
             MadeFileKind::PanelPictures,
             MadeFileKind::TermFile,
             MadeFileKind::PackedBook,
             MadeFileKind::Data,
             MadeFileKind::AnswerSheets,
             MadeFileKind::PrintedPanels,
             MadeFileKind::PrintedAnswerSheets,
             MadeFileKind::PrintedHangingList}) {
        EXPECT_FALSE(nameOf(kind).isEmpty());
        EXPECT_EQ(madeFileKindFromName(nameOf(kind)), kind);
    }
}

// The file stays where it is, whatever is undone; and no step is added that could be.
TEST_F(MadeFiles, AreNoStepOfUndo)
{
    const bool could = m_store->history().canUndo();
    const Book before = m_store->book();
    ASSERT_TRUE(remember(termFile()).ok());
    EXPECT_EQ(m_store->history().canUndo(), could);
    EXPECT_TRUE(sameBook(m_store->book(), before));
}

// The book is open all the while, as in a window; this is another program.
TEST_F(MadeFiles, AreRememberedWhileTheBookIsOpenAndChanged)
{
    EditBuilder edit(m_store->book(), QStringLiteral("Add"));
    Child child;
    child.id = edit.newId<Child>();
    child.name = QStringLiteral("Ada Marsh");
    edit.put(child);
    ASSERT_TRUE(remember(termFile()).ok());
    ASSERT_TRUE(m_store->history().perform(edit.take()).ok());
    EXPECT_THAT(known(), ElementsAre(termFile()));
    const Book before = m_store->book();
    reopen();
    EXPECT_TRUE(sameBook(m_store->book(), before));
    EXPECT_TRUE(m_store->verify()->ok());
}

TEST_F(MadeFiles, AreNotFoundWhereThereIsNoBook)
{
    EXPECT_EQ(madeFilesOf(at("nowhere")).error().code, ErrorCode::NotFound);
    EXPECT_EQ(rememberMadeFile(at("nowhere"), termFile()).error().code, ErrorCode::NotFound);
    EXPECT_FALSE(QFile::exists(at("nowhere")));
}

TEST_F(MadeFiles, TellNothingOfAnErasedChild)
{
    EditBuilder add(m_store->book(), {});
    Child child;
    child.id = add.newId<Child>();
    child.name = QStringLiteral("Zephyrine Quillfeather");
    add.put(child);
    ASSERT_TRUE(m_store->history().perform(add.take()).ok());
    MadeFile telling = termFile();
    telling.name = QStringLiteral("for_zephyrine.pdf");
    ASSERT_TRUE(remember(telling).ok());
    ASSERT_TRUE(remember(termFile()).ok());
    EditBuilder erase(m_store->book(), {});
    erase.remove<Child>(child.id);
    ASSERT_TRUE(m_store->eraseForever(erase.take()).ok());
    telling.name = QString();
    EXPECT_THAT(known(), ElementsAre(telling, termFile()));
    QFile file(at("book") + QStringLiteral("/book.wainscot"));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_FALSE(file.readAll().toLower().contains("zephyrine"));
}

TEST_F(MadeFiles, GoAlongWithDataAndComeBack)
{
    ASSERT_TRUE(remember(termFile()).ok());
    ASSERT_TRUE(takeDataOut(*m_store, at("data")).ok());
    ASSERT_TRUE(bringDataIn(at("data"), at("again"), DataForm::Csv).ok());
    EXPECT_THAT(*madeFilesOf(at("again")), ElementsAre(termFile()));
}

TEST_F(MadeFiles, StandBesideTheDayTheBookIsKeptUntil)
{
    EXPECT_EQ(*keptUntil(at("book")), std::nullopt);
    const QDate day(2027, 7, 31);
    ASSERT_TRUE(keepUntil(at("book"), day).ok());
    EditBuilder edit(m_store->book(), QStringLiteral("Name"));
    edit.setInfo({QStringLiteral("Sparrows"), QStringLiteral("en")});
    ASSERT_TRUE(m_store->history().perform(edit.take()).ok());
    reopen();
    EXPECT_EQ(*keptUntil(at("book")), day) << "another title changes no day";
    ASSERT_TRUE(keepUntil(at("book"), std::nullopt).ok());
    EXPECT_EQ(*keptUntil(at("book")), std::nullopt);
}

} // namespace

} // namespace wainscot
