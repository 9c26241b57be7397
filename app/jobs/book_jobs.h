// Making, verifying, repairing and sampling a book.
#pragma once

#include "app/jobs/job_run.h"
#include "core/model/book.h"

#include <QString>
#include <QStringList>

#include <optional>

namespace wainscot {

struct NewBookJob {
    QString folder; // must not exist, or be empty
    QString title;
    QString language = QStringLiteral("en"); // of its walls, BCP 47
    Result<> run(const JobRun& run) const;
};

struct VerifyOutcome {
    int pictures = 0; // looked at
    QStringList problems; // one sentence each
    [[nodiscard]] bool ok() const { return problems.isEmpty(); }
};

// The database's own check, and the SHA-256 of every picture against its name.
struct VerifyJob {
    QString folder;
    Result<VerifyOutcome> run(const JobRun& run) const;
};

// How long a book is kept: the last day, and what it asks for when that has passed.
struct Retention {
    std::optional<QDate> until; // nothing = no day was set
    bool isOver = false;
};
[[nodiscard]] Retention retentionOf(const std::optional<QDate>& until, QDate today);
// "This book was to be kept until ...": one sentence, ready to read.
[[nodiscard]] QString inWords(const Retention& retention);

struct RetentionJob {
    QString folder;
    bool sets = false; // else it only tells
    std::optional<QDate> until = {}; // to set
    Result<Retention> run(const JobRun& run) const;
};

struct RepairOutcome {
    int children = 0; // all that the new book holds
    int quotes = 0;
    int pictures = 0;
    int panels = 0;
    QStringList problems; // what could not be saved, or not as it was
};

// All that can be saved of a damaged book in a new one; see core/store/repair.h.
struct RepairJob {
    QString folder;
    QString newFolder; // must not exist, or be empty
    Result<RepairOutcome> run(const JobRun& run) const;
};

struct SampleOutcome {
    QString book; // folder of the finished book
    QStringList files; // the CSV files and the folder of pictures it was gathered from
    int children = 0;
    int quotes = 0;
    int pictures = 0;
};

// The invented sample class: its lists and pictures in FOLDER, and a book in FOLDER/book gathered
// from them by the same jobs a teacher would use. What the same wishes have made before stays,
// with whatever was done to the book since; WrongUse where another book is in the way.
struct SampleJob {
    QString folder;
    unsigned seed = 1;
    int children = 0; // 0 = the class as it is; otherwise this many
    int photos = 0; // 0 = as many as the class has
    bool small = false; // a tenth of the camera's size each way, for tests
    Result<SampleOutcome> run(const JobRun& run) const;
};

} // namespace wainscot
