// The whole way as a teacher would go it, run as a program: a sample class with small pictures, a
// new book, gathering, arranging, checking, paper. Independent readers look at the PDF.
#include "app/jobs/book_jobs.h"
#include "app/jobs/kept_limits.h"
#include "app/jobs/wall_plan.h"
#include "core/store/book_store.h"
#include "tests/support/media_pictures.h"
#include "tests/support/scan_files.h"

#include <QDir>
#include <QDirIterator>
#include <QImage>
#include <QImageReader>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

#include <map>

#include <gmock/gmock.h>

namespace wainscot {
namespace {

using ::testing::HasSubstr;
using ::testing::Not;

const QString kPuddle = QStringLiteral("Where does the puddle go?");

struct Ran {
    int exit = -1;
    QByteArray out;
    QByteArray err;
    [[nodiscard]] QJsonObject json() const
    {
        QJsonParseError fault;
        const QJsonDocument document = QJsonDocument::fromJson(out, &fault);
        EXPECT_EQ(fault.error, QJsonParseError::NoError) << out.toStdString();
        return document.object();
    }
};

Ran runTool(const QString& tool, const QStringList& arguments)
{
    QProcess process;
    process.start(tool, arguments);
    EXPECT_TRUE(process.waitForFinished(300'000)) << tool.toStdString();
    return {process.exitCode(), process.readAllStandardOutput(), process.readAllStandardError()};
}

Ran cli(const QStringList& arguments)
{
    return runTool(QStringLiteral(WAINSCOT_CLI), arguments);
}

QStringList keysOf(const QJsonValue& value)
{
    return value.toObject().keys();
}

QStringList sorted(QStringList keys)
{
    keys.sort();
    return keys;
}

// Made once for all tests: the class's files, and a book gathered through the command line.
class Chain : public ::testing::Test {
protected:
    static void SetUpTestSuite()
    {
        s_folder = new QTemporaryDir;
        // What somebody set on this computer is none of the tests' business.
        ::qputenv("XDG_CONFIG_HOME", QFile::encodeName(at(QStringLiteral("settings"))));
        SampleJob job;
        job.folder = s_folder->filePath(QStringLiteral("sample"));
        job.small = true;
        ASSERT_TRUE(job.run({}).ok());
        ASSERT_EQ(cli({QStringLiteral("new"),
                          book(),
                          QStringLiteral("--title"),
                          QStringLiteral("Sparrows")})
                      .exit,
            0);
    }
    static void TearDownTestSuite() { delete s_folder; }

    static QString at(const QString& name) { return s_folder->filePath(name); }
    static QString book() { return at(QStringLiteral("book")); }
    static QString sampleBook() { return at(QStringLiteral("sample/book")); }

    static Ran arrange(
        const QString& display, const QString& audience, const QStringList& more = {})
    {
        return cli(QStringList{QStringLiteral("arrange"),
                       sampleBook(),
                       QStringLiteral("--experience"),
                       kPuddle,
                       QStringLiteral("--display"),
                       display,
                       QStringLiteral("--audience"),
                       audience,
                       QStringLiteral("--panel"),
                       QStringLiteral("A1"),
                       QStringLiteral("--landscape"),
                       QStringLiteral("--json")}
            + more);
    }

    static QTemporaryDir* s_folder;
};
QTemporaryDir* Chain::s_folder = nullptr;

TEST_F(Chain, GathersAClassFromItsFiles)
{
    const Ran children = cli({QStringLiteral("gather"),
        book(),
        QStringLiteral("--children"),
        at(QStringLiteral("sample/children.csv")),
        QStringLiteral("--json")});
    EXPECT_EQ(children.exit, 0);
    EXPECT_EQ(children.json().keys(),
        sorted({QStringLiteral("added"), QStringLiteral("updated"), QStringLiteral("skipped")}));
    EXPECT_EQ(children.json()[u"added"].toInt(), 14);
    const Ran words = cli({QStringLiteral("gather"),
        book(),
        QStringLiteral("--experience"),
        kPuddle,
        QStringLiteral("--on"),
        QStringLiteral("2026-11-02"),
        QStringLiteral("--quotes"),
        at(QStringLiteral("sample/quotes.csv")),
        QStringLiteral("--json")});
    EXPECT_EQ(words.exit, 0);
    EXPECT_GT(words.json()[u"added"].toInt(), 30);
    EXPECT_TRUE(words.json()[u"skipped"].toArray().isEmpty()) << words.out.toStdString();
    const Ran photos = cli({QStringLiteral("gather"),
        book(),
        QStringLiteral("--experience"),
        kPuddle,
        QStringLiteral("--photos"),
        at(QStringLiteral("sample/pictures")),
        QStringLiteral("--json")});
    EXPECT_EQ(photos.exit, 0);
    EXPECT_GT(photos.json()[u"added"].toInt(), 15);

    const QJsonObject shown =
        cli({QStringLiteral("show"), book(), QStringLiteral("--json")}).json();
    EXPECT_EQ(shown.keys(),
        sorted({QStringLiteral("title"),
            QStringLiteral("children"),
            QStringLiteral("experiences"),
            QStringLiteral("displays")}));
    EXPECT_EQ(shown[u"children"].toArray().size(), 14);
    const QJsonValue experience = shown[u"experiences"].toArray().at(0);
    EXPECT_EQ(keysOf(experience),
        sorted({QStringLiteral("title"),
            QStringLiteral("on"),
            QStringLiteral("quotes"),
            QStringLiteral("photos"),
            QStringLiteral("not_yet_heard")}));
    EXPECT_EQ(experience[u"on"].toString(), QStringLiteral("2026-11-02"));
    EXPECT_EQ(keysOf(experience[u"not_yet_heard"].toArray().at(0)),
        sorted({QStringLiteral("child"), QStringLiteral("prompts")}));

    const QJsonObject verified =
        cli({QStringLiteral("verify"), book(), QStringLiteral("--json")}).json();
    EXPECT_EQ(verified.keys(),
        sorted({QStringLiteral("ok"), QStringLiteral("pictures"), QStringLiteral("problems")}));
    EXPECT_TRUE(verified[u"ok"].toBool());
}

TEST_F(Chain, TakesThePagesOfAScannedPile)
{
    const QString folder = at(QStringLiteral("scans"));
    ASSERT_TRUE(QDir().mkpath(folder));
    test::writeFile(folder + QStringLiteral("/pile.pdf"),
        test::pdfOf(
            {test::cornersPage({300, 200}), test::blankPage(), test::cornersPage({200, 300})},
            "Scanned by Room 4711"));
    test::writeFile(folder + QStringLiteral("/torn.pdf"), "%PDF-1.4");
    const auto gather = [](const QString& from) {
        return cli({QStringLiteral("gather"),
            book(),
            QStringLiteral("--experience"),
            QStringLiteral("A pile from the copier"),
            QStringLiteral("--photos"),
            from,
            QStringLiteral("--json")});
    };
    const Ran first = gather(folder);
    EXPECT_EQ(first.exit, 0) << first.err.toStdString();
    EXPECT_EQ(first.json()[u"added"].toInt(), 2);
    const QJsonArray skipped = first.json()[u"skipped"].toArray();
    ASSERT_EQ(skipped.size(), 2);
    EXPECT_EQ(skipped[0][u"file"].toString(), QStringLiteral("pile.pdf"));
    EXPECT_EQ(skipped[0][u"why"].toString(),
        QStringLiteral("pile.pdf, page 2, is blank and was left out."));
    EXPECT_EQ(skipped[1][u"why"].toString(),
        QStringLiteral("torn.pdf is damaged: the PDF breaks off or was changed."));
    const Ran again = gather(folder + QStringLiteral("/pile.pdf"));
    EXPECT_EQ(again.exit, 0);
    EXPECT_EQ(again.json()[u"added"].toInt(), 0) << "the same pages are there";
    // Neither the book nor its pictures know what the file said of itself.
    QDirIterator files(book(), QDir::Files, QDirIterator::Subdirectories);
    int seen = 0;
    while (files.hasNext()) {
        EXPECT_FALSE(test::readFile(files.next()).contains("Scanned by Room 4711"))
            << "title and author";
        ++seen;
    }
    EXPECT_GE(seen, 3);
}

TEST_F(Chain, ListensWithItsKeys)
{
    const QStringList words{QStringLiteral("listen"),
        sampleBook(),
        QStringLiteral("--experience"),
        kPuddle,
        QStringLiteral("--json")};
    const Ran listened = cli(words);
    EXPECT_EQ(listened.exit, 0);
    const QJsonObject heard = listened.json();
    EXPECT_EQ(heard.keys(),
        sorted({QStringLiteral("not_yet_heard"),
            QStringLiteral("groups"),
            QStringLiteral("on_their_own")}));
    EXPECT_FALSE(heard[u"not_yet_heard"].toArray().isEmpty());
    const QJsonArray groups = heard[u"groups"].toArray();
    ASSERT_FALSE(groups.isEmpty()) << listened.out.toStdString();
    EXPECT_EQ(keysOf(groups[0]), sorted({QStringLiteral("label"), QStringLiteral("quotes")}));
    EXPECT_EQ(keysOf(groups[0].toObject()[u"quotes"].toArray().at(0)),
        sorted({QStringLiteral("id"),
            QStringLiteral("child"),
            QStringLiteral("prompt"),
            QStringLiteral("words")}));
    qsizetype quotes = heard[u"on_their_own"].toArray().size();
    for (const QJsonValue group : groups)
        quotes += group.toObject()[u"quotes"].toArray().size();
    EXPECT_EQ(quotes, 39);
    const Ran fewer = cli(words + QStringList{QStringLiteral("--groups"), QStringLiteral("1")});
    EXPECT_EQ(fewer.json()[u"groups"].toArray().size(), 1) << fewer.out.toStdString();
}

TEST_F(Chain, ArrangesAndChecksWithTheirKeys)
{
    const Ran arranged = arrange(QStringLiteral("Hallway"), QStringLiteral("building"));
    ASSERT_EQ(arranged.exit, 0) << arranged.err.toStdString();
    const QJsonObject json = arranged.json();
    EXPECT_EQ(json.keys(),
        sorted({QStringLiteral("display"),
            QStringLiteral("panels"),
            QStringLiteral("pieces"),
            QStringLiteral("left_out"),
            QStringLiteral("arrangement"),
            QStringLiteral("plan"),
            QStringLiteral("dropped_wishes"),
            QStringLiteral("advice")}));
    EXPECT_EQ(json[u"plan"].toString(), QStringLiteral("days"));
    EXPECT_EQ(json[u"panels"].toInt(), 1);
    EXPECT_EQ(json[u"pieces"].toInt(), json[u"arrangement"].toArray().size());
    EXPECT_EQ(keysOf(json[u"left_out"].toArray().at(0)),
        sorted({QStringLiteral("what"), QStringLiteral("id"), QStringLiteral("why")}));
    for (const QJsonValue& piece : json[u"arrangement"].toArray()) {
        EXPECT_EQ(keysOf(piece),
            sorted({QStringLiteral("panel"),
                QStringLiteral("piece"),
                QStringLiteral("kind"),
                QStringLiteral("x_mm"),
                QStringLiteral("y_mm"),
                QStringLiteral("width_mm"),
                QStringLiteral("height_mm"),
                QStringLiteral("keep"),
                QStringLiteral("ppi")}));
        EXPECT_GE(piece[u"x_mm"].toDouble(), 12);
        EXPECT_LE(piece[u"x_mm"].toDouble() + piece[u"width_mm"].toDouble(), 841 - 12);
        EXPECT_LE(piece[u"y_mm"].toDouble() + piece[u"height_mm"].toDouble(), 594 - 12);
    }
    const Ran checked = cli({QStringLiteral("check"),
        sampleBook(),
        QStringLiteral("--display"),
        QStringLiteral("hallway"),
        QStringLiteral("--json")});
    EXPECT_EQ(checked.exit, 0) << checked.out.toStdString();
    EXPECT_EQ(
        checked.json().keys(), sorted({QStringLiteral("display"), QStringLiteral("findings")}));
    for (const QJsonValue& finding : checked.json()[u"findings"].toArray()) {
        EXPECT_EQ(keysOf(finding),
            sorted({QStringLiteral("severity"),
                QStringLiteral("rule"),
                QStringLiteral("panel"),
                QStringLiteral("piece"),
                QStringLiteral("measured"),
                QStringLiteral("limit"),
                QStringLiteral("unit"),
                QStringLiteral("source"),
                QStringLiteral("says")}));
        EXPECT_NE(finding[u"severity"].toString(), QStringLiteral("stop"));
    }
}

TEST_F(Chain, ChecksAgainstLimitsOfOnesOwnAndLooksAtSeams)
{
    ASSERT_EQ(arrange(QStringLiteral("Hallway"), QStringLiteral("building")).exit, 0);
    const auto checked = [&](const QStringList& more) {
        return cli(QStringList{QStringLiteral("check"),
                       sampleBook(),
                       QStringLiteral("--display"),
                       QStringLiteral("hallway"),
                       QStringLiteral("--json")}
            + more);
    };
    const auto count = [](const Ran& ran, const QString& rule) {
        int found = 0;
        for (const QJsonValue& finding : ran.json()[u"findings"].toArray())
            found += finding[u"rule"].toString().startsWith(rule) ? 1 : 0;
        return found;
    };
    EXPECT_EQ(count(checked({}), QStringLiteral("line.voice")), 0);
    const Ran own = checked({QStringLiteral("--limit"), QStringLiteral("line.voice=10")});
    EXPECT_GT(count(own, QStringLiteral("line.voice")), 0);
    EXPECT_EQ(count(checked({}), QStringLiteral("seam.")), 0);
    const Ran seams = checked({QStringLiteral("--sheets"), QStringLiteral("A4")});
    EXPECT_GT(count(seams, QStringLiteral("seam.")), 0);
    const Ran listed = checked({QStringLiteral("--limits")});
    EXPECT_GT(listed.json()[u"limits"].toArray().size(), 50);
    for (const QJsonValue& row : listed.json()[u"limits"].toArray())
        EXPECT_FALSE(row[u"source"].toString().isEmpty()) << row[u"rule"].toString().toStdString();
    for (const char* wrong : {"line.voice", "line.voice=x", "no.rule=3", "permission.piece=9"})
        EXPECT_EQ(checked({QStringLiteral("--limit"), QString::fromLatin1(wrong)}).exit, 2)
            << wrong;
    EXPECT_EQ(checked({QStringLiteral("--overlap"), QStringLiteral("5mm")}).exit, 2);
}

// The window keeps limits of this computer; the command line measures by them and says so.
TEST_F(Chain, MeasuresByTheLimitsKeptOnThisComputer)
{
    ASSERT_EQ(arrange(QStringLiteral("Hallway"), QStringLiteral("building")).exit, 0);
    const auto checked = [&](const QStringList& more) {
        return cli(
            QStringList{QStringLiteral("check"), sampleBook(), QStringLiteral("--json")} + more);
    };
    const QStringList hallway{QStringLiteral("--display"), QStringLiteral("hallway")};
    const auto limitsIn = [](const Ran& ran) {
        std::map<QString, double> limits; // of long lines
        for (const QJsonValue& finding : ran.json()[u"findings"].toArray()) {
            if (finding[u"rule"].toString() == QStringLiteral("line.voice"))
                limits[finding[u"rule"].toString()] = finding[u"limit"].toDouble();
        }
        return limits;
    };
    const auto rowOf = [](const Ran& ran) {
        for (const QJsonValue& row : ran.json()[u"limits"].toArray()) {
            if (row[u"rule"].toString() == QStringLiteral("line.voice"))
                return row[u"limit"].toDouble();
        }
        return -1.0;
    };
    EXPECT_TRUE(limitsIn(checked(hallway)).empty());
    EXPECT_FALSE(checked(hallway).err.contains("on this computer"));
    check::Limits kept;
    ASSERT_TRUE(kept.set(check::Limit::VoiceLine, 12));
    keepLimits(kept);
    const Ran measured = checked(hallway);
    EXPECT_EQ(limitsIn(measured), (std::map<QString, double>{{u"line.voice"_qs, 12}}));
    EXPECT_THAT(measured.err.toStdString(),
        HasSubstr("1 limit is as set on this computer: line.voice 12."));
    const Ran own = checked(hallway + QStringList{u"--limit"_qs, QStringLiteral("line.voice=10")});
    EXPECT_EQ(limitsIn(own), (std::map<QString, double>{{u"line.voice"_qs, 10}}));
    // The list needs no display.
    const Ran listed = checked({QStringLiteral("--limits")});
    EXPECT_EQ(listed.exit, 0) << listed.err.toStdString();
    EXPECT_EQ(rowOf(listed), 12);
    EXPECT_FALSE(listed.json().contains(u"findings"));
    EXPECT_EQ(checked({}).exit, 2);
    EXPECT_EQ(checked({QStringLiteral("--limits"), u"--sheets"_qs, u"A4"_qs}).exit, 2);
    keepLimits({});
    EXPECT_TRUE(limitsIn(checked(hallway)).empty());
    const auto hung = [&](const QStringList& more) {
        return cli(QStringList{QStringLiteral("hang"),
                       sampleBook(),
                       QStringLiteral("--wall"),
                       QStringLiteral("6000x2700mm"),
                       QStringLiteral("--json")}
            + hallway + more);
    };
    EXPECT_FALSE(hung({}).out.contains("wall.stands_out"));
    keepStandOut(Mm(120));
    const Ran far = hung({});
    EXPECT_TRUE(far.out.contains("wall.stands_out"));
    EXPECT_THAT(far.err.toStdString(), HasSubstr("stand out 120 mm, as set on this computer"));
    const Ran said = hung({QStringLiteral("--stands-out"), QStringLiteral("10mm")});
    EXPECT_FALSE(said.out.contains("wall.stands_out"));
    EXPECT_FALSE(said.err.contains("as set on this computer"));
    keepStandOut(kUsualStandOut);
}

TEST_F(Chain, PutsTheWordsOnPaperAndNobodyWhoMayNotBeThere)
{
    ASSERT_EQ(arrange(QStringLiteral("Street"), QStringLiteral("public")).exit, 0);
    const QString pdf = at(QStringLiteral("street.pdf"));
    const Ran exported = cli({QStringLiteral("export"),
        sampleBook(),
        QStringLiteral("--display"),
        QStringLiteral("Street"),
        QStringLiteral("--pdf"),
        pdf,
        QStringLiteral("--bleed"),
        QStringLiteral("3mm"),
        QStringLiteral("--marks"),
        QStringLiteral("--json")});
    ASSERT_EQ(exported.exit, 0) << exported.err.toStdString();
    EXPECT_EQ(exported.json().keys(),
        sorted({QStringLiteral("files"), QStringLiteral("pages"), QStringLiteral("left_out")}));
    EXPECT_EQ(exported.json()[u"pages"].toInt(), 1);
    EXPECT_EQ(runTool(QStringLiteral("qpdf"), {QStringLiteral("--check"), pdf}).exit, 0);

    const QString text = QString::fromUtf8(
        runTool(QStringLiteral("pdftotext"), {QStringLiteral("-layout"), pdf, QStringLiteral("-")})
            .out);
    EXPECT_THAT(text.simplified().toStdString(), HasSubstr("puddle"));
    QFile bytes(pdf);
    ASSERT_TRUE(bytes.open(QIODevice::ReadOnly));
    const QString everything = text
        + QString::fromUtf8(runTool(QStringLiteral("pdfinfo"), {pdf}).out)
        + QString::fromLatin1(bytes.readAll());
    QFile list(at(QStringLiteral("sample/children.csv")));
    ASSERT_TRUE(list.open(QIODevice::ReadOnly));
    const QStringList rows =
        QString::fromUtf8(list.readAll()).split(u'\n', Qt::SkipEmptyParts).mid(1);
    int hidden = 0;
    for (const QString& row : rows) {
        const QStringList cells = row.split(u',');
        ASSERT_GE(cells.size(), 5);
        const bool mayBeNamed =
            cells[4] == QLatin1String("all") || cells[4].contains(QLatin1String("public"));
        if (mayBeNamed)
            continue;
        ++hidden;
        const QString family = cells[0].section(u' ', 1);
        const QString first = cells[0].section(u' ', 0, 0);
        EXPECT_THAT(everything.toStdString(), Not(HasSubstr(family.toStdString())));
        EXPECT_FALSE(text.contains(QRegularExpression(QStringLiteral("\\b%1\\b").arg(first))))
            << first.toStdString();
    }
    EXPECT_GT(hidden, 2);
    EXPECT_THAT(everything.toStdString(), Not(HasSubstr("puddle_")));
}

TEST_F(Chain, TilesAPanelAndDrawsItsPicture)
{
    ASSERT_EQ(arrange(QStringLiteral("Hallway"), QStringLiteral("building")).exit, 0);
    const Ran tiled = cli({QStringLiteral("export"),
        sampleBook(),
        QStringLiteral("--display"),
        QStringLiteral("Hallway"),
        QStringLiteral("--pdf"),
        at(QStringLiteral("a4.pdf")),
        QStringLiteral("--sheets"),
        QStringLiteral("A4"),
        QStringLiteral("--json")});
    ASSERT_EQ(tiled.exit, 0) << tiled.err.toStdString();
    // A1 across on A4 upright or across, overlap 10, margin 7 mm: at least 15 sheets and the key.
    EXPECT_GE(tiled.json()[u"pages"].toInt(), 16);
    const Ran drawn = cli({QStringLiteral("export"),
        sampleBook(),
        QStringLiteral("--display"),
        QStringLiteral("Hallway"),
        QStringLiteral("--png"),
        at(QStringLiteral("h.png")),
        QStringLiteral("--dpi"),
        QStringLiteral("25"),
        QStringLiteral("--json")});
    ASSERT_EQ(drawn.exit, 0) << drawn.err.toStdString();
    const QImage image(at(QStringLiteral("h.png")));
    EXPECT_EQ(image.size(), QSize(828, 585)); // 841 x 594 mm at 25 dots an inch
}

TEST_F(Chain, MakesAFileForEachPanelAndMakesGoodForThePrinter)
{
    ASSERT_EQ(arrange(QStringLiteral("Two"),
                  QStringLiteral("building"),
                  {QStringLiteral("--panels"), QStringLiteral("2")})
                  .exit,
        0);
    const auto exported = [&](const QString& file, const QStringList& more) {
        return cli(QStringList{QStringLiteral("export"),
                       sampleBook(),
                       QStringLiteral("--display"),
                       QStringLiteral("Two"),
                       QStringLiteral("--pdf"),
                       at(file),
                       QStringLiteral("--json")}
            + more);
    };
    const Ran each = exported(QStringLiteral("two.pdf"), {QStringLiteral("--each")});
    ASSERT_EQ(each.exit, 0) << each.err.toStdString();
    EXPECT_EQ(each.json()[u"pages"].toInt(), 2);
    EXPECT_EQ(each.json()[u"files"].toArray(),
        (QJsonArray{at(QStringLiteral("two.pdf")), at(QStringLiteral("two-2.pdf"))}));
    for (const char* file : {"two.pdf", "two-2.pdf"}) {
        const Ran info = runTool(QStringLiteral("pdfinfo"), {at(QString::fromLatin1(file))});
        EXPECT_TRUE(QString::fromUtf8(info.out).simplified().contains(u"Pages: 1 "_qs)) << file;
    }
    const QStringList sheets{QStringLiteral("--sheets"), QStringLiteral("A4")};
    const QStringList ruler{QStringLiteral("--ruler"), QStringLiteral("98mm")};
    EXPECT_EQ(exported(QStringLiteral("s.pdf"), sheets + ruler).exit, 0);
    EXPECT_EQ(exported(QStringLiteral("s.pdf"), ruler).exit, 2);
    EXPECT_EQ(exported(QStringLiteral("s.pdf"),
                  sheets + QStringList{QStringLiteral("--ruler"), QStringLiteral("80mm")})
                  .exit,
        2);
}

TEST_F(Chain, DrawsAPanelAndOnePieceOfItAsWideAsWanted)
{
    const Ran arranged = arrange(QStringLiteral("Hallway"), QStringLiteral("building"));
    ASSERT_EQ(arranged.exit, 0);
    const auto exported = [&](const QStringList& more) {
        return cli(QStringList{QStringLiteral("export"),
                       sampleBook(),
                       QStringLiteral("--display"),
                       QStringLiteral("Hallway"),
                       QStringLiteral("--json")}
            + more);
    };
    const QString panel = at(QStringLiteral("panel.jpg"));
    ASSERT_EQ(
        exported(
            {QStringLiteral("--jpeg"), panel, QStringLiteral("--width"), QStringLiteral("1200")})
            .exit,
        0);
    EXPECT_EQ(QImageReader(panel).format(), QByteArray("jpeg"));
    EXPECT_EQ(QImage(panel).size(), QSize(1200, 848)); // 841 x 594 mm
    QString photo;
    for (const QJsonValue& piece : arranged.json()[u"arrangement"].toArray()) {
        if (piece[u"kind"].toString() == QLatin1String("photo"))
            photo = QString::number(piece[u"piece"].toInt());
    }
    ASSERT_FALSE(photo.isEmpty());
    const QString one = at(QStringLiteral("one.png"));
    ASSERT_EQ(exported({QStringLiteral("--png"),
                           one,
                           QStringLiteral("--width"),
                           QStringLiteral("640"),
                           QStringLiteral("--piece"),
                           photo})
                  .exit,
        0);
    EXPECT_EQ(QImage(one).width(), 640);
    EXPECT_EQ(
        exported({QStringLiteral("--png"), one, QStringLiteral("--piece"), QStringLiteral("99999")})
            .exit,
        3)
        << "not there";
    EXPECT_EQ(exported({QStringLiteral("--pdf"), one, QStringLiteral("--piece"), photo}).exit, 2);
    EXPECT_EQ(exported({QStringLiteral("--png"), one, QStringLiteral("--jpeg"), panel}).exit, 2);
}

TEST_F(Chain, LeavesABookAloneWhenSomethingIsWrong)
{
    const QByteArray before =
        cli({QStringLiteral("show"), sampleBook(), QStringLiteral("--json")}).out;
    QFile bad(at(QStringLiteral("bad.csv")));
    ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
    bad.write("who,words\nMei,all\n");
    bad.close();
    const Ran refused = cli({QStringLiteral("gather"),
        sampleBook(),
        QStringLiteral("--children"),
        bad.fileName(),
        QStringLiteral("--json")});
    EXPECT_EQ(refused.exit, 2);
    EXPECT_THAT(refused.err.toStdString(), HasSubstr("bad.csv"));
    const Ran missing = cli({QStringLiteral("gather"),
        sampleBook(),
        QStringLiteral("--children"),
        at(QStringLiteral("none.csv"))});
    EXPECT_EQ(missing.exit, 3);
    const Ran unwritable = cli({QStringLiteral("export"),
        sampleBook(),
        QStringLiteral("--display"),
        QStringLiteral("Hallway"),
        QStringLiteral("--pdf"),
        at(QStringLiteral("no/such/folder/a.pdf"))});
    EXPECT_EQ(unwritable.exit, 3);
    const Ran unknown = cli({QStringLiteral("check"),
        sampleBook(),
        QStringLiteral("--display"),
        QStringLiteral("Nowhere")});
    EXPECT_EQ(unknown.exit, 3);
    EXPECT_THAT(unknown.err.toStdString(), HasSubstr("Nowhere"));
    EXPECT_EQ(before, cli({QStringLiteral("show"), sampleBook(), QStringLiteral("--json")}).out);
}

// The window may be open while somebody types commands: looking goes on, changing waits.
TEST_F(Chain, ReadsABookThatIsOpenElsewhereButDoesNotChangeIt)
{
    ASSERT_EQ(arrange(QStringLiteral("Hallway"), QStringLiteral("building")).exit, 0);
    const auto open = BookStore::open(sampleBook());
    ASSERT_TRUE(open.ok());
    const Ran refused = arrange(QStringLiteral("Hallway"), QStringLiteral("building"));
    EXPECT_EQ(refused.exit, 3);
    EXPECT_EQ(refused.json()[u"error"].toObject()[u"code"].toString(), QStringLiteral("in_use"));
    const Ran checked = cli({QStringLiteral("check"),
        sampleBook(),
        QStringLiteral("--display"),
        QStringLiteral("Hallway"),
        QStringLiteral("--json")});
    EXPECT_EQ(checked.exit, 0) << checked.err.toStdString();
}

TEST_F(Chain, SaysWhyPanelsLookSo)
{
    const Ran ran =
        arrange(QStringLiteral("Reasons"), QStringLiteral("building"), {QStringLiteral("--why")});
    ASSERT_EQ(ran.exit, 0) << ran.err.toStdString();
    const QJsonArray panels = ran.json()[u"why"].toArray();
    ASSERT_EQ(panels.size(), ran.json()[u"panels"].toInt());
    EXPECT_EQ(panels.first().toObject()[u"panel"].toInt(), 1);
    EXPECT_FALSE(panels.first().toObject()[u"says"].toArray().isEmpty());
}

TEST_F(Chain, KeepsATermForWhoeverMayReadItToday)
{
    const QString pdf = at(QStringLiteral("term.pdf"));
    QStringList keep{QStringLiteral("keep"),
        sampleBook(),
        QStringLiteral("--from"),
        QStringLiteral("2026-09-01"),
        QStringLiteral("--to"),
        QStringLiteral("2026-12-18"),
        QStringLiteral("--pdf"),
        pdf,
        QStringLiteral("--json")};
    const Ran kept = cli(keep);
    ASSERT_EQ(kept.exit, 0) << kept.err.toStdString();
    EXPECT_EQ(kept.json().keys(),
        sorted({QStringLiteral("files"),
            QStringLiteral("pages"),
            QStringLiteral("experiences"),
            QStringLiteral("pictures"),
            QStringLiteral("left_out")}));
    EXPECT_EQ(runTool(QStringLiteral("qpdf"), {QStringLiteral("--check"), pdf}).exit, 0);
    const QByteArray info = runTool(QStringLiteral("pdfinfo"), {pdf}).out;
    EXPECT_TRUE(
        info.simplified().contains("Pages: " + QByteArray::number(kept.json()[u"pages"].toInt())));
    keep[3] = QStringLiteral("in autumn");
    EXPECT_EQ(cli(keep).exit, 2);
}

TEST_F(Chain, CarriesABookAndErasesAChildFromIt)
{
    const QString file = at(QStringLiteral("sparrows.zip"));
    const QString there = at(QStringLiteral("carried"));
    const Ran packed = cli({QStringLiteral("pack"),
        sampleBook(),
        QStringLiteral("--to"),
        file,
        QStringLiteral("--json")});
    ASSERT_EQ(packed.exit, 0) << packed.err.toStdString();
    EXPECT_EQ(packed.json().keys(),
        sorted({QStringLiteral("bytes"),
            QStringLiteral("file"),
            QStringLiteral("locked"),
            QStringLiteral("pictures")}));
    const Ran unpacked = cli(
        {QStringLiteral("unpack"), file, QStringLiteral("--to"), there, QStringLiteral("--json")});
    ASSERT_EQ(unpacked.exit, 0) << unpacked.err.toStdString();
    EXPECT_EQ(cli({QStringLiteral("verify"), there}).exit, 0);
    EXPECT_EQ(cli({QStringLiteral("show"), there, QStringLiteral("--json")}).out,
        cli({QStringLiteral("show"), sampleBook(), QStringLiteral("--json")}).out);

    const QStringList erase{QStringLiteral("erase"),
        there,
        QStringLiteral("--child"),
        QStringLiteral("Wren Halloway"),
        QStringLiteral("--shared"),
        QStringLiteral("delete"),
        QStringLiteral("--json")};
    const Ran erased = cli(erase);
    ASSERT_EQ(erased.exit, 0) << erased.err.toStdString();
    EXPECT_GT(erased.json()[u"quotes"].toInt(), 0);
    EXPECT_FALSE(
        cli({QStringLiteral("show"), there, QStringLiteral("--json")}).out.contains("Wren"));
    EXPECT_EQ(cli({QStringLiteral("verify"), there}).exit, 0);
    EXPECT_EQ(cli(erase).exit, 3) << "there is nobody of that name any more";
}

} // namespace
} // namespace wainscot
