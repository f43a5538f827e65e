#include "app/commands/hand_out.h"

#include "app/commands/files.h"
#include "app/commands/lifter_choice.h"
#include "app/commands/roster_copy.h"
#include "app/commands/text.h"
#include "core/domain/storage_error.h"
#include "core/domain/week.h"

namespace app {

int handOut(const HandOutOptions &options, Console &console)
{
    const RosterCopy copy(options.roster);
    const core::RosterFile roster = copy.open();
    const std::vector<core::Lifter> all = roster.lifters();
    const auto lifters = chosenLifters(options.roster, options.lifter, all, console);
    if (!lifters)
        return exitProblems;

    ui::HandOutBatch batch;
    batch.lifters = *lifters;
    batch.variations = roster.variations();
    batch.monday = core::mondayOf(options.day);
    for (const core::Lifter &lifter : *lifters)
        for (core::Card &card : roster.cards(lifter.id, batch.monday, batch.monday.addDays(6)))
            batch.cards.push_back(std::move(card));
    if (batch.cards.empty()) {
        core::ProblemList problems;
        problems.add({options.roster, 0, {},
            Text::tr("Nothing is planned in the week of %1.")
                .arg(batch.monday.toString(Qt::ISODate)),
            Text::tr("Plan the week first, or name another with --week.")});
        report(problems, console);
        return exitProblems;
    }
    batch.estimates = core::estimateAll(all, batch.variations, roster.sessions());
    batch.kinds = options.kinds;
    batch.paper = options.paper;
    batch.folder = options.folder;
    batch.now = QDateTime::currentDateTimeUtc();
    const ui::HandOutSummary summary = ui::writeHandOuts(batch, [](int) { return true; });
    for (const QString &path : summary.files)
        say(console.out, path);
    if (!summary.failure.isEmpty())
        throw core::StorageError(summary.failure);
    return exitFine;
}

} // namespace app
