#include "core/base/paper_size.h"
#include "layout/paper/page_boxes.h"

#include <cups/cups.h>
#include <gtest/gtest.h>

namespace wainscot::pdf {

namespace {

constexpr RectMm kPanel{Mm(0), Mm(0), Mm(841), Mm(594)};

} // namespace

TEST(PageBoxes, AreThePanelItselfWithoutBleedAndMarks)
{
    const PageBoxes boxes = pageBoxes({Mm(841), Mm(594)}, Mm(0), false);
    EXPECT_EQ(boxes.trim, kPanel);
    EXPECT_EQ(boxes.bleed, kPanel);
    EXPECT_EQ(boxes.media, (SizeMm{Mm(841), Mm(594)}));
}

TEST(PageBoxes, NestTrimInBleedInMedia)
{
    const PageBoxes boxes = pageBoxes({Mm(841), Mm(594)}, Mm(3), true);
    EXPECT_DOUBLE_EQ(boxes.media.width.value(), 841 + 2 * 9);
    EXPECT_DOUBLE_EQ(boxes.trim.x.value(), 9);
    EXPECT_DOUBLE_EQ(boxes.bleed.x.value(), 6);
    EXPECT_DOUBLE_EQ(boxes.bleed.right().value(), 9 + 841 + 3);
}

TEST(PageBoxes, KeepCropMarksOutOfTheBleed)
{
    for (const double bleed : {0.0, 3.0, 12.0}) {
        const PageBoxes boxes = pageBoxes({Mm(297), Mm(210)}, Mm(bleed), true);
        const std::vector<Line> marks = cropMarks(boxes, Mm(bleed));
        EXPECT_EQ(marks.size(), 8U);
        for (const Line& mark : marks) {
            for (const PointMm end : {mark.from, mark.to}) {
                const bool outside = end.x <= boxes.bleed.x || end.x >= boxes.bleed.right()
                    || end.y <= boxes.bleed.y || end.y >= boxes.bleed.bottom();
                EXPECT_TRUE(outside) << bleed;
                EXPECT_GT(end.x, Mm(0));
                EXPECT_LT(end.x, boxes.media.width);
            }
        }
    }
}

// ISO 32000-1, annex C: 14400 units of 1/72 inch.
TEST(PageBoxes, RefuseSidesAPdfCannotHave)
{
    EXPECT_TRUE(pageBoxes({Mm(5080), Mm(100)}, Mm(0), false).fitsPdf());
    EXPECT_FALSE(pageBoxes({Mm(5080), Mm(100)}, Mm(3), false).fitsPdf());
    EXPECT_FALSE(pageBoxes({Mm(1), Mm(100)}, Mm(0), false).fitsPdf());
}

TEST(PageBoxes, LetOnlyWhatTouchesTheEdgeBleed)
{
    const SizeMm panel{Mm(400), Mm(300)};
    const RectMm inner{Mm(10), Mm(10), Mm(50), Mm(50)};
    EXPECT_EQ(bledOut(inner, panel, Mm(3)), inner);
    const RectMm corner{Mm(0), Mm(0), Mm(50), Mm(50)};
    EXPECT_EQ(bledOut(corner, panel, Mm(3)), (RectMm{Mm(-3), Mm(-3), Mm(53), Mm(53)}));
    const RectMm whole{Mm(0), Mm(0), Mm(400), Mm(300)};
    EXPECT_EQ(bledOut(whole, panel, Mm(3)), (RectMm{Mm(-3), Mm(-3), Mm(406), Mm(306)}));
    EXPECT_EQ(bledOut(whole, panel, Mm(0)), whole);
}

TEST(PageBoxes, CoverAnAreaWithoutChangingTheShape)
{
    const RectMm area{Mm(-3), Mm(10), Mm(103), Mm(100)};
    const RectMm cover = covering(area, {Mm(100), Mm(100)});
    EXPECT_DOUBLE_EQ(cover.width.value(), 103);
    EXPECT_DOUBLE_EQ(cover.height.value(), 103);
    EXPECT_DOUBLE_EQ(cover.x.value(), -3);
    EXPECT_DOUBLE_EQ(cover.y.value(), 8.5);
}

// The paper names of the program against the table of libcups 2.4.2 (PWG 5101.1).
TEST(PaperSizes, AgreeWithLibcups)
{
    const std::pair<const char*, const char*> papers[]{{"A0", "iso_a0_841x1189mm"},
        {"A1", "iso_a1_594x841mm"},
        {"A2", "iso_a2_420x594mm"},
        {"A3", "iso_a3_297x420mm"},
        {"A4", "iso_a4_210x297mm"},
        {"A5", "iso_a5_148x210mm"},
        {"Letter", "na_letter_8.5x11in"},
        {"Legal", "na_legal_8.5x14in"},
        {"Tabloid", "na_ledger_11x17in"}};
    for (const auto& [name, pwg] : papers) {
        const pwg_media_t* media = pwgMediaForPWG(pwg);
        ASSERT_NE(media, nullptr) << pwg;
        const Result<SizeMm> size = paperSizeFromText(QLatin1String(name));
        ASSERT_TRUE(size.ok()) << name;
        EXPECT_NEAR(size->width.value(), media->width / 100.0, 0.01) << name;
        EXPECT_NEAR(size->height.value(), media->length / 100.0, 0.01) << name;
    }
}

} // namespace wainscot::pdf
