#include "core/strength/estimator.h"

#include "core/strength/estimate_report.h"
#include "core/strength/interval.h"
#include "core/strength/pooling.h"
#include "core/strength/validation.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace strength {

namespace {

int lastDayOf(std::span<const LifterLog> logs)
{
    int last = std::numeric_limits<int>::min();
    for (const LifterLog &log : logs)
        for (const TrainingSession &session : log.sessions)
            if (!session.sets.empty())
                last = std::max(last, session.day);
    return last;
}

/// Sets and ratings of each variation, which the fit itself does not keep.
void countSets(LifterEstimate &estimate, const LifterLog &log)
{
    for (const TrainingSession &session : log.sessions)
        for (const TrainingSet &set : session.sets) {
            ++estimate.variations[size_t(set.variation)].sets;
            estimate.rating.ratings += set.rpe.has_value() && !set.missed;
        }
}

LifterEstimate estimate(const LifterLog &log, std::span<const VariationPrior> variations,
    const RosterPriors &priors, int today)
{
    LifterEstimate estimate = report(fitLifter(log, priors, today), variations, today);
    countSets(estimate, log);
    return estimate;
}

} // namespace

LearntRoster learnRoster(std::span<const LifterLog> logs,
    std::span<const VariationPrior> variations, const std::stop_token &stop)
{
    checkVariations(variations);
    for (size_t i = 0; i < logs.size(); ++i)
        checkLog(logs[i], variations.size(), i);
    const RosterPriors published = publishedPriors(variations);
    return {logs.size() > 1 ? pooledPriors(logs, published, stop) : published, lastDayOf(logs)};
}

std::vector<LifterEstimate> estimateRoster(
    std::span<const LifterLog> logs, std::span<const VariationPrior> variations)
{
    return estimateRoster(logs, variations, learnRoster(logs, variations));
}

std::vector<LifterEstimate> estimateRoster(std::span<const LifterLog> logs,
    std::span<const VariationPrior> variations, const LearntRoster &roster,
    const std::stop_token &stop)
{
    std::vector<LifterEstimate> estimates(logs.size());
    forEachOnAllProcessors(
        logs.size(),
        [&](size_t i) {
            estimates[i] = estimate(logs[i], variations, roster.priors, roster.lastDay);
        },
        stop);
    return estimates;
}

LifterEstimate estimateLifter(
    const LifterLog &log, std::span<const VariationPrior> variations, const LearntRoster &roster)
{
    checkVariations(variations);
    checkLog(log, variations.size(), 0);
    return estimate(
        log, variations, roster.priors, std::max(roster.lastDay, lastDayOf(std::span(&log, 1))));
}

LifterEstimate estimateLifter(const LifterLog &log, std::span<const VariationPrior> variations)
{
    return estimateRoster(std::span(&log, 1), variations).front();
}

std::optional<Band> LifterEstimate::maxOn(int day) const
{
    if (weeks.empty())
        return std::nullopt;
    const auto monday = [](const WeekEstimate &week) { return week.sunday - 6; };
    size_t known = weeks.size() - 1;
    if (day < monday(weeks.back())) {
        // Of a day gone by: what was known on the Sunday before.
        known = size_t(std::max(day - monday(weeks.front()), 0) / 7);
        known -= known > 0;
    }
    const bool sinceThen = idle && day > weeks.back().sunday;
    const Band &band = sinceThen ? idle->max : weeks[known].filtered;
    const int from = sinceThen ? idle->until : weeks[known].sunday;
    const double sd = sdOfLn(band.low90, band.high90);
    const double ahead = std::max(day - from, 0) / 7.0;
    return bandOf(std::log(band.kg), std::sqrt(sd * sd + driftPerWeek * driftPerWeek * ahead));
}

} // namespace strength
