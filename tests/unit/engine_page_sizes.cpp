// Sizes of pictures are those of the pages a document takes, not of those it was thought to take.
#include "layout/engine/advice.h"
#include "layout/engine/targets.h"
#include "tests/support/engine_documents.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace wainscot::engine {
namespace {

// With sizes for one page, two pages once came out as a title and one picture, and all the rest.
TEST(EnginePageSizes, NoPageOfTwoStaysNearlyEmpty)
{
    int seen = 0;
    for (const int seed : {6, 16, 25, 30, 35, 45}) {
        SCOPED_TRACE(seed);
        const auto document = makeDocument(seed, 12 + seed % 10, Format(seed % 5));
        TextMemo text(document->text);
        const auto pieces = piecesOf(document->request.items, text);
        const Outcome outcome = arrange(document->request, document->text);
        const auto* found = std::get_if<Arrangement>(&outcome);
        if (found == nullptr || found->pages != 2
            || pagesWanted(pieces, document->request.page, text) != 1)
            continue;
        ++seen;
        for (int page = 0; page < 2; ++page)
            EXPECT_LE(pageUse(*found, document->request.page, page).white, 0.6) << page;
    }
    EXPECT_EQ(seen, 6);
}

// What speaks is weighed by its words where somebody has counted them.
TEST(EnginePageSizes, WordsCountWhereTheyAreKnown)
{
    const auto document = makeDocument(1, 12, Format::A1Portrait);
    class Counted : public TextMeasurer {
    public:
        explicit Counted(const TextMeasurer& text)
            : m_text(text)
        {
        }
        [[nodiscard]] TextMetrics measure(ItemId item, Mm width) const override
        {
            return m_text.measure(item, width);
        }
        [[nodiscard]] TextSpec spec(ItemId item) const override
        {
            TextSpec out = m_text.spec(item);
            out.words = 7;
            return out;
        }

    private:
        const TextMeasurer& m_text;
    } const counted(document->text);
    TextMemo text(counted);
    TextMemo uncounted(document->text);
    const auto with = piecesOf(document->request.items, text);
    const auto without = piecesOf(document->request.items, uncounted);
    for (std::size_t k = 0; k < with.size(); ++k) {
        EXPECT_EQ(with[k].said, 7);
        EXPECT_NE(without[k].said, 7);
    }
}

} // namespace
} // namespace wainscot::engine
