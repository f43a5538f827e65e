#include "core/advice/advisor.h"

#include "core/advice/advisor_terms.h"
#include "core/domain/text.h"
#include "core/domain/variation.h"
#include "core/notation/set_line.h"
#include "core/safety/pain_place.h"
#include "core/safety/unknown_age.h"

#include <algorithm>
#include <numeric>
#include <stdexcept>

namespace core {

namespace {

constexpr double kMostRpeInPain = 6.0;
constexpr int kSets = 3;
constexpr double kUsualRpe = 8.0;

/// Whether a variation is left on the list in spite of pain: it works nothing that hurts, and is
/// not loaded heavier than the competition lift.
bool isBearable(const Variation &variation, const DayLimits &limits, const LiftEstimate *estimate)
{
    return limits.pains.empty()
        || (!isHeavier(variation, estimate)
            && std::ranges::none_of(limits.pains,
                [&variation](const StandingPain &pain) { return mayHurt(pain.flag, variation); }));
}

QString painCaution(const std::vector<StandingPain> &pains)
{
    QStringList where;
    for (const StandingPain &pain : pains)
        where << words(pain.flag);
    return Text::tr("Pain was flagged (%1). Stop what hurts and refer the lifter to a physician or "
                    "physiotherapist; their word comes first. Nothing heavier is suggested.")
        .arg(where.join(QStringLiteral(", ")));
}

/// A candidate leads the set where it is made to and competition reps can follow.
int leadRepsOf(const Variation &variation, const Slot &slot, const Variation *competition)
{
    return competition && slot.reps > 1 && leadsWell(variation) ? 1 : 0;
}

} // namespace

Ranking rankVariations(const Slot &asked, const AdviceContext &context)
{
    if (asked.reps < 1)
        throw std::invalid_argument("a slot asks for at least one rep");
    Ranking ranking;
    ranking.limits = limitsOn(context.lifter, context.day, context.checkIns);
    const DayLimits &limits = ranking.limits;
    Slot slot = asked;
    if (limits.isBeginner())
        slot.reps = std::max(slot.reps, kFewestRepsWithoutMaximal);
    ranking.reps = slot.reps;
    const Situation now = situationOf(slot, context);
    const Variation *competition = competitionOf(context.catalogue, slot.lift);

    for (const Variation &v : context.catalogue) {
        if (!countsFor(v, slot.lift) || v.retired || !isBearable(v, limits, context.estimate))
            continue;
        const int lead = leadRepsOf(v, slot, competition);
        // The reps that follow the lead are competition reps: they have to be bearable too.
        if (lead > 0 && !isBearable(*competition, limits, context.estimate))
            continue;
        Advice advice{v.id, v.usualPercent, lead, 0.0, termsFor({v, lead}, now)};
        advice.score = std::accumulate(advice.terms.begin(), advice.terms.end(), 0.0,
            [](double sum, const AdviceTerm &term) { return sum + term.points; });
        ranking.advice.push_back(std::move(advice));
    }
    std::ranges::stable_sort(
        ranking.advice, [](const Advice &a, const Advice &b) { return a.score > b.score; });

    const auto capAt = [&ranking](double rpe, const QString &why) {
        ranking.mostRpe = std::min(ranking.mostRpe.value_or(rpe), rpe);
        ranking.cautions << why;
    };
    if (!limits.pains.empty())
        capAt(kMostRpeInPain, painCaution(limits.pains));
    if (mayBeMinor(context.lifter, context.day))
        capAt(kMostRpeWithoutMaximal,
            Text::tr("Under 18, or only just of age: technique first. No maximal attempts; sets of "
                     "three and more, two reps in reserve."));
    else if (isNovice(context.lifter, context.day))
        capAt(kMostRpeWithoutMaximal,
            Text::tr("In training for less than a year. No maximal attempts until it is plain that "
                     "the lifter is ready; sets of three and more, two reps in reserve."));
    else if (limits.pains.empty() && !limits.mayGoMaximal())
        capAt(kMaximalRpe, whyNoMaximal(limits));
    else if (limits.isAgeUnknown && slot.rpe.value_or(0.0) > kMaximalRpe)
        capAt(kMaximalRpe, whyNoMaximalYet(limits));
    if (ranking.advice.empty() && limits.pains.empty())
        ranking.cautions << Text::tr("The catalogue has no variation of this lift.");
    return ranking;
}

QString adviceSetLine(const Advice &advice, const Slot &slot, const Ranking &ranking)
{
    SetLine line;
    line.sets = kSets;
    line.reps = ranking.reps;
    line.leadReps = advice.leadReps < line.reps ? advice.leadReps : 0;
    const double rpe = slot.rpe.value_or(kUsualRpe);
    if (advice.usualPercent)
        line.target = ShareTarget{*advice.usualPercent};
    else
        line.target = RpeTarget{ranking.mostRpe ? std::min(rpe, *ranking.mostRpe) : rpe};
    return setLineText(line);
}

} // namespace core
