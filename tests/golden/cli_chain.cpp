// The whole way as a teacher would go it, run as a program: a sample class with small pictures, a
// new book, gathering, arranging, checking, paper. Independent readers look at the PDF.
#include "app/jobs/book_jobs.h"
#include "core/store/book_store.h"

#include <QDir>
#include <QImage>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>

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
        sorted({QStringLiteral("bytes"), QStringLiteral("file"), QStringLiteral("pictures")}));
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
