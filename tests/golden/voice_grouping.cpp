// Likeness and linkage against scikit-learn 1.2.1 and scipy 1.10.1; how the numbers were made is in
// tests/data/voice/make_grouping_reference.py.
#include "core/voice/grouping.h"

#include <QFile>
#include <QStringList>

#include <gtest/gtest.h>

#include <algorithm>

namespace wainscot {
namespace {

constexpr double tolerance = 1e-9;

struct Reference {
    std::vector<QString> answers;
    std::vector<QStringList> likeness;
    std::vector<double> heights;
};

Reference readReference()
{
    Reference reference;
    QFile file(QStringLiteral(WAINSCOT_TEST_DATA "/voice/grouping_reference.txt"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    const QStringList lines = QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'));
    for (const QString& line : lines) {
        const QString kind = line.section(QLatin1Char(' '), 0, 0);
        const QString rest = line.section(QLatin1Char(' '), 1);
        if (kind == QLatin1String("answer"))
            reference.answers.push_back(rest);
        else if (kind == QLatin1String("likeness"))
            reference.likeness.push_back(rest.split(QLatin1Char(' ')));
        else if (kind == QLatin1String("height"))
            reference.heights.push_back(rest.toDouble());
    }
    return reference;
}

TEST(GroupingReference, LikenessEqualsScikitLearn)
{
    const Reference reference = readReference();
    ASSERT_EQ(reference.answers.size(), 22U);
    ASSERT_EQ(reference.likeness.size(), reference.answers.size());
    const LikenessTable table = likenessOf(reference.answers);
    for (std::size_t row = 0; row < table.size(); ++row) {
        ASSERT_EQ(std::size_t(reference.likeness[row].size()), table.size());
        for (std::size_t column = 0; column < table.size(); ++column)
            EXPECT_NEAR(
                table.at(row, column), reference.likeness[row][int(column)].toDouble(), tolerance)
                << row << ' ' << column;
    }
}

TEST(GroupingReference, UncappedJoiningsHaveTheHeightsOfScipy)
{
    const Reference reference = readReference();
    const std::vector<Joining> made =
        joinings(likenessOf(reference.answers), {-1, reference.answers.size()});
    std::vector<double> heights;
    for (const Joining& joining : made)
        heights.push_back(1 - joining.likeness);
    std::sort(heights.begin(), heights.end());
    ASSERT_EQ(heights.size(), reference.heights.size());
    for (std::size_t at = 0; at < heights.size(); ++at)
        EXPECT_NEAR(heights[at], reference.heights[at], tolerance) << at;
}

} // namespace
} // namespace wainscot
