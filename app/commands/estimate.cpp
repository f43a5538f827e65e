#include "app/commands/commands.h"

#include "app/commands/files.h"
#include "core/csv/catalogue_csv.h"
#include "core/exchange/estimates_csv.h"

namespace app {

int estimate(const LogOptions &options, const Moment &moment, Console &console)
{
    const std::optional<core::Edit> read = readAlone(options.log, options.people, moment, console);
    if (!read)
        return exitProblems;
    const std::vector<core::Lifter> &lifters = read->lifters.after;
    const std::vector<core::LoggedSession> &sessions = read->sessions.after;
    const QDate today = moment.asOf.value_or(core::lastDayOf(sessions));
    const auto estimates = core::estimateAll(lifters, core::builtInCatalogue(), sessions, today);
    writeOutput(options.out, core::writeEstimates(lifters, estimates), console);
    return exitFine;
}

} // namespace app
