// Letters from the eyes of those in front of the wall.
#include "layout/check/check.h"
#include "layout/wall/stature.h"
#include "tests/support/check_panel.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace wainscot::check {
namespace {

class Mounted : public ::testing::Test {
protected:
    void SetUp() override
    {
        Display display;
        display.id = m_book.displays.newId();
        m_book.displays.put(display);
        m_panel.panelId = m_book.panels.newId();
        m_wall.id = m_book.walls.newId();
        m_wall.name = QStringLiteral("By the door");
        m_wall.viewers = Viewers::Children;
    }

    // With the middle of the panel at a height above the floor.
    std::vector<Finding> hungAt(Mm middle)
    {
        const Mm top = m_wall.size.height - middle - m_panel.display.panelSize.height / 2;
        m_wall.panels = {{m_panel.panelId, {Mm(1000), top}}};
        m_book.walls.put(m_wall);
        return found();
    }
    [[nodiscard]] std::vector<Finding> found() const
    {
        std::vector<Finding> mounted;
        for (const Finding& finding : checkDisplay(m_book, m_panel.display, {m_panel})) {
            if (finding.rule == QLatin1String("type.mounted"))
                mounted.push_back(finding);
        }
        return mounted;
    }

    Book m_book;
    Wall m_wall;
    PanelFacts m_panel = goodPanel();
};

TEST_F(Mounted, FindsNothingOnNoWallAndAtTheChildrensEyes)
{
    EXPECT_TRUE(found().empty());
    EXPECT_TRUE(hungAt(wall::childrensEyes(4, 6).middle).empty());
}

TEST_F(Mounted, FindsLettersThatHangFarAboveTheEyes)
{
    const std::vector<Finding> findings = hungAt(Mm(2300));
    ASSERT_EQ(findings.size(), 1U);
    EXPECT_EQ(findings.front().panel, m_panel.number);
    EXPECT_EQ(findings.front().limit, 16);
    EXPECT_EQ(findings.front().unit, QStringLiteral("arcmin"));
    EXPECT_TRUE(findings.front().says.contains(QStringLiteral("By the door")));
    EXPECT_TRUE(findings.front().says.contains(QStringLiteral("children's eyes")));
    // The same by hand, for the smallest seen line: h d / (d^2 + v^2), in arcminutes.
    double least = 1e9;
    const double eyes = wall::childrensEyes(4, 6).middle.value();
    for (const TextLine& line : m_panel.lines) {
        const double at = 2300 + 297 - (line.baseline - line.cap / 2).value() - eyes;
        const double far = m_panel.style.readingDistance.value()
            * (line.use == Use::Title ? 2.4 : (line.use == Use::Small ? 0.8 : 1));
        const double away =
            line.use == Use::Small ? std::min(far, std::max(500.0, std::abs(at))) : far;
        const double seen =
            line.cap.value() * away / (away * away + at * at) * 180 * 60 / std::numbers::pi;
        least = std::min(least, seen);
    }
    EXPECT_NEAR(*findings.front().measured, least, 0.02);
    EXPECT_LT(least, 16);
}

TEST_F(Mounted, MeasuresForEverybodyWhoStandsThere)
{
    m_wall.viewers = Viewers::GrownUps;
    EXPECT_TRUE(hungAt(wall::grownUpsEyes().middle).empty());
    m_wall.viewers = Viewers::Both;
    const std::vector<Finding> findings = hungAt(Mm(2400));
    ASSERT_EQ(findings.size(), 2U);
    EXPECT_LT(*findings.front().measured, *findings.back().measured) << "grown-ups are nearer";
}

TEST_F(Mounted, TakesTheLimitSomebodySet)
{
    ASSERT_TRUE(m_panel.limits.set(Limit::MountedAngle, 4));
    EXPECT_TRUE(hungAt(Mm(2300)).empty());
}

} // namespace
} // namespace wainscot::check
