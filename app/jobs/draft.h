// The pieces of each panel before they have a place: which, in which order, in which groups.
#pragma once

#include "app/jobs/selection.h"

#include <vector>

namespace wainscot {

struct PanelDraft {
    std::vector<Piece> pieces; // reading order; without ids and panel
};

// Days on a wall: title and context on the first panel, on each one a leading picture, then for
// each moment label, picture and quote; credits, the adult's interpretation and next steps on the
// last. The moments are shared out evenly for a start (spread.h decides).
[[nodiscard]] std::vector<PanelDraft> draftDays(
    const Material& material, const Selection& selection, int panels);
// The class's ideas on one panel: for each group its name, a picture and its words, each followed
// by what was answered to it. `selection` says which words.
[[nodiscard]] PanelDraft draftIdeas(const Material& material, const Selection& selection);
// The way into a further panel: the days its words are of, the experience's title where all words
// of the display are of one.
[[nodiscard]] QString furtherTitle(
    const Material& material, const std::vector<const Quote*>& quotes, bool oneDay);
// Whether a template takes moments by days: the built-in one does, and a teacher's own.
[[nodiscard]] bool isOfDays(const QString& plan);

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

// Before and after: the first and the last day with a picture and words, the later one large. Empty
// where there are not two such days.
[[nodiscard]] PanelDraft draftBefore(const Material& material);
// Whether that is all there is: two days at least a week apart.
[[nodiscard]] bool isBeforeAndAfter(const Material& material);

// One child's questions over `panels` pages, each led by a picture of the child's own where there
// is one; with few questions also what the child said before. Empty where no child asked anything.
[[nodiscard]] std::vector<PanelDraft> draftQuestions(const Material& material, int panels);
// Whether all there is are the words of one child, most of them questions.
[[nodiscard]] bool isOneChildsQuestions(const Material& material);

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
