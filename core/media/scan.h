// A pile of drawings that a copier made one PDF of: a picture for each page.
//
// The pages are drawn by a program of its own (app/scan, `wainscot-scan`), not in this process. The
// library behind it (PDFium) is large, reads a language meant for anything, and cannot be told to
// stop; in a process of its own it can be ended at any moment, has limits of memory and time, and
// when a page brings it down, only that page is lost and named.
#pragma once

#include "core/base/result.h"

#include <QByteArrayView>
#include <QString>

#include <atomic>
#include <functional>

namespace wainscot {

inline constexpr int kMostScanPages = 500; // in one file; a class's drawings of a whole term

struct ScannedPage {
    int number = 1;
    int of = 1;
    QString name; // "pile, page 3"
    // Its picture, a JPEG at about 250 dpi that holds nothing but pixels: no title, author or date
    // of the scan. The file is gone after the call. Empty when there is none, and then `why` is one
    // sentence: the page is blank, too large, or cannot be read.
    QString path;
    QString why;
};

struct ScanOptions {
    int mostPages = kMostScanPages;
    const std::atomic<bool>* cancel = nullptr;
    int secondsForAPage = 90; // without any sign of it
};

[[nodiscard]] bool isPdf(QByteArrayView firstBytes); // 1024 are enough; a picture never is
[[nodiscard]] bool isPdfFile(const QString& path);

// Calls `take` for every page, in order, in this thread, while the next one is being drawn. The
// same file gives the same bytes for every page, so taking it twice adds nothing. A blank page
// (back sides, mostly) has no picture, and its `why` says so: nobody could be named on it; see
// pdf/blank_page.h for how little counts as a mark. Answers how many pages there are.
// Errors: NotFound, CannotRead, Refused (locked, no pages, more than options.mostPages), Damaged,
// Cancelled, Internal (the reader is not there), and what `take` answers, which ends it. `subject`
// is the file name, `detail` ends the sentence "FILE ...".
Result<int> readScan(const QString& path,
    const std::function<Result<>(const ScannedPage&)>& take,
    const ScanOptions& options = {});

} // namespace wainscot
