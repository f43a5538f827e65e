#include "core/strength/validation.h"

#include <cmath>
#include <cstdlib>
#include <stdexcept>
#include <string>

namespace strength {

namespace {

bool above0(double x)
{
    return std::isfinite(x) && x > 0.0;
}

/// What is wrong with the set; empty when sound.
std::string problem(const TrainingSet &set, int variations)
{
    const auto isRow = [&](int row) { return row >= 0 && row < variations; };
    if (!isRow(set.variation))
        return "the variation is no row of the table";
    if (!above0(set.loadKg))
        return "the load must be a number above 0";
    if (set.rpe && !(*set.rpe >= 1.0 && *set.rpe <= 10.0))
        return "the rating must be 1 to 10";
    if (set.reps < 0 || (set.reps == 0 && !set.missed))
        return "a completed set has at least one rep";
    if (set.velocity && !above0(*set.velocity))
        return "the velocity must be a number above 0";
    if (set.leadReps < 0 || set.leadReps > set.reps)
        return "the lead reps must be 0 to the reps";
    if (set.leadReps > 0 && !isRow(set.leadVariation))
        return "the lead variation is no row of the table";
    return {};
}

} // namespace

void checkVariations(std::span<const VariationPrior> variations)
{
    if (variations.empty())
        throw std::invalid_argument("the variation table is empty: row 0 is the competition lift");
    for (size_t v = 0; v < variations.size(); ++v) {
        const VariationPrior &row = variations[v];
        if (!above0(row.ratio) || !above0(row.repCost) || !std::isfinite(row.spread)
            || row.spread < 0.0)
            throw std::invalid_argument("variation row " + std::to_string(v)
                + ": ratio and rep cost must be above 0, the spread not below 0");
    }
}

void checkLog(const LifterLog &log, size_t variations, size_t index)
{
    for (size_t s = 0; s < log.sessions.size(); ++s) {
        const TrainingSession &session = log.sessions[s];
        const std::string where = "log " + std::to_string(index) + ", session " + std::to_string(s);
        if (session.day < -kFarthestDay || session.day > kFarthestDay)
            throw std::invalid_argument(where + ": the day is out of range");
        for (size_t i = 0; i < session.sets.size(); ++i)
            if (const std::string wrong = problem(session.sets[i], int(variations)); !wrong.empty())
                throw std::invalid_argument(where + ", set " + std::to_string(i) + ": " + wrong);
    }
}

} // namespace strength
