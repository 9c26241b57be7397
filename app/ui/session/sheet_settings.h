// What the school's printer is set to: its paper, its margin, and how true it prints.
#pragma once

#include <QString>

#include "app/jobs/export_job.h"

namespace wainscot::ui {

// What the 100 mm ruler of a printed first sheet may measure; beyond these it was misread.
inline constexpr Mm kLeastRuler{90};
inline constexpr Mm kMostRuler{110};

enum class SheetSetting { Paper, Overlap, Margin };

// What makes no sense in the settings counts as not set.
[[nodiscard]] QString keptPaper(); // "A4", or "Letter" where inches are used
[[nodiscard]] Mm keptOverlap();
[[nodiscard]] Mm keptMargin();
[[nodiscard]] Mm keptRuler();
void keep(SheetSetting setting, const QString& value); // "A4", "10"
void keepRuler(Mm measured);

[[nodiscard]] SheetWishes keptSheets();

} // namespace wainscot::ui
