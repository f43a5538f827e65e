#include "core/strength/prescription.h"

#include <gmock/gmock.h>

#include <cmath>

using namespace strength;

namespace {

const std::vector<VariationPrior> kPrescribed{{1.0, 0.0, 1.0}, {0.9, 0.03, 1.2}};

/// A max of 100 kg, known to about 2 %, on the Sunday 1970-01-11.
LifterEstimate estimateOf100()
{
    LifterEstimate estimate;
    estimate.standing = Standing::enough;
    estimate.weeks.push_back({10, {100.0, 98.0, 102.04}, {100.0, 98.0, 102.04}, 4});
    estimate.variations.push_back({{1.0, 1.0, 1.0}, {100.0, 98.0, 102.04}, 4});
    estimate.variations.push_back({{0.9, 0.86, 0.942}, {90.0, 85.0, 95.3}, 4, 1.2});
    estimate.curve = {0.04, 0.9};
    estimate.setFatigue = 0.005;
    estimate.formSd = 0.02;
    estimate.driftPerWeek = 0.008;
    return estimate;
}

} // namespace

TEST(Prescription, ASingleToFailureIsTheMax)
{
    const auto load = loadFor(estimateOf100(), 10, kPrescribed, {0, 1, 0.0, 0});
    ASSERT_TRUE(load);
    EXPECT_NEAR(load->kg, 100.0, 1e-9);
    EXPECT_LT(load->low90, 98.0); // the day form widens it
}

TEST(Prescription, RepsReserveVariationAndFatigueEachLowerTheLoad)
{
    const LifterEstimate estimate = estimateOf100();
    const auto kg = [&](const PlannedSet &set) {
        return loadFor(estimate, 10, kPrescribed, set)->kg;
    };
    const double triple = kg({0, 3, 2.0, 0});
    EXPECT_NEAR(triple, 100.0 * std::exp(-0.04 * std::pow(4.0, 0.9)), 1e-9);
    EXPECT_LT(kg({0, 4, 2.0, 0}), triple);
    EXPECT_DOUBLE_EQ(kg({0, 4, 1.0, 0}), triple); // a rep done or left is the same load
    EXPECT_NEAR(kg({0, 3, 2.0, 2}), triple * std::exp(-0.01), 1e-9);
    EXPECT_NEAR(kg({1, 3, 2.0, 0}), 90.0 * std::exp(-0.048 * std::pow(4.0, 0.9)), 1e-9);
}

TEST(Prescription, ReserveIsTheInverseOfTheLoad)
{
    const LifterEstimate estimate = estimateOf100();
    for (const int reps : {1, 3, 8})
        for (const double rir : {0.0, 1.0, 2.5}) {
            const PlannedSet set{1, reps, rir, 1};
            const double kg = loadFor(estimate, 24, kPrescribed, set)->kg;
            const auto reserve = reserveAt(estimate, 24, kPrescribed, set, kg);
            ASSERT_TRUE(reserve);
            EXPECT_NEAR(reserve->value, rir, 1e-9);
            EXPECT_LT(reserve->low90, rir);
            EXPECT_GT(reserve->high90, rir);
        }
    EXPECT_LT(reserveAt(estimate, 24, kPrescribed, {0, 3, 0.0, 0}, 110.0)->value, 0.0);
}

TEST(Prescription, AnEasySetBeforeCostsLessThanAHardOne)
{
    const LifterEstimate estimate = estimateOf100();
    const auto kg = [&](double before) {
        return loadFor(estimate, 10, kPrescribed, {0, 3, 2.0, before})->kg;
    };
    EXPECT_DOUBLE_EQ(hardSetsAfter(0.0, -1.0), 1.0);
    EXPECT_DOUBLE_EQ(hardSetsAfter(1.0, 2.0), 2.0);
    EXPECT_NEAR(hardSetsAfter(0.0, 5.0), std::exp(-1.0), 1e-12);
    EXPECT_LT(kg(hardSetsAfter(0.0, 1.0)), kg(hardSetsAfter(0.0, 5.0)));
    EXPECT_LT(kg(hardSetsAfter(0.0, 5.0)), kg(0.0));
    double many = 0.0;
    for (int set = 0; set < 5000; ++set)
        many = hardSetsAfter(many, 0.0);
    EXPECT_GT(kg(many), 0.9 * kg(0.0)) << "no end of sets takes all strength away";
}

TEST(Prescription, NoDataNoLoadAndUnsoundSetsAreRefused)
{
    EXPECT_FALSE(loadFor({}, 0, kPrescribed, {0, 1, 0.0, 0}));
    EXPECT_FALSE(reserveAt({}, 0, kPrescribed, {0, 1, 0.0, 0}, 100.0));
    const LifterEstimate estimate = estimateOf100();
    EXPECT_THROW((void)loadFor(estimate, 0, kPrescribed, {0, 0, 0.0, 0}), std::invalid_argument);
    EXPECT_THROW((void)loadFor(estimate, 0, kPrescribed, {0, 1, -1.0, 0}), std::invalid_argument);
    EXPECT_THROW((void)loadFor(estimate, 0, kPrescribed, {2, 1, 0.0, 0}), std::invalid_argument);
    EXPECT_THROW(
        (void)reserveAt(estimate, 0, kPrescribed, {0, 1, 0.0, 0}, 0.0), std::invalid_argument);
}

TEST(Prescription, ATwelfthHardSetIsTheLastThatCostsAnything)
{
    // Common practice, no source.
    double count = 0.0;
    for (int set = 0; set < 12; ++set)
        count = hardSetsAfter(count, 0.0);
    EXPECT_DOUBLE_EQ(count, 12.0);
    EXPECT_DOUBLE_EQ(hardSetsAfter(count, 0.0), 12.0);
    EXPECT_DOUBLE_EQ(hardSetsAfter(11.5, 0.0), 12.0);
}

TEST(Prescription, DoubtsOfMaxRatioAndFormAddUpWithWhatTiesThem)
{
    LifterEstimate estimate = estimateOf100();
    const auto sdOf = [&estimate](int variation) {
        const Band load = *loadFor(estimate, 10, kPrescribed, {variation, 1, 0.0, 0});
        return sdOfLn(load.low90, load.high90);
    };
    const double maxSd = sdOfLn(98.0, 102.04), ratioSd = sdOfLn(0.86, 0.942);
    EXPECT_NEAR(sdOf(0), std::hypot(maxSd, 0.02), 1e-12);
    EXPECT_NEAR(sdOf(1), std::sqrt(maxSd * maxSd + ratioSd * ratioSd + 0.02 * 0.02), 1e-12);
    estimate.variations[1].withMax = -1e-4;
    EXPECT_NEAR(sdOf(1), std::sqrt(maxSd * maxSd + ratioSd * ratioSd - 2e-4 + 0.02 * 0.02), 1e-12);
    estimate.variations[1].withMax = -1.0;
    EXPECT_NEAR(sdOf(1), 0.02, 1e-12) << "never less than the form of the day";
}

TEST(Prescription, AVariationThatTheEstimateDoesNotKnowHasNoLoad)
{
    const std::vector<VariationPrior> more{{1.0, 0.0, 1.0}, {0.9, 0.03, 1.2}, {0.8, 0.03, 1.0}};
    EXPECT_TRUE(loadFor(estimateOf100(), 10, more, {1, 1, 0.0, 0}));
    EXPECT_FALSE(loadFor(estimateOf100(), 10, more, {2, 1, 0.0, 0}));
    EXPECT_THROW((void)loadFor(estimateOf100(), 10, more, {-1, 1, 0.0, 0}), std::invalid_argument);
}
