// Sheets to answer on as independent readers see them: the code by a reader of codes, names by a
// reader of text, marks and boxes by what is black on the rendered page.
#include "app/jobs/sheets_job.h"
#include "tests/support/class_book.h"

#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include <array>
#include <cmath>

namespace wainscot {

namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::Not;

constexpr int kDpi = 200;
constexpr SizeMm kA4{Mm(210), Mm(297)};
constexpr SizeMm kLetter{Mm(215.9), Mm(279.4)};

QString output(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(120'000)) << program.toStdString();
    return QString::fromUtf8(process.readAllStandardOutput());
}

class AnswerSheets : public ::testing::Test {
protected:
    AnswerSheets()
    {
        Experience happened = *m_made.book.experiences.find(m_made.experience);
        happened.title = QStringLiteral("Where does the puddle go?");
        happened.on = kTestDay;
        m_made.book.experiences.put(happened);
        m_job.experience = happened.title;
        m_job.file = m_folder.filePath(QStringLiteral("sheets.pdf"));
    }
    void make()
    {
        JobRun run;
        run.today = kTestDay;
        const auto made = m_job.run(m_made.book, run);
        ASSERT_TRUE(made.ok()) << made.error().detail.toStdString();
        m_pages = made->pages;
    }
    [[nodiscard]] QImage page(int number) const
    {
        const QString stem = m_folder.filePath(QStringLiteral("page%1").arg(number));
        (void)output(QStringLiteral("pdftoppm"),
            {QStringLiteral("-r"),
                QString::number(kDpi),
                QStringLiteral("-png"),
                QStringLiteral("-singlefile"),
                QStringLiteral("-f"),
                QString::number(number),
                m_job.file,
                stem});
        return QImage(stem + QStringLiteral(".png"));
    }
    [[nodiscard]] std::vector<std::string> codes(int number) const
    {
        (void)page(number);
        const QString read = output(QStringLiteral("zbarimg"),
            {QStringLiteral("--quiet"),
                QStringLiteral("--raw"),
                m_folder.filePath(QStringLiteral("page%1.png").arg(number))});
        std::vector<std::string> all;
        for (const QString& line : read.split(QLatin1Char('\n'), Qt::SkipEmptyParts))
            all.push_back(line.toStdString());
        std::sort(all.begin(), all.end());
        return all;
    }
    [[nodiscard]] std::string text() const
    {
        return output(QStringLiteral("pdftotext"), {m_job.file, QStringLiteral("-")}).toStdString();
    }

    QTemporaryDir m_folder;
    ClassBook m_made;
    ChildId m_ines =
        m_made.child("Ines Roth", only(Audience::Classroom, {Permission::FirstName}), "2020-05-01");
    ChildId m_tom = m_made.child("Tom Oak", only(Audience::Families, {Permission::FirstName}));
    SheetsJob m_job;
    int m_pages = 0;
};

// How dark a place is, 0 to 1; the place in mm on the page.
double darkness(const QImage& page, const RectMm& place)
{
    const double scale = kDpi / kMmPerInch;
    double dark = 0;
    int seen = 0;
    for (int y = int(std::ceil(place.y.value() * scale)); y < int(place.bottom().value() * scale);
         ++y) {
        for (int x = int(std::ceil(place.x.value() * scale));
             x < int(place.right().value() * scale);
             ++x) {
            dark += 1 - qGray(page.pixel(x, y)) / 255.0;
            ++seen;
        }
    }
    return seen == 0 ? 0 : dark / seen;
}

constexpr std::array kAlong{3.0, 40.0, 75.0, 120.0, 160.0, 185.0}; // mm from the left edge

// The heights of the frames of a sheet that begins at `left`, in mm.
std::vector<double> boxesOn(const QImage& page, double left)
{
    const double scale = kDpi / kMmPerInch;
    // Only the lines of a frame are dark all along.
    const auto isLine = [&](int y) {
        return std::all_of(kAlong.begin(), kAlong.end(), [&](double x) {
            return qGray(page.pixel(int((left + kSheetEdge.value() + x) * scale), y)) < 90;
        });
    };
    std::vector<double> ends;
    bool wasDark = false;
    for (int y = int(30 * scale); y < page.height() - int(24 * scale); ++y) {
        const bool dark = isLine(y);
        if (dark && !wasDark)
            ends.push_back(y / scale);
        wasDark = dark;
    }
    std::vector<double> heights;
    for (std::size_t i = 0; i + 1 < ends.size(); i += 2)
        heights.push_back(ends[i + 1] - ends[i]);
    return heights;
}

TEST_F(AnswerSheets, CarryNumbersThatACodeReaderReads)
{
    make();
    EXPECT_EQ(m_pages, 2);
    const std::string experience = std::to_string(m_made.experience.number());
    EXPECT_THAT(codes(1), ElementsAre("W1A/" + experience + "/1/0/1/3"));
    EXPECT_THAT(codes(2), ElementsAre("W1A/" + experience + "/2/0/1/3"));
}

TEST_F(AnswerSheets, NameOnlyWhoMayBeNamed)
{
    make();
    EXPECT_THAT(text(), HasSubstr("Ines"));
    EXPECT_THAT(text(), Not(HasSubstr("Roth"))) << "the name as it is shown, not the class list's";
    EXPECT_THAT(text(), Not(HasSubstr("Tom")));
    EXPECT_THAT(text(), HasSubstr("What do you notice?"));
}

TEST_F(AnswerSheets, HaveFourBlackMarksWhereALaterReaderLooks)
{
    for (const SizeMm paper : {kA4, kLetter}) {
        m_job.wishes.paper = paper;
        make();
        const QImage first = page(1);
        ASSERT_NEAR(first.width(), paper.width.value() / kMmPerInch * kDpi, 2);
        for (const Mm x : {kSheetEdge, paper.width - kSheetEdge - kSheetMark}) {
            for (const Mm y : {kSheetEdge, paper.height - kSheetEdge - kSheetMark}) {
                const RectMm mark{x, y, kSheetMark, kSheetMark};
                EXPECT_GT(darkness(first, mark), 0.99) << x.value() << ' ' << y.value();
                // White all around: what is dark in the wider place is the mark alone.
                const double share = mark.areaMm2() / mark.grown(Mm(1)).areaMm2();
                EXPECT_NEAR(darkness(first, mark.grown(Mm(1))), share, 0.06);
            }
        }
    }
}

TEST_F(AnswerSheets, StandSideBySideWithMarksAndCodesOfTheirOwn)
{
    m_job.wishes.perPage = 2;
    make();
    const QImage first = page(1);
    EXPECT_GT(first.width(), first.height());
    for (const double half : {0.0, 148.5}) {
        const RectMm mark{Mm(half) + kSheetEdge, kSheetEdge, kSheetMark, kSheetMark};
        EXPECT_GT(darkness(first, mark), 0.99);
    }
    EXPECT_GE(codes(1).size(), 2U);
}

// Sizes by age are common practice, no source; what is tested is that a sheet keeps its promise.
TEST_F(AnswerSheets, GiveYoungerChildrenLargerBoxes)
{
    struct Age {
        const char* born;
        double least;
        int pages;
    };
    for (const Age& age :
        {Age{"2022-05-01", 85, 2}, Age{"2020-05-01", 48, 1}, Age{"2015-05-01", 34, 1}}) {
        Child ines = *m_made.book.children.find(m_ines);
        ines.born = birthDateFromText(QString::fromLatin1(age.born));
        m_made.book.children.put(ines);
        m_job.child = ines.name;
        make();
        EXPECT_EQ(m_pages, age.pages) << age.born;
        const std::vector<double> boxes = boxesOn(page(1), 0);
        ASSERT_FALSE(boxes.empty()) << age.born;
        for (const double height : boxes)
            EXPECT_GE(height, age.least - 1) << age.born;
    }
}

TEST_F(AnswerSheets, GiveTheScribeEveryChildOnOneSheet)
{
    m_job.wishes.forChildren = false;
    m_job.wishes.forScribe = true;
    for (int i = 0; i < 12; ++i)
        m_made.child(("Child" + std::to_string(i)).c_str(),
            only(Audience::Classroom, {Permission::FirstName}));
    make();
    EXPECT_EQ(m_pages, 2);
    const std::string experience = std::to_string(m_made.experience.number());
    EXPECT_THAT(codes(1), ElementsAre("W1S/" + experience + "/0/1/7/7"));
    EXPECT_THAT(codes(2), ElementsAre("W1S/" + experience + "/0/8/14/7"));
    EXPECT_THAT(text(), HasSubstr("Child11"));
    EXPECT_THAT(text(), Not(HasSubstr("Tom")));
}

TEST_F(AnswerSheets, AreRefusedWhereNothingCouldBeWritten)
{
    const JobRun run;
    m_job.wishes.paper = {Mm(105), Mm(148)};
    EXPECT_EQ(m_job.run(m_made.book, run).error().code, ErrorCode::WrongUse);
    m_job.wishes.paper = kA4;
    m_job.wishes.forChildren = false;
    EXPECT_EQ(m_job.run(m_made.book, run).error().code, ErrorCode::WrongUse);
    m_job.wishes.forChildren = true;
    m_job.child = QStringLiteral("Nobody");
    EXPECT_EQ(m_job.run(m_made.book, run).error().code, ErrorCode::NotFound);
}

} // namespace
} // namespace wainscot
