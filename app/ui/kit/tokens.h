// Colours and measures of the window. Everything that is drawn in it asks here.
#pragma once

#include <QColor>
#include <QFont>
#include <QPalette>

namespace wainscot::ui {

// One set of colours. The panel itself is never recoloured: paper stays white.
struct Tokens {
    QColor window; // rail, sill, drawer
    QColor wall; // behind the panel
    QColor card; // notes, every second row
    QColor field; // text entry, tables
    QColor slip; // a child's words; the plate on the rail
    QColor ink; // text
    QColor quiet; // second text
    QColor line; // hairlines, decoration only
    QColor edge; // borders of controls, open nails
    QColor accent; // the next step, focus, what is on, done
    QColor onAccent;
    QColor accentTint; // chosen
    QColor hand; // the piece in hand, and only that
    QColor stop;
    QColor stopTint;
    QColor look;
    QColor lookTint;
    QColor note;
    QColor noteTint;
    bool dark = false;
};

// On paper the piece in hand is always marked in this plum, whatever the window's colours.
inline constexpr QRgb kHandOnPaper = 0xff8a3f6b;
inline constexpr QRgb kFocusOnPaper = 0xff2c5a4c;

[[nodiscard]] Tokens lightTokens();
[[nodiscard]] Tokens darkTokens();
// Light or dark by the system's window colour. A system theme of very high contrast (text 15 : 1 or
// more, with a highlight that is not the style's `usualHighlight`) is kept as it is.
[[nodiscard]] Tokens tokensFor(const QPalette& system, const QColor& usualHighlight);
[[nodiscard]] QPalette paletteFor(const Tokens& tokens);

// The colours in use. Set once before the first widget is made.
[[nodiscard]] const Tokens& tokens();
void setTokens(const Tokens& chosen);

// Contrast ratio of two colours, 1..21 (WCAG 2.1, 1.4.3).
[[nodiscard]] double contrastRatio(const QColor& a, const QColor& b);

// Air in units of 4 px; grows by half when the system's text grows.
[[nodiscard]] int air(double units = 1);
// A length in px at 10 pt text; grows fully with the system's text.
[[nodiscard]] int scaled(double px);
// The system's font in a size relative to it.
[[nodiscard]] QFont interfaceFont(double relative = 1.0, QFont::Weight weight = QFont::Normal);
// The face for children's words.
[[nodiscard]] QFont wordsFont(double relative = 1.0, QFont::Weight weight = QFont::Normal);

} // namespace wainscot::ui
