#include "app/commands/commands.h"

#include "app/commands/files.h"
#include "app/commands/roster_copy.h"
#include "app/commands/text.h"
#include "core/exchange/return_words.h"
#include "core/exchange/returns.h"

#include <optional>

namespace app {

int returnSheets(const ReturnOptions &options, const Moment &moment, Console &console)
{
    std::vector<core::ReturnSheet> sheets;
    for (const QString &path : options.sheets)
        sheets.push_back(readReturnFile(path, moment, console));

    std::optional<RosterCopy> copy; // outlives the roster in it
    if (options.dryRun)
        copy.emplace(options.roster, Moment{moment.clock, {}}); // as the real one would be
    core::RosterFile roster =
        copy ? copy->open() : core::RosterFile::open(options.roster, moment.clock);
    warnOfClock(moment, roster.sessions(), console);
    const core::JudgedReturns returns = core::judgeReturns(std::move(sheets), roster);

    std::vector<size_t> accepted;
    bool isAnyLeft = false;
    for (size_t i = 0; i < returns.sheets.size(); ++i) {
        const core::SheetReview &review = returns.reviews[i];
        report(review.problems, console);
        for (const QString &line : core::reviewLines(review))
            say(console.out, line);
        const bool isWanted = review.standing == core::SheetStanding::ready
            || (review.standing == core::SheetStanding::byChoice && options.acceptMismatched);
        if (isWanted)
            accepted.push_back(i);
        else if (review.standing != core::SheetStanding::nothingNew)
            isAnyLeft = true;
    }
    const core::Edit edit = core::acceptReturns(returns, accepted,
        {[&roster] { return roster.newId<core::LoggedSession>(); },
            [&roster] { return roster.newId<core::CheckIn>(); }});
    if (!options.dryRun && !edit.isEmpty())
        roster.apply(edit);
    say(console.out,
        (options.dryRun ? Text::tr("Nothing was changed. Sheets that would be accepted: %1 of %2.")
                        : Text::tr("Sheets accepted: %1 of %2."))
            .arg(accepted.size())
            .arg(returns.sheets.size()));
    return isAnyLeft ? exitProblems : exitFine;
}

} // namespace app
