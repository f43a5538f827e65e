#pragma once

#include "core/advice/plan_checks.h"
#include "core/domain/training_history.h"
#include "core/loads/effort.h"

#include <map>
#include <utility>

/// The rules of the plan checks, by what they look at.
namespace core {

/// One card of the plan with what the rules need again and again.
struct CheckedCard
{
    const ResolvedCard &resolved;
    const Variation &variation;
    QDate monday;
};

/// The whole plan, ready for the rules.
struct CheckedPlan
{
    const PlanToCheck &plan;
    std::vector<CheckedCard> cards;                   ///< by day and position
    std::vector<QDate> mondays;                       ///< ascending
    std::map<std::pair<QDate, Lift>, WeekLoad> loads; ///< by Monday; weeks without any are missing

    /// One lift in one week: what is logged, and what is planned after the log ends.
    [[nodiscard]] WeekLoad load(QDate monday, Lift lift) const;

    [[nodiscard]] Finding finding(CheckRule rule, Severity severity, const CheckedCard &card,
        double measure, const QString &words, const QString &remedy) const;
    [[nodiscard]] Finding finding(CheckRule rule, Severity severity, QDate monday, Lift lift,
        double measure, const QString &words, const QString &remedy) const;
};

/// Load of a resolved line as a share of the variation's max on the day; empty without an estimate.
[[nodiscard]] std::optional<double> shareOfMax(
    const ResolvedLine &line, const CheckedCard &card, const PlanToCheck &plan);

/// What is wrong with single cards, in their order.
void checkCard(const CheckedPlan &checked, const CheckedCard &card, std::vector<Finding> &found);

/// What is wrong with a week as a whole.
void checkWeek(const CheckedPlan &checked, QDate monday, std::vector<Finding> &found);

} // namespace core
