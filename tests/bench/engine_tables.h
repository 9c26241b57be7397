// The sections of bench_engine. Each measures one promise of the arrangement engine, prints a table
// with its goals beside the numbers, and says whether the goals are met.
//
// A new section: a function here, its row in the table of engine_bench.cpp, and its own file
// engine_<name>.cpp in tests/engine.cmake.
#pragma once

#include <string>

namespace wainscot::engine {

struct BenchOptions {
    bool quick = false; // fewer or smaller documents; says so in its heading
    std::string pictures; // folder for pictures to look at; empty = none
};

// CPU, memory and growth of the exact engine, beside a reference program when one is given.
[[nodiscard]] bool printSpeedTable(const BenchOptions& options);

// The panel style's tests on unseen documents, beside justified rows and masonry. Draws contact
// sheets of all pages into `pictures`.
[[nodiscard]] bool printQualityTable(const BenchOptions& options);
// The same on the documents that weights are set by. Not a promise: asked for by name only.
[[nodiscard]] bool printTuningTable(const BenchOptions& options);

// The exact choice of what comes onto a wall, beside cbc and glpsol on the same problems.
[[nodiscard]] bool printSelectionTable(const BenchOptions& options);

// Further arrangements: how many are found, how different they are, what they cost, at what CPU.
[[nodiscard]] bool printAlternativesTable(const BenchOptions& options);

// One edit on a page: how far the untouched pieces move, and what standing still costs.
[[nodiscard]] bool printStabilityTable(const BenchOptions& options);

// Displays of several panels: their breaks, beside an even share of the moments.
[[nodiscard]] bool printDisplayTable(const BenchOptions& options);

// Pages that are too empty on smaller paper, and what is said where too much is asked of one page.
[[nodiscard]] bool printSparseTable(const BenchOptions& options);

// The built-in templates: wishes kept, dropped and said, and what the pages are like.
[[nodiscard]] bool printTemplatesTable(const BenchOptions& options);

// Random pins on unseen documents: whether they stay, what is said, and what the rest costs.
[[nodiscard]] bool printPinsTable(const BenchOptions& options);

} // namespace wainscot::engine
