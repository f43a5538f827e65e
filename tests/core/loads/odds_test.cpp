#include "core/loads/odds.h"

#include <cmath>
#include <gmock/gmock.h>
#include <numbers>
#include <random>
#include <rapidcheck/gtest.h>
#include <vector>

using namespace core;

namespace {

double below(double z)
{
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

} // namespace

TEST(Odds, OneSetIsANormalChance)
{
    for (const double mean : {-0.05, 0.0, 0.01, 0.04}) {
        const Margin known{mean, 0.0};
        EXPECT_NEAR(chanceOfAll({&known, 1}), below(mean / kSetNoise), 1e-6);
    }
    // What is not known outweighs the noise of the set.
    for (const double z : {-2.0, -1.0, -0.5, 0.5, 1.0, 2.0}) {
        const double sd = 2.0 * (z < 0.0 ? kGoodDay : 1.0);
        const Margin margin{z * sd, 2.0};
        EXPECT_NEAR(chanceOfAll({&margin, 1}), below(z), 0.002) << z;
    }
}

TEST(Odds, TheFormOfTheDayHasTheTailsOfStudentsT)
{
    // Percentiles of Student's t with three degrees, whose SD is sqrt(3), from any table: 0.765 has
    // 75 % below, 1.638 90 %, 2.353 95 %. The form outweighs the noise of the set.
    const double formSd = 0.5;
    for (const auto &[t, share] : {std::pair{0.765, 0.75}, {1.638, 0.90}, {2.353, 0.95}})
        for (const double sign : {-1.0, 1.0}) {
            const double spread = formSd * (sign < 0.0 ? kGoodDay : 1.0);
            const Margin margin{sign * t * spread / std::sqrt(3.0), 0.0, formSd};
            EXPECT_NEAR(chanceOfAll({&margin, 1}), sign > 0.0 ? share : 1.0 - share, 0.003);
        }
}

TEST(Odds, TheFormIsTheSameForAllSetsOfALine)
{
    const std::vector<Margin> one = {{0.01, 0.0, 0.4}}, three(3, one.front());
    EXPECT_LT(chanceOfAll(three), chanceOfAll(one));
    EXPECT_GT(chanceOfAll(three), chanceOfAll(one) - 0.02) << "a good day is good for each";
}

TEST(Odds, WithoutSharedDoubtTheSetsMultiply)
{
    const std::vector<Margin> sets = {{0.01, 0.0}, {0.005, 0.0}, {0.0, 0.0}};
    EXPECT_NEAR(
        chanceOfAll(sets), below(0.01 / kSetNoise) * below(0.005 / kSetNoise) * below(0.0), 1e-9);
}

TEST(Odds, TwoEqualSetsFollowTheOrthantFormula)
{
    // Two standard normals with correlation r are both positive with 1/4 + asin(r) / (2 pi). Of it
    // the common part's upper half has (that + atan(a) / pi) / 2, a its SD in those of a set's own
    // noise: since Phi(-x) = 1 - Phi(x), and the mean of Phi(a z) over z > 0 is 1/4 + atan(a) / (2
    // pi).
    const auto both = [](double a) {
        return 0.25 + std::asin(a * a / (1.0 + a * a)) / (2.0 * std::numbers::pi);
    };
    const auto upper = [&](double a) { return (both(a) + std::atan(a) / std::numbers::pi) / 2.0; };
    const double sd = 0.02;
    const std::vector<Margin> sets = {{0.0, sd}, {0.0, sd}};
    const double bad = sd / kSetNoise, good = kGoodDay * bad;
    EXPECT_NEAR(chanceOfAll(sets), upper(good) + both(bad) - upper(bad), 1e-4);
}

TEST(Odds, AGoodDayAddsFifteenHundredthsLessThanABadOneTakes)
{
    const Margin above{-0.85, 1.0}, below{1.0, 1.0};
    EXPECT_NEAR(chanceOfAll({&above, 1}), 1.0 - chanceOfAll({&below, 1}), 0.002);
}

TEST(Odds, AgreesWithPlainSampling)
{
    const std::vector<Margin> sets = {{0.03, 0.02}, {0.02, 0.02}, {0.01, 0.025}};
    std::mt19937_64 random(7);
    std::normal_distribution<double> normal;
    constexpr int kDraws = 200'000;
    int made = 0;
    for (int draw = 0; draw < kDraws; ++draw) {
        const double z = normal(random);
        const double form = z > 0.0 ? kGoodDay * z : z;
        bool all = true;
        for (const Margin &set : sets)
            all = all && set.mean + set.sd * form + kSetNoise * normal(random) > 0.0;
        made += all ? 1 : 0;
    }
    EXPECT_NEAR(chanceOfAll(sets), double(made) / kDraws, 0.005); // > 4 standard errors
}

RC_GTEST_PROP(OddsProperty, MoreSetsAndMoreLoadNeverHelp, ())
{
    std::vector<Margin> sets;
    const int count = *rc::gen::inRange(1, 8);
    const double formSd = *rc::gen::inRange(0, 30) / 1000.0;
    for (int i = 0; i < count; ++i)
        sets.push_back(
            {*rc::gen::inRange(-80, 120) / 1000.0, *rc::gen::inRange(0, 60) / 1000.0, formSd});
    const double chance = chanceOfAll(sets);
    RC_ASSERT(chance >= 0.0 && chance <= 1.0);
    std::vector<Margin> more = sets;
    more.push_back({0.05, 0.02, formSd});
    RC_ASSERT(chanceOfAll(more) <= chance + 1e-6);
    std::vector<Margin> heavier = sets;
    for (Margin &set : heavier)
        set.mean -= 0.01;
    RC_ASSERT(chanceOfAll(heavier) <= chance + 1e-12);
}

TEST(Odds, ASetAloneScattersByEightTenthsOfAPerCent)
{
    // Phi(1) = 0.841345 and Phi(-2) = 0.022750, from any table of the normal distribution.
    const Margin oneSd{0.008, 0.0}, twoShort{-0.016, 0.0};
    EXPECT_NEAR(chanceOfAll({&oneSd, 1}), 0.841345, 1e-6);
    EXPECT_NEAR(chanceOfAll({&twoShort, 1}), 0.022750, 1e-6);
    EXPECT_NEAR(chanceOfAll({}), 1.0, 1e-12) << "nothing to do is done";
}
