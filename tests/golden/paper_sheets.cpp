// A panel on small paper: every part in its place, nothing stored twice.
#include "layout/paper/pdf_file.h"
#include "layout/paper/sheets.h"
#include "tests/golden/paper_kit.h"

#include <QFile>
#include <gtest/gtest.h>

namespace wainscot {

using namespace paper_kit;

namespace {

constexpr SizeMm kA4{Mm(210), Mm(297)};

class PaperSheets : public ::testing::Test {
protected:
    QTemporaryDir m_folder;
    PaintedPictures m_pictures;
    QString m_whole = m_folder.filePath(QStringLiteral("panel.pdf"));
    QString m_path = m_folder.filePath(QStringLiteral("sheets.pdf"));
    // To look at: WAINSCOT_KEEP=folder keeps what the tests write.
    void TearDown() override
    {
        const QString keep = qEnvironmentVariable("WAINSCOT_KEEP");
        if (!keep.isEmpty())
            QFile::copy(m_path, keep + QStringLiteral("/sheets.pdf"));
    }

    DisplayList panel()
    {
        Page page({Mm(400), Mm(300)});
        page.cap = Mm(14);
        page.text(
            Role::Heading1, QStringLiteral("Where does the puddle go?"), {Mm(20), Mm(40)}, Mm(380));
        page.fill({Mm(180), Mm(60), Mm(60), Mm(200)}, 0xff335577);
        page.picture(m_pictures.add({900, 600}), {Mm(20), Mm(100), Mm(150), Mm(100)});
        page.picture(m_pictures.add({900, 600}), {Mm(245), Mm(100), Mm(150), Mm(100)});
        return page.list;
    }

    PaperReport write(const std::vector<DisplayList>& lists, const SheetOptions& sheets)
    {
        const Result<PaperReport> report =
            pdf::writeSheetsOf(m_path, lists, m_pictures, options(), sheets);
        EXPECT_TRUE(report.ok()) << qPrintable(report.ok() ? QString() : report.error().detail);
        return report.ok() ? *report : PaperReport{};
    }
};

} // namespace

TEST_F(PaperSheets, ShowEveryPartOfThePanelInItsPlace)
{
    const DisplayList list = panel();
    const SheetOptions sheets{kA4, Mm(30)}; // so much that a seam can leave the picture
    const Result<SheetPlan> plan = planSheets(list.size, sheets);
    ASSERT_TRUE(plan.ok());
    const SheetPlan quiet = withQuietSeams(*plan, list);
    EXPECT_NE(quiet.lefts, plan->lefts) << "the seam through the right picture moves";
    ASSERT_TRUE(pdf::writePages(m_whole, {list}, m_pictures, options()).ok());
    const PaperReport report = write({list}, sheets);
    EXPECT_EQ(report.pages, quiet.count() + 1);
    const QImage whole = drawn(m_whole, QStringLiteral("pdftoppm"), 1, 127); // 5 px per mm
    for (int row = 0; row < quiet.rows; ++row) {
        for (int column = 0; column < quiet.columns; ++column) {
            const RectMm area = quiet.area(column, row);
            const QImage sheet =
                drawn(m_path, QStringLiteral("pdftoppm"), 2 + row * quiet.columns + column, 127);
            const auto px = [](Mm length) { return static_cast<int>(length.value() * 5); };
            const QSize size(px(area.width), px(area.height));
            const QImage part = sheet.copy(QRect(QPoint(35, 35), size)); // 7 mm margin
            const QImage wanted = whole.copy(QRect(QPoint(px(area.x), px(area.y)), size));
            EXPECT_LT(difference(part, wanted), 1.5) << qPrintable(sheetName(column, row));
            // One millimetre off must be seen, or this comparison would prove nothing.
            const QImage off = whole.copy(QRect(QPoint(px(area.x) + 5, px(area.y) + 5), size));
            EXPECT_GT(difference(part, off), 2 * difference(part, wanted));
        }
    }
}

TEST_F(PaperSheets, LeaveTheMarginFreeOfThePanel)
{
    write({panel()}, {kA4});
    const QImage sheet = drawn(m_path, QStringLiteral("pdftoppm"), 2, 127);
    for (int y = 0; y < sheet.height(); ++y)
        EXPECT_EQ(qGray(sheet.pixel(10, y)), 255) << y; // 2 mm from the edge
}

TEST_F(PaperSheets, StoreThePanelOnce)
{
    const DisplayList list = panel();
    const Result<PaperReport> whole = pdf::writePages(m_whole, {list}, m_pictures, options());
    ASSERT_TRUE(whole.ok());
    const PaperReport report = write({list}, {kA4});
    EXPECT_EQ(report.pictures, 2);
    EXPECT_LT(double(report.bytes), double(whole->bytes) + 40000);
    const QByteArray plain = run(QStringLiteral("qpdf"),
        {QStringLiteral("--qdf"),
            QStringLiteral("--object-streams=disable"),
            m_path,
            QStringLiteral("-")})
                                 .toUtf8();
    EXPECT_EQ(plain.count("/Subtype /Form"), 1);
    EXPECT_EQ(plain.count("/Subtype /Image"), 2);
    EXPECT_FALSE(plain.contains("/StructTreeRoot"));
    (void)run(QStringLiteral("qpdf"), {QStringLiteral("--check"), m_path});
}

TEST_F(PaperSheets, NameEverySheetAndTheSheetsItIsLaidOn)
{
    write({panel(), panel()}, {kA4});
    const QString text =
        run(QStringLiteral("pdftotext"), {QStringLiteral("-raw"), m_path, QStringLiteral("-")})
            .simplified();
    for (const char* wanted : {"Panel 1",
             "Panel 2",
             "start here",
             "cut at the left ticks, lay on A1",
             "cut at the left and top ticks, lay on B1 and A2",
             "100 mm"})
        EXPECT_TRUE(text.contains(QLatin1String(wanted))) << wanted << "\n" << qPrintable(text);
    const QString fonts = run(QStringLiteral("pdffonts"), {m_path});
    EXPECT_FALSE(fonts.contains(QStringLiteral(" no ")));
}

// The line on the first sheet, measured on the page as drawn.
TEST_F(PaperSheets, DrawARulerOfOneHundredMillimetres)
{
    write({panel()}, {kA4});
    const QImage sheet = drawn(m_path, QStringLiteral("pdftoppm"), 1, 254); // 10 px per mm
    int longest = 0;
    // The panel's own outline is left out: the ruler is the longest line that begins at the inset.
    for (int y = 0; y < sheet.height(); ++y) {
        int length = 0;
        for (int x = 101; x < sheet.width() && qGray(sheet.pixel(x, y)) < 140; ++x)
            ++length;
        longest = std::max(longest, length);
    }
    EXPECT_NEAR(longest, 1000, 4);
}

// A printer that prints 100 mm as 98 is given 100/98 of everything, around the sheet's middle.
TEST_F(PaperSheets, MakeGoodForAPrinterThatDoesNotKeepTheSize)
{
    const DisplayList list = panel();
    const auto sheet = [&](double scale) {
        SheetOptions options{kA4};
        options.scale = scale;
        write({list}, options);
        return drawn(m_path, QStringLiteral("pdftoppm"), 1, 254); // 10 px per mm
    };
    const auto ruler = [](const QImage& page) {
        int longest = 0;
        for (int y = page.height() * 3 / 4; y < page.height(); ++y) {
            int length = 0;
            for (int x = 0; x < page.width(); ++x) {
                length = qGray(page.pixel(x, y)) < 140 ? length + 1 : 0;
                longest = std::max(longest, length);
            }
        }
        return longest;
    };
    const QImage even = sheet(1);
    const QImage larger = sheet(100.0 / 98);
    EXPECT_EQ(even.size(), larger.size()) << "the paper stays as it is";
    EXPECT_NEAR(ruler(even), 1000, 4);
    EXPECT_NEAR(ruler(larger), 1000 / 0.98, 4);
}

// Every page is called what is printed on it, so that one sheet can be printed again by its name.
TEST_F(PaperSheets, AreCalledByTheirNames)
{
    const DisplayList list = panel();
    const Result<SheetPlan> plan = planSheets(list.size, {kA4});
    ASSERT_TRUE(plan.ok());
    write({list, list}, {kA4});
    const QString labels = run(QStringLiteral("qpdf"),
        {QStringLiteral("--json=1"), QStringLiteral("--json-key=pagelabels"), m_path})
                               .simplified()
                               .remove(u' ');
    for (const char* name : {"1Together", "1A1", "1A2", "1B1", "2Together", "2A1"})
        EXPECT_TRUE(labels.contains(QStringLiteral("\"%1\"").arg(QLatin1String(name))))
            << name << qPrintable(labels);
    EXPECT_EQ(labels.count(QStringLiteral("\"index\"")), 2 * (plan->count() + 1));
}

// What is left out is white on the page of a run that leaves nothing out.
TEST_F(PaperSheets, LeaveOutWhatStaysWhiteWhereThatIsWanted)
{
    Page page({Mm(560), Mm(560)});
    page.cap = Mm(14);
    page.text(Role::Heading1, QStringLiteral("Where does it go?"), {Mm(20), Mm(40)}, Mm(380));
    page.picture(m_pictures.add({900, 600}), {Mm(20), Mm(100), Mm(90), Mm(60)});
    const SheetOptions all{kA4};
    SheetOptions some = all;
    some.leaveOutWhite = true;
    const Result<SheetPlan> even = planSheets(page.list.size, all);
    ASSERT_TRUE(even.ok());
    const SheetPlan plan = withQuietSeams(*even, page.list);
    ASSERT_GT(plan.whiteCount(), 2);
    ASSERT_LT(plan.whiteCount(), plan.count());
    write({page.list}, all);
    for (int index = 0; index < plan.count(); ++index) {
        const int column = index % plan.columns;
        const int row = index / plan.columns;
        const RectMm area = plan.area(column, row);
        const QImage sheet = drawn(m_path, QStringLiteral("pdftoppm"), 2 + index, 50);
        const auto px = [](Mm length) { return static_cast<int>(length.value() * 50 / 25.4); };
        const Mm inside(7 + 2);
        const QImage part =
            sheet.copy(px(inside), px(inside), px(area.width - Mm(4)), px(area.height - Mm(4)));
        bool isWhite = true;
        for (int y = 0; y < part.height(); ++y) {
            for (int x = 0; x < part.width(); ++x)
                isWhite = isWhite && qGray(part.pixel(x, y)) > 250;
        }
        EXPECT_EQ(isWhite, plan.isWhite(column, row)) << qPrintable(sheetName(column, row));
    }
    EXPECT_EQ(write({page.list}, some).pages, 1 + plan.count() - plan.whiteCount());
    const QString text =
        run(QStringLiteral("pdftotext"), {QStringLiteral("-raw"), m_path, QStringLiteral("-")})
            .simplified();
    EXPECT_TRUE(text.contains(
        QStringLiteral("%1 would stay white and are left out").arg(plan.whiteCount())))
        << qPrintable(text);
}

TEST_F(PaperSheets, AreByteIdenticalEachTime)
{
    const DisplayList list = panel();
    write({list}, {kA4});
    const QByteArray first = contentOf(m_path);
    write({list}, {kA4});
    EXPECT_TRUE(contentOf(m_path) == first);
}

TEST_F(PaperSheets, RefusePaperThatIsAllMargin)
{
    const Result<PaperReport> report = pdf::writeSheetsOf(
        m_path, {panel()}, m_pictures, options(), {{Mm(30), Mm(30)}, Mm(10), Mm(7)});
    ASSERT_FALSE(report.ok());
    EXPECT_EQ(report.error().code, ErrorCode::WrongUse);
    EXPECT_TRUE(contentOf(m_path).isEmpty());
}

} // namespace wainscot
