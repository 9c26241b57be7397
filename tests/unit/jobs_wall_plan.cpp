// A measured wall: places, findings, the list to hang by; and the wall as it is kept.
#include "app/jobs/wall_plan.h"

#include "layout/wall/fittings.h"
#include "tests/support/class_book.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace wainscot {
namespace {

struct MeasuredWall : testing::Test {
    MeasuredWall()
    {
        small.hang(hall, PieceKind::Title, QStringLiteral("Ice"));
        wall.id = WallId(1);
        wall.name = QStringLiteral("By the door");
        wall.fittings.push_back({FittingKind::Door, {Mm(250), Mm(650), Mm(950), Mm(2050)}});
        wall.fittings.push_back(
            {FittingKind::Extinguisher, {Mm(1350), Mm(1850), Mm(170), Mm(480)}});
    }
    [[nodiscard]] PanelId panel() { return small.panelOf(hall).id; }
    static int count(const WallPlan& plan, const char* rule)
    {
        return int(std::count_if(plan.findings.begin(), plan.findings.end(), [&](const Finding& f) {
            return f.rule == QLatin1String(rule);
        }));
    }

    ClassBook small;
    DisplayId hall = small.display(Audience::Building);
    Wall wall;
};

TEST_F(MeasuredWall, HangsPanelsAtTheEyesClearOfWhatStaysClear)
{
    wall = withProposedPlaces(small.book, wall, hall);
    ASSERT_EQ(wall.panels.size(), 1U);
    const WallPlan plan = planOf(small.book, wall);
    ASSERT_EQ(plan.list.size(), 1U);
    const HangingLine& line = plan.list.front();
    EXPECT_NEAR(line.middle().value(), plan.children.middle.value(), 1e-6);
    EXPECT_NEAR((line.bottom + line.place.bottom()).value(), wall.size.height.value(), 1e-9);
    for (const Fitting& fitting : wall.fittings)
        EXPECT_TRUE(intersection(wall::keptClear(fitting, wall.size), line.place).isEmpty());
    EXPECT_EQ(count(plan, "wall.eyes"), 0);
    EXPECT_EQ(count(plan, "wall.clear"), 0);
    EXPECT_EQ(count(plan, "wall.covered"), 1);
    EXPECT_EQ(withProposedPlaces(small.book, wall, hall), wall) << "a second time changes nothing";
}

// 2010 ADA Standards 307.2, in the millimetres printed there.
TEST_F(MeasuredWall, SaysWhatStandsOutTooFarBetweenKneeAndHead)
{
    wall = withProposedPlaces(small.book, wall, hall);
    EXPECT_EQ(count(planOf(small.book, wall), "wall.stands_out"), 0);
    EXPECT_EQ(count(planOf(small.book, wall, Mm(100)), "wall.stands_out"), 0) << "100 mm may";
    EXPECT_EQ(count(planOf(small.book, wall, Mm(100.5)), "wall.stands_out"), 1);
    HangingLine line = planOf(small.book, wall).list.front();
    line.bottom = Mm(100);
    line.top = Mm(685);
    EXPECT_FALSE(protrusionOf(line, 1, Mm(200))) << "all of it below 27 in";
    line.top = Mm(686);
    EXPECT_TRUE(protrusionOf(line, 1, Mm(200)));
    line.bottom = Mm(2030);
    line.top = Mm(2600);
    EXPECT_FALSE(protrusionOf(line, 1, Mm(200))) << "all of it above 80 in";
}

TEST_F(MeasuredWall, SaysWhatHangsOverASignTooHighAndBeyondTheEdge)
{
    wall.panels = {{panel(), {Mm(1300), Mm(1800)}}};
    const WallPlan over = planOf(small.book, wall);
    ASSERT_EQ(count(over, "wall.clear"), 1);
    const auto clear = std::find_if(over.findings.begin(), over.findings.end(), [](const auto& f) {
        return f.rule == QLatin1String("wall.clear");
    });
    EXPECT_EQ(clear->severity, Severity::Stop);
    EXPECT_FALSE(clear->source.isEmpty());
    wall.panels = {{panel(), {Mm(3000), Mm(0)}}};
    EXPECT_EQ(count(planOf(small.book, wall), "wall.eyes"), 1);
    wall.panels = {{panel(), {Mm(5800), Mm(1300)}}};
    EXPECT_EQ(count(planOf(small.book, wall), "wall.edge"), 1);
}

TEST_F(MeasuredWall, LooksAtAWallThatIsCoveredBeyondTheChosenLimit)
{
    wall.size = {Mm(1700), Mm(1300)};
    wall.fittings.clear();
    wall.panels = {{panel(), {Mm(100), Mm(100)}}}; // 22.6 %
    const auto severity = [&](const char* limit) {
        wall.coverLimit = QString::fromLatin1(limit);
        return planOf(small.book, wall).findings.front().severity;
    };
    EXPECT_EQ(severity("20"), Severity::Look);
    EXPECT_EQ(severity("50"), Severity::Note);
    EXPECT_EQ(severity("a limit of long ago"), Severity::Look) << "measured by 20 %";
    EXPECT_TRUE(planOf(small.book, wall)
                    .findings.front()
                    .says.contains(QStringLiteral("ask your fire authority")));
}

TEST_F(MeasuredWall, ForgetsAPanelThatIsGone)
{
    wall = withProposedPlaces(small.book, wall, hall);
    small.book.panels.remove(panel());
    const WallPlan plan = planOf(small.book, wall);
    EXPECT_TRUE(plan.list.empty());
    EXPECT_TRUE(plan.boards.empty());
    EXPECT_EQ(plan.coveredShare, 0);
}

TEST_F(MeasuredWall, CutsOneBoardForEachPanel)
{
    wall = withProposedPlaces(small.book, wall, hall);
    const WallPlan plan = planOf(small.book, wall);
    ASSERT_EQ(plan.boards.size(), 1U);
    EXPECT_EQ(plan.boards.front().count, 1);
    EXPECT_EQ(plan.boards.front().board.width, small.at(hall).panelSize.width + Mm(16));
}

// 1 in = 25.4 mm exactly (international inch, 1959).
TEST(Inches, AreToldToAnEighth)
{
    EXPECT_EQ(inchesInWords(Mm(25.4)), QStringLiteral("1 in"));
    EXPECT_EQ(inchesInWords(Mm(1850)), QStringLiteral("72 7/8 in"));
    EXPECT_EQ(inchesInWords(Mm(600)), QStringLiteral("23 5/8 in"));
    EXPECT_EQ(inchesInWords(Mm()), QStringLiteral("0 in"));
    EXPECT_EQ(inchesInWords(Mm(9.6)), QStringLiteral("3/8 in"));
    EXPECT_EQ(inchesInWords(Mm(-9.6)), QStringLiteral("-3/8 in")) << "over the wall's edge";
    EXPECT_EQ(inchesInWords(Mm(-60)), QStringLiteral("-2 3/8 in"));
    EXPECT_EQ(inchesInWords(Mm(-0.5)), QStringLiteral("0 in"));
}

TEST_F(MeasuredWall, SaysWhereTheNailsGo)
{
    wall = withProposedPlaces(small.book, wall, hall);
    HangingLine line = planOf(small.book, wall).list.front();
    line.place = {Mm(1000), Mm(900), Mm(800), Mm(600)};
    line.size = line.place.size();
    line.top = Mm(1800);
    const std::vector<Nail> two = line.nails();
    ASSERT_EQ(two.size(), 2U);
    EXPECT_EQ(two[0].left, Mm(1080));
    EXPECT_EQ(two[1].left, Mm(1720));
    EXPECT_EQ(two[0].up, Mm(1780));
    EXPECT_EQ(two[1].up, Mm(1780));
    line.place.width = line.size.width = Mm(210);
    ASSERT_EQ(line.nails().size(), 1U);
    EXPECT_EQ(line.nails().front().left, Mm(1105));
}

TEST_F(MeasuredWall, IsKeptAsItIs)
{
    wall.panels = {{panel(), {Mm(1300.5), Mm(1800.25)}}};
    wall.viewers = Viewers::GrownUps;
    wall.youngest = 3;
    wall.oldest = 9;
    wall.coverLimit = QStringLiteral("50");
    const Result<Wall> kept = wallFromJson(wallToJson(wall));
    ASSERT_TRUE(kept.ok());
    Wall same = *kept;
    same.id = wall.id;
    EXPECT_EQ(same, wall);
    for (const char* bad : {"",
             "{}",
             "[1]",
             R"({"width":1,"height":2700,"viewers":"both"})",
             R"({"width":6000,"height":2700,"viewers":"martians","youngest":4,"oldest":6})",
             R"({"width":6000,"height":2700,"viewers":"both","youngest":1,"oldest":6})"})
        EXPECT_FALSE(wallFromJson(QByteArray(bad)).ok()) << bad;
    QByteArray odd = wallToJson(wall);
    odd.replace("extinguisher", "chandelier");
    EXPECT_FALSE(wallFromJson(odd).ok());
}

TEST(FindingsThatWereLeft, AreKeptAsTheyAre)
{
    const std::vector<LeftFinding> left{
        {QStringLiteral("type.caption"), PieceId(4), QStringLiteral("They stand \"close\".")},
        {QStringLiteral("panel.ink"), {}, {}}};
    EXPECT_EQ(leftFindingsFromText(textOf(left)), left);
    EXPECT_EQ(leftFindingsFromText({}), std::vector<LeftFinding>());
    EXPECT_FALSE(leftFindingsFromText(QStringLiteral("why not")));
    EXPECT_FALSE(leftFindingsFromText(QStringLiteral("[{\"piece\":1}]")));
}

} // namespace
} // namespace wainscot
