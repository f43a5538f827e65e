#include "app/commands/commands.h"

#include "app/commands/files.h"
#include "core/csv/catalogue_csv.h"
#include "core/exchange/estimates_csv.h"

namespace app {

int estimate(const LogOptions &options, Console &console)
{
    const std::optional<core::Edit> read = readAlone(options.log, options.people, console);
    if (!read)
        return exitProblems;
    const std::vector<core::Lifter> &lifters = read->lifters.after;
    const std::vector<core::LoggedSession> &sessions = read->sessions.after;
    const auto estimates = core::estimateAll(
        lifters, core::builtInCatalogue(), sessions, core::lastDayOf(sessions));
    writeOutput(options.out, core::writeEstimates(lifters, estimates), console);
    return exitFine;
}

} // namespace app
