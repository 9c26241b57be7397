// The table of commands.
#include "app/cli/command.h"

#include <algorithm>

namespace wainscot::cli {

const std::vector<Command>& commands()
{
    static const std::vector<Command> all = [] {
        std::vector<Command> table;
        for (auto part : {bookCommands(),
                 gatherCommands(),
                 arrangeCommands(),
                 checkCommands(),
                 exportCommands(),
                 hangCommands(),
                 templateCommands(),
                 packCommands(),
                 eraseCommands(),
                 laterCommands()})
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

} // namespace wainscot::cli
