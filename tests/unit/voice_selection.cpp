// Who gets on the wall: what is said when not everybody can be, limits, and what pieces are worth.
#include "core/voice/selection.h"
#include "core/voice/worth.h"
#include "tests/support/selection_problems.h"

#include <gmock/gmock.h>

namespace wainscot {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

constexpr ChildId kMei(1);
constexpr ChildId kKofi(2);
constexpr ChildId kJuno(3);

Candidate words(std::int64_t id, ChildId child, std::int64_t worth, std::int64_t areaCm2)
{
    return {id, CandidateKind::Words, {child}, 0, 0, worth, areaCm2};
}

Candidate photo(std::int64_t id, std::int64_t worth, std::int64_t areaCm2, int burst = 0)
{
    return {id, CandidateKind::Photo, {kMei}, 0, burst, worth, areaCm2};
}

TEST(Selection, TakesEverythingWhereThereIsRoom)
{
    const SelectionProblem problem{
        {words(1, kMei, 300, 50), words(2, kKofi, 300, 50), photo(3, 360, 200)},
        {kMei, kKofi},
        300};
    const SelectedSet set = selectForWall(problem);
    EXPECT_THAT(set.chosen, ElementsAre(1, 2, 3));
    EXPECT_TRUE(set.proven);
    EXPECT_EQ(set.missingCm2, 0);
}

TEST(Selection, AFaceIsNoVoice)
{
    // The photo shows Mei and is worth far more than her words, but speaks for nobody.
    const SelectionProblem problem{{words(1, kMei, 300, 60), photo(2, 9000, 60)}, {kMei}, 100};
    EXPECT_THAT(selectForWall(problem).chosen, ElementsAre(1));
}

TEST(Selection, WorkIsAVoice)
{
    Candidate drawing{2, CandidateKind::Work, {kKofi}, 0, 0, 360, 60};
    const SelectionProblem problem{
        {words(1, kMei, 300, 40), drawing, photo(3, 9000, 50)}, {kMei, kKofi}, 100};
    EXPECT_THAT(selectForWall(problem).chosen, ElementsAre(1, 2));
}

TEST(Selection, ABurstGivesOnePicture)
{
    const SelectionProblem problem{
        {photo(1, 300, 10, 7), photo(2, 400, 90, 7), photo(3, 350, 10, 7)}, {}, 1000};
    EXPECT_THAT(selectForWall(problem).chosen, ElementsAre(2));
}

TEST(Selection, EveryGroupHasWordsAndAPicture)
{
    SelectionProblem problem{
        {words(1, kMei, 9000, 50), words(2, kMei, 300, 50), photo(3, 9000, 50), photo(4, 300, 50)},
        {},
        200};
    for (Candidate& candidate : problem.candidates)
        candidate.group = candidate.worth > 1000 ? 1 : 2;
    problem.roomCm2 = 200;
    EXPECT_THAT(selectForWall(problem).chosen, ElementsAre(1, 2, 3, 4));
    problem.roomCm2 = 150;
    const SelectedSet tight = selectForWall(problem);
    ASSERT_EQ(tight.unshown.size(), 1U);
    EXPECT_FALSE(tight.unshown.front().words) << "pictures give way before words";
    EXPECT_EQ(tight.missingCm2, 50);
}

TEST(Selection, SaysWhoHasNothingThatMayBeShown)
{
    const SelectionProblem problem{
        {words(1, kMei, 300, 50), photo(2, 360, 50)}, {kMei, kJuno}, 1000};
    const SelectedSet set = selectForWall(problem);
    ASSERT_EQ(set.unheard.size(), 1U);
    EXPECT_EQ(set.unheard.front().child, kJuno);
    EXPECT_EQ(set.unheard.front().why, WhyUnheard::NoVoice);
    EXPECT_THAT(set.chosen, ElementsAre(1, 2)) << "the others are heard all the same";
}

TEST(Selection, SaysForWhomThereIsNoRoomAndHowMuchIsMissing)
{
    const SelectionProblem problem{{words(1, kMei, 300, 60),
                                       words(2, kKofi, 9000, 90),
                                       words(3, kKofi, 400, 70),
                                       words(4, kJuno, 1000, 50)},
        {kMei, kKofi, kJuno},
        120};
    const SelectedSet set = selectForWall(problem);
    EXPECT_EQ(set.leastCm2, 60 + 70 + 50);
    EXPECT_EQ(set.missingCm2, 60);
    ASSERT_EQ(set.unheard.size(), 1U);
    EXPECT_EQ(set.unheard.front().why, WhyUnheard::NoRoom);
    EXPECT_EQ(set.unheard.front().child, kMei) << "of two out of three, what is worth more";
    EXPECT_EQ(set.unheard.front().leastCm2, 60);
    EXPECT_TRUE(set.proven);
    EXPECT_THAT(set.chosen, ElementsAre(3, 4));
}

TEST(Selection, SaysWhoIsOnlyInANearEqual)
{
    Candidate mine{1, CandidateKind::Work, {kMei}, 0, 5, 360, 50};
    Candidate yours{2, CandidateKind::Work, {kKofi}, 0, 5, 300, 50};
    const SelectedSet set = selectForWall({{mine, yours}, {kMei, kKofi}, 1000});
    ASSERT_EQ(set.unheard.size(), 1U);
    EXPECT_EQ(set.unheard.front().child, kKofi);
    EXPECT_EQ(set.unheard.front().why, WhyUnheard::NearEqual);
}

TEST(Selection, NothingToChooseFromIsNoMistake)
{
    const SelectedSet set = selectForWall({{}, {kMei}, 100});
    EXPECT_THAT(set.chosen, IsEmpty());
    EXPECT_EQ(set.unheard.size(), 1U);
    EXPECT_TRUE(set.proven);
}

TEST(Selection, AtItsLimitItAnswersWithTheGap)
{
    const SelectionProblem problem = selectionProblem(3, {50, 150, 120, 10, 20});
    const SelectedSet best = selectForWall(problem);
    ASSERT_TRUE(best.proven);
    EXPECT_EQ(best.worth, best.mostWorth);
    SelectionLimits few;
    few.nodes = 5;
    const SelectedSet early = selectForWall(problem, few);
    EXPECT_FALSE(early.proven);
    EXPECT_EQ(faultIn(problem, early), "");
    EXPECT_LE(early.worth, best.worth);
    EXPECT_GE(early.mostWorth, best.worth) << "the gap it tells must hold";
    EXPECT_LT(early.mostWorth, best.worth * 102 / 100);
}

TEST(Selection, CanBeStopped)
{
    const std::atomic<bool> cancel{true};
    SelectionLimits limits;
    limits.cancel = &cancel;
    const SelectedSet set = selectForWall(selectionProblem(3, {50, 150, 120, 10, 20}), limits);
    EXPECT_TRUE(set.cancelled);
    EXPECT_FALSE(set.proven);
}

TEST(Worth, StarsCountMost)
{
    for (int stars = 1; stars <= 3; ++stars) {
        EXPECT_GT(worthOfStars(stars), worthOfStars(stars - 1) + worthOfBeingSeldom(0, 0));
        EXPECT_GT(worthOfPicture(stars), worthOfStars(stars));
    }
    EXPECT_EQ(worthOfStars(7), worthOfStars(3));
    EXPECT_EQ(worthOfStars(-1), worthOfStars(0));
}

TEST(Worth, WhoIsSeldomOnWallsCountsMore)
{
    for (int fewest = 0; fewest < 4; ++fewest) {
        EXPECT_EQ(worthOfBeingSeldom(fewest, fewest), 600);
        for (int walls = fewest; walls < 30; ++walls)
            EXPECT_GE(worthOfBeingSeldom(walls, fewest), worthOfBeingSeldom(walls + 1, fewest));
        EXPECT_GT(worthOfBeingSeldom(fewest, fewest), worthOfBeingSeldom(fewest + 1, fewest));
    }
    // With one place left it goes to the child who has been on fewer walls.
    const SelectionProblem problem{
        {words(1, kMei, worthOfStars(1) + worthOfBeingSeldom(4, 1), 50),
            words(2, kKofi, worthOfStars(1) + worthOfBeingSeldom(1, 1), 50)},
        {},
        60};
    EXPECT_THAT(selectForWall(problem).chosen, ElementsAre(2));
}

} // namespace
} // namespace wainscot
