#pragma once

#include "core/advice/plan_checks.h"
#include "core/loads/week_sheet.h"

/// What stands between a plan and the lifter's hands: findings that stop it and that no coach has
/// accepted. They are printed, and whoever hands a plan out is asked about them first.
namespace core {

struct OpenStop
{
    Finding finding;
    QString lifter; ///< by name
    QDate day;      ///< of its card; invalid = the week as a whole
};

/// Of one lifter's plan, in the order of checkPlan().
[[nodiscard]] std::vector<OpenStop> openStops(const PlanToCheck &plan);

/// The same where the plan was checked already.
/// @param cards  that were checked
[[nodiscard]] std::vector<OpenStop> openStops(
    std::span<const Finding> findings, const Lifter &lifter, std::span<const ResolvedCard> cards);

/// As they stand on what the lifter gets.
[[nodiscard]] std::vector<StopNote> stopNotes(std::span<const OpenStop> stops);

/// "Mira Holm, Tuesday 5 May: ..."
[[nodiscard]] QString words(const OpenStop &stop);

/// Accepts them all with the note, as one action.
/// @param note     with words
/// @param waivers  of the lifters; of others does no harm
[[nodiscard]] Edit accept(std::span<const OpenStop> stops, const QString &note,
    std::span<const Waiver> waivers, const std::function<WaiverId()> &newId);

} // namespace core
