// The term as it was: for every experience from when to when it went, its meetings and its walls.
#pragma once

#include "core/model/book.h"

#include <QDate>

#include <vector>

namespace wainscot {

struct TermStrand {
    ExperienceId experience;
    QString title;
    int answers = 0;
    QDate first; // of its own day, answers, meetings, pictures; invalid = none of them has a day
    QDate last;
    std::vector<QDate> meetings; // by day
    std::vector<DisplayId> walls; // with at least one panel
};

// By first day; what has no day comes last.
[[nodiscard]] std::vector<TermStrand> strandsOf(const Book& book);

} // namespace wainscot
