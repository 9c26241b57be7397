// Every limit the check measures against, in one table: value, unit, how grave, who set it.
#pragma once

#include "core/base/finding.h"

#include <span>

namespace wainscot::check {

enum class Limit {
    // Type: cap heights from the drawn outline of H, as angles or ratios
    TitleAngle,
    VoiceAngle,
    BodyAngle,
    SmallAngle,
    OffScale,
    Steps,
    Louder,
    Faces,
    // Contrast
    TextContrast,
    RunningContrast,
    VoicesContrast,
    // Lines and words
    VoiceLine,
    BodyLine,
    SmallLine,
    LabelWords,
    SentenceWords,
    ContextWords,
    InterpretationWords,
    NextStepWords,
    CreditsWords,
    WordBalance,
    // Places
    Outside,
    TrimEdge,
    Margin,
    Overlap,
    PastCell,
    Grid,
    LeftEdges,
    TintHugs,
    TintShare,
    White,
    // The way in
    EntryMissing,
    EntryRatio,
    EntryClear,
    // Pictures
    PictureSharpness,
    PictureFloor,
    Dominant,
    WorkWhole,
    WorkShare,
    MatEven,
    MustStay,
    CaptionMissing,
    CaptionLines,
    CaptionDistance,
    // Quotes
    QuotesApart,
    LastWord,
    AddedHyphen,
    Ligature,
    // What belongs to every display
    CreditsMissing,
    DateMissing,
    NotCleared,
    NotNamed,
    VoiceMissing,
};

struct LimitRow {
    Limit limit;
    const char* rule; // stable name for programs
    Severity severity;
    double value;
    const char* unit; // "mm", "arcmin", "ppi", "ratio", "characters", "words", "%", or none
    const char* source;
};

[[nodiscard]] const LimitRow& limitOf(Limit limit);
[[nodiscard]] std::span<const LimitRow> allLimits();

} // namespace wainscot::check
