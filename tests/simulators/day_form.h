#pragma once

#include "tests/simulators/random.h"

namespace simulators {

/// How far one session lies above or below the level of the day: noise with heavy tails, soreness
/// from the sessions before, and the odd day on which nothing goes.
struct DayFormTraits
{
    double sd = 0.018;          ///< of the day noise, ln units
    int tails = 5;              ///< degrees of freedom; 3 is wild, 30 normal
    double sorenessLoss = 0.02; ///< ln units the day after a session of twice the usual dose
    double badDay = 0.01;       ///< chance of a day that is 4 to 10 % down
    double otherLifts = 0.008;  ///< ln units lost on a day after squats or deadlifts (one in three)
};

class DayForm
{
public:
    explicit DayForm(const DayFormTraits &traits);

    /// Lets a day pass; `dose` as in LevelPath.
    void pass(double dose);
    /// The form of a session today, ln units.
    double draw(Random &random) const;

private:
    DayFormTraits m_traits;
    double m_sore = 0.0;
};

} // namespace simulators
