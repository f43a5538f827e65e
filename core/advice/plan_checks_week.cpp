#include "core/advice/plan_checks_rules.h"
#include "core/domain/text.h"
#include "core/domain/training_history.h"
#include "core/domain/week.h"

#include <QLocale>
#include <cmath>
#include <set>

namespace core {

namespace {

constexpr double kJump = 1.2;        ///< times the fullest of the lifter's last weeks
constexpr double kNearMaximum = 0.9; ///< share of the variation's max
constexpr int kMeetNearDays = 21;

using Found = std::vector<Finding>;

struct Jump
{
    UsualRange usual;
    double now = 0.0;
    double times = 1.0;
};

/// The figure of the week against the weeks before, where it is a jump.
template <class Figure>
std::optional<Jump> jumpOf(const CheckedPlan &checked, QDate monday, Lift lift, Figure figure)
{
    std::vector<WeekLoad> before;
    for (int back = kUsualWeeks; back > 0; --back)
        before.push_back(checked.load(monday.addDays(-kWeekDays * back), lift));
    const auto usual = usualRange(std::span<const WeekLoad>(before), kFewestUsualWeeks, figure);
    const double now = figure(checked.load(monday, lift));
    if (!usual || usual->high <= 0.0 || now <= kJump * usual->high)
        return std::nullopt;
    return Jump{*usual, now, now / usual->high};
}

Severity severityOf(const Jump &jump)
{
    return jump.times > 1.5 ? Severity::warning : Severity::hint;
}

void weeklyLifts(const CheckedPlan &checked, QDate monday, Lift lift, Found &found)
{
    const auto jump =
        jumpOf(checked, monday, lift, [](const WeekLoad &w) { return double(w.lifts); });
    if (!jump)
        return;
    const QLocale locale;
    const auto whole = [&locale](double value) { return locale.toString(int(std::lround(value))); };
    found.push_back(checked.finding(CheckRule::weeklyLifts, severityOf(*jump), monday, lift,
        jump->times,
        Text::tr("%1: %2 lifts this week; the weeks before held %3 to %4.")
            .arg(words(lift), whole(jump->now), whole(jump->usual.low), whole(jump->usual.high)),
        Text::tr("Take out about %1 lifts, or build up over more weeks.")
            .arg(whole(jump->now - kJump * jump->usual.high + 0.5))));
}

void weeklyTonnage(const CheckedPlan &checked, QDate monday, Lift lift, Found &found)
{
    const auto jump = jumpOf(checked, monday, lift, [](const WeekLoad &w) { return w.tonnageKg; });
    if (!jump)
        return;
    const Unit unit = checked.plan.lifter.unit;
    const auto load = [unit](double kg) { return formatLoad(kg, unit, 0); };
    found.push_back(
        checked.finding(CheckRule::weeklyTonnage, severityOf(*jump), monday, lift, jump->times,
            Text::tr("%1: tonnage of %2 this week; the weeks before held %3 to %4.")
                .arg(words(lift), load(jump->now), load(jump->usual.low), load(jump->usual.high)),
            Text::tr("Take out sets or load, or build up over more weeks.")));
}

/// Two heavy days a week, for the deadlift one (common practice, no source).
int mostDaysNearMaximum(Lift lift)
{
    return lift == Lift::deadlift ? 1 : 2;
}

void daysNearMaximum(const CheckedPlan &checked, QDate monday, Lift lift, Found &found)
{
    std::set<QDate> days;
    for (const CheckedCard &card : checked.cards)
        if (card.monday == monday && card.variation.lift == lift)
            for (const ResolvedLine &line : card.resolved.lines)
                if (shareOfMax(line, card, checked.plan).value_or(0.0) >= kNearMaximum)
                    days.insert(card.resolved.card.day);
    const int most = mostDaysNearMaximum(lift);
    if (int(days.size()) <= most)
        return;
    found.push_back(checked.finding(CheckRule::daysNearMaximum, Severity::warning, monday, lift,
        double(days.size()),
        Text::tr("%1: days this week at 90% of the max and above: %2.")
            .arg(words(lift))
            .arg(days.size()),
        Text::tr("Keep the heavy days to %1 and make the others lighter.").arg(most)));
}

void noCompetitionLift(const CheckedPlan &checked, QDate monday, Lift lift, Found &found)
{
    const std::optional<QDate> &meet = checked.plan.lifter.meetDate;
    // The lifter may enter other lifts or none; the bench press is what this plan is for.
    if (lift != Lift::bench || !meet || *meet < monday || monday.daysTo(*meet) > kMeetNearDays)
        return;
    bool isTrained = false;
    for (const CheckedCard &card : checked.cards) {
        if (card.monday != monday || !countsFor(card.variation, lift))
            continue;
        isTrained = true;
        if (card.variation.competition)
            return;
        for (const SetLine &line : card.resolved.parsed.lines)
            if (const Variation *rest = restVariation(line, card.variation, checked.plan.catalogue);
                rest && rest->competition)
                return;
    }
    if (!isTrained)
        return;
    found.push_back(
        checked.finding(CheckRule::noCompetitionLift, Severity::warning, monday, lift, 1.0,
            Text::tr("No competition bench this week, and the meet is on %1.")
                .arg(QLocale().toString(*meet, QLocale::ShortFormat)),
            Text::tr("Put competition bench with its signals on at least one day.")));
}

} // namespace

void checkWeek(const CheckedPlan &checked, QDate monday, std::vector<Finding> &found)
{
    for (const Lift lift : {Lift::bench, Lift::squat, Lift::deadlift})
        for (const auto rule : {weeklyLifts, weeklyTonnage, daysNearMaximum, noCompetitionLift})
            rule(checked, monday, lift, found);
}

} // namespace core
