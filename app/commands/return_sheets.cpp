#include "app/commands/return_sheets.h"

#include "app/commands/files.h"
#include "app/commands/roster_copy.h"
#include "app/commands/text.h"
#include "core/exchange/return_review.h"
#include "core/exchange/return_words.h"

#include <optional>

namespace app {

namespace {

core::ReturnBasis basisOf(
    const core::RosterFile &roster, const std::vector<core::ReturnSheet> &sheets)
{
    core::ReturnBasis basis{
        roster.lifters(), roster.variations(), {}, roster.sessions(), roster.checkIns()};
    for (const QDate monday : core::weeksOf(sheets))
        for (core::Card &card : roster.cards(monday, monday.addDays(6)))
            basis.cards.push_back(std::move(card));
    return basis;
}

} // namespace

int returnSheets(const ReturnOptions &options, Console &console)
{
    std::vector<core::ReturnSheet> sheets;
    for (const QString &path : options.sheets)
        sheets.push_back(readReturnFile(path, console));

    std::optional<RosterCopy> copy; // outlives the roster in it
    if (options.dryRun)
        copy.emplace(options.roster);
    core::RosterFile roster = copy ? copy->open() : core::RosterFile::open(options.roster);
    const core::ReturnBasis basis = basisOf(roster, sheets);
    const std::vector<core::SheetReview> reviews = core::reviewReturns(sheets, basis);

    std::vector<core::ReturnSheet> accepted;
    bool isAnyLeft = false;
    for (size_t i = 0; i < sheets.size(); ++i) {
        report(reviews[i].problems, console);
        for (const QString &line : core::reviewLines(reviews[i]))
            say(console.out, line);
        const bool isWanted = reviews[i].standing == core::SheetStanding::ready
            || (reviews[i].standing == core::SheetStanding::byChoice && options.oddOnes);
        if (isWanted)
            accepted.push_back(sheets[i]);
        else if (reviews[i].standing != core::SheetStanding::nothingNew)
            isAnyLeft = true;
    }
    const core::Edit edit = core::acceptReturns(accepted, basis,
        {[&roster] { return roster.newId<core::LoggedSession>(); },
            [&roster] { return roster.newId<core::CheckIn>(); }});
    if (!options.dryRun && !edit.isEmpty())
        roster.apply(edit);
    say(console.out,
        (options.dryRun ? Text::tr("Nothing was changed. Sheets that would be accepted: %1 of %2.")
                        : Text::tr("Sheets accepted: %1 of %2."))
            .arg(accepted.size())
            .arg(sheets.size()));
    return isAnyLeft ? exitProblems : exitFine;
}

} // namespace app
