// What happened, what was seen and made.
#pragma once

#include "core/base/geometry.h"
#include "core/model/ids.h"
#include "core/model/treatment.h"

#include <QDate>
#include <QDateTime>
#include <QString>

#include <cstdint>
#include <optional>
#include <vector>

namespace wainscot {

struct Experience {
    ExperienceId id;
    QString title;
    std::optional<QDate> on;
    QString place;
    QString materials;
    QString sense;
    QString goals;
    QString context; // the adult's opening words, for the panel
    QString interpretation; // "What we make of it"
    QString nextSteps; // "Next"
    QString invitation; // what families are asked to write or draw
    QString credits; // room, dates, how the words were taken down, who wrote
    QString language; // of the adult's text, BCP 47
    PromptSetId promptSet;
    ExperienceId follows; // the one whose next steps it came from; invalid = begins by itself
    friend bool operator==(const Experience&, const Experience&) = default;
};

// An adult's note of a moment.
struct Observation {
    ObservationId id;
    ExperienceId experience;
    QString words;
    std::vector<ChildId> children;
    std::optional<QDateTime> at;
    PictureId picture{};
    friend bool operator==(const Observation&, const Observation&) = default;
};

enum class PictureKind { Photo, Work };

// Who can be recognised in a picture. Until somebody has looked, it is cleared for no audience.
struct People {
    bool lookedAt = false;
    std::vector<ChildId> children; // in a photo: who is seen; on a work sample: who made it
    friend bool operator==(const People&, const People&) = default;
};

// When a camera says it was taken: wall clock of the place, and the offset if the camera knew it.
struct CaptureTime {
    QDateTime local; // Qt::LocalTime without conversion; only date and time of day count
    std::optional<int> offsetMinutes; // from UTC
    friend bool operator==(const CaptureTime&, const CaptureTime&) = default;
};

// What a small copy of a picture tells: for finding pictures that are nearly equal, and which of
// them came out best. Measured once by core/media/likeness.h.
struct PictureLook {
    std::uint64_t hash = 0; // perceptual; pictures are alike when few bits differ
    int sharpness = 0; // variance of the Laplacian; compares pictures of one scene only
    int lightness = 0; // mean, 0..255
    int dark = 0; // lost in black, in thousandths of the area
    int bright = 0; // lost in white, in thousandths
    friend bool operator==(const PictureLook&, const PictureLook&) = default;
};

// A photo of the experience or of something a child made: an immutable original named by its hash.
struct Picture {
    PictureId id;
    ExperienceId experience;
    PictureKind kind = PictureKind::Photo;
    QString sha256; // of the original's bytes, 64 lower-case hex digits
    QString format; // "jpeg", "png", "webp", "tiff", "heic"
    QString fileName; // as it was gathered
    SizePx size; // after orientation and straightening
    int orientation = 1; // EXIF 1..8, what turns the stored pixels upright
    std::optional<CaptureTime> captured;
    QString caption;
    People people;
    QString by; // who took it, for the credits
    std::optional<RectFraction> mustStay; // the part no crop may cut, of the treated picture
    int stars = 0;
    Treatment treatment;
    std::optional<PictureLook> look; // nothing: gathered before pictures were looked at so
    DisplayId display; // valid = a photo of this display as it really hung (wall_photo.h)
    std::optional<QDate> hungOn; // it hung so on that day
    bool panelsLegible = true; // of it: what the panels show can be read or recognised
    friend bool operator==(const Picture&, const Picture&) = default;
};

// Which text of an experience a translation stands for.
enum class Translated { Title, Context, Interpretation, NextSteps, Invitation, Words, Caption };

// An adult's wording of a text in another language. It never replaces what it stands for.
struct Translation {
    TranslationId id;
    ExperienceId experience;
    Translated what = Translated::Title;
    QuoteId quote; // what = Words
    PictureId picture; // what = Caption
    QString language; // BCP 47
    QString text;
    friend bool operator==(const Translation&, const Translation&) = default;
};

// Names used in CSV and JSON: "photo", "work".
[[nodiscard]] QString nameOf(PictureKind kind);
[[nodiscard]] std::optional<PictureKind> pictureKindFromName(const QString& name);

// "title", "context", "interpretation", "next_steps", "invitation", "words", "caption"
[[nodiscard]] QString nameOf(Translated what);
[[nodiscard]] std::optional<Translated> translatedFromName(const QString& name);

} // namespace wainscot
