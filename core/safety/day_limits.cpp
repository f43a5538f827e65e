#include "core/safety/day_limits.h"

#include "core/domain/text.h"
#include "core/safety/pain_place.h"

#include <QLocale>
#include <algorithm>

namespace core {

namespace {

/// The pains that no later check-in up to the day has answered with "no".
std::vector<StandingPain> painsOn(
    const Lifter &lifter, QDate day, std::span<const CheckIn> checkIns)
{
    std::vector<const CheckIn *> said;
    for (const CheckIn &checkIn : checkIns)
        if (checkIn.lifter == lifter.id && checkIn.day <= day)
            said.push_back(&checkIn);
    std::ranges::sort(said, [](const CheckIn *a, const CheckIn *b) { return a->day > b->day; });
    std::vector<StandingPain> pains;
    for (const CheckIn *checkIn : said) {
        if (checkIn->isPainFree)
            break;
        if (!checkIn->pain)
            continue;
        const PainFlag &flag = *checkIn->pain;
        const bool isKnown = std::ranges::any_of(pains, [&flag](const StandingPain &pain) {
            return pain.flag.area == flag.area && (flag.area || pain.flag.words == flag.words);
        });
        if (!isKnown)
            pains.push_back({flag, checkIn->day});
    }
    return pains;
}

bool isReadinessLow(const Lifter &lifter, QDate day, std::span<const CheckIn> checkIns)
{
    return std::ranges::any_of(checkIns, [&lifter, day](const CheckIn &checkIn) {
        return checkIn.lifter == lifter.id && checkIn.day == day
            && readiness(checkIn).value_or(kLowReadiness) < kLowReadiness;
    });
}

} // namespace

bool DayLimits::isBeginner() const
{
    return std::ranges::any_of(noMaximal,
        [](NoMaximal why) { return why == NoMaximal::minor || why == NoMaximal::novice; });
}

DayLimits limitsOn(const Lifter &lifter, QDate day, std::span<const CheckIn> checkIns)
{
    DayLimits limits{painsOn(lifter, day, checkIns), {}, isAgeUnknown(lifter)};
    if (!limits.pains.empty())
        limits.noMaximal.push_back(NoMaximal::pain);
    if (mayBeMinor(lifter, day))
        limits.noMaximal.push_back(NoMaximal::minor);
    if (isNovice(lifter, day))
        limits.noMaximal.push_back(NoMaximal::novice);
    if (isReadinessLow(lifter, day, checkIns))
        limits.noMaximal.push_back(NoMaximal::lowReadiness);
    return limits;
}

bool isMaximal(const SetEffort &set)
{
    if (set.isOpenEnded)
        return true;
    if (!set.rpe && !set.shareOfMax)
        return set.reps <= kMostRepsOfAnAttempt;
    return set.rpe.value_or(0.0) > kMaximalRpe || set.shareOfMax.value_or(0.0) >= kMaximalShare;
}

bool works(const SetEffort &set, BodyArea area)
{
    return !set.variation || works(*set.variation, area) || (set.lead && works(*set.lead, area));
}

QString whyWithheld(const DayLimits &limits, const SetEffort &set)
{
    for (const StandingPain &pain : limits.pains)
        if (pain.flag.area && works(set, *pain.flag.area))
            return Text::tr("Pain (%1): nothing is suggested for this set. Stop what hurts and "
                            "refer.")
                .arg(words(pain.flag));
    for (const StandingPain &pain : limits.pains)
        if (mayHurt(pain.flag, set))
            return Text::tr("Pain (%1), and no area is named: nothing is suggested for this set. "
                            "Ask where it hurts, and name the nearest area in the check-in of %2. "
                            "Stop what hurts and refer.")
                .arg(words(pain.flag), QLocale().toString(pain.said, QLocale::ShortFormat));
    return isMaximal(set) ? whyNoMaximal(limits) : QString();
}

QString whyNoMaximal(const DayLimits &limits)
{
    if (limits.mayGoMaximal())
        return {};
    switch (limits.noMaximal.front()) {
    case NoMaximal::pain:
        return Text::tr("Pain (%1): no maximal work until a check-in says that it is gone.")
            .arg(words(limits.pains.front().flag));
    case NoMaximal::minor:
        return Text::tr("Under 18, or only just of age: no maximal work without qualified "
                        "supervision. Agree on something lighter.");
    case NoMaximal::novice:
        return Text::tr("In training for less than a year: no maximal work. Agree on something "
                        "lighter.");
    case NoMaximal::lowReadiness:
        break;
    }
    return Text::tr("Low readiness: no maximal work today. Agree on something lighter.");
}

} // namespace core
