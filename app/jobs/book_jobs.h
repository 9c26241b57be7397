// Making, verifying and sampling a book.
#pragma once

#include "app/jobs/job_run.h"
#include "core/model/book.h"

#include <QString>
#include <QStringList>

namespace wainscot {

struct NewBookJob {
    QString folder; // must not exist, or be empty
    QString title;
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
