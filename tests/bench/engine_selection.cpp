// Choosing for a wall: CPU of the exact search beside two MILP solvers on the same problems.
// bench_selection [--quick] [FIRST SEED]
#include "tests/support/selection_problems.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <ctime>
#include <filesystem>
#include <vector>

using namespace wainscot;

namespace {

struct Case {
    const char* name = "";
    ClassMeasures measures;
    double goal = 1; // own CPU / cbc's CPU
};

struct Sums {
    int solved = 0;
    int equalCbc = 0;
    int equalGlpk = 0;
    double own = 0;
    double longest = 0;
    double cbc = 0;
    double glpk = 0;
    double nodes = 0;
};

double cpuSeconds()
{
    return static_cast<double>(std::clock()) / CLOCKS_PER_SEC;
}

void addRun(const SelectionProblem& problem, const std::string& file, bool withGlpk, Sums& sums)
{
    const double before = cpuSeconds();
    const SelectedSet set = selectForWall(problem);
    const double own = cpuSeconds() - before;
    writeLinearProgram(problem, file);
    const Solved cbc = solvedByCbc(file);
    const Solved glpk = withGlpk ? solvedByGlpk(file) : Solved{};
    const std::string fault = faultIn(problem, set);
    if (!fault.empty())
        std::printf("  FAULT: %s\n", fault.c_str());
    ++sums.solved;
    sums.equalCbc += static_cast<int>(cbc.solved && set.proven && cbc.worth == set.worth);
    sums.equalGlpk += static_cast<int>(glpk.solved && glpk.worth == set.worth);
    sums.own += own;
    sums.longest = std::max(sums.longest, own);
    sums.cbc += cbc.cpuSeconds;
    sums.glpk += glpk.cpuSeconds;
    sums.nodes += static_cast<double>(set.nodes);
}

void print(const Case& one, const Sums& sums, bool withGlpk)
{
    const double each = 1e3 / sums.solved;
    std::printf("%-24s %3d  %3d/%-3d", one.name, sums.solved, sums.equalCbc, sums.solved);
    if (withGlpk)
        std::printf(" %3d/%-3d", sums.equalGlpk, sums.solved);
    else
        std::printf("    -   ");
    std::printf(" %8.1f %8.1f %8.1f %9.0f %8.0f  1/%-5.1f (1/%.0f)\n",
        sums.own * each,
        sums.longest * 1e3,
        sums.cbc * each,
        sums.glpk * each,
        sums.nodes / sums.solved,
        sums.cbc / sums.own,
        1 / one.goal);
}

} // namespace

int main(int count, char** arguments)
{
    const bool quick = count > 1 && std::strcmp(arguments[1], "--quick") == 0;
    const int first = count > 1 && !quick ? std::atoi(arguments[1]) : 1;
    const Case cases[] = {
        {"25 x 75 x 60, 12 %", {25, 75, 60, 6, 12}, 1.0 / 20},
        {"25 x 75 x 60, 20 %", {25, 75, 60, 6, 20}, 1.0 / 20},
        {"25 x 75 x 60, 30 %", {25, 75, 60, 6, 30}, 1.0 / 20},
        {"50 x 150 x 120, 12 %", {50, 150, 120, 10, 12}, 1.0 / 5},
        {"50 x 150 x 120, 20 %", {50, 150, 120, 10, 20}, 1.0 / 5},
        {"50 x 150 x 120, 30 %", {50, 150, 120, 10, 30}, 1.0 / 5},
    };
    const auto folder = std::filesystem::temp_directory_path() / "wainscot_selection";
    std::filesystem::create_directories(folder);
    const std::string file = (folder / "problem.lp").string();
    std::printf("children x quotes x pics   n  =cbc    =glpk   own ms   max ms   cbc ms   glpk ms"
                "    nodes  own/cbc (goal)\n");
    for (const Case& one : cases) {
        const bool large = one.measures.children > 25;
        const unsigned runs = quick ? 1 : large ? 4 : 10;
        Sums sums;
        const auto begin = static_cast<std::uint64_t>(first);
        for (std::uint64_t seed = begin; seed < begin + runs; ++seed)
            addRun(selectionProblem(seed, one.measures), file, !large, sums);
        print(one, sums, !large);
        std::fflush(stdout);
    }
    std::filesystem::remove_all(folder);
    return 0;
}
