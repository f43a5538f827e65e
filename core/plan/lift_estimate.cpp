#include "core/plan/lift_estimate.h"

#include <algorithm>

namespace core {

namespace {

const QDate kEpoch(1970, 1, 1);

/// Variations of one lift, the competition one first; empty where there is none.
std::vector<Variation> engineRows(const std::vector<Variation> &all, Lift lift)
{
    std::vector<Variation> rows;
    for (const Variation &v : all)
        if (v.lift == lift)
            rows.push_back(v);
    const auto competition =
        std::find_if(rows.begin(), rows.end(), [](const Variation &v) { return v.competition; });
    if (competition == rows.end())
        return {};
    std::rotate(rows.begin(), competition, competition + 1);
    return rows;
}

strength::TrainingSet engineSet(const SetEntry &entry, int row)
{
    strength::TrainingSet set;
    set.variation = row;
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

} // namespace

int LiftEstimate::rowOf(VariationId variation) const
{
    const auto it = std::find(rows.begin(), rows.end(), variation);
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

std::map<std::pair<LifterId, Lift>, LiftEstimate> estimateAll(const std::vector<Lifter> &lifters,
    const std::vector<Variation> &variations, const std::vector<LoggedSession> &sessions)
{
    std::map<std::pair<LifterId, Lift>, LiftEstimate> result;
    for (const Lift lift : {Lift::bench, Lift::squat, Lift::deadlift}) {
        const std::vector<Variation> rows = engineRows(variations, lift);
        if (rows.empty())
            continue;
        LiftEstimate frame;
        std::map<VariationId, int> rowOf;
        for (const Variation &v : rows) {
            rowOf.emplace(v.id, int(frame.rows.size()));
            frame.rows.push_back(v.id);
            frame.priors.push_back({v.ratio, v.competition ? 0.0 : v.ratioSpread, v.repCost});
        }

        std::vector<strength::LifterLog> logs;
        std::map<LifterId, size_t> logOf;
        std::vector<LiftEstimate> estimates(lifters.size(), frame);
        for (const Lifter &lifter : lifters) {
            logOf.emplace(lifter.id, logs.size());
            logs.push_back(emptyLog(lifter));
        }
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
                training.sets.push_back(engineSet(entry, row->second));
                reading.sets.push_back(entry);
            }
            if (training.sets.empty())
                continue;
            logs[log->second].sessions.push_back(std::move(training));
            estimates[log->second].readings.push_back(std::move(reading));
        }

        std::vector<strength::LifterEstimate> fits = strength::estimateRoster(logs, frame.priors);
        for (size_t i = 0; i < lifters.size(); ++i) {
            estimates[i].estimate = std::move(fits[i]);
            result.emplace(std::pair(lifters[i].id, lift), std::move(estimates[i]));
        }
    }
    return result;
}

} // namespace core
