// One command of the command line: what it takes, what it says about itself, what it does.
#pragma once

#include "app/cli/arguments.h"
#include "app/jobs/job_run.h"
#include "core/store/made_files.h"

#include <QJsonObject>
#include <QString>
#include <QStringList>

#include <span>
#include <vector>

namespace wainscot::cli {

// What a command answers: one JSON object for programs, lines for people, an exit code.
struct Answer {
    QJsonObject json;
    QStringList lines; // the result, on standard output when no JSON is asked for
    QStringList notes; // sentences on the way, on standard error
    int exit = 0;
};

inline constexpr int kDone = 0;
inline constexpr int kStopFinding = 1; // done or refused because of a stop finding
inline constexpr int kWrongUse = 2;
inline constexpr int kCannotReadOrWrite = 3;
inline constexpr int kInternal = 4;

// Has the book remember a file made of it; a note says when it cannot.
void remember(const QString& book, const MadeFile& made, Answer& answer);

using RunCommand = Result<Answer> (*)(const Arguments&, const JobRun&);

struct Command {
    const char* name;
    const char* usage; // after the name
    const char* about; // one sentence
    std::span<const OptionSpec> options;
    QStringList positionals;
    RunCommand run;
};

// All commands, in the order of the work.
[[nodiscard]] const std::vector<Command>& commands();
[[nodiscard]] const Command* commandCalled(const QString& name);

// What each file of this folder adds to the table.
[[nodiscard]] std::vector<Command> bookCommands(); // new, show, verify, sample
[[nodiscard]] std::vector<Command> gatherCommands();
[[nodiscard]] std::vector<Command> sheetsCommands();
[[nodiscard]] std::vector<Command> arrangeCommands();
[[nodiscard]] std::vector<Command> checkCommands();
[[nodiscard]] std::vector<Command> exportCommands();
[[nodiscard]] std::vector<Command> hangCommands();
[[nodiscard]] std::vector<Command> listenCommands();
[[nodiscard]] std::vector<Command> templateCommands();
[[nodiscard]] std::vector<Command> keepCommands();
[[nodiscard]] std::vector<Command> packCommands();
[[nodiscard]] std::vector<Command> dataCommands(); // data, from-data
[[nodiscard]] std::vector<Command> eraseCommands();
[[nodiscard]] std::vector<Command> rescueCommands(); // earlier, repair
[[nodiscard]] std::vector<Command> withdrawnCommands();
[[nodiscard]] std::vector<Command> aboutCommands(); // about
[[nodiscard]] std::vector<Command> retentionCommands(); // keep-until

} // namespace wainscot::cli
