#include "core/strength/meet_points.h"

#include <gmock/gmock.h>

using namespace strength;
using Sex = LifterLog::Sex;

// The values were worked from the coefficients in meet_points.cpp, which are from memory: they
// check the arithmetic, not the coefficients.

TEST(MeetPoints, BenchGl)
{
    const auto points = [](Sex sex, Equipment equipment, double bodyweight, double result) {
        return benchGlPoints(sex, equipment, bodyweight, result).value();
    };
    EXPECT_NEAR(points(Sex::male, Equipment::classic, 82.5, 160), 80.6162, 1e-4);
    EXPECT_NEAR(points(Sex::male, Equipment::classic, 93, 200), 94.8879, 1e-4);
    EXPECT_NEAR(points(Sex::male, Equipment::classic, 120, 230), 97.0328, 1e-4);
    EXPECT_NEAR(points(Sex::female, Equipment::classic, 57, 80), 71.1457, 1e-4);
    EXPECT_NEAR(points(Sex::female, Equipment::classic, 63, 100), 83.4450, 1e-4);
    EXPECT_NEAR(points(Sex::female, Equipment::classic, 84, 120), 89.5278, 1e-4);
    EXPECT_NEAR(points(Sex::male, Equipment::equipped, 93, 260), 85.9993, 1e-4);
    EXPECT_NEAR(points(Sex::female, Equipment::equipped, 63, 150), 90.5222, 1e-4);
}

TEST(MeetPoints, Dots)
{
    EXPECT_NEAR(dots(Sex::male, 82.5, 600).value(), 406.4356, 1e-4);
    EXPECT_NEAR(dots(Sex::male, 93, 700).value(), 445.3758, 1e-4);
    EXPECT_NEAR(dots(Sex::male, 120, 800).value(), 459.4448, 1e-4);
    EXPECT_NEAR(dots(Sex::female, 57, 350).value(), 400.9933, 1e-4);
    EXPECT_NEAR(dots(Sex::female, 63, 400).value(), 430.2060, 1e-4);
    EXPECT_NEAR(dots(Sex::female, 84, 450).value(), 414.0691, 1e-4);
}

TEST(MeetPoints, NoSexNoPointsAndNonsenseIsRefused)
{
    EXPECT_FALSE(benchGlPoints(Sex::unstated, Equipment::classic, 80, 100));
    EXPECT_FALSE(dots(Sex::unstated, 80, 100));
    EXPECT_FALSE(benchGlPoints(Sex::female, Equipment::classic, 10, 100)); // below the formula
    EXPECT_THROW((void)dots(Sex::male, 0, 100), std::invalid_argument);
    EXPECT_EQ(dots(Sex::male, 300, 500), dots(Sex::male, 210, 500));
}

TEST(MeetPoints, DotsAreHeldAtTheEndsOfTheirRange)
{
    // 40 to 210 kg for men, 40 to 150 kg for women; worked from the coefficients.
    EXPECT_NEAR(dots(Sex::male, 40, 300).value(), 381.3330, 1e-4);
    EXPECT_EQ(dots(Sex::male, 20, 300), dots(Sex::male, 40, 300));
    EXPECT_NEAR(dots(Sex::male, 41, 300).value(), 370.1402, 1e-4);
    EXPECT_NEAR(dots(Sex::male, 209, 300).value(), 148.8064, 1e-4);
    EXPECT_NEAR(dots(Sex::male, 230, 300).value(), 148.6862, 1e-4);
    EXPECT_NEAR(dots(Sex::female, 30, 300).value(), 445.4390, 1e-4);
    EXPECT_NEAR(dots(Sex::female, 41, 300).value(), 436.6913, 1e-4);
    EXPECT_NEAR(dots(Sex::female, 149, 300).value(), 231.3019, 1e-4);
    EXPECT_NEAR(dots(Sex::female, 200, 300).value(), 231.2270, 1e-4);
    EXPECT_EQ(dots(Sex::female, 60, 0), 0.0) << "nothing lifted, no point";
    EXPECT_THROW((void)dots(Sex::male, 80, -1), std::invalid_argument);
    EXPECT_THROW((void)dots(Sex::male, 0, 100), std::invalid_argument);
}
