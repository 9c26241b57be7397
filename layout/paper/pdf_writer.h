// Panels as a PDF to print and to keep: exact boxes, real text, tagged structure, each picture
// once. The same input gives the same bytes.
#pragma once

#include "core/base/result.h"
#include "core/media/bake.h"
#include "core/permit/cleared.h"
#include "layout/typeset/style.h"

#include <QDateTime>
#include <QString>

#include <atomic>
#include <functional>
#include <span>

namespace wainscot {

// What goes on paper: only what the permission rules have let through.
struct PaperPanel {
    ClearedPanel panel;
    PanelStyle style;
};

struct PaperOptions {
    Mm bleed{0}; // 0..25 mm: colour at the panel's edge goes on beyond it
    bool cropMarks = false; // in a white margin around the bleed
    DotsPerInch maxResolution{300}; // of a picture in its place; pictures are never enlarged
    QString title; // empty = the first panel's
    QString language; // BCP 47; empty = the first panel's
    QDateTime created; // written into the file; invalid = no date
    // The display's data goes along as an attachment, and the file is PDF/A-3u instead of 2u. Only
    // for writePdf; needs `created`.
    bool withData = false;
    int workers = 2; // threads that bake pictures, 1..16
};

// Delivers the pixels of a picture.
class PictureSource {
public:
    PictureSource() = default;
    PictureSource(const PictureSource&) = delete;
    PictureSource& operator=(const PictureSource&) = delete;
    virtual ~PictureSource() = default;
    // The visible part, at most `largest` pixels each way. REQUIRES: may be called from several
    // threads at a time.
    [[nodiscard]] virtual Result<BakedJpeg> bake(const ClearedPicture& picture, SizePx largest) = 0;
};

struct PaperWatch {
    std::function<void(int done, int of)> onProgress; // pictures; in the caller's thread
    const std::atomic<bool>* cancel = nullptr;
    [[nodiscard]] bool cancelled() const { return cancel != nullptr && cancel->load(); }
};

struct PaperReport {
    int pages = 0;
    int pictures = 0; // stored in the file
    int passedThrough = 0; // of these, with the original's own compressed data
    qint64 bytes = 0;
    bool missingLetters = false; // a box or nothing stands for some letter or emoji
};

// One page per panel. `path` holds the whole new file or what it held before, never a part.
//
// Errors: WrongUse (no panels, bleed or page size out of range, data without a date), CannotWrite
// (subject = path), Cancelled, what the source says about a picture (subject = the picture),
// Internal.
Result<PaperReport> writePdf(const QString& path,
    std::span<const PaperPanel> panels,
    PictureSource& pictures,
    const PaperOptions& options,
    const PaperWatch& watch = {});

} // namespace wainscot
