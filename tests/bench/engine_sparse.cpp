// Too little and too much: what a page that is too empty would be on smaller paper, and how much
// room is said to be missing where everything is asked onto one page.
#include "app/jobs/advice.h"
#include "layout/engine/advice.h"
#include "tests/bench/engine_tables.h"
#include "tests/support/wall_layouts.h"

#include <algorithm>
#include <cstdio>

namespace wainscot::engine {

namespace {

using namespace wainscot::walls;

constexpr double kMostAlone = 0.35; // of the panel, a picture that is alone (panel style 7)
constexpr double kMostLead = 0.23; // and one among others
constexpr double kRounding = 0.005;

struct Sum {
    int documents = 0;
    int sparse = 0;
    int fitted = 0; // of them: all of it fits on smaller paper
    int inflated = 0; // a picture past its share
    double whiteNow = 0; // of those fitted
    double whiteThen = 0;
};

std::optional<Arrangement> onOnePage(const Sheet& sheet)
{
    Request request = sheet.request();
    request.pages = 1;
    Outcome outcome = arrange(request, sheet.text());
    auto* found = std::get_if<Arrangement>(&outcome);
    return found != nullptr ? std::optional(std::move(*found)) : std::nullopt;
}

bool inflates(const Arrangement& page, SizeMm panel)
{
    double largest = 0;
    int pictures = 0;
    for (const Placement& one : page.items) {
        largest = std::max(largest, one.picture.areaMm2());
        pictures += one.picture.isEmpty() ? 0 : 1;
    }
    const double share = largest / (panel.width.value() * panel.height.value());
    return share > (pictures == 1 ? kMostAlone : kMostLead) + kRounding;
}

void measureSparse(const walls::Document& document, Sum& sum)
{
    const Sheet sheet(document);
    const auto page = onOnePage(sheet);
    if (!page)
        return;
    ++sum.documents;
    sum.inflated += inflates(*page, document.display.panelSize) ? 1 : 0;
    const PageUse now = pageUse(*page, sheet.request().page);
    std::printf("%-34s white %.2f", qPrintable(document.name), now.white);
    if (isSparse(now)) {
        ++sum.sparse;
        std::optional<PageUse> then;
        for (const SizeMm size : smallerPanels(document.display.panelSize)) {
            walls::Document smaller = document;
            smaller.display.panelSize = size;
            const Sheet other(smaller);
            if (const auto fits = onOnePage(other)) {
                then = pageUse(*fits, other.request().page);
                std::printf("  on %.0f x %.0f mm %.2f",
                    size.width.value(),
                    size.height.value(),
                    then->white);
            }
        }
        if (then) {
            ++sum.fitted;
            sum.whiteNow += now.white;
            sum.whiteThen += then->white;
        }
    }
    std::printf("\n");
}

// Everything asked onto one page; false when what is said cannot be true.
bool measureFull(const walls::Document& document)
{
    const Sheet sheet(document);
    Request request = sheet.request();
    request.pages = 1;
    const Outcome one = arrange(request, sheet.text());
    const Outcome all = arrange(sheet.request(), sheet.text());
    const auto* failed = std::get_if<Failure>(&one);
    const auto* display = std::get_if<Arrangement>(&all);
    if (failed == nullptr || display == nullptr)
        return failed == nullptr;
    const double missing = failed->missingMm2;
    const double page =
        document.display.panelSize.width.value() * document.display.panelSize.height.value();
    std::printf("%-34s %d pages; on one %.1f A4 sheets are missing, %.1f pages; %zu pieces named\n",
        qPrintable(document.name),
        display->pages,
        a4Sheets(missing),
        missing / page,
        failed->items.size());
    return failed->what == Obstacle::TooMuchForPages && missing > 0
        && missing < display->pages * page && !failed->items.empty();
}

} // namespace

bool printSparseTable(const BenchOptions& options)
{
    const int documents = options.quick ? 10 : kDocuments;
    Sum sum;
    int full = 0;
    int said = 0;
    for (int number = 0; number < documents; ++number) {
        const walls::Document document = makeDocument(Set::Unseen, number);
        if (document.size == Size::Sparse)
            measureSparse(document, sum);
        if (document.size == Size::Heavy) {
            ++full;
            said += measureFull(document) ? 1 : 0;
        }
        std::fflush(stdout);
    }
    const double fitted = std::max(1, sum.fitted);
    std::printf("%d sparse documents: %d too empty, for %d of them smaller paper holds everything, "
                "white %.2f then %.2f on average;\n%d with a picture past its share (goal 0)\n"
                "%d heavy documents: room missing on one page said truly for %d\n",
        sum.documents,
        sum.sparse,
        sum.fitted,
        sum.whiteNow / fitted,
        sum.whiteThen / fitted,
        sum.inflated,
        full,
        said);
    return sum.documents > 0 && sum.inflated == 0 && said == full
        && (sum.fitted == 0 || sum.whiteThen < sum.whiteNow);
}

} // namespace wainscot::engine
