#include "core/strength/estimator.h"

#include "core/strength/interval.h"
#include "core/strength/local_level.h"
#include "core/strength/validation.h"
#include "core/strength/week.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace strength {

namespace {

/// ln(share of max) by reps, a least-squares fit to the handbook chart (Haff & Triplett 2016).
constexpr RepCurve kChartCurve{0.0405, 0.9};
constexpr double kRatingNoise = 1.0; ///< reps; Halperin et al. (2022), Refalo et al. (2024)
constexpr double kUnratedReserve = 2.5, kUnratedNoise = 2.5;                 ///< reps
constexpr double kFormSd = 0.02, kDriftPerWeek = 0.008, kSetFatigue = 0.005; ///< ln units

Band bandOf(const Belief &belief)
{
    return strength::bandOf(belief.mean, std::sqrt(belief.variance));
}

Interval factorOf(const Belief &belief)
{
    return strength::factorOf(belief.mean, std::sqrt(belief.variance));
}

/// The ln of the competition max that one set speaks for.
LevelReading readSet(
    const TrainingSet &set, int setsBefore, std::span<const VariationPrior> variations)
{
    double reps = set.reps + kUnratedReserve;
    double noise = kUnratedNoise;
    if (set.missed) {
        reps = set.reps + 0.5;
        noise = 0.5;
    } else if (set.rpe) {
        const double reserve = 10.0 - *set.rpe;
        reps = set.reps + reserve;
        noise = kRatingNoise * (0.7 + 0.2 * reserve);
    }
    reps = std::max(reps, 1.0);
    const VariationPrior &variation = variations[size_t(set.variation)];
    const double drop = -std::log(kChartCurve.share(reps, variation.repCost));
    const double oneMore = -std::log(kChartCurve.share(reps + 1.0, variation.repCost));
    const double slope = oneMore - drop;
    return {std::log(set.loadKg) - std::log(variation.ratio) + drop + kSetFatigue * setsBefore,
        slope * slope * noise * noise + std::pow(variation.spread / variation.ratio, 2.0)};
}

LevelReading mean(std::span<const LevelReading> readings, double floorVariance)
{
    double weight = 0.0, sum = 0.0;
    for (const LevelReading &reading : readings) {
        weight += 1.0 / reading.variance;
        sum += reading.value / reading.variance;
    }
    if (weight == 0.0)
        return {std::numeric_limits<double>::quiet_NaN(), 1.0};
    return {sum / weight, 1.0 / weight + floorVariance};
}

} // namespace

LifterEstimate estimateLifter(const LifterLog &log, std::span<const VariationPrior> variations)
{
    checkVariations(variations);
    checkLog(log, variations.size(), 0);

    LifterEstimate result;
    result.curve = kChartCurve;
    result.setFatigue = kSetFatigue;
    result.formSd = kFormSd;
    result.driftPerWeek = kDriftPerWeek;

    std::vector<const TrainingSession *> sessions;
    for (const TrainingSession &session : log.sessions)
        if (!session.sets.empty())
            sessions.push_back(&session);
    std::stable_sort(sessions.begin(), sessions.end(),
        [](const auto *a, const auto *b) { return a->day < b->day; });

    for (const VariationPrior &prior : variations)
        result.variations.push_back(
            {factorOf({std::log(prior.ratio), std::pow(prior.spread / prior.ratio, 2.0)}), {}, 0});
    if (sessions.empty())
        return result;

    const int first = sundayOf(sessions.front()->day);
    const size_t count = size_t(sundayOf(sessions.back()->day) - first) / 7 + 1;
    std::vector<std::vector<LevelReading>> sessionsOfWeek(count);
    std::vector<LevelReading> bySession;
    result.weeks.resize(count);
    for (const TrainingSession *session : sessions) {
        std::vector<LevelReading> readings;
        for (const TrainingSet &set : session->sets) {
            readings.push_back(readSet(set, int(readings.size()), variations));
            ++result.variations[size_t(set.variation)].sets;
            result.rating.ratings += set.rpe.has_value();
        }
        const size_t week = size_t(sundayOf(session->day) - first) / 7;
        result.weeks[week].sets += int(readings.size());
        bySession.push_back(mean(readings, kFormSd * kFormSd));
        sessionsOfWeek[week].push_back(bySession.back());
    }

    std::vector<LevelReading> weekly;
    for (const auto &readings : sessionsOfWeek)
        weekly.push_back(mean(readings, 0.0));
    const LevelPath path =
        followLevel(weekly, {weekly.front().value, 0.2 * 0.2}, kDriftPerWeek * kDriftPerWeek);
    for (size_t t = 0; t < count; ++t) {
        result.weeks[t].sunday = first + 7 * int(t);
        result.weeks[t].filtered = bandOf(path.filtered[t]);
        result.weeks[t].smoothed = bandOf(path.smoothed[t]);
    }
    for (size_t s = 0; s < sessions.size(); ++s) {
        const size_t week = size_t(sundayOf(sessions[s]->day) - first) / 7;
        const double share = kFormSd * kFormSd / bySession[s].variance;
        result.form.push_back({sessions[s]->day,
            factorOf({share * (bySession[s].value - path.smoothed[week].mean),
                kFormSd * kFormSd * (1.0 - share) + path.smoothed[week].variance})});
    }
    for (size_t v = 0; v < variations.size(); ++v) {
        const double spread = variations[v].spread / variations[v].ratio;
        result.variations[v].max =
            bandOf({path.filtered.back().mean + std::log(variations[v].ratio),
                path.filtered.back().variance + spread * spread});
    }
    result.rating.bias = intervalOf(0.0, 1.0);
    result.rating.noise = kRatingNoise;
    const bool wide = path.filtered.back().variance > 0.04 * 0.04;
    result.standing = wide ? Standing::thin : Standing::enough;
    return result;
}

std::vector<LifterEstimate> estimateRoster(
    std::span<const LifterLog> logs, std::span<const VariationPrior> variations)
{
    checkVariations(variations);
    for (size_t i = 0; i < logs.size(); ++i)
        checkLog(logs[i], variations.size(), i);
    std::vector<LifterEstimate> result;
    for (const LifterLog &log : logs)
        result.push_back(estimateLifter(log, variations));
    return result;
}

std::optional<Band> LifterEstimate::maxOn(int day) const
{
    if (weeks.empty())
        return std::nullopt;
    const auto monday = [](const WeekEstimate &week) { return week.sunday - 6; };
    size_t known = weeks.size() - 1;
    if (day < monday(weeks.back()))
        known = size_t(std::max(day - monday(weeks.front()), 0) / 7);
    if (known > 0 && known + 1 < weeks.size())
        --known;
    const Band &band = weeks[known].filtered;
    const double mean = std::log(band.kg);
    const double sd = sdOfLn(band.low90, band.high90);
    const double ahead = std::max(day - weeks[known].sunday, 0) / 7.0;
    return strength::bandOf(mean, std::sqrt(sd * sd + driftPerWeek * driftPerWeek * ahead));
}

} // namespace strength
