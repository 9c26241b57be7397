// The CPU of finding while one types, beside a plain scan of the same texts in the same run.
// bench_find [TEXTS]; ends with 1 when it takes more than a tenth.
#include "core/voice/find_index.h"
#include "tests/support/many_quotes.h"

#include <cstdio>
#include <cstdlib>
#include <ctime>

using namespace wainscot;

namespace {

constexpr double kMostShare = 0.10;

double seconds(std::clock_t since)
{
    return double(std::clock() - since) / CLOCKS_PER_SEC;
}

} // namespace

int main(int argc, char** argv)
{
    const std::size_t count = argc > 1 ? std::strtoul(argv[1], nullptr, 10) : 50'000;
    const std::vector<QString> texts = manyQuotes(2026, count);
    const QStringList typed = typedOnTheWay();

    auto began = std::clock();
    FindIndex index;
    for (const QString& text : texts)
        index.add(text);
    const double making = seconds(began);

    // The scan is given texts that are folded already, which no program without an index has.
    std::vector<QString> folded;
    folded.reserve(texts.size());
    for (const QString& text : texts)
        folded.push_back(foldedForFind(text));
    began = std::clock();
    std::size_t scanned = 0;
    for (const QString& query : typed) {
        const FindQuery wanted(query);
        for (const QString& text : folded)
            scanned += wanted.fitsFolded(text) ? 1 : 0;
    }
    const double scan = seconds(began);

    constexpr int kTimes = 10; // one round is too short to be told by the clock
    began = std::clock();
    std::size_t found = 0;
    for (int time = 0; time < kTimes; ++time) {
        for (const QString& query : typed)
            found += index.find(FindQuery(query)).size();
    }
    const double finding = seconds(began) / kTimes;
    if (found != scanned * kTimes) {
        std::printf("finding and the scan differ: %zu, %zu\n", found / kTimes, scanned);
        return 1;
    }
    const double share = finding / scan;
    std::printf("%zu texts, %lld keystrokes: finding %.4f s, plain scan %.4f s, share %.3f "
                "(limit %.2f); making the index once %.3f s\n",
        count,
        static_cast<long long>(typed.size()),
        finding,
        scan,
        share,
        kMostShare,
        making);
    return share <= kMostShare ? 0 : 1;
}
