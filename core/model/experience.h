// What happened, what was asked, what was said, seen and made.
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

struct Prompt {
    QString key; // stable, lower case: "notice"
    QString text; // as asked: "What do you notice?"
    friend bool operator==(const Prompt&, const Prompt&) = default;
};

struct PromptSet {
    PromptSetId id;
    QString name;
    QString language; // BCP 47, "en"
    std::vector<Prompt> prompts;
    [[nodiscard]] const Prompt* find(const QString& key) const; // any letter case
    friend bool operator==(const PromptSet&, const PromptSet&) = default;
};

// notice / think / wonder
[[nodiscard]] PromptSet defaultPromptSet();

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
    friend bool operator==(const Experience&, const Experience&) = default;
};

enum class Telling { Said, Wrote, Drew, Signed, Pointed };
enum class Dictation {
    Exact, // the child's words as spoken, errors kept
    WorkedUp, // made into sentences together with the child
};

struct Quote {
    QuoteId id;
    ExperienceId experience;
    ChildId child;
    QString prompt; // key in the experience's prompt set; empty = told in a meeting
    MeetingId meeting; // invalid = not in a meeting
    QString words; // verbatim; never corrected
    QString language; // of the words, BCP 47; empty = the experience's
    Telling telling = Telling::Said;
    Dictation dictation = Dictation::Exact;
    bool readBack = false;
    QString scribe;
    std::optional<QDate> on;
    int stars = 0; // 0..3
    friend bool operator==(const Quote&, const Quote&) = default;
};

struct Observation {
    ObservationId id;
    ExperienceId experience;
    QString words;
    std::vector<ChildId> children;
    std::optional<QDateTime> at;
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
    friend bool operator==(const Picture&, const Picture&) = default;
};

struct Group {
    GroupId id;
    ExperienceId experience;
    QString label;
    std::vector<QuoteId> quotes;
    friend bool operator==(const Group&, const Group&) = default;
};

struct Meeting {
    MeetingId id;
    ExperienceId experience;
    QDate on;
    QString notes;
    std::vector<GroupId> groups;
    friend bool operator==(const Meeting&, const Meeting&) = default;
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

// Names used in CSV and JSON: "said", "wrote", "drew", "signed", "pointed"; "photo", "work".
[[nodiscard]] QString nameOf(Telling telling);
[[nodiscard]] std::optional<Telling> tellingFromName(const QString& name);
[[nodiscard]] QString nameOf(PictureKind kind);
[[nodiscard]] std::optional<PictureKind> pictureKindFromName(const QString& name);

// "title", "context", "interpretation", "next_steps", "invitation", "words", "caption"
[[nodiscard]] QString nameOf(Translated what);
[[nodiscard]] std::optional<Translated> translatedFromName(const QString& name);

} // namespace wainscot
