#include "core/review/touch_review.h"

#include "core/domain/lifter_edits.h"
#include "core/domain/text.h"
#include "core/domain/touch_score.h"
#include "core/loads/implied_max.h"

#include <QLocale>
#include <cmath>

namespace core {

using strength::TouchHold;
using strength::TouchStanding;

namespace {

constexpr double kSoftFrom = 0.85, kSinkingUpTo = 0.80; ///< shares of the max
constexpr int kLight = 2, kRests = 3;

QString percent(double share)
{
    return QLocale().toString(int(std::lround(100.0 * share)));
}

QString withInterval(const strength::Interval &share)
{
    return Text::tr("%1 % (%2 to %3)")
        .arg(percent(share.value), percent(share.low90), percent(share.high90));
}

} // namespace

std::vector<strength::TouchReading> touchReadings(
    const LiftEstimate &lift, std::optional<VariationId> only)
{
    std::vector<strength::TouchReading> readings;
    for (int number = 0; const LoggedSession &session : lift.readings) {
        std::optional<double> max;
        for (const SetEntry &set : session.sets) {
            const int row = lift.rowOf(set.variation);
            if (!set.touch || row < 0 || (only && *only != set.variation))
                continue;
            if (!max)
                max = knownMaxKg(lift, session.day);
            if (!max)
                break;
            const double ofVariation = *max * lift.estimate.variations[size_t(row)].ratio.value;
            readings.push_back(
                {engineDay(session.day), number, set.loadKg / ofVariation, *set.touch});
        }
        ++number;
    }
    return readings;
}

QString words(const TouchHold &hold, int wanted)
{
    const QString touch = touchWord(wanted);
    switch (hold.standing) {
    case TouchStanding::none:
        return Text::tr("No touch score yet. Score the touch of heavy sets, 1 to 5.");
    case TouchStanding::few:
        return Text::tr(
            "Not enough to say: sets with a touch score so far: %1. A dozen over a range "
            "of loads is the least.")
            .arg(hold.sets);
    case TouchStanding::flat:
        return Text::tr("The touch does not change with the load so far (%1 to %2 % of the max): "
                        "there is no share to name.")
            .arg(percent(hold.lowestShare), percent(hold.highestShare));
    case TouchStanding::beyond:
        return Text::tr("\"%1\" or softer at every load seen, up to %2 % of the max.")
            .arg(touch, percent(hold.highestShare));
    case TouchStanding::below:
        return Text::tr(
            "Heavier touch than \"%1\" already at the lightest load scored, %2 % of the max.")
            .arg(touch, percent(hold.lowestShare));
    case TouchStanding::enough:
        break;
    }
    return Text::tr("\"%1\" or softer up to %2 of the max; heavier than that, more often not.")
        .arg(touch, withInterval(hold.share));
}

TouchSuggestion suggestTouchStyle(std::span<const strength::TouchReading> readings,
    const strength::TouchRoster &roster, QDate day)
{
    constexpr int kWanted[] = {kLight, kRests};
    const std::vector<TouchHold> holds = touchHolds(readings, roster, kWanted, {engineDay(day)});
    const TouchHold &light = holds[0];
    const TouchHold &rests = holds[1];
    const auto says = [](const TouchHold &hold) {
        return hold.standing == TouchStanding::beyond || hold.standing == TouchStanding::below
            || hold.standing == TouchStanding::enough;
    };
    if (says(light) && light.share.low90 >= kSoftFrom)
        return {TouchStyle::soft,
            Text::tr("The bar stays light on the chest up to heavy loads. %1")
                .arg(words(light, kLight))};
    if (says(rests) && rests.share.high90 <= kSinkingUpTo)
        return {TouchStyle::sinking,
            Text::tr("The bar sinks already at working loads. %1").arg(words(rests, kRests))};
    if (says(light) && says(rests))
        return {TouchStyle::undecided,
            Text::tr("Between the two: light at lower loads, sinking at heavy ones. %1")
                .arg(words(light, kLight))};
    return {std::nullopt, words(light, kLight)};
}

Edit confirmTouchStyle(const Lifter &lifter, TouchStyle style)
{
    Lifter after = lifter;
    after.touchStyle = style;
    return changeLifter(lifter, after);
}

} // namespace core
