#include "core/media/pdf/pdf_pages.h"

#include "core/media/jpeg_writer.h"
#include "core/media/pdf/blank_page.h"

#include <QPdfDocument>

#include <algorithm>
#include <cmath>

namespace wainscot {

namespace {

constexpr double kPointsPerInch = 72;
// Drawings have sharp edges of pure colour, and this is their second JPEG.
constexpr JpegStyle kScanStyle{92, true};

Error errorFor(QPdfDocument::Error error)
{
    using E = QPdfDocument::Error;
    switch (error) {
    case E::FileNotFound:
        return {ErrorCode::NotFound, {}, {}};
    case E::IncorrectPassword:
    case E::UnsupportedSecurityScheme:
        return {ErrorCode::Refused, {}, {}};
    case E::InvalidFileFormat:
        return {ErrorCode::Damaged, {}, {}};
    case E::None:
    case E::Unknown:
    case E::DataNotYetAvailable:
        break;
    }
    return {ErrorCode::CannotRead, {}, {}};
}

// PDFium leaves what a page does not paint transparent: paper is white.
void putOnWhite(QImage& page)
{
    for (int y = 0; y < page.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(page.scanLine(y));
        for (int x = 0; x < page.width(); ++x) {
            const int alpha = qAlpha(line[x]);
            if (alpha == 255)
                continue;
            const auto over = [alpha](int channel) {
                return (channel * alpha + 255 * (255 - alpha) + 127) / 255;
            };
            line[x] = qRgb(over(qRed(line[x])), over(qGreen(line[x])), over(qBlue(line[x])));
        }
    }
}

} // namespace

std::optional<PageSize> pageSizeFor(QSizeF points)
{
    const auto inches = [](double side) {
        return std::isfinite(side) ? std::max(side, 1.0) / kPointsPerInch : 1e9;
    };
    const double width = inches(points.width());
    const double height = inches(points.height());
    const double dpi = std::min({kScanDpi,
        std::sqrt(double(kMostScanPixels) / (width * height)),
        kLongestScanSide / std::max(width, height)});
    if (dpi < kLeastScanDpi)
        return std::nullopt;
    const auto pixels = [dpi](double side) { return std::max(1, int(side * dpi)); };
    return PageSize{{pixels(width), pixels(height)}, dpi};
}

struct PdfPages::Document {
    QPdfDocument pdf;
};

PdfPages::PdfPages()
    : m_document(std::make_unique<Document>())
{
}

PdfPages::~PdfPages() = default;

Result<int> PdfPages::open(const QString& path)
{
    const QPdfDocument::Error error = m_document->pdf.load(path);
    if (error != QPdfDocument::Error::None)
        return errorFor(error);
    return m_document->pdf.pageCount();
}

std::optional<PageSize> PdfPages::sizeOf(int number) const
{
    const QSizeF points = m_document->pdf.pagePointSize(number - 1);
    return points.isEmpty() ? std::nullopt : pageSizeFor(points);
}

Result<PdfPages::Page> PdfPages::page(int number)
{
    // A page that cannot be found has a size below nothing.
    if (m_document->pdf.pagePointSize(number - 1).isEmpty())
        return Error{ErrorCode::Damaged, {}, {}};
    const auto size = sizeOf(number);
    if (!size)
        return Error{ErrorCode::Refused, {}, {}};
    QPdfDocumentRenderOptions options;
    // What was drawn or written onto the page afterwards, on a tablet.
    options.setRenderFlags(QPdfDocumentRenderOptions::RenderFlag::Annotations);
    QImage drawn =
        m_document->pdf.render(number - 1, QSize(size->pixels.width, size->pixels.height), options);
    if (drawn.isNull())
        return Error{ErrorCode::Damaged, {}, {}};
    drawn.convertTo(QImage::Format_ARGB32);
    putOnWhite(drawn);
    drawn.reinterpretAsFormat(QImage::Format_RGB32);
    if (isBlankPage(drawn, size->dpi))
        return Page{true, {}};
    if (drawn.allGray())
        drawn.convertTo(QImage::Format_Grayscale8);
    auto jpeg = writeJpeg(*rowsOf(drawn, {0, 0, drawn.width(), drawn.height()}), kScanStyle);
    if (!jpeg)
        return jpeg.error();
    return Page{false, *std::move(jpeg)};
}

} // namespace wainscot
