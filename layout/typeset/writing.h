// What a language and a script ask of a line: direction, marks of a quote, leading, places to
// break.
#pragma once

#include "layout/typeset/faces.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace wainscot {

enum class Direction { LeftToRight, RightToLeft };

// By the first letter that has a direction; the language decides where there is none.
[[nodiscard]] Direction directionOf(const QString& text, const QString& language);

// A stretch of text in one script. Characters that belong to every script (spaces, points, digits)
// go with the letters before them, at the beginning with the letters after.
struct ScriptStretch {
    int start = 0;
    int length = 0;
    QChar::Script script = QChar::Script_Latin;
};
[[nodiscard]] std::vector<ScriptStretch> scriptStretches(const QString& text);

// The marks around a child's words. They belong to the drawing, not to the stored words. French
// closing marks keep a narrow no-break space.
struct QuoteMarks {
    QString opening;
    QString closing;
};
[[nodiscard]] QuoteMarks quoteMarks(const QString& language);

// Baseline to baseline against the Latin leading of the same role, by the script of most letters.
[[nodiscard]] double leadFactor(const QString& text, TypeRole role);

// The smallest stretch of text that stays on one line, with the spaces that follow it. Chinese and
// Japanese have one for nearly every character; the text's own spaces part the rest.
struct Unit {
    int start = 0;
    int length = 0; // without the spaces
    int spaces = 0; // breakable spaces after it
    bool insidePhrase = false; // a break after it would part a phrase written without spaces
    bool noBreak = false; // a break after it is never allowed
};
[[nodiscard]] std::vector<Unit> lineUnits(const QString& text);

// Lines of a text as typed, without empty ones; each is a paragraph.
[[nodiscard]] QStringList paragraphsOf(const QString& text);

// Where an adult's text quotes a child: from an opening mark to its closing one, marks included.
struct TextRange {
    int start = 0;
    int length = 0;
    friend bool operator==(TextRange, TextRange) = default;
};
[[nodiscard]] std::vector<TextRange> quotedWords(const QString& text);

} // namespace wainscot
