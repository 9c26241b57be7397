// What only a finished page shows.
#include "layout/engine/faults.h"
#include "tests/support/engine_documents.h"

#include <gtest/gtest.h>

namespace wainscot::engine {
namespace {

// A band of white that ends exactly where a row begins is as high as it is, on every row.
TEST(EngineFaults, AHoleOfSixRowsIsSeenWhereverItBegins)
{
    const PageSpec page = pageFor(Format::A3Landscape);
    Piece piece;
    piece.item.picture = PictureShape{{4000, 3000}, 1, 1};
    std::vector<Piece> pieces(2, piece);
    pieces[0].item.id = 1;
    pieces[1].item.id = 2;
    const auto document = makeDocument(1, 9, Format::A3Landscape);
    TextMemo text(document->text);
    for (const int white : {5, 6})
        for (int top = 1; top + white + 2 <= page.rows; ++top) {
            Arrangement two;
            two.pages = 1;
            for (const GridRect at :
                {GridRect{0, 0, 0, 12, top}, GridRect{0, 0, top + white, 12, 2}}) {
                Placement place;
                place.id = ItemId(two.items.size()) + 1;
                place.at = at;
                place.cell = place.picture = page.cell(at);
                two.items.push_back(place);
            }
            EXPECT_EQ(faultsOf(two, 0, pieces, page, text).holes, white < 6 ? 0 : 1)
                << white << " rows from row " << top;
        }
}

} // namespace
} // namespace wainscot::engine
