// A quick form of bench_engine's section "quality", on documents that may be looked at: fails when
// pages become worse than they were when this was written.
#include "tests/support/wall_quality.h"
#include "tests/support/wall_texts.h"

#include <gtest/gtest.h>

namespace wainscot::walls {
namespace {

constexpr int kDocuments = 20;

struct Sum {
    int pages = 0;
    int photos = 0;
    int holes = 0;
    int longCaptions = 0;
    double crop = 0;
    double imbalance = 0;
    std::map<int, int> passed;
};

class EngineQuality : public ::testing::Test {
protected:
    static void SetUpTestSuite()
    {
        for (int number = 0; int(s_documents.size()) < kDocuments; ++number) {
            Document document = makeDocument(Set::Tuning, number);
            if (document.size != Size::Heavy)
                s_documents.push_back(std::move(document));
        }
        for (const Document& document : s_documents) {
            const Sheet sheet(document);
            s_own.push_back(qualityOf(sheet, engineLayout(sheet)));
            s_rows.push_back(bestRows(sheet).quality);
            s_masonry.push_back(bestMasonry(sheet).quality);
        }
        for (const Quality& quality : s_own)
            for (const PageQuality& page : quality.pages)
                add(page);
    }

    static void add(const PageQuality& page)
    {
        ++s_sum.pages;
        s_sum.holes += page.holes;
        s_sum.longCaptions += page.longCaptions;
        s_sum.imbalance += page.imbalance;
        for (const double loss : page.cropLosses)
            s_sum.crop += loss;
        s_sum.photos += int(page.cropLosses.size());
        for (const auto& [test, passed] : page.passed)
            s_sum.passed[test] += passed ? 1 : 0;
    }

    static inline std::vector<Document> s_documents;
    static inline std::vector<Quality> s_own;
    static inline std::vector<Quality> s_rows;
    static inline std::vector<Quality> s_masonry;
    static inline Sum s_sum;
};

TEST_F(EngineQuality, EveryDocumentIsArranged)
{
    for (std::size_t k = 0; k < s_own.size(); ++k)
        EXPECT_FALSE(s_own[k].pages.empty()) << s_documents[k].name.toStdString();
}

TEST_F(EngineQuality, WhatMustHoldHoldsOnEveryPage)
{
    for (std::size_t k = 0; k < s_own.size(); ++k)
        for (const StyleTest& test : styleTests())
            if (test.goal >= 1) {
                EXPECT_TRUE(s_own[k].passed(test.number))
                    << s_documents[k].name.toStdString() << ": " << test.number << " " << test.says;
            }
}

TEST_F(EngineQuality, WhatShouldHoldHoldsNearlyEverywhere)
{
    for (const StyleTest& test : styleTests())
        if (test.goal > 0) {
            const int least = int(s_sum.pages * (test.goal - 0.02)); // of few pages, whole ones
            EXPECT_GE(s_sum.passed[test.number], least) << test.number << " " << test.says;
        }
}

TEST_F(EngineQuality, WordsAreCountedAsTheStyleCountsThem)
{
    for (const Document& document : s_documents) {
        const Sheet sheet(document);
        for (const Piece& piece : document.pieces)
            if (piece.kind == PieceKind::Context || piece.kind == PieceKind::Interpretation) {
                EXPECT_EQ(sheet.text().spec(piece.id.number()).words, wordsIn(piece.text))
                    << piece.text.toStdString();
            }
    }
}

TEST_F(EngineQuality, NothingIsCutBeyondItsLimitOrRunsOut)
{
    for (const Quality& quality : s_own) {
        EXPECT_EQ(quality.brokenGroups, 0);
        for (const PageQuality& page : quality.pages) {
            EXPECT_EQ(page.pastCropLimit, 0);
            EXPECT_EQ(page.belowPpi, 0);
            EXPECT_EQ(page.textPastCell, 0);
        }
    }
    EXPECT_LE(s_sum.crop / s_sum.photos, 0.05);
}

// Floors: what was reached, with a little room.
TEST_F(EngineQuality, PagesStayCalm)
{
    EXPECT_LE(double(s_sum.holes) / s_sum.pages, 0.25);
    EXPECT_LE(s_sum.imbalance / s_sum.pages, 0.16);
    EXPECT_LE(double(s_sum.longCaptions) / s_sum.photos, 0.10);
}

TEST_F(EngineQuality, PagesKeepMoreOfTheStyleThanTheUsualWaysDo)
{
    int own = 0;
    int rows = 0;
    int masonry = 0;
    int better = 0;
    for (std::size_t k = 0; k < s_own.size(); ++k) {
        own += s_own[k].testsPassed();
        rows += s_rows[k].testsPassed();
        masonry += s_masonry[k].testsPassed();
        better +=
            s_own[k].testsPassed() > std::max(s_rows[k].testsPassed(), s_masonry[k].testsPassed())
            ? 1
            : 0;
    }
    EXPECT_GT(own, rows + kDocuments);
    EXPECT_GT(own, masonry + kDocuments);
    EXPECT_GE(better, kDocuments * 3 / 4);
}

} // namespace
} // namespace wainscot::walls
