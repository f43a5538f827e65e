#include "core/advice/advisor_situation.h"

#include "core/domain/check_in_on.h"
#include "core/domain/text.h"
#include "core/domain/training_history.h"
#include "core/domain/week.h"
#include "core/loads/resolve.h"
#include "core/notation/set_line.h"

#include <algorithm>

namespace core {

namespace {

constexpr double kHardRpe = 7.5;
/// Yesterday's hard squats make sore legs likely, not certain.
constexpr double kGuessed = 0.5;

int plannedSets(const Card &card)
{
    return setCount(parseSetLines(card.setLine).lines);
}

bool isOfLift(const AdviceContext &context, VariationId id, Lift lift)
{
    const Variation *variation = find(context.catalogue, id);
    return variation && countsFor(*variation, lift);
}

bool isHard(const SetEntry &set)
{
    return set.failed || !set.rpe || *set.rpe >= kHardRpe;
}

/// Whether the card is still to come: from the last logged day on back, what was planned and not
/// logged was missed.
bool isToCome(const AdviceContext &context, const Card &card)
{
    return std::ranges::none_of(
        context.sessions, [&card](const LoggedSession &s) { return s.day >= card.day; });
}

int hardSetsOn(const AdviceContext &context, QDate day, Lift lift)
{
    int sets = 0;
    for (const LoggedSession &session : context.sessions)
        if (session.day == day)
            for (const SetEntry &set : session.sets)
                sets += isOfLift(context, set.variation, lift) && isHard(set) ? 1 : 0;
    for (const Card &card : context.cards)
        if (card.day == day && isOfLift(context, card.variation, lift) && isToCome(context, card))
            sets += plannedSets(card);
    return sets;
}

void addGuess(std::vector<Tiredness> &tired, const CheckIn *said, BodyArea area, const QString &why)
{
    const bool isAnswered = said && said->soreness.contains(area);
    const bool isKnown =
        std::ranges::any_of(tired, [area](const Tiredness &t) { return t.area == area; });
    if (!isAnswered && !isKnown)
        tired.push_back({area, kGuessed, why});
}

std::vector<Tiredness> tirednessOf(const AdviceContext &context)
{
    std::vector<Tiredness> tired;
    const CheckIn *said = checkInOn(context.checkIns, context.lifter.id, context.day);
    if (said)
        for (const BodyArea area : soreAreas(*said))
            tired.push_back({area, 1.0, Text::tr("The check-in says: sore %1.").arg(words(area))});
    const QDate yesterday = context.day.addDays(-1);
    if (const int sets = hardSetsOn(context, yesterday, Lift::squat); sets > 0) {
        const QString why = Text::tr("Squats the day before, hard sets: %1.").arg(sets);
        addGuess(tired, said, BodyArea::legs, why);
        addGuess(tired, said, BodyArea::back, why);
    }
    if (const int sets = hardSetsOn(context, yesterday, Lift::deadlift); sets > 0) {
        const QString why = Text::tr("Deadlifts the day before, hard sets: %1.").arg(sets);
        addGuess(tired, said, BodyArea::back, why);
        addGuess(tired, said, BodyArea::legs, why);
    }
    return tired;
}

std::optional<double> weekShareOf(const Slot &slot, const AdviceContext &context)
{
    const QDate monday = mondayOf(context.day);
    const std::vector<WeekLoad> past =
        weeksBefore(monday, kUsualWeeks, context.sessions, context.catalogue, slot.lift);
    const auto usual =
        usualRange(past, kFewestUsualWeeks, [](const WeekLoad &w) { return double(w.sets); });
    if (!usual)
        return std::nullopt;
    int sets =
        weeksBefore(monday.addDays(kWeekDays), 1, context.sessions, context.catalogue, slot.lift)
            .front()
            .sets;
    for (const Card &card : context.cards)
        if (mondayOf(card.day) == monday && isOfLift(context, card.variation, slot.lift)
            && isToCome(context, card))
            sets += plannedSets(card);
    return sets / usual->high;
}

} // namespace

std::optional<int> Situation::daysSince(VariationId variation) const
{
    const auto days = m_daysAgo.find(variation);
    return days == m_daysAgo.end() ? std::nullopt : std::optional(days->second.front());
}

int Situation::usesInSixDays(VariationId variation) const
{
    const auto days = m_daysAgo.find(variation);
    return days == m_daysAgo.end()
        ? 0
        : int(std::ranges::count_if(days->second, [](int ago) { return ago <= 6; }));
}

Situation situationOf(const Slot &slot, const AdviceContext &context)
{
    Situation now;
    now.slot = slot;
    now.heavy = slot.reps <= kMostHeavyReps;
    now.tired = tirednessOf(context);
    const CheckIn *said = checkInOn(context.checkIns, context.lifter.id, context.day);
    now.readiness = said ? readiness(*said) : std::nullopt;
    now.weekShare = weekShareOf(slot, context);
    now.catalogue = context.catalogue;
    now.style = context.lifter.touchStyle;
    now.estimate = context.estimate;
    if (context.lifter.meetDate && *context.lifter.meetDate >= context.day)
        now.daysToMeet = int(context.day.daysTo(*context.lifter.meetDate));

    const auto note = [&now, &context](VariationId variation, QDate day) {
        const qint64 ago = day.daysTo(context.day);
        if (ago >= 1 && ago <= kLatelyDays)
            now.m_daysAgo[variation].push_back(int(ago));
    };
    for (const LoggedSession &session : context.sessions) {
        const qint64 ago = session.day.daysTo(context.day);
        now.m_hasLog = now.m_hasLog || (ago >= 1 && ago <= kLatelyDays && !session.sets.empty());
        for (const SetEntry &set : session.sets) {
            note(set.variation, session.day);
            if (set.lead)
                note(set.lead->variation, session.day);
        }
    }
    for (const Card &card : context.cards)
        if (isToCome(context, card))
            note(card.variation, card.day);
    for (auto &[variation, days] : now.m_daysAgo) {
        std::ranges::sort(days);
        days.erase(std::unique(days.begin(), days.end()), days.end());
    }
    return now;
}

bool isHeavier(const Variation &variation, const LiftEstimate *estimate)
{
    const int row = estimate ? estimate->rowOf(variation.id) : -1;
    const bool isOwn = row >= 0 && size_t(row) < estimate->estimate.variations.size();
    return !variation.competition
        && (variation.ratio > 1.0
            || (isOwn && estimate->estimate.variations[size_t(row)].ratio.value > 1.0));
}

} // namespace core
