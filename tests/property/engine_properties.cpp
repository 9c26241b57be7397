// What must hold for every arrangement, on seeded documents of all sizes.
#include "tests/support/engine_documents.h"

#include <gtest/gtest.h>

#include <map>
#include <set>
#include <thread>

namespace wainscot::engine {
namespace {

#ifdef __SANITIZE_ADDRESS__
constexpr int kDocuments = 200; // what the sanitizers look for shows in few
#else
constexpr int kDocuments = 2000;
#endif
constexpr double kTouch = 1e-6; // mm

// Pieces where a hand has put them: one or two, each anywhere on the first page.
void pinSome(Document& document, int seed)
{
    Dice dice(std::uint64_t(seed) + 31);
    Request& request = document.request;
    request.plan.clear();
    const PageSpec& page = request.page;
    for (int k = 0; k < 1 + seed / 10 % 2; ++k) {
        Item& item = request.items[std::size_t(dice.between(1, int(request.items.size()) - 1))];
        GridRect at{0, 0, 0, dice.between(3, 5), dice.between(page.rows / 6, page.rows / 3)};
        at.x = k == 0 ? dice.between(0, page.columns / 2 - at.w) : page.columns - at.w;
        at.y = dice.between(0, page.rows - at.h);
        item.group = 0;
        item.pinned = at;
    }
}

bool isHeavy(int seed)
{
    return seed % 100 == 57;
}

bool hasPins(int seed)
{
    return seed % 10 == 4;
}

std::unique_ptr<Document> document(int seed)
{
    const auto format = Format(seed % 5);
    if (isHeavy(seed))
        return makeDocument(seed, 60 + seed / 100 % 31, Format(seed / 100 % 5));
    if (hasPins(seed)) {
        auto made = makeDocument(seed, 8 + seed / 10 % 9, format);
        pinSome(*made, seed);
        return made;
    }
    switch (seed % 4) {
    case 0:
        return makeDays(seed, 1 + seed / 4 % 5, format, seed % 8 < 4, seed % 12 < 8);
    case 1:
        return makeDocument(seed, 7 + seed / 4 % 4, format);
    case 2:
        return makeDocument(seed, 12 + seed / 4 % 14, format);
    default:
        return seed % 16 == 3 ? makeDrawing(seed, format, seed % 32 == 3)
                              : makeDocument(seed, 26 + seed / 4 % 16, format);
    }
}

const Item& itemOf(const Document& document, ItemId id)
{
    for (const Item& item : document.request.items)
        if (item.id == id)
            return item;
    static const Item none;
    ADD_FAILURE() << "an item nobody asked for: " << id;
    return none;
}

bool overlap(const RectMm& a, const RectMm& b)
{
    const RectMm both = intersection(a, b);
    return both.width > Mm(kTouch) && both.height > Mm(kTouch);
}

void expectNoOverlap(const Document& document, const Arrangement& arrangement)
{
    const auto& items = arrangement.items;
    for (std::size_t a = 0; a < items.size(); ++a)
        for (std::size_t b = a + 1; b < items.size(); ++b) {
            if (items[a].at.page != items[b].at.page)
                continue;
            const PageSpec& page = document.request.page;
            EXPECT_FALSE(overlap(page.cell(items[a].at), page.cell(items[b].at)));
            EXPECT_FALSE(overlap(items[a].cell, items[b].cell));
        }
}

void expectInside(const Document& document, const Arrangement& arrangement)
{
    const PageSpec& page = document.request.page;
    const RectMm room{page.margin - Mm(kTouch),
        page.margin - Mm(kTouch),
        page.width(page.columns) + Mm(2 * kTouch),
        page.height(page.rows) + Mm(2 * kTouch)};
    for (const Placement& one : arrangement.items) {
        EXPECT_GE(one.cell.x, room.x);
        EXPECT_GE(one.cell.y, room.y);
        EXPECT_LE(one.cell.right(), room.right());
        EXPECT_LE(one.cell.bottom(), room.bottom());
    }
}

void expectComplete(const Document& document, const Arrangement& arrangement)
{
    std::set<ItemId> ids;
    for (const Placement& one : arrangement.items)
        ids.insert(one.id);
    EXPECT_EQ(ids.size(), document.request.items.size());
    EXPECT_EQ(arrangement.items.size(), document.request.items.size());
}

// Text never taller than its place, photos within their limits, work whole on an even mat.
void expectPiecesWhole(const Document& document, const Arrangement& arrangement)
{
    const PageSpec& page = document.request.page;
    for (const Placement& one : arrangement.items) {
        const Item& item = itemOf(document, one.id);
        if (!item.picture) {
            const TextMetrics text = document.text.measure(one.id, one.cell.width);
            EXPECT_TRUE(text.fits);
            EXPECT_LE(text.height.value(), one.cell.height.value() + kTouch);
            if (document.text.spec(one.id).tinted) {
                EXPECT_LT(one.cell.height - text.height, page.rowUnit) << "a tint hugs its text";
            }
            continue;
        }
        EXPECT_GE(one.ppi, page.minPpi - 1e-6);
        EXPECT_LE(one.picture.right(), one.cell.right() + Mm(kTouch));
        EXPECT_LE(one.picture.bottom(), one.cell.bottom() + Mm(kTouch));
        const double shown = one.picture.width / one.picture.height;
        const double own = item.picture->size.aspect();
        EXPECT_NEAR(one.keep, std::min(shown / own, own / shown), 1e-6);
        const double limit = shown < own ? item.picture->keepWidth : item.picture->keepHeight;
        EXPECT_GE(one.keep, limit - 1e-6);
        if (item.kind == Kind::Work) {
            EXPECT_NEAR(one.keep, 1, 1e-9) << "a sample is never cropped";
            const double border = 0.6 * page.gutter.value();
            EXPECT_NEAR((one.picture.x - one.mat.x).value(), border, 1e-9);
            EXPECT_NEAR((one.mat.bottom() - one.picture.bottom()).value(), border, 1e-9);
        }
    }
}

// No stranger stands inside the rectangle of a group, and a group is on one page.
void expectGroupsWhole(const Document& document, const Arrangement& arrangement)
{
    std::map<int, GridRect> boxes;
    for (const Placement& one : arrangement.items) {
        const int group = itemOf(document, one.id).group;
        if (group == 0)
            continue;
        const auto [at, isNew] = boxes.try_emplace(group, one.at);
        GridRect& box = at->second;
        EXPECT_EQ(box.page, one.at.page);
        const int right = std::max(box.x + box.w, one.at.x + one.at.w);
        const int bottom = std::max(box.y + box.h, one.at.y + one.at.h);
        box.x = std::min(box.x, one.at.x);
        box.y = std::min(box.y, one.at.y);
        box.w = right - box.x;
        box.h = bottom - box.y;
    }
    for (const auto& [group, box] : boxes)
        for (const Placement& one : arrangement.items)
            if (itemOf(document, one.id).group != group && one.at.page == box.page) {
                EXPECT_FALSE(
                    overlap(document.request.page.cell(box), document.request.page.cell(one.at)))
                    << "group " << group << " is broken up";
            }
}

void expectPinsStay(const Document& document, const Arrangement& arrangement)
{
    for (const Placement& place : arrangement.items) {
        const Item& item = itemOf(document, place.id);
        if (item.pinned) {
            EXPECT_EQ(place.at, *item.pinned);
        }
    }
}

// Free documents keep the request's order; a plan keeps its own.
void expectOrder(const Document& document, const Arrangement& arrangement)
{
    if (!document.request.plan.empty())
        return;
    for (std::size_t k = 1; k < arrangement.items.size(); ++k) {
        EXPECT_LT(arrangement.items[k - 1].id, arrangement.items[k].id);
        EXPECT_LE(arrangement.items[k - 1].at.page, arrangement.items[k].at.page);
    }
}

bool same(const Arrangement& a, const Arrangement& b)
{
    if (a.items.size() != b.items.size() || a.cost.total() != b.cost.total()
        || a.groupChanges != b.groupChanges || a.columnSystem != b.columnSystem)
        return false;
    for (std::size_t k = 0; k < a.items.size(); ++k)
        if (a.items[k].id != b.items[k].id || !(a.items[k].at == b.items[k].at)
            || !(a.items[k].cell == b.items[k].cell) || !(a.items[k].picture == b.items[k].picture))
            return false;
    return true;
}

TEST(EngineProperties, EveryArrangementIsWholeAndKeepsItsLimits)
{
    int arranged = 0;
    int pinned = 0;
    int heavy = 0;
    for (int seed = 0; seed < kDocuments; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        const auto one = document(seed);
        const Outcome outcome = arrange(one->request, one->text);
        const auto* arrangement = std::get_if<Arrangement>(&outcome);
        if (arrangement == nullptr) {
            const auto& failed = std::get<Failure>(outcome);
            EXPECT_FALSE(failed.items.empty()) << "a failure names what does not fit";
            continue;
        }
        ++arranged;
        expectComplete(*one, *arrangement);
        expectNoOverlap(*one, *arrangement);
        expectInside(*one, *arrangement);
        if (hasPins(seed)) { // a pin is left as it was put, whatever limit it breaks
            expectPinsStay(*one, *arrangement);
            pinned += 1;
        } else {
            expectPiecesWhole(*one, *arrangement);
            expectGroupsWhole(*one, *arrangement);
            expectOrder(*one, *arrangement);
        }
        heavy += isHeavy(seed) ? 1 : 0;
        if (HasFailure())
            break;
    }
    std::printf("%d of %d documents arranged, %d with pins, %d of 60 and more pieces\n",
        arranged,
        kDocuments,
        pinned,
        heavy);
    EXPECT_GT(arranged, kDocuments * 95 / 100);
    EXPECT_GT(pinned, kDocuments * 9 / 100);
    EXPECT_GE(heavy, kDocuments / 100);
}

TEST(EngineProperties, SameInputGivesSameOutputInAnyThreadAndMemory)
{
    for (int seed = 0; seed < 60; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        const auto one = document(seed);
        const Outcome first = arrange(one->request, one->text);
        const std::vector<char> elsewhere(std::size_t(seed + 1) * 4099, 'x'); // moves the heap on
        Outcome second;
        std::thread other([&] { second = arrange(one->request, one->text); });
        other.join();
        ASSERT_EQ(first.index(), second.index());
        EXPECT_EQ(elsewhere.back(), 'x');
        if (const auto* arrangement = std::get_if<Arrangement>(&first)) {
            EXPECT_TRUE(same(*arrangement, std::get<Arrangement>(second)));
        }
    }
}

TEST(EngineProperties, TheFirstArrangementIsWholeToo)
{
    int found = 0;
    for (int seed = 0; seed < 400; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        const auto one =
            seed % 8 == 7 ? makeDocument(seed, 60 + seed % 31, Format(seed % 5)) : document(seed);
        one->request.plan.clear();
        const auto first = arrangeQuickly(one->request, one->text);
        if (!first)
            continue;
        ++found;
        expectComplete(*one, *first);
        expectNoOverlap(*one, *first);
        expectInside(*one, *first);
        if (seed % 8 != 7 && hasPins(seed)) {
            expectPinsStay(*one, *first);
            continue;
        }
        expectPiecesWhole(*one, *first);
        expectGroupsWhole(*one, *first);
        expectOrder(*one, *first);
    }
    EXPECT_GT(found, 380);
}

TEST(EngineProperties, WhoeverAsksIsToldTheFirstArrangementOnce)
{
    for (int seed = 1; seed < 20; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        const auto one = document(seed);
        const Outcome silent = arrange(one->request, one->text);
        std::vector<Arrangement> told;
        one->request.onFirst = [&](const Arrangement& first) { told.push_back(first); };
        const Outcome outcome = arrange(one->request, one->text);
        const auto plain = arrangeQuickly(one->request, one->text);
        ASSERT_EQ(told.size(), plain ? 1U : 0U);
        if (plain) {
            EXPECT_TRUE(same(told.front(), *plain));
        }
        ASSERT_EQ(silent.index(), outcome.index());
        if (const auto* arrangement = std::get_if<Arrangement>(&outcome)) {
            EXPECT_TRUE(same(*arrangement, std::get<Arrangement>(silent)));
        }
    }
}

TEST(EngineProperties, PinnedPiecesStayAndTheRestGoesAroundThem)
{
    int arranged = 0;
    for (int seed = 0; seed < 60; ++seed) {
        SCOPED_TRACE(testing::Message() << "seed " << seed);
        const auto one = makeDocument(seed, 8 + seed % 8, Format(seed % 3));
        Request request = one->request;
        request.plan.clear();
        for (Item& item : request.items)
            item.group = 0;
        const PageSpec& page = request.page;
        const GridRect pin{0, seed % 2 == 0 ? 6 : 4, page.rows / 4 + seed % 5, 6, page.rows / 3};
        auto& pinned = request.items[std::size_t(3 + seed % 3)];
        pinned.pinned = pin;
        const ItemId id = pinned.id;
        const Outcome outcome = arrange(request, one->text);
        const auto* arrangement = std::get_if<Arrangement>(&outcome);
        if (arrangement == nullptr)
            continue;
        ++arranged;
        expectComplete(*one, *arrangement);
        expectNoOverlap(*one, *arrangement);
        expectInside(*one, *arrangement);
        for (const Placement& place : arrangement->items)
            if (place.id == id) {
                EXPECT_EQ(place.at, pin);
                EXPECT_EQ(place.at.page, 0);
            }
    }
    EXPECT_GT(arranged, 55);
}

} // namespace
} // namespace wainscot::engine
