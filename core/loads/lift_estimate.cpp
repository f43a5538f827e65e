#include "core/loads/lift_estimate.h"

#include <algorithm>

namespace core {

namespace {

const QDate kEpoch(1970, 1, 1);

/// Variations of one lift without its assistance work, the competition one first; empty where there
/// is none.
std::vector<Variation> engineRows(const std::vector<Variation> &all, Lift lift)
{
    std::vector<Variation> rows;
    for (const Variation &v : all)
        if (countsFor(v, lift))
            rows.push_back(v);
    const auto competition =
        std::ranges::find_if(rows, [](const Variation &v) { return v.competition; });
    if (competition == rows.end())
        return {};
    std::rotate(rows.begin(), competition, competition + 1);
    return rows;
}

/// @param leadRow  of the variation of the lead reps, -1 where there are none of this lift
strength::TrainingSet engineSet(const SetEntry &entry, int row, int leadRow)
{
    strength::TrainingSet set;
    set.variation = row;
    if (leadRow >= 0 && entry.lead) {
        // A set that ended among its lead reps never came to the variation that follows.
        const int tried = entry.repsDone + (entry.failed ? 1 : 0);
        if (tried <= entry.lead->reps) {
            set.variation = leadRow;
        } else {
            set.leadVariation = leadRow;
            set.leadReps = entry.lead->reps;
        }
    }
    set.loadKg = entry.loadKg;
    set.reps = entry.repsDone;
    set.repsPlanned = entry.repsPlanned;
    set.rpe = entry.rpe;
    set.missed = entry.failed;
    set.velocity = entry.velocityMs;
    return set;
}

strength::LifterLog emptyLog(const Lifter &lifter)
{
    strength::LifterLog log;
    log.sex = lifter.sex == Sex::female ? strength::LifterLog::Sex::female
        : lifter.sex == Sex::male       ? strength::LifterLog::Sex::male
                                        : strength::LifterLog::Sex::unstated;
    log.bodyweightKg = lifter.bodyweightKg;
    return log;
}

constexpr Lift kLifts[] = {Lift::bench, Lift::squat, Lift::deadlift};

/// @param fits  one a lifter, as `all` has them; its readings are taken
void put(LiftEstimates &estimates, const std::vector<Lifter> &lifters, Lift lift,
    std::vector<strength::LifterEstimate> fits, LiftLogs &all)
{
    for (size_t i = 0; i < fits.size(); ++i)
        estimates.emplace(std::pair(lifters[i].id, lift),
            LiftEstimate{std::move(fits[i]), all.rows, all.priors, std::move(all.readings[i])});
}

} // namespace

int LiftEstimate::rowOf(VariationId variation) const
{
    const auto it = std::ranges::find(rows, variation);
    return it == rows.end() ? -1 : int(it - rows.begin());
}

int engineDay(QDate day)
{
    return int(kEpoch.daysTo(day));
}

QDate fromEngineDay(int day)
{
    return kEpoch.addDays(day);
}

LiftLogs liftLogs(const std::vector<Lifter> &lifters, const std::vector<Variation> &variations,
    const std::vector<LoggedSession> &sessions, Lift lift)
{
    LiftLogs result;
    std::map<VariationId, int> rowOf;
    for (const Variation &v : engineRows(variations, lift)) {
        rowOf.emplace(v.id, int(result.rows.size()));
        result.rows.push_back(v.id);
        result.priors.push_back({v.ratio, v.competition ? 0.0 : v.ratioSpread, v.repCost});
    }
    if (result.rows.empty())
        return result;

    std::map<LifterId, size_t> logOf;
    for (const Lifter &lifter : lifters) {
        logOf.emplace(lifter.id, result.logs.size());
        result.logs.push_back(emptyLog(lifter));
    }
    const auto leadRowOf = [&rowOf](const SetEntry &entry) {
        const auto row = entry.lead ? rowOf.find(entry.lead->variation) : rowOf.end();
        return row == rowOf.end() ? -1 : row->second;
    };
    result.readings.resize(lifters.size());
    for (const LoggedSession &session : sessions) {
        const auto log = logOf.find(session.lifter);
        if (log == logOf.end())
            continue;
        strength::TrainingSession training{engineDay(session.day), {}};
        LoggedSession reading = session;
        reading.sets.clear();
        for (const SetEntry &entry : session.sets) {
            const auto row = rowOf.find(entry.variation);
            if (row == rowOf.end())
                continue;
            training.sets.push_back(engineSet(entry, row->second, leadRowOf(entry)));
            reading.sets.push_back(entry);
        }
        if (training.sets.empty())
            continue;
        result.logs[log->second].sessions.push_back(std::move(training));
        result.readings[log->second].push_back(std::move(reading));
    }
    return result;
}

RosterFit fitRoster(const std::vector<Lifter> &lifters, const std::vector<Variation> &variations,
    const std::vector<LoggedSession> &sessions, QDate today, const std::stop_token &stop)
{
    RosterFit fit;
    for (const Lift lift : kLifts) {
        LiftLogs all = liftLogs(lifters, variations, sessions, lift);
        if (all.rows.empty())
            continue;
        strength::RosterPriors learnt = strength::learnRoster(all.logs, all.priors, stop);
        put(fit.estimates, lifters, lift,
            strength::estimateRoster(all.logs, all.priors, learnt, engineDay(today), stop), all);
        fit.learnt.emplace(lift, std::move(learnt));
    }
    return fit;
}

LiftEstimates fitSome(const std::vector<Lifter> &lifters, const std::vector<Variation> &variations,
    const std::vector<LoggedSession> &sessions, const LearntLifts &learnt, QDate today)
{
    LiftEstimates estimates;
    for (const auto &[lift, priors] : learnt) {
        LiftLogs all = liftLogs(lifters, variations, sessions, lift);
        std::vector<strength::LifterEstimate> fits;
        for (const strength::LifterLog &log : all.logs)
            fits.push_back(strength::estimateLifter(log, all.priors, priors, engineDay(today)));
        put(estimates, lifters, lift, std::move(fits), all);
    }
    return estimates;
}

LiftEstimates estimateAll(const std::vector<Lifter> &lifters,
    const std::vector<Variation> &variations, const std::vector<LoggedSession> &sessions,
    QDate today)
{
    return fitRoster(lifters, variations, sessions, today).estimates;
}

} // namespace core
