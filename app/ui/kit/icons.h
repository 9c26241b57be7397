// The program's own icons: open lines with round ends and exactly one solid nail.
#pragma once

#include <QColor>
#include <QRectF>

class QPainter;

namespace wainscot::ui {

enum class Icon {
    None,
    Search,
    Pin,
    Photo,
    Words,
    Drawing,
    Note,
    Next,
    Previous,
    Undo,
    Down,
    Up,
    Stop,
    Look,
    Bigger,
    Smaller,
    Crop,
    TurnRight,
    TurnLeft,
    Straighten,
    EvenLight,
    Swap,
    TakeOff,
    Ways,
    StepBack,
    Why,
    Plus,
    Star,
    Sheet,
    Mend,
    Arrange,
    NotAllowed,
    AlignLeft,
    AlignCentre,
    AlignRight,
    AlignTop,
    AlignMiddle,
    AlignFoot,
    SpreadAcross,
    SpreadDown,
    Said,
    Wrote,
    Drew,
    Signed,
    Pointed,
    Passes,
    Minus,
    Split,
    Kept,
    Open,
    Agree,
    Disagree,
    ChangedMind,
    AnotherDay,
    Lamp,
};

// Drawn on a field of 20 x 20 into `place`, at any scale. Icons of direction mirror in a
// right-to-left interface.
void drawIcon(
    QPainter& painter, Icon icon, const QRectF& place, const QColor& line, const QColor& nail);

// The ring round what has the keyboard: 2 px accent with 1 px field colour inside.
void drawFocusRing(QPainter& painter, const QRectF& around);

} // namespace wainscot::ui
