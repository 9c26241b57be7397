// Every limit the check measures against, in one table: value, unit, how grave, who set it.
#pragma once

#include "core/base/finding.h"

#include <map>
#include <span>

namespace wainscot::check {

enum class Limit {
    // Type: cap heights from the drawn outline of H, as angles or ratios
    TitleAngle,
    VoiceAngle,
    BodyAngle,
    SmallAngle,
    XHeight,
    MountedAngle, // as seen from the eyes of those in front of it
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
    ReadingLevel,
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
    CaptionRepeated,
    CaptionLines,
    CaptionDistance,
    // Quotes
    QuotesApart,
    LastWord,
    AddedHyphen,
    Ligature,
    NotVerbatim,
    // What belongs to every display
    CreditsMissing,
    DateMissing,
    NotCleared,
    NotNamed,
    VoiceMissing,
    // What seams between sheets of paper cut
    SeamMarked,
    SeamWork,
    SeamLines,
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
// In words: "Captions and names, least height".
[[nodiscard]] const char* nameOf(Limit limit);
[[nodiscard]] const LimitRow* limitCalled(const QString& rule); // null = none of that name
// Whether it is a number somebody may set: not what is there or not, nor what families said.
[[nodiscard]] bool isMeasure(const LimitRow& row);

// The limits of the table, save those somebody set otherwise.
class Limits {
public:
    static constexpr double kGreatest = 10000;
    [[nodiscard]] double of(Limit limit) const;
    [[nodiscard]] bool isOwn(Limit limit) const { return m_own.count(limit) > 0; }
    // 0 to kGreatest; the table's own value takes a change back. False for what is no measure.
    [[nodiscard]] bool set(Limit limit, double value);
    [[nodiscard]] const std::map<Limit, double>& own() const { return m_own; }
    friend bool operator==(const Limits&, const Limits&) = default;

private:
    std::map<Limit, double> m_own;
};

} // namespace wainscot::check
