// A child's words, verbatim, with how they were given; and why there are none.
#pragma once

#include "core/model/ids.h"

#include <QDate>
#include <QString>

#include <optional>
#include <vector>

namespace wainscot {

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
    QString words; // verbatim; never corrected; may be empty beside a drawing
    QString language; // of the words, BCP 47; empty = the experience's
    Telling telling = Telling::Said;
    Dictation dictation = Dictation::Exact;
    bool readBack = false;
    QString scribe;
    std::optional<QDate> on;
    int stars = 0; // 0..3
    QString firstWords; // as first said, when `words` were worked up with the child
    PictureId sheet; // the paper the child answered on
    PictureId drawing; // the answer itself, when it was drawn
    QuoteId repliesTo; // the idea it answers, by whomever; invalid = begins one
    std::vector<GoalId> goals; // what of the plan it shows
    friend bool operator==(const Quote&, const Quote&) = default;
};

// Why a child has no answer to a prompt, for now.
enum class WhyNoAnswer {
    Passes, // asked, did not want to; not the same as not asked
    Noted, // an adult's note says why
};

struct NoAnswer {
    NoAnswerId id;
    ExperienceId experience;
    ChildId child;
    QString prompt; // key; empty = all prompts of the experience
    WhyNoAnswer why = WhyNoAnswer::Passes;
    QString note;
    std::optional<QDate> on;
    QString by; // who asked or noted
    friend bool operator==(const NoAnswer&, const NoAnswer&) = default;
};

// Names used in CSV and JSON: "said", "wrote", "drew", "signed", "pointed"; "exact", "worked_up";
// "passes", "noted".
[[nodiscard]] QString nameOf(Telling telling);
[[nodiscard]] std::optional<Telling> tellingFromName(const QString& name);
[[nodiscard]] QString nameOf(Dictation dictation);
[[nodiscard]] std::optional<Dictation> dictationFromName(const QString& name);
[[nodiscard]] QString nameOf(WhyNoAnswer why);
[[nodiscard]] std::optional<WhyNoAnswer> whyNoAnswerFromName(const QString& name);

} // namespace wainscot
