#include "tests/simulators/truths.h"

#include <algorithm>
#include <cmath>

namespace simulators {

namespace {

using Sex = strength::LifterLog::Sex;

/// What every world shares: a person, their ratios, their fatigue and their weeks.
Makeup drawPerson(Random &random)
{
    Makeup person;
    const bool female = random.chance(0.4);
    person.sex = female ? Sex::female : Sex::male;
    person.bodyweightKg = std::round(female ? random.trait(66, 9) : random.trait(86, 13));
    person.startKg =
        *person.bodyweightKg * (female ? random.uniform(0.75, 1.3) : random.uniform(1.1, 1.9));
    person.capacity.variations = drawVariations(random);
    person.fatigue.cost = random.uniform(0.008, 0.024);
    person.fatigue.restMinutes = random.uniform(2.0, 6.0);
    person.plan = drawPlanTraits(random);
    person.rater.bias = random.trait(-0.2, 0.45);
    person.rater.noise = random.uniform(0.3, 0.55);
    person.rater.halves = random.chance(0.7);
    return person;
}

std::unique_ptr<Coach> drawCoachByRating(double startKg, Random &random)
{
    return coachByRating(startKg * random.trait(0.98, 0.04));
}

/// Experienced lifters on rated training: training waves lift and lower them, ratings are decent.
Makeup waves(Random &random, int)
{
    Makeup lifter = drawPerson(random);
    const double few = random.trait(1.0, 0.12);
    lifter.capacity.reps = handbookChart(few, few * random.trait(1.1, 0.15));
    ImpulseResponse response;
    response.usualDose = 0.13 * lifter.plan.sessionsPerWeek;
    response.fitnessGain = random.uniform(0.04, 0.12);
    response.fatigueLoss = random.uniform(0.02, 0.06);
    lifter.level = together({impulseResponse(response),
        towardCeiling(random.uniform(0.0, 0.10), random.uniform(15, 40)), wander(0.012, 40)});
    lifter.coach = drawCoachByRating(lifter.startKg, random);
    return lifter;
}

/// Lives with gaps: layoffs with loss and quick return, ratings left out when sets are easy.
Makeup layoffs(Random &random, int weeks)
{
    Makeup lifter = drawPerson(random);
    lifter.capacity.reps = hyperbola(random.uniform(28, 40), random.uniform(0.88, 1.08));
    const int length = random.whole(3, 9);
    lifter.plan.layoffs.push_back({random.whole(weeks / 5, weeks / 2), length});
    if (random.chance(0.4))
        lifter.plan.layoffs.push_back({random.whole(2 * weeks / 3, weeks - 6), random.whole(1, 3)});
    lifter.level = together({layoffLoss(random.uniform(0.12, 0.25), random.uniform(9, 20)),
        towardCeiling(random.uniform(0.02, 0.18), random.uniform(12, 40)), wander(0.012, 30)});
    lifter.rater.compression = random.uniform(0.7, 0.95);
    lifter.rater.missing = random.uniform(0.05, 0.2);
    lifter.rater.missingPerRep = random.uniform(0.05, 0.12);
    lifter.coach = drawCoachByRating(lifter.startKg, random);
    return lifter;
}

/// Loads by percent of an assumed max; many misses, coarse ratings whose bias drifts, wild days.
Makeup formula(Random &random, int)
{
    Makeup lifter = drawPerson(random);
    lifter.capacity.reps = fallToFloor(random.uniform(0.45, 0.55), random.uniform(0.055, 0.085));
    lifter.level = together({blockWaves(lifter.plan.blockWeeks, random.uniform(0.01, 0.035)),
        towardCeiling(random.uniform(0.0, 0.12), random.uniform(12, 40)), wander(0.015, 40)});
    lifter.form.sd = random.uniform(0.015, 0.028);
    lifter.form.tails = 3;
    lifter.form.badDay = 0.03;
    lifter.rater.halves = random.chance(0.3);
    lifter.rater.lowest = 6.0;
    lifter.rater.biasDrift = random.uniform(0.2, 0.6);
    lifter.rater.missing = random.uniform(0.1, 0.4);
    lifter.coach =
        coachByFormula(lifter.startKg * random.trait(1.04, 0.03), lifter.startKg > 90 ? 2.5 : 1.25);
    return lifter;
}

/// A mixed gym: any curve, either way of loading, lead-rep sets, some bar speed, typed errors.
Makeup mixed(Random &random, int weeks)
{
    Makeup (*const kWorlds[])(Random &, int) = {waves, layoffs, formula};
    Makeup lifter = kWorlds[random.whole(0, 2)](random, weeks);
    lifter.plan.leadReps = random.chance(0.3);
    lifter.rater.bias = random.trait(-0.2, 0.7);
    lifter.typos = 0.002;
    if (random.chance(0.25))
        lifter.barSpeed = BarSpeedTraits{random.trait(0.0, 0.04), random.trait(1.0, 0.08), 0.035};
    return lifter;
}

/// Little to go by: two short sessions a week, seldom the competition lift, no singles, few
/// ratings.
Makeup sparse(Random &random, int)
{
    Makeup lifter = drawPerson(random);
    lifter.capacity.reps = random.chance(0.5)
        ? hyperbola(random.uniform(28, 40), random.uniform(0.88, 1.08))
        : fallToFloor(random.uniform(0.45, 0.55), random.uniform(0.055, 0.085));
    lifter.level = together(
        {towardCeiling(random.uniform(0.0, 0.2), random.uniform(12, 40)), wander(0.018, 40)});
    lifter.plan.sessionsPerWeek = 2;
    lifter.plan.competitionShare = 0.2;
    lifter.plan.singles = 0.05;
    lifter.plan.skipped = 0.2;
    lifter.rater.missing = 0.3;
    lifter.rater.missingPerRep = 0.1;
    lifter.coach = drawCoachByRating(lifter.startKg, random);
    return lifter;
}

constexpr std::array kTruths{
    Truth{"waves", "fitness and fatigue, handbook chart, loads by rating", waves},
    Truth{"layoffs", "gaps with loss and return, hyperbola, easy sets unrated", layoffs},
    Truth{"formula", "percent loading, misses, drifting coarse ratings, wild days", formula},
    Truth{"mixed", "all of these in one gym, lead reps, bar speed, typing errors", mixed},
    Truth{"sparse", "two short sessions a week, few ratings, seldom competition", sparse},
};

} // namespace

std::vector<strength::LifterLog> SimulatedRoster::logs() const
{
    std::vector<strength::LifterLog> logs;
    for (const SimulatedLifter &lifter : lifters)
        logs.push_back(lifter.log);
    return logs;
}

std::span<const Truth> truths()
{
    return kTruths;
}

SimulatedRoster simulateRoster(
    const Truth &truth, std::uint64_t seed, int lifters, int weeks, const Change &change)
{
    Random random(seed);
    SimulatedRoster roster;
    for (int i = 0; i < lifters; ++i) {
        Random person = random.fork();
        Makeup makeup = truth.draw(person, weeks);
        if (change)
            change(i, makeup);
        roster.lifters.push_back(simulate(std::move(makeup), weeks, person.fork()));
    }
    return roster;
}

} // namespace simulators
