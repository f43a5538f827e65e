#include "app/commands/estimate.h"

#include "app/commands/files.h"
#include "core/csv/catalogue_csv.h"
#include "core/exchange/estimates_csv.h"
#include "core/exchange/import_plan.h"

namespace app {

int estimate(const EstimateOptions &options, Console &console)
{
    const core::PeopleTable people = readPeopleFile(options.people, console);
    const core::LogTable log = readLogFile(options.log, console);
    const core::RosterRows empty{{}, core::builtInCatalogue(), {}};
    const core::ImportPlan plan = core::planImport(log, people, empty, core::countingIds());
    if (!plan.isClean()) {
        report(plan.problems, console);
        return exitProblems;
    }
    const std::vector<core::Lifter> &lifters = plan.edit.lifters.after;
    const auto estimates = core::estimateAll(lifters, empty.variations, plan.edit.sessions.after);
    writeOutput(options.out, core::writeEstimates(lifters, estimates), console);
    return exitFine;
}

} // namespace app
