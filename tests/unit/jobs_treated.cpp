// What is covered in a picture is in nothing that leaves the book.
#include "app/jobs/export_job.h"
#include "core/store/originals.h"
#include "tests/support/class_book.h"
#include "tests/support/media_pictures.h"

#include <gtest/gtest.h>

#include <QDir>
#include <QTemporaryDir>

namespace wainscot {
namespace {

constexpr int kWidth = 480;
constexpr int kHeight = 360;
const QRect kHidden(140, 75, 120, 150);

// Two books' pictures: they differ in the hidden region alone, where each ninth is mirrored and so
// keeps its mean; besides, the region is of a pattern in colours that are nowhere else.
QImage photo(bool mirrored)
{
    QImage image = test::noisePhoto(kWidth, kHeight, 5).convertToFormat(QImage::Format_RGB32);
    for (int y = kHidden.top(); y <= kHidden.bottom(); ++y) {
        for (int x = kHidden.left(); x <= kHidden.right(); ++x) {
            const int third = kHidden.left() + (x - kHidden.left()) / 40 * 40;
            const int from = mirrored ? 2 * third + 39 - x : x;
            const bool odd = (from * from / 50 + y / 6) % 2 == 1;
            image.setPixel(x, y, odd ? qRgb(255, 0, 255) : qRgb(0, 255, 0));
        }
    }
    return image;
}

// Pixels as they are only in what is hidden, JPEG's softening included.
int telltalePixels(const QImage& image)
{
    int count = 0;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QRgb p = image.pixel(x, y);
            const bool magenta = qRed(p) > 190 && qBlue(p) > 190 && qGreen(p) < 90;
            const bool green = qGreen(p) > 190 && qRed(p) < 90 && qBlue(p) < 90;
            count += magenta || green ? 1 : 0;
        }
    }
    return count;
}

class Covered : public ::testing::Test {
protected:
    // A display with the picture on it twice, once near.
    void make(bool mirrored, const Treatment& treatment)
    {
        m_class = std::make_unique<ClassBook>();
        const QString file = test::writeFile(
            m_folder.filePath(QStringLiteral("p.png")), test::pngOf(photo(mirrored)));
        const auto sha256 = Originals(pictures()).keep(file);
        ASSERT_TRUE(sha256.ok());
        const PictureId id = m_class->picture(PictureKind::Photo, {true, {}}, "p.png");
        Picture picture = *m_class->book.pictures.find(id);
        picture.sha256 = *sha256;
        picture.format = QStringLiteral("png");
        picture.size = {kWidth, kHeight};
        picture.treatment = treatment;
        if (const auto& straight = treatment.straightening)
            picture.size = straightenedSize(straight->corners, straight->from);
        m_class->book.pictures.put(picture);
        const DisplayId display = m_class->display(Audience::Classroom);
        Display small = m_class->at(display);
        small.panelSize = {Mm(520), Mm(190)};
        m_class->book.displays.put(small);
        for (const double left : {20.0, 300.0}) {
            Piece piece = *m_class->book.pieces.find(m_class->hang(display, id));
            piece.cell = piece.picturePlace = {Mm(left), Mm(20), Mm(200), Mm(150)};
            piece.framing.zoom = left > 100 ? 2.0 : 1.0;
            m_class->book.pieces.put(piece);
        }
    }

    [[nodiscard]] QString pictures() const { return m_folder.filePath(QStringLiteral("pictures")); }

    QImage png()
    {
        ExportPictureJob job;
        job.display = QStringLiteral("Hall");
        job.file = m_folder.filePath(QStringLiteral("out.png"));
        job.dpi = 60; // about the photo's own pixels
        job.picturesFolder = pictures();
        const auto outcome = job.run(m_class->book, {});
        EXPECT_TRUE(outcome.ok()) << (outcome ? "" : qPrintable(outcome.error().detail));
        return QImage(job.file);
    }

    QList<QImage> imagesInPdf()
    {
        ExportPdfJob job;
        job.display = QStringLiteral("Hall");
        job.file = m_folder.filePath(QStringLiteral("out.pdf"));
        job.picturesFolder = pictures();
        const auto outcome = job.run(m_class->book, {});
        EXPECT_TRUE(outcome.ok()) << (outcome ? "" : qPrintable(outcome.error().detail));
        QDir folder(m_folder.path());
        for (const QString& old : folder.entryList({QStringLiteral("image*")}))
            folder.remove(old);
        EXPECT_TRUE(test::run(QStringLiteral("pdfimages"),
            {QStringLiteral("-png"), job.file, folder.filePath(QStringLiteral("image"))}));
        QList<QImage> images;
        for (const QString& name : folder.entryList({QStringLiteral("image*")}))
            images << QImage(folder.filePath(name));
        return images;
    }

private:
    QTemporaryDir m_folder;
    std::unique_ptr<ClassBook> m_class;
};

std::vector<Treatment> treatments()
{
    const RectFraction hidden{double(kHidden.x()) / kWidth,
        double(kHidden.y()) / kHeight,
        double(kHidden.width()) / kWidth,
        double(kHidden.height()) / kHeight};
    std::vector<Treatment> all;
    for (const Cover cover : {Cover::Blur, Cover::Mosaic, Cover::Flat})
        all.push_back({{{hidden, cover}}, {}, false});
    Treatment more = all.back();
    more.straightening =
        Straightening{{{{0.1, 0.05}, {0.95, 0.1}, {0.9, 0.95}, {0.05, 0.9}}}, {kWidth, kHeight}};
    all.push_back(more);
    more.evenLight = true;
    all.push_back(more);
    return all;
}

TEST_F(Covered, RegionsAreInNoPngAndNoPdf)
{
    make(false, {});
    ASSERT_GT(telltalePixels(png()), 1000); // the search finds them when they are there
    ASSERT_GT(telltalePixels(imagesInPdf().front()), 1000);
    for (const Treatment& treatment : treatments()) {
        SCOPED_TRACE(qPrintable(textOf(treatment)));
        make(false, treatment);
        const QImage panel = png();
        const QList<QImage> images = imagesInPdf();
        ASSERT_FALSE(panel.isNull());
        ASSERT_EQ(images.size(), 2); // two crops of one picture
        EXPECT_EQ(telltalePixels(panel), 0);
        for (const QImage& image : images)
            EXPECT_EQ(telltalePixels(image), 0);
        // Another content with the same means there leaves the same panel and the same paper.
        make(true, treatment);
        EXPECT_EQ(png(), panel);
        EXPECT_EQ(imagesInPdf(), images);
    }
}

} // namespace
} // namespace wainscot
