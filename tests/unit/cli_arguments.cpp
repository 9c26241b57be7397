// What a command line takes and what it refuses.
#include "app/cli/command.h"
#include "app/cli/program.h"

#include <QJsonDocument>

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
            "gather",
            "arrange",
            "check",
            "export",
            "template",
            "keep",
            "show",
            "listen",
            "hang",
            "erase",
            "verify",
            "pack",
            "unpack",
            "sample"));
}

TEST(Program, AnswersWrongUseWithTwoAndOneJsonObject)
{
    for (const char* words : {"",
             "dance",
             "new",
             "new B",
             "new B --title",
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
             "hang B --display D",
             "hang B --display D --wall 6000",
             "hang B --display D --wall 0x2700mm",
             "hang B --display D --wall 6x2.7m --viewers cats",
             "hang B --display D --wall 6x2.7m --ages 6-4",
             "hang B --display D --wall 6x2.7m --ages old",
             "hang B --display D --wall 6x2.7m --limit X",
             "sample"}) {
        const Said said = say(line(words) + QStringList{QStringLiteral("--json")});
        EXPECT_EQ(said.exit, 2) << words;
        EXPECT_EQ(said.json().keys(), QStringList{QStringLiteral("error")}) << words;
        EXPECT_FALSE(said.json()[u"error"].toObject()[u"says"].toString().isEmpty()) << words;
        EXPECT_FALSE(said.err.isEmpty()) << words;
    }
}

// Settled names whose work is not there yet.
TEST(Program, SaysOfLaterCommandsThatTheyAreNotThereYet)
{
    for (const char* words : {"listen B --experience E",
             "listen B --experience E --groups 4",
             "keep B --from 2026-01-01 --to 2026-02-01 --pdf a.pdf"}) {
        const Said said = say(line(words));
        EXPECT_EQ(said.exit, 2) << words;
        EXPECT_THAT(said.err.toStdString(), HasSubstr("yet")) << words;
        EXPECT_TRUE(said.out.isEmpty());
    }
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
