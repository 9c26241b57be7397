// The check of a whole display as the command line and the window ask for it.
#include "app/jobs/check_job.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/puddle_book.h"

namespace wainscot {
namespace {

class Checked : public ::testing::Test {
protected:
    std::vector<Finding> found(const char* rules)
    {
        job.display = hung.job.display;
        const auto outcome = job.run(hung.puddle.book, Puddle::runOf());
        EXPECT_TRUE(outcome.ok());
        std::vector<Finding> findings = outcome.ok() ? outcome->findings : std::vector<Finding>();
        std::erase_if(findings,
            [&](const Finding& one) { return !one.rule.startsWith(QLatin1String(rules)); });
        return findings;
    }

    Hung hung;
    CheckJob job;
};

TEST_F(Checked, LooksAtSeamsOnlyWhereTheDisplayIsPrintedInParts)
{
    EXPECT_TRUE(found("seam.").empty()) << "nobody said which paper";
    job.sheets = SheetWishes{{Mm(210), Mm(297)}};
    const std::vector<Finding> onSmallPaper = found("seam.");
    ASSERT_FALSE(onSmallPaper.empty());
    EXPECT_TRUE(onSmallPaper.front().says.contains(QStringLiteral("sheets of A4")));
    EXPECT_GT(*onSmallPaper.front().measured, 0);
    job.sheets = SheetWishes{{Mm(1000), Mm(1000)}};
    EXPECT_TRUE(found("seam.").empty()) << "one sheet holds it";
}

TEST_F(Checked, MeasuresAgainstLimitsSomebodySet)
{
    EXPECT_TRUE(found("line.").empty());
    ASSERT_TRUE(job.limits.set(check::Limit::VoiceLine, 12));
    const std::vector<Finding> lines = found("line.voice");
    ASSERT_FALSE(lines.empty());
    EXPECT_EQ(lines.front().limit, 12);
}

TEST_F(Checked, LooksFromWhereThePanelHangs)
{
    EXPECT_TRUE(found("type.mounted").empty());
    Wall wall;
    wall.id = hung.puddle.book.walls.newId();
    wall.name = QStringLiteral("By the door");
    wall.size = {Mm(6000), Mm(6000)};
    wall.viewers = Viewers::Children;
    wall.panels = {{hung.puddle.book.panels.rows().begin()->first, {Mm(0), Mm(0)}}};
    hung.puddle.book.walls.put(wall);
    EXPECT_EQ(found("type.mounted").size(), 1U) << "five metres up";
}

} // namespace
} // namespace wainscot
