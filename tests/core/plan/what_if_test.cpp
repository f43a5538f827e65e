#include "core/plan/what_if.h"

#include "tests/core/plan/estimate_values.h"
#include "tests/core/plan/plan_rows.h"
#include "tests/core/strength/reference_values.h"
#include "tests/support/days.h"

#include <algorithm>
#include <cmath>
#include <gmock/gmock.h>
#include <random>

using namespace core;
using namespace tests;

namespace {

constexpr int kWeeks = 8;

/// Three bench days of 4 x 5 at 80 kg a week for twelve weeks, max 100 kg.
struct HabitDesk
{
    std::vector<LoggedSession> sessions;
    LiftEstimate estimate = plainEstimate(kMonday, 100.0, 0.02);

    HabitDesk()
    {
        for (int week = 1; week <= 12; ++week)
            for (const int day : {0, 2, 4})
                sessions.push_back(sessionOf(kMonday.addDays(day - 7 * week),
                    std::vector<SetEntry>(4, setOf(idOf("comp"), 80, 5, 7.5))));
    }

    /// The habit times `share` for `weeks` weeks, then as usual.
    std::vector<ResolvedCard> plan(double share, int weeks) const
    {
        std::vector<Card> cards;
        for (int week = 0; week < kWeeks; ++week)
            for (const int day : {0, 2, 4}) {
                const double kg = 80.0 * (week < weeks ? share : 1.0);
                if (kg > 0.0)
                    cards.push_back(
                        cardOf(qint64(cards.size()) + 1, kMonday.addDays(day + 7 * week), 0,
                            idOf("comp"), QStringLiteral("4x5 %1kg").arg(kg)));
            }
        Lifter lifter;
        lifter.gear = usualGear(Unit::kilogram);
        return resolveCards(cards,
            {lifter, builtInCatalogue(), [this](Lift) -> const LiftEstimate * { return &estimate; },
                noCheckIns(), {}, {}});
    }

    WhatIfInput input() const
    {
        return {builtInCatalogue(), sessions, estimate, Lift::bench, kMonday, kWeeks};
    }
};

WhatIf alone(const WhatIfInput &input, const std::vector<ResolvedCard> &plan)
{
    return whatIf(input, plan, plan).current;
}

} // namespace

TEST(WhatIf, AnImpulseTurnsAndPeaksOnThePublishedDays)
{
    // Morton, Fitz-Clarke & Banister (1990), from memory: with 45 and 15 days and fatigue weighted
    // 2, a bout of training does harm for (45 x 15 / 30) ln 2 = 15.6 days and serves best after
    // 22.5 ln 6 = 40.3 days.
    std::vector<double> loads(120, 0.0);
    loads[0] = 1.0;
    const auto path = respond(loads, kFitnessDays, kFatigueDays, {0.0, 0.0});
    const double weight = kFatigueWeight * kFatigueDays / kFitnessDays;
    const auto effect = [&](int day) {
        return path[size_t(day)].fitness - weight * path[size_t(day)].fatigue;
    };
    EXPECT_LT(effect(15), 0.0);
    EXPECT_GT(effect(16), 0.0);
    int best = 0;
    for (int day = 0; day < 120; ++day)
        best = effect(day) > effect(best) ? day : best;
    EXPECT_NEAR(best, 40, 1);
}

TEST(WhatIf, HabitIsAFixedPoint)
{
    const std::vector<double> loads(60, 1.0);
    for (const Response &day : respond(loads, kFitnessDays, kFatigueDays)) {
        EXPECT_NEAR(day.fitness, 1.0, 1e-12);
        EXPECT_NEAR(day.fatigue, 1.0, 1e-12);
    }
    EXPECT_THROW((void)respond(loads, 0.0, 15.0), std::invalid_argument);
}

TEST(WhatIf, HalfTheLoadForTwoWeeksBringsWhatTapersBring)
{
    // Bosquet et al. (2007), from memory: about 2 % on average.
    const std::vector<double> loads(14, 0.5);
    const Response end = respond(loads, kFitnessDays, kFatigueDays).back();
    const double fatigueShare = kFitnessShare * kFatigueWeight * kFatigueDays / kFitnessDays;
    EXPECT_NEAR(
        kFitnessShare * (end.fitness - 1.0) - fatigueShare * (end.fatigue - 1.0), 0.02, 0.0005);
}

TEST(WhatIf, TrainingAsUsualLeavesTheEnginesExpectationAlone)
{
    const HabitDesk desk;
    const WhatIf result = alone(desk.input(), desk.plan(1.0, 0));
    ASSERT_EQ(result.weeks.size(), size_t(kWeeks));
    for (const WhatIfWeek &week : result.weeks) {
        const auto engine = desk.estimate.estimate.maxOn(engineDay(week.sunday));
        EXPECT_NEAR(week.max.kg, engine->kg, 1.0);
        EXPECT_LE(week.max.low90, engine->kg);
        EXPECT_GE(week.max.high90, engine->kg);
        EXPECT_NEAR(week.fatigue.value, 1.0, 0.1); // the days of a week differ
        EXPECT_NEAR(week.tonnageKg, 3 * 4 * 5 * 80, 1e-6);
        EXPECT_EQ(week.sunday.dayOfWeek(), Qt::Sunday);
    }
}

TEST(WhatIf, LessLoadFreshensFirstAndFadesLater)
{
    const HabitDesk desk;
    const auto taper = whatIf(desk.input(), desk.plan(1.0, 0), desk.plan(0.5, 2));
    ASSERT_EQ(taper.ratio.size(), size_t(kWeeks));
    EXPECT_GT(taper.ratio[1].value, 1.005);
    EXPECT_LT(taper.ratio[1].low90, taper.ratio[1].value);
    EXPECT_LT(taper.changed.weeks[1].fatigue.high90, taper.current.weeks[1].fatigue.low90);

    const auto away = whatIf(desk.input(), desk.plan(1.0, 0), desk.plan(0.0, kWeeks));
    EXPECT_LT(away.ratio.back().value, away.ratio[2].value);
}

TEST(WhatIf, MoreLoadTiresFirst)
{
    const HabitDesk desk;
    const auto more = whatIf(desk.input(), desk.plan(1.0, 0), desk.plan(1.3, 2));
    EXPECT_LT(more.ratio[0].value, 1.0);
    EXPECT_GT(more.ratio.back().value, more.ratio[1].value);
    EXPECT_GT(more.changed.weeks[1].fatigue.value, more.current.weeks[1].fatigue.value);
}

TEST(WhatIf, TheSamePlanTwiceIsNoChange)
{
    const HabitDesk desk;
    const auto plan = desk.plan(1.2, 3);
    for (const strength::Interval &ratio : whatIf(desk.input(), plan, plan).ratio) {
        EXPECT_DOUBLE_EQ(ratio.low90, 1.0);
        EXPECT_DOUBLE_EQ(ratio.high90, 1.0);
    }
}

TEST(WhatIf, SaysWhyItCannotSay)
{
    HabitDesk newcomer;
    newcomer.sessions.resize(6); // two weeks
    const WhatIf few = alone(newcomer.input(), newcomer.plan(1.0, 0));
    EXPECT_TRUE(few.weeks.empty());
    EXPECT_FALSE(few.why.isEmpty());

    HabitDesk unknown;
    unknown.estimate.estimate.standing = strength::Standing::priorOnly;
    EXPECT_FALSE(alone(unknown.input(), unknown.plan(1.0, 0)).why.isEmpty());
}

TEST(WhatIf, AWeekThatHasBegunCountsWhatIsDone)
{
    HabitDesk desk;
    desk.sessions.push_back(
        sessionOf(kMonday, std::vector<SetEntry>(4, setOf(idOf("comp"), 80, 5, 7.5))));
    WhatIfInput input = desk.input();
    input.from = kMonday.addDays(1);
    const WhatIf result = alone(input, desk.plan(1.0, 0));
    ASSERT_EQ(result.weeks.size(), size_t(kWeeks));
    EXPECT_EQ(result.weeks.front().sunday, kMonday.addDays(6));
    EXPECT_NEAR(result.weeks.front().tonnageKg, 3 * 4 * 5 * 80, 1e-6);
}

TEST(WhatIf, TheFuturesScatterAsTheNaturesOfLiftersDo)
{
    // The model of what_if.h once more, with draws of its own: time constants and the weight of
    // fitness each with a third of their size as SD, fatigue always the faster of the two.
    const HabitDesk desk;
    const auto taper = whatIf(desk.input(), desk.plan(1.0, 0), desk.plan(0.5, 2));
    std::vector<double> past, usual, less;
    for (int day = -7 * 12; day < 7 * kWeeks; ++day) {
        const int weekday = (day + 7 * 12) % 7;
        const bool trains = weekday == 0 || weekday == 2 || weekday == 4;
        const double load = trains ? 7.0 / 3.0 : 0.0; // of the habit's mean day
        if (day < 0) {
            past.push_back(load);
        } else {
            usual.push_back(load);
            less.push_back(load * (day < 14 ? 0.5 : 1.0));
        }
    }
    std::mt19937 random(1);
    std::normal_distribution<double> normal;
    std::vector<std::vector<double>> effects(kWeeks);
    for (int future = 0; future < 4000; ++future) {
        const double fitnessDays = 45.0 * std::exp(normal(random) / 3.0);
        const double fatigueDays =
            std::min(15.0 * std::exp(normal(random) / 3.0), 0.8 * fitnessDays);
        const double g = 0.292 * std::exp(normal(random) / 3.0);
        const double h = g * 2.0 * fatigueDays / fitnessDays;
        const Response now = respond(past, fitnessDays, fatigueDays).back();
        const auto current = respond(usual, fitnessDays, fatigueDays, now);
        const auto changed = respond(less, fitnessDays, fatigueDays, now);
        for (size_t week = 0; week < size_t(kWeeks); ++week) {
            const size_t sunday = 7 * week + 6;
            effects[week].push_back(g * (changed[sunday].fitness - current[sunday].fitness)
                - h * (changed[sunday].fatigue - current[sunday].fatigue));
        }
    }
    for (size_t week = 0; week < size_t(kWeeks); ++week) {
        std::vector<double> &all = effects[week];
        std::sort(all.begin(), all.end());
        const double low = all[200], middle = all[2000], high = all[3800];
        const double near = 0.1 * (high - low); // 400 futures against 4000
        EXPECT_NEAR(std::log(taper.ratio[week].value), middle, near) << week;
        EXPECT_NEAR(std::log(taper.ratio[week].low90), low, near) << week;
        EXPECT_NEAR(std::log(taper.ratio[week].high90), high, near) << week;
    }
}

TEST(WhatIf, TheDoubtOfTheEngineIsTheLeastThereIs)
{
    HabitDesk sure, unsure;
    unsure.estimate = plainEstimate(kMonday, 100.0, 0.06);
    const auto widthOf = [](const HabitDesk &desk) {
        const strength::Band max = alone(desk.input(), desk.plan(1.0, 0)).weeks.front().max;
        return std::log(max.high90 / max.low90);
    };
    constexpr double kBothTails = 2.0 * 1.6449; // of a 90 % interval, in SDs
    EXPECT_NEAR(widthOf(sure), kBothTails * 0.02, 0.1 * kBothTails * 0.02);
    EXPECT_NEAR(widthOf(unsure), kBothTails * 0.06, 0.1 * kBothTails * 0.06);
}

TEST(WhatIf, OnlyTheLiftItselfCounts)
{
    HabitDesk desk;
    const WhatIf before = alone(desk.input(), desk.plan(1.0, 0));
    for (int week = 1; week <= 12; ++week)
        desk.sessions.push_back(sessionOf(kMonday.addDays(1 - 7 * week),
            std::vector<SetEntry>(5, setOf(idOf("squat"), 150, 5, 8))));
    const WhatIf after = alone(desk.input(), desk.plan(1.0, 0));
    EXPECT_DOUBLE_EQ(after.weeks.back().max.kg, before.weeks.back().max.kg);
    EXPECT_DOUBLE_EQ(after.weeks.back().fatigue.value, before.weeks.back().fatigue.value);
}

TEST(WhatIf, FourTrainedWeeksOfTheLastTwelveAreAHabitAndALayoffIsNone)
{
    HabitDesk desk;
    const std::vector<LoggedSession> all = desk.sessions; // three a week, the newest first
    desk.sessions.assign(all.begin(), all.begin() + 9);
    EXPECT_TRUE(alone(desk.input(), desk.plan(1.0, 0)).weeks.empty()) << "three weeks";
    desk.sessions.assign(all.begin(), all.begin() + 12);
    const WhatIf four = alone(desk.input(), desk.plan(1.0, 0));
    ASSERT_EQ(four.weeks.size(), size_t(kWeeks));

    // The habit is that of the weeks trained. After eight weeks off, the usual work lifts fatigue
    // back toward 1 from below.
    desk.sessions.assign(all.end() - 12, all.end());
    const WhatIf back = alone(desk.input(), desk.plan(1.0, 0));
    ASSERT_EQ(back.weeks.size(), size_t(kWeeks));
    EXPECT_LT(back.weeks.front().fatigue.value, 0.6);
    EXPECT_NEAR(back.weeks.back().fatigue.value, 1.0, 0.1);
    EXPECT_GT(back.weeks.back().max.kg, back.weeks.front().max.kg);
}

TEST(WhatIf, LooksAtOneWeekOrMore)
{
    const HabitDesk desk;
    WhatIfInput input = desk.input();
    input.weeks = 1;
    EXPECT_EQ(alone(input, desk.plan(1.0, 0)).weeks.size(), 1u);
    input.weeks = 0;
    EXPECT_THROW((void)alone(input, {}), std::invalid_argument);
    input.weeks = 1;
    input.from = {};
    EXPECT_THROW((void)alone(input, {}), std::invalid_argument);
    EXPECT_THROW((void)respond({}, 45.0, 0.0), std::invalid_argument);
}

TEST(WhatIf, AWeekThatHasBegunEndsOnItsSunday)
{
    // From a Sunday on, the first week is that day alone.
    const HabitDesk desk;
    WhatIfInput input = desk.input();
    input.from = kMonday.addDays(6);
    const WhatIf result = alone(input, desk.plan(1.0, 0));
    ASSERT_EQ(result.weeks.size(), size_t(kWeeks));
    EXPECT_EQ(result.weeks[0].sunday, kMonday.addDays(6));
    EXPECT_EQ(result.weeks[0].tonnageKg, 0.0);
    EXPECT_EQ(result.weeks[1].sunday, kMonday.addDays(13));
    EXPECT_NEAR(result.weeks[1].tonnageKg, 3 * 4 * 5 * 80, 1e-6);
}

TEST(WhatIf, SaysOfAFixedPlanWhatItAlwaysSaid)
{
    // The futures are drawn from a fixed seed, so that the same plan shows the same numbers.
    const HabitDesk desk;
    const auto taper = whatIf(desk.input(), desk.plan(1.0, 0), desk.plan(0.5, 2));
    samples::Values found;
    for (const size_t week : {size_t(0), size_t(1), size_t(4)}) {
        found.emplace_back("ratio", taper.ratio[week].value);
        found.emplace_back("low", taper.ratio[week].low90);
        found.emplace_back("high", taper.ratio[week].high90);
        found.emplace_back("max", taper.changed.weeks[week].max.kg);
        found.emplace_back("... low", taper.changed.weeks[week].max.low90);
        found.emplace_back("fatigue", taper.changed.weeks[week].fatigue.value);
        found.emplace_back("... high", taper.changed.weeks[week].fatigue.high90);
    }
    samples::expectReference(
        {{"ratio", 1.01350868}, {"low", 1.00485669}, {"high", 1.03438855}, {"max", 101.332259},
            {"... low", 97.8913972}, {"fatigue", 0.762828492}, {"... high", 0.848848192},
            {"ratio", 1.0169673}, {"low", 1.00113066}, {"high", 1.05236008}, {"max", 101.796464},
            {"... low", 98.0565963}, {"fatigue", 0.654257243}, {"... high", 0.761832112},
            {"ratio", 0.991412342}, {"low", 0.975027773}, {"high", 1.01003955}, {"max", 99.1002041},
            {"... low", 95.2504549}, {"fatigue", 0.863137597}, {"... high", 0.872441571}},
        found);
}
