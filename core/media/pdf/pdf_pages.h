// Pages of a PDF as pictures, through Qt's PDF module (PDFium). Linked by the reader program of
// app/scan and by tests only; everything else asks core/media/scan.h, which says why.
#pragma once

#include "core/base/geometry.h"
#include "core/base/result.h"

#include <QByteArray>
#include <QSizeF>

#include <memory>
#include <optional>

namespace wainscot {

inline constexpr double kScanDpi = 250; // what a page is drawn at
// A larger page is drawn at fewer dots an inch, so that it has no more pixels than an A2 sheet at
// kScanDpi and no side longer than this ...
inline constexpr qint64 kMostScanPixels = 25'000'000;
inline constexpr int kLongestScanSide = 20'000;
// ... and is not drawn at all when fewer than these would be left (about 10 square metres).
inline constexpr double kLeastScanDpi = 40;

struct PageSize {
    SizePx pixels;
    double dpi = 0;
};
// What a page of that size in points is drawn at; nothing for a page too large. Sides of no or of
// negative length count as one point.
[[nodiscard]] std::optional<PageSize> pageSizeFor(QSizeF points);

class PdfPages {
public:
    PdfPages();
    PdfPages(const PdfPages&) = delete;
    PdfPages& operator=(const PdfPages&) = delete;
    ~PdfPages();

    // How many pages it has, 0 also. Errors: NotFound, CannotRead, Damaged (also when it is no
    // PDF), Refused (locked with a password)
    Result<int> open(const QString& path);

    // Nothing for a page that is too large or cannot be found.
    // REQUIRES: opened; 1 <= number <= the count of pages
    [[nodiscard]] std::optional<PageSize> sizeOf(int number) const;

    struct Page {
        bool blank = false; // then there is no picture
        QByteArray jpeg; // upright, on white, of nothing but pixels; grey where the page is
    };
    // Errors: Refused (too large), Damaged (it cannot be drawn)
    // REQUIRES: opened; 1 <= number <= the count of pages
    [[nodiscard]] Result<Page> page(int number);

private:
    struct Document;
    std::unique_ptr<Document> m_document;
};

} // namespace wainscot
