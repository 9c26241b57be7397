// What is asked of an arrangement, looked at before anything is arranged.
#pragma once

#include "app/jobs/arrange_job.h"

#include <optional>

namespace wainscot {

constexpr int kMostPanels = 20;

// What cannot be asked for at all.
[[nodiscard]] std::optional<Error> faultIn(const ArrangeJob& job);
[[nodiscard]] std::optional<Error> unknownPlan(const Book& book, const QString& plan);

// The display that is known by this name, or a new one, as it is wanted; without its look.
[[nodiscard]] Display displayFor(
    const ArrangeJob& job, const Book& book, const Display* known, const Experience& experience);
// The named template of the book, unless one of the program's own has that name.
[[nodiscard]] const PanelTemplate* ownTemplate(const Book& book, const QString& plan);
// What was wished, else what the display has; a new one takes its template's.
void setLook(const ArrangeJob& job, const PanelTemplate* own, Display& display, bool isNew);

} // namespace wainscot
