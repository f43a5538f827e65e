#pragma once

#include <optional>
#include <vector>

/// What the strength model reads. Plain values: no Qt, no database. Loads in kg, days as a count
/// from 1970-01-01.
namespace strength {

/// One set. A lead-rep set counts its parts apart: the first `leadReps` reps in `leadVariation`,
/// the rest in `variation`.
struct TrainingSet
{
    int variation = 0;              ///< row of the variation table; row 0 is the competition lift
    double loadKg = 0;              ///< > 0, on the bar
    int reps = 0;                   ///< completed, lead reps included; 0 only when missed
    std::optional<double> rpe;      ///< 1..10
    bool missed = false;            ///< the rep after `reps` was tried and failed
    std::optional<double> velocity; ///< mean velocity of the fastest rep, m/s
    int leadVariation = -1;         ///< row of the variation table, -1 = none
    int leadReps = 0;
    std::optional<int> repsPlanned; ///< >= 1, lead reps included; says whether a set fell short
};

struct TrainingSession
{
    int day = 0;
    std::vector<TrainingSet> sets; ///< in the order done
};

/// All sets of one lifter in the variations of one lift. Sessions in any order.
struct LifterLog
{
    enum class Sex { unstated, female, male };

    Sex sex = Sex::unstated;
    std::optional<double> bodyweightKg;
    std::vector<TrainingSession> sessions;
};

/// What is known of a variation before any lifter's data.
struct VariationPrior
{
    double ratio = 1.0;   ///< its max / competition max, mean between lifters, > 0
    double spread = 0.05; ///< one SD between lifters, >= 0; the competition lift has 0
    double repCost = 1.0; ///< what a rep costs against a competition rep, > 0
};

} // namespace strength
