// Prompt sets changed and chosen.
#pragma once

#include "core/edit/edit.h"

namespace wainscot::ui {

// The experience asks these questions from now on; a set that is not in the book yet comes into it.
[[nodiscard]] Edit useSet(const Book& book, const Experience& experience, PromptSet set);

[[nodiscard]] Edit putSet(const Book& book, const PromptSet& set, const QString& label);

// Answers of an experience to questions that a set does not ask: they stay, and are not shown as
// answers to it.
[[nodiscard]] int answersOutside(const Book& book, ExperienceId experience, const PromptSet& set);

// Whether some experience asks a set's questions.
[[nodiscard]] bool isUsed(const Book& book, PromptSetId set);

} // namespace wainscot::ui
