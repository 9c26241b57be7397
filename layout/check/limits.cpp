#include "layout/check/limits.h"

#include <QtGlobal>

#include <algorithm>
#include <array>
#include <cassert>

namespace wainscot::check {

namespace {

// What the window says in its own language; programs are given it as it stands here.
constexpr auto kNureg =
    QT_TRANSLATE_NOOP("Says", "NUREG-0700 rev. 2, 1.3.1-4 (preferred 20 arcminutes, minimum 16)");
constexpr auto kWcagAa = QT_TRANSLATE_NOOP("Says", "W3C WCAG 2, 1.4.3 (AA)");
constexpr auto kWcagAaa = QT_TRANSLATE_NOOP("Says", "W3C WCAG 2, 1.4.6 (AAA)");
constexpr auto kStyle = QT_TRANSLATE_NOOP("Says", "Wainscot's panel style");
constexpr auto kSmithsonian = QT_TRANSLATE_NOOP(
    "Says", "Smithsonian Guidelines for Accessible Exhibition Design, part B III");
constexpr auto kAcuity =
    QT_TRANSLATE_NOOP("Says", "one pixel per arcminute (acuity from memory): ppi = 87.3 / metres");
constexpr auto kPrinters = QT_TRANSLATE_NOOP(
    "Says", "largest unprintable edge on plain paper in printers' manuals: 6.7 mm");
constexpr auto kFamilies =
    QT_TRANSLATE_NOOP("Says", "what the families allowed, as recorded in this book");
constexpr auto kXHeights = QT_TRANSLATE_NOOP("Says",
    "0.7 of the 16 arcminutes NUREG-0700 asks of capitals; the 0.7 is common practice, no source");
constexpr auto kMounted = QT_TRANSLATE_NOOP(
    "Says", "NUREG-0700 rev. 2, 1.3.1-4 (minimum 16 arcminutes), from eyes at their height");
constexpr auto kFamilyWriting = QT_TRANSLATE_NOOP(
    "Says", "grade 6 to 8: a US school district's policy for writing to families");
constexpr auto kVerbatim =
    QT_TRANSLATE_NOOP("Says", "the words as they were taken down in this book");
constexpr auto kPractice = QT_TRANSLATE_NOOP("Says", "common practice, no source");

// Units.
constexpr auto kMm = QT_TRANSLATE_NOOP("Says", "mm");
constexpr auto kPercent = QT_TRANSLATE_NOOP("Says", "%");
constexpr auto kPpi = QT_TRANSLATE_NOOP("Says", "ppi");
constexpr auto kArcmin = QT_TRANSLATE_NOOP("Says", "arcmin");
constexpr auto kSizes = QT_TRANSLATE_NOOP("Says", "sizes");
constexpr auto kRatio = QT_TRANSLATE_NOOP("Says", "ratio");
constexpr auto kCharacters = QT_TRANSLATE_NOOP("Says", "characters");
constexpr auto kWords = QT_TRANSLATE_NOOP("Says", "words");
constexpr auto kEdges = QT_TRANSLATE_NOOP("Says", "edges");
constexpr auto kRowsHigh = QT_TRANSLATE_NOOP("Says", "rows");
constexpr auto kTitles = QT_TRANSLATE_NOOP("Says", "titles");
constexpr auto kCaptions = QT_TRANSLATE_NOOP("Says", "captions");
constexpr auto kLines = QT_TRANSLATE_NOOP("Says", "lines");
constexpr auto kCapHeights = QT_TRANSLATE_NOOP("Says", "cap heights");
constexpr auto kLetters = QT_TRANSLATE_NOOP("Says", "letters");
constexpr auto kHyphens = QT_TRANSLATE_NOOP("Says", "hyphens");
constexpr auto kLigatures = QT_TRANSLATE_NOOP("Says", "ligatures");
constexpr auto kCredits = QT_TRANSLATE_NOOP("Says", "credits");
constexpr auto kDates = QT_TRANSLATE_NOOP("Says", "dates");
constexpr auto kPieces = QT_TRANSLATE_NOOP("Says", "pieces");
constexpr auto kNames = QT_TRANSLATE_NOOP("Says", "names");
constexpr auto kQuotes = QT_TRANSLATE_NOOP("Says", "quotes");
constexpr auto kGrade = QT_TRANSLATE_NOOP("Says", "school grade");
constexpr auto kMarkedParts = QT_TRANSLATE_NOOP("Says", "marked parts");
constexpr auto kWorks = QT_TRANSLATE_NOOP("Says", "works");
constexpr auto kPaperEdge = QT_TRANSLATE_NOOP("Says", "the edge of the paper");

using enum Severity;
using enum Limit;

constexpr std::array kRows{
    LimitRow{TitleAngle, "type.title", Look, 20, kArcmin, kNureg},
    LimitRow{VoiceAngle, "type.voice", Look, 20, kArcmin, kNureg},
    LimitRow{BodyAngle, "type.body", Look, 20, kArcmin, kNureg},
    LimitRow{SmallAngle, "type.caption", Look, 16, kArcmin, kNureg},
    LimitRow{XHeight, "type.x_height", Look, 11, kArcmin, kXHeights},
    LimitRow{MountedAngle, "type.mounted", Look, 16, kArcmin, kMounted},
    LimitRow{OffScale, "type.scale", Look, 0.5, kPercent, kStyle},
    LimitRow{Steps, "type.steps", Note, 4, kSizes, kStyle},
    LimitRow{Louder, "type.loud", Look, 1.25, kRatio, kStyle},
    LimitRow{Faces, "type.faces", Look, 0, "", kStyle},
    LimitRow{TextContrast, "contrast.text", Look, 4.5, kRatio, kWcagAa},
    LimitRow{RunningContrast, "contrast.running", Look, 7, kRatio, kWcagAaa},
    LimitRow{VoicesContrast, "contrast.voices", Note, 1.2, kRatio, kStyle},
    LimitRow{VoiceLine, "line.voice", Note, 36, kCharacters, kStyle},
    LimitRow{BodyLine, "line.body", Look, 55, kCharacters, kSmithsonian},
    LimitRow{SmallLine, "line.caption", Note, 52, kCharacters, kStyle},
    LimitRow{LabelWords, "words.label", Look, 75, kWords, kSmithsonian},
    LimitRow{SentenceWords, "words.sentence", Note, 25, kWords, kSmithsonian},
    LimitRow{ContextWords, "words.context", Note, 30, kWords, kStyle},
    LimitRow{InterpretationWords, "words.interpretation", Note, 40, kWords, kStyle},
    LimitRow{NextStepWords, "words.next_step", Note, 20, kWords, kStyle},
    LimitRow{CreditsWords, "words.credits", Note, 20, kWords, kStyle},
    LimitRow{WordBalance, "words.balance", Look, 1.35, kRatio, kStyle},
    LimitRow{ReadingLevel, "words.level", Note, 8, kGrade, kFamilyWriting},
    LimitRow{Outside, "place.outside", Stop, 0, kMm, kPaperEdge},
    LimitRow{TrimEdge, "place.edge", Look, 7, kMm, kPrinters},
    LimitRow{Margin, "place.margin", Note, 12, kMm, kStyle},
    LimitRow{Overlap, "place.overlap", Look, 0.2, kMm, kStyle},
    LimitRow{PastCell, "place.past_cell", Look, 0.5, kMm, kStyle},
    LimitRow{Grid, "place.grid", Note, 0.2, kMm, kStyle},
    LimitRow{LeftEdges, "place.left_edges", Note, 6, kEdges, kStyle},
    LimitRow{TintHugs, "place.tint", Note, 1, kRowsHigh, kStyle},
    LimitRow{TintShare, "ink.tint", Note, 8, kPercent, kStyle},
    LimitRow{White, "ink.white", Note, 50, kPercent, kStyle},
    LimitRow{EntryMissing, "entry.missing", Look, 1, kTitles, kPractice},
    LimitRow{EntryRatio, "entry.ratio", Look, 1.56, kRatio, kStyle},
    LimitRow{EntryClear, "entry.clear", Note, 1.5, kRowsHigh, kStyle},
    LimitRow{PictureSharpness, "picture.sharpness", Look, 87.3, kPpi, kAcuity},
    LimitRow{PictureFloor, "picture.floor", Note, 100, kPpi, kPractice},
    LimitRow{Dominant, "picture.dominant", Note, 2, kRatio, kStyle},
    LimitRow{WorkWhole, "picture.work_whole", Look, 1, kRatio, kStyle},
    LimitRow{WorkShare, "picture.work_share", Note, 20, kPercent, kStyle},
    LimitRow{MatEven, "picture.mat", Note, 0.2, kMm, kStyle},
    LimitRow{MustStay, "picture.must_stay", Look, 3, kPercent, kStyle},
    LimitRow{CaptionMissing, "caption.missing", Note, 1, kCaptions, kPractice},
    LimitRow{CaptionRepeated, "caption.repeated", Look, 1, kCaptions, kPractice},
    LimitRow{CaptionLines, "caption.lines", Note, 2, kLines, kStyle},
    LimitRow{CaptionDistance, "caption.distance", Note, 0.95, kCapHeights, kStyle},
    LimitRow{QuotesApart, "quote.apart", Note, 2, kRatio, kStyle},
    LimitRow{LastWord, "quote.last_word", Note, 8, kLetters, kStyle},
    LimitRow{AddedHyphen, "quote.hyphen", Look, 0, kHyphens, kStyle},
    LimitRow{Ligature, "quote.ligature", Note, 0, kLigatures, kStyle},
    LimitRow{NotVerbatim, "quote.verbatim", Look, 0, kWords, kVerbatim},
    LimitRow{CreditsMissing, "credits.missing", Look, 1, kCredits, kPractice},
    LimitRow{DateMissing, "credits.date", Note, 1, kDates, kPractice},
    LimitRow{NotCleared, "permission.piece", Stop, 0, kPieces, kFamilies},
    LimitRow{NotNamed, "permission.name", Note, 0, kNames, kFamilies},
    LimitRow{VoiceMissing, "voices.child", Note, 1, kQuotes, kPractice},
    LimitRow{SeamMarked, "seam.marked", Look, 0, kMarkedParts, kPractice},
    LimitRow{SeamWork, "seam.work", Note, 0, kWorks, kPractice},
    LimitRow{SeamLines, "seam.lines", Note, 0, kLines, kPractice},
};

} // namespace

// What is there or not, and what families said, is no measure.
bool isMeasure(const LimitRow& row)
{
    constexpr std::array kNoMeasure{
        "", kTitles, kCredits, kDates, kPieces, kNames, kQuotes, kHyphens};
    const QLatin1String unit(row.unit);
    const bool isThere = std::any_of(kNoMeasure.begin(), kNoMeasure.end(), [&](const char* one) {
        return unit == QLatin1String(one);
    });
    return row.severity != Stop && !isThere && row.limit != CaptionMissing
        && row.limit != NotVerbatim;
}

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

const LimitRow* limitCalled(const QString& rule)
{
    const auto* const at = std::find_if(kRows.begin(), kRows.end(), [&](const LimitRow& row) {
        return rule == QLatin1String(row.rule);
    });
    return at != kRows.end() ? at : nullptr;
}

double Limits::of(Limit limit) const
{
    const auto at = m_own.find(limit);
    return at != m_own.end() ? at->second : limitOf(limit).value;
}

bool Limits::set(Limit limit, double value)
{
    if (!isMeasure(limitOf(limit)) || !(value >= 0 && value <= kGreatest))
        return false;
    if (value == limitOf(limit).value)
        m_own.erase(limit);
    else
        m_own[limit] = value;
    return true;
}

} // namespace wainscot::check
