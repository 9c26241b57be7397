#include "layout/check/limits.h"

#include <algorithm>
#include <array>
#include <cassert>

namespace wainscot::check {

namespace {

constexpr auto kNureg = "NUREG-0700 rev. 2, 1.3.1-4 (preferred 20 arcminutes, minimum 16)";
constexpr auto kStyle = "Wainscot's panel style";
constexpr auto kSmithsonian = "Smithsonian Guidelines for Accessible Exhibition Design, part B III";
constexpr auto kAcuity = "one pixel per arcminute (acuity from memory): ppi = 87.3 / metres";
constexpr auto kPrinters = "largest unprintable edge on plain paper in printers' manuals: 6.7 mm";
constexpr auto kFamilies = "what the families allowed, as recorded in this book";
constexpr auto kPractice = "common practice, no source";

using enum Severity;
using enum Limit;

constexpr std::array kRows{
    LimitRow{TitleAngle, "type.title", Look, 20, "arcmin", kNureg},
    LimitRow{VoiceAngle, "type.voice", Look, 20, "arcmin", kNureg},
    LimitRow{BodyAngle, "type.body", Look, 20, "arcmin", kNureg},
    LimitRow{SmallAngle, "type.caption", Look, 16, "arcmin", kNureg},
    LimitRow{OffScale, "type.scale", Look, 0.5, "%", kStyle},
    LimitRow{Steps, "type.steps", Note, 4, "sizes", kStyle},
    LimitRow{Louder, "type.loud", Look, 1.25, "ratio", kStyle},
    LimitRow{Faces, "type.faces", Look, 0, "", kStyle},
    LimitRow{TextContrast, "contrast.text", Look, 4.5, "ratio", "W3C WCAG 2, 1.4.3 (AA)"},
    LimitRow{RunningContrast, "contrast.running", Look, 7, "ratio", "W3C WCAG 2, 1.4.6 (AAA)"},
    LimitRow{VoicesContrast, "contrast.voices", Note, 1.2, "ratio", kStyle},
    LimitRow{VoiceLine, "line.voice", Note, 36, "characters", kStyle},
    LimitRow{BodyLine, "line.body", Look, 55, "characters", kSmithsonian},
    LimitRow{SmallLine, "line.caption", Note, 52, "characters", kStyle},
    LimitRow{LabelWords, "words.label", Look, 75, "words", kSmithsonian},
    LimitRow{SentenceWords, "words.sentence", Note, 25, "words", kSmithsonian},
    LimitRow{ContextWords, "words.context", Note, 30, "words", kStyle},
    LimitRow{InterpretationWords, "words.interpretation", Note, 40, "words", kStyle},
    LimitRow{NextStepWords, "words.next_step", Note, 20, "words", kStyle},
    LimitRow{CreditsWords, "words.credits", Note, 20, "words", kStyle},
    LimitRow{WordBalance, "words.balance", Look, 1.35, "ratio", kStyle},
    LimitRow{Outside, "place.outside", Stop, 0, "mm", "the edge of the paper"},
    LimitRow{TrimEdge, "place.edge", Look, 7, "mm", kPrinters},
    LimitRow{Margin, "place.margin", Note, 12, "mm", kStyle},
    LimitRow{Overlap, "place.overlap", Look, 0.2, "mm", kStyle},
    LimitRow{PastCell, "place.past_cell", Look, 0.5, "mm", kStyle},
    LimitRow{Grid, "place.grid", Note, 0.2, "mm", kStyle},
    LimitRow{LeftEdges, "place.left_edges", Note, 6, "edges", kStyle},
    LimitRow{TintHugs, "place.tint", Note, 1, "rows", kStyle},
    LimitRow{TintShare, "ink.tint", Note, 8, "%", kStyle},
    LimitRow{White, "ink.white", Note, 50, "%", kStyle},
    LimitRow{EntryMissing, "entry.missing", Look, 1, "titles", kPractice},
    LimitRow{EntryRatio, "entry.ratio", Look, 1.56, "ratio", kStyle},
    LimitRow{EntryClear, "entry.clear", Note, 1.5, "rows", kStyle},
    LimitRow{PictureSharpness, "picture.sharpness", Look, 87.3, "ppi", kAcuity},
    LimitRow{PictureFloor, "picture.floor", Note, 100, "ppi", kPractice},
    LimitRow{Dominant, "picture.dominant", Note, 2, "ratio", kStyle},
    LimitRow{WorkWhole, "picture.work_whole", Look, 1, "ratio", kStyle},
    LimitRow{WorkShare, "picture.work_share", Note, 20, "%", kStyle},
    LimitRow{MatEven, "picture.mat", Note, 0.2, "mm", kStyle},
    LimitRow{MustStay, "picture.must_stay", Look, 3, "%", kStyle},
    LimitRow{CaptionMissing, "caption.missing", Note, 1, "captions", kPractice},
    LimitRow{CaptionLines, "caption.lines", Note, 2, "lines", kStyle},
    LimitRow{CaptionDistance, "caption.distance", Note, 0.95, "cap heights", kStyle},
    LimitRow{QuotesApart, "quote.apart", Note, 2, "ratio", kStyle},
    LimitRow{LastWord, "quote.last_word", Note, 8, "letters", kStyle},
    LimitRow{AddedHyphen, "quote.hyphen", Look, 0, "hyphens", kStyle},
    LimitRow{Ligature, "quote.ligature", Note, 0, "ligatures", kStyle},
    LimitRow{CreditsMissing, "credits.missing", Look, 1, "credits", kPractice},
    LimitRow{DateMissing, "credits.date", Note, 1, "dates", kPractice},
    LimitRow{NotCleared, "permission.piece", Stop, 0, "pieces", kFamilies},
    LimitRow{NotNamed, "permission.name", Note, 0, "names", kFamilies},
    LimitRow{VoiceMissing, "voices.child", Note, 1, "quotes", kPractice},
};

} // namespace

const LimitRow& limitOf(Limit limit)
{
    const auto* const at = std::find_if(
        kRows.begin(), kRows.end(), [&](const LimitRow& row) { return row.limit == limit; });
    assert(at != kRows.end());
    return *at;
}

std::span<const LimitRow> allLimits()
{
    return kRows;
}

} // namespace wainscot::check
