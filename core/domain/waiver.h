#pragma once

#include "core/domain/ids.h"
#include "core/domain/variation.h"

#include <QDate>
#include <QString>
#include <QStringList>

namespace core {

/// What the plan checks look for, see core/advice/plan_checks.h.
enum class CheckRule {
    pain,                ///< what works an area that hurts
    maximalAttempt,      ///< maximal work by someone who gets none: a minor or a novice
    hardForBeginner,     ///< fewer than two reps in reserve for a minor or a novice
    repsOutOfRange,      ///< beyond what the variation is done for
    likelyMiss,          ///< all reps are made less often than not
    aboveLately,         ///< a load above anything done lately
    untrainedOnMeetWeek, ///< a variation that was not trained before the meet
    noRestForSoreArea,   ///< two days in a row on a sore area
    weeklyLifts,         ///< a jump in the number of lifts
    weeklyTonnage,       ///< a jump in tonnage
    daysNearMaximum,     ///< too many in a week
    noCompetitionLift    ///< none in a week near the meet
};

template <> inline constexpr auto kEnumWords<CheckRule> = std::to_array<EnumWord<CheckRule>>({
    {CheckRule::pain, "pain"},
    {CheckRule::maximalAttempt, "maximal_attempt"},
    {CheckRule::hardForBeginner, "hard_for_beginner"},
    {CheckRule::repsOutOfRange, "reps_out_of_range"},
    {CheckRule::likelyMiss, "likely_miss"},
    {CheckRule::aboveLately, "above_lately"},
    {CheckRule::untrainedOnMeetWeek, "untrained_on_meet_week"},
    {CheckRule::noRestForSoreArea, "no_rest_for_sore_area"},
    {CheckRule::weeklyLifts, "weekly_lifts"},
    {CheckRule::weeklyTonnage, "weekly_tonnage"},
    {CheckRule::daysNearMaximum, "days_near_maximum"},
    {CheckRule::noCompetitionLift, "no_competition_lift"},
});

/// What a finding is about. Stays the same while the plan around it is edited.
struct FindingKey
{
    CheckRule rule = CheckRule::repsOutOfRange;
    LifterId lifter;
    CardId card;  ///< invalid = the week as a whole
    QDate monday; ///< of the week
    Lift lift = Lift::bench;

    friend auto operator<=>(const FindingKey &, const FindingKey &) = default;
};

/// A finding that the coach has looked at and lets stand. It comes back when it gets worse. The
/// card it is about may be gone by now.
struct Waiver
{
    WaiverId id;
    FindingKey key;
    double measure = 1.0; ///< of the finding as it was
    QString note;         ///< why

    friend bool operator==(const Waiver &, const Waiver &) = default;
};

/// What is wrong, in words a coach can act on; empty when sound.
[[nodiscard]] QStringList problems(const Waiver &waiver);

} // namespace core
