// Compares books by what they hold, and shows a table's name where they differ.
#pragma once

#include "core/model/tables.h"

#include <gtest/gtest.h>

namespace wainscot {

inline ::testing::AssertionResult sameBook(const Book& a, const Book& b)
{
    if (!(a.info == b.info))
        return ::testing::AssertionFailure() << "the title or language differs";
    std::vector<bool> same;
    const auto compare = [&](const auto& table) {
        using T = typename std::decay_t<decltype(table)>::ValueType;
        same.push_back(table.rows() == tableOf<T>(b).rows());
    };
    forEachTable(a, compare);
    for (std::size_t i = 0; i < same.size(); ++i) {
        if (!same[i])
            return ::testing::AssertionFailure() << "table " << i << " of forEachTable differs";
    }
    return ::testing::AssertionSuccess();
}

} // namespace wainscot
