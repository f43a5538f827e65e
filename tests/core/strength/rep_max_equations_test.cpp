#include "core/strength/rep_max_equations.h"

#include <gmock/gmock.h>

using namespace strength;

TEST(RepMaxEquations, GiveThePublishedValues)
{
    // Worked from each equation's publication (named in rep_max_equations.h), w = 100 kg.
    constexpr double kReps[] = {1, 3, 5, 8, 10};
    constexpr double kMax[][5] = {
        {103.33, 110.00, 116.67, 126.67, 133.33}, // Epley
        {100.00, 105.88, 112.50, 124.14, 133.33}, // Brzycki
        {101.39, 107.20, 113.71, 125.11, 134.07}, // Lander
        {100.00, 111.61, 117.46, 123.11, 125.89}, // Lombardi
        {108.86, 113.99, 119.01, 126.29, 130.93}, // Mayhew
        {102.50, 107.50, 112.50, 120.00, 125.00}, // O'Conner
        {101.30, 108.98, 116.58, 127.67, 134.75}, // Wathan
    };
    for (size_t e = 0; e < kRepMaxEquations.size(); ++e)
        for (size_t i = 0; i < 5; ++i)
            EXPECT_NEAR(repMax(kRepMaxEquations[e], 100.0, kReps[i]), kMax[e][i], 0.006);
}

TEST(RepMaxEquations, ALiftedMaxIsItself)
{
    for (const RepMaxEquation equation : kRepMaxEquations) {
        EXPECT_EQ(repMaxOrLift(equation, 100.0, 1.0), 100.0);
        EXPECT_EQ(repMaxOrLift(equation, 100.0, 5.0), repMax(equation, 100.0, 5.0));
    }
}

TEST(RepMaxEquations, PolesAndNonsenseAreRefused)
{
    EXPECT_THROW((void)repMax(RepMaxEquation::brzycki, 100.0, 37.0), std::invalid_argument);
    EXPECT_THROW((void)repMax(RepMaxEquation::lander, 100.0, 38.0), std::invalid_argument);
    EXPECT_THROW((void)repMax(RepMaxEquation::epley, 0.0, 5.0), std::invalid_argument);
    EXPECT_THROW((void)repMax(RepMaxEquation::epley, 100.0, 0.0), std::invalid_argument);
}
