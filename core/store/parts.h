// What stands inside a value as rows of its own: the prompts of a set with their wordings, what
// happened in a meeting. Private to core/store.
#pragma once

#include "core/store/rows.h"

#include <vector>

namespace wainscot {

class Database;

// A table of such rows. Its first column is the owner's id.
template <class T> struct PartForm {
    const char* table;
    const char* columns; // separated by ", "
    const char* order; // in which the parts are put into their owners
    // Puts the rest of a row into its owner; false when it has no place there.
    bool (*add)(RowReader& row, T& owner);
};

// For each kind that has parts, its tables; those that need others come after them.
std::vector<PartForm<PromptSet>> partForms(const PromptSet* kind);
std::vector<PartForm<Meeting>> partForms(const Meeting* kind);
template <class T> std::vector<PartForm<T>> partForms(const T* /*kind*/)
{
    return {};
}

// Makes the rows of a value's parts what the value says. REQUIRES: inside a transaction
Result<> writeParts(Database& database, const PromptSet& set);
Result<> writeParts(Database& database, const Meeting& meeting);
template <class T> Result<> writeParts(Database& /*database*/, const T& /*value*/)
{
    return Done{};
}

} // namespace wainscot
