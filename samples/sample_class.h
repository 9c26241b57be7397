// An invented class whose puddle went away: lists, words and pictures as a teacher would have them.
// Nobody in it exists. Everything follows from a seed.
#pragma once

#include <QDate>
#include <QString>

#include <atomic>
#include <functional>
#include <optional>
#include <vector>

#include "core/base/geometry.h"
#include "core/base/result.h"

namespace wainscot::samples {

struct Wish {
    unsigned seed = 1; // another one draws other pictures and invents another class; 1 or more
    std::optional<int> children; // nothing = the class of fourteen with its own words
    std::optional<int> photos; // nothing = all of the class's pictures
    bool small = false; // a tenth of the camera's size each way, for tests
};

// What stands beside the CSV files in a teacher's head.
struct SampleExperience {
    QString title; // of the experience
    QDate on;
    QString place;
    QString materials;
    QString sense;
    QString context;
    QString interpretation;
    QString nextSteps;
    QString credits;
    QString invitation; // to the families
    QString quotesFile; // full paths
    QString picturesFolder; // with its photos.csv
};

struct StarredWords {
    QString experience;
    QString child;
    QString prompt;
    int stars = 0;
};

// A child who tells in another language than the adults write.
struct TellsIn {
    QString child;
    QString language; // BCP 47
};

struct PictureNote {
    QString file; // without its folder
    int stars = 0;
    std::optional<RectFraction> mustStay; // what no crop may cut
};

struct MeetingNote {
    QString experience;
    QDate on;
    QString notes;
    bool holdsQuotes = false; // what was told that day was told in this meeting
};

// An adult's wording in another language: of one of the experience's own texts ("title", "context",
// "invitation"), of a child's words, or of a picture's caption.
struct TranslatedText {
    QString experience;
    QString what;
    QString child; // what = "words", with the prompt
    QString prompt;
    QString file; // what = "caption"
    QString language; // BCP 47
    QString text;
};

struct SampleClass {
    QString title;
    QString childrenFile;
    std::vector<SampleExperience>
        experiences; // the puddle, one idea over three meetings, a drawing
    std::vector<StarredWords> stars;
    std::vector<TellsIn> languages;
    std::vector<PictureNote> pictures;
    std::vector<MeetingNote> meetings; // of one experience its quotes of that day were told in it
    std::vector<TranslatedText> translations;
};

using OnProgress = std::function<void(const QString& doing, int done, int of)>;

// Writes the class into a folder: children.csv, quotes.csv, pictures/ with photos.csv, and the same
// for the drawing in drawing/. What the same wish made before stays: lists with whatever was
// changed in them since, pictures unless they were damaged. Refused when a file of that name is
// there that is not the sample's, CannotWrite, Cancelled (between two pictures; the next call goes
// on from there).
Result<SampleClass> writeSample(const QString& folder,
    const Wish& wish,
    const OnProgress& onProgress = {},
    const std::atomic<bool>* cancel = nullptr);

} // namespace wainscot::samples
