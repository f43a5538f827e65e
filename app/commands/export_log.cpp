#include "app/commands/commands.h"

#include "app/commands/files.h"
#include "app/commands/roster_copy.h"

namespace app {

int exportLog(const ExportOptions &options, Console &console)
{
    const RosterCopy copy(options.roster);
    const core::RosterFile roster = copy.open();
    writeOutput(options.log,
        core::writeLog(roster.lifters(), roster.variations(), roster.sessions()), console);
    return exitFine;
}

} // namespace app
