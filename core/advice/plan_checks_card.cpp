#include "core/advice/plan_checks_rules.h"
#include "core/domain/text.h"
#include "core/domain/training_history.h"
#include "core/safety/pain_place.h"

#include <QLocale>
#include <algorithm>

namespace core {

namespace {

constexpr int kLatelyDays = 56;    ///< for "above anything done lately"
constexpr int kTrainedDays = 28;   ///< trained within so many days before the meet week
constexpr double kFarAbove = 1.05; ///< times the heaviest lately: no longer a small step

using Found = std::vector<Finding>;

/// The latest check-in up to the day.
const CheckIn *latestCheckIn(std::span<const CheckIn> checkIns, QDate day)
{
    const CheckIn *latest = nullptr;
    for (const CheckIn &checkIn : checkIns)
        if (checkIn.day <= day && (!latest || checkIn.day > latest->day))
            latest = &checkIn;
    return latest;
}

SetEffort effortOf(const CheckedPlan &checked, const CheckedCard &card, const ResolvedLine &line)
{
    return effortOf(line, card.variation, card.resolved.card.day,
        checked.plan.estimateOf(card.variation.lift), checked.plan.catalogue);
}

/// A pain in an area stops all that works it, by its lead or by the reps after it; one of which no
/// area is named stops everything, since it may be anywhere.
void pain(const CheckedPlan &checked, const CheckedCard &card, Found &found)
{
    const DayLimits limits =
        limitsOn(checked.plan.lifter, card.resolved.card.day, checked.plan.checkIns);
    std::optional<SetEffort> hardest;
    for (const ResolvedLine &line : card.resolved.lines)
        if (const SetEffort effort = effortOf(checked, card, line);
            !hardest || (isMaximal(effort) && !isMaximal(*hardest)))
            hardest = effort;
    if (!hardest)
        return;
    const auto stop = [&](const QString &words, const QString &remedy) {
        found.push_back(checked.finding(CheckRule::pain, Severity::stop, card, 1.0, words, remedy));
    };
    for (const StandingPain &pain : limits.pains) {
        const QString where =
            Text::tr("Pain was flagged on %1 (%2)")
                .arg(QLocale().toString(pain.said, QLocale::ShortFormat), words(pain.flag));
        const QString refer = Text::tr("Refer the lifter to a physician or physiotherapist; their "
                                       "word comes first.");
        const bool isWorked =
            std::ranges::any_of(card.resolved.lines, [&](const ResolvedLine &line) {
                return mayHurt(pain.flag, effortOf(checked, card, line));
            });
        if (!pain.flag.area)
            stop(Text::tr("%1, and no area is named: %2 may work it.")
                     .arg(where, card.variation.name),
                Text::tr("Ask where it hurts, and name the nearest area in that check-in. %1")
                    .arg(refer));
        else if (isWorked)
            stop(Text::tr("%1, and %2 works it.").arg(where, card.variation.name),
                Text::tr("Take it out. %1").arg(refer));
        else if (isMaximal(*hardest))
            stop(Text::tr("%1, and this is maximal work.").arg(where),
                Text::tr("No maximal work until a check-in says that the pain is gone. %1")
                    .arg(refer));
        else
            continue;
        return; // one finding a card
    }
}

void maximalAttempt(const CheckedPlan &checked, const CheckedCard &card, Found &found)
{
    const DayLimits limits = limitsOn(checked.plan.lifter, card.resolved.card.day, {});
    if (!limits.isBeginner())
        return;
    const bool isMinor = mayBeMinor(checked.plan.lifter, card.resolved.card.day);
    std::optional<double> hardRpe;
    for (const ResolvedLine &line : card.resolved.lines) {
        const SetEffort effort = effortOf(checked, card, line);
        if (isMaximal(effort)) {
            found.push_back(checked.finding(CheckRule::maximalAttempt, Severity::stop, card,
                effort.shareOfMax.value_or(1.0),
                isMinor
                    ? Text::tr("Maximal work for a lifter who is under 18, or only just of age.")
                    : Text::tr("Maximal work for a lifter who trains for less than a year."),
                Text::tr(
                    "Technique first: three reps and more, two in reserve; maximal singles only "
                    "under qualified supervision.")));
            return;
        }
        if (effort.rpe.value_or(0.0) > kMostRpeWithoutMaximal)
            hardRpe = std::max(hardRpe.value_or(0.0), *effort.rpe);
    }
    if (hardRpe)
        found.push_back(
            checked.finding(CheckRule::hardForBeginner, Severity::warning, card, *hardRpe,
                (isMinor ? Text::tr("RPE %1 for a lifter who is under 18, or only just of age.")
                         : Text::tr("RPE %1 for a lifter who trains for less than a year."))
                    .arg(QLocale().toString(*hardRpe)),
                Text::tr("Leave two reps in reserve.")));
}

/// Reps above (+) or below (-) the range of the variation.
int beyond(int fewest, int most, const Variation &variation)
{
    if (most > variation.repsHigh)
        return most - variation.repsHigh;
    return fewest < variation.repsLow ? fewest - variation.repsLow : 0;
}

void repsOutOfRange(const CheckedPlan &checked, const CheckedCard &card, Found &found)
{
    int worst = 0;
    const Variation *where = nullptr;
    // Too many go before too few.
    const auto rank = [](int reps) { return std::pair(reps > 0, std::abs(reps)); };
    const auto look = [&](int fewest, int most, const Variation *variation) {
        const int now = variation ? beyond(fewest, most, *variation) : 0;
        if (rank(now) > rank(worst)) {
            worst = now;
            where = variation;
        }
    };
    for (const SetLine &line : card.resolved.parsed.lines) {
        if (line.leadReps > 0) {
            look(line.leadReps, line.leadReps, &card.variation);
            const int rest = line.reps - line.leadReps;
            // Few reps after a lead are what a lead-rep set is for.
            const Variation *following =
                restVariation(line, card.variation, checked.plan.catalogue);
            look(following ? std::max(rest, following->repsLow) : rest, rest, following);
        } else {
            look(line.reps, line.mostReps.value_or(line.reps), &card.variation);
        }
    }
    if (!where)
        return;
    found.push_back(checked.finding(CheckRule::repsOutOfRange,
        worst > 0 ? Severity::warning : Severity::hint, card, std::abs(worst),
        (worst > 0 ? Text::tr("%1 is done for %2 to %3 reps; the plan asks for %4 more.")
                   : Text::tr("%1 is done for %2 to %3 reps; the plan asks for %4 fewer."))
            .arg(where->name)
            .arg(where->repsLow)
            .arg(where->repsHigh)
            .arg(std::abs(worst)),
        Text::tr("Change the reps, or take a variation that is made for them.")));
}

void likelyMiss(const CheckedPlan &checked, const CheckedCard &card, Found &found)
{
    std::optional<double> least;
    for (const ResolvedLine &line : card.resolved.lines)
        if (line.allMade)
            least = std::min(least.value_or(1.0), *line.allMade);
    if (!least || *least >= 0.5)
        return;
    found.push_back(checked.finding(CheckRule::likelyMiss, Severity::warning, card, 1.0 - *least,
        Text::tr("The chance that all reps are made is %1 in 10.")
            .arg(QLocale().toString(*least * 10.0, 'f', 0)),
        Text::tr("Take the load down, or have spotters and a reason for it.")));
}

void aboveLately(const CheckedPlan &checked, const CheckedCard &card, Found &found)
{
    const QDate day = card.resolved.card.day;
    double heaviestDone = 0.0;
    for (const LoggedSession &session : checked.plan.sessions)
        if (const qint64 ago = session.day.daysTo(day); ago >= 1 && ago <= kLatelyDays)
            for (const SetEntry &set : session.sets)
                if (set.variation == card.variation.id && set.repsDone > 0)
                    heaviestDone = std::max(heaviestDone, set.loadKg);
    double heaviestPlanned = 0.0;
    for (const ResolvedLine &line : card.resolved.lines)
        if (line.load)
            heaviestPlanned = std::max(heaviestPlanned, line.load->loadKg);
    if (heaviestDone <= 0.0 || heaviestPlanned <= heaviestDone + 1e-6)
        return;
    const double times = heaviestPlanned / heaviestDone;
    const Unit unit = checked.plan.lifter.unit;
    found.push_back(checked.finding(CheckRule::aboveLately,
        times > kFarAbove ? Severity::warning : Severity::hint, card, times,
        Text::tr("%1 is above anything done in %2 in the last eight weeks; the heaviest was %3.")
            .arg(formatLoad(heaviestPlanned, unit), card.variation.name,
                formatLoad(heaviestDone, unit)),
        Text::tr("Go up in smaller steps, or see that it is meant as a record.")));
}

void untrainedOnMeetWeek(const CheckedPlan &checked, const CheckedCard &card, Found &found)
{
    const QDate day = card.resolved.card.day;
    const std::optional<QDate> &meet = checked.plan.lifter.meetDate;
    if (!meet || day > *meet || day.daysTo(*meet) >= 7 || card.variation.competition)
        return;
    const QDate since = meet->addDays(-6 - kTrainedDays);
    const bool isLogged =
        lastDone(card.variation.id, day, checked.plan.sessions).value_or(QDate()) >= since;
    const bool isPlanned = std::ranges::any_of(checked.cards, [&](const CheckedCard &earlier) {
        const QDate then = earlier.resolved.card.day;
        return earlier.variation.id == card.variation.id && then >= since
            && then.daysTo(*meet) >= 7;
    });
    if (isLogged || isPlanned)
        return;
    found.push_back(checked.finding(CheckRule::untrainedOnMeetWeek, Severity::warning, card, 1.0,
        Text::tr("%1 in the week of the meet, but not trained in the four weeks before.")
            .arg(card.variation.name),
        Text::tr("Take competition lifts or what was trained lately.")));
}

void noRestForSoreArea(const CheckedPlan &checked, const CheckedCard &card, Found &found)
{
    constexpr int kSoreDays = 3; // soreness fades (common practice, no source)
    const QDate day = card.resolved.card.day;
    const CheckIn *said = latestCheckIn(checked.plan.checkIns, day);
    if (!said || said->day.daysTo(day) > kSoreDays)
        return;
    for (const BodyArea area : soreAreas(*said)) {
        const auto worksItTheDayBefore = [&](const CheckedCard &other) {
            return other.resolved.card.day == day.addDays(-1) && works(other.variation, area);
        };
        const bool isDoneTheDayBefore =
            std::ranges::any_of(checked.plan.sessions, [&](const LoggedSession &session) {
                return session.day == day.addDays(-1)
                    && std::ranges::any_of(session.sets, [&](const SetEntry &set) {
                           const Variation *v = find(checked.plan.catalogue, set.variation);
                           return v && works(*v, area);
                       });
            });
        if (!works(card.variation, area)
            || (!isDoneTheDayBefore && std::ranges::none_of(checked.cards, worksItTheDayBefore)))
            continue;
        found.push_back(checked.finding(CheckRule::noRestForSoreArea, Severity::warning, card, 1.0,
            Text::tr("Sore %1, and worked two days in a row.").arg(words(area)),
            Text::tr("Leave a day between, or take a variation that spares it.")));
        return;
    }
}

} // namespace

void checkCard(const CheckedPlan &checked, const CheckedCard &card, std::vector<Finding> &found)
{
    for (const auto rule : {pain, maximalAttempt, repsOutOfRange, likelyMiss, aboveLately,
             untrainedOnMeetWeek, noRestForSoreArea})
        rule(checked, card, found);
}

} // namespace core
