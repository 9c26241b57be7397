// Whole files as independent readers see them.
#include "layout/paper/pdf_file.h"
#include "tests/golden/paper_kit.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QRegularExpression>

namespace wainscot {

using namespace paper_kit;

namespace {

class PaperPages : public ::testing::Test {
protected:
    QTemporaryDir m_folder;
    PaintedPictures m_pictures;
    QString path(const char* name = "panel.pdf") { return m_folder.filePath(QLatin1String(name)); }

    // A little panel with everything that can be on one.
    DisplayList panel()
    {
        Page page({Mm(420), Mm(297)});
        page.fill({Mm(0), Mm(0), Mm(420), Mm(60)}, 0xffdde6ea);
        page.cap = Mm(9);
        page.text(
            Role::Heading1, QStringLiteral("Where does the puddle go?"), {Mm(20), Mm(35)}, Mm(380));
        page.cap = Mm(5);
        page.text(Role::Quote,
            QStringLiteral("It went off into the ground because it was thirsty."),
            {Mm(20), Mm(90)},
            Mm(120));
        page.voice = Voice::Adult;
        ClearedPicture photo = m_pictures.add({900, 600});
        const int figure = page.picture(photo, {Mm(170), Mm(80), Mm(150), Mm(100)});
        page.list.elements.push_back({Role::Caption, figure, {}, {}, {}, {}});
        page.cap = Mm(3);
        page.more(static_cast<int>(page.list.elements.size()) - 1,
            QStringLiteral("Chalk line at ten, puddle at eleven"),
            {Mm(170), Mm(187)},
            Mm(150));
        page.picture(m_pictures.add({600, 600}), {Mm(340), Mm(217), Mm(80), Mm(80)});
        return page.list;
    }

    PaperReport write(const std::vector<DisplayList>& lists, PaperOptions with = options())
    {
        const Result<PaperReport> report = pdf::writePages(path(), lists, m_pictures, with);
        EXPECT_TRUE(report.ok()) << qPrintable(report.ok() ? QString() : report.error().detail);
        return report.ok() ? *report : PaperReport{};
    }
};

QString boxOf(const QString& info, const char* name)
{
    const QRegularExpression form(QLatin1String(name) + QStringLiteral(":\\s+([-\\d. ]+)"));
    return form.match(info).captured(1).simplified();
}

} // namespace

TEST_F(PaperPages, OpenCleanInQpdf)
{
    const PaperReport report = write({panel(), panel()});
    EXPECT_EQ(report.pages, 2);
    EXPECT_FALSE(report.missingLetters);
    EXPECT_EQ(report.bytes, contentOf(path()).size());
    const QString checked = run(QStringLiteral("qpdf"), {QStringLiteral("--check"), path()});
    EXPECT_TRUE(checked.contains(QStringLiteral("No syntax or stream encoding errors")));
}

TEST_F(PaperPages, HaveBoxesExactToAHundredthOfAMillimetre)
{
    PaperOptions with = options();
    with.bleed = Mm(3);
    with.cropMarks = true;
    write({panel()}, with);
    const QString info = run(QStringLiteral("pdfinfo"), {QStringLiteral("-box"), path()});
    // 420 x 297 mm; trim 9 mm inside the media, bleed 6 mm; 1 mm = 72/25.4 pt.
    EXPECT_EQ(boxOf(info, "MediaBox"), QStringLiteral("0.00 0.00 1241.57 892.91"));
    EXPECT_EQ(boxOf(info, "BleedBox"), QStringLiteral("17.01 17.01 1224.57 875.91"));
    EXPECT_EQ(boxOf(info, "TrimBox"), QStringLiteral("25.51 25.51 1216.06 867.40"));
}

TEST_F(PaperPages, BleedColourAndPicturesWhereTheyTouchTheEdge)
{
    PaperOptions with = options();
    with.bleed = Mm(3);
    write({panel()}, with);
    const QImage page = drawn(path(), QStringLiteral("pdftoppm"), 1, 127); // 5 px per mm
    EXPECT_EQ(page.pixel(2, 2), 0xffdde6ea);
    EXPECT_EQ(page.pixel(page.width() - 3, 100), 0xffdde6ea);
    EXPECT_EQ(page.pixel(2, page.height() - 3), 0xffffffff);
    const QRgb corner = page.pixel(page.width() - 3, page.height() - 3); // yellow quarter
    EXPECT_GT(qRed(corner), 200);
    EXPECT_GT(qGreen(corner), 200);
    EXPECT_LT(qBlue(corner), 90);
}

TEST_F(PaperPages, DrawCropMarksAtTheTrimOnly)
{
    PaperOptions with = options();
    with.cropMarks = true;
    write({panel()}, with);
    const QImage page = drawn(path(), QStringLiteral("pdftoppm"), 1, 254); // 10 px per mm
    const int trim = 90;
    const auto darkest = [&](int y) {
        int found = -1;
        int value = 255;
        for (int x = 60; x < 120; ++x) {
            if (qGray(page.pixel(x, y)) < value) {
                value = qGray(page.pixel(x, y));
                found = x;
            }
        }
        return found;
    };
    EXPECT_NEAR(darkest(35), trim, 1); // in the mark, 1 to 6 mm from the paper's edge
    EXPECT_EQ(qGray(page.pixel(trim, 75)), 255); // between mark and trim
    EXPECT_EQ(qGray(page.pixel(trim, 3)), 255); // beyond the mark
}

TEST_F(PaperPages, EmbedEveryFontAsASubsetWithUnicode)
{
    write({panel()});
    const QStringList lines =
        run(QStringLiteral("pdffonts"), {path()}).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    ASSERT_GE(lines.size(), 4);
    const QRegularExpression form(
        QStringLiteral("^[A-Z]{6}\\+\\S+\\s+CID (TrueType|Type 0C)\\s+Identity-H\\s+yes yes yes"));
    for (qsizetype i = 2; i < lines.size(); ++i)
        EXPECT_TRUE(form.match(lines[i]).hasMatch()) << qPrintable(lines[i]);
}

TEST_F(PaperPages, AreByteIdenticalEachTime)
{
    const DisplayList list = panel();
    PaperOptions with = options();
    with.workers = 3;
    write({list, list}, with);
    const QByteArray first = contentOf(path());
    with.workers = 1;
    write({list, list}, with);
    EXPECT_GT(first.size(), 10000);
    EXPECT_TRUE(contentOf(path()) == first);
}

TEST_F(PaperPages, SayTitleLanguageAndDateAndNothingElse)
{
    write({panel()});
    const QString info = run(QStringLiteral("pdfinfo"), {QStringLiteral("-isodates"), path()});
    EXPECT_THAT(info.toStdString(), ::testing::ContainsRegex("Title: +Rain on the wall"));
    EXPECT_THAT(
        info.toStdString(), ::testing::ContainsRegex("CreationDate: +2026-03-02T0[89]:30:00"));
    for (const char* absent : {"Creator:", "Producer:", "Author:", "Keywords:"})
        EXPECT_FALSE(info.contains(QLatin1String(absent))) << absent;
    const QByteArray plain = run(QStringLiteral("qpdf"),
        {QStringLiteral("--qdf"),
            QStringLiteral("--object-streams=disable"),
            path(),
            QStringLiteral("-")})
                                 .toUtf8();
    EXPECT_TRUE(plain.contains("/Lang (en)"));
    EXPECT_TRUE(plain.contains("/DisplayDocTitle true"));
    EXPECT_TRUE(plain.contains("<pdfaid:part>2</pdfaid:part>"));
    EXPECT_TRUE(plain.contains("xmp:CreateDate>2026-03-02T09:30:00+01:00"));
    EXPECT_FALSE(plain.contains(qgetenv("USER").isEmpty() ? "/home/" : qgetenv("USER")));
    EXPECT_FALSE(plain.contains("/tmp/"));
}

// Some of the rules of ISO 19005-2 as the veraPDF profile PDFA-2B states them: 6.1.2, 6.1.3, 6.2.3,
// 6.2.4.3, 6.2.8, 6.2.10, 6.6.2.1.
TEST_F(PaperPages, KeepTheRulesForArchivingThatCanBeSeenInTheSource)
{
    PaperOptions with = options();
    with.bleed = Mm(3);
    with.cropMarks = true;
    write({panel()}, with);
    const QByteArray raw = contentOf(path());
    EXPECT_TRUE(raw.startsWith("%PDF-1.7\n%"));
    for (int i = 10; i < 14; ++i)
        EXPECT_GT(static_cast<unsigned char>(raw[i]), 127);
    EXPECT_TRUE(raw.trimmed().endsWith("%%EOF"));
    const QByteArray plain = run(QStringLiteral("qpdf"),
        {QStringLiteral("--qdf"),
            QStringLiteral("--object-streams=disable"),
            path(),
            QStringLiteral("-")})
                                 .toUtf8();
    for (const char* wanted : {"/ID [", "/OutputIntents", "/GTS_PDFA1", "/Metadata", "/MarkInfo"})
        EXPECT_TRUE(plain.contains(wanted)) << wanted;
    for (const char* banned : {"/Interpolate",
             "/SMask",
             "/ca ",
             "/CA ",
             "/BM ",
             "/LZWDecode",
             "/Encrypt",
             "/JavaScript",
             "/AA ",
             "/DeviceCMYK",
             "/TR ",
             "/Annots"})
        EXPECT_FALSE(plain.contains(banned)) << banned;
}

TEST_F(PaperPages, TellTheirStructureInReadingOrder)
{
    write({panel()});
    const QString tree = run(QStringLiteral("pdfinfo"), {QStringLiteral("-struct-text"), path()});
    const QStringList order{QStringLiteral("Document"),
        QStringLiteral("H1"),
        QStringLiteral("Where does the puddle go?"),
        QStringLiteral("BlockQuote"),
        QStringLiteral("It went off into the ground because it was thirsty."),
        QStringLiteral("Figure"),
        QStringLiteral("Caption"),
        QStringLiteral("Chalk line at ten, puddle at eleven"),
        QStringLiteral("Figure")};
    qsizetype at = 0;
    for (const QString& next : order) {
        const qsizetype found = tree.indexOf(next, at);
        ASSERT_GE(found, 0) << qPrintable(next) << "\n" << qPrintable(tree);
        at = found + next.size();
    }
    const QString attributes = run(QStringLiteral("pdfinfo"), {QStringLiteral("-struct"), path()});
    EXPECT_TRUE(attributes.contains(QStringLiteral("BBox")));
    EXPECT_TRUE(contentOf(path()).size() > 0);
}

TEST_F(PaperPages, TellTheLanguageOfATextInAnother)
{
    Page page({Mm(200), Mm(100)});
    page.text(Role::Quote, QStringLiteral("In the ground."), {Mm(20), Mm(30)}, Mm(120));
    page.text(Role::Quote,
        QStringLiteral("الماء راح في الأرض"),
        {Mm(20), Mm(60)},
        Mm(120),
        QStringLiteral("ar"));
    write({page.list});
    const QByteArray plain = run(QStringLiteral("qpdf"),
        {QStringLiteral("--qdf"),
            QStringLiteral("--object-streams=disable"),
            path(),
            QStringLiteral("-")})
                                 .toUtf8();
    EXPECT_EQ(plain.count("/Lang (ar)"), 1);
    EXPECT_GE(plain.count("/Lang (en)"), 1);
}

// As independent readers name them: qpdf's page labels, mupdf's outline.
TEST_F(PaperPages, TellWhichPanelAPageIs)
{
    write({panel(), panel()});
    const QString labels = run(QStringLiteral("qpdf"),
        {QStringLiteral("--json=1"), QStringLiteral("--json-key=pagelabels"), path()})
                               .simplified()
                               .remove(u' ');
    EXPECT_TRUE(labels.contains(QStringLiteral("\"index\":0"))) << qPrintable(labels);
    EXPECT_TRUE(labels.contains(QStringLiteral("\"/P\":\"Panel\""))) << qPrintable(labels);
    EXPECT_TRUE(labels.contains(QStringLiteral("\"/S\":\"/D\""))) << qPrintable(labels);
    const QString outline =
        run(QStringLiteral("mutool"), {QStringLiteral("show"), path(), QStringLiteral("outline")});
    EXPECT_TRUE(outline.contains(QStringLiteral("Panel 1"))) << qPrintable(outline);
    EXPECT_TRUE(outline.contains(QStringLiteral("Panel 2"))) << qPrintable(outline);
}

TEST_F(PaperPages, TellWhatFiguresShow)
{
    write({panel()});
    const QByteArray plain = run(QStringLiteral("qpdf"),
        {QStringLiteral("--qdf"),
            QStringLiteral("--object-streams=disable"),
            path(),
            QStringLiteral("-")})
                                 .toUtf8();
    EXPECT_TRUE(plain.contains("/Alt (Chalk lines round puddle 1)"));
    EXPECT_TRUE(plain.contains("/Alt (Chalk lines round puddle 2)"));
}

TEST_F(PaperPages, LookTheSameInThreeReaders)
{
    PaperOptions with = options();
    with.bleed = Mm(3);
    with.cropMarks = true;
    write({panel()}, with);
    const QImage poppler = drawn(path(), QStringLiteral("pdftoppm"), 1, 72);
    ASSERT_GT(poppler.width(), 1000);
    EXPECT_GT(difference(poppler, QImage(poppler.size(), QImage::Format_Grayscale8)), 100)
        << "an empty page would agree with itself";
    for (const char* other : {"mutool", "gs"})
        EXPECT_LT(difference(poppler, drawn(path(), QLatin1String(other), 1, 72)), 2.0) << other;
}

} // namespace wainscot
