#include "app/commands/commands.h"

#include "app/commands/files.h"
#include "app/commands/roster_copy.h"

namespace app {

int exportLog(const ExportOptions &options, const Moment &moment, Console &console)
{
    const RosterCopy copy(options.roster, moment);
    const core::RosterFile roster = copy.open();
    writeOutput(options.log,
        core::writeLog(roster.lifters(), roster.variations(), roster.sessions()), console);
    return exitFine;
}

} // namespace app
