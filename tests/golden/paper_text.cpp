// Words come out of a PDF letter for letter, by two independent readers, in five scripts.
#include "layout/paper/pdf_file.h"
#include "tests/golden/paper_kit.h"

#include <QRegularExpression>
#include <gtest/gtest.h>

namespace wainscot {

using namespace paper_kit;

namespace {

struct Script {
    const char* language;
    const char* words;
    bool inPlainPoppler = true; // also by pdftotext in its plain mode
};

void PrintTo(const Script& script, std::ostream* out)
{
    *out << script.language;
}

class PaperText : public ::testing::TestWithParam<Script> {
protected:
    QTemporaryDir m_folder;
    PaintedPictures m_pictures;
    QString m_path = m_folder.filePath(QStringLiteral("text.pdf"));

    void write(const DisplayList& list)
    {
        const Result<PaperReport> report = pdf::writePages(m_path, {list}, m_pictures, options());
        ASSERT_TRUE(report.ok()) << qPrintable(report.error().detail);
        EXPECT_FALSE(report->missingLetters);
    }
};

QString poppler(const QString& path)
{
    QString text = run(QStringLiteral("pdftotext"), {path, QStringLiteral("-")});
    static const QRegularExpression direction(QStringLiteral("[\u202A-\u202E\u200E\u200F]"));
    return text.remove(direction).simplified(); // it adds marks of direction of its own
}

QString mutool(const QString& path)
{
    return run(QStringLiteral("mutool"),
        {QStringLiteral("draw"),
            QStringLiteral("-q"),
            QStringLiteral("-F"),
            QStringLiteral("txt"),
            path})
        .simplified();
}

QString structureText(const QString& path)
{
    QString all = run(QStringLiteral("pdfinfo"), {QStringLiteral("-struct-text"), path});
    QString text;
    for (const QString& line : all.split(QLatin1Char('\n'))) {
        const qsizetype from = line.indexOf(QLatin1Char('"'));
        const qsizetype to = line.lastIndexOf(QLatin1Char('"'));
        if (from >= 0 && to > from)
            text += line.mid(from + 1, to - from - 1);
    }
    return text.simplified();
}

} // namespace

TEST_P(PaperText, ComesOutLetterForLetter)
{
    const QString words = QString::fromUtf8(GetParam().words);
    Page page({Mm(300), Mm(200)});
    page.text(Role::Quote, words, {Mm(20), Mm(40)}, Mm(250), QLatin1String(GetParam().language));
    write(page.list);
    EXPECT_EQ(mutool(m_path), words) << qPrintable(mutool(m_path));
    EXPECT_EQ(structureText(m_path), words) << qPrintable(structureText(m_path));
    if (GetParam().inPlainPoppler) {
        EXPECT_EQ(poppler(m_path), words) << qPrintable(poppler(m_path));
    }
}

INSTANTIATE_TEST_SUITE_P(Scripts,
    PaperText,
    ::testing::Values(Script{"en", "The office fluffed its affable fjord, didn\xE2\x80\x99t it?"},
        Script{"vi",
            "N\xC6\xB0\xE1\xBB\x9B"
            "c m\xC6\xB0"
            "a ch\xE1\xBA\xA3y \xC4\x91i \xC4\x91\xC3\xA2u"},
        Script{"ar", "قالت مريم نزل المطر", true},
        // poppler's plain mode puts a colon before its word's space,
        // and turns round the two letters of a lam-alef, which is one glyph.
        Script{"ar", "قالت ليلى: الماء يصعد", false},
        Script{"ar", "إلى الأعلى", false},
        Script{"he", "המים הלכו לאדמה"},
        Script{"hi", "बच्चों ने क्षितिज देखा, प्रश्न पूछे"},
        Script{"zh-Hans", "孩子们发现水会往上走"},
        Script{"ru", "Лужа ушла под землю"}));

TEST_F(PaperText, KeepsWordsApartWhereLinesBreak)
{
    const QString words =
        QStringLiteral("My wet hand went off the wall and the sun drank it so where is it now");
    Page page({Mm(200), Mm(200)});
    page.text(Role::Paragraph, words, {Mm(20), Mm(30)}, Mm(60));
    int softBreaks = 0;
    for (const Mark& mark : page.list.marks)
        softBreaks += std::get<GlyphRun>(mark.shape).endsLine ? 1 : 0;
    ASSERT_GE(softBreaks, 3);
    write(page.list);
    EXPECT_EQ(structureText(m_path), words);
    EXPECT_EQ(mutool(m_path), words);
}

TEST_F(PaperText, SpellsLigaturesOut)
{
    const QString words = QStringLiteral("office fluffy affix");
    for (const char* family : {"Lato", "Vollkorn", "Nimbus Roman", "Noto Sans"}) {
        Page page({Mm(200), Mm(100)});
        const GlyphRun run = shaped(words, QLatin1String(family), 640, {Mm(20), Mm(50)});
        page.list.elements.push_back({Role::Paragraph, 0, {}, {}, {}, {}});
        page.list.marks.push_back({1, {}, run});
        write(page.list);
        EXPECT_EQ(poppler(m_path), words) << family << " " << run.glyphs.size();
        EXPECT_EQ(mutool(m_path), words) << family;
    }
}

// Fonts by glyph number, by character id and drawn one by one.
TEST_F(PaperText, ComesOutOfEveryKindOfFont)
{
    const QString words = QStringLiteral("Rain, rain (go) away!");
    for (const char* file : {"/usr/share/fonts/opentype/urw-base35/NimbusRoman-Italic.otf",
             "/usr/share/fonts/opentype/noto/NotoSansCJK-Bold.ttc",
             "/usr/share/fonts/type1/urw-base35/C059-Bold.t1"}) {
        Page page({inches(15), inches(3)}); // whole pixels at 100 dpi
        const QRawFont font(QLatin1String(file), 1280);
        ASSERT_TRUE(font.isValid()) << file;
        page.list.elements.push_back({Role::Paragraph, 0, {}, {}, {}, {}});
        page.list.marks.push_back({1, {}, plainRun(font, words, {Mm(20), Mm(50)})});
        write(page.list);
        EXPECT_EQ(poppler(m_path), words) << file;
        EXPECT_EQ(mutool(m_path), words) << file;
        const QImage seen = drawn(m_path, QStringLiteral("pdftoppm"), 1, 100);
        QImage white(seen.size(), QImage::Format_RGB32);
        white.fill(Qt::white);
        const double ink = difference(seen, white);
        EXPECT_GT(ink, 5.0) << file << " shows nothing";
        for (const char* other : {"mutool", "gs"})
            EXPECT_LT(difference(seen, drawn(m_path, QLatin1String(other), 1, 100)), 0.3 * ink)
                << file << " " << other;
    }
}

TEST_F(PaperText, PutsGlyphsWhereTheyWereLaidOut)
{
    Page page({Mm(200), Mm(100)});
    const GlyphRun run =
        shaped(QStringLiteral("AVATAR To"), QStringLiteral("Lato"), 1600, {Mm(20), Mm(50)});
    page.list.elements.push_back({Role::Paragraph, 0, {}, {}, {}, {}});
    page.list.marks.push_back({1, {}, run});
    write(page.list);
    const QString xml = paper_kit::run(QStringLiteral("mutool"),
        {QStringLiteral("draw"),
            QStringLiteral("-q"),
            QStringLiteral("-F"),
            QStringLiteral("stext"),
            m_path});
    const QRegularExpression form(QStringLiteral("<char [^>]*x=\"([-\\d.]+)\" y=\"([-\\d.]+)\""));
    auto match = form.globalMatch(xml);
    std::size_t index = 0;
    while (match.hasNext() && index < run.positions.size()) {
        const auto at = match.next();
        const double x = 20 / 25.4 * 72 + run.positions[index].x() / 16;
        const double y = 50 / 25.4 * 72 + run.positions[index].y() / 16;
        EXPECT_NEAR(at.captured(1).toDouble(), x, 0.02) << index; // 0.007 mm
        EXPECT_NEAR(at.captured(2).toDouble(), y, 0.02) << index;
        ++index;
    }
    EXPECT_EQ(index, run.positions.size());
}

TEST_F(PaperText, AdmitsAMissingLetter)
{
    Page page({Mm(200), Mm(100)});
    GlyphRun run = shaped(QStringLiteral("ab"), QStringLiteral("Lato"), 640, {Mm(20), Mm(50)});
    run.glyphs[1] = 0;
    page.list.elements.push_back({Role::Paragraph, 0, {}, {}, {}, {}});
    page.list.marks.push_back({1, {}, run});
    const Result<PaperReport> report = pdf::writePages(m_path, {page.list}, m_pictures, options());
    ASSERT_TRUE(report.ok());
    EXPECT_TRUE(report->missingLetters);
    EXPECT_FALSE(contentOf(m_path).contains("pdfaid:part>2"));
}

} // namespace wainscot
