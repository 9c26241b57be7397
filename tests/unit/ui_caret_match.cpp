// Which drawn letter is which written one, against the plainest way to find out.
#include "app/ui/writing/caret_match.h"

#include <gmock/gmock.h>

#include <random>

namespace wainscot::ui {
namespace {

using ::testing::ElementsAre;

int longest(const QString& a, const QString& b, int i = 0, int j = 0)
{
    if (i == a.size() || j == b.size())
        return 0;
    if (a[i] == b[j])
        return 1 + longest(a, b, i + 1, j + 1);
    return std::max(longest(a, b, i + 1, j), longest(a, b, i, j + 1));
}

TEST(CaretMatch, FindsTheWordsBetweenTheirMarks)
{
    EXPECT_THAT(matchLetters(QStringLiteral("ice"), QStringLiteral("\u201cice\u201d")),
        ElementsAre(1, 2, 3));
    EXPECT_THAT(matchLetters(QStringLiteral("ice"), QStringLiteral("ice")), ElementsAre(0, 1, 2));
    EXPECT_THAT(matchLetters({}, QStringLiteral("ice")), ElementsAre());
    EXPECT_THAT(matchLetters(QStringLiteral("ice"), {}), ElementsAre(-1, -1, -1));
}

TEST(CaretMatch, LeavesOutWhatGaveWayToAnotherWord)
{
    EXPECT_THAT(matchLetters(QStringLiteral("xNoory"), QStringLiteral("x[child]y")),
        ElementsAre(0, -1, -1, -1, -1, 8));
}

TEST(CaretMatch, FindsAsManyAsThereAre)
{
    std::mt19937 random(20261129);
    std::uniform_int_distribution<int> size(0, 8);
    std::uniform_int_distribution<int> letter('a', 'c');
    const auto word = [&] {
        QString made;
        for (int left = size(random); left > 0; --left)
            made += QChar(letter(random));
        return made;
    };
    for (int round = 0; round < 2000; ++round) {
        const QString written = word();
        const QString drawn = word();
        const std::vector<int> match = matchLetters(written, drawn);
        int found = 0;
        int last = -1;
        for (std::size_t i = 0; i < match.size(); ++i) {
            if (match[i] < 0)
                continue;
            ++found;
            ASSERT_GT(match[i], last);
            ASSERT_EQ(written[qsizetype(i)], drawn[match[i]]);
            last = match[i];
        }
        ASSERT_EQ(found, longest(written, drawn))
            << written.toStdString() << " in " << drawn.toStdString();
    }
}

} // namespace
} // namespace wainscot::ui
