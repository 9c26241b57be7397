// Commands whose names are settled and whose work is not there yet: they say so.
#include "app/cli/command.h"

#include <array>

namespace wainscot::cli {

namespace {

constexpr std::array kListen{
    OptionSpec{"experience", "TITLE", "whose words", true},
    OptionSpec{"groups", "N", "how many groups at most"},
};
constexpr std::array kKeep{
    OptionSpec{"from", "DATE", "first day", true},
    OptionSpec{"to", "DATE", "last day", true},
    OptionSpec{"pdf", "OUT.pdf", "file to write", true},
};

template <const char* Name> Result<Answer> notYet(const Arguments&, const JobRun&)
{
    return Error{ErrorCode::WrongUse,
        QStringLiteral("This version of Wainscot cannot %1 yet, and has done nothing")
            .arg(QString::fromLatin1(Name)),
        {}};
}

constexpr char kListenName[] = "listen";
constexpr char kKeepName[] = "keep";

} // namespace

std::vector<Command> laterCommands()
{
    const QStringList book{QStringLiteral("BOOK")};
    return {
        {kListenName,
            "BOOK --experience TITLE [--groups N]",
            "Shows who is not yet heard and which words belong together (not there yet).",
            kListen,
            book,
            notYet<kListenName>},
        {kKeepName,
            "BOOK --from DATE --to DATE --pdf OUT.pdf",
            "Makes a record of a term (not there yet).",
            kKeep,
            book,
            notYet<kKeepName>},
    };
}

} // namespace wainscot::cli
