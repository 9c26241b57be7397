// What an adult saw, as edits made from the book. `label` is what undo would undo.
#pragma once

#include "core/edit/edit.h"
#include "core/model/book.h"

#include <vector>

namespace wainscot {

// By time; those without one come last, then by id.
[[nodiscard]] std::vector<const Observation*> observationsOf(
    const Book& book, ExperienceId experience);

// New when it has no id yet. Empty for empty words beside no picture.
[[nodiscard]] Edit keepObservationEdit(
    const Book& book, Observation seen, const QString& label, int gesture = 0);
[[nodiscard]] Edit removeObservationEdit(
    const Book& book, ObservationId seen, const QString& label);

} // namespace wainscot
