// Scans that are locked, damaged, endless or no PDF at all, and a reader that is brought down.
#include "tests/support/places.h"
#include "tests/support/scan_files.h"
#include "tests/support/scan_reading.h"

#include <gmock/gmock.h>

#include <QDir>
#include <QElapsedTimer>

#include <csignal>

#include <unistd.h>

namespace wainscot {
namespace {

using ::testing::SizeIs;

class BadScans : public test::ScanReading { };

TEST_F(BadScans, ThatAreLockedAreRefused)
{
    const QString open = write(test::pdfOf({test::cornersPage({400, 300})}));
    const auto locked = [&](const char* user) {
        return qpdf(open,
            QStringLiteral("locked.pdf"),
            {QStringLiteral("--encrypt"),
                QString::fromLatin1(user),
                QStringLiteral("owner"),
                QStringLiteral("256"),
                QStringLiteral("--")});
    };
    EXPECT_EQ(refusal(locked("secret"), ErrorCode::Refused),
        QStringLiteral("is locked with a password; save it without one and add that"));
    // A password for changes alone keeps nobody from looking at it.
    EXPECT_TRUE(read(locked("")).ok());
    EXPECT_THAT(told, SizeIs(1));
}

TEST_F(BadScans, ThatBreakOffSayWhatIsMissing)
{
    const QString whole = path(QStringLiteral("whole.pdf"));
    const QString picture =
        test::writeFile(path(QStringLiteral("c.jpg")), test::jpegOf(test::noisePhoto(600, 400, 3)));
    ASSERT_TRUE(test::writeScan(whole, {picture, picture, picture}));
    const QByteArray bytes = test::readFile(whole);
    for (const int percent : {5, 50, 95}) {
        const QString said =
            refusal(write(bytes.first(bytes.size() * percent / 100)), ErrorCode::Damaged);
        EXPECT_EQ(said, QStringLiteral("is damaged: the PDF breaks off or was changed")) << percent;
    }
    // A file that begins with its catalogue is read as far as it reaches, and the rest is told.
    const QByteArray front = test::pdfOf({test::cornersPage({400, 300}),
        test::cornersPage({400, 300}),
        test::cornersPage({40, 30})});
    const auto read95 = read(write(front.first(front.size() * 70 / 100)));
    if (read95) {
        ASSERT_THAT(told, SizeIs(std::size_t(*read95)));
        for (const test::Told& one : told)
            EXPECT_NE(one.image.isNull(), one.page.why.isEmpty());
    } else {
        EXPECT_FALSE(read95.error().detail.isEmpty());
    }
}

TEST_F(BadScans, ThatAreNoneAreRefused)
{
    EXPECT_EQ(refusal(write({}), ErrorCode::Refused), QStringLiteral("is no PDF"));
    EXPECT_EQ(refusal(write("a letter"), ErrorCode::Refused), QStringLiteral("is no PDF"));
    EXPECT_EQ(refusal(write("%PDF-1.7 and nothing more"), ErrorCode::Damaged),
        QStringLiteral("is damaged: the PDF breaks off or was changed"));
    EXPECT_EQ(refusal(path(QStringLiteral("nowhere.pdf")), ErrorCode::NotFound),
        QStringLiteral("is not there"));
    EXPECT_EQ(refusal(m_folder.path(), ErrorCode::Refused), QStringLiteral("is no PDF"));
    EXPECT_EQ(refusal(write(test::pdfOf({})), ErrorCode::Refused),
        QStringLiteral("is a PDF without pages"));
}

TEST_F(BadScans, OfTooManyPagesAreRefusedBeforeAnyIsDrawn)
{
    const QString pile = write(
        test::pdfOf(std::vector<test::PdfPage>(kMostScanPages + 1, test::cornersPage({40, 30}))));
    EXPECT_EQ(refusal(pile, ErrorCode::Refused),
        QStringLiteral("has 501 pages; 500 is the most that is read at once, so divide it first"));
    ScanOptions one;
    one.mostPages = 1;
    EXPECT_EQ(
        refusal(
            write(test::pdfOf({test::blankPage(), test::blankPage()})), ErrorCode::Refused, one),
        QStringLiteral("has 2 pages, and one is wanted here; add it where pictures are gathered"));
}

TEST_F(BadScans, AreStoppedAtOnce)
{
    std::atomic<bool> cancel = false;
    onPage = [&](const ScannedPage&) { cancel = true; };
    ScanOptions options;
    options.cancel = &cancel;
    QElapsedTimer time;
    time.start();
    const auto result = read(write(test::endlessPdf(2, 3)), options);
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.error().code, ErrorCode::Cancelled);
    EXPECT_THAT(told, SizeIs(1));
    EXPECT_LT(time.elapsed(), 30'000) << "the page in work would take years";
}

TEST_F(BadScans, WithAPageThatTakesForEverLoseOnlyThat)
{
    ScanOptions options;
    options.secondsForAPage = 4;
    ASSERT_TRUE(read(write(test::endlessPdf(2, 3)), options).ok());
    ASSERT_THAT(told, SizeIs(3));
    EXPECT_FALSE(told[0].image.isNull());
    EXPECT_EQ(told[1].page.why, QStringLiteral("pile.pdf, page 2, cannot be read."));
    EXPECT_FALSE(told[2].image.isNull());
}

// A file of the fuzzing run, by a change of four bytes: the library never comes back from opening
// it.
TEST_F(BadScans, ThatCannotEvenBeOpenedAreGivenUp)
{
    ScanOptions options;
    options.secondsForAPage = 3;
    EXPECT_EQ(refusal(testData("scans/endless.pdf"), ErrorCode::Damaged, options),
        QStringLiteral("is damaged: reading it fails"));
}

// A file of the fuzzing run too: two of its pages are nowhere.
TEST_F(BadScans, WithLostPagesKeepTheOther)
{
    ASSERT_TRUE(read(testData("scans/lost_pages.pdf")).ok());
    ASSERT_THAT(told, SizeIs(3));
    EXPECT_EQ(told[0].page.why, QStringLiteral("lost_pages.pdf, page 1, cannot be read."));
    EXPECT_EQ(told[1].image.size(), QSize(69, 104));
    EXPECT_EQ(told[2].page.why, QStringLiteral("lost_pages.pdf, page 3, cannot be read."));
}

// The process that draws for this one.
std::vector<pid_t> children()
{
    std::vector<pid_t> found;
    const QString tasks = QStringLiteral("/proc/%1/task").arg(getpid());
    for (const QString& task : QDir(tasks).entryList(QDir::Dirs | QDir::NoDotAndDotDot)) {
        const QByteArray list =
            test::readFile(tasks + QLatin1Char('/') + task + QStringLiteral("/children"));
        for (const QByteArray& one : list.simplified().split(' ')) {
            if (!one.isEmpty())
                found.push_back(pid_t(one.toInt()));
        }
    }
    return found;
}

TEST_F(BadScans, GoOnAfterTheReaderWasBroughtDown)
{
    int ended = 0;
    onPage = [&](const ScannedPage& page) {
        if (page.number != 1)
            return;
        for (const pid_t child : children())
            ended += int(kill(child, SIGKILL) == 0);
    };
    const std::vector<test::PdfPage> pages(8, test::cornersPage({595, 842}));
    ASSERT_TRUE(read(write(test::pdfOf(pages))).ok());
    ASSERT_EQ(ended, 1);
    ASSERT_THAT(told, SizeIs(8));
    int lost = 0;
    for (std::size_t i = 0; i < told.size(); ++i) {
        EXPECT_EQ(told[i].page.number, int(i) + 1);
        EXPECT_NE(told[i].image.isNull(), told[i].page.why.isEmpty());
        lost += int(told[i].image.isNull());
    }
    EXPECT_EQ(lost, 1);
    EXPECT_TRUE(children().empty());
}

} // namespace
} // namespace wainscot
