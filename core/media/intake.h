// One look at a picture file before it may enter a book: what it is, how it lies, when it was
// taken, whether it is whole. The file itself is never changed.
#pragma once

#include "core/base/geometry.h"
#include "core/base/result.h"
#include "core/media/bake.h"
#include "core/model/experience.h"

#include <QString>
#include <QStringList>

#include <atomic>
#include <functional>
#include <optional>
#include <vector>

namespace wainscot {

class Proxies;

// Refused from the header, before any pixel is decoded.
inline constexpr qint64 kMostPixels = 150'000'000;
inline constexpr qint64 kMostFileBytes = 512LL * 1024 * 1024;

enum class ColourKind {
    Untagged, // no profile: taken as sRGB
    SRgb, // a profile that comes out as sRGB within two levels
    OtherRgb, // Display P3, Adobe RGB ...
    Grey,
    Cmyk,
};

struct PictureFacts {
    QString format; // "jpeg", "png", "webp", "tiff", "heic", by its bytes
    qint64 fileBytes = 0;
    QString sha256; // of the file's bytes, 64 lower-case hex digits
    SizePx storedSize; // as the pixels lie in the file
    SizePx size; // upright
    int orientation = 1; // EXIF 1..8, what turns the stored pixels upright; HEIC is always 1
    std::optional<CaptureTime> captured; // never the time of a later change to the file
    ColourKind colour = ColourKind::Untagged;
    std::optional<PictureLook> look; // as likeness.h measures it
    QStringList notes; // plain words: "the file is damaged; its lower part may be grey"
};

// Reads the whole file once. With `proxies`, also makes its thumbnail and proxy; their one decode
// then doubles as the check for damage.
// Errors: CannotRead (missing, no right to read), Refused (empty, no picture, another kind, too
// many pixels, a bomb), Damaged (nothing can be shown). `subject` is the file name, `detail` ends
// the sentence "FILE ..." in plain words.
Result<PictureFacts> inspectPicture(const QString& path, const Proxies* proxies = nullptr);

// What is needed to bake the picture whole.
[[nodiscard]] PictureRecipe wholePicture(const QString& path, const PictureFacts& facts);

enum class Verdict {
    Accepted,
    AcceptedWithNote,
    Refused,
    Scan, // a PDF: its pages are the pictures (scan.h); it was not looked at any further
};

struct FileVerdict {
    QString path;
    QString name; // the file's own name
    Verdict verdict = Verdict::Refused;
    QString scan; // name of the PDF it is a page of; "" = a file of its own
    PictureFacts facts; // meaningful when accepted
    Error error; // why it was refused
    QString says; // one plain sentence with the file's name; empty when accepted without note
};
// `name` is what it is called where that differs from the file's own name.
[[nodiscard]] FileVerdict verdictOn(
    const QString& path, const QString& name, const Proxies* proxies = nullptr);

struct FolderGathering {
    std::vector<FileVerdict> files; // of a folder in the order of names, whatever the workers did
    bool cancelled = false; // then files that were not reached are missing
};

struct FolderOptions {
    int workers = 2;
    const Proxies* proxies = nullptr;
    // Called from the workers, one call at a time.
    std::function<void(int done, int total)> progress;
    const std::atomic<bool>* cancel = nullptr;
};

// One bad file never stops the rest. A PDF is not opened.
[[nodiscard]] FolderGathering inspectFiles(
    const QStringList& paths, const FolderOptions& options = {});
// Looks at every file directly in the folder; files the camera or system keeps there (".csv",
// hidden files, "Thumbs.db") are passed over.
// Errors: NotFound, CannotRead (the folder itself)
Result<FolderGathering> inspectFolder(const QString& folder, const FolderOptions& options = {});

} // namespace wainscot
