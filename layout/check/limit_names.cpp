// What limits are called where somebody changes them.
#include "layout/check/limits.h"

#include <QtGlobal>

#include <algorithm>
#include <array>

namespace wainscot::check {

namespace {

using enum Limit;

struct Named {
    Limit limit;
    const char* name;
};

constexpr std::array kNames{
    Named{TitleAngle, QT_TRANSLATE_NOOP("Says", "Title, least height")},
    Named{VoiceAngle, QT_TRANSLATE_NOOP("Says", "Children's words, least height")},
    Named{BodyAngle, QT_TRANSLATE_NOOP("Says", "Adult's text, least height")},
    Named{SmallAngle, QT_TRANSLATE_NOOP("Says", "Captions and names, least height")},
    Named{XHeight, QT_TRANSLATE_NOOP("Says", "Small letters, least height")},
    Named{MountedAngle, QT_TRANSLATE_NOOP("Says", "Letters where the panel hangs, least height")},
    Named{OffScale, QT_TRANSLATE_NOOP("Says", "Sizes off the type scale")},
    Named{Steps, QT_TRANSLATE_NOOP("Says", "Sizes of type on a panel")},
    Named{Louder, QT_TRANSLATE_NOOP("Says", "Children's words beside the adult's text")},
    Named{Faces, QT_TRANSLATE_NOOP("Says", "Faces of the two voices")},
    Named{TextContrast, QT_TRANSLATE_NOOP("Says", "Contrast of small print")},
    Named{RunningContrast, QT_TRANSLATE_NOOP("Says", "Contrast of running text")},
    Named{VoicesContrast, QT_TRANSLATE_NOOP("Says", "Children's colour beside the adult's")},
    Named{VoiceLine, QT_TRANSLATE_NOOP("Says", "A line of children's words")},
    Named{BodyLine, QT_TRANSLATE_NOOP("Says", "A line of the adult's text")},
    Named{SmallLine, QT_TRANSLATE_NOOP("Says", "A line of small print")},
    Named{LabelWords, QT_TRANSLATE_NOOP("Says", "Words in one text")},
    Named{SentenceWords, QT_TRANSLATE_NOOP("Says", "Words in a sentence")},
    Named{ContextWords, QT_TRANSLATE_NOOP("Says", "Words about what happened")},
    Named{InterpretationWords, QT_TRANSLATE_NOOP("Says", "Words of interpretation")},
    Named{NextStepWords, QT_TRANSLATE_NOOP("Says", "Words about the next step")},
    Named{CreditsWords, QT_TRANSLATE_NOOP("Says", "Words of the credits")},
    Named{WordBalance, QT_TRANSLATE_NOOP("Says", "The adult's words beside the children's")},
    Named{ReadingLevel, QT_TRANSLATE_NOOP("Says", "School grade of the adult's text")},
    Named{Outside, QT_TRANSLATE_NOOP("Says", "Over the edge of the paper")},
    Named{TrimEdge, QT_TRANSLATE_NOOP("Says", "Words from the edge")},
    Named{Margin, QT_TRANSLATE_NOOP("Says", "Margin of the panel")},
    Named{Overlap, QT_TRANSLATE_NOOP("Says", "One piece over another")},
    Named{PastCell, QT_TRANSLATE_NOOP("Says", "Words beyond their place")},
    Named{Grid, QT_TRANSLATE_NOOP("Says", "Off the grid")},
    Named{LeftEdges, QT_TRANSLATE_NOOP("Says", "Left edges on a panel")},
    Named{TintHugs, QT_TRANSLATE_NOOP("Says", "Ground beyond its words")},
    Named{TintShare, QT_TRANSLATE_NOOP("Says", "Share of tinted ground")},
    Named{White, QT_TRANSLATE_NOOP("Says", "Share of untouched paper")},
    Named{EntryMissing, QT_TRANSLATE_NOOP("Says", "Missing title")},
    Named{EntryRatio, QT_TRANSLATE_NOOP("Says", "Title beside children's words")},
    Named{EntryClear, QT_TRANSLATE_NOOP("Says", "Air under the title")},
    Named{PictureSharpness, QT_TRANSLATE_NOOP("Says", "Sharpness from one metre")},
    Named{PictureFloor, QT_TRANSLATE_NOOP("Says", "Sharpness from nearby")},
    Named{Dominant, QT_TRANSLATE_NOOP("Says", "Largest picture beside the next")},
    Named{WorkWhole, QT_TRANSLATE_NOOP("Says", "Share of a work that is shown")},
    Named{WorkShare, QT_TRANSLATE_NOOP("Says", "Share of the panel for its drawing")},
    Named{MatEven, QT_TRANSLATE_NOOP("Says", "Unevenness of a mat")},
    Named{MustStay, QT_TRANSLATE_NOOP("Says", "Air around a marked part")},
    Named{CaptionMissing, QT_TRANSLATE_NOOP("Says", "Missing caption")},
    Named{CaptionRepeated, QT_TRANSLATE_NOOP("Says", "The same caption again")},
    Named{CaptionLines, QT_TRANSLATE_NOOP("Says", "Lines of a caption")},
    Named{CaptionDistance, QT_TRANSLATE_NOOP("Says", "Caption from its picture")},
    Named{QuotesApart, QT_TRANSLATE_NOOP("Says", "Air between two answers")},
    Named{LastWord, QT_TRANSLATE_NOOP("Says", "Shortest last line")},
    Named{AddedHyphen, QT_TRANSLATE_NOOP("Says", "Hyphens in words")},
    Named{Ligature, QT_TRANSLATE_NOOP("Says", "Joined letters")},
    Named{NotVerbatim, QT_TRANSLATE_NOOP("Says", "Words that are not the child's")},
    Named{CreditsMissing, QT_TRANSLATE_NOOP("Says", "Missing credits")},
    Named{DateMissing, QT_TRANSLATE_NOOP("Says", "Missing day")},
    Named{NotCleared, QT_TRANSLATE_NOOP("Says", "Pieces without permission")},
    Named{NotNamed, QT_TRANSLATE_NOOP("Says", "Names without permission")},
    Named{VoiceMissing, QT_TRANSLATE_NOOP("Says", "Children not heard on it")},
    Named{SeamMarked, QT_TRANSLATE_NOOP("Says", "Marked parts cut by a seam")},
    Named{SeamWork, QT_TRANSLATE_NOOP("Says", "Works cut by a seam")},
    Named{SeamLines, QT_TRANSLATE_NOOP("Says", "Lines of text cut by a seam")},
};

} // namespace

const char* nameOf(Limit limit)
{
    const auto* const at = std::find_if(
        kNames.begin(), kNames.end(), [&](const Named& one) { return one.limit == limit; });
    return at != kNames.end() ? at->name : "";
}

} // namespace wainscot::check
