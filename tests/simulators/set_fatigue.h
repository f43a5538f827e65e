#pragma once

#include "tests/simulators/random.h"

namespace simulators {

/// Fatigue within a session: each set costs, more the closer it came to failure, and the rest
/// before the next one gives part of it back. (The engine counts hard sets and knows no rests.)
struct SetFatigueTraits
{
    double cost = 0.015;       ///< ln units a set to failure costs before any rest
    double recoverMinutes = 6; ///< rest that gives back 63 %
    double restMinutes = 4;    ///< usual rest
    double restSpread = 0.35;  ///< SD of ln(rest) from set to set
};

class SetFatigue
{
public:
    explicit SetFatigue(const SetFatigueTraits &traits);

    void startSession() { m_level = 0.0; }
    /// ln units lost now.
    [[nodiscard]] double level() const { return m_level; }
    /// Adds a set that ended `reserve` reps before failure, and the rest after it.
    void addSet(double reserve, Random &random);

private:
    SetFatigueTraits m_traits;
    double m_level = 0.0;
};

} // namespace simulators
