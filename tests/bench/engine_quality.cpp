// Pages of unseen documents against the panel style's tests, beside justified rows and masonry.
#include "tests/bench/engine_tables.h"
#include "tests/bench/quality_sheet.h"
#include "tests/support/wall_quality.h"

#include <cstdio>

namespace wainscot::engine {

namespace {

using namespace wainscot::walls;

// Everything measured of one method.
struct Tally {
    explicit Tally(const char* method)
        : name(method)
    {
    }

    void add(const Quality& quality)
    {
        if (quality.pages.empty()) {
            ++failed;
            return;
        }
        ++documents;
        tests += quality.testsPassed();
        groups += quality.groups;
        broken += quality.brokenGroups;
        for (const PageQuality& page : quality.pages)
            add(page);
    }

    void add(const PageQuality& page)
    {
        ++pages;
        for (const auto& [test, passed] : page.passed)
            passes[test] += passed ? 1 : 0;
        for (const double loss : page.cropLosses) {
            crop += loss;
            ++photos;
        }
        pastLimit += page.pastCropLimit;
        soft += page.belowPpi;
        pastCell += page.textPastCell;
        inversions += page.inversions;
        captions += page.longCaptions;
        edges += page.leftEdges;
        holes += page.holes;
        imbalance += page.imbalance;
        unbalanced += page.imbalance > 0.10 ? 1 : 0;
        white += page.white;
        coverage += page.coverage;
        if (page.dominance > 0) {
            dominance += page.dominance;
            leastDominance = std::min(leastDominance, page.dominance);
            ++led;
        }
    }

    const char* name;
    int documents = 0, failed = 0, pages = 0, photos = 0, led = 0;
    int tests = 0, groups = 0, broken = 0;
    int pastLimit = 0, soft = 0, pastCell = 0, inversions = 0, captions = 0, holes = 0;
    int unbalanced = 0;
    double crop = 0, edges = 0, imbalance = 0, white = 0, coverage = 0, dominance = 0;
    double leastDominance = 1e9;
    std::map<int, int> passes;
};

double share(double part, double whole)
{
    return whole > 0 ? part / whole : 0;
}

bool printTests(const std::vector<const Tally*>& tallies)
{
    bool met = true;
    std::printf("%-34s goal", "share of pages that pass");
    for (const Tally* tally : tallies)
        std::printf("%10s", tally->name);
    std::printf("\n");
    for (const StyleTest& test : styleTests()) {
        const char* from[] = {"typeset", "places", "both"};
        std::printf(
            "%3d %-20s (%-7s) %5.2f", test.number, test.says, from[int(test.from)], test.goal);
        for (const Tally* tally : tallies)
            std::printf("%10.3f", share(tally->passes.at(test.number), tally->pages));
        const bool here =
            share(tallies[0]->passes.at(test.number), tallies[0]->pages) >= test.goal - 1e-9;
        std::printf("%s\n", here ? "" : "   missed");
        met = met && here;
    }
    return met;
}

using Number = double (*)(const Tally&);
struct Row {
    const char* says;
    double goal;
    bool atLeast;
    Number number;
};

constexpr Row kRows[] = {
    {"mean crop loss", 0.05, false, [](const Tally& t) { return share(t.crop, t.photos); }},
    {"pictures past their crop limit",
        0,
        false,
        [](const Tally& t) { return double(t.pastLimit); }},
    {"pictures below their resolution", 0, false, [](const Tally& t) { return double(t.soft); }},
    {"pages with text past its place", 0, false, [](const Tally& t) { return double(t.pastCell); }},
    {"reading-order inversions", 0, false, [](const Tally& t) { return double(t.inversions); }},
    {"groups broken, of all", 0, false, [](const Tally& t) { return share(t.broken, t.groups); }},
    {"dominant by next, least", 2, true, [](const Tally& t) { return t.leastDominance; }},
    {"dominant by next, mean", 2, true, [](const Tally& t) { return share(t.dominance, t.led); }},
    {"left edges a page, mean", 6, false, [](const Tally& t) { return share(t.edges, t.pages); }},
    {"unplanned holes a page", 0, false, [](const Tally& t) { return share(t.holes, t.pages); }},
    {"quadrant imbalance, mean",
        0.10,
        false,
        [](const Tally& t) { return share(t.imbalance, t.pages); }},
    {"captions over two lines, of all",
        0,
        false,
        [](const Tally& t) { return share(t.captions, t.photos); }},
};

bool printNumbers(const std::vector<const Tally*>& tallies)
{
    bool met = true;
    for (const Row& row : kRows) {
        std::printf("%-34s %s%5.2f", row.says, row.atLeast ? ">=" : "<=", row.goal);
        for (const Tally* tally : tallies)
            std::printf("%10.3f", row.number(*tally));
        const double own = row.number(*tallies[0]);
        const bool here = row.atLeast ? own >= row.goal - 1e-9 : own <= row.goal + 1e-9;
        std::printf("%s\n", here ? "" : "   missed");
        met = met && here;
    }
    const auto line = [&](const char* says, Number number) {
        std::printf("%-41s", says);
        for (const Tally* tally : tallies)
            std::printf("%10.3f", number(*tally));
        std::printf("\n");
    };
    line("paper untouched, mean", [](const Tally& t) { return share(t.white, t.pages); });
    line("ink, mean", [](const Tally& t) { return share(t.coverage, t.pages); });
    line("tests passed a document, mean",
        [](const Tally& t) { return share(t.tests, t.documents); });
    line("pages", [](const Tally& t) { return double(t.pages); });
    line("documents without a page", [](const Tally& t) { return double(t.failed); });
    return met;
}

void printDocument(const Document& document, const std::array<Judged, 3>& judged)
{
    std::printf("%-40s", qPrintable(document.name));
    for (const Judged& one : judged)
        std::printf("  %-8s %2zu p %2d tests",
            qPrintable(one.layout.method),
            one.layout.pages.size(),
            one.quality.testsPassed());
    std::printf("  missed:");
    for (const StyleTest& test : styleTests())
        if (!judged[0].quality.passed(test.number))
            std::printf(" %d", test.number);
    std::printf("\n");
    for (std::size_t page = 0; page < judged[0].quality.pages.size(); ++page) {
        const PageQuality& one = judged[0].quality.pages[page];
        std::printf(
            "    page %zu: ink %.3f tint %.3f white %.2f%s dominant %.2f (%.2f of the page) "
            "imbalance %.2f edges %d "
            "holes %d long captions %d misses",
            page + 1,
            one.coverage,
            one.tint,
            one.white,
            one.marginsClear ? "" : " margin crossed",
            one.dominance,
            one.lead,
            one.imbalance,
            one.leftEdges,
            one.holes,
            one.longCaptions);
        for (const StyleTest& test : styleTests())
            if (!one.passed.at(test.number))
                std::printf(" %d", test.number);
        std::printf("\n");
    }
    std::fflush(stdout);
}

bool printSet(Set set, int documents, const std::string& pictures)
{
    Tally own("Wainscot");
    Tally rows("rows");
    Tally columns("masonry");
    int better = 0;
    for (int number = 0; number < documents; ++number) {
        const Document document = makeDocument(set, number);
        const Sheet sheet(document);
        Judged mine{engineLayout(sheet), {}};
        mine.quality = qualityOf(sheet, mine.layout);
        const std::array<Judged, 3> judged{std::move(mine), bestRows(sheet), bestMasonry(sheet)};
        own.add(judged[0].quality);
        rows.add(judged[1].quality);
        columns.add(judged[2].quality);
        const int tests = judged[0].quality.testsPassed();
        better += tests > judged[1].quality.testsPassed() && tests > judged[2].quality.testsPassed()
            ? 1
            : 0;
        printDocument(document, judged);
        if (!pictures.empty())
            drawContactSheet(QString::fromStdString(pictures), sheet, judged);
    }
    bool met = printTests({&own, &rows, &columns});
    met = printNumbers({&own, &rows, &columns}) && met;
    std::printf("better than both in tests passed on %d of %d documents\n", better, documents);
    return met && better == documents;
}

} // namespace

bool printQualityTable(const BenchOptions& options)
{
    return printSet(Set::Unseen, options.quick ? 6 : kDocuments, options.pictures);
}

bool printTuningTable(const BenchOptions& options)
{
    return printSet(Set::Tuning, options.quick ? 6 : kDocuments, options.pictures);
}

} // namespace wainscot::engine
