#include "core/strength/forecast.h"
#include "core/strength/prescription.h"
#include "tests/core/strength/reference_values.h"
#include "tests/core/strength/training_samples.h"

using namespace samples;
using namespace strength;

namespace {

/// What a lifter with this max says of a set by the linear rule of thumb that three reps cost ten
/// per cent, with a little moodiness; a rep that is not there is missed.
TrainingSet done(double maxKg, double loadKg, int reps, double mood, int variation)
{
    const double possible = 30.0 * (maxKg / loadKg - 1.0) + 1.0;
    const int made = std::clamp(int(possible), 0, reps);
    TrainingSet set = unrated(loadKg, made);
    set.variation = variation;
    set.repsPlanned = reps;
    set.missed = made < reps;
    if (!set.missed)
        set.rpe = std::clamp(std::round(2.0 * (10.0 - possible + made + mood)) / 2.0, 4.0, 10.0);
    return set;
}

/// Forty weeks of a lifter who gains, with weeks off, days of better and worse form, sets in all
/// three variations, and what else a log holds: speeds, lead reps, sets without a rating.
LifterLog logOf(int lifter)
{
    LifterLog log;
    log.sex = lifter % 2 == 0 ? LifterLog::Sex::male : LifterLog::Sex::female;
    if (lifter > 0)
        log.bodyweightKg = 70.0 + 8.0 * lifter;
    for (int week = 0; week < (lifter == 1 ? 33 : 40); ++week) {
        if (lifter == 0 && week >= 20 && week < 26)
            continue;
        for (const int day : {0, 3}) {
            const double form = 0.015 * std::sin(2.1 * week + day + lifter);
            const double maxKg = (90.0 + 17.0 * lifter) * std::exp(0.001 * week + form);
            const double mood = std::sin(1.3 * week + 2.0 * day);
            TrainingSession session{4 + 7 * week + day, {}};
            session.sets = {done(maxKg, 0.80 * maxKg, 4, mood, 0),
                done(0.93 * maxKg, (0.77 + 0.02 * (week % 3)) * maxKg, 3, mood, 1),
                done(0.90 * maxKg, 0.68 * maxKg, 6, mood, 2)};
            if (week % 5 == 4)
                session.sets.push_back(done(maxKg, (0.97 + 0.02 * (week % 3)) * maxKg, 1, mood, 0));
            if (lifter == 1)
                session.sets[2].rpe.reset();
            if (lifter == 2)
                session.sets[0].velocity = 1.1 - 0.9 * session.sets[0].loadKg / maxKg;
            if (lifter == 3 && session.sets[1].reps > 1) {
                session.sets[1].leadVariation = 2;
                session.sets[1].leadReps = 1;
            }
            log.sessions.push_back(session);
        }
    }
    return log;
}

/// A log as it should not be: an absurd first session, three weeks typed in pounds, one day far out
/// of form, and ratings in whole numbers only.
LifterLog roughLog()
{
    LifterLog log = logOf(4);
    for (size_t i = 0; i < log.sessions.size(); ++i)
        for (TrainingSet &set : log.sessions[i].sets) {
            if (set.rpe)
                set.rpe = std::round(*set.rpe);
            if (i == 0)
                set.loadKg *= 5.0;
            if (i >= 20 && i < 26)
                set.loadKg /= 0.45359237;
            if (i == 50)
                set.loadKg *= 0.9;
        }
    return log;
}

const std::vector<LifterLog> kLogs{logOf(0), logOf(1), logOf(2), logOf(3), roughLog()};

void add(Values &values, const std::string &name, const Band &band)
{
    values.emplace_back(name, band.kg);
    values.emplace_back("... low", band.low90);
}

void add(Values &values, const std::string &name, const Interval &interval)
{
    values.emplace_back(name, interval.value);
    values.emplace_back("... low", interval.low90);
}

} // namespace

TEST(ReferenceRoster, Estimates)
{
    Values found;
    for (const LifterEstimate &estimate : estimateRoster(kLogs, kVariations, lastDayOf(kLogs))) {
        add(found, "last week", estimate.weeks.back().filtered);
        add(found, "week 14", estimate.weeks[14].filtered);
        add(found, "week 22 in review", estimate.weeks[22].smoothed);
        add(found, "idle", estimate.idle ? estimate.idle->max : Band{});
        add(found, "max of variation 1", estimate.variations[1].max);
        add(found, "ratio of variation 2", estimate.variations[2].ratio);
        add(found, "form", estimate.form[31].factor);
        add(found, "rating bias", estimate.rating.bias);
        found.emplace_back("rating noise", estimate.rating.noise);
        found.emplace_back("standing", double(estimate.standing));
        found.emplace_back("rep cost", estimate.variations[2].repCost);
        found.emplace_back("kappa", estimate.curve.kappa);
        found.emplace_back("power", estimate.curve.power);
        found.emplace_back("set fatigue", estimate.setFatigue);
        found.emplace_back("form SD", estimate.formSd);
        found.emplace_back("drift", estimate.driftPerWeek);
        found.emplace_back("strongest pull", estimate.pulls.front().pullKg);
        found.emplace_back("its surprise", estimate.pulls.front().surprise);
        add(found, "3 reps of variation 1, 2 left",
            loadFor(estimate, 300, kVariations, {1, 3, 2.0, 1.5}).value());
    }
    expectReference(
        {{"last week", 94.1421383}, {"... low", 91.3936467}, {"week 14", 90.9219681},
            {"... low", 88.0303618}, {"week 22 in review", 91.637891}, {"... low", 88.0038098},
            {"idle", 0}, {"... low", 0}, {"max of variation 1", 88.4149179},
            {"... low", 85.3945283}, {"ratio of variation 2", 0.878222435},
            {"... low", 0.846085892}, {"form", 0.994756071}, {"... low", 0.976425665},
            {"rating bias", -0.160512648}, {"... low", -0.597969227}, {"rating noise", 0.38090256},
            {"standing", 5}, {"rep cost", 0.921009618}, {"kappa", 0.0358485415},
            {"power", 0.834461334}, {"set fatigue", 0.0046505254}, {"form SD", 0.0205939099},
            {"drift", 0.0110505598}, {"strongest pull", 0.336932867}, {"its surprise", 0.175377104},
            {"3 reps of variation 1, 2 left", 77.6012617}, {"... low", 73.3606565},
            {"last week", 109.645829}, {"... low", 106.303725}, {"week 14", 107.855504},
            {"... low", 104.460277}, {"week 22 in review", 108.998469}, {"... low", 105.945847},
            {"idle", 101.756894}, {"... low", 95.5471918}, {"max of variation 1", 94.1391332},
            {"... low", 88.1994911}, {"ratio of variation 2", 0.91480057}, {"... low", 0.861008242},
            {"form", 0.985492357}, {"... low", 0.965637348}, {"rating bias", -0.0208094278},
            {"... low", -0.558386124}, {"rating noise", 0.3701291}, {"standing", 3},
            {"rep cost", 1.08256161}, {"kappa", 0.0318068954}, {"power", 0.888829191},
            {"set fatigue", 0.00431640296}, {"form SD", 0.0197298449}, {"drift", 0.0110505598},
            {"strongest pull", -0.406561278}, {"its surprise", -0.00120993563},
            {"3 reps of variation 1, 2 left", 84.0223157}, {"... low", 77.5462016},
            {"last week", 129.638359}, {"... low", 126.051078}, {"week 14", 125.487427},
            {"... low", 121.686921}, {"week 22 in review", 126.991838}, {"... low", 123.664744},
            {"idle", 0}, {"... low", 0}, {"max of variation 1", 120.204172},
            {"... low", 116.082812}, {"ratio of variation 2", 0.873485855},
            {"... low", 0.840285929}, {"form", 0.987039322}, {"... low", 0.969889512},
            {"rating bias", -0.0466706689}, {"... low", -0.459874893},
            {"rating noise", 0.365284786}, {"standing", 5}, {"rep cost", 0.894707536},
            {"kappa", 0.0355941859}, {"power", 0.859611947}, {"set fatigue", 0.00468421049},
            {"form SD", 0.0192514639}, {"drift", 0.0110505598}, {"strongest pull", 0.310476003},
            {"its surprise", -0.246692535}, {"3 reps of variation 1, 2 left", 106.107346},
            {"... low", 100.431529}, {"last week", 147.525527}, {"... low", 143.307159},
            {"week 14", 142.28106}, {"... low", 137.893726}, {"week 22 in review", 144.429153},
            {"... low", 140.553729}, {"idle", 0}, {"... low", 0},
            {"max of variation 1", 139.175657}, {"... low", 133.732866},
            {"ratio of variation 2", 0.883872078}, {"... low", 0.856415232}, {"form", 0.992717383},
            {"... low", 0.97436889}, {"rating bias", -0.115545295}, {"... low", -0.533461364},
            {"rating noise", 0.381828282}, {"standing", 5}, {"rep cost", 0.933458164},
            {"kappa", 0.0352902768}, {"power", 0.852622719}, {"set fatigue", 0.00546956304},
            {"form SD", 0.0204106525}, {"drift", 0.0110505598}, {"strongest pull", 0.359504109},
            {"its surprise", 0.21373144}, {"3 reps of variation 1, 2 left", 122.372412},
            {"... low", 115.322409}, {"last week", 165.704685}, {"... low", 160.92129},
            {"week 14", 345.780181}, {"... low", 326.734804}, {"week 22 in review", 161.83939},
            {"... low", 157.472332}, {"idle", 0}, {"... low", 0},
            {"max of variation 1", 153.411892}, {"... low", 148.399979},
            {"ratio of variation 2", 0.916995733}, {"... low", 0.889490987}, {"form", 0.947321255},
            {"... low", 0.926776162}, {"rating bias", -0.439627503}, {"... low", -0.883981574},
            {"rating noise", 0.367687361}, {"standing", 5}, {"rep cost", 1.0503933},
            {"kappa", 0.033969776}, {"power", 0.896671748}, {"set fatigue", 0.00355533517},
            {"form SD", 0.0206285701}, {"drift", 0.0110505598}, {"strongest pull", 0.730382011},
            {"its surprise", 1.53884759}, {"3 reps of variation 1, 2 left", 135.903057},
            {"... low", 128.59299}},
        found);
}

TEST(ReferenceRoster, Forecasts)
{
    double rir = 0.0, usual = 0.0, chance = 0.0;
    const std::vector<SetForecast> forecasts = forecastSessions(kLogs, kVariations);
    for (const SetForecast &forecast : forecasts) {
        rir += forecast.rir;
        usual += forecast.usualRir;
        chance += forecast.missChance;
    }
    expectReference(
        {{"sets", 1181}, {"RIR", 5262.70227}, {"usual RIR", 4626.8564}, {"misses", 54.1657369}},
        {{"sets", double(forecasts.size())}, {"RIR", rir}, {"usual RIR", usual},
            {"misses", chance}});
}
