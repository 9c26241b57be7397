// Choosing for a wall: CPU of the exact search beside two MILP solvers on the same problems. Theirs
// is that of their processes, with starting and reading the file.
#include "tests/bench/engine_tables.h"
#include "tests/support/selection_problems.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <ctime>
#include <filesystem>

namespace wainscot::engine {

namespace {

struct Case {
    const char* name = "";
    ClassMeasures measures;
    int runs = 0;
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

void addRun(const SelectionProblem& problem, const std::string& file, Sums& sums)
{
    const double before = cpuSeconds();
    const SelectedSet set = selectForWall(problem);
    const double own = cpuSeconds() - before;
    writeLinearProgram(problem, file);
    const Solved cbc = solvedByCbc(file);
    const Solved glpk = solvedByGlpk(file);
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

// Answers whether the goals are met.
bool print(const char* name, const Sums& sums, double goal)
{
    const double each = 1e3 / sums.solved;
    const double ratio = sums.own / std::max(1e-9, sums.cbc);
    const bool met = sums.equalCbc == sums.solved && sums.equalGlpk == sums.solved && ratio <= goal;
    std::printf(
        "%-24s %3d  %3d/%-3d %3d/%-3d %7.1f %7.1f %7.1f %8.1f %6.0f   1/%-5.1f (1/%.0f) %s\n",
        name,
        sums.solved,
        sums.equalCbc,
        sums.solved,
        sums.equalGlpk,
        sums.solved,
        sums.own * each,
        sums.longest * 1e3,
        sums.cbc * each,
        sums.glpk * each,
        sums.nodes / sums.solved,
        1 / ratio,
        1 / goal,
        met ? "met" : "MISSED");
    std::fflush(stdout);
    return met;
}

} // namespace

bool printSelectionTable(const BenchOptions& options)
{
    const Case cases[] = {
        {"25 x 75 x 60", {25, 75, 60, 6, 0}, 30, 1.0 / 20},
        {"50 x 150 x 120", {50, 150, 120, 10, 0}, 15, 1.0 / 5},
    };
    const auto folder = std::filesystem::temp_directory_path() / "wainscot_selection";
    std::filesystem::create_directories(folder);
    const std::string file = (folder / "problem.lp").string();
    std::printf("Choosing for a wall%s: exact search beside cbc and glpsol, room 12, 20, 30 %%\n",
        options.quick ? " (quick: fewer problems)" : "");
    std::printf("children x quotes x pics   n  =cbc    =glpk    own ms  max ms  cbc ms  glpk ms"
                "  nodes   own/cbc (goal)\n");
    bool met = true;
    for (const Case& one : cases) {
        const int runs = options.quick ? 3 : one.runs;
        Sums sums;
        for (int run = 0; run < runs; ++run) {
            ClassMeasures measures = one.measures;
            measures.roomPercent = std::array{12, 20, 30}[static_cast<std::size_t>(run % 3)];
            const auto seed = static_cast<std::uint64_t>(run) + 1;
            addRun(selectionProblem(seed, measures), file, sums);
        }
        met = print(one.name, sums, one.goal) && met;
    }
    std::filesystem::remove_all(folder);
    return met;
}

} // namespace wainscot::engine
