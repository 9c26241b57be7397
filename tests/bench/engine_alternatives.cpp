// Further arrangements: how many, how different, how dear, at what CPU.
#include "layout/engine/alternatives.h"
#include "tests/bench/engine_tables.h"
#include "tests/bench/quality_sheet.h"

#include <algorithm>
#include <array>
#include <cstdio>
#include <ctime>

namespace wainscot::engine {

namespace {

using namespace wainscot::walls;

constexpr AlternativesWish kWish;

double cpuMs()
{
    return 1000.0 * double(std::clock()) / CLOCKS_PER_SEC;
}

// What `work` answers, and its CPU in ms: the least of three, as a page takes about one.
template <typename Answer, typename Work> std::pair<Answer, double> timed(const Work& work)
{
    std::pair<Answer, double> out{Answer(), 1e9};
    for (int k = 0; k < 3; ++k) {
        const double start = cpuMs();
        out.first = work();
        out.second = std::min(out.second, std::max(0.01, cpuMs() - start));
    }
    return out;
}

struct Row {
    std::array<int, 4> counts{}; // documents by how many were found
    double dearest = 0; // times the best's cost
    double nearest = 1;
    double nearestArea = 1;
    double costs = 0;
    double cpu = 0; // of the searches, in solves
    double mostCpu = 0;
    int found = 0;
    int documents = 0;
};

// One page of the document: all of it, or what the engine puts on its first page.
Request onePage(const Sheet& sheet)
{
    Request request = sheet.request();
    const Outcome outcome = arrange(request, sheet.text());
    const auto* found = std::get_if<Arrangement>(&outcome);
    if (found != nullptr && found->pages > 1)
        std::erase_if(request.items, [&](const Item& item) {
            return std::none_of(found->items.begin(), found->items.end(), [&](const auto& place) {
                return place.id == item.id && place.at.page == 0;
            });
        });
    request.pages = 1;
    return request;
}

Judged judge(const Sheet& sheet, const Arrangement& one, const QString& name)
{
    Judged out;
    out.layout = {name, {{}}, true};
    for (const Placement& place : one.items)
        out.layout.pages[0].push_back(
            {PieceId(place.id), sheet.request().page.cell(place.at), place.cell, place.picture});
    out.quality = qualityOf(sheet, out.layout);
    return out;
}

void measure(const Sheet& sheet, const std::string& pictures, Row& row)
{
    const Request request = onePage(sheet);
    const auto [outcome, solve] = timed<Outcome>([&] { return arrange(request, sheet.text()); });
    const auto* best = std::get_if<Arrangement>(&outcome);
    std::printf("%-40s", qPrintable(sheet.document().name));
    if (best == nullptr) {
        std::printf(" does not fit one page\n");
        return;
    }
    const auto [others, search] =
        timed<Alternatives>([&] { return alternatives(request, *best, sheet.text(), kWish); });
    const double cpu = search / solve;
    std::printf(" %2zu pieces, %2zu found", best->items.size(), others.found.size());
    std::vector<Judged> judged = {judge(sheet, *best, QStringLiteral("best"))};
    std::vector<const Arrangement*> shown = {best};
    for (std::size_t k = 0; k < others.found.size(); ++k) {
        const Arrangement& one = others.found[k];
        const double ratio = others.costRatios[k];
        double nearest = 1;
        for (const Arrangement* other : shown) {
            const Difference between = difference(one.items, other->items, request);
            nearest = std::min(nearest, between.pieces);
            row.nearestArea = std::min(row.nearestArea, between.area);
        }
        shown.push_back(&one);
        judged.push_back(judge(sheet, one, QStringLiteral("cost %1").arg(ratio, 0, 'f', 2)));
        std::printf("  %.2f/%.2f/%d", ratio, nearest, judged.back().quality.testsPassed());
        row.dearest = std::max(row.dearest, ratio);
        row.nearest = std::min(row.nearest, nearest);
        row.costs += ratio;
        ++row.found;
    }
    std::printf("  best %d tests; %.2f solves of %.1f ms; looked %d, alike %d, dear %d\n",
        judged.front().quality.testsPassed(),
        cpu,
        solve,
        others.looked,
        others.alike,
        others.dear);
    ++row.documents;
    ++row.counts[others.found.size()];
    row.cpu += cpu;
    row.mostCpu = std::max(row.mostCpu, cpu);
    if (!pictures.empty())
        drawContactSheet(QString::fromStdString(pictures), sheet, judged);
}

} // namespace

bool printAlternativesTable(const BenchOptions& options)
{
    const int documents = options.quick ? 6 : kDocuments;
    std::printf("Up to three further arrangements of one page of %d unseen documents; goals: cost "
                "<= %.1f times the best's,\ndifference >= %.1f to all others, CPU <= %.0f solves. "
                "Each as cost/difference/tests of the style passed.\n",
        documents,
        kWish.dearest,
        kWish.difference,
        kWish.solves);
    Row row;
    for (int number = 0; number < documents; ++number) {
        const walls::Document document = makeDocument(Set::Unseen, number);
        measure(Sheet(document), options.pictures, row);
        std::fflush(stdout);
    }
    const auto& counts = row.counts;
    std::printf("three found for %d, two for %d, one for %d, none for %d of %d documents\n"
                "cost mean %.3f, most %.3f; least difference %.3f (by area %.3f); CPU mean %.2f, "
                "most %.2f solves\n",
        counts[3],
        counts[2],
        counts[1],
        counts[0],
        row.documents,
        row.costs / std::max(1, row.found),
        row.dearest,
        row.nearest,
        row.nearestArea,
        row.cpu / std::max(1, row.documents),
        row.mostCpu);
    return row.found > 0 && row.dearest <= kWish.dearest && row.nearest >= kWish.difference
        && row.nearestArea >= kWish.areaDifference && row.mostCpu <= kWish.solves;
}

} // namespace wainscot::engine
