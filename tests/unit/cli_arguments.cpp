// What a command line takes and what it refuses.
#include "app/cli/command.h"
#include "app/cli/program.h"
#include "core/store/book_store.h"

#include <QJsonDocument>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include <array>

namespace wainscot::cli {
namespace {

using ::testing::HasSubstr;

constexpr std::array kOptions{
    OptionSpec{"title", "TEXT", "a title", true},
    OptionSpec{"dpi", "N", "a number"},
    OptionSpec{"marks", nullptr, "a flag"},
};
const QStringList kBook{QStringLiteral("BOOK")};

Result<Arguments> parsed(const char* line)
{
    return Arguments::parse(
        QString::fromUtf8(line).split(u' ', Qt::SkipEmptyParts), kOptions, kBook);
}

TEST(Arguments, TakeOptionsInAnyOrder)
{
    for (const char* line : {"B --title T --marks",
             "--title T --marks B",
             "--marks --title=T B",
             "--title T --marks -- B"}) {
        const auto arguments = parsed(line);
        ASSERT_TRUE(arguments.ok()) << line;
        EXPECT_EQ(arguments->positional(0), QStringLiteral("B"));
        EXPECT_EQ(arguments->value("title"), QStringLiteral("T"));
        EXPECT_TRUE(arguments->has("marks"));
        EXPECT_FALSE(arguments->has("dpi"));
    }
}

struct Refused {
    const char* line;
    const char* says;
};

constexpr Refused kRefused[]{
    {"--title T", "BOOK is missing"},
    {"B", "--title TEXT is missing"},
    {"B --title", "needs a value"},
    {"B --title --marks", "needs a value"},
    {"B --title T --title U", "twice"},
    {"B --title T --marks=yes", "takes no value"},
    {"B C --title T", "\"C\" is one word too many"},
    {"B --title T --colour red", "no option --colour"},
};

TEST(Arguments, RefuseWhatIsNotThere)
{
    for (const Refused& refused : kRefused) {
        const auto arguments = parsed(refused.line);
        ASSERT_FALSE(arguments.ok()) << refused.line;
        EXPECT_EQ(arguments.error().code, ErrorCode::WrongUse);
        EXPECT_THAT(arguments.error().subject.toStdString(), HasSubstr(refused.says));
    }
}

TEST(Arguments, TakeWholeNumbersInARange)
{
    EXPECT_EQ(parsed("B --title T --dpi 150")->number("dpi", 10, 600, 100).value(), 150);
    EXPECT_EQ(parsed("B --title T")->number("dpi", 10, 600, 100).value(), 100);
    for (const char* dpi : {"9", "601", "1.5", "many", "-3"}) {
        const auto arguments = parsed((std::string("B --title T --dpi=") + dpi).c_str());
        EXPECT_FALSE(arguments->number("dpi", 10, 600, 100).ok()) << dpi;
    }
}

struct Said {
    int exit = 0;
    QString out;
    QString err;
    [[nodiscard]] QJsonObject json() const
    {
        return QJsonDocument::fromJson(out.toUtf8()).object();
    }
};

Said say(const QStringList& words)
{
    Said said;
    QTextStream out(&said.out);
    QTextStream err(&said.err);
    said.exit = runProgram(words, out, err);
    return said;
}

QStringList line(const char* text)
{
    return QString::fromUtf8(text).split(u' ', Qt::SkipEmptyParts);
}

TEST(Program, ExplainsItselfAndEveryCommand)
{
    const Said general = say(line("--help"));
    EXPECT_EQ(general.exit, 0);
    for (const Command& command : commands()) {
        EXPECT_THAT(general.out.toStdString(), HasSubstr(command.name));
        const Said own = say({QString::fromLatin1(command.name), QStringLiteral("--help")});
        EXPECT_EQ(own.exit, 0);
        EXPECT_THAT(own.out.toStdString(), HasSubstr(command.usage));
        for (const OptionSpec& option : command.options)
            EXPECT_THAT(own.out.toStdString(), HasSubstr(std::string("--") + option.name));
    }
}

TEST(Program, KnowsEveryCommandByName)
{
    std::vector<std::string> names;
    for (const Command& command : commands())
        names.emplace_back(command.name);
    EXPECT_THAT(names,
        ::testing::UnorderedElementsAre("new",
            "about",
            "gather",
            "arrange",
            "check",
            "export",
            "template",
            "keep",
            "show",
            "listen",
            "sheets",
            "hang",
            "erase",
            "withdrawn",
            "keep-until",
            "verify",
            "pack",
            "unpack",
            "data",
            "from-data",
            "sample",
            "earlier",
            "repair"));
}

TEST(Program, AnswersWrongUseWithTwoAndOneJsonObject)
{
    for (const char* words : {"",
             "dance",
             "new",
             "new B",
             "new B --title",
             "new B --title T --language klingon",
             "gather B",
             "gather B --children a --quotes b",
             "gather B --quotes a",
             "gather B --experience E --on yesterday --quotes a",
             "arrange B --experience E --display D --audience street --panel A1",
             "arrange B --experience E --display D --audience building --panel A9",
             "arrange B --experience E --display D --audience building --panel A1 --panels 0",
             "arrange B --experience E --display D --audience building --panel A1 "
             "--reading-distance 1.5",
             "export B --display D",
             "export B --display D --pdf a --png b",
             "export B --display D --png a --marks",
             "export B --display D --pdf a --overlap 5mm",
             "export B --display D --pdf a --sheets A4 --bleed 3mm",
             "export B --display D --pdf a --dpi 100",
             "listen B",
             "listen B --experience E --groups few",
             "hang B --display D",
             "hang B --wall 6x2.7m",
             "hang B --wall Corridor --ages 4-6",
             "hang B --display D --wall 6x2.7m --stands-out far",
             "hang B --display D --wall 6x2.7m --viewers cats",
             "hang B --display D --wall 6x2.7m --ages 6-4",
             "hang B --display D --wall 6x2.7m --ages old",
             "hang B --display D --wall 6x2.7m --limit X",
             "data B",
             "data B --to F --as pdf",
             "from-data F",
             "from-data F --to B --as pdf",
             "sample"}) {
        const Said said = say(line(words) + QStringList{QStringLiteral("--json")});
        EXPECT_EQ(said.exit, 2) << words;
        EXPECT_EQ(said.json().keys(), QStringList{QStringLiteral("error")}) << words;
        EXPECT_FALSE(said.json()[u"error"].toObject()[u"says"].toString().isEmpty()) << words;
        EXPECT_FALSE(said.err.isEmpty()) << words;
    }
}

// What is no size may be a wall's name, so the book is asked.
TEST(Program, LooksForAWallOfTheBookByItsName)
{
    QTemporaryDir folder;
    const QString book = folder.filePath(QStringLiteral("book"));
    ASSERT_EQ(
        say({QStringLiteral("new"), book, QStringLiteral("--title"), QStringLiteral("T")}).exit, 0);
    {
        auto store = BookStore::open(book, Access::ReadWrite);
        ASSERT_TRUE(store);
        Wall wall;
        wall.name = QStringLiteral("By the door");
        EditBuilder edit((*store)->book(), QStringLiteral("Wall"));
        wall.id = edit.newId<Wall>();
        edit.put(wall);
        ASSERT_TRUE((*store)->history().perform(edit.take()));
    }
    const auto hang = [&](const QString& wall, const QStringList& more = {}) {
        return say(QStringList{QStringLiteral("hang"),
                       book,
                       QStringLiteral("--wall"),
                       wall,
                       QStringLiteral("--json")}
            + more);
    };
    const Said kept = hang(QStringLiteral("by the door"));
    EXPECT_EQ(kept.exit, 0) << kept.err.toStdString();
    EXPECT_EQ(kept.json()[u"wall"].toString(), QStringLiteral("By the door"));
    EXPECT_EQ(kept.json()[u"covered_share"].toDouble(), 0.0);
    EXPECT_FALSE(kept.json()[u"limit_source"].toString().isEmpty());
    EXPECT_NE(hang(QStringLiteral("6000")).exit, 0);
    EXPECT_NE(
        hang(QStringLiteral("By the door"), {QStringLiteral("--display"), QStringLiteral("D")})
            .exit,
        0);
    EXPECT_NE(
        hang(QStringLiteral("By the door"), {QStringLiteral("--stands-out"), QStringLiteral("far")})
            .exit,
        0);
}

TEST(Program, AnswersThreeForABookThatIsNotThere)
{
    for (const char* words : {"show /nowhere/at/all",
             "verify /nowhere/at/all",
             "check /nowhere/at/all --display D",
             "gather /nowhere/at/all --children a.csv",
             "export /nowhere/at/all --display D --pdf a.pdf"}) {
        const Said said = say(line(words));
        EXPECT_EQ(said.exit, 3) << words;
        EXPECT_THAT(said.err.toStdString(), HasSubstr("/nowhere/at/all")) << words;
    }
}

} // namespace
} // namespace wainscot::cli
