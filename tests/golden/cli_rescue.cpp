// The commands that help when something went wrong, as programs call them.
#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace {

struct Ran {
    int exit = -1;
    QJsonObject json;
};

class Rescue : public ::testing::Test {
protected:
    void SetUp() override
    {
        write("class.csv", "name,words\nAda Marsh,all\nBen Oak,all\n");
        write("words.csv", "child,notice\nAda Marsh,it gos drip\nBen Oak,a worm\n");
        ASSERT_EQ(cli({"new", book(), "--title", "Robins"}).exit, 0);
        ASSERT_EQ(cli({"gather", book(), "--children", at("class.csv")}).exit, 0);
        ASSERT_EQ(
            cli({"gather", book(), "--experience", "Rain", "--quotes", at("words.csv")}).exit, 0);
    }

    [[nodiscard]] std::string at(const char* name) const
    {
        return m_place.filePath(QString::fromLatin1(name)).toStdString();
    }
    [[nodiscard]] std::string book() const { return at("book"); }

    void write(const char* name, const char* content) const
    {
        QFile file(m_place.filePath(QString::fromLatin1(name)));
        ASSERT_TRUE(file.open(QIODevice::WriteOnly));
        file.write(content);
    }

    static Ran cli(const std::vector<std::string>& words, const char* input = "")
    {
        QStringList arguments;
        for (const std::string& word : words)
            arguments << QString::fromStdString(word);
        QProcess process;
        process.start(
            QStringLiteral(WAINSCOT_CLI), arguments + QStringList{QStringLiteral("--json")});
        process.write(input);
        process.closeWriteChannel();
        EXPECT_TRUE(process.waitForFinished(60'000));
        return {
            process.exitCode(), QJsonDocument::fromJson(process.readAllStandardOutput()).object()};
    }

    QTemporaryDir m_place;
};

TEST_F(Rescue, GoesBackToAnEarlierDay)
{
    const Ran listed = cli({"earlier", book()});
    ASSERT_EQ(listed.exit, 0);
    ASSERT_EQ(listed.json[u"earlier"].toArray().size(), 1); // before the words came
    const QJsonObject state = listed.json[u"earlier"].toArray().at(0).toObject();
    EXPECT_EQ(state[u"children"].toInt(), 2);
    EXPECT_EQ(state[u"quotes"].toInt(), 0);
    const std::string name = state[u"name"].toString().toStdString();
    EXPECT_EQ(cli({"earlier", book(), "--back-to", name}).exit, 0);
    EXPECT_TRUE(cli({"show", book()}).json[u"experiences"].toArray().isEmpty());
    EXPECT_EQ(cli({"earlier", book(), "--back-to", "2001-01-01T00-00-00"}).exit, 3);
}

TEST_F(Rescue, TakesTheDataOutAndMakesTheSameBookOfIt)
{
    const Ran taken = cli({"data", book(), "--to", at("data")});
    ASSERT_EQ(taken.exit, 0);
    EXPECT_EQ(taken.json.keys(),
        (QStringList{QStringLiteral("folder"),
            QStringLiteral("pictures"),
            QStringLiteral("problems"),
            QStringLiteral("rows")}));
    for (const std::string form : {"json", "csv"}) {
        const std::string again = at("again") + form;
        ASSERT_EQ(cli({"from-data", at("data"), "--to", again, "--as", form}).exit, 0);
        EXPECT_EQ(cli({"show", again}).json, cli({"show", book()}).json);
        EXPECT_EQ(cli({"verify", again}).exit, 0);
    }
    EXPECT_EQ(cli({"data", book(), "--to", at("data")}).exit, 2) << "it is not empty";
    EXPECT_EQ(cli({"from-data", at("nowhere"), "--to", at("new")}).exit, 3);
    ASSERT_EQ(cli({"data", book(), "--to", at("csv"), "--as", "csv", "--no-bom"}).exit, 0);
    EXPECT_FALSE(QFile::exists(QString::fromStdString(at("csv/data.json"))));
    write("csv/csv/quotes.csv", "id\none\n");
    EXPECT_EQ(cli({"from-data", at("csv"), "--to", at("new"), "--as", "csv"}).exit, 3);
}

// A file made of the book is remembered by its name alone, and is among what to make anew once its
// audience may not see all of it.
TEST_F(Rescue, TellsWhichFilesToMakeAnewAfterAWithdrawal)
{
    write("dated.csv", "child,notice\nAda Marsh,it melts\n");
    ASSERT_EQ(cli({"gather",
                      book(),
                      "--experience",
                      "Ice",
                      "--on",
                      "2026-11-02",
                      "--quotes",
                      at("dated.csv")})
                  .exit,
        0);
    ASSERT_EQ(cli({"keep",
                      book(),
                      "--from",
                      "2026-09-01",
                      "--to",
                      "2026-12-18",
                      "--pdf",
                      at("autumn.pdf")})
                  .exit,
        0);
    const Ran before = cli({"withdrawn", book()});
    EXPECT_EQ(before.exit, 0);
    EXPECT_TRUE(before.json[u"make_anew"].toArray().isEmpty());
    write("class.csv", "name,words\nAda Marsh,none\nBen Oak,all\n");
    ASSERT_EQ(cli({"gather", book(), "--children", at("class.csv")}).exit, 0);
    const Ran after = cli({"withdrawn", book()});
    EXPECT_EQ(after.exit, 1);
    ASSERT_EQ(after.json[u"make_anew"].toArray().size(), 1);
    const QJsonObject anew = after.json[u"make_anew"].toArray().at(0).toObject();
    EXPECT_EQ(anew[u"file"].toString(), QStringLiteral("autumn.pdf"));
    EXPECT_EQ(anew[u"kind"].toString(), QStringLiteral("term_file"));
    EXPECT_EQ(anew[u"audience"].toString(), QStringLiteral("families"));
    EXPECT_EQ(anew[u"children"].toArray(), QJsonArray{QStringLiteral("Ada Marsh")});
    EXPECT_TRUE(
        cli({"withdrawn", book(), "--child", "Ben Oak"}).json[u"make_anew"].toArray().isEmpty());
    QFile database(m_place.filePath(QStringLiteral("book/book.wainscot")));
    ASSERT_TRUE(database.open(QIODevice::ReadOnly));
    EXPECT_FALSE(database.readAll().contains(m_place.path().toUtf8())) << "no folder is kept";
}

TEST_F(Rescue, TellsWhichSheetsToMakeAnewAfterAWithdrawal)
{
    write("class.csv", "name,first_name\nAda Marsh,all\nBen Oak,all\n");
    ASSERT_EQ(cli({"gather", book(), "--children", at("class.csv")}).exit, 0);
    ASSERT_EQ(cli({"sheets", book(), "--experience", "Rain", "--pdf", at("sheets.pdf")}).exit, 0);
    EXPECT_TRUE(cli({"withdrawn", book()}).json[u"make_anew"].toArray().isEmpty());
    write("class.csv", "name,first_name\nAda Marsh,none\nBen Oak,all\n");
    ASSERT_EQ(cli({"gather", book(), "--children", at("class.csv")}).exit, 0);
    const Ran after = cli({"withdrawn", book()});
    EXPECT_EQ(after.exit, 1);
    ASSERT_EQ(after.json[u"make_anew"].toArray().size(), 1);
    const QJsonObject anew = after.json[u"make_anew"].toArray().at(0).toObject();
    EXPECT_EQ(anew[u"file"].toString(), QStringLiteral("sheets.pdf"));
    EXPECT_EQ(anew[u"kind"].toString(), QStringLiteral("answer_sheets"));
    EXPECT_EQ(anew[u"audience"].toString(), QStringLiteral("classroom"));
    EXPECT_EQ(anew[u"children"].toArray(), QJsonArray{QStringLiteral("Ada Marsh")});
}

TEST_F(Rescue, AsksToBePackedAwayOrErasedAfterItsDay)
{
    EXPECT_TRUE(cli({"keep-until", book()}).json[u"until"].isNull());
    EXPECT_EQ(cli({"keep-until", book(), "--day", "2999-07-31"}).exit, 0);
    const Ran passed = cli({"keep-until", book(), "--day", "2020-07-31"});
    EXPECT_EQ(passed.exit, 1);
    EXPECT_TRUE(passed.json[u"is_over"].toBool());
    EXPECT_EQ(cli({"keep-until", book()}).json[u"until"].toString(), QStringLiteral("2020-07-31"));
    EXPECT_EQ(cli({"keep-until", book(), "--day", "31.7.2027"}).exit, 2);
    EXPECT_EQ(cli({"keep-until", book(), "--no-day"}).exit, 0);
    EXPECT_TRUE(cli({"keep-until", book()}).json[u"until"].isNull());
}

TEST_F(Rescue, RepairsIntoANewBook)
{
    const Ran whole = cli({"repair", book(), "--to", at("whole")});
    EXPECT_EQ(whole.exit, 0);
    EXPECT_EQ(whole.json.keys(),
        QStringList({QStringLiteral("book"),
            QStringLiteral("children"),
            QStringLiteral("ok"),
            QStringLiteral("panels"),
            QStringLiteral("pictures"),
            QStringLiteral("problems"),
            QStringLiteral("quotes")}));
    EXPECT_EQ(whole.json[u"quotes"].toInt(), 2);

    write("book/book.wainscot", "not a database");
    EXPECT_EQ(cli({"show", book()}).exit, 3);
    const Ran rescued = cli({"repair", book(), "--to", at("rescued")});
    EXPECT_EQ(rescued.exit, 1); // not all of it
    EXPECT_FALSE(rescued.json[u"ok"].toBool());
    EXPECT_FALSE(rescued.json[u"problems"].toArray().isEmpty());
    EXPECT_EQ(rescued.json[u"children"].toInt(), 2); // of the earlier day
    EXPECT_EQ(cli({"verify", at("rescued")}).exit, 0);
    EXPECT_EQ(cli({"repair", book(), "--to", at("rescued")}).exit, 2); // not empty any more
}

TEST_F(Rescue, LocksAPackWithAPhraseThatIsNeverOnTheCommandLine)
{
    ::qputenv("WAINSCOT_PASSPHRASE", "frost on the window");
    const Ran packed = cli({"pack", book(), "--to", at("robins.locked"), "--lock"});
    EXPECT_EQ(packed.exit, 0);
    EXPECT_TRUE(packed.json[u"locked"].toBool());
    ::qputenv("WAINSCOT_PASSPHRASE", "rain on the window");
    EXPECT_EQ(cli({"unpack", at("robins.locked"), "--to", at("carried")}).exit, 1);
    ::qputenv("WAINSCOT_PASSPHRASE", "short");
    EXPECT_EQ(cli({"pack", book(), "--to", at("short.locked"), "--lock"}).exit, 2);
    ::qunsetenv("WAINSCOT_PASSPHRASE");
    EXPECT_EQ(cli({"unpack", at("robins.locked"), "--to", at("carried")}).exit, 2); // no input
    EXPECT_EQ(
        cli({"unpack", at("robins.locked"), "--to", at("carried")}, "frost on the window\n").exit,
        0);
    EXPECT_EQ(cli({"show", at("carried")}).json[u"title"].toString(), QStringLiteral("Robins"));
}

} // namespace
