// Faces: which installed font draws which script in which voice, at which em, and its proportions
// as drawn. A font that is not there is reported, never replaced in silence.
#pragma once

#include "core/base/quantity.h"
#include "core/base/result.h"
#include "layout/typeset/style.h"

#include <QFont>
#include <QRawFont>
#include <QString>

#include <optional>

namespace wainscot {

enum class Voice { Child, Adult }; // children's words and titles / everything else
enum class Weight { Regular, Bold };
enum class Skeleton { Sans, Serif };
enum class TypeRole { Title, ChildsWords, Body, Caption };

// Proportions of a face in parts of its em, measured on glyph outlines (a font's own table of
// heights can be off by some percent).
struct FaceMetrics {
    double capHeight = 0; // of the drawn H
    double xHeight = 0; // of the drawn x
    double meanCharacter = 0; // letters by their frequency in English, space included
    double openingMark = 0; // advance of the mark that opens a quote
};

[[nodiscard]] bool isInstalled(const QString& family);
// Nothing when the family is not installed.
[[nodiscard]] std::optional<FaceMetrics> faceMetrics(const QString& family, Weight weight);
[[nodiscard]] Skeleton skeletonOf(const QString& family);

// Em whose H is `capHeight` high, in sixteenths of a point, rounded to a whole unit.
[[nodiscard]] int emUnits(Mm capHeight, double capRatio);
[[nodiscard]] constexpr Mm unitsToMm(double units)
{
    return toMm(Pt(units / 16.0));
}
[[nodiscard]] constexpr double mmToUnits(Mm length)
{
    return toPt(length).value() * 16.0;
}

// A font and em for one script: the pairing's own face for Latin, Greek and Cyrillic, a companion
// for every other script.
struct FaceChoice {
    QString family;
    QString spare; // draws what the family lacks (digits in an Arabic face); installed with it
    Weight weight = Weight::Regular;
    int emUnits = 0;
    bool ligaturesOff = false; // a new reader must find every letter
    friend bool operator==(const FaceChoice&, const FaceChoice&) = default;
};

struct FaceQuery {
    Voice voice = Voice::Adult;
    Weight weight = Weight::Regular;
    TypeRole role = TypeRole::Body;
    Mm capHeight; // of the Latin face in this role
    QString language; // tells the forms of Chinese, Japanese and Korean apart
};

// REQUIRES: script of QChar::script
[[nodiscard]] FaceChoice chooseFace(
    const Pairing& pairing, const FaceQuery& query, QChar::Script script);

// A font for QTextLayout: pixel size = units, no hinting, design metrics. `tracking` in units after
// every letter; scripts whose letters join take none.
[[nodiscard]] QFont layoutFont(const FaceChoice& face, double tracking = 0);

// The font itself at a size in units. NotFound names the family that is not installed.
[[nodiscard]] Result<QRawFont> rawFont(const QString& family, Weight weight, int units);

} // namespace wainscot
