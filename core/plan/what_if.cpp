#include "core/plan/what_if.h"

#include "core/domain/text.h"
#include "core/domain/training_history.h"
#include "core/domain/week.h"
#include "core/loads/estimate_words.h"
#include "core/strength/interval.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <random>
#include <stdexcept>

namespace core {

namespace {

constexpr int kHabitWeeks = 12;
constexpr int kFewestHabitWeeks = 4;
constexpr int kFutures = 400;
constexpr double kDoubt = 1.0 / 3.0; ///< SD of ln g and of ln time constants between futures
constexpr unsigned kSeed = 20260302;

/// Tonnage of the lift on each day from `first` on.
struct DailyTonnage
{
    QDate first;
    std::vector<double> kg;

    void add(QDate day, double tonnage)
    {
        const qint64 at = first.daysTo(day);
        if (at >= 0 && at < qint64(kg.size()))
            kg[size_t(at)] += tonnage;
    }
};

bool isOfLift(const WhatIfInput &input, VariationId id)
{
    const Variation *variation = find(input.catalogue, id);
    return variation && countsFor(*variation, input.lift);
}

DailyTonnage done(const WhatIfInput &input)
{
    DailyTonnage daily{input.from.addDays(-kWeekDays * kHabitWeeks),
        std::vector<double>(size_t(kWeekDays * kHabitWeeks), 0.0)};
    for (const LoggedSession &session : input.sessions)
        for (const SetEntry &set : session.sets)
            if (isOfLift(input, set.variation))
                daily.add(session.day, tonnageKg(set));
    return daily;
}

DailyTonnage planned(const WhatIfInput &input, std::span<const ResolvedCard> cards)
{
    const QDate last = mondayOf(input.from).addDays(kWeekDays * input.weeks - 1);
    DailyTonnage daily{input.from, std::vector<double>(size_t(input.from.daysTo(last) + 1), 0.0)};
    for (const ResolvedCard &card : cards)
        if (isOfLift(input, card.card.variation))
            for (const ResolvedLine &line : card.lines)
                if (line.withheld.isEmpty()) // what is held back is not done
                    daily.add(card.card.day, tonnageKg({&line, 1}));
    return daily;
}

/// Mean day of the weeks that hold training, so that a layoff counts as a layoff and not as habit.
/// 0 where too few weeks do.
double habitOf(const DailyTonnage &daily)
{
    double sum = 0.0;
    int trained = 0;
    for (size_t week = 0; week + kWeekDays <= daily.kg.size(); week += kWeekDays) {
        const double kg = std::accumulate(
            daily.kg.begin() + qint64(week), daily.kg.begin() + qint64(week) + kWeekDays, 0.0);
        sum += kg;
        trained += kg > 0.0 ? 1 : 0;
    }
    return trained < kFewestHabitWeeks ? 0.0 : sum / (double(kWeekDays) * trained);
}

std::vector<double> multiples(const DailyTonnage &daily, double habit)
{
    std::vector<double> loads = daily.kg;
    for (double &load : loads)
        load /= habit;
    return loads;
}

/// What a lifter might be like.
struct Nature
{
    double fitnessDays = kFitnessDays;
    double fatigueDays = kFatigueDays;
    double fitnessShare = kFitnessShare;
    double level = 0.0; ///< SDs of the engine's belief in the max

    /// h: fatigue counts by its weight a day times the days it lasts, against fitness.
    [[nodiscard]] double fatigueShare() const
    {
        return fitnessShare * kFatigueWeight * fatigueDays / fitnessDays;
    }
};

std::vector<Nature> natures()
{
    std::mt19937 random(kSeed);
    std::normal_distribution<double> normal;
    std::vector<Nature> all(kFutures);
    for (Nature &nature : all) {
        nature.fitnessDays *= std::exp(kDoubt * normal(random));
        nature.fatigueDays *= std::exp(kDoubt * normal(random));
        nature.fatigueDays = std::min(nature.fatigueDays, 0.8 * nature.fitnessDays);
        nature.fitnessShare *= std::exp(kDoubt * normal(random));
        nature.level = normal(random);
    }
    return all;
}

/// Effect on ln max and fatigue at the end of each week, a row a future.
struct Futures
{
    std::vector<std::vector<double>> effect;
    std::vector<std::vector<double>> fatigue;
};

Futures simulate(const std::vector<Nature> &all, std::span<const double> past,
    std::span<const double> future, int firstWeekDays)
{
    Futures futures;
    for (const Nature &nature : all) {
        const Response now = respond(past, nature.fitnessDays, nature.fatigueDays).back();
        const std::vector<Response> path =
            respond(future, nature.fitnessDays, nature.fatigueDays, now);
        std::vector<double> effect;
        std::vector<double> fatigue;
        for (size_t day = size_t(firstWeekDays) - 1; day < path.size(); day += kWeekDays) {
            effect.push_back(nature.fitnessShare * (path[day].fitness - now.fitness)
                - nature.fatigueShare() * (path[day].fatigue - now.fatigue));
            fatigue.push_back(path[day].fatigue);
        }
        futures.effect.push_back(std::move(effect));
        futures.fatigue.push_back(std::move(fatigue));
    }
    return futures;
}

strength::Interval quantiles(std::vector<double> values)
{
    std::ranges::sort(values);
    const auto at = [&values](double share) {
        return values[size_t(std::lround(share * double(values.size() - 1)))];
    };
    return {at(0.5), at(0.05), at(0.95)};
}

template <class Value> strength::Interval across(size_t futures, Value value)
{
    std::vector<double> values;
    for (size_t i = 0; i < futures; ++i)
        values.push_back(value(i));
    return quantiles(std::move(values));
}

QString whyNot(const WhatIfInput &input, double habit)
{
    const strength::Standing standing = input.estimate.estimate.standing;
    if (!carriesLoads(standing))
        return advice(standing);
    if (habit <= 0.0)
        return Text::tr("Fewer than %1 of the last %2 weeks are logged: there is no habit that the "
                        "plan could be measured against.")
            .arg(kFewestHabitWeeks)
            .arg(kHabitWeeks);
    return {};
}

WhatIf summed(const WhatIfInput &input, const std::vector<Nature> &all, const Futures &futures,
    const DailyTonnage &plan, int firstWeekDays)
{
    WhatIf result;
    for (size_t week = 0; week < futures.effect.front().size(); ++week) {
        const int lastDay = firstWeekDays - 1 + kWeekDays * int(week);
        WhatIfWeek row;
        row.sunday = input.from.addDays(lastDay);
        const auto engine = input.estimate.estimate.maxOn(engineDay(row.sunday));
        if (!engine)
            return {{}, advice(strength::Standing::noData)};
        const double sd = strength::sdOfLn(engine->low90, engine->high90);
        const strength::Interval ln = across(all.size(), [&](size_t i) {
            return std::log(engine->kg) + sd * all[i].level + futures.effect[i][week];
        });
        row.max = {std::exp(ln.value), std::exp(ln.low90), std::exp(ln.high90)};
        row.fatigue = across(all.size(), [&](size_t i) { return futures.fatigue[i][week]; });
        for (int day = std::max(lastDay - kWeekDays + 1, 0); day <= lastDay; ++day)
            row.tonnageKg += plan.kg[size_t(day)];
        for (const WeekLoad &load : weeksBefore(mondayOf(row.sunday).addDays(kWeekDays), 1,
                 input.sessions, input.catalogue, input.lift))
            row.tonnageKg += load.tonnageKg;
        result.weeks.push_back(row);
    }
    return result;
}

} // namespace

std::vector<Response> respond(
    std::span<const double> loads, double fitnessDays, double fatigueDays, const Response &start)
{
    if (!(fitnessDays > 0.0 && fatigueDays > 0.0))
        throw std::invalid_argument("a time constant is above 0");
    const double fitnessFades = std::exp(-1.0 / fitnessDays);
    const double fatigueFades = std::exp(-1.0 / fatigueDays);
    std::vector<Response> path;
    Response now = start;
    for (const double load : loads) {
        now.fitness = now.fitness * fitnessFades + (1.0 - fitnessFades) * load;
        now.fatigue = now.fatigue * fatigueFades + (1.0 - fatigueFades) * load;
        path.push_back(now);
    }
    return path;
}

WhatIfComparison whatIf(const WhatIfInput &input, std::span<const ResolvedCard> current,
    std::span<const ResolvedCard> changed)
{
    if (input.weeks < 1 || !input.from.isValid())
        throw std::invalid_argument("a what-if looks at one week or more from a day on");
    const DailyTonnage past = done(input);
    const double habit = habitOf(past);
    WhatIfComparison result;
    if (const QString why = whyNot(input, habit); !why.isEmpty()) {
        result.current.why = result.changed.why = why;
        return result;
    }
    const std::vector<Nature> all = natures();
    const int firstWeekDays = kWeekDays + 1 - input.from.dayOfWeek();
    const auto futuresOf = [&](const DailyTonnage &plan) {
        return simulate(all, multiples(past, habit), multiples(plan, habit), firstWeekDays);
    };
    const DailyTonnage before = planned(input, current);
    const DailyTonnage after = planned(input, changed);
    const Futures now = futuresOf(before);
    const Futures then = futuresOf(after);
    result.current = summed(input, all, now, before, firstWeekDays);
    result.changed = summed(input, all, then, after, firstWeekDays);
    for (size_t week = 0; week < now.effect.front().size(); ++week)
        result.ratio.push_back(across(all.size(),
            [&](size_t i) { return std::exp(then.effect[i][week] - now.effect[i][week]); }));
    return result;
}

} // namespace core
