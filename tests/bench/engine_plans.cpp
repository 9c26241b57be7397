// Templates as constraints: how often a page keeps to its template, what is said of wishes dropped,
// and what the pages are like.
#include "layout/engine/faults.h"
#include "layout/engine/plan.h"
#include "layout/engine/targets.h"
#include "tests/bench/engine_tables.h"
#include "tests/support/engine_documents.h"

#include <array>
#include <cstdio>
#include <set>
#include <string>

namespace wainscot::engine {

namespace {

constexpr std::array kWords = {"Nobody took it",
    "It climbs in the air but so small",
    "The worm is full of it, so the puddle is walking about in the ground",
    "My wet hand went off the wall. So the puddle went off the ground."};

// A document for a template, in the type of a classroom wall.
class Maker {
public:
    Maker(const std::string& plan, int seed)
        : m_dice(std::uint64_t(seed) + 5000)
        , m_document(std::make_unique<Document>())
    {
        Format format = Format::A1Landscape;
        if (plan == "voices" || plan == "evening")
            format = Format::A1Portrait;
        else if (plan == "door")
            format = Format::A2Portrait;
        m_document->request.page = pageFor(format);
        m_document->request.plan = plan;
    }

    std::unique_ptr<Document> make()
    {
        const std::string plan = m_document->request.plan;
        const std::vector<int> sides = plan == "evening" ? std::vector{1, 2} : std::vector{0};
        for (const int side : sides)
            text(Kind::Title, 0, side);
        if (plan == "thread")
            thread();
        else
            picture(0, 3);
        if (plan == "voices")
            for (int k = m_dice.between(6, 9); k > 0; --k)
                text(Kind::Quote);
        if (plan == "door")
            for (int k = 0; k < 2; ++k)
                text(Kind::Quote);
        if (plan == "evening")
            evening();
        else
            text(Kind::Interpretation);
        if (plan == "door")
            text(Kind::Credits);
        return std::move(m_document);
    }

private:
    Item& text(Kind kind, int group = 0, int side = 0)
    {
        Item item;
        item.id = ItemId(m_document->request.items.size()) + 1;
        item.kind = kind;
        item.group = group;
        item.side = side;
        FakeText type{
            kind == Kind::Photo ? "" : kWords[std::size_t(m_dice.between(0, kWords.size() - 1))]};
        if (kind == Kind::Title)
            type = {"Where does it go?", 26, 37, 15, 0, 0, 6, 26, 0};
        else if (kind == Kind::Quote)
            type = {type.words, 13.6, 24.8, 8.8, 16, 0, 14, 32, 0};
        else if (kind == Kind::Interpretation)
            type = {type.words, 8.7, 17, 5.9, 0, 10.5, 26, 50, 0};
        else if (kind == Kind::Label || kind == Kind::Credits)
            type = {"Tuesday", 5.6, 10.9, 3.8, 0, 0, 20, 52, 0};
        m_document->text.set(item.id, type);
        m_document->request.items.push_back(item);
        return m_document->request.items.back();
    }

    Item& picture(int group, int importance)
    {
        Item& item = text(Kind::Photo, group);
        item.picture = PictureShape{
            m_dice.between(0, 2) > 0 ? SizePx{6000, 4000} : SizePx{4608, 3456}, 0.7, 0.7};
        item.importance = importance;
        return item;
    }

    void thread()
    {
        text(Kind::Context);
        text(Kind::Credits);
        const int meetings = m_dice.between(2, 4);
        for (int meeting = 1; meeting <= meetings; ++meeting) {
            picture(meeting, meeting == meetings ? 3 : 1);
            text(Kind::Label, meeting);
            text(Kind::Quote, meeting);
        }
    }

    void evening()
    {
        for (const int side : {1, 2})
            text(Kind::Context, 0, side);
        const int rows = m_dice.between(1, 3);
        for (int row = 1; row <= rows; ++row) {
            text(Kind::Quote, row, 1).optional = row > 1;
            picture(row, 1).optional = row > 1;
            text(Kind::Quote, row, 2).optional = row > 1;
        }
        for (const int side : {1, 2})
            text(Kind::Invitation, 0, side);
    }

    Dice m_dice;
    std::unique_ptr<Document> m_document;
};

std::unique_ptr<Document> documentFor(const std::string& plan, int seed)
{
    if (plan == "days")
        return makeDays(seed + 500, 1 + seed % 5, Format::A1Landscape);
    if (plan == "drawing")
        return makeDrawing(seed + 500, Format::A3Landscape, seed % 2 == 0);
    return Maker(plan, seed).make();
}

struct Sum {
    int documents = 0;
    int whole = 0; // every wish kept
    int loose = 0; // by the template, with wishes dropped
    int free = 0; // without it
    int failed = 0; // no page at all
    int silent = 0; // a wish was dropped and nothing said: never
    int holes = 0;
    int inversions = 0;
    double imbalance = 0;
};

void measure(const std::string& plan, int seed, Sum& sum)
{
    const auto document = documentFor(plan, seed);
    const Outcome outcome = arrange(document->request, document->text);
    const auto* page = std::get_if<Arrangement>(&outcome);
    ++sum.documents;
    if (page == nullptr) {
        ++sum.failed;
        return;
    }
    const bool planned = page->columnSystem == plan;
    const bool dropped = !page->droppedWishes.empty();
    sum.whole += planned && !dropped ? 1 : 0;
    sum.loose += planned && dropped ? 1 : 0;
    sum.free += planned ? 0 : 1;
    const std::set<ItemId> out(page->leftOut.begin(), page->leftOut.end());
    const bool missing = page->items.size() + out.size() != document->request.items.size();
    sum.silent += missing || (!dropped && (!planned || !out.empty())) ? 1 : 0;
    TextMemo memo(document->text);
    const auto pieces = piecesOf(document->request.items, memo);
    for (int p = 0; p < page->pages; ++p) {
        const PageFaults faults = faultsOf(*page, p, pieces, document->request.page, memo);
        sum.holes += faults.holes;
        sum.imbalance += faults.imbalance / page->pages;
    }
    sum.inversions += page->orderInversions;
}

} // namespace

bool printTemplatesTable(const BenchOptions& options)
{
    const int documents = options.quick ? 6 : 30;
    std::printf("%d documents for each template; goal: nothing dropped without a word, no document "
                "without a page\n%-10s %12s %14s %8s %8s %10s %12s %11s %8s\n",
        documents,
        "template",
        "all wishes",
        "some dropped",
        "free",
        "no page",
        "silent",
        "holes each",
        "imbalance",
        "pairs");
    bool met = true;
    for (const Plan& plan : plans()) {
        Sum sum;
        for (int seed = 0; seed < documents; ++seed)
            measure(plan.name, seed, sum);
        const int pages = std::max(1, sum.documents - sum.failed);
        std::printf("%-10s %12d %14d %8d %8d %10d %12.2f %11.3f %8d%s\n",
            plan.name.c_str(),
            sum.whole,
            sum.loose,
            sum.free,
            sum.failed,
            sum.silent,
            double(sum.holes) / pages,
            sum.imbalance / pages,
            sum.inversions,
            sum.silent + sum.failed == 0 ? "" : "   missed");
        std::fflush(stdout);
        met = met && sum.silent == 0 && sum.failed == 0;
    }
    return met;
}

} // namespace wainscot::engine
