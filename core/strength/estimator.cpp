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

int lastDayOf(std::span<const LifterLog> logs)
{
    int last = std::numeric_limits<int>::min();
    for (const LifterLog &log : logs)
        for (const TrainingSession &session : log.sessions)
            if (!session.sets.empty())
                last = std::max(last, session.day);
    return last;
}

RosterPriors learnRoster(std::span<const LifterLog> logs,
    std::span<const VariationPrior> variations, const std::stop_token &stop)
{
    checkVariations(variations);
    for (size_t i = 0; i < logs.size(); ++i)
        checkLog(logs[i], variations.size(), i);
    const RosterPriors published = publishedPriors(variations);
    return logs.size() > 1 ? pooledPriors(logs, published, stop) : published;
}

std::vector<LifterEstimate> estimateRoster(
    std::span<const LifterLog> logs, std::span<const VariationPrior> variations, int today)
{
    return estimateRoster(logs, variations, learnRoster(logs, variations), today);
}

std::vector<LifterEstimate> estimateRoster(std::span<const LifterLog> logs,
    std::span<const VariationPrior> variations, const RosterPriors &learnt, int today,
    const std::stop_token &stop)
{
    std::vector<LifterEstimate> estimates(logs.size());
    forEachOnAllProcessors(
        logs.size(), [&](size_t i) { estimates[i] = estimate(logs[i], variations, learnt, today); },
        stop);
    return estimates;
}

LifterEstimate estimateLifter(const LifterLog &log, std::span<const VariationPrior> variations,
    const RosterPriors &learnt, int today)
{
    checkVariations(variations);
    checkLog(log, variations.size(), 0);
    return estimate(log, variations, learnt, today);
}

LifterEstimate estimateLifter(
    const LifterLog &log, std::span<const VariationPrior> variations, int today)
{
    return estimateRoster(std::span(&log, 1), variations, today).front();
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
