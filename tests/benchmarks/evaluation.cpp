#include "tests/benchmarks/evaluation.h"

#include "core/strength/forecast.h"
#include "tests/benchmarks/baselines.h"
#include "tests/benchmarks/local_level.h"
#include "tests/benchmarks/told_level.h"

#include <algorithm>
#include <cmath>

namespace benchmarks {

namespace {

using simulators::SimulatedRoster;
using strength::Band;
using strength::LifterEstimate;

/// What is judged of one lifter on one day.
Judged judge(int lifter, const Band &band, double truthKg)
{
    return {lifter, band.kg, truthKg, sdOfBand(band.low90, band.high90)};
}

/// Adds one roster's estimates to an evaluation.
class RosterJudge
{
public:
    RosterJudge(const SimulatedRoster &roster, int firstLifter, int weeks, Evaluation &evaluation)
        : m_roster(roster)
        , m_firstLifter(firstLifter)
        , m_evaluation(evaluation)
        , m_logs(roster.logs())
        , m_estimates(strength::estimateRoster(
              m_logs, simulators::benchVariations(), strength::lastDayOf(m_logs)))
    {
        for (int week = 0; week < weeks; ++week)
            m_sundays.push_back(simulators::kFirstDay + 7 * week + 6);
    }

    void judgeEngine()
    {
        std::vector<Judged> filtered;
        std::vector<Judged> trained; // filtered, in weeks with sets
        std::vector<Judged> smoothed;
        for (size_t i = 0; i < m_estimates.size(); ++i)
            for (const strength::WeekEstimate &week : m_estimates[i].weeks)
                if (isJudged(i, week.sunday)) {
                    filtered.push_back(judge(id(i), week.filtered, truth(i, week.sunday)));
                    if (week.sets > 0)
                        trained.push_back(filtered.back());
                    smoothed.push_back(judge(id(i), week.smoothed, truth(i, week.sunday)));
                }
        add("engine, filtered", filtered);
        add("engine, trained weeks", trained);
        add("engine, smoothed", smoothed);
    }

    void judgeBaselines()
    {
        for (const Baseline &baseline : windowBaselines()) {
            std::vector<Judged> judged;
            for (size_t i = 0; i < m_logs.size(); ++i) {
                const std::vector<double> kg = carriedForward(baseline, m_logs[i], m_sundays);
                for (size_t week = 0; week < m_sundays.size(); ++week)
                    if (isJudged(i, m_sundays[week]) && std::isfinite(kg[week]))
                        judged.push_back({id(i), kg[week], truth(i, m_sundays[week]), 0.0});
            }
            add(baseline.name, judged);
        }
    }

    void judgeLocalLevel()
    {
        std::vector<std::vector<double>> series;
        for (const strength::LifterLog &log : m_logs)
            series.push_back(weeklyLogEpley(log, m_sundays));
        if (const std::optional<LocalLevel> level = localLevel(series)) {
            add("local level, filtered", judgeLevels(level->filtered));
            add("local level, smoothed", judgeLevels(level->smoothed));
        }
    }

    void judgeToldLevel()
    {
        std::vector<LevelSeries> filtered;
        std::vector<LevelSeries> smoothed;
        for (const simulators::SimulatedLifter &lifter : m_roster.lifters) {
            ToldLevel told = toldLevel(lifter, m_sundays);
            filtered.push_back(std::move(told.filtered));
            smoothed.push_back(std::move(told.smoothed));
        }
        add("told, filtered", judgeLevels(filtered));
        add("told, smoothed", judgeLevels(smoothed));
    }

    void judgeRefits()
    {
        for (size_t week = kWarmUpWeeks + 1; week < m_sundays.size(); week += kRefitEveryWeeks) {
            const int sunday = m_sundays[week];
            const auto then = strength::estimateRoster(
                cutOff(m_logs, sunday), simulators::benchVariations(), sunday);
            for (size_t i = 0; i < then.size(); ++i)
                if (const std::optional<Band> band = then[i].maxOn(sunday))
                    m_evaluation.refits.push_back({judge(id(i), *band, truth(i, sunday)),
                        filteredOn(i, sunday), then[i].standing == strength::Standing::enough});
        }
    }

    void forecast()
    {
        m_evaluation.forecasts = strength::forecastSessions(m_logs, simulators::benchVariations());
    }

private:
    int id(size_t lifter) const { return m_firstLifter + int(lifter); }
    double truth(size_t lifter, int day) const { return m_roster.lifters[lifter].maxOn(day); }

    /// Whether the engine has an estimate for that week: all methods answer the same questions.
    bool isJudged(size_t lifter, int sunday) const
    {
        return sunday >= m_sundays[kWarmUpWeeks] && filteredOn(lifter, sunday).has_value();
    }

    std::optional<double> filteredOn(size_t lifter, int sunday) const
    {
        const auto &weeks = m_estimates[lifter].weeks;
        if (weeks.empty() || sunday < weeks.front().sunday || sunday > weeks.back().sunday)
            return std::nullopt;
        return weeks[size_t(sunday - weeks.front().sunday) / 7].filtered.kg;
    }

    void add(std::string_view name, const std::vector<Judged> &judged)
    {
        auto &methods = m_evaluation.methods;
        auto found = std::find_if(
            methods.begin(), methods.end(), [&](const Method &m) { return m.name == name; });
        if (found == methods.end())
            found = methods.insert(methods.end(), Method{std::string(name), {}});
        found->judged.insert(found->judged.end(), judged.begin(), judged.end());
    }

    std::vector<Judged> judgeLevels(const std::vector<LevelSeries> &levels) const
    {
        std::vector<Judged> judged;
        for (size_t i = 0; i < levels.size(); ++i)
            for (size_t week = 0; week < m_sundays.size(); ++week)
                if (isJudged(i, m_sundays[week]) && std::isfinite(levels[i].mean[week]))
                    judged.push_back({id(i), std::exp(levels[i].mean[week]),
                        truth(i, m_sundays[week]), std::sqrt(levels[i].variance[week])});
        return judged;
    }

    const SimulatedRoster &m_roster;
    int m_firstLifter;
    Evaluation &m_evaluation;
    std::vector<strength::LifterLog> m_logs;
    std::vector<LifterEstimate> m_estimates;
    std::vector<int> m_sundays;
};

} // namespace

std::vector<strength::LifterLog> cutOff(std::span<const strength::LifterLog> logs, int day)
{
    std::vector<strength::LifterLog> cut;
    for (const strength::LifterLog &log : logs) {
        cut.push_back({log.sex, log.bodyweightKg, {}});
        for (const strength::TrainingSession &session : log.sessions)
            if (session.day <= day)
                cut.back().sessions.push_back(session);
    }
    return cut;
}

RefitSummary summarise(const std::vector<Refit> &refits)
{
    RefitSummary summary;
    std::vector<Judged> judged;
    double hindsight = 0.0;
    int compared = 0;
    int enough = 0;
    for (const Refit &refit : refits) {
        judged.push_back(refit.then);
        if (refit.laterKg) {
            hindsight += std::pow(100.0 * (*refit.laterKg / refit.then.estimateKg - 1.0), 2.0);
            ++compared;
        }
        if (refit.enough) {
            const double error =
                std::abs(100.0 * (refit.then.estimateKg / refit.then.truthKg - 1.0));
            ++enough;
            summary.worstEnough = std::max(summary.worstEnough, error);
            summary.beyondEight += error > 8.0 ? 1 : 0;
        }
    }
    summary.then = measure(judged);
    summary.hindsight = compared > 0 ? std::sqrt(hindsight / compared) : 0.0;
    summary.saidEnough = refits.empty() ? 0.0 : 100.0 * enough / double(refits.size());
    return summary;
}

Evaluation evaluate(const simulators::Truth &truth, std::span<const std::uint64_t> seeds,
    const EvaluationSize &size)
{
    Evaluation evaluation;
    int firstLifter = 0;
    for (const std::uint64_t seed : seeds) {
        const SimulatedRoster roster =
            simulators::simulateRoster(truth, seed, size.lifters, size.weeks);
        RosterJudge judge(roster, firstLifter, size.weeks, evaluation);
        judge.judgeEngine();
        judge.judgeBaselines();
        if (size.statsmodels)
            judge.judgeLocalLevel();
        judge.judgeToldLevel();
        judge.judgeRefits();
        judge.forecast();
        firstLifter += size.lifters;
    }
    return evaluation;
}

} // namespace benchmarks
