// Going back to an earlier day, as one step that can be undone like any other.
#pragma once

#include "app/jobs/job_run.h"
#include "core/edit/edit.h"
#include "core/store/book_store.h"

#include <memory>
#include <vector>

namespace wainscot {

// What turns the book into what it was. What protects a child stays as it is today: permissions,
// who is in a picture, what of it is covered. A withdrawn permission does not come back so.
[[nodiscard]] Edit editBackTo(const Book& now, const Book& then, const QString& label);

// "Monday, 23 November 2026, 08:15: 14 children, 52 answers, 3 panels"
[[nodiscard]] QString inWords(const EarlierState& state);

struct EarlierStatesJob {
    QString folder;
    Result<QList<EarlierState>> run(const JobRun& run) const; // newest first
};

// The book as it was then. NotFound, Damaged.
struct ReadEarlierJob {
    QString folder;
    QString state; // its name
    Result<Book> run(const JobRun& run) const;
};

// An earlier day and what going back to it would make of the book: protected as today, so that a
// picture of it shows nothing that may not be seen now.
struct EarlierDay {
    EarlierState state;
    std::shared_ptr<const Book> book;
};

// Newest first; states that cannot be read are passed over. Cancelled.
struct EarlierDaysJob {
    QString folder; // of the book
    Result<std::vector<EarlierDay>> run(const Book& now, const JobRun& run) const;
};

// The panel that tells most of a book at one glance: the first of its newest wall; invalid where
// nothing hangs.
[[nodiscard]] PanelId tellingPanel(const Book& book);

// Answers with the state gone back to. NotFound when there is none of this name.
struct GoBackJob {
    QString folder;
    QString state; // its name
    Result<EarlierState> run(const JobRun& run) const;
};

} // namespace wainscot
