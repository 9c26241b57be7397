// The exact choice against trying everything, against solvers written by others, and its laws.
#include "core/voice/selection.h"
#include "tests/support/selection_problems.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <filesystem>
#include <optional>
#include <random>
#include <set>
#include <vector>

namespace wainscot {
namespace {

// What a set of candidates does for a problem, found without any cleverness.
struct Tried {
    bool oneOfEachBurst = true;
    std::int64_t area = 0;
    std::int64_t worth = 0;
    std::set<ChildId> heard;
    std::set<int> words;
    std::set<int> pictures;
};

Tried tryOut(const SelectionProblem& problem, unsigned choice)
{
    Tried tried;
    std::set<int> bursts;
    for (std::size_t at = 0; at < problem.candidates.size(); ++at) {
        if ((choice >> at & 1U) == 0)
            continue;
        const Candidate& one = problem.candidates[at];
        tried.area += one.areaCm2;
        tried.worth += one.worth;
        if (one.burst > 0 && !bursts.insert(one.burst).second)
            tried.oneOfEachBurst = false;
        if (one.kind != CandidateKind::Photo)
            tried.heard.insert(one.voices.begin(), one.voices.end());
        if (one.group > 0)
            (one.kind == CandidateKind::Words ? tried.words : tried.pictures).insert(one.group);
    }
    return tried;
}

// Children heard, groups with words, groups with pictures, worth: in this order.
using Merit = std::vector<std::int64_t>;

struct Best {
    Merit merit;
    std::optional<std::int64_t> leastArea; // for everything that can be covered at all
};

Merit meritOf(const Tried& tried)
{
    return {static_cast<std::int64_t>(tried.heard.size()),
        static_cast<std::int64_t>(tried.words.size()),
        static_cast<std::int64_t>(tried.pictures.size()),
        tried.worth};
}

Best bestOfAll(const SelectionProblem& problem)
{
    const Tried all = tryOut(problem, ~0U);
    Best best{};
    for (unsigned choice = 0; choice < 1U << problem.candidates.size(); ++choice) {
        const Tried tried = tryOut(problem, choice);
        if (!tried.oneOfEachBurst)
            continue;
        const bool covers =
            tried.heard == all.heard && tried.words == all.words && tried.pictures == all.pictures;
        if (covers && (!best.leastArea || tried.area < *best.leastArea))
            best.leastArea = tried.area;
        if (tried.area > problem.roomCm2)
            continue;
        best.merit = std::max(best.merit, meritOf(tried));
    }
    return best;
}

SelectionProblem smallProblem(std::uint64_t seed)
{
    std::mt19937_64 dice(seed);
    const auto in = [&](int least, int most) {
        return least + static_cast<int>(dice() % static_cast<unsigned>(most - least + 1));
    };
    const int children = in(1, 5);
    ClassMeasures measures{children, children + in(0, 5), in(0, 5), in(1, 3), in(5, 70)};
    return selectionProblem(seed, measures);
}

TEST(SelectionProperty, EqualsTryingEverything)
{
    int tight = 0;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        const SelectionProblem problem = smallProblem(seed);
        const SelectedSet set = selectForWall(problem);
        ASSERT_EQ(faultIn(problem, set), "") << "seed " << seed;
        ASSERT_TRUE(set.proven) << "seed " << seed;
        unsigned choice = 0;
        for (const std::int64_t id : set.chosen)
            choice |= 1U << static_cast<unsigned>(id - 1);
        const Tried tried = tryOut(problem, choice);
        const Best best = bestOfAll(problem);
        EXPECT_EQ(meritOf(tried), best.merit)
            << "seed " << seed << ", " << problem.candidates.size() << " candidates";
        if (set.missingCm2 == 0 || !best.leastArea)
            continue; // where bursts stand in the way, room is not all that is missing
        ++tight;
        EXPECT_EQ(set.leastCm2, *best.leastArea) << "seed " << seed;
        EXPECT_EQ(set.missingCm2, *best.leastArea - problem.roomCm2) << "seed " << seed;
    }
    EXPECT_GT(tight, 50) << "the problems must be hard enough to say something";
}

TEST(SelectionProperty, TheOrderOfCandidatesDoesNotMatterForTheWorth)
{
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        SelectionProblem problem = selectionProblem(seed, {25, 75, 60, 6, 15});
        const SelectedSet set = selectForWall(problem);
        std::reverse(problem.candidates.begin(), problem.candidates.end());
        EXPECT_EQ(selectForWall(problem).worth, set.worth) << "seed " << seed;
        EXPECT_EQ(selectForWall(problem).chosen, selectForWall(problem).chosen);
    }
}

TEST(SelectionProperty, MoreRoomIsNeverWorthLess)
{
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        SelectionProblem problem = selectionProblem(seed, {12, 30, 25, 4, 18});
        const SelectedSet less = selectForWall(problem);
        problem.roomCm2 += 500;
        const SelectedSet more = selectForWall(problem);
        EXPECT_LE(more.unheard.size(), less.unheard.size()) << "seed " << seed;
        if (less.missingCm2 == 0) {
            EXPECT_GE(more.worth, less.worth) << "seed " << seed;
        } else {
            EXPECT_EQ(more.missingCm2, std::max<std::int64_t>(0, less.missingCm2 - 500));
        }
    }
}

// Two solvers written by others; the bench asks them on more and larger problems.
TEST(SelectionProperty, EqualsOtherSolvers)
{
    const auto folder = std::filesystem::temp_directory_path() / "wainscot_selection_test";
    std::filesystem::create_directories(folder);
    for (const int room : {12, 20, 30}) {
        for (std::uint64_t seed = 101; seed <= 102; ++seed) {
            const SelectionProblem problem = selectionProblem(seed, {25, 75, 60, 6, room});
            const SelectedSet set = selectForWall(problem);
            ASSERT_EQ(faultIn(problem, set), "");
            ASSERT_TRUE(set.proven && set.missingCm2 == 0);
            const std::string file = (folder / "problem.lp").string();
            writeLinearProgram(problem, file);
            const Solved cbc = solvedByCbc(file);
            const Solved glpk = solvedByGlpk(file);
            ASSERT_TRUE(cbc.solved && glpk.solved) << "coinor-cbc and glpk-utils must be there";
            EXPECT_EQ(cbc.worth, set.worth) << "seed " << seed << ", room " << room << " %";
            EXPECT_EQ(glpk.worth, set.worth) << "seed " << seed << ", room " << room << " %";
        }
    }
    std::filesystem::remove_all(folder);
}

} // namespace
} // namespace wainscot
