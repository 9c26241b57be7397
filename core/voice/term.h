// A term at a glance: in which weeks each child was heard and by which voice, and how often a child
// was quoted, pictured and on a wall. The children stand in the class's order.
#pragma once

#include "core/model/book.h"

#include <QDate>

#include <optional>
#include <vector>

namespace wainscot {

struct Week {
    QDate monday;
    [[nodiscard]] int number() const { return monday.weekNumber(); } // ISO 8601
    friend bool operator==(const Week&, const Week&) = default;
};

struct ChildInTerm {
    ChildId child;
    // By week: the kind of voice most often used in it (the first kind of Telling among equals);
    // nothing when the child was not heard.
    std::vector<std::optional<Telling>> heard;
    int quoted = 0; // quotes of the child that stand on panels, each once
    int pictured = 0; // pictures that show the child or the child's work
    int walls = 0; // displays with the child's own words or work
    std::optional<QDate> lastHeard;
    [[nodiscard]] int weeksHeard() const;
    friend bool operator==(const ChildInTerm&, const ChildInTerm&) = default;
};

struct Term {
    std::vector<Week> weeks;
    std::vector<ChildInTerm> children;
    [[nodiscard]] const ChildInTerm* of(ChildId child) const;
};

// When a quote was said: its own day, else its meeting's, else its experience's.
[[nodiscard]] std::optional<QDate> dayOf(const Book& book, const Quote& quote);

// The weeks that hold `from` to `to`, both included. What has no day counts in no week.
[[nodiscard]] Term termOf(const Book& book, QDate from, QDate to);

// The school term a day lies in: from the first of September, January or May (common practice, no
// source) to the day.
[[nodiscard]] QDate termBegin(QDate day);

// Up to `most` children, in the class's order, who have been heard in the fewest weeks; nobody when
// all were heard in equally many. A gentle reminder: there are many reasons for it.
[[nodiscard]] std::vector<ChildId> heardLeast(const Term& term, std::size_t most);

} // namespace wainscot
