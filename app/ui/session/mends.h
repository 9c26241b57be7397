// What one press does about a finding, and how the button for it is called.
#pragma once

#include "core/base/finding.h"
#include "core/edit/edit.h"
#include "core/model/book.h"

namespace wainscot::ui {

enum class MendWay {
    Show, // somebody has to decide; it is shown where it hangs
    Write, // an adult's words, with the caret in them
    TakeOff,
    Place, // another place or size for the piece, of which the check says that it mends it
    Frame, // another part of the picture, likewise
    NextSmaller, // the second largest picture of the panel
    MakeRoom, // the others give way to it
    ArrangeAgain,
    Letters, // the display's instead of the piece's own
    Colours, // the display's instead of the piece's own, else those every display begins with
    LouderVoices, // children's words a step of the type scale larger
    QuieterVoices,
    AddTitle,
    AddCredits,
    AddDay,
    AddVoice, // words of the child it is about
    AllWords, // of a child, instead of a part of them
    HangAtEyes, // the panel, on its wall
};

struct Mend {
    MendWay way = MendWay::Show;
    QString does; // "Move it inside the edge": the button, and what undo would undo
};

// Null = none of that number.
[[nodiscard]] const Panel* panelNumbered(const Book& book, const Display* display, int number);
// Why the finding stays as it is; empty = nobody said so.
[[nodiscard]] QString reasonIn(const Panel& panel, const Finding& finding);
// Keeps the reason with the panel; an empty one takes it back.
[[nodiscard]] Edit leaveFinding(
    const Book& book, const Panel& panel, const Finding& finding, const QString& why);
// For every finding: what cannot be mended by the program is shown.
[[nodiscard]] Mend mendFor(const Book& book, const Finding& finding);
// The adult's text a Write mend opens: the finding's piece, else the panel's longest.
[[nodiscard]] PieceId pieceToWrite(const Book& book, PanelId panel, const Finding& finding);
// The child's words that would come onto the display: starred before others, then as they were
// told. Null = none.
[[nodiscard]] const Quote* wordsToAdd(
    const Book& book, ExperienceId experience, const Finding& finding);

} // namespace wainscot::ui
