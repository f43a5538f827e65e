#include "core/strength/moments.h"

#include <gmock/gmock.h>

#include <cmath>
#include <functional>
#include <limits>
#include <numbers>

using namespace strength;

namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

double normalDensity(double x, double variance)
{
    return std::exp(-0.5 * x * x / variance) / std::sqrt(2.0 * std::numbers::pi * variance);
}

double normalBelow(double x)
{
    return 0.5 * std::erfc(-x / std::numbers::sqrt2);
}

struct Posterior
{
    double evidence = 0.0, mean = 0.0, variance = 0.0;
};

/// Plain integration of prior times likelihood over +-12 SD.
Posterior integrate(double mean, double variance, const std::function<double(double)> &likelihood)
{
    constexpr int kSteps = 400'000;
    const double sd = std::sqrt(variance);
    Posterior posterior;
    double first = 0.0, second = 0.0;
    const double width = 24.0 * sd / kSteps;
    for (int i = 0; i <= kSteps; ++i) {
        const double x = mean - 12.0 * sd + i * width;
        const double weight = likelihood(x) * normalDensity(x - mean, variance) * width;
        posterior.evidence += weight;
        first += weight * x;
        second += weight * x * x;
    }
    posterior.mean = first / posterior.evidence;
    posterior.variance = second / posterior.evidence - posterior.mean * posterior.mean;
    return posterior;
}

void expectSame(const Moments &moments, double mean, double variance, const Posterior &posterior)
{
    EXPECT_NEAR(moments.logEvidence, std::log(posterior.evidence), 1e-6);
    EXPECT_NEAR(mean + variance * moments.shift, posterior.mean, 1e-6);
    EXPECT_NEAR(variance - variance * variance * moments.shrink, posterior.variance, 1e-6);
}

} // namespace

TEST(Moments, APointIsTheKalmanUpdate)
{
    const Moments moments = readPoint(3.0, 0.5, 2.0, 1.5, Gross{});
    EXPECT_DOUBLE_EQ(moments.shift, 1.0 / 2.0);
    EXPECT_DOUBLE_EQ(moments.shrink, 1.0 / 2.0);
    EXPECT_DOUBLE_EQ(moments.inlier, 1.0);
}

TEST(Moments, PointWithGrossErrorsMatchesPlainIntegration)
{
    const Gross gross{0.05, 0.05};
    for (const double y : {2.0, 4.0, 6.0, 9.0})
        expectSame(readPoint(y, 0.6, 2.0, 1.2, gross), 2.0, 1.2, integrate(2.0, 1.2, [&](double x) {
            return 0.95 * normalDensity(y - x, 0.6) + 0.05 * 0.05;
        }));
}

TEST(Moments, IntervalMatchesPlainIntegration)
{
    const double r = 0.09;
    const Gross gross{0.02, 0.5};
    const std::pair<double, double> kIntervals[] = {
        {3.0, 4.0}, {5.0, 6.0}, {-kInfinity, 1.0}, {4.0, kInfinity}, {-2.0, -1.0}};
    for (const auto &[low, high] : kIntervals)
        expectSame(readInterval(low, high, r, 2.0, 1.2, gross), 2.0, 1.2,
            integrate(2.0, 1.2, [&, from = low, to = high](double x) {
                const double sd = std::sqrt(r);
                return 0.98 * (normalBelow((to - x) / sd) - normalBelow((from - x) / sd))
                    + 0.02 * 0.5;
            }));
}

TEST(Moments, AGrossReadingMovesNothing)
{
    const Moments far = readPoint(60.0, 0.5, 2.0, 1.0, {0.02, 0.05});
    EXPECT_NEAR(far.shift, 0.0, 1e-9);
    EXPECT_NEAR(far.shrink, 0.0, 1e-9);
    EXPECT_NEAR(far.inlier, 0.0, 1e-9);
    for (const double mean : {-1e3, 1e3}) {
        const Moments hopeless = readInterval(0.0, 1.0, 0.1, mean, 1.0, {0.02, 0.5});
        EXPECT_EQ(hopeless.shift, 0.0);
        EXPECT_EQ(hopeless.shrink, 0.0);
        EXPECT_EQ(hopeless.inlier, 0.0);
        EXPECT_TRUE(std::isfinite(hopeless.logEvidence));
    }
}

TEST(Moments, TheSurpriseIsTheWayToTheReadingInSdOfWhatWasExpected)
{
    // SD of what is expected: sqrt(1.5 + 0.75) = 1.5.
    EXPECT_DOUBLE_EQ(readPoint(5.0, 0.75, 2.0, 1.5, Gross{}).surprise, 2.0);
    EXPECT_DOUBLE_EQ(readInterval(5.0, 8.0, 0.75, 2.0, 1.5, Gross{}).surprise, 2.0);
    EXPECT_DOUBLE_EQ(readInterval(-4.0, 0.5, 0.75, 2.0, 1.5, Gross{}).surprise, -1.0);
    EXPECT_EQ(readInterval(1.0, 3.0, 0.75, 2.0, 1.5, Gross{}).surprise, 0.0) << "as expected";
}

TEST(Moments, AReadingThatNothingExplainsIsGrossWithoutAWord)
{
    const Moments none = readInterval(0.0, 1.0, 0.1, 1e3, 1.0, Gross{});
    EXPECT_EQ(none.inlier, 0.0);
    EXPECT_EQ(none.shift, 0.0);
    EXPECT_EQ(none.shrink, 0.0);
    EXPECT_LT(none.logEvidence, -600.0);
    EXPECT_EQ(Moments{}.shrink, 0.0);
    EXPECT_EQ(Moments{}.inlier, 1.0);
}
