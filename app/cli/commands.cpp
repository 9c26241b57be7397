// The table of commands.
#include "app/cli/command.h"
#include "app/jobs/made_files.h"

#include <algorithm>

namespace wainscot::cli {

const std::vector<Command>& commands()
{
    static const std::vector<Command> all = [] {
        std::vector<Command> table;
        for (auto part : {bookCommands(),
                 gatherCommands(),
                 sheetsCommands(),
                 listenCommands(),
                 arrangeCommands(),
                 checkCommands(),
                 exportCommands(),
                 hangCommands(),
                 templateCommands(),
                 keepCommands(),
                 packCommands(),
                 dataCommands(),
                 eraseCommands(),
                 withdrawnCommands(),
                 aboutCommands(),
                 retentionCommands(),
                 rescueCommands()})
            table.insert(table.end(), part.begin(), part.end());
        return table;
    }();
    return all;
}

const Command* commandCalled(const QString& name)
{
    const auto at = std::find_if(commands().begin(), commands().end(), [&](const Command& command) {
        return name == QLatin1String(command.name);
    });
    return at == commands().end() ? nullptr : &*at;
}

void remember(const QString& book, const MadeFile& made, Answer& answer)
{
    if (!rememberMade(book, made))
        answer.notes << QStringLiteral(
            "Nothing can be written in the book's folder, so it does not "
            "remember this file.");
}

} // namespace wainscot::cli
