// The command line as a function: words in, exit code out.
#pragma once

#include "app/jobs/job_run.h"

#include <QStringList>
#include <QTextStream>

namespace wainscot::cli {

// `words` without the program's name. With --json exactly one JSON object goes to `out`, whatever
// happens; sentences and progress go to `err`.
int runProgram(const QStringList& words,
    QTextStream& out,
    QTextStream& err,
    const std::atomic<bool>* cancel = nullptr);

} // namespace wainscot::cli
