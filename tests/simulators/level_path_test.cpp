#include "tests/simulators/level_path.h"

#include <cmath>
#include <gmock/gmock.h>

using namespace simulators;

namespace {

double after(const LevelPath &path, int days, double dose, Random &random)
{
    double level = 0.0;
    for (int i = 0; i < days; ++i)
        level = path(dose, random);
    return level;
}

} // namespace

TEST(LevelPath, UsualDoseHoldsTheBalance)
{
    Random random(1);
    EXPECT_NEAR(after(impulseResponse({}), 200, ImpulseResponse{}.usualDose, random), 0.0, 1e-12);
}

TEST(LevelPath, HardWeeksLowerFirstAndLiftLater)
{
    Random random(1);
    const LevelPath path = impulseResponse({});
    EXPECT_LT(after(path, 7, 1.0, random), -0.005);
    EXPECT_GT(after(path, 150, 1.0, random), 0.01);
}

TEST(LevelPath, CeilingIsHalfWayAtTheHalfLife)
{
    Random random(1);
    EXPECT_NEAR(after(towardCeiling(0.1, 20), 140, 0.0, random), 0.05, 1e-12);
}

TEST(LevelPath, ALayoffCostsNothingAtFirstAndComesBackQuickly)
{
    Random random(1);
    const LevelPath path = layoffLoss(0.2, 10);
    EXPECT_EQ(after(path, 10, 0.0, random), 0.0);
    EXPECT_NEAR(after(path, 35, 0.0, random), -0.1, 1e-12); // the half-life is five weeks
    path(1.0, random);
    EXPECT_NEAR(after(path, 9, 1.0, random), -0.05, 1e-9);
}

TEST(LevelPath, BlocksJoinWithoutAJump)
{
    Random random(3);
    const LevelPath path = blockWaves(5, 0.03);
    double before = path(0.5, random);
    for (int day = 1; day < 400; ++day) {
        const double now = path(0.5, random);
        EXPECT_LT(std::abs(now - before), 0.008) << day;
        before = now;
    }
}

TEST(LevelPath, WanderKeepsItsSpread)
{
    Random random(5);
    const LevelPath path = wander(0.02, 20);
    double sumOfSquares = 0.0;
    const int days = 40000;
    for (int day = 0; day < days; ++day)
        sumOfSquares += std::pow(path(0.0, random), 2.0);
    EXPECT_NEAR(std::sqrt(sumOfSquares / days), 0.02, 0.002);
}
