// What a teacher's hand asks must hold on any document: pins stay, wishes for sizes show.
#include "layout/engine/divide.h"
#include "tests/support/engine_documents.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <set>

namespace wainscot::engine {
namespace {

constexpr double kTouch = 1e-6; // mm
constexpr Mm kHundredth(0.005); // half of it, either way

// WAINSCOT_PIN_SETS: more of them than the suite has time for.
int pinSets()
{
    const char* asked = std::getenv("WAINSCOT_PIN_SETS");
    return asked != nullptr ? std::atoi(asked) : 120;
}

struct PinnedDocument {
    std::unique_ptr<Document> document;
    int pins = 0;
    bool ring = false;
};

// One to six pieces where nobody planned them, some off the grid, some in a ring.
PinnedDocument pinnedDocument(int seed)
{
    PinnedDocument out;
    Dice dice(std::uint64_t(seed) + 4242);
    const int pieces = 9 + seed % 8;
    out.document = makeDocument(seed, pieces, Format(seed % 4));
    Request& request = out.document->request;
    request.plan.clear();
    request.pages = 1;
    const PageSpec& page = request.page;
    std::vector<GridRect> places;
    if (seed % 5 == 4) { // a ring, turned one way
        const int h = page.rows / 5;
        const int y = page.rows / 4 + dice.between(0, 2);
        places = {{0, 2, y, 5, h},
            {0, 7, y, 3, 2 * h - 1},
            {0, 5, y + 2 * h - 1, 5, h},
            {0, 2, y + h, 3, 2 * h - 1}};
        out.ring = true;
    } else {
        const int wanted = dice.between(1, 6);
        for (int tries = 0; tries < 60 && int(places.size()) < wanted; ++tries) {
            GridRect one{0, 0, 0, dice.between(2, 5), dice.between(3, page.rows / 4)};
            one.x = dice.between(0, page.columns - one.w);
            one.y = dice.between(0, page.rows - one.h);
            bool free = true;
            for (const GridRect& other : places)
                free = free && !overlap(one, other);
            if (free)
                places.push_back(one);
        }
    }
    std::set<std::size_t> taken;
    for (const GridRect& place : places) {
        auto at = std::size_t(dice.between(1, int(request.items.size()) - 1));
        while (!taken.insert(at).second)
            at = at + 1 < request.items.size() ? at + 1 : 1;
        Item& item = request.items[at];
        if (dice.between(0, 2) == 0) {
            const Mm play(0.25 * page.gutter.value() * dice.share());
            item.pinnedAt = page.cell(place).movedBy(play, play);
        } else {
            item.pinned = place;
        }
    }
    out.pins = int(places.size());
    return out;
}

void expectWhole(const PinnedDocument& one, const Arrangement& arrangement)
{
    const Request& request = one.document->request;
    const PageSpec& page = request.page;
    ASSERT_EQ(arrangement.items.size(), request.items.size());
    EXPECT_EQ(arrangement.pages, 1);
    for (std::size_t a = 0; a < arrangement.items.size(); ++a) {
        const Placement& place = arrangement.items[a];
        const Item& item = request.items[a];
        ASSERT_EQ(place.id, item.id);
        if (item.pinned) {
            EXPECT_EQ(place.at, *item.pinned);
        }
        if (item.pinnedAt) {
            EXPECT_LT(std::abs((place.cell.x - item.pinnedAt->x).value()), kHundredth.value());
            EXPECT_LT(std::abs((place.cell.y - item.pinnedAt->y).value()), kHundredth.value());
            EXPECT_LT(
                std::abs((place.cell.width - item.pinnedAt->width).value()), kHundredth.value());
            EXPECT_LT(
                std::abs((place.cell.height - item.pinnedAt->height).value()), kHundredth.value());
        }
        if (!item.isPinned()) {
            EXPECT_GE(place.cell.x, page.margin - Mm(kTouch));
            EXPECT_GE(place.cell.y, page.margin - Mm(kTouch));
            EXPECT_LE(place.cell.right(), page.margin + page.width(page.columns) + Mm(kTouch));
            EXPECT_LE(place.cell.bottom(), page.margin + page.height(page.rows) + Mm(kTouch));
        }
        for (std::size_t b = 0; b < a; ++b) {
            const Placement& other = arrangement.items[b];
            if (item.isPinned() && request.items[b].isPinned())
                continue; // where a hand put both
            const RectMm both = intersection(place.cell, other.cell);
            EXPECT_FALSE(both.width > Mm(kTouch) && both.height > Mm(kTouch))
                << place.id << " and " << other.id << " overlap";
        }
    }
}

TEST(EngineHand, AnySetOfPinsStaysAndTheRestGoesAroundIt)
{
    int arranged = 0;
    int fallbacks = 0;
    int rings = 0;
    const int sets = pinSets();
    for (int seed = 0; seed < sets; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        const PinnedDocument one = pinnedDocument(seed);
        const Outcome outcome = arrange(one.document->request, one.document->text);
        if (const auto* failed = std::get_if<Failure>(&outcome)) {
            EXPECT_NE(failed->what, Obstacle::PinsOverlap);
            EXPECT_GT(failed->missingMm2, 0) << "a failure says how much room is missing";
            EXPECT_FALSE(failed->items.empty());
            continue;
        }
        const auto& arrangement = std::get<Arrangement>(outcome);
        ++arranged;
        fallbacks += arrangement.fallback ? 1 : 0;
        rings += one.ring ? 1 : 0;
        EXPECT_TRUE(!one.ring || arrangement.fallback) << "a ring cannot be cut straight";
        expectWhole(one, arrangement);
        if (HasFailure())
            break;
    }
    std::printf("%d of %d pin sets arranged, %d by the fallback, %d of these rings\n",
        arranged,
        sets,
        fallbacks,
        rings);
    EXPECT_GT(arranged, sets / 2);
    EXPECT_GT(rings, 0);
}

double areaOf(const Arrangement& arrangement, ItemId id)
{
    for (const Placement& one : arrangement.items)
        if (one.id == id)
            return one.picture.width.value() * one.picture.height.value();
    return 0;
}

bool isUnmet(const Arrangement& arrangement, ItemId id)
{
    for (const UnmetWish& one : arrangement.unmetWishes)
        if (one.id == id)
            return true;
    return false;
}

TEST(EngineHand, BiggerGrowsAndSmallerShrinksOrSaysWhyNot)
{
    int asked = 0;
    int met = 0;
    for (int seed = 0; seed < 24; ++seed) {
        const auto document = makeDocument(seed, 9 + seed % 7, Format(seed % 3));
        Request request = document->request;
        request.plan.clear();
        request.pages = 1;
        const Outcome plain = arrange(request, document->text);
        const auto* before = std::get_if<Arrangement>(&plain);
        if (before == nullptr)
            continue;
        for (Item& item : request.items) {
            if (!item.picture)
                continue;
            for (const double scale : {1.6, 0.625}) {
                item.wish.scale = scale;
                const Outcome outcome = arrange(request, document->text);
                const auto* after = std::get_if<Arrangement>(&outcome);
                ASSERT_NE(after, nullptr) << "a wish takes no page away, seed " << seed;
                const double change = areaOf(*after, item.id) / areaOf(*before, item.id);
                ++asked;
                if (isUnmet(*after, item.id))
                    continue;
                ++met;
                const double gained = scale > 1 ? change : 1 / change;
                EXPECT_GT(gained, 1.04) << "seed " << seed << " item " << item.id;
            }
            item.wish.scale = 1;
            break;
        }
    }
    std::printf("%d of %d wishes for sizes met\n", met, asked);
    EXPECT_GE(met, asked * 8 / 10);
}

} // namespace
} // namespace wainscot::engine
