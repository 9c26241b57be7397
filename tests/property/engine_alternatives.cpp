// What must hold for every further arrangement, on seeded documents.
#include "layout/engine/alternatives.h"
#include "tests/support/engine_documents.h"

#include <gtest/gtest.h>

namespace wainscot::engine {
namespace {

constexpr int kDocuments = 80;

std::unique_ptr<Document> document(int seed)
{
    const auto format = Format(seed % 5);
    auto made = seed % 3 == 0
        ? makeDays(seed, 2 + seed / 3 % 3, format, seed % 2 == 0, seed % 4 < 3)
        : seed % 12 == 1 ? makeDrawing(seed, format)
                         : makeDocument(seed, 6 + seed % 13, format);
    made->request.pages = 1;
    return made;
}

struct Answer {
    std::unique_ptr<Document> made;
    Arrangement best;
    Alternatives others;
};

// Nothing when the document does not fit one page. `pins`: so many pieces stay where the best page
// has them.
std::optional<Answer> answerFor(int seed, int pins)
{
    Answer answer{document(seed), {}, {}};
    Request& request = answer.made->request;
    Outcome outcome = arrange(request, answer.made->text);
    if (pins > 0) {
        const auto* first = std::get_if<Arrangement>(&outcome);
        if (first == nullptr)
            return std::nullopt;
        for (int k = 0; k < pins; ++k) {
            const auto at = std::size_t(seed + 3 * k) % request.items.size();
            for (const Placement& place : first->items)
                if (place.id == request.items[at].id)
                    request.items[at].pinned = place.at;
        }
        outcome = arrange(request, answer.made->text);
    }
    const auto* best = std::get_if<Arrangement>(&outcome);
    if (best == nullptr)
        return std::nullopt;
    answer.best = *best;
    answer.others = alternatives(request, *best, answer.made->text);
    return answer;
}

void expectWhole(const Answer& answer, const Arrangement& one)
{
    const PageSpec& page = answer.made->request.page;
    EXPECT_EQ(one.items.size(), answer.made->request.items.size());
    for (std::size_t a = 0; a < one.items.size(); ++a) {
        const GridRect& at = one.items[a].at;
        EXPECT_TRUE(
            at.x >= 0 && at.y >= 0 && at.x + at.w <= page.columns && at.y + at.h <= page.rows);
        for (std::size_t b = a + 1; b < one.items.size(); ++b) {
            const RectMm both = intersection(one.items[a].cell, one.items[b].cell);
            EXPECT_FALSE(both.width > Mm(1e-6) && both.height > Mm(1e-6));
        }
    }
}

void expectDifferentAndGood(const Answer& answer)
{
    const AlternativesWish wish;
    const Request& request = answer.made->request;
    std::vector<const Arrangement*> shown = {&answer.best};
    ASSERT_EQ(answer.others.found.size(), answer.others.costRatios.size());
    for (std::size_t k = 0; k < answer.others.found.size(); ++k) {
        const Arrangement& one = answer.others.found[k];
        EXPECT_LE(answer.others.costRatios[k], wish.dearest);
        EXPECT_LE(one.orderInversions, answer.best.orderInversions);
        EXPECT_EQ(one.cost.likeness, 0);
        for (const Arrangement* other : shown) {
            const Difference between = difference(one.items, other->items, request);
            EXPECT_GE(between.pieces, wish.difference);
            EXPECT_GE(between.area, wish.areaDifference);
        }
        shown.push_back(&one);
        expectWhole(answer, one);
    }
}

void expectSame(const Alternatives& one, const Alternatives& other)
{
    ASSERT_EQ(one.found.size(), other.found.size());
    for (std::size_t k = 0; k < one.found.size(); ++k) {
        EXPECT_EQ(one.found[k].cost.total(), other.found[k].cost.total());
        ASSERT_EQ(one.found[k].items.size(), other.found[k].items.size());
        for (std::size_t i = 0; i < one.found[k].items.size(); ++i) {
            EXPECT_EQ(one.found[k].items[i].at, other.found[k].items[i].at);
            EXPECT_EQ(one.found[k].items[i].cell, other.found[k].items[i].cell);
        }
    }
}

TEST(Alternatives, AreDifferentAndNearlyAsGoodOnSeededDocuments)
{
    int answered = 0;
    int found = 0;
    for (int seed = 1; seed <= kDocuments; ++seed) {
        SCOPED_TRACE(seed);
        const auto answer = answerFor(seed, 0);
        if (!answer)
            continue;
        ++answered;
        found += int(answer->others.found.size());
        EXPECT_LE(answer->others.found.size(), 3U);
        expectDifferentAndGood(*answer);
    }
    EXPECT_GT(answered, kDocuments / 2);
    EXPECT_GT(found, answered) << "more than one for each on average";
}

TEST(Alternatives, LeavePinnedPiecesWhereTheyAre)
{
    int moved = 0;
    for (int seed = 1; seed <= kDocuments / 2; ++seed) {
        SCOPED_TRACE(seed);
        const auto answer = answerFor(seed, 1 + seed % 3);
        if (!answer)
            continue;
        expectDifferentAndGood(*answer);
        for (const Arrangement& one : answer->others.found) {
            ++moved;
            for (const Item& item : answer->made->request.items)
                for (const Placement& place : one.items)
                    if (item.pinned && place.id == item.id) {
                        EXPECT_EQ(place.at, *item.pinned);
                    }
        }
    }
    EXPECT_GT(moved, 0);
}

TEST(Alternatives, AreTheSameEveryTime)
{
    for (int seed = 1; seed <= 12; ++seed) {
        SCOPED_TRACE(seed);
        const auto one = answerFor(seed, seed % 2);
        const auto other = answerFor(seed, seed % 2);
        ASSERT_EQ(one.has_value(), other.has_value());
        if (one)
            expectSame(one->others, other->others);
    }
}

TEST(Alternatives, KeepAwayFromWhatTheTeacherSees)
{
    for (int seed = 2; seed <= 40; seed += 3) {
        SCOPED_TRACE(seed);
        const auto answer = answerFor(seed, 0);
        if (!answer || answer->others.found.empty())
            continue;
        const auto& seen = answer->others.found.front().items;
        const Alternatives again =
            alternatives(answer->made->request, answer->best, answer->made->text, {}, {seen});
        for (const Arrangement& one : again.found)
            EXPECT_GE(difference(one.items, seen, answer->made->request).pieces, 0.4);
    }
}

TEST(Alternatives, StopWhenToldTo)
{
    const std::atomic<bool> stop = true;
    const auto answer = answerFor(2, 0);
    ASSERT_TRUE(answer);
    Request request = answer->made->request;
    request.cancel = &stop;
    const Alternatives none = alternatives(request, answer->best, answer->made->text);
    EXPECT_TRUE(none.cancelled);
    EXPECT_TRUE(none.found.empty());
}

TEST(Difference, CountsPiecesAndArea)
{
    Request request;
    request.items.resize(2);
    request.items[0].id = 1;
    request.items[1].id = 2;
    Placement small;
    small.id = 1;
    small.cell = {Mm(0), Mm(0), Mm(10), Mm(10)};
    Placement large;
    large.id = 2;
    large.cell = {Mm(0), Mm(20), Mm(100), Mm(99)};
    Placement moved = small;
    moved.cell = {Mm(50), Mm(0), Mm(10), Mm(10)};
    // The small one has left its place (union 200), the large one (9900) has not.
    const Difference one = difference({small, large}, {moved, large}, request);
    EXPECT_DOUBLE_EQ(one.pieces, 0.5);
    EXPECT_NEAR(one.area, 200.0 / 10100, 1e-12);
    request.items[0].pinned = GridRect{};
    EXPECT_DOUBLE_EQ(difference({small, large}, {moved, large}, request).pieces, 0);
}

} // namespace
} // namespace wainscot::engine
