// Problems of choosing for a wall, made from a seed, and the same problem for other solvers.
#pragma once

#include "core/voice/selection.h"

#include <cstdint>
#include <string>

namespace wainscot {

struct ClassMeasures {
    int children = 25;
    int quotes = 75;
    int pictures = 60; // a quarter of them work samples
    int groups = 6;
    int roomPercent = 20; // of the area of everything
};

// Every child has at least one quote; some talk more than others; pictures come in bursts.
[[nodiscard]] SelectionProblem selectionProblem(std::uint64_t seed, const ClassMeasures& measures);

// Whether the set keeps every condition and adds up to its worth; says what is wrong, or nothing.
[[nodiscard]] std::string faultIn(const SelectionProblem& problem, const SelectedSet& set);

// The hard problem (every child, every group) in the LP format that MILP solvers read.
void writeLinearProgram(const SelectionProblem& problem, const std::string& file);

struct Solved {
    bool solved = false;
    std::int64_t worth = 0;
    double cpuSeconds = 0; // of the program, with reading the file
};
// Runs a solver as a program of its own. Not solved: it is not installed or says infeasible.
[[nodiscard]] Solved solvedByCbc(const std::string& linearProgram);
[[nodiscard]] Solved solvedByGlpk(const std::string& linearProgram);

} // namespace wainscot
