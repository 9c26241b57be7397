// A term's file as independent readers see it.
#include "app/jobs/keep_job.h"
#include "core/store/originals.h"
#include "tests/support/class_book.h"
#include "tests/support/media_pictures.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QDir>
#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QTemporaryDir>

namespace wainscot {

namespace {

using ::testing::HasSubstr;
using ::testing::Not;

std::string read(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(120000)) << program.toStdString();
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput().toStdString();
}

class TermFile : public ::testing::Test {
protected:
    TermFile()
    {
        PromptSet prompts = defaultPromptSet();
        prompts.id = m_made.book.promptSets.newId();
        m_made.book.promptSets.put(prompts);
        m_made.book.info.title = QStringLiteral("Sparrows");
        Experience happened = *m_made.book.experiences.find(m_made.experience);
        happened.on = QDate(2025, 11, 3);
        happened.promptSet = prompts.id;
        happened.nextSteps = QStringLiteral("Two jars.");
        m_made.book.experiences.put(happened);
        for (int i = 0; i < 60; ++i) {
            Quote quote = *m_made.book.quotes.find(
                m_made.quote(m_ines, QStringLiteral("It went %1.").arg(i)));
            quote.prompt = QStringLiteral("think");
            m_made.book.quotes.put(quote);
        }
        const DisplayId hall = m_made.display(Audience::Building);
        Piece title = *m_made.book.pieces.find(
            m_made.hang(hall, PieceKind::Title, QStringLiteral("Ice on the wall")));
        title.cell = {Mm(40), Mm(40), Mm(400), Mm(120)};
        m_made.book.pieces.put(title);
        for (int i = 0; i < 7; ++i)
            addPhoto(i);
        job.from = QDate(2025, 9, 1);
        job.to = QDate(2025, 12, 19);
        job.file = path("term.pdf");
        job.picturesFolder = path("pictures");
        m_run.today = kTestDay;
    }

    void addPhoto(int number)
    {
        const QString file = test::writeFile(path("p.jpg"),
            test::withSegment(
                test::jpegOf(test::noisePhoto(640, 480, 3), 85), 0xfe, QByteArray::number(number)));
        const auto sha256 = Originals(path("pictures")).keep(file);
        ASSERT_TRUE(sha256.ok());
        Picture picture =
            *m_made.book.pictures.find(m_made.picture(PictureKind::Photo, {true, {}}, "p.jpg"));
        picture.sha256 = *sha256;
        picture.format = QStringLiteral("jpeg");
        picture.size = {640, 480};
        picture.caption = QStringLiteral("Puddle %1").arg(number);
        m_made.book.pictures.put(picture);
    }

    [[nodiscard]] QString path(const char* name) const
    {
        return m_folder.filePath(QLatin1String(name));
    }
    KeepOutcome make()
    {
        const Result<KeepOutcome> outcome = job.run(m_made.book, m_run);
        EXPECT_TRUE(outcome.ok()) << (outcome ? "" : qPrintable(outcome.error().detail));
        return outcome ? *outcome : KeepOutcome{};
    }
    // Whether strong red and strong green are on any page.
    [[nodiscard]] std::pair<bool, bool> colours() const
    {
        read(QStringLiteral("pdftoppm"),
            {QStringLiteral("-r"), QStringLiteral("20"), job.file, path("page")});
        std::pair<bool, bool> seen;
        const QDir folder(m_folder.path());
        const QStringList pages = folder.entryList({QStringLiteral("page-*.ppm")});
        for (const QString& name : pages) {
            const QImage page(folder.filePath(name));
            for (int y = 0; y < page.height(); ++y) {
                for (int x = 0; x < page.width(); ++x) {
                    const QColor at = page.pixelColor(x, y);
                    seen.first |= at.red() > 180 && at.green() < 70 && at.blue() < 80;
                    seen.second |= at.green() > 180 && at.red() < 70 && at.blue() < 80;
                }
            }
            QFile::remove(folder.filePath(name));
        }
        return seen;
    }
    [[nodiscard]] std::string plain() const
    {
        return read(QStringLiteral("qpdf"),
            {QStringLiteral("--qdf"),
                QStringLiteral("--object-streams=disable"),
                job.file,
                QStringLiteral("-")});
    }

    QTemporaryDir m_folder;
    ClassBook m_made;
    ChildId m_ines = m_made.child("Ines", only(Audience::Families, {Permission::Words}));
    KeepJob job;
    JobRun m_run;
};

TEST_F(TermFile, OpensCleanAndHoldsEverything)
{
    const KeepOutcome outcome = make();
    EXPECT_EQ(outcome.experiences, 1);
    EXPECT_EQ(outcome.pictures, 7);
    read(QStringLiteral("qpdf"), {QStringLiteral("--check"), job.file});
    const std::string info = read(QStringLiteral("pdfinfo"), {job.file});
    EXPECT_THAT(info, HasSubstr("Tagged:          yes"));
    EXPECT_THAT(info, HasSubstr("Pages:           " + std::to_string(outcome.pages)));
    EXPECT_THAT(info, HasSubstr("Sparrows, 1 September to 19 December 2025"));
    const QString text =
        QString::fromStdString(read(QStringLiteral("pdftotext"), {job.file, QStringLiteral("-")}))
            .simplified();
    for (int i = 0; i < 60; ++i)
        EXPECT_EQ(text.count(QStringLiteral("It went %1.”").arg(i)), 1) << i;
    for (const char* words : {"Ice on the wall", "Two jars.", "Puddle 6"})
        EXPECT_TRUE(text.contains(QLatin1String(words))) << words;
}

// Red stands for the wall, green for what somebody covered on its photo: a spot on grey.
TEST_F(TermFile, ShowsAPhotoOfTheWallAfterItsPanelsWithWhatIsCoveredGone)
{
    QImage red(640, 480, QImage::Format_RGB32);
    red.fill(qRgb(220, 20, 30));
    QPainter(&red).fillRect(320, 0, 320, 480, qRgb(130, 130, 130));
    QPainter(&red).fillRect(440, 200, 80, 80, qRgb(20, 220, 30));
    const QString file = path("wall.jpg");
    ASSERT_TRUE(red.save(file, "jpeg", 95));
    Picture wall =
        *m_made.book.pictures.find(m_made.picture(PictureKind::Photo, {true, {}}, "wall.jpg"));
    wall.sha256 = *Originals(path("pictures")).keep(file);
    wall.format = QStringLiteral("jpeg");
    wall.size = {640, 480};
    wall.caption = QStringLiteral("Both panels by the coats");
    wall.display = displayByName(m_made.book, QStringLiteral("Hall"))->id;
    wall.hungOn = QDate(2025, 11, 28);
    wall.treatment.covered = {{{0.5, 0, 0.5, 1}, Cover::Flat, false}};
    m_made.book.pictures.put(wall);
    EXPECT_EQ(make().pictures, 8);
    const QString text =
        QString::fromStdString(read(QStringLiteral("pdftotext"), {job.file, QStringLiteral("-")}))
            .simplified();
    for (const char* words :
        {"Hall, as it hung", "Friday, 28 November 2025", "Both panels by the coats"})
        EXPECT_TRUE(text.contains(QLatin1String(words))) << words;
    EXPECT_LT(text.lastIndexOf(QStringLiteral("Ice on the wall")),
        text.lastIndexOf(QStringLiteral("Hall, as it hung")));
    EXPECT_EQ(colours(), (std::pair{true, false}));
    // Ines hangs there too and may be read by families; in public she may not.
    m_made.hang(wall.display, m_made.quote(m_ines, QStringLiteral("It is wet.")));
    make();
    EXPECT_EQ(colours(), (std::pair{true, false}));
    job.audience = Audience::Public;
    make();
    EXPECT_EQ(colours(), (std::pair{false, false}));
}

TEST_F(TermFile, TellsItsStructureInReadingOrder)
{
    make();
    const std::string structure =
        read(QStringLiteral("pdfinfo"), {QStringLiteral("-struct-text"), job.file});
    std::size_t at = 0;
    for (const char* next : {"Sparrows",
             "Contents",
             "Ice",
             "Ice on the wall",
             "What they said",
             "What do you think",
             "It went 0.",
             "It went 59.",
             "Pictures",
             "Looking back",
             "Two jars."}) {
        const std::size_t found = structure.find(next, at);
        ASSERT_NE(found, std::string::npos) << next << "\n" << structure;
        at = found;
    }
    EXPECT_THAT(structure, HasSubstr("BlockQuote"));
}

TEST_F(TermFile, CanBeFoundOnesWayIn)
{
    const KeepOutcome outcome = make();
    const std::string outline = read(
        QStringLiteral("mutool"), {QStringLiteral("show"), job.file, QStringLiteral("outline")});
    for (const char* entry : {"Contents", "Ice", "On the wall: Hall", "What they said"})
        EXPECT_THAT(outline, HasSubstr(entry));
    const std::string file = plain();
    EXPECT_THAT(file, HasSubstr("/P (Cover)"));
    EXPECT_THAT(file, HasSubstr("/S /r"));
    EXPECT_THAT(file, HasSubstr("/S /D"));
    EXPECT_THAT(file, HasSubstr("/Subtype /Link"));
    EXPECT_EQ(outcome.frontPages, 2);
    const Result<KeepOutcome> planned = job.plan(m_made.book, m_run);
    ASSERT_TRUE(planned.ok());
    EXPECT_EQ(planned->pages, outcome.pages);
    EXPECT_EQ(planned->pagesOf, outcome.pagesOf);
}

// Rules of ISO 19005-2 as the veraPDF profile PDFA-2B states them, and 6.3.2 for the links.
TEST_F(TermFile, IsForTheArchive)
{
    make();
    const std::string file = plain();
    for (const char* wanted : {"/ID [", "/GTS_PDFA1", "<pdfaid:part>2", "<pdfaid:conformance>U"})
        EXPECT_THAT(file, HasSubstr(wanted));
    for (const char* banned : {"/Interpolate", "/SMask", "/ca ", "/JavaScript", "/AA "})
        EXPECT_THAT(file, Not(HasSubstr(banned)));
    std::size_t links = 0;
    for (std::size_t at = file.find("/Subtype /Link"); at != std::string::npos;
         at = file.find("/Subtype /Link", at + 1)) {
        const std::size_t begin = file.rfind("obj\n", at);
        EXPECT_THAT(file.substr(begin, at - begin), HasSubstr("/F 4"));
        ++links;
    }
    EXPECT_GE(links, 5U);
}

TEST_F(TermFile, IsTheSameEachTime)
{
    make();
    QFile first(job.file);
    ASSERT_TRUE(first.open(QIODevice::ReadOnly));
    const QByteArray before = first.readAll();
    job.file = path("again.pdf");
    make();
    QFile second(job.file);
    ASSERT_TRUE(second.open(QIODevice::ReadOnly));
    EXPECT_EQ(before, second.readAll());
}

TEST_F(TermFile, LeavesNothingWhenItIsStopped)
{
    std::atomic<bool> stop = false;
    m_run.cancel = &stop;
    int told = 0;
    m_run.onProgress = [&](const Progress& progress) {
        told = progress.done;
        EXPECT_GT(progress.of, 3);
        stop = progress.done >= 3;
    };
    const auto outcome = job.run(m_made.book, m_run);
    ASSERT_FALSE(outcome.ok());
    EXPECT_EQ(outcome.error().code, ErrorCode::Cancelled);
    EXPECT_EQ(told, 3);
    EXPECT_FALSE(QFile::exists(job.file));
}

TEST_F(TermFile, SaysWhatMakesNoSense)
{
    std::swap(job.from, job.to);
    const auto turned = job.run(m_made.book, m_run);
    ASSERT_FALSE(turned.ok());
    EXPECT_EQ(turned.error().code, ErrorCode::WrongUse);
    job.from = QDate(2020, 1, 1);
    job.to = QDate(2020, 2, 1);
    const auto empty = job.run(m_made.book, m_run);
    ASSERT_FALSE(empty.ok());
    EXPECT_EQ(empty.error().code, ErrorCode::WrongUse);
    EXPECT_FALSE(QFile::exists(job.file));
}

TEST_F(TermFile, NamesThePictureThatIsGone)
{
    ASSERT_TRUE(QDir(path("pictures")).removeRecursively());
    const auto outcome = job.run(m_made.book, m_run);
    ASSERT_FALSE(outcome.ok());
    EXPECT_THAT(outcome.error().subject.toStdString(), HasSubstr("Puddle"));
    EXPECT_FALSE(QFile::exists(job.file));
}

} // namespace
} // namespace wainscot
