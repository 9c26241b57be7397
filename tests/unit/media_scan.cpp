// A scanned PDF becomes a picture for each page, or says why not.
#include "core/media/scan.h"

#include "core/media/intake.h"
#include "core/media/jpeg_segments.h"
#include "core/media/pdf/blank_page.h"
#include "core/media/pdf/pdf_pages.h"
#include "tests/support/media_pictures.h"
#include "tests/support/places.h"
#include "tests/support/scan_files.h"

#include <gmock/gmock.h>

#include <QDir>
#include <QElapsedTimer>
#include <QPainter>
#include <QTemporaryDir>

#include <csignal>
#include <random>

#include <unistd.h>

namespace wainscot {
namespace {

using ::testing::ElementsAre;
using ::testing::SizeIs;

struct Told {
    ScannedPage page;
    QByteArray bytes;
    QImage image;
};

class Scans : public ::testing::Test {
protected:
    [[nodiscard]] QString path(const QString& name) const { return m_folder.filePath(name); }
    QString write(const QByteArray& bytes, const char* name = "pile.pdf")
    {
        return test::writeFile(path(QString::fromLatin1(name)), bytes);
    }
    Result<int> read(const QString& file, ScanOptions options = {})
    {
        told.clear();
        return readScan(
            file,
            [this](const ScannedPage& page) -> Result<> {
                Told one{page, {}, {}};
                if (!page.path.isEmpty()) {
                    one.bytes = test::readFile(page.path);
                    one.image = QImage::fromData(one.bytes);
                }
                told.push_back(one);
                if (onPage)
                    onPage(page);
                return Done{};
            },
            options);
    }
    // What is said of a file that is not read.
    QString refusal(const QString& file, ErrorCode code, ScanOptions options = {})
    {
        const auto result = read(file, options);
        EXPECT_TRUE(told.empty());
        if (result.ok())
            return QStringLiteral("is read");
        EXPECT_EQ(int(result.error().code), int(code));
        EXPECT_EQ(result.error().subject, QFileInfo(file).fileName());
        return result.error().detail;
    }
    QString qpdf(const QString& from, const QString& to, QStringList arguments)
    {
        arguments << from << path(to);
        EXPECT_TRUE(test::run(QStringLiteral("qpdf"), arguments));
        return path(to);
    }

    QTemporaryDir m_folder;
    std::vector<Told> told;
    std::function<void(const ScannedPage&)> onPage;
};

QRgb at(const QImage& image, double x, double y)
{
    return image.pixel(int(image.width() * x), int(image.height() * y));
}

bool isNear(QRgb colour, QRgb wanted)
{
    return std::abs(qRed(colour) - qRed(wanted)) + std::abs(qGreen(colour) - qGreen(wanted))
        + std::abs(qBlue(colour) - qBlue(wanted))
        < 30;
}

constexpr QRgb kRed = qRgb(255, 0, 0);
constexpr QRgb kGreen = qRgb(0, 255, 0);
constexpr QRgb kBlue = qRgb(0, 0, 255);
constexpr QRgb kYellow = qRgb(255, 255, 0);

// Clockwise from the top left.
void expectCorners(const QImage& image, std::array<QRgb, 4> colours)
{
    EXPECT_TRUE(isNear(at(image, .25, .25), colours[0]));
    EXPECT_TRUE(isNear(at(image, .75, .25), colours[1]));
    EXPECT_TRUE(isNear(at(image, .75, .75), colours[2]));
    EXPECT_TRUE(isNear(at(image, .25, .75), colours[3]));
    EXPECT_TRUE(isNear(at(image, .5, .5), qRgb(255, 255, 255))) << "what nobody painted is paper";
}

TEST_F(Scans, BecomeAPictureForEachPage)
{
    const QString file = write(test::pdfOf({test::cornersPage({595, 842}),
        test::cornersPage({810, 1080}), // an odd size, as phones make it
        test::cornersPage({595, 842}, 90)}));
    const auto count = read(file);
    ASSERT_TRUE(count.ok()) << qPrintable(count.error().detail);
    EXPECT_EQ(*count, 3);
    ASSERT_THAT(told, SizeIs(3));
    EXPECT_EQ(told[2].page.name, QStringLiteral("pile, page 3"));
    EXPECT_EQ(told[0].image.size(), QSize(2065, 2923)) << "an A4 page at 250 dpi";
    EXPECT_EQ(told[1].image.size(), QSize(2812, 3750));
    EXPECT_EQ(told[2].image.size(), QSize(2923, 2065));
    expectCorners(told[0].image, {kRed, kGreen, kYellow, kBlue});
    expectCorners(told[1].image, {kRed, kGreen, kYellow, kBlue});
    expectCorners(told[2].image, {kBlue, kRed, kGreen, kYellow});
    for (const Told& one : told) {
        EXPECT_FALSE(QFile::exists(one.page.path)) << "nothing of it stays behind";
        EXPECT_TRUE(one.page.why.isEmpty());
    }
}

TEST_F(Scans, OfACopierKeepWhatIsOnThem)
{
    const QString colour =
        test::writeFile(path(QStringLiteral("c.jpg")), test::jpegOf(test::fourQuarters(1280, 640)));
    // One bit a pixel, packed as a fax is (CCITT group 4), as copiers do with writing.
    QImage drawing(800, 600, QImage::Format_RGB32);
    drawing.fill(Qt::white);
    QPainter(&drawing).fillRect(100, 100, 300, 400, Qt::black);
    const QString png = test::writeFile(path(QStringLiteral("d.png")), test::pngOf(drawing));
    const QString fax = path(QStringLiteral("d.tif"));
    ASSERT_TRUE(test::run(QStringLiteral("convert"),
        {png,
            QStringLiteral("-monochrome"),
            QStringLiteral("-compress"),
            QStringLiteral("Group4"),
            fax}));
    const QString file = path(QStringLiteral("copier.pdf"));
    ASSERT_TRUE(test::writeScan(file, {colour, fax}));
    ASSERT_TRUE(test::readFile(file).contains("CCITTFaxDecode"));
    ASSERT_TRUE(read(file).ok());
    ASSERT_THAT(told, SizeIs(2));
    EXPECT_TRUE(isNear(at(told[0].image, .25, .25), qRgb(220, 30, 30)));
    EXPECT_TRUE(isNear(at(told[0].image, .75, .75), qRgb(230, 220, 40)));
    EXPECT_EQ(told[1].image.format(), QImage::Format_Grayscale8) << "grey pages are kept grey";
    EXPECT_LT(qGray(at(told[1].image, .3, .5)), 20);
    EXPECT_GT(qGray(at(told[1].image, .7, .5)), 235);
}

TEST_F(Scans, LeaveTitleAndAuthorBehind)
{
    const QByteArray secret = "Wren Halloway 4711";
    const QString own = write(test::pdfOf({test::cornersPage({595, 842})}, secret));
    ASSERT_TRUE(test::readFile(own).contains(secret));
    const QString picture = test::writeFile(path(QStringLiteral("c.jpg")),
        test::withSegment(test::jpegOf(test::fourQuarters()), 0xfe, secret));
    const QString made = path(QStringLiteral("made.pdf"));
    ASSERT_TRUE(test::writeScan(made,
        {picture},
        {QStringLiteral("--title"),
            QString::fromLatin1(secret),
            QStringLiteral("--author"),
            QString::fromLatin1(secret)}));
    for (const QString& file : {own, made}) {
        ASSERT_TRUE(read(file).ok());
        ASSERT_THAT(told, SizeIs(1));
        EXPECT_FALSE(told[0].bytes.contains("Wren"));
        EXPECT_FALSE(told[0].bytes.contains("4711"));
        // An independent reader finds nothing but the picture's own shape.
        const QString jpeg = test::writeFile(path(QStringLiteral("out.jpg")), told[0].bytes);
        const QByteArray tags = test::outputOf(QStringLiteral("exiftool"),
            {QStringLiteral("-a"), QStringLiteral("-s"), QStringLiteral("-G0"), jpeg});
        EXPECT_FALSE(tags.isEmpty());
        for (const char* group : {"[EXIF]", "[XMP]", "[IPTC]", "[ICC_Profile]", "Wren", "PDF"})
            EXPECT_FALSE(tags.contains(group)) << group << "\n" << tags.constData();
    }
}

TEST_F(Scans, GiveTheSameBytesEachTime)
{
    const QString file = write(test::pdfOf({test::cornersPage({400, 300})}));
    ASSERT_TRUE(read(file).ok());
    const QByteArray first = told.at(0).bytes;
    ASSERT_TRUE(read(file).ok());
    EXPECT_FALSE(first.isEmpty());
    EXPECT_EQ(told.at(0).bytes, first);
}

TEST_F(Scans, TellOfPagesThatGiveNoPicture)
{
    // 10 m, as a drawing program may say it by mistake.
    const QString file = write(test::pdfOf({test::cornersPage({400, 300}),
        test::blankPage(),
        test::cornersPage({28346, 28346}),
        test::cornersPage({300, 400})}));
    ASSERT_TRUE(read(file).ok());
    ASSERT_THAT(told, SizeIs(4));
    EXPECT_FALSE(told[0].image.isNull());
    EXPECT_EQ(told[1].page.why, QStringLiteral("pile.pdf, page 2, is blank and was left out."));
    EXPECT_EQ(told[2].page.why,
        QStringLiteral(
            "pile.pdf, page 3, is larger than any paper that is read (10 square metres)."));
    EXPECT_EQ(told[3].image.size(), QSize(1041, 1388));
}

TEST_F(Scans, ThatAreLockedAreRefused)
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

TEST_F(Scans, ThatBreakOffSayWhatIsMissing)
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
        for (const Told& one : told)
            EXPECT_NE(one.image.isNull(), one.page.why.isEmpty());
    } else {
        EXPECT_FALSE(read95.error().detail.isEmpty());
    }
}

TEST_F(Scans, ThatAreNoneAreRefused)
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

TEST_F(Scans, OfTooManyPagesAreRefusedBeforeAnyIsDrawn)
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

TEST_F(Scans, AreStoppedAtOnce)
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

TEST_F(Scans, WithAPageThatTakesForEverLoseOnlyThat)
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
TEST_F(Scans, ThatCannotEvenBeOpenedAreGivenUp)
{
    ScanOptions options;
    options.secondsForAPage = 3;
    EXPECT_EQ(refusal(testData("scans/endless.pdf"), ErrorCode::Damaged, options),
        QStringLiteral("is damaged: reading it fails"));
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

TEST_F(Scans, GoOnAfterTheReaderWasBroughtDown)
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

TEST(ScanPageSize, IsBounded)
{
    const auto a4 = pageSizeFor({595.28, 841.89});
    ASSERT_TRUE(a4.has_value());
    EXPECT_DOUBLE_EQ(a4->dpi, 250);
    const auto a0 = pageSizeFor({2384, 3370});
    ASSERT_TRUE(a0.has_value());
    EXPECT_LE(qint64(a0->pixels.width) * a0->pixels.height, kMostScanPixels);
    EXPECT_GT(a0->dpi, 120);
    const auto frieze = pageSizeFor({20'000, 300}); // 7 m
    ASSERT_TRUE(frieze.has_value());
    EXPECT_LE(frieze->pixels.width, kLongestScanSide);
    EXPECT_FALSE(pageSizeFor({28346, 28346}));
    EXPECT_FALSE(pageSizeFor({1e30, 1}));
    EXPECT_FALSE(pageSizeFor({std::nan(""), 10}));
    EXPECT_EQ(pageSizeFor({0, -5})->pixels, (SizePx{3, 3}));
}

// Copied paper: a tone, a shadow across it, grain; then a copier's JPEG at 150 dpi, drawn at 250.
class Paper {
public:
    explicit Paper(int grain)
        : m_sheet(1240, 1754, QImage::Format_RGB32)
    {
        std::mt19937 random(7);
        for (int y = 0; y < m_sheet.height(); ++y) {
            auto* line = reinterpret_cast<QRgb*>(m_sheet.scanLine(y));
            for (int x = 0; x < m_sheet.width(); ++x) {
                const int grey = 228 + 14 * x / m_sheet.width() + int(random() % unsigned(grain));
                line[x] = qRgb(grey, grey - 2, grey - 8);
            }
        }
    }
    QImage& sheet() { return m_sheet; }
    [[nodiscard]] bool isBlank() const
    {
        const QImage copied = QImage::fromData(test::jpegOf(m_sheet, 75));
        return isBlankPage(
            copied.scaled(2066, 2923, Qt::IgnoreAspectRatio, Qt::SmoothTransformation), 250);
    }

private:
    QImage m_sheet;
};

class BlankPage : public ::testing::TestWithParam<int> { };

TEST_P(BlankPage, IsPaperAlone)
{
    Paper paper(GetParam());
    EXPECT_TRUE(paper.isBlank());
    QPainter(&paper.sheet()).fillRect(400, 500, 3, 3, Qt::black);
    EXPECT_TRUE(paper.isBlank()) << "a speck of dust";
    QPainter(&paper.sheet()).fillRect(0, 0, paper.sheet().width(), 9, Qt::black);
    EXPECT_TRUE(paper.isBlank()) << "the edge of the sheet in the scanner";
}

TEST_P(BlankPage, IsNoneWithAFaintMark)
{
    Paper pencil(GetParam());
    {
        QPainter painter(&pencil.sheet());
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(QColor(200, 200, 196), 2)); // 0.3 mm, a sixth darker than the paper
        painter.drawLine(300, 300, 420, 350); // 2 cm
    }
    EXPECT_FALSE(pencil.isBlank());
    Paper crayon(GetParam());
    {
        QPainter painter(&crayon.sheet());
        painter.setPen(QPen(QColor(240, 236, 180), 12)); // 2 mm of yellow, as light as the paper
        painter.drawLine(300, 300, 360, 400);
    }
    EXPECT_FALSE(crayon.isBlank());
    Paper wash(GetParam());
    QPainter(&wash.sheet()).fillRect(200, 200, 500, 500, QColor(214, 222, 232)); // thin blue
    EXPECT_FALSE(wash.isBlank());
}

TEST_P(BlankPage, IsNoneWherePaintIsAllOver)
{
    Paper painted(GetParam());
    QPainter(&painted.sheet()).fillRect(painted.sheet().rect(), QColor(200, 20, 30));
    EXPECT_FALSE(painted.isBlank());
}

// Levels between its darkest and lightest: none, smooth paper, recycled paper.
INSTANTIATE_TEST_SUITE_P(Grain, BlankPage, ::testing::Values(1, 5, 12));

} // namespace
} // namespace wainscot
