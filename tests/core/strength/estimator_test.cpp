#include "core/strength/estimator.h"
#include "core/strength/week.h"

#include <gmock/gmock.h>

#include <cmath>
#include <limits>

using namespace strength;

namespace {

const std::vector<VariationPrior> kVariations{{1.0, 0.0, 1.0}, {0.95, 0.03, 1.0}};

TrainingSet rated(double loadKg, int reps, double rpe, int variation = 0)
{
    TrainingSet set;
    set.variation = variation;
    set.loadKg = loadKg;
    set.reps = reps;
    set.rpe = rpe;
    return set;
}

/// `weeks` weeks of two sessions from Monday, 1970-01-05: three sets that a lifter with a max of
/// 100 kg rates as the handbook chart has them.
LifterLog steadyLog(int weeks)
{
    LifterLog log;
    for (int week = 0; week < weeks; ++week)
        for (const int day : {4, 7})
            log.sessions.push_back({7 * week + day,
                {rated(92.5, 1, 8), rated(87, 3, 8), rated(80, 5, 7), rated(75, 5, 6, 1)}});
    return log;
}

} // namespace

TEST(Week, EndsOnSunday)
{
    static_assert(sundayOf(0) == 3);   // 1970-01-01 was a Thursday
    static_assert(sundayOf(3) == 3);   // Sunday itself
    static_assert(sundayOf(4) == 10);  // Monday
    static_assert(sundayOf(-1) == 3);  // Wednesday
    static_assert(sundayOf(-4) == -4); // the Sunday before
}

TEST(Estimator, SteadyLogGivesTheChartsMaxInsideItsInterval)
{
    const LifterEstimate estimate = estimateLifter(steadyLog(30), kVariations);
    ASSERT_EQ(estimate.weeks.size(), 30u);
    const WeekEstimate &last = estimate.weeks.back();
    EXPECT_EQ(last.sunday, sundayOf(7 * 29 + 4));
    EXPECT_EQ(last.sets, 8);
    EXPECT_NEAR(last.filtered.kg, 100.0, 2.5);
    EXPECT_LT(last.filtered.low90, last.filtered.kg);
    EXPECT_GT(last.filtered.high90, last.filtered.kg);
    EXPECT_EQ(estimate.standing, Standing::enough);
    EXPECT_EQ(estimate.variations[1].sets, 60);
    EXPECT_EQ(estimate.form.size(), 60u);
}

TEST(Estimator, FilteredEstimateKnowsNothingOfLaterWeeks)
{
    LifterLog log = steadyLog(12);
    const LifterEstimate before = estimateLifter(log, kVariations);
    for (int week = 12; week < 20; ++week)
        log.sessions.push_back({7 * week + 4, {rated(110, 3, 8)}});
    const LifterEstimate after = estimateLifter(log, kVariations);
    for (size_t week = 0; week < 12; ++week)
        EXPECT_NEAR(after.weeks[week].filtered.kg, before.weeks[week].filtered.kg, 1e-9);
    EXPECT_GT(after.weeks[11].smoothed.kg, before.weeks[11].smoothed.kg);
}

TEST(Estimator, OrderOfSessionsInTheLogDoesNotMatter)
{
    LifterLog log = steadyLog(6);
    const LifterEstimate inOrder = estimateLifter(log, kVariations);
    std::reverse(log.sessions.begin(), log.sessions.end());
    const LifterEstimate reversed = estimateLifter(log, kVariations);
    EXPECT_DOUBLE_EQ(inOrder.weeks.back().smoothed.kg, reversed.weeks.back().smoothed.kg);
}

TEST(Estimator, MaxAheadKeepsTheMedianAndWidens)
{
    const LifterEstimate estimate = estimateLifter(steadyLog(12), kVariations);
    const int sunday = estimate.weeks.back().sunday;
    const auto soon = estimate.maxOn(sunday), later = estimate.maxOn(sunday + 70);
    ASSERT_TRUE(soon && later);
    EXPECT_NEAR(soon->kg, estimate.weeks.back().filtered.kg, 1e-9);
    EXPECT_GT(later->high90 / later->low90, soon->high90 / soon->low90);
}

TEST(Estimator, EmptyLogHasNoEstimate)
{
    const LifterEstimate estimate = estimateLifter({}, kVariations);
    EXPECT_EQ(estimate.standing, Standing::noData);
    EXPECT_TRUE(estimate.weeks.empty());
    EXPECT_FALSE(estimate.maxOn(0));
    EXPECT_EQ(estimate.variations.size(), kVariations.size());
}

TEST(Estimator, UnsoundInputIsRefusedByPlace)
{
    const auto messageOf = [](const TrainingSet &set) -> std::string {
        LifterLog log;
        log.sessions.push_back({0, {rated(100, 1, 8), set}});
        const std::vector<LifterLog> logs{{}, log};
        try {
            (void)estimateRoster(logs, kVariations);
        } catch (const std::invalid_argument &error) {
            return error.what();
        }
        return {};
    };
    EXPECT_THAT(
        messageOf(rated(0, 1, 8)), testing::StartsWith("log 1, session 0, set 1: the load"));
    EXPECT_THAT(messageOf(rated(std::numeric_limits<double>::infinity(), 1, 8)),
        testing::HasSubstr("the load"));
    EXPECT_THAT(messageOf(rated(100, 1, 11)), testing::HasSubstr("the rating"));
    EXPECT_THAT(messageOf(rated(100, 0, 8)), testing::HasSubstr("at least one rep"));
    EXPECT_THAT(messageOf(rated(100, 1, 8, 2)), testing::HasSubstr("no row"));
    EXPECT_EQ(messageOf(rated(100, 1, 8)), "");
    EXPECT_THROW((void)estimateRoster({}, {}), std::invalid_argument);
}
