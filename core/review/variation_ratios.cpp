#include "core/review/variation_ratios.h"

#include "core/domain/week.h"
#include "core/loads/implied_max.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace core {

namespace {

constexpr int kSpanDays = 8 * kWeekDays;
constexpr size_t kFewestSets = 4;

/// Of logs, on the scale itself.
strength::Interval meanOf(const std::vector<double> &logs)
{
    const double n = double(logs.size());
    double mean = 0.0, squares = 0.0;
    for (const double value : logs)
        mean += value / n;
    for (const double value : logs)
        squares += (value - mean) * (value - mean);
    return strength::factorOf(mean, std::sqrt(squares / (n - 1.0) / n));
}

} // namespace

std::vector<int> trainedRows(const LiftEstimate &lift)
{
    const auto &variations = lift.estimate.variations;
    std::vector<int> rows;
    for (int row = 1; row < int(variations.size()); ++row)
        if (variations[size_t(row)].sets > 0)
            rows.push_back(row);
    std::ranges::stable_sort(rows,
        [&](int a, int b) { return variations[size_t(a)].sets > variations[size_t(b)].sets; });
    return rows;
}

std::vector<RatioPoint> ratiosOverTime(const LiftEstimate &lift, int row)
{
    std::map<int, std::vector<double>> spans; // ln ratio by span
    for (const LoggedSession &session : lift.readings) {
        const std::optional<double> max = knownMaxKg(lift, session.day);
        for (int i = 0; const SetEntry &set : session.sets) {
            if (max && lift.rowOf(set.variation) == row && set.rpe && !set.failed)
                spans[engineDay(session.day) / kSpanDays].push_back(
                    std::log(impliedMaxKg(lift, set, row, i)
                        * lift.estimate.variations[size_t(row)].ratio.value / *max));
            ++i;
        }
    }
    std::vector<RatioPoint> points;
    for (const auto &[span, logs] : spans)
        if (logs.size() >= kFewestSets)
            points.push_back({(span + 0.5) * kSpanDays, meanOf(logs)});
    return points;
}

} // namespace core
