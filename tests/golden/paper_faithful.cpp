// What is printed is what is seen: one list through the canvas's painter and through the PDF, drawn
// by two independent programs.
#include "layout/paper/pdf_file.h"
#include "layout/screen/painter.h"
#include "tests/golden/paper_kit.h"

#include <gtest/gtest.h>

namespace wainscot {

using namespace paper_kit;

namespace {

// The same pixels for the painter as for the PDF.
class SamePictures final : public PictureProvider {
public:
    explicit SamePictures(PaintedPictures& pictures)
        : m_pictures(pictures)
    {
    }
    [[nodiscard]] ProvidedPicture picture(const ClearedPicture& picture, SizePx wanted) override
    {
        const Result<BakedJpeg> baked = m_pictures.bake(picture, wanted);
        return {baked ? QImage::fromData(baked->bytes) : QImage(), picture.visible};
    }

private:
    PaintedPictures& m_pictures;
};

// The best mean difference of two pictures when one is moved by whole pixels, and by how much.
struct Match {
    double difference = 255;
    int x = 0;
    int y = 0;
};
Match bestMatch(const QImage& a, const QImage& b, int most)
{
    Match best;
    for (int y = -most; y <= most; ++y) {
        for (int x = -most; x <= most; ++x) {
            const QRect inside = a.rect().adjusted(most, most, -most, -most);
            const double d = difference(a.copy(inside), b.copy(inside.translated(x, y)));
            if (d < best.difference)
                best = {d, x, y};
        }
    }
    return best;
}

TEST(Paper, ShowsWhatTheCanvasShowsInTwoIndependentReaders)
{
    PaintedPictures pictures;
    Page page({Mm(254), Mm(178)});
    page.fill({Mm(0), Mm(0), Mm(254), Mm(30)}, 0xffdde6ea);
    page.cap = Mm(7);
    page.text(
        Role::Heading1, QStringLiteral("Where does the puddle go?"), {Mm(15), Mm(22)}, Mm(230));
    page.cap = Mm(4);
    page.text(Role::Quote,
        QStringLiteral("It went off into the ground because it was thirsty."),
        {Mm(15), Mm(60)},
        Mm(90));
    page.text(Role::Quote,
        QStringLiteral("الماء راح في الأرض"),
        {Mm(15), Mm(120)},
        Mm(90),
        QStringLiteral("ar"));
    page.picture(pictures.add({900, 600}), {Mm(127), Mm(50), Mm(102), Mm(68)});
    QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("a.pdf"));
    ASSERT_TRUE(pdf::writePages(path, {page.list}, pictures, options()).ok());
    constexpr int kDpi = 100;
    SamePictures same(pictures);
    const auto canvas = toImage(page.list, DotsPerInch(kDpi), same);
    ASSERT_TRUE(canvas.ok());
    for (const char* reader : {"pdftoppm", "mutool"}) {
        const QImage seen = drawn(path, QLatin1String(reader), 1, kDpi);
        ASSERT_EQ(seen.size(), canvas->size()) << reader;
        const Match match = bestMatch(canvas->convertToFormat(QImage::Format_RGB32),
            seen.convertToFormat(QImage::Format_RGB32),
            2);
        // 1 px at 100 dpi is 0.25 mm.
        EXPECT_LE(std::abs(match.x), 1) << reader;
        EXPECT_LE(std::abs(match.y), 1) << reader;
        EXPECT_LT(match.difference, 4) << reader;
        // Another page would be told apart.
        EXPECT_GT(bestMatch(canvas->mirrored(), seen, 0).difference, 12) << reader;
    }
}

} // namespace
} // namespace wainscot
