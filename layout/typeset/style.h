// The style of a panel in numbers: grid, type scale, pairings of faces, palettes.
// All sizes are cap heights in millimetres; a font's em follows from its own drawn H.
#pragma once

#include "core/base/geometry.h"
#include "core/base/quantity.h"
#include "core/model/display.h"

#include <QRgb>
#include <QString>

#include <optional>
#include <vector>

namespace wainscot {

// Two faces of different skeleton: children speak (and the title is set) in one, adults in the
// other.
struct Pairing {
    QString name;
    QString voiceFamily;
    QString adultFamily;
    QString use; // what it is for, one line
};

struct Palette {
    QString name;
    QRgb ink = 0; // title, context
    QRgb child = 0; // children's words
    QRgb adult = 0; // adult text, captions
    QRgb tint1 = 0; // ground of interpretations and mats
    QRgb tint2 = 0; // ground of next steps
    QRgb accent = 0; // marks, names, labels
};

[[nodiscard]] const std::vector<Pairing>& pairings(); // first = default
[[nodiscard]] const std::vector<Palette>& palettes();
[[nodiscard]] const Pairing& pairingByName(const QString& name); // the default for an unknown name
[[nodiscard]] const Palette& paletteByName(const QString& name);

// Cap height that subtends an angle: H = 2 D tan(angle / 2) (NUREG-0700 rev. 2, 1.3.1-4).
[[nodiscard]] Mm capHeightForAngle(Mm distance, double arcminutes);
[[nodiscard]] double arcminutes(Mm capHeight, Mm distance);

// Steps of the 5:4 type scale; body = 0. cap(k) = cap(0) * 1.25^k.
struct TypeScale {
    Mm body; // 20 arcminutes at the reading distance
    int captionStep = -2;
    int voiceStep = 2;
    int titleStep = 5;
    [[nodiscard]] Mm cap(int step) const;
    [[nodiscard]] Mm caption() const { return cap(captionStep); }
    [[nodiscard]] Mm voice() const { return cap(voiceStep); }
    [[nodiscard]] Mm title() const { return cap(titleStep); }
};

// Twelve columns, one gutter both ways, rows of one body line.
struct Grid {
    SizeMm panel;
    Mm margin; // S/18, S = the short side
    Mm gutter; // S/42
    Mm column;
    Mm rowUnit; // rows * rowUnit - gutter fills the height between the margins exactly
    int columns = 12;
    int rows = 0;

    [[nodiscard]] Mm x(int column) const;
    [[nodiscard]] Mm y(int row) const;
    [[nodiscard]] Mm width(int columns) const;
    [[nodiscard]] Mm height(int rows) const;
    [[nodiscard]] RectMm cell(int column, int row, int columns, int rows) const;
};

// Between which pieces a hairline stands.
enum class Parting {
    Groups, // groups one above the other, and before an invitation
    Invitation, // only before an invitation
};

struct PanelStyle {
    Grid grid;
    TypeScale scale;
    Mm readingDistance;
    Pairing pairing;
    Palette palette;
    int titleLines = 3; // at most
    Parting parting = Parting::Groups;
    bool thread = false; // a line through all meetings, with knots
};

// What a plan asks of the style, by name: steps of voice and title, pairing and palette that suit
// it, and its furniture. Unknown and a teacher's own: as "days".
struct PlanStyle {
    int voiceStep = 2;
    int titleStep = 5;
    int titleLines = 3;
    Parting parting = Parting::Groups;
    bool thread = false;
    QString pairing;
    QString palette;
};
[[nodiscard]] PlanStyle planStyle(const QString& plan);

// Body = 20 arcminutes at the reading distance; grid by panel-size rules; voice and title at the
// given steps.
[[nodiscard]] PanelStyle panelStyle(const Display& display, int voiceStep = 2, int titleStep = 5);

} // namespace wainscot
