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

const std::vector<LifterLog> kLogs{logOf(0), logOf(1), logOf(2), logOf(3)};

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
    for (const LifterEstimate &estimate : estimateRoster(kLogs, kVariations)) {
        add(found, "last week", estimate.weeks.back().filtered);
        add(found, "week 22 in review", estimate.weeks[22].smoothed);
        add(found, "idle", estimate.idle ? estimate.idle->max : Band{});
        add(found, "max of variation 1", estimate.variations[1].max);
        add(found, "ratio of variation 2", estimate.variations[2].ratio);
        add(found, "form", estimate.form[31].factor);
        add(found, "rating bias", estimate.rating.bias);
        found.emplace_back("rating noise", estimate.rating.noise);
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
        {{"last week", 94.4466842}, {"... low", 91.7462089}, {"week 22 in review", 91.8512971},
            {"... low", 88.5262773}, {"idle", 0}, {"... low", 0},
            {"max of variation 1", 88.0931246}, {"... low", 85.2424203},
            {"ratio of variation 2", 0.891079356}, {"... low", 0.859256101}, {"form", 0.991959043},
            {"... low", 0.974328625}, {"rating bias", -0.116219692}, {"... low", -0.551986731},
            {"rating noise", 0.330990542}, {"rep cost", 0.975721397}, {"kappa", 0.0363679133},
            {"power", 0.845680087}, {"set fatigue", 0.00493510779}, {"form SD", 0.022250987},
            {"drift", 0.00817939174}, {"strongest pull", 0.328375049},
            {"its surprise", -0.0817495872}, {"3 reps of variation 1, 2 left", 77.3853451},
            {"... low", 73.3547335}, {"last week", 110.254773}, {"... low", 106.992447},
            {"week 22 in review", 109.600922}, {"... low", 106.630452}, {"idle", 102.326883},
            {"... low", 96.8590283}, {"max of variation 1", 94.5135649}, {"... low", 89.2980045},
            {"ratio of variation 2", 0.909504506}, {"... low", 0.85672552}, {"form", 0.983541762},
            {"... low", 0.96466767}, {"rating bias", 0.0729840462}, {"... low", -0.47526203},
            {"rating noise", 0.320817078}, {"rep cost", 1.13989251}, {"kappa", 0.0343374224},
            {"power", 0.880032994}, {"set fatigue", 0.0046995008}, {"form SD", 0.0210516898},
            {"drift", 0.00817939174}, {"strongest pull", -0.475537242},
            {"its surprise", -0.130788226}, {"3 reps of variation 1, 2 left", 83.7383235},
            {"... low", 77.9986178}, {"last week", 129.779972}, {"... low", 126.282278},
            {"week 22 in review", 127.18347}, {"... low", 123.999125}, {"idle", 0}, {"... low", 0},
            {"max of variation 1", 120.198357}, {"... low", 116.495858},
            {"ratio of variation 2", 0.88369781}, {"... low", 0.852665301}, {"form", 0.984301027},
            {"... low", 0.96810145}, {"rating bias", 0.0178916906}, {"... low", -0.375118093},
            {"rating noise", 0.31849617}, {"rep cost", 0.938842446}, {"kappa", 0.0373618791},
            {"power", 0.849020414}, {"set fatigue", 0.00477990584}, {"form SD", 0.0206091868},
            {"drift", 0.00817939174}, {"strongest pull", 0.334724527},
            {"its surprise", -0.364559229}, {"3 reps of variation 1, 2 left", 105.797285},
            {"... low", 100.569882}, {"last week", 148.189473}, {"... low", 144.031034},
            {"week 22 in review", 145.108702}, {"... low", 141.34614}, {"idle", 0}, {"... low", 0},
            {"max of variation 1", 139.164838}, {"... low", 134.480353},
            {"ratio of variation 2", 0.8914265}, {"... low", 0.860831623}, {"form", 0.990930568},
            {"... low", 0.973817084}, {"rating bias", -0.14199099}, {"... low", -0.571912916},
            {"rating noise", 0.315823962}, {"rep cost", 0.969666611}, {"kappa", 0.036248407},
            {"power", 0.853711227}, {"set fatigue", 0.005852771}, {"form SD", 0.021824093},
            {"drift", 0.00817939174}, {"strongest pull", 0.377846067},
            {"its surprise", -0.199403921}, {"3 reps of variation 1, 2 left", 122.131626},
            {"... low", 115.727879}},
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
        {{"sets", 928}, {"RIR", 3919.95307}, {"usual RIR", 3680.98709}, {"misses", 22.8162956}},
        {{"sets", double(forecasts.size())}, {"RIR", rir}, {"usual RIR", usual},
            {"misses", chance}});
}
