#include "core/loads/implied_max.h"

#include <algorithm>
#include <cmath>

namespace core {

double impliedMaxKg(const LiftEstimate &lift, const SetEntry &set, int row, int setsBefore)
{
    const strength::LifterEstimate &estimate = lift.estimate;
    double possible = set.repsDone;
    if (set.failed)
        possible += 1.0;
    else if (set.rpe)
        possible += 10.0 - *set.rpe - estimate.rating.bias.value;
    const double share =
        estimate.curve.share(std::max(possible, 1.0), lift.priors[size_t(row)].repCost);
    const double ratio = estimate.variations[size_t(row)].ratio.value;
    return set.loadKg / (share * ratio) * std::exp(estimate.setFatigue * setsBefore);
}

std::optional<double> knownMaxKg(const LiftEstimate &lift, QDate day)
{
    const std::vector<strength::WeekEstimate> &weeks = lift.estimate.weeks;
    if (weeks.empty())
        return std::nullopt;
    const int number = engineDay(day);
    const auto next = std::partition_point(weeks.begin(), weeks.end(),
        [number](const strength::WeekEstimate &week) { return week.sunday < number; });
    return next == weeks.begin() ? weeks.front().smoothed.kg : std::prev(next)->filtered.kg;
}

} // namespace core
