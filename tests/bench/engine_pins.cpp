// Pieces held where a hand put them: do they stay, and what does the rest cost around them?
#include "tests/bench/engine_tables.h"
#include "tests/support/engine_documents.h"
#include "tests/support/wall_layouts.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <ctime>

namespace wainscot::engine {

namespace {

using namespace wainscot::walls;

constexpr double kMostMoved = 0.005; // mm: half of the hundredth that pins stay to
constexpr double kTouch = 1e-6; // mm
constexpr int kMostPins = 4;

enum class Way { Nudged, Anywhere, Ring };
constexpr std::array<Way, 3> kWays = {Way::Nudged, Way::Anywhere, Way::Ring};

const char* nameOf(Way way)
{
    switch (way) {
    case Way::Nudged:
        return "nudged";
    case Way::Anywhere:
        return "anywhere";
    case Way::Ring:
        return "ring of four";
    }
    return "";
}

struct PinnedPiece {
    ItemId id = 0;
    RectMm place;
};

struct Row {
    int sets = 0;
    int pins = 0;
    int straight = 0;
    int fallback = 0;
    int noRoom = 0; // said with how much is missing
    int otherwise = 0; // failed for some other reason, or not saying how much
    int overlaps = 0;
    double moved = 0; // mm, the most of any pin
    std::vector<double> ratios; // of costs
    double cpu = 0;
    double mostCpu = 0;
};

struct Timed {
    Outcome outcome;
    double ms = 0;
};

Timed timedArrange(const Request& request, const TextMeasurer& text)
{
    const std::clock_t start = std::clock();
    Outcome outcome = arrange(request, text);
    const double ms = 1000.0 * double(std::clock() - start) / CLOCKS_PER_SEC;
    return {std::move(outcome), std::max(0.01, ms)};
}

Mm between(Mm low, Mm high, Dice& dice)
{
    return low + dice.share() * (std::max(low, high) - low);
}

// Where the piece would be dropped; it may lie over another.
RectMm dropped(const RectMm& now, Way way, const PageSpec& page, Dice& dice)
{
    const Mm right = page.size.width - page.margin - now.width;
    const Mm foot = page.margin + page.height(page.rows) - now.height;
    RectMm place = now;
    if (way == Way::Anywhere) {
        place.x = between(page.margin, right, dice);
        place.y = between(page.margin, foot, dice);
        return place;
    }
    const Mm step = page.width(1) + page.gutter;
    place.x = std::clamp(now.x + between(-step, step, dice), page.margin, right);
    place.y = std::clamp(now.y + between(-step, step, dice), page.margin, foot);
    return place;
}

// Four places round a hole, which no straight cut parts.
std::vector<RectMm> ringPlaces(const PageSpec& page, Dice& dice)
{
    const int h = page.rows / 5;
    const int y = page.rows / 4 + dice.between(0, 2);
    std::vector<RectMm> places;
    for (const GridRect& at : {GridRect{0, 2, y, 5, h},
             GridRect{0, 7, y, 3, 2 * h - 1},
             GridRect{0, 5, y + 2 * h - 1, 5, h},
             GridRect{0, 2, y + h, 3, 2 * h - 1}})
        places.push_back(page.cell(at));
    return places;
}

// A set of pins on the free page: at most four pieces, none over another. Empty = too few pieces.
std::vector<PinnedPiece> pinSet(const Arrangement& free, Way way, const PageSpec& page, Dice& dice)
{
    std::vector<PinnedPiece> pins;
    std::vector<Placement> pieces = free.items;
    const std::vector<RectMm> ring =
        way == Way::Ring ? ringPlaces(page, dice) : std::vector<RectMm>();
    const int most = std::min(kMostPins, int(pieces.size()) / 2); // the rest has to go around them
    if (way == Way::Ring && most < kMostPins)
        return pins;
    const int wanted = way == Way::Ring ? kMostPins : dice.between(1, most);
    for (int tries = 0; tries < 40 && int(pins.size()) < wanted && !pieces.empty(); ++tries) {
        const auto at = pieces.begin() + dice.between(0, int(pieces.size()) - 1);
        const RectMm place =
            way == Way::Ring ? ring[pins.size()] : dropped(at->cell, way, page, dice);
        const bool clear = std::none_of(pins.begin(), pins.end(), [&](const PinnedPiece& pin) {
            return way != Way::Ring
                && !intersection(pin.place.grown(0.5 * page.gutter), place).isEmpty();
        });
        if (!clear)
            continue;
        pins.push_back({at->id, place});
        pieces.erase(at);
    }
    return pins;
}

Request withPins(Request request, const std::vector<PinnedPiece>& pins)
{
    for (const PinnedPiece& pin : pins)
        for (Item& item : request.items)
            if (item.id == pin.id)
                item.pinnedAt = pin.place;
    return request;
}

const Placement* placeOf(const Arrangement& arrangement, ItemId id)
{
    for (const Placement& one : arrangement.items)
        if (one.id == id)
            return &one;
    return nullptr;
}

// The same pieces held where the free optimum has them: the prices of pins are in neither sum.
std::vector<PinnedPiece> whereTheyWere(std::vector<PinnedPiece> pins, const Arrangement& free)
{
    for (PinnedPiece& pin : pins)
        pin.place = placeOf(free, pin.id)->cell;
    return pins;
}

double moved(const Arrangement& arrangement, const std::vector<PinnedPiece>& pins)
{
    double most = 0;
    for (const PinnedPiece& pin : pins) {
        const Placement* place = placeOf(arrangement, pin.id);
        if (place == nullptr)
            return 1e9;
        for (const Mm by : {place->cell.x - pin.place.x,
                 place->cell.y - pin.place.y,
                 place->cell.width - pin.place.width,
                 place->cell.height - pin.place.height})
            most = std::max(most, std::abs(by.value()));
    }
    return most;
}

int overlapsIn(const Arrangement& arrangement)
{
    int count = 0;
    const auto& items = arrangement.items;
    for (std::size_t a = 0; a < items.size(); ++a)
        for (std::size_t b = 0; b < a; ++b) {
            const RectMm both = intersection(items[a].cell, items[b].cell);
            const bool apart = both.width <= Mm(kTouch) || both.height <= Mm(kTouch);
            count += items[a].at.page == items[b].at.page && !apart ? 1 : 0;
        }
    return count;
}

// One page of the document: all of it, or what the engine puts on its first page.
Request onePage(const Sheet& sheet)
{
    Request request = sheet.request();
    request.plan.clear();
    const Outcome outcome = arrange(request, sheet.text());
    const auto* found = std::get_if<Arrangement>(&outcome);
    if (found != nullptr && found->pages > 1)
        std::erase_if(request.items, [&](const Item& item) {
            const Placement* place = placeOf(*found, item.id);
            return place == nullptr || place->at.page > 0;
        });
    request.pages = 1;
    return request;
}

void measure(const Sheet& sheet,
    const Request& request,
    const Arrangement& free,
    const std::vector<PinnedPiece>& pins,
    Row& row)
{
    ++row.sets;
    row.pins += int(pins.size());
    const Timed held = timedArrange(withPins(request, pins), sheet.text());
    if (const auto* failed = std::get_if<Failure>(&held.outcome)) {
        const bool said = failed->what != Obstacle::PinsOverlap && failed->missingMm2 > 0;
        ++(said ? row.noRoom : row.otherwise);
        return;
    }
    const auto& around = std::get<Arrangement>(held.outcome);
    ++(around.fallback ? row.fallback : row.straight);
    row.moved = std::max(row.moved, moved(around, pins));
    row.overlaps += overlapsIn(around);
    const Timed best = timedArrange(withPins(request, whereTheyWere(pins, free)), sheet.text());
    const Timed anew = timedArrange(request, sheet.text());
    row.cpu += held.ms / anew.ms;
    row.mostCpu = std::max(row.mostCpu, held.ms / anew.ms);
    const auto* reference = std::get_if<Arrangement>(&best.outcome);
    if (reference == nullptr || reference->cost.total() <= 0)
        return;
    row.ratios.push_back(double(around.cost.total()) / double(reference->cost.total()));
}

bool print(Way way, Row& row)
{
    std::sort(row.ratios.begin(), row.ratios.end());
    const bool compared = !row.ratios.empty();
    const double arranged = std::max(1, row.straight + row.fallback);
    const bool met = row.straight + row.fallback > 0 && row.moved < kMostMoved && row.overlaps == 0
        && row.otherwise == 0;
    std::printf("%-12s %5d %5d %9d %9d %8d %9.4f %9d %7.2f %6.2f %7.2f %6.2f%s\n",
        nameOf(way),
        row.sets,
        row.pins,
        row.straight,
        row.fallback,
        row.noRoom,
        row.moved,
        row.overlaps,
        compared ? row.ratios[row.ratios.size() / 2] : 0,
        compared ? row.ratios.back() : 0,
        row.cpu / arranged,
        row.mostCpu,
        met ? "" : "   missed");
    return met;
}

} // namespace

bool printPinsTable(const BenchOptions& options)
{
    const int documents = options.quick ? 8 : kDocuments;
    const int sets = options.quick ? 1 : 3;
    std::printf(
        "Sets of one to %d pins on one page of %d unseen documents, off the grid; goals: no "
        "pin moves (mm),\nnothing overlaps, and where there is no room it is said how much "
        "is missing. Cost (median, most) of the rest against the\nsame pieces held where the free "
        "optimum "
        "has them; CPU in free solves.\n%-12s %5s %5s %9s %9s %8s %9s %9s %7s %6s %7s %6s\n",
        kMostPins,
        documents,
        "pins",
        "sets",
        "pins",
        "straight",
        "fallback",
        "no room",
        "moved",
        "overlaps",
        "cost",
        "most",
        "CPU",
        "most");
    std::array<Row, kWays.size()> rows;
    for (int number = 0; number < documents; ++number) {
        const walls::Document document = walls::makeDocument(Set::Unseen, number);
        const Sheet sheet(document);
        const Request request = onePage(sheet);
        const Outcome outcome = arrange(request, sheet.text());
        const auto* free = std::get_if<Arrangement>(&outcome);
        if (free == nullptr)
            continue;
        Dice dice(std::uint64_t(number) + 7007);
        for (std::size_t way = 0; way < kWays.size(); ++way)
            for (int set = 0; set < sets; ++set) {
                const auto pins = pinSet(*free, kWays[way], request.page, dice);
                if (!pins.empty())
                    measure(sheet, request, *free, pins, rows[way]);
            }
    }
    bool met = true;
    for (std::size_t way = 0; way < kWays.size(); ++way)
        met = print(kWays[way], rows[way]) && met;
    return met;
}

} // namespace wainscot::engine
