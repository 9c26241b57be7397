// What goes on one wall for one audience: displays, their panels, and the pieces on them.
#pragma once

#include "core/base/geometry.h"
#include "core/model/ids.h"
#include "core/model/left_finding.h"
#include "core/model/permission.h"

#include <QString>

#include <vector>

#include <optional>

namespace wainscot {

struct Display {
    DisplayId id;
    ExperienceId experience;
    QString name;
    Audience audience = Audience::Classroom;
    SizeMm panelSize{Mm(841), Mm(594)};
    Mm readingDistance{1500};
    QString pairing = QStringLiteral("Schoolroom"); // names of layout/typeset/style.h
    QString palette = QStringLiteral("Wet Slate");
    QString plan; // name of a template, built in or the book's own; empty = chosen by content
    QString language = QStringLiteral("en");
    int voiceStep = 0; // of the type scale, for children's words; 0 = the plan's own
    friend bool operator==(const Display&, const Display&) = default;
};

struct Panel {
    PanelId id;
    DisplayId display;
    int number = 1; // 1-based place in the display
    bool locked = false; // nothing on it is touched when the display is arranged
    std::vector<GoalId> goals{}; // what of the plan it shows
    std::vector<LeftFinding> left{}; // findings that stay as they are, and why
    friend bool operator==(const Panel&, const Panel&) = default;
};

enum class PieceKind {
    Title,
    Question,
    Context,
    Label, // day, date or place above a group
    Photo,
    Work,
    Quote,
    Interpretation,
    NextStep,
    Invitation,
    Credits,
};

inline constexpr double kMostFrameZoom = 8;

// In a caption: here go the children who are in the picture, in the form permitted at that moment.
inline constexpr QLatin1String kNamesHere("[names]");

// What part of a picture shows in its frame: the point to keep in view and how near one looks.
// zoom 1 = as much as the frame's shape allows.
struct Framing {
    PointFraction focus;
    double zoom = 1; // 1..kMostFrameZoom
    friend bool operator==(const Framing&, const Framing&) = default;
};

// One thing on a panel. A quote's words and a picture's pixels stay where they were gathered; the
// piece only points at them.
struct Piece {
    PieceId id;
    PanelId panel;
    PieceKind kind = PieceKind::Quote;
    QuoteId quote; // kind Quote
    PictureId picture; // kind Photo or Work
    QString heading; // adult panels: "What we make of it"
    QString text; // adult's words; for a picture its caption on this panel
    // Of `text`; empty = the display's. Of a quote: the language it is shown in, if that is not the
    // child's own; then its translation shows.
    QString language;
    QString secondLanguage; // a picture's caption is set in this language too; empty = no
    int group = 0; // pieces with the same number > 0 stand together, in `order`
    int order = 0; // reading order on the panel
    bool dominant = false;
    RectMm cell; // the room it takes, on the panel; empty = not placed yet
    RectMm picturePlace; // the picture inside the cell, without its caption
    bool pinned = false;
    Framing framing;
    // Of a quote: what is shown of its words, with the traces of core/model/verbatim.h; empty =
    // all.
    QString shownWords;
    QString pairing; // of this piece alone; empty = the display's
    QString palette;
    int size = 0; // the teacher's wish: -2 much smaller .. 2 much bigger; 0 = none
    int together = 0; // pieces of a display with the same number > 0 are kept in one block
    bool startsPanel = false; // a new panel begins with it
    friend bool operator==(const Piece&, const Piece&) = default;
};

// The visible part of a picture in a frame of a given shape (width : height), by focus and zoom.
// The result always lies inside the picture.
[[nodiscard]] RectFraction visiblePart(SizePx picture, double frameAspect, const Framing& framing);

// "title", "question", "context", "label", "photo", "work", "quote", ...
[[nodiscard]] QString nameOf(PieceKind kind);
[[nodiscard]] std::optional<PieceKind> pieceKindFromName(const QString& name);
[[nodiscard]] inline bool isPicture(PieceKind kind)
{
    return kind == PieceKind::Photo || kind == PieceKind::Work;
}

} // namespace wainscot
