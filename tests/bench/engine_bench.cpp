// bench_engine [SECTION...] [--quick] [--pictures FOLDER]: the sections named, or all of them.
// Ends with 1 when a goal is missed, 2 when asked for something it does not have.
#include "tests/bench/engine_tables.h"

#include <QGuiApplication>

#include <cstdio>
#include <string>
#include <vector>

using namespace wainscot::engine;

namespace {

struct Section {
    const char* name = "";
    bool (*print)(const BenchOptions&) = nullptr;
    bool always = true; // false: only when named
};

constexpr Section kSections[] = {
    {"quality", printQualityTable},
    {"tuning", printTuningTable, false},
    {"sparse", printSparseTable},
    {"templates", printTemplatesTable},
    {"speed", printSpeedTable},
    {"alternatives", printAlternativesTable},
    {"stability", printStabilityTable},
    {"pins", printPinsTable},
    {"display", printDisplayTable},
    {"selection", printSelectionTable},
};

int usage()
{
    std::fprintf(stderr, "bench_engine [SECTION...] [--quick] [--pictures FOLDER]\nsections:");
    for (const Section& section : kSections)
        std::fprintf(stderr, " %s", section.name);
    std::fprintf(stderr, "\n");
    return 2;
}

bool known(const std::string& name)
{
    for (const Section& section : kSections)
        if (name == section.name)
            return true;
    return false;
}

bool wanted(const std::vector<std::string>& names, const Section& section)
{
    for (const std::string& one : names)
        if (one == section.name)
            return true;
    return names.empty() && section.always;
}

} // namespace

int main(int argc, char** argv)
{
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv); // sections that set real type need fonts
    BenchOptions options;
    std::vector<std::string> names;
    for (int k = 1; k < argc; ++k) {
        const std::string word = argv[k];
        if (word == "--quick")
            options.quick = true;
        else if (word == "--pictures" && k + 1 < argc)
            options.pictures = argv[++k];
        else if (known(word))
            names.push_back(word);
        else
            return usage();
    }
    bool met = true;
    for (const Section& section : kSections) {
        if (!wanted(names, section))
            continue;
        std::printf("== %s%s\n", section.name, options.quick ? " (quick form)" : "");
        std::fflush(stdout);
        const bool here = section.print(options);
        std::printf("%s: %s\n\n", section.name, here ? "goals met" : "GOALS MISSED");
        std::fflush(stdout);
        met = met && here;
    }
    return met ? 0 : 1;
}
