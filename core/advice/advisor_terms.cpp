#include "core/advice/advisor_terms.h"

#include "core/domain/text.h"
#include "core/domain/variation.h"

#include <QLocale>
#include <algorithm>
#include <cmath>

namespace core {

namespace {

using Terms = std::vector<AdviceTerm>;
using About = AdviceTerm::About;

void touch(Terms &terms, const Candidate &candidate, const Situation &now)
{
    const Serves serves = candidate.variation.serves;
    if (now.style == TouchStyle::undecided) {
        if (candidate.variation.competition)
            terms.push_back({About::touch, 0.5,
                Text::tr("The touch style is undecided; this lift shows it best.")});
        return;
    }
    if (serves == Serves::both)
        return;
    const bool soft = serves == Serves::soft;
    if (suits(serves, now.style))
        terms.push_back({About::touch, now.heavy ? 2.0 : 1.0,
            soft ? Text::tr("Trains the soft touch that this lifter keeps.")
                 : Text::tr("Made for a bar that sinks, as this lifter's does.")});
    else
        terms.push_back({About::touch, -3.0,
            soft ? Text::tr("Made for a soft touch; this lifter lets the bar sink.")
                 : Text::tr("Made for a sinking touch; this lifter keeps a soft one.")});
}

void reps(Terms &terms, const Candidate &candidate, const Situation &now)
{
    const Variation &v = candidate.variation;
    const int asked = now.slot.reps;
    if (candidate.leadReps > 0) {
        const int beyond = std::max(asked - kMostHeavyReps, 0);
        if (beyond == 0)
            terms.push_back({About::reps, 1.5,
                Text::tr("Leads the set with %1 controlled rep; competition reps follow.")
                    .arg(candidate.leadReps)});
        else
            terms.push_back({About::reps, std::max(-1.5 * beyond, -6.0),
                Text::tr("A lead rep belongs to sets of %1 reps and fewer; %2 are asked for.")
                    .arg(kMostHeavyReps)
                    .arg(asked)});
        return;
    }
    const int beyond = std::max({v.repsLow - asked, asked - v.repsHigh, 0});
    if (beyond > 0)
        terms.push_back({About::reps, std::max(-1.5 * beyond, -6.0),
            Text::tr("Usually done for %1 to %2 reps; %3 are asked for.")
                .arg(v.repsLow)
                .arg(v.repsHigh)
                .arg(asked)});
    else if (v.repsHigh <= kMostHeavyReps)
        terms.push_back({About::reps, 1.5,
            Text::tr("Made for heavy sets of %1 reps and fewer.").arg(v.repsHigh)});
    else if (now.heavy && v.repsLow > 1 && v.repsHigh > 2 * kMostHeavyReps)
        terms.push_back({About::reps, 0.25,
            Text::tr("%1 reps are the low end of its usual %2 to %3.")
                .arg(asked)
                .arg(v.repsLow)
                .arg(v.repsHigh)});
    else
        terms.push_back({About::reps, 1.0,
            Text::tr("%1 reps lie in its usual %2 to %3.")
                .arg(asked)
                .arg(v.repsLow)
                .arg(v.repsHigh)});
}

void freshness(Terms &terms, const Candidate &candidate, const Situation &now)
{
    const Variation &v = candidate.variation;
    constexpr double kMost = 3.0;
    double spared = 0.0;
    double worked = 0.0;
    const Variation *competition = competitionOf(now.catalogue, v.lift);
    for (const Tiredness &tired : now.tired) {
        const Work work = v.work[tired.area];
        // Soreness is no reason for a heavier bar.
        const bool isSpared =
            competition && work < competition->work[tired.area] && !isHeavier(v, now.estimate);
        if (!isSpared && work == Work::none)
            continue;
        const double grade =
            isSpared ? (work == Work::none ? 3.0 : 1.5) : (work == Work::much ? 1.5 : 0.75);
        double &sum = isSpared ? spared : worked;
        const double points = std::min(grade * tired.weight, kMost - sum);
        if (points <= 0.0)
            continue;
        sum += points;
        terms.push_back({About::freshness, isSpared ? points : -points,
            tired.words + u' '
                + (!isSpared                 ? Text::tr("This works the %1.")
                        : work == Work::none ? Text::tr("This spares the %1.")
                                             : Text::tr("This works the %1 less."))
                      .arg(words(tired.area))});
    }
    const bool givesUpLegDrive = !works(v, BodyArea::legs) && v.lift == Lift::bench;
    if (now.heavy && givesUpLegDrive && spared == 0.0)
        terms.push_back({About::freshness, -1.0,
            Text::tr("Fresh for a heavy set: without leg drive it gives less at the top end.")});
    if (now.readiness && *now.readiness <= 2.0 && v.fatigue == Fatigue::high)
        terms.push_back({About::freshness, -1.0,
            Text::tr("Readiness is %1 of 5: not the day for what costs much.")
                .arg(QLocale().toString(*now.readiness, 'f', 1))});
}

void fatigue(Terms &terms, const Candidate &candidate, const Situation &now)
{
    const Fatigue cost = candidate.variation.fatigue;
    const double share = now.weekShare.value_or(0.0);
    const double part = candidate.leadReps > 0 ? 0.5 : 1.0; // only the lead rep costs so much
    if (cost == Fatigue::high) {
        const bool full = share >= 1.0;
        const double points = full ? -2.0 : share >= 0.8 ? -1.0 : -0.5;
        QString why = full ? Text::tr("The week already holds as many sets as the fullest of the "
                                      "last six, and this costs much.")
            : share >= 0.8 ? Text::tr("The week is nearly full, and this costs much.")
                           : Text::tr("Costs much: keep the rest of the week in mind.");
        if (candidate.leadReps > 0)
            why += u' ' + Text::tr("Only the lead rep is costly.");
        terms.push_back({About::fatigue, points * part, why});
    } else if (cost == Fatigue::low && share >= 0.8) {
        terms.push_back(
            {About::fatigue, 0.5, Text::tr("The week is nearly full; this costs little.")});
    }
}

void meet(Terms &terms, const Candidate &candidate, const Situation &now)
{
    constexpr int kNear = 21;
    constexpr int kVeryNear = 10;
    if (!now.daysToMeet || *now.daysToMeet > kNear)
        return;
    const int days = *now.daysToMeet;
    const Variation &v = candidate.variation;
    if (v.competition)
        terms.push_back({About::meet, days <= kVeryNear ? 3.0 : 1.5,
            Text::tr("Days to the meet: %1. Practise what will be judged.").arg(days)});
    else if (days <= kVeryNear && now.hasLog() && !now.daysSince(v.id))
        terms.push_back({About::meet, -3.0,
            Text::tr("Days to the meet: %1. Not trained in the last four weeks; no time for new "
                     "things.")
                .arg(days)});
    if (days <= kVeryNear && v.fatigue == Fatigue::high)
        terms.push_back({About::meet, -1.5,
            Text::tr("Days to the meet: %1. Fatigue would not be gone by then.").arg(days)});
}

void lately(Terms &terms, const Candidate &candidate, const Situation &now)
{
    const Variation &v = candidate.variation;
    if (!now.hasLog())
        return;
    const std::optional<int> since = now.daysSince(v.id);
    if (v.competition && (!since || *since > 7))
        terms.push_back(
            {About::lately, 0.75, Text::tr("No competition reps in the last seven days.")});
    if (since == 1)
        terms.push_back({About::lately, -0.5, Text::tr("It was done the day before.")});
    else if (now.usesInSixDays(v.id) >= 2 && !v.competition)
        terms.push_back({About::lately, -0.75,
            Text::tr("Already on %1 of the last six days.").arg(now.usesInSixDays(v.id))});
}

void ownRatio(Terms &terms, const Candidate &candidate, const Situation &now)
{
    constexpr double kWide = 0.12; // of the competition max, from end to end
    const Variation &v = candidate.variation;
    const int row = now.estimate ? now.estimate->rowOf(v.id) : -1;
    if (v.competition || row < 0 || size_t(row) >= now.estimate->estimate.variations.size())
        return;
    const strength::VariationEstimate &own = now.estimate->estimate.variations[size_t(row)];
    const QLocale locale;
    const auto percent = [&locale](double share) { return locale.toString(share * 100.0, 'f', 0); };
    if (own.sets == 0)
        terms.push_back({About::ownRatio, -0.25,
            Text::tr("No set of it is logged: the load comes from the usual ratio.")});
    else if (own.ratio.high90 < v.ratio)
        terms.push_back({About::ownRatio, 0.75,
            Text::tr("Weaker in it than most (%1% of competition, usual is %2%): room to gain.")
                .arg(percent(own.ratio.value), percent(v.ratio))});
    else if (own.ratio.low90 > v.ratio)
        terms.push_back({About::ownRatio, -0.25,
            Text::tr("Stronger in it than most already (%1% of competition, usual is %2%).")
                .arg(percent(own.ratio.value), percent(v.ratio))});
    else if (own.ratio.high90 - own.ratio.low90 > kWide)
        terms.push_back({About::ownRatio, -0.25,
            Text::tr("This lifter's ratio is uncertain (%1% to %2% of competition).")
                .arg(percent(own.ratio.low90), percent(own.ratio.high90))});
}

} // namespace

std::vector<AdviceTerm> termsFor(const Candidate &candidate, const Situation &now)
{
    Terms terms;
    for (const auto rule : {touch, reps, freshness, fatigue, meet, lately, ownRatio})
        rule(terms, candidate, now);
    std::ranges::stable_sort(terms, [](const AdviceTerm &a, const AdviceTerm &b) {
        return std::abs(a.points) > std::abs(b.points);
    });
    return terms;
}

bool leadsWell(const Variation &variation)
{
    return !variation.competition && variation.fatigue == Fatigue::high
        && variation.repsHigh <= kMostHeavyReps;
}

} // namespace core
