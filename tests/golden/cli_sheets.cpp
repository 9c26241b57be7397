// A hallway display of the sample class on two A1 panels, printed as A4 sheets, drawn by poppler
// and put together as somebody with a knife and glue would: every sheet is cut at its own ticks and
// laid on the ticks of the one before. What comes of it is the panel to within 0.25 mm.
#include "app/jobs/book_jobs.h"

#include <QDir>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <cmath>
#include <map>

namespace wainscot {
namespace {

constexpr double kPixelsPerMm = 6;
constexpr double kTolerance = 0.25; // mm
const SizeMm kPanel{Mm(841), Mm(594)};

QByteArray run(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(300'000)) << program.toStdString();
    EXPECT_EQ(process.exitCode(), 0) << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput();
}

int px(double mm)
{
    return static_cast<int>(std::lround(mm * kPixelsPerMm));
}

// A page in grey.
QImage page(const QString& pdf, int number)
{
    const QTemporaryDir folder;
    const QString out = folder.filePath(QStringLiteral("page"));
    const QString at = QString::number(number);
    run(QStringLiteral("pdftoppm"),
        {QStringLiteral("-gray"),
            QStringLiteral("-r"),
            QString::number(kPixelsPerMm * kMmPerInch),
            QStringLiteral("-singlefile"),
            QStringLiteral("-f"),
            at,
            pdf,
            out});
    return QImage(out + QStringLiteral(".pgm")).convertToFormat(QImage::Format_Grayscale8);
}

// Where ticks stand in a strip of the margin, in px: the middle of every run that is dark all the
// way across the strip, weighed by how dark it is.
std::vector<double> ticksIn(const QImage& sheet, bool upright)
{
    const int from = px(3.6); // of 0.7 to 3.7 mm beyond a part that begins 7 mm inside
    const int to = px(6.0);
    const int length = upright ? sheet.width() : sheet.height();
    std::vector<double> ticks;
    double weight = 0;
    double sum = 0;
    for (int at = 0; at <= length; ++at) {
        int lightest = at < length ? 0 : 255;
        for (int across = from; across < to && at < length; ++across)
            lightest = std::max(lightest,
                upright ? qGray(sheet.pixel(at, across)) : qGray(sheet.pixel(across, at)));
        if (lightest < 215) {
            weight += 255 - lightest;
            sum += (255 - lightest) * (at + 0.5);
        } else if (weight > 0) {
            ticks.push_back(sum / weight);
            weight = sum = 0;
        }
    }
    return ticks;
}

struct Sheet {
    QImage image;
    std::vector<double> xs; // ticks: cut edge, perhaps where the next one is laid, other edge
    std::vector<double> ys;
    double left = 0; // where its cut corner comes to lie on the wall, px
    double top = 0;
    [[nodiscard]] double nextLeft() const { return left + xs[xs.size() - 2] - xs.front(); }
    [[nodiscard]] double nextTop() const { return top + ys[ys.size() - 2] - ys.front(); }
    [[nodiscard]] double right() const { return left + xs.back() - xs.front(); }
    [[nodiscard]] double bottom() const { return top + ys.back() - ys.front(); }
};
using Sheets = std::map<std::pair<int, int>, Sheet>; // by row and column

// The name at the foot: "Panel 2 · B3".
std::optional<std::array<int, 3>> nameOf(const QString& pdf, int number)
{
    static const QRegularExpression form(QStringLiteral("Panel (\\d+) \u00b7 ([A-Z])(\\d+) "));
    const QString at = QString::number(number);
    const QString text = QString::fromUtf8(run(QStringLiteral("pdftotext"),
        {QStringLiteral("-f"), at, QStringLiteral("-l"), at, pdf, QStringLiteral("-")}));
    const auto found = form.match(text.simplified() + QLatin1Char(' '));
    if (!found.hasMatch())
        return std::nullopt;
    return std::array{found.captured(1).toInt(),
        found.captured(2).front().unicode() - u'A',
        found.captured(3).toInt() - 1};
}

void lay(Sheets& sheets)
{
    for (auto& [at, sheet] : sheets) {
        const auto& [row, column] = at;
        if (column > 0)
            sheet.left = sheets.at({row, column - 1}).nextLeft();
        if (row > 0)
            sheet.top = sheets.at({row - 1, column}).nextTop();
    }
}

// Mean difference of the sheet, moved by whole pixels, from the panel where it lies.
double differenceAt(const Sheet& sheet, const QImage& panel, QPoint moved)
{
    const QRect part(qRound(sheet.xs.front()),
        qRound(sheet.ys.front()),
        qRound(sheet.xs.back() - sheet.xs.front()),
        qRound(sheet.ys.back() - sheet.ys.front()));
    const QPoint at = QPoint(qRound(sheet.left), qRound(sheet.top)) + moved;
    double sum = 0;
    int count = 0;
    for (int y = 8; y < part.height() - 8; y += 2) {
        for (int x = 8; x < part.width() - 8; x += 2) {
            const QPoint on(at.x() + x, at.y() + y);
            if (!panel.rect().contains(on))
                continue;
            sum += std::abs(
                qGray(sheet.image.pixel(part.x() + x, part.y() + y)) - qGray(panel.pixel(on)));
            ++count;
        }
    }
    return count > 0 ? sum / count : 0;
}

// How far from where it belongs a sheet lies, in whole px; nothing to tell by = where it is.
QPoint awayFromHome(const Sheet& sheet, const QImage& panel)
{
    QPoint best;
    double least = differenceAt(sheet, panel, best);
    for (int y = -4; y <= 4; ++y) {
        for (int x = -4; x <= 4; ++x) {
            const double d = differenceAt(sheet, panel, {x, y});
            if (d < least - 1e-3) {
                least = d;
                best = {x, y};
            }
        }
    }
    return best;
}

class SheetsOfTheSample : public ::testing::Test {
protected:
    void SetUp() override
    {
        SampleJob job;
        job.folder = at("sample");
        job.small = true;
        ASSERT_TRUE(job.run({}).ok());
        const QString book = at("sample/book");
        const QStringList which{book, QStringLiteral("--display"), QStringLiteral("Hallway")};
        run(QStringLiteral(WAINSCOT_CLI),
            QStringList{QStringLiteral("arrange")} + which
                + QStringList{QStringLiteral("--experience"),
                    QStringLiteral("Where does the puddle go?"),
                    QStringLiteral("--audience"),
                    QStringLiteral("building"),
                    QStringLiteral("--panel"),
                    QStringLiteral("A1"),
                    QStringLiteral("--landscape"),
                    QStringLiteral("--panels"),
                    QStringLiteral("2")});
        const QStringList out = QStringList{QStringLiteral("export")} + which;
        run(QStringLiteral(WAINSCOT_CLI),
            out + QStringList{QStringLiteral("--pdf"), at("whole.pdf")});
        run(QStringLiteral(WAINSCOT_CLI),
            out
                + QStringList{QStringLiteral("--pdf"),
                    at("sheets.pdf"),
                    QStringLiteral("--sheets"),
                    QStringLiteral("A4")});
    }

    [[nodiscard]] QString at(const char* name) const
    {
        return m_folder.filePath(QString::fromLatin1(name));
    }

    // The sheets of both panels, read from what is printed on them.
    std::map<int, Sheets> printed()
    {
        const QString info = QString::fromUtf8(run(QStringLiteral("pdfinfo"), {at("sheets.pdf")}));
        const int pages =
            QRegularExpression(QStringLiteral("Pages:\\s+(\\d+)")).match(info).captured(1).toInt();
        std::map<int, Sheets> panels;
        for (int number = 1; number <= pages; ++number) {
            const auto name = nameOf(at("sheets.pdf"), number);
            if (!name) {
                ++m_withoutName;
                continue;
            }
            Sheet sheet;
            sheet.image = page(at("sheets.pdf"), number);
            sheet.xs = ticksIn(sheet.image, true);
            sheet.ys = ticksIn(sheet.image, false);
            const auto [panel, row, column] = *name;
            panels[panel][{row, column}] = std::move(sheet);
        }
        return panels;
    }

    QTemporaryDir m_folder;
    int m_withoutName = 0;
};

TEST_F(SheetsOfTheSample, GoTogetherToThePanelsWithinAQuarterOfAMillimetre)
{
    std::map<int, Sheets> panels = printed();
    ASSERT_EQ(panels.size(), 2U);
    EXPECT_EQ(m_withoutName, 2) << "one that shows how they join, for each panel";
    const double pixel = 1 / kPixelsPerMm;
    for (auto& [number, sheets] : panels) {
        const int rows = sheets.rbegin()->first.first + 1;
        const int columns = sheets.rbegin()->first.second + 1;
        ASSERT_EQ(sheets.size(), std::size_t(rows * columns));
        for (const auto& [at, sheet] : sheets) {
            const std::size_t x = at.second + 1 < columns ? 3 : 2;
            const std::size_t y = at.first + 1 < rows ? 3 : 2;
            ASSERT_EQ(sheet.xs.size(), x) << "panel " << number << ", " << at.first << at.second;
            ASSERT_EQ(sheet.ys.size(), y) << "panel " << number << ", " << at.first << at.second;
        }
        lay(sheets);
        const Sheet& last = sheets.rbegin()->second;
        EXPECT_NEAR(last.right() * pixel, kPanel.width.value(), kTolerance);
        EXPECT_NEAR(last.bottom() * pixel, kPanel.height.value(), kTolerance);
        const QImage whole = page(at("whole.pdf"), number);
        double difference = 0;
        for (const auto& [at, sheet] : sheets) {
            const QPoint away = awayFromHome(sheet, whole);
            EXPECT_LE(std::hypot(away.x(), away.y()) * pixel, kTolerance)
                << "panel " << number << ", row " << at.first << ", column " << at.second;
            difference += differenceAt(sheet, whole, away) / double(sheets.size());
        }
        EXPECT_LT(difference, 3.0) << "of 255";
        // A sheet laid half a millimetre beside its place is noticed.
        Sheet crooked = sheets.begin()->second;
        crooked.left += 0.5 * kPixelsPerMm;
        EXPECT_GT(std::abs(awayFromHome(crooked, whole).x()) * pixel, kTolerance);
    }
}

} // namespace
} // namespace wainscot
