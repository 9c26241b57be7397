#include "layout/screen/painter.h"

#include "layout/typeset/typesetter.h"
#include "tests/unit/typeset_panels.h"

#include <QPainter>

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <map>

namespace {

using namespace wainscot;
using namespace wainscot::testing;

// Rows of the picture that hold ink, as bands from top to bottom, in millimetres.
std::vector<std::pair<double, double>> inkBands(const QImage& image, double pixelsPerMm)
{
    std::vector<std::pair<double, double>> bands;
    bool inside = false;
    for (int y = 0; y < image.height(); ++y) {
        bool ink = false;
        for (int x = 0; x < image.width() && !ink; ++x)
            ink = qGray(image.pixel(x, y)) < 160;
        if (ink && !inside)
            bands.emplace_back(y / pixelsPerMm, 0);
        if (ink)
            bands.back().second = (y + 1) / pixelsPerMm;
        inside = ink;
    }
    return bands;
}

double inkRight(const QImage& image, double pixelsPerMm)
{
    for (int x = image.width() - 1; x >= 0; --x) {
        for (int y = 0; y < image.height(); ++y) {
            if (qGray(image.pixel(x, y)) < 160)
                return (x + 1) / pixelsPerMm;
        }
    }
    return 0;
}

PanelBuilder onlyWords()
{
    PanelBuilder p(
        {Mm(420), Mm(297)}, Mm(1000), QStringLiteral("Schoolroom"), QStringLiteral("Soot"));
    p.text(PieceKind::Context,
        p.cell(0, 0, 6, 20),
        QStringLiteral("It rained until ten. Five children found this puddle by the bicycle shed "
                       "and asked to keep it. We had one rule: no stamping."));
    return p;
}

TEST(Paint, ShowsTheSameLinesAtEveryZoom)
{
    const PanelBuilder builder = onlyWords();
    const ClearedPanel panel = builder.cleared();
    const DisplayList list = typeset(panel, builder.style());
    NoPictures none;
    const auto at = [&](double dpi) { return toImage(list, DotsPerInch(dpi), none).value(); };
    const QImage fine = at(200);
    const auto bands = inkBands(fine, fine.width() / 420.0);
    const double right = inkRight(fine, fine.width() / 420.0);
    ASSERT_GE(bands.size(), 3U);
    for (const double dpi : {48.0, 57.3, 61.0, 72.0, 83.7, 96.0, 110.0, 133.3, 150.0, 180.0}) {
        const QImage image = at(dpi);
        const double pixelsPerMm = image.width() / 420.0;
        const double pixel = 1 / pixelsPerMm;
        const auto same = inkBands(image, pixelsPerMm);
        ASSERT_EQ(same.size(), bands.size()) << dpi;
        for (std::size_t i = 0; i < bands.size(); ++i)
            EXPECT_NEAR(same[i].second, bands[i].second, 1.2 * pixel) << dpi;
        EXPECT_NEAR(inkRight(image, pixelsPerMm), right, 1.2 * pixel) << dpi;
    }
}

TEST(Paint, DrawsOnlyWhatIsAskedFor)
{
    const PanelBuilder builder = onlyWords();
    const ClearedPanel panel = builder.cleared();
    const DisplayList list = typeset(panel, builder.style());
    NoPictures none;
    const auto ink = [&](const RectMm& part) {
        QImage image(420, 297, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        EXPECT_TRUE(paint(painter, list, none, PaintPurpose::Screen, part));
        painter.end();
        return inkBands(image, 1).size();
    };
    EXPECT_EQ(ink({Mm(0), Mm(200), Mm(420), Mm(90)}), 0U);
    EXPECT_GE(ink({Mm(0), Mm(0), Mm(420), Mm(297)}), 3U);
    EXPECT_EQ(ink({}), ink({Mm(0), Mm(0), Mm(420), Mm(297)}));
}

class Stripes final : public PictureProvider {
public:
    explicit Stripes(RectFraction part)
        : m_part(part)
    {
    }
    // Left half of the whole picture red, right half blue.
    ProvidedPicture picture(const ClearedPicture&, SizePx wanted) override
    {
        m_wanted = wanted;
        QImage image(400, 100, QImage::Format_RGB32);
        for (int x = 0; x < image.width(); ++x) {
            const double whole = m_part.x + (x + 0.5) / image.width() * m_part.width;
            for (int y = 0; y < image.height(); ++y)
                image.setPixel(x, y, whole < 0.5 ? 0xffff0000 : 0xff0000ff);
        }
        return {image, m_part};
    }
    SizePx m_wanted;

private:
    RectFraction m_part;
};

DisplayList onePicture(RectFraction visible)
{
    DisplayList list;
    list.size = {Mm(100), Mm(50)};
    PlacedPicture placed;
    placed.picture.id = PictureId(7);
    placed.picture.size = {4000, 2000};
    placed.picture.visible = visible;
    placed.place = {Mm(10), Mm(10), Mm(80), Mm(30)};
    list.marks.push_back({-1, PieceId(3), placed});
    return list;
}

TEST(Paint, ShowsTheVisiblePartOfAPicture)
{
    // Visible is the right three quarters, so red covers its first third.
    const DisplayList list = onePicture({0.25, 0, 0.75, 1});
    for (const RectFraction part : {RectFraction{}, RectFraction{0.25, 0, 0.75, 1}}) {
        Stripes stripes(part);
        const QImage image = toImage(list, DotsPerInch(254), stripes).value();
        EXPECT_EQ(image.size(), QSize(1000, 500));
        EXPECT_EQ(stripes.m_wanted, (SizePx{800, 300}));
        EXPECT_EQ(image.pixel(100 + 240, 250), 0xffff0000);
        EXPECT_EQ(image.pixel(100 + 290, 250), 0xff0000ff);
        EXPECT_EQ(image.pixel(50, 50), 0xffffffff);
    }
}

TEST(Paint, ShowsACalmToneWhileAPictureLoadsAndRefusesToPrintIt)
{
    const DisplayList list = onePicture({});
    NoPictures none;
    QImage image(100, 50, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    EXPECT_TRUE(paint(painter, list, none, PaintPurpose::Screen));
    painter.end();
    EXPECT_NE(image.pixel(50, 25), 0xffffffff);
    EXPECT_GT(qGray(image.pixel(50, 25)), 200);
    const Result<QImage> printed = toImage(list, DotsPerInch(72), none);
    ASSERT_FALSE(printed);
    EXPECT_EQ(printed.error().code, ErrorCode::CannotRead);
    EXPECT_EQ(printed.error().subject, QStringLiteral("picture 7 (piece 3)"));
}

TEST(ToImage, RefusesAResolutionThatMakesNoImage)
{
    NoPictures none;
    DisplayList list;
    list.size = {Mm(841), Mm(594)};
    EXPECT_EQ(toImage(list, DotsPerInch(0), none).error().code, ErrorCode::WrongUse);
    EXPECT_EQ(toImage(list, DotsPerInch(1e6), none).error().code, ErrorCode::WrongUse);
    const QImage image = toImage(list, DotsPerInch(25.4), none).value();
    EXPECT_EQ(image.size(), QSize(841, 594));
    EXPECT_EQ(image.dotsPerMeterX(), 1000);
}

} // namespace
