// What the school's printers are set to: their paper, their margins, and how true they print. Each
// has settings of its own; until something is set for it, those for any printer hold.
#pragma once

#include <QString>
#include <QStringList>

#include <array>

#include "app/jobs/export_job.h"
#include "app/ui/session/printers.h"

namespace wainscot::ui {

// What the 100 mm ruler of a printed first sheet may measure; beyond these it was misread.
inline constexpr Mm kLeastRuler{90};
inline constexpr Mm kMostRuler{110};

enum class SheetSetting { Paper, Overlap, Margin };

// The one the sheets are for; empty = any.
[[nodiscard]] QString keptPrinter();
// What is set from now on is set for this one. Its paper, and a margin it can keep, come from what
// is known of it, unless somebody set them before.
void choosePrinter(const PrinterFacts& facts);
void chooseAnyPrinter();

// Of the printer chosen. What makes no sense in the settings counts as not set.
[[nodiscard]] QString keptPaper(); // "A4", or "Letter" where inches are used
[[nodiscard]] Mm keptOverlap();
[[nodiscard]] Mm keptMargin();
[[nodiscard]] Mm keptRuler();
[[nodiscard]] Mm keptUnreachable(); // 0 = not known
void keep(SheetSetting setting, const QString& value); // "A4", "10"
void keepRuler(Mm measured);
[[nodiscard]] bool keptLeaveOutWhite(); // for every printer
void keepLeaveOutWhite(bool leaveOut);

[[nodiscard]] SheetWishes keptSheets();
// What was shown for one printer, once the system's dialog has turned to another: as set for that
// one, or as shown where nothing is.
[[nodiscard]] SheetWishes sheetsAfterTurning(
    const SheetWishes& shown, const QString& from, const QString& to);

inline const QStringList kSheetPapers{QStringLiteral("A4"),
    QStringLiteral("A3"),
    QStringLiteral("Letter"),
    QStringLiteral("Legal"),
    QStringLiteral("Tabloid")};
inline constexpr std::array kSheetOverlapsMm{5, 10, 15, 20};
inline constexpr std::array kSheetMarginsMm{4, 5, 7, 10, 13, 18};

} // namespace wainscot::ui
