#include "core/strength/lifter_filter.h"

#include "core/strength/rep_curve.h"
#include "tests/core/strength/training_samples.h"

#include <cmath>
#include <gtest/gtest.h>

// Where the filter of one lifter's log turns: "State" in core/strength/model.h. Most of its numbers
// are common practice, no source; here they are worked by hand.

using namespace samples;
using namespace strength;

namespace {

using FilterSets = std::vector<TrainingSet>;

/// A filter that expects a max of 100 kg, somewhat.
LifterFilter freshFilter()
{
    return {publishedPriors(kVariations), {std::log(100.0), 0.33}};
}

void train(LifterFilter &filter, int day, const FilterSets &sets)
{
    filter.startWeeksUpTo(day);
    filter.addSession(day, sets);
}

/// Twenty weeks of a lifter with a max of 100 kg, up to the Thursday of day 140.
LifterFilter knownFilter()
{
    LifterFilter filter = freshFilter();
    for (const TrainingSession &session : steadyLog(20).sessions)
        train(filter, session.day, session.sets);
    return filter;
}

double sdOfMax(const LifterFilter &filter)
{
    return std::sqrt(lnMaxVariance(filter.belief().covariance()));
}

/// Whether a first session is believed by one who was nearly sure of `lnKg`: only within four SDs.
bool isBelievedBy(double lnKg, double sd, const FilterSets &sets)
{
    LifterFilter filter(publishedPriors(kVariations), {lnKg, sd});
    train(filter, 4, sets);
    return sdOfMax(filter) > 0.02; // else the level starts as surely as it was expected
}

/// Whether the first session speaks for this max, to a few millionths.
bool speaksFor(double kg, const FilterSets &sets)
{
    return isBelievedBy(std::log(kg), 1e-6, sets);
}

} // namespace

TEST(LifterFilter, AFirstSessionBeyondFourSdsOfAnyLifterIsNotBelieved)
{
    const RosterPriors priors = publishedPriors(kVariations);
    const RepCurve curve{std::exp(priors.lnKappa.mean), priors.power.mean};
    const double crude = std::log(80.0 / curve.share(7.0)); // 80 kg for five, two left
    const FilterSets sets{rated(80, 5, 8)};
    for (const double side : {-1.0, 1.0}) {
        EXPECT_TRUE(isBelievedBy(crude + side * 3.99 * 0.01, 0.01, sets));
        EXPECT_FALSE(isBelievedBy(crude + side * 4.01 * 0.01, 0.01, sets));
    }
}

TEST(LifterFilter, AFirstSessionSpeaksForWhatTheMiddleOneOfItsSetsSays)
{
    // Load / share of the reps done and left: what was said, half a rep of a miss, the usual four
    // of an unrated set.
    const RosterPriors priors = publishedPriors(kVariations);
    const RepCurve curve{std::exp(priors.lnKappa.mean), priors.power.mean};
    EXPECT_TRUE(speaksFor(80.0 / curve.share(7.0), {rated(80, 5, 8)}));
    EXPECT_TRUE(speaksFor(80.0 / curve.share(2.5), {missed(80, 2)}));
    EXPECT_TRUE(speaksFor(80.0 / curve.share(9.0), {unrated(80, 5)}));
    EXPECT_TRUE(speaksFor(80.0 / 0.92 / curve.share(7.0, 1.2), {rated(80, 5, 8, 2)}));
    EXPECT_FALSE(speaksFor(80.0 / curve.share(7.01), {rated(80, 5, 8)}));
    EXPECT_TRUE(
        speaksFor(90.0 / curve.share(3.0), {rated(50, 1, 8), rated(90, 1, 8), rated(200, 1, 8)}));
    EXPECT_TRUE(speaksFor(90.0 / curve.share(3.0), {rated(90, 1, 8), rated(50, 1, 8)}))
        << "the upper one of two";
}

TEST(LifterFilter, TenRatingsWithoutAHalfShowWholeNumbers)
{
    LifterFilter filter = freshFilter();
    auto halfStepAfter = [&filter, day = 4](double rpe) mutable {
        train(filter, day += 2, {rated(80, 5, rpe)});
        return filter.ratingWays().halfStep;
    };
    for (int rating = 1; rating <= 9; ++rating)
        EXPECT_EQ(halfStepAfter(7.0), 0.25) << rating;
    EXPECT_EQ(halfStepAfter(7.0), 0.5) << "the tenth";
    EXPECT_EQ(halfStepAfter(7.5), 0.25);
    EXPECT_EQ(halfStepAfter(7.0), 0.25) << "the count began anew";
    EXPECT_EQ(filter.ratingWays().lowest, 6.5);
    EXPECT_EQ(halfStepAfter(6.0), 0.25);
    EXPECT_EQ(filter.ratingWays().lowest, 6.0);
}

TEST(LifterFilter, RatingsOfAMissCountForNothing)
{
    LifterFilter filter = freshFilter();
    TrainingSet set = missed(95, 2);
    set.rpe = 5.0;
    train(filter, 4, {set});
    EXPECT_EQ(filter.ratingWays().lowest, 6.5);
}

TEST(LifterFilter, ALayoffBeginsOnTheEleventhDayOff)
{
    // Half of the 15 % goes in 35 days; in a week of training 70 % of what is lost stays lost.
    const auto stepInto = [](int lastDay, int day) {
        LifterFilter filter = freshFilter();
        train(filter, lastDay, {rated(87, 3, 8)});
        filter.startWeeksUpTo(day - 7);
        return filter.startWeek(day);
    };
    const auto lostAfter = [](int days) { return 1.0 - std::exp2(-days / 35.0); };
    const int sunday = 10; // 1970-01-11
    const ChainStep none = stepInto(sunday - 3, sunday + 7);
    EXPECT_EQ(none.transition(level, slope), 1.0);
    EXPECT_EQ(none.transition(layoff, layoff), 0.7);
    EXPECT_EQ(none.drift[layoff], 0.0);
    EXPECT_DOUBLE_EQ(none.transition(slope, slope), 0.96);
    EXPECT_DOUBLE_EQ(none.noise(level, level), 0.008 * 0.008);
    EXPECT_DOUBLE_EQ(none.noise(slope, slope), 0.002 * 0.002 * (1.0 - 0.96 * 0.96));
    EXPECT_DOUBLE_EQ(none.noise(layoff, layoff), 1e-6);
    EXPECT_DOUBLE_EQ(none.noise(ratingBias, ratingBias), 0.045 * 0.045);

    const ChainStep oneDay = stepInto(sunday - 4, sunday + 7); // the eleventh day after Wednesday
    EXPECT_EQ(oneDay.transition(level, slope), 0.0) << "no trend in a layoff";
    EXPECT_DOUBLE_EQ(oneDay.transition(layoff, layoff), 1.0 - lostAfter(1));
    EXPECT_DOUBLE_EQ(oneDay.drift[layoff], -0.15 * lostAfter(1));
    EXPECT_DOUBLE_EQ(oneDay.noise(layoff, layoff), 1e-6 + std::pow(0.5 * 0.15 * lostAfter(1), 2.0));
    // Then the whole weeks, each counted once, up to the day of the return.
    EXPECT_DOUBLE_EQ(stepInto(sunday - 4, sunday + 14).drift[layoff], -0.15 * lostAfter(7));
    EXPECT_DOUBLE_EQ(stepInto(sunday - 4, sunday + 16).drift[layoff], -0.15 * lostAfter(2));
}

TEST(LifterFilter, WeeksBeginUntilTheDayLiesInOne)
{
    LifterFilter filter = freshFilter();
    train(filter, 4, {rated(87, 3, 8)}); // Monday
    EXPECT_EQ(filter.sunday(), 10);
    filter.startWeeksUpTo(10);
    EXPECT_EQ(filter.sunday(), 10);
    filter.startWeeksUpTo(11);
    EXPECT_EQ(filter.sunday(), 17);
    filter.startWeeksUpTo(38);
    EXPECT_EQ(filter.sunday(), 38);
}

TEST(LifterFilter, DisagreementFadesOverTwelveSets)
{
    // Every set that is gross for sure moves it a twelfth of the way to 1.
    LifterFilter filter = knownFilter();
    double expected = filter.conflict();
    EXPECT_LT(expected, 0.2);
    for (int set = 0; set < 5; ++set) {
        train(filter, 141, {rated(400, 5, 8)});
        expected += (1.0 - expected) / 12.0;
        EXPECT_NEAR(filter.conflict(), expected, 1e-6) << set;
    }
}

TEST(LifterFilter, BeyondSevenTenthsOfDisagreementTheLevelStartsAnew)
{
    LifterFilter filter = knownFilter();
    double before = filter.conflict();
    int sets = 0;
    while (before <= 0.7) {
        const double sd = sdOfMax(filter);
        train(filter, 141, {rated(400, 5, 8)});
        EXPECT_NEAR(sdOfMax(filter), sd, 0.2 * sd) << "not believed at " << before;
        before = filter.conflict();
        ASSERT_LT(++sets, 30);
        EXPECT_LT(std::exp(lnMax(filter.belief().mean())), 110.0);
    }
    EXPECT_LT(before, 0.725) << "a twelfth at a time";
    train(filter, 141, {rated(400, 5, 8)});
    EXPECT_GT(std::exp(lnMax(filter.belief().mean())), 400.0);
    // From one half on, and a set that is believed.
    EXPECT_NEAR(filter.conflict(), 0.5 * 11.0 / 12.0, 0.01);
}

TEST(LifterFilter, TheFootingIsTheReachOfRatedAndMissedSets)
{
    // A fortieth of the way with each; the reach is one rep at the least and fifteen at the most.
    const LifterFilter known = knownFilter();
    const double reach = known.footing().reach, told = known.footing().toldOfLate;
    const auto reachAfter = [&known](const TrainingSet &set) {
        LifterFilter filter = known;
        filter.addSession(140, std::span(&set, 1));
        return filter.footing();
    };
    EXPECT_NEAR(reachAfter(rated(20, 3, 5)).reach, reach + (15.0 - reach) / 40.0, 1e-9);
    EXPECT_NEAR(reachAfter(missed(150, 0)).reach, reach + (1.0 - reach) / 40.0, 1e-9);
    EXPECT_NEAR(reachAfter(missed(150, 0)).toldOfLate, told + 1.0, 1e-9);
    EXPECT_EQ(reachAfter(unrated(80, 5)).reach, reach);
    EXPECT_EQ(reachAfter(unrated(80, 5)).toldOfLate, told);
    LifterFilter later = known;
    later.startWeek(147);
    EXPECT_DOUBLE_EQ(later.footing().toldOfLate, told * 7.0 / 8.0);
    EXPECT_EQ(freshFilter().footing().reach, 6.0);
    EXPECT_EQ(freshFilter().footing().toldOfLate, 0.0);
}

TEST(LifterFilter, ADayIsUnusualFromTwiceTheUsualVarianceOn)
{
    // Student's t with three degrees by one step of reweighting: a form whose square is at most
    // twice what is usual stands as it was read, one beyond is read once more with more room, so
    // that none is seen between 2 and where that begins.
    const LifterFilter known = knownFilter();
    const double usual = known.formVariance();
    double before = 0.0, jumpFrom = 0.0, jump = 0.0;
    for (int step = 0; step < 600; ++step) {
        LifterFilter filter = known;
        const double factor = std::exp(-0.0001 * step);
        FilterSets sets(3, rated(93 * factor, 1, 8));
        sets.insert(sets.end(), 3, rated(87 * factor, 3, 8));
        train(filter, 141, sets);
        const double form = filter.belief().mean()[dayForm];
        const double square =
            (form * form + filter.belief().covariance()(dayForm, dayForm)) / usual;
        if (square - before > jump && step > 0) {
            jump = square - before;
            jumpFrom = before;
        }
        before = square;
    }
    EXPECT_GT(jump, 0.1);
    EXPECT_GT(jumpFrom, 1.95);
    EXPECT_LE(jumpFrom, 2.0);
}
