// One edit on a page: how far the untouched pieces move, and what standing still costs.
#include "layout/engine/again.h"
#include "layout/engine/alternatives.h"
#include "tests/bench/engine_tables.h"
#include "tests/support/engine_documents.h"
#include "tests/support/engine_edits.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace wainscot::engine {

namespace {

constexpr double kMostMovement = 0.10;

struct Sum {
    int edits = 0;
    int gaveWay[4] = {};
    double movement = 0;
    double squares = 0; // of movements
    double anew = 0; // movement when arranged anew
    double price = 0;
    double dearest = 0;
};

void measure(EditKind kind, int seed, Sum& sum)
{
    auto edited = editedDocument(kind, seed);
    if (!edited)
        return;
    const Request& request = edited->document->request;
    AgainWish wish;
    wish.edited = edited->touched;
    const auto answer = arrangeAgain(request, edited->before.items, edited->document->text, wish);
    const Outcome anew = arrange(request, edited->document->text);
    const auto* again = std::get_if<Again>(&answer);
    if (again == nullptr || !std::holds_alternative<Arrangement>(anew))
        return;
    ++sum.edits;
    ++sum.gaveWay[int(again->gaveWay)];
    sum.movement += again->movement;
    sum.squares += again->movement * again->movement;
    sum.anew += difference(untouched(*edited), std::get<Arrangement>(anew).items, request).pieces;
    sum.price += again->priceRatio;
    sum.dearest = std::max(sum.dearest, again->priceRatio);
}

} // namespace

bool printStabilityTable(const BenchOptions& options)
{
    const int documents = options.quick ? 5 : 30;
    std::printf(
        "One edit on each of %d pages; goal: after an edit untouched pieces move <= %.2f on "
        "average (1 - overlap)\n%-16s %6s %9s %7s %9s %12s %8s   gave way: nothing, neighbours, "
        "page, anew\n",
        documents,
        kMostMovement,
        "edit",
        "edits",
        "movement",
        "spread",
        "anew",
        "price ratio",
        "most");
    double movements = 0;
    int edits = 0;
    for (const EditKind kind : {EditKind::LongerCaption,
             EditKind::LongerQuote,
             EditKind::QuoteAdded,
             EditKind::PhotoRemoved}) {
        Sum sum;
        for (int seed = 1; seed <= 2 * documents && sum.edits < documents; ++seed)
            measure(kind, seed, sum);
        const double count = std::max(1, sum.edits);
        const double movement = sum.movement / count;
        const double spread = std::sqrt(std::max(0.0, sum.squares / count - movement * movement));
        std::printf("%-16s %6d %9.3f %7.3f %9.3f %12.3f %8.2f   %d, %d, %d, %d%s\n",
            nameOf(kind),
            sum.edits,
            movement,
            spread,
            sum.anew / count,
            sum.price / count,
            sum.dearest,
            sum.gaveWay[0],
            sum.gaveWay[1],
            sum.gaveWay[2],
            sum.gaveWay[3],
            movement <= kMostMovement ? "" : "   above it");
        movements += sum.movement;
        edits += sum.edits;
    }
    const double mean = movements / std::max(1, edits);
    std::printf("all edits        %5d %9.3f\n", edits, mean);
    return edits > 0 && mean <= kMostMovement;
}

} // namespace wainscot::engine
