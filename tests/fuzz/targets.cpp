#include "tests/fuzz/targets.h"

#include "core/base/csv.h"
#include "core/media/exif.h"
#include "core/media/jpeg_segments.h"
#include "core/media/picture_header.h"
#include "core/media/sniff.h"
#include "core/media/treat.h"
#include "core/model/template_file.h"
#include "core/model/treatment.h"

namespace wainscot::fuzz {

namespace {

// What is read of a picture stays within what a file can honestly say.
void lookAt(const PictureHeader& header, qint64 bytes)
{
    must(!header.stored.isEmpty(), "a header has a size");
    const int turned = orientationOf(header);
    must(turned >= 1 && turned <= 8, "an orientation is 1 to 8");
    (void)checkSize(header, bytes);
    if (!header.exif.isEmpty())
        (void)readExif(header.exif);
}

} // namespace

void csv(const std::uint8_t* bytes, std::size_t count)
{
    const auto table = parseCsv(view(bytes, count), QStringLiteral("class.csv"));
    if (!table) {
        must(!table.error().detail.isEmpty() || !table.error().subject.isEmpty(), "a reason");
        return;
    }
    for (const CsvRow& row : table->rows) {
        must(row.row >= 2 && row.line >= 2, "rows begin below the header");
        must(row.cells.size() <= table->columns.size(), "no cell without a column");
    }
    for (const CsvFault& fault : table->faults)
        must(!fault.why.isEmpty(), "a fault says why");
}

void templateFile(const std::uint8_t* bytes, std::size_t count)
{
    const auto made = templateFromJson(view(bytes, count), QStringLiteral("wall.json"));
    if (!made) {
        must(!made.error().detail.isEmpty() || made.error().code == ErrorCode::TooNew, "a reason");
        return;
    }
    const QByteArray json = templateToJson(*made);
    const auto again = templateFromJson(json, QStringLiteral("wall.json"));
    must(again.ok() && templateToJson(*again) == json, "what was read can be written and read");
}

void picture(const std::uint8_t* bytes, std::size_t count)
{
    const QByteArray file = view(bytes, count);
    (void)readExif(file); // as a tree of tags by itself
    const QString format = pictureFormat(file);
    must(!whyNotAPicture(file).isEmpty(), "a reason");
    if (format.isEmpty())
        return;
    const auto header = readPictureHeader(format, file);
    if (header)
        lookAt(*header, qint64(count));
    QByteArray bare = file;
    if (format != QLatin1String("jpeg") || !stripMetadata(bare))
        return;
    const auto rest = readJpegHeader(bare);
    must(!rest || rest->exif.isEmpty(), "no metadata is left");
}

void treatment(const std::uint8_t* bytes, std::size_t count)
{
    const auto read = treatmentFromText(QString::fromUtf8(view(bytes, count)));
    if (!read)
        return;
    const QString text = textOf(*read);
    must(treatmentFromText(text) == read, "what was read can be written and read");
    must(textOf(quarterTurned(*read)).isEmpty() == text.isEmpty(), "a turn leaves what was done");
    static const QImage picture = [] {
        QImage image(48, 32, QImage::Format_RGB32);
        for (int y = 0; y < image.height(); ++y) {
            for (int x = 0; x < image.width(); ++x)
                image.setPixel(x, y, qRgb(x * 5, y * 7, (x * y) & 0xff));
        }
        return image;
    }();
    const auto treated = treatedImage(picture, *read, {24, 24});
    must(treated ? !treated->isNull() : !treated.error().detail.isEmpty(), "pixels or a reason");
}

} // namespace wainscot::fuzz
