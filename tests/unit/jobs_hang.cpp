// Hanging a display on a wall: places at the children's eyes, and what is measured there.
#include "app/jobs/hang_job.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "tests/support/class_book.h"

namespace wainscot {
namespace {

struct Hung : testing::Test {
    Hung()
    {
        const DisplayId id = small.display(Audience::Building);
        small.hang(id, PieceKind::Title, QStringLiteral("Where does the puddle go?"));
        shown = &small.at(id);
        job.display = shown->name;
        job.wallSize = {Mm(6000), Mm(2700)};
    }
    static const Finding* findingOf(const HangOutcome& outcome, const char* rule)
    {
        const auto at = std::find_if(outcome.findings.begin(),
            outcome.findings.end(),
            [&](const Finding& one) { return one.rule == QLatin1String(rule); });
        return at == outcome.findings.end() ? nullptr : &*at;
    }

    ClassBook small;
    const Display* shown = nullptr;
    HangJob job;
};

TEST_F(Hung, HangsAtTheChildrensEyesAndTellsOfTheGrownUps)
{
    const auto outcome = job.run(small.book, {});
    ASSERT_TRUE(outcome);
    ASSERT_EQ(outcome->panels.size(), 1U);
    ASSERT_TRUE(outcome->panels[0].place);
    const RectMm place = *outcome->panels[0].place;
    EXPECT_EQ(place.size(), shown->panelSize);
    EXPECT_NEAR((Mm(2700) - place.y - place.height / 2).value(),
        wall::childrensEyes(4, 6).middle.value(),
        1e-6);
    EXPECT_NEAR(outcome->coveredShare, place.areaMm2() / (6000.0 * 2700.0), 1e-12);
    EXPECT_NE(findingOf(*outcome, "wall.eyes"), nullptr);
    const Finding* covered = findingOf(*outcome, "wall.covered");
    ASSERT_NE(covered, nullptr);
    EXPECT_EQ(covered->severity, Severity::Note);
    EXPECT_FALSE(covered->source.isEmpty());
    EXPECT_TRUE(covered->says.contains(QStringLiteral("ask your fire authority")));
}

TEST_F(Hung, LooksAtAWallThatIsTooFullAndOneThatIsTooSmall)
{
    job.wallSize = {shown->panelSize.width * 2, shown->panelSize.height * 2}; // 25 %
    const auto full = job.run(small.book, {});
    ASSERT_TRUE(full);
    ASSERT_NE(findingOf(*full, "wall.covered"), nullptr);
    EXPECT_EQ(findingOf(*full, "wall.covered")->severity, Severity::Look);
    job.limit = QStringLiteral("50");
    EXPECT_EQ(findingOf(*job.run(small.book, {}), "wall.covered")->severity, Severity::Note);
    job.wallSize = {Mm(300), Mm(300)};
    const auto tight = job.run(small.book, {});
    ASSERT_TRUE(tight);
    EXPECT_FALSE(tight->panels[0].place);
    EXPECT_NE(findingOf(*tight, "wall.no_room"), nullptr);
    EXPECT_EQ(tight->coveredShare, 0);
}

TEST_F(Hung, HangsHigherForGrownUps)
{
    job.viewers = Viewers::GrownUps;
    const auto outcome = job.run(small.book, {});
    ASSERT_TRUE(outcome && outcome->panels[0].place);
    const RectMm place = *outcome->panels[0].place;
    EXPECT_NEAR((Mm(2700) - place.y - place.height / 2).value(), 1570, 1e-6);
    EXPECT_EQ(findingOf(*outcome, "wall.eyes"), nullptr);
}

TEST_F(Hung, RefusesWhatItDoesNotKnow)
{
    job.limit = QStringLiteral("none");
    EXPECT_EQ(job.run(small.book, {}).error().code, ErrorCode::WrongUse);
    job.limit = QStringLiteral("20");
    job.wallSize = {};
    EXPECT_EQ(job.run(small.book, {}).error().code, ErrorCode::WrongUse);
    job.display = QStringLiteral("No such wall");
    EXPECT_EQ(job.run(small.book, {}).error().code, ErrorCode::NotFound);
}

} // namespace
} // namespace wainscot
