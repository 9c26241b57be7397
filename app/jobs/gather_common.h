// What the gathering jobs share: the experience they gather for, reading dates and lists.
#pragma once

#include "app/jobs/gather.h"
#include "core/base/csv.h"
#include "core/edit/edit.h"

#include <QDate>
#include <QString>
#include <QStringList>

#include <optional>

namespace wainscot {

// The experience of that title with its prompts, made together with the edit when the book has
// none yet. A day that is given and not known yet is noted.
struct GatheredExperience {
    Experience experience;
    PromptSet prompts;
};
[[nodiscard]] GatheredExperience experienceFor(
    const Book& book, EditBuilder& edit, const QString& title, std::optional<QDate> on);

// "2026-11-03"; nothing for anything else.
[[nodiscard]] std::optional<QDate> dayFromText(const QString& text);

// A cell of names or audiences cut at any of the separators, without blanks.
[[nodiscard]] QStringList partsOf(const QString& cell, const QString& separators);

// WrongUse naming the file, the column that is missing and what is there instead.
[[nodiscard]] Error lacksColumn(const CsvTable& table, const QString& column);

// Rows that could not be read at all.
[[nodiscard]] std::vector<SkippedRow> unreadableRows(const CsvTable& table);
// "class.csv, row 4: there is no name."
[[nodiscard]] SkippedRow skippedRow(const CsvTable& table, const CsvRow& row, const QString& why);

// The same words, for finding a quote again: outer and repeated white space does not count.
[[nodiscard]] bool sameWords(const QString& a, const QString& b);

// A child by its name in the class list; a first name or shown name will do where it is the only
// one.
[[nodiscard]] const Child* childCalled(const Book& book, const QString& name);

} // namespace wainscot
