// Gathering pictures with what photos.csv says about them.
#include "app/jobs/gather.h"
#include "core/store/book_store.h"
#include "core/store/originals.h"
#include "tests/support/book_equality.h"
#include "tests/support/media_pictures.h"
#include "tests/support/scan_files.h"

#include <QDir>
#include <QImage>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace wainscot {
namespace {

using ::testing::AllOf;
using ::testing::Contains;
using ::testing::HasSubstr;

class GatheringPictures : public ::testing::Test {
protected:
    void SetUp() override
    {
        auto made = BookStore::create(
            m_folder.filePath(QStringLiteral("book")), {QStringLiteral("Sparrows"), {}});
        ASSERT_TRUE(made.ok());
        m_store = std::move(made).value();
        EditBuilder edit(m_store->book(), QStringLiteral("class"));
        for (const char* name : {"Mei Lin", "Kwame"}) {
            Child child;
            child.id = edit.newId<Child>();
            child.name = QString::fromUtf8(name);
            edit.put(child);
        }
        ASSERT_TRUE(m_store->history().perform(edit.take()).ok());
        ASSERT_TRUE(QDir(m_folder.path()).mkdir(QStringLiteral("pictures")));
    }

    void picture(const QString& name, QRgb colour, const char* format = "PNG")
    {
        QImage image(60, 40, QImage::Format_RGB32);
        image.fill(colour);
        ASSERT_TRUE(image.save(m_folder.filePath(QStringLiteral("pictures/") + name), format));
    }

    void write(const QString& name, const QByteArray& bytes)
    {
        QFile file(m_folder.filePath(QStringLiteral("pictures/") + name));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(bytes);
    }

    Result<GatherOutcome> gather()
    {
        const GatherPhotosJob job{m_folder.filePath(QStringLiteral("pictures")),
            QStringLiteral("The puddle"),
            m_store->picturesFolder(),
            std::nullopt};
        auto outcome = job.run(m_store->book(), {});
        if (outcome) {
            EXPECT_TRUE(m_store->history().perform(outcome->edit).ok());
        }
        return outcome;
    }

    const Picture* taken(const char* name) const
    {
        for (const auto& [id, picture] : m_store->book().pictures.rows()) {
            if (picture.fileName == QString::fromUtf8(name))
                return &picture;
        }
        return nullptr;
    }

    static std::vector<std::string> reasons(const GatherOutcome& outcome)
    {
        std::vector<std::string> all;
        for (const SkippedRow& row : outcome.skipped)
            all.push_back(row.why.toStdString());
        return all;
    }

    QTemporaryDir m_folder;
    std::unique_ptr<BookStore> m_store;
};

TEST_F(GatheringPictures, KeepsOriginalsUntouchedUnderTheirHash)
{
    picture(QStringLiteral("a.png"), 0xff336699);
    QFile file(m_folder.filePath(QStringLiteral("pictures/a.png")));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QByteArray original = file.readAll();
    ASSERT_TRUE(gather().ok());
    ASSERT_NE(taken("a.png"), nullptr);
    QFile kept(m_store->originalPath(taken("a.png")->sha256));
    ASSERT_TRUE(kept.open(QIODevice::ReadOnly));
    EXPECT_EQ(kept.readAll(), original);
}

TEST_F(GatheringPictures, TakesWhatTheListSays)
{
    picture(QStringLiteral("a.png"), 0xff111111);
    picture(QStringLiteral("b.png"), 0xff222222);
    picture(QStringLiteral("c.png"), 0xff333333);
    picture(QStringLiteral("d.png"), 0xff444444);
    write(QStringLiteral("photos.csv"),
        "file,caption,children,kind,by\n"
        "A.PNG,The first line.,Mei; Kwame,photo,L. Brandt\n"
        "b.png,,none,work,\n"
        "c.png,,,,\n");
    ASSERT_TRUE(gather().ok());
    EXPECT_EQ(taken("a.png")->caption, QStringLiteral("The first line."));
    EXPECT_EQ(taken("a.png")->people.children.size(), 2U);
    EXPECT_TRUE(taken("a.png")->people.lookedAt);
    EXPECT_EQ(taken("b.png")->kind, PictureKind::Work);
    EXPECT_TRUE(taken("b.png")->people.lookedAt);
    EXPECT_TRUE(taken("b.png")->people.children.empty());
    EXPECT_FALSE(taken("c.png")->people.lookedAt); // blank
    EXPECT_FALSE(taken("d.png")->people.lookedAt); // not in the list
}

TEST_F(GatheringPictures, ClearsNobodyWhereANameIsUnknown)
{
    picture(QStringLiteral("a.png"), 0xff111111);
    write(QStringLiteral("photos.csv"), "file,children\na.png,Mei;Ghost\nz.png,none\n");
    const auto outcome = gather();
    ASSERT_TRUE(outcome.ok());
    EXPECT_FALSE(taken("a.png")->people.lookedAt);
    EXPECT_THAT(reasons(*outcome),
        Contains(AllOf(HasSubstr("photos.csv, row 2"), HasSubstr("Ghost"), HasSubstr("a.png"))));
    EXPECT_THAT(reasons(*outcome), Contains(AllOf(HasSubstr("row 3"), HasSubstr("z.png"))));
}

TEST_F(GatheringPictures, TakesTheSamePictureOnce)
{
    picture(QStringLiteral("a.png"), 0xff111111);
    picture(QStringLiteral("again.png"), 0xff111111);
    const auto first = gather();
    ASSERT_TRUE(first.ok());
    EXPECT_EQ(first->added, 1);
    EXPECT_THAT(reasons(*first), Contains(AllOf(HasSubstr("again.png"), HasSubstr("a.png"))));
    const Book before = m_store->book();
    const auto second = gather();
    ASSERT_TRUE(second.ok());
    EXPECT_EQ(second->added, 0);
    EXPECT_TRUE(sameBook(before, m_store->book()));
}

TEST_F(GatheringPictures, GoesOnPastABadFile)
{
    picture(QStringLiteral("good.png"), 0xff111111);
    write(QStringLiteral("empty.jpg"), {});
    write(QStringLiteral("text.jpg"), "this is no picture");
    const auto outcome = gather();
    ASSERT_TRUE(outcome.ok());
    EXPECT_EQ(outcome->added, 1);
    EXPECT_THAT(reasons(*outcome), Contains(HasSubstr("empty.jpg")));
    EXPECT_THAT(reasons(*outcome), Contains(HasSubstr("text.jpg")));
}

TEST_F(GatheringPictures, TakesThePagesOfAPileWithWhatTheListSays)
{
    picture(QStringLiteral("a.png"), qRgb(1, 200, 3));
    write(QStringLiteral("pile.PDF"),
        test::pdfOf(
            {test::cornersPage({300, 200}), test::cornersPage({90, 90}), test::blankPage()}));
    write(QStringLiteral("torn.pdf"), "%PDF-1.4 and no more");
    write(QStringLiteral("photos.csv"),
        "file,children,kind\npile.pdf,Mei Lin,work\n\"Pile, page 2\",Kwame,work\n");
    const auto outcome = gather();
    ASSERT_TRUE(outcome.ok()) << outcome.error().detail.toStdString();
    EXPECT_EQ(outcome->added, 3);
    EXPECT_THAT(reasons(*outcome),
        ::testing::ElementsAre("pile.PDF, page 3, is blank and was left out.",
            "torn.pdf is damaged: the PDF breaks off or was changed."));
    const Picture* first = taken("pile, page 1");
    const Picture* second = taken("pile, page 2");
    ASSERT_TRUE(first != nullptr && second != nullptr);
    EXPECT_EQ(first->kind, PictureKind::Work);
    const auto nameOf = [&](const Picture& picture) {
        return m_store->book().children.find(picture.people.children.at(0))->name;
    };
    EXPECT_EQ(nameOf(*first), QStringLiteral("Mei Lin"));
    EXPECT_EQ(nameOf(*second), QStringLiteral("Kwame"));
    EXPECT_TRUE(QFile::exists(Originals(m_store->picturesFolder()).pathOf(second->sha256)));
}

TEST_F(GatheringPictures, TellsOfDamageInWhatItTakes)
{
    const QByteArray whole = test::jpegOf(test::noisePhoto(600, 400, 5));
    write(QStringLiteral("rain.jpg"), whole.first(whole.size() / 2));
    const auto outcome = gather();
    ASSERT_TRUE(outcome.ok());
    EXPECT_EQ(outcome->added, 1);
    EXPECT_EQ(outcome->remarks.size(), 1);
    const auto again = gather();
    ASSERT_TRUE(again.ok());
    EXPECT_TRUE(again->remarks.isEmpty()) << "told once";
}

TEST_F(GatheringPictures, TakesASingleFile)
{
    write(QStringLiteral("pile.pdf"), test::pdfOf({test::cornersPage({300, 200})}));
    const GatherPhotosJob job{m_folder.filePath(QStringLiteral("pictures/pile.pdf")),
        QStringLiteral("The puddle"),
        m_store->picturesFolder(),
        std::nullopt};
    const auto outcome = job.run(m_store->book(), {});
    ASSERT_TRUE(outcome.ok());
    EXPECT_EQ(outcome->added, 1);
}

TEST_F(GatheringPictures, RefusesAListWithoutFilesAndAFolderThatIsNotThere)
{
    picture(QStringLiteral("a.png"), 0xff111111);
    write(QStringLiteral("photos.csv"), "picture,children\na.png,none\n");
    const Book before = m_store->book();
    const auto noColumn = gather();
    ASSERT_FALSE(noColumn.ok());
    EXPECT_EQ(noColumn.error().code, ErrorCode::WrongUse);
    const GatherPhotosJob job{m_folder.filePath(QStringLiteral("nowhere")),
        QStringLiteral("The puddle"),
        m_store->picturesFolder(),
        std::nullopt};
    const auto noFolder = job.run(m_store->book(), {});
    ASSERT_FALSE(noFolder.ok());
    EXPECT_EQ(noFolder.error().code, ErrorCode::NotFound);
    EXPECT_TRUE(sameBook(before, m_store->book()));
}

} // namespace
} // namespace wainscot
