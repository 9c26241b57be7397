// Single pictures come into the book whole, once, with who is in them.
#include "app/jobs/gather_files.h"

#include "core/model/wall_photo.h"
#include "core/store/originals.h"
#include "tests/support/class_book.h"
#include "tests/support/media_pictures.h"
#include "tests/support/scan_files.h"

#include <QFile>
#include <QImage>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace wainscot {
namespace {

class SingleFiles : public ::testing::Test {
protected:
    QString image(const char* name, int shade)
    {
        QImage drawn(60, 40, QImage::Format_RGB32);
        drawn.fill(qRgb(shade, 90, 40));
        const QString path = m_place.filePath(QString::fromLatin1(name));
        EXPECT_TRUE(drawn.save(path));
        return path;
    }
    GatherFilesJob job(const QStringList& files)
    {
        GatherFilesJob one;
        one.files = files;
        one.experience = made.experience;
        one.picturesFolder = m_place.filePath(QStringLiteral("pictures"));
        return one;
    }

    QTemporaryDir m_place;
    ClassBook made;
    ChildId ines = made.child("Ines Roth", Permissions::all());
};

TEST_F(SingleFiles, AreTakenOnceWithWhoIsInThem)
{
    const QString sheet = image("sheet.png", 10);
    GatherFilesJob first = job({sheet});
    first.kind = PictureKind::Work;
    first.people = {true, {ines}};
    const auto taken = first.run(made.book, JobRun());
    ASSERT_TRUE(taken.ok()) << taken.error().detail.toStdString();
    ASSERT_EQ(taken->pictures.size(), 1U);
    apply(taken->outcome.edit, made.book);
    const Picture& kept = *made.book.pictures.find(taken->pictures.front());
    EXPECT_EQ(kept.kind, PictureKind::Work);
    EXPECT_EQ(kept.people.children, std::vector{ines});
    EXPECT_EQ(kept.size, (SizePx{60, 40}));
    const auto again = job({sheet, sheet}).run(made.book, JobRun());
    ASSERT_TRUE(again.ok());
    EXPECT_TRUE(again->outcome.edit.isEmpty());
    EXPECT_EQ(again->pictures, (std::vector{kept.id, kept.id}));
}

TEST_F(SingleFiles, OfAWallBelongToItsDisplayAndItsDay)
{
    const DisplayId hall = made.display(Audience::Building);
    const QString file = image("wall.png", 20);
    GatherFilesJob photo = job({file});
    photo.experience = {};
    photo.ofWall = hall;
    photo.on = QDate(2025, 12, 4);
    const auto taken = photo.run(made.book, JobRun());
    ASSERT_TRUE(taken.ok()) << taken.error().detail.toStdString();
    apply(taken->outcome.edit, made.book);
    const auto photos = wallPhotosOf(made.book, hall);
    ASSERT_EQ(photos.size(), 1U);
    EXPECT_EQ(photos.front()->experience, made.experience);
    EXPECT_EQ(photos.front()->hungOn, QDate(2025, 12, 4));
    EXPECT_FALSE(photos.front()->people.lookedAt);
    EXPECT_TRUE(picturesOf(made.book, made.experience).empty());
    const auto again = photo.run(made.book, JobRun());
    ASSERT_TRUE(again.ok());
    EXPECT_TRUE(again->outcome.edit.isEmpty());
    Display lonely = made.at(hall);
    lonely.experience = {};
    made.book.displays.put(lonely);
    EXPECT_EQ(photo.run(made.book, JobRun()).error().code, ErrorCode::NotFound);
}

TEST_F(SingleFiles, ThatAreNoPicturesAreLeftOutWithTheReason)
{
    const QString path = m_place.filePath(QStringLiteral("list.txt"));
    QFile text(path);
    ASSERT_TRUE(text.open(QIODevice::WriteOnly));
    text.write("no picture");
    text.close();
    const auto taken = job({path, image("a.png", 1)}).run(made.book, JobRun());
    ASSERT_TRUE(taken.ok());
    EXPECT_EQ(taken->outcome.added, 1);
    ASSERT_EQ(taken->outcome.skipped.size(), 1U);
    EXPECT_TRUE(taken->outcome.skipped.front().why.startsWith(QStringLiteral("list.txt ")));
    apply(taken->outcome.edit, made.book);
    EXPECT_FALSE(made.book.pictures.rows().begin()->second.people.lookedAt);
}

TEST_F(SingleFiles, OfAScannedPileGiveAPictureForEachPageThatHasOne)
{
    const QString pile = test::writeFile(m_place.filePath(QStringLiteral("pile.pdf")),
        test::pdfOf({test::blankPage(),
                        test::cornersPage({300, 200}),
                        test::cornersPage({90, 90}),
                        test::cornersPage({300, 200})},
            "Wren Halloway"));
    QStringList told;
    JobRun run;
    run.onProgress = [&](const Progress& progress) {
        told << QStringLiteral("%1 %2/%3").arg(progress.doing).arg(progress.done).arg(progress.of);
    };
    const auto taken = job({image("a.png", 3), pile}).run(made.book, run);
    ASSERT_TRUE(taken.ok()) << taken.error().detail.toStdString();
    EXPECT_TRUE(told.contains(QStringLiteral("Reading pile.pdf 3/4")))
        << qPrintable(told.join(u','));
    EXPECT_EQ(taken->outcome.added, 3) << "the same drawing copied twice is one picture";
    ASSERT_EQ(taken->outcome.skipped.size(), 1U);
    EXPECT_EQ(taken->outcome.skipped.front().file, QStringLiteral("pile.pdf"));
    EXPECT_EQ(taken->outcome.skipped.front().why,
        QStringLiteral("pile.pdf, page 1, is blank and was left out."));
    ASSERT_EQ(taken->pictures.size(), 4U);
    EXPECT_EQ(taken->firsts, (std::vector{taken->pictures[0], taken->pictures[1]}));
    EXPECT_EQ(taken->pictures[1], taken->pictures[3]);
    apply(taken->outcome.edit, made.book);
    const Picture& page = *made.book.pictures.find(taken->pictures[1]);
    EXPECT_EQ(page.fileName, QStringLiteral("pile, page 2"));
    EXPECT_EQ(page.format, QStringLiteral("jpeg"));
    EXPECT_EQ(page.size, (SizePx{1041, 694}));
    EXPECT_FALSE(page.captured.has_value());
    EXPECT_FALSE(page.people.lookedAt);
    EXPECT_TRUE(page.look.has_value());
    EXPECT_FALSE(
        test::readFile(Originals(m_place.filePath(QStringLiteral("pictures"))).pathOf(page.sha256))
            .contains("Wren"));
    const auto again = job({pile}).run(made.book, JobRun());
    ASSERT_TRUE(again.ok());
    EXPECT_TRUE(again->outcome.edit.isEmpty()) << "the same pile twice adds nothing";
}

TEST_F(SingleFiles, OfOneChildAreNoPileOfOthers)
{
    const QString pile = test::writeFile(m_place.filePath(QStringLiteral("pile.pdf")),
        test::pdfOf({test::cornersPage({300, 200}), test::cornersPage({90, 90})}));
    GatherFilesJob sheet = job({pile});
    sheet.people = {true, {ines}};
    sheet.mostPages = 1;
    const auto taken = sheet.run(made.book, JobRun());
    ASSERT_TRUE(taken.ok());
    EXPECT_TRUE(taken->outcome.edit.isEmpty());
    ASSERT_EQ(taken->outcome.skipped.size(), 1U);
    EXPECT_EQ(taken->outcome.skipped.front().why,
        QStringLiteral("pile.pdf has 2 pages, and one is wanted here; add it where pictures are "
                       "gathered."));
}

TEST_F(SingleFiles, ThatCannotBeKeptEndTheWholePile)
{
    const QString pile = test::writeFile(m_place.filePath(QStringLiteral("pile.pdf")),
        test::pdfOf({test::cornersPage({300, 200}), test::cornersPage({90, 90})}));
    test::writeFile(m_place.filePath(QStringLiteral("pictures")), "a file in the way");
    const auto taken = job({pile}).run(made.book, JobRun());
    ASSERT_FALSE(taken.ok());
    EXPECT_EQ(taken.error().code, ErrorCode::CannotWrite);
    std::atomic<bool> cancel = false;
    JobRun run;
    run.cancel = &cancel;
    run.onProgress = [&](const Progress& progress) { cancel = progress.of == 2; };
    QFile::remove(m_place.filePath(QStringLiteral("pictures")));
    const auto stopped = job({pile}).run(made.book, run);
    ASSERT_FALSE(stopped.ok());
    EXPECT_EQ(stopped.error().code, ErrorCode::Cancelled);
}

TEST_F(SingleFiles, ThatAreDamagedAreTakenAndToldOf)
{
    const QByteArray whole = test::jpegOf(test::noisePhoto(600, 400, 5));
    const QString torn = test::writeFile(
        m_place.filePath(QStringLiteral("rain.jpg")), whole.first(whole.size() / 2));
    const auto taken = job({torn}).run(made.book, JobRun());
    ASSERT_TRUE(taken.ok());
    EXPECT_EQ(taken->outcome.added, 1);
    EXPECT_TRUE(taken->outcome.skipped.empty());
    EXPECT_EQ(taken->outcome.remarks,
        QStringList{
            QStringLiteral("rain.jpg: the file is damaged; part of the picture may be grey.")});
}

TEST_F(SingleFiles, NeedAnExperience)
{
    GatherFilesJob lost = job({});
    lost.experience = ExperienceId(99);
    EXPECT_EQ(lost.run(made.book, JobRun()).error().code, ErrorCode::NotFound);
}

} // namespace
} // namespace wainscot
