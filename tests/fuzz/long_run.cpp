// One target for a long run: FUZZ_FUNCTION as a program of its own, with the seeds of FUZZ_TARGET.
//   fuzz_csv [RUNS [SEED [ONE]]]      with this project's own mutator, of all seeds or of the one
//                                     with this number, from 0
// What it was given when it fell is left behind as crash-csv.
// Built by clang with -DWAINSCOT_FUZZ=ON it is a libFuzzer program instead, guided by coverage.
#include "tests/fuzz/mutator.h"
#include "tests/fuzz/targets.h"

#include <csignal>
#include <cstdio>
#include <cstdlib>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t count)
{
    wainscot::fuzz::FUZZ_FUNCTION(bytes, count);
    return 0;
}

#ifndef WAINSCOT_LIBFUZZER
namespace {

QByteArray given; // now

void leaveBehind(int signal)
{
    if (std::FILE* file = std::fopen("crash-" FUZZ_TARGET, "wb")) {
        std::fwrite(given.constData(), 1, std::size_t(given.size()), file);
        std::fclose(file);
    }
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

} // namespace

int main(int argc, char** argv)
{
    const long runs = argc > 1 ? std::atol(argv[1]) : 1'000'000;
    const unsigned seed = argc > 2 ? unsigned(std::atol(argv[2])) : 1;
    std::vector<QByteArray> seeds = wainscot::fuzz::allSeedsOf(FUZZ_TARGET);
    if (argc > 3)
        seeds = {seeds.at(std::size_t(std::atol(argv[3])))};
    for (const int signal : {SIGABRT, SIGSEGV, SIGFPE})
        std::signal(signal, leaveBehind);
    wainscot::fuzz::Mutator mutator(seeds, seed);
    for (long run = 0; run < runs; ++run) {
        given = mutator.next();
        LLVMFuzzerTestOneInput(
            reinterpret_cast<const std::uint8_t*>(given.constData()), std::size_t(given.size()));
    }
    std::printf("%s: %ld executions, no crash\n", FUZZ_TARGET, runs);
    return 0;
}
#endif
