// What is marked in an adult's text, against a dictionary made here and the installed ones.
#include "app/ui/writing/spelling.h"

#include <QFile>
#include <QTemporaryDir>

#include <gmock/gmock.h>

namespace wainscot::ui {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

void write(const QString& path, const QByteArray& bytes)
{
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(bytes);
}

class Dictionary : public ::testing::Test {
protected:
    std::shared_ptr<Spelling> made(const QByteArray& encoding, const QByteArray& words)
    {
        write(m_folder.filePath(QStringLiteral("xx.aff")),
            "SET " + encoding + "\nTRY abcdehinrstuw\n");
        write(m_folder.filePath(QStringLiteral("xx.dic")), words);
        return Spelling::fromFiles(m_folder.filePath(QStringLiteral("xx")));
    }
    QTemporaryDir m_folder;
};

TEST_F(Dictionary, MarksWhatItDoesNotKnow)
{
    const auto spelling = made("UTF-8", "4\nthe\nsun\nrain\ndon't\n");
    ASSERT_TRUE(spelling);
    EXPECT_THAT(spelling->doubtful(QStringLiteral("The sunn, the rain. Don\u2019t"), {}),
        ElementsAre(TextRange{4, 4}));
    EXPECT_THAT(
        spelling->suggestions(QStringLiteral("sunn"), 3), ElementsAre(QStringLiteral("sun")));
}

TEST_F(Dictionary, LeavesAChildsWordsNamesAndNumbersAlone)
{
    const auto spelling = made("UTF-8", "2\nthe\nsun\n");
    EXPECT_THAT(spelling->doubtful(
                    QStringLiteral("\u201cthe wosh goed\u201d 12 3rd A [names] the sun"), {}),
        IsEmpty());
    EXPECT_THAT(
        spelling->doubtful(QStringLiteral("Wren\u2019s sun"), {QStringLiteral("wren")}), IsEmpty());
    EXPECT_THAT(spelling->doubtful(QStringLiteral("Wren's sun"), {}), ElementsAre(TextRange{0, 6}));
}

TEST_F(Dictionary, ReadsLatinOneAndRefusesWhatItCannotRead)
{
    const auto spelling = made("ISO8859-1",
        "1\nfl\xfc"
        "ssig\n");
    ASSERT_TRUE(spelling);
    EXPECT_TRUE(spelling->knows(QStringLiteral("fl\u00fcssig")));
    EXPECT_FALSE(spelling->knows(QStringLiteral("flussig")));
    EXPECT_THAT(spelling->suggestions(QStringLiteral("fl\u00fcsig"), 1),
        ElementsAre(QStringLiteral("fl\u00fcssig")));
    EXPECT_FALSE(made("KOI8-R", "1\nx\n"));
    EXPECT_FALSE(Spelling::fromFiles(m_folder.filePath(QStringLiteral("missing"))));
}

TEST(Spelling, FindsTheInstalledDictionaries)
{
    const auto english = Spelling::of(QStringLiteral("en"));
    ASSERT_TRUE(english) << "hunspell-en-us is among the packages";
    EXPECT_TRUE(english->knows(QStringLiteral("puddle")));
    EXPECT_FALSE(english->knows(QStringLiteral("puddel")));
    EXPECT_THAT(english->suggestions(QStringLiteral("puddel"), 3),
        ::testing::Contains(QStringLiteral("puddle")));
    const auto spanish = Spelling::of(QStringLiteral("es-MX"));
    ASSERT_TRUE(spanish) << "hunspell-es is among the packages";
    EXPECT_TRUE(spanish->knows(QStringLiteral("charco")));
    EXPECT_FALSE(spanish->knows(QStringLiteral("charko")));
    EXPECT_FALSE(Spelling::of(QStringLiteral("tlh")));
    EXPECT_FALSE(Spelling::of({}));
    EXPECT_EQ(Spelling::of(QStringLiteral("en")), english) << "loaded once";
}

} // namespace
} // namespace wainscot::ui
