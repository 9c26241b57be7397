// What seams between sheets cut, and what they only touch.
#include "layout/check/check.h"
#include "tests/support/check_panel.h"

#include <gmock/gmock.h>

namespace wainscot::check {
namespace {

std::vector<std::string> cut(const PanelFacts& panel, const Seams& seams)
{
    std::vector<std::string> rules;
    for (const Finding& finding : checkSeams(panel, seams)) {
        EXPECT_TRUE(finding.measured && finding.limit && !finding.source.isEmpty());
        rules.push_back(finding.rule.toStdString());
    }
    return rules;
}

Seams upright(Mm at)
{
    return {{at}, {}, QStringLiteral("8 sheets of A4")};
}

TEST(CheckSeams, FindNothingWhereTheyRunBesideEverything)
{
    PanelFacts panel = goodPanel();
    EXPECT_THAT(cut(panel, {}), ::testing::IsEmpty());
    const RectMm work = pictureOf(panel, kWork).place;
    EXPECT_THAT(cut(panel, upright(lineOf(panel, kQuote).left)), ::testing::IsEmpty());
    panel.lines.clear();
    EXPECT_THAT(cut(panel, upright(work.right())), ::testing::IsEmpty()) << "along its edge";
}

TEST(CheckSeams, FindLinesOfTextEitherWay)
{
    const PanelFacts panel = goodPanel();
    PanelFacts with = panel;
    const TextLine& line = lineOf(with, kQuote);
    const Seams level{{}, {line.baseline - line.cap / 2}, QStringLiteral("2 sheets of A1")};
    EXPECT_THAT(cut(panel, level), ::testing::Contains("seam.lines"));
    const std::vector<Finding> found = checkSeams(panel, upright(line.left + Mm(8)));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().rule, QStringLiteral("seam.lines"));
    // The day's label, the two lines of words, the name, and the adult's line below them.
    EXPECT_EQ(found.front().measured, 5);
    EXPECT_TRUE(found.front().says.contains(QStringLiteral("8 sheets of A4")));
}

TEST(CheckSeams, FindMarkedPartsAndWorks)
{
    PanelFacts panel = goodPanel();
    panel.lines.clear();
    PictureFact& lead = pictureOf(panel, kLead);
    lead.picture.mustStay = RectFraction{0.4, 0.4, 0.2, 0.2};
    EXPECT_THAT(cut(panel, upright(lead.place.x + lead.place.width * 0.5)),
        ::testing::ElementsAre("seam.marked"));
    EXPECT_THAT(cut(panel, upright(lead.place.x + lead.place.width * 0.3)), ::testing::IsEmpty());
    // Where the picture is cropped, the part moves in its frame.
    lead.picture.visible = {0.3, 0, 0.7, 1};
    EXPECT_THAT(cut(panel, upright(lead.place.x + lead.place.width * 0.2)),
        ::testing::ElementsAre("seam.marked"));
    const RectMm work = pictureOf(panel, kWork).place;
    EXPECT_THAT(cut(panel, upright(work.x + work.width / 2)), ::testing::ElementsAre("seam.work"));
}

TEST(CheckSeams, AreAllowedWhatSomebodySet)
{
    PanelFacts panel = goodPanel();
    ASSERT_TRUE(panel.limits.set(Limit::SeamLines, 5));
    EXPECT_THAT(cut(panel, upright(lineOf(panel, kQuote).left + Mm(8))), ::testing::IsEmpty());
}

} // namespace
} // namespace wainscot::check
