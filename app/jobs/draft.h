// The pieces of each panel before they have a place: which, in which order, in which groups.
#pragma once

#include "app/jobs/selection.h"

#include <vector>

namespace wainscot {

struct PanelDraft {
    std::vector<Piece> pieces; // reading order; without ids and panel
};

// Days on a wall: title, context, credits, leading picture, then for each moment label, picture and
// quote; the adult's interpretation and next steps on the last panel.
[[nodiscard]] std::vector<PanelDraft> draftDays(
    const Material& material, const Selection& selection, int panels);

// One drawing and its words on each panel, with the adult's note and how the words were told.
[[nodiscard]] std::vector<PanelDraft> draftDrawings(
    const Material& material, const std::vector<DrawingChoice>& drawings);

// One question, many voices: the question, at most one picture, quotes of different children who
// answered the same prompt (short ones first, beside the picture), how they were asked.
[[nodiscard]] PanelDraft draftVoices(const Material& material, int quotes);
// The prompt most children answered and how many did; a prompt told in meetings has no key.
struct AnsweredPrompt {
    QString key;
    int children = 0;
};
[[nodiscard]] AnsweredPrompt mostAnswered(const Material& material);

// An evening for families: everything in the experience's language and in `second`. Quotes are
// those somebody has translated, each in both languages, with a small picture between.
[[nodiscard]] PanelDraft draftEvening(const Material& material, const QString& second);
// The language most of the experience is translated into; empty = none has its title and a quote.
[[nodiscard]] QString secondLanguageOf(const Material& material);

// One idea over two to four meetings: for each its picture, day, an adult's sentence and quotes.
[[nodiscard]] PanelDraft draftThread(const Material& material);
// Meetings (or, where nobody held any, days) with something said in them, in the order of time.
struct ThreadMeeting {
    QDate on;
    QString notes;
    std::vector<const Quote*> quotes;
};
[[nodiscard]] std::vector<ThreadMeeting> threadMeetings(const Material& material);

// A sheet for the door: the question, one picture, two short quotes of different children, what
// comes next.
[[nodiscard]] PanelDraft draftDoor(const Material& material);

// The small print when the adult wrote none: the days and how the words were taken down, as far as
// the quotes on the panels say. "3-6 November. Words taken down as spoken by M. Adeyemi."
[[nodiscard]] QString creditsFor(const Material& material, const std::vector<const Quote*>& quotes);

// Whether a piece stands on a panel that arranging leaves alone.
[[nodiscard]] bool isOnLocked(const Piece& piece, const Book& book);

// Takes out what stands on the display already because it is pinned there or its panel is locked.
// What is only on a locked panel leaves the others their titles and large pictures.
void withoutPinned(
    std::vector<PanelDraft>& drafts, const std::vector<Piece>& pinned, const Book& book);

// Takes the group out that needs most words; false when at most one is left.
bool dropLongestMoment(PanelDraft& draft, const Book& book, std::vector<Piece>& dropped);
// Takes the longest quote out that does not stand alone in its group; false when at most `least`
// quotes are left.
bool dropLongestQuote(PanelDraft& draft, const Book& book, int least, std::vector<Piece>& dropped);

} // namespace wainscot
