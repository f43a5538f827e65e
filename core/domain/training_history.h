#pragma once

#include "core/domain/session.h"
#include "core/domain/variation.h"

#include <algorithm>
#include <optional>
#include <span>
#include <vector>

/// What one lifter's log says about the last weeks, so that a plan is measured against the lifter's
/// own habits and not against a table.
namespace core {

/// One lift in one week.
struct WeekLoad
{
    QDate monday;
    int sets = 0;
    int lifts = 0; ///< reps done; missed ones do not count (common practice, no source)
    double tonnageKg = 0.0;
    int missed = 0; ///< sets that ended in a missed rep

    void add(const SetEntry &set);

    friend bool operator==(const WeekLoad &, const WeekLoad &) = default;
};

/// Week by week without gaps from the first to the last week with a set of the lift; weeks off are
/// zero. Empty without sets.
[[nodiscard]] std::vector<WeekLoad> weekLoads(
    std::span<const LoggedSession> sessions, std::span<const Variation> catalogue, Lift lift);

/// The `weeks` weeks before the one of `monday`, oldest first, also those without training.
[[nodiscard]] std::vector<WeekLoad> weeksBefore(QDate monday, int weeks,
    std::span<const LoggedSession> sessions, std::span<const Variation> catalogue, Lift lift);

/// So many weeks before a week say what is usual for the lifter, if so many of them hold training.
inline constexpr int kUsualWeeks = 6;
inline constexpr int kFewestUsualWeeks = 3;

/// Lowest and highest of a figure over the weeks that hold any training.
struct UsualRange
{
    double low = 0.0;
    double high = 0.0;
    int weeks = 0; ///< trained weeks behind it, > 0
};

/// Empty when fewer than `fewest` weeks hold any training: too little to speak of a habit.
template <class Figure> [[nodiscard]] std::optional<UsualRange> usualRange(
    std::span<const WeekLoad> weeks, int fewest, Figure figure)
{
    UsualRange range;
    for (const WeekLoad &week : weeks) {
        if (week.sets == 0)
            continue;
        const double value = figure(week);
        range.low = range.weeks == 0 ? value : std::min(range.low, value);
        range.high = std::max(range.high, value);
        ++range.weeks;
    }
    return range.weeks < std::max(fewest, 1) ? std::nullopt : std::optional(range);
}

/// The last day before `day` on which a set of the variation was logged.
[[nodiscard]] std::optional<QDate> lastDone(
    VariationId variation, QDate day, std::span<const LoggedSession> sessions);

} // namespace core
