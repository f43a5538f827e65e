#include "core/domain/waiver.h"

#include "core/domain/text.h"

#include <cmath>
#include <utility>

namespace core {

namespace {

constexpr std::pair<CheckRule, const char *> kFileWords[] = {{CheckRule::pain, "pain"},
    {CheckRule::maximalAttempt, "maximal_attempt"},
    {CheckRule::repsOutOfRange, "reps_out_of_range"}, {CheckRule::likelyMiss, "likely_miss"},
    {CheckRule::aboveLately, "above_lately"},
    {CheckRule::untrainedOnMeetWeek, "untrained_on_meet_week"},
    {CheckRule::noRestForSoreArea, "no_rest_for_sore_area"},
    {CheckRule::weeklyLifts, "weekly_lifts"}, {CheckRule::weeklyTonnage, "weekly_tonnage"},
    {CheckRule::daysNearMaximum, "days_near_maximum"},
    {CheckRule::noCompetitionLift, "no_competition_lift"}};

} // namespace

QString fileWord(CheckRule rule)
{
    for (const auto &[each, word] : kFileWords)
        if (each == rule)
            return QString::fromLatin1(word);
    return {};
}

std::optional<CheckRule> checkRuleFromFileWord(const QString &word)
{
    for (const auto &[rule, each] : kFileWords)
        if (word == QLatin1String(each))
            return rule;
    return std::nullopt;
}

QStringList problems(const Waiver &waiver)
{
    QStringList wrong;
    if (!waiver.key.lifter.isValid())
        wrong << Text::tr("A note on a finding belongs to a lifter.");
    if (!waiver.key.monday.isValid())
        wrong << Text::tr("A note on a finding belongs to a week.");
    if (!std::isfinite(waiver.measure))
        wrong << Text::tr("The finding has no measure.");
    return wrong;
}

} // namespace core
