#include "app/commands/commands.h"

#include "app/commands/files.h"
#include "app/commands/roster_copy.h"
#include "app/commands/text.h"
#include "core/advice/readiness_advice.h"
#include "core/domain/nearest_word.h"
#include "core/domain/storage_error.h"
#include "core/domain/visible_text.h"
#include "core/domain/week.h"

namespace app {

namespace {

/// The lifter named, whatever the case, or, without a name, all who train. Empty after a complaint
/// when there is none of the name.
std::optional<std::vector<core::Lifter>> chosenLifters(const QString &roster, const QString &name,
    const std::vector<core::Lifter> &all, Console &console)
{
    std::vector<core::Lifter> found;
    QStringList names;
    for (const core::Lifter &lifter : all) {
        names << lifter.name;
        const bool isMeant =
            name.isEmpty() ? !lifter.archived : lifter.name.compare(name, Qt::CaseInsensitive) == 0;
        if (isMeant)
            found.push_back(lifter);
    }
    if (!found.empty() || name.isEmpty())
        return found;
    const QString nearest = core::nearestWord(name, names);
    core::ProblemList problems;
    problems.add({roster, 0, {}, Text::tr("It has no lifter named \"%1\".").arg(name),
        nearest.isEmpty() ? Text::tr("Its lifters are: %1.").arg(names.join(QStringLiteral(", ")))
                          : Text::tr("Did you mean %1?").arg(nearest)});
    report(problems, console);
    return std::nullopt;
}

/// As in the window, see ui::Insights.
std::map<core::LifterId, strength::ReadinessEffect> readinessOf(
    const core::LiftEstimates &estimates, const std::vector<core::CheckIn> &checkIns)
{
    std::vector<core::LifterId> lifters;
    std::vector<std::vector<strength::ReadinessReading>> readings;
    for (const auto &[key, estimate] : estimates)
        if (key.second == core::Lift::bench) {
            lifters.push_back(key.first);
            readings.push_back(core::readinessReadings(estimate, checkIns));
        }
    const auto effects = strength::readinessEffects(readings);
    std::map<core::LifterId, strength::ReadinessEffect> found;
    for (size_t i = 0; i < lifters.size(); ++i)
        found.emplace(lifters[i], effects[i]);
    return found;
}

void reportStops(const QString &roster, const std::vector<core::OpenStop> &stops, Console &console)
{
    core::ProblemList problems;
    for (const core::OpenStop &stop : stops)
        problems.add({roster, 0, {}, core::words(stop), stop.finding.remedy});
    report(problems, console);
}

} // namespace

int handOut(const HandOutOptions &options, const Moment &moment, Console &console)
{
    // Held while it is written from, unless nothing is given: then a window may have it open.
    std::optional<core::RosterFile> original;
    if (!options.isDraft)
        original.emplace(core::RosterFile::open(options.roster, moment.clock));
    const RosterCopy copy(options.roster, moment);
    const core::RosterFile roster = copy.open();
    const std::vector<core::Lifter> all = roster.lifters();
    const auto lifters = chosenLifters(options.roster, options.lifter, all, console);
    if (!lifters)
        return exitProblems;

    ui::HandOutBatch batch;
    batch.monday = core::mondayOf(options.day.isValid() ? options.day : moment.today());
    std::vector<core::LifterId> who;
    for (const core::Lifter &lifter : *lifters)
        who.push_back(lifter.id);
    batch.takeFrom(roster, who);
    if (batch.cards.empty()) {
        core::ProblemList problems;
        problems.add({options.roster, 0, {},
            Text::tr("Nothing is planned in the week of %1.")
                .arg(batch.monday.toString(Qt::ISODate)),
            Text::tr("Plan the week first, or name another with --week.")});
        report(problems, console);
        return exitProblems;
    }
    const std::vector<core::LoggedSession> sessions = roster.sessions();
    warnOfClock(moment, sessions, console);
    const core::LiftEstimates estimates =
        core::estimateAll(all, batch.variations, sessions, moment.today());
    batch.estimateOf = [&estimates](core::LifterId lifter, core::Lift lift) {
        const auto found = estimates.find({lifter, lift});
        return found == estimates.end() ? nullptr : &found->second;
    };
    batch.readiness = readinessOf(estimates, roster.checkIns());
    batch.kinds = options.kinds;
    batch.paper = options.paper;
    batch.folder = options.folder;
    batch.now = moment.now().toUTC();
    batch.today = moment.today();
    if (original)
        batch.giving = core::Giving{options.by, core::toSeconds(batch.now),
            [&original] { return original->newId<core::GivenDay>(); }};
    ui::HandOutSummary summary = ui::writeHandOuts(batch);
    core::Edit edit;
    if (original && !summary.stops.empty()) {
        if (!core::hasVisibleText(options.accepted)) {
            reportStops(options.roster, summary.stops, console);
            say(console.err,
                Text::tr("Nothing was written. Change the plan, or accept this with --accept and a "
                         "note on why it is right; a --draft has it printed."));
            return exitProblems;
        }
        edit = core::accept(summary.stops, options.accepted.trimmed(), batch.waivers,
            [&original] { return original->newId<core::Waiver>(); });
        core::carryOut(batch.waivers, edit.waivers, [](const core::Waiver &) { return true; });
        summary = ui::writeHandOuts(batch);
    }
    if (original) {
        if (!summary.failure.isEmpty() && summary.files.empty())
            edit.waivers = {}; // nothing left the house, so nothing was accepted
        edit.given.after = summary.given;
        original->apply(edit);
    } else {
        reportStops(options.roster, summary.stops, console);
    }
    for (const QString &path : summary.files)
        say(console.out, path);
    QStringList ageless;
    for (const core::Lifter &lifter : batch.lifters)
        if (core::isAgeUnknown(lifter))
            ageless << lifter.name;
    if (!ageless.isEmpty())
        say(console.err,
            Text::tr("Counted as adults, since their age is not known: %1.")
                .arg(ageless.join(QStringLiteral(", "))));
    if (!summary.failure.isEmpty())
        throw core::StorageError(summary.failure);
    return exitFine;
}

} // namespace app
