#include "core/advice/advisor.h"

#include "core/advice/advisor_terms.h"
#include "core/domain/text.h"
#include "core/domain/variation.h"

#include <algorithm>
#include <numeric>
#include <stdexcept>

namespace core {

namespace {

constexpr double kMostRpeInPain = 6.0;
constexpr double kMostRpeWithoutMaximum = 8.0;

/// Whether a variation is left on the list in spite of pain. What only spares a muscle that the
/// lift is done with will not do; a bench press without legs and back will.
bool isBearable(const Variation &variation, const PainFlag &pain)
{
    return variation.lift == Lift::bench
        && (pain.area == BodyArea::back || pain.area == BodyArea::legs)
        && !works(variation, *pain.area) && variation.ratio <= 1.0;
}

QString painCaution(const PainFlag &pain)
{
    const QString where = pain.area ? words(*pain.area) : pain.words;
    return Text::tr("Pain was flagged (%1). Stop what hurts and refer the lifter to a physician or "
                    "physiotherapist; their word comes first. Nothing heavier is suggested.")
        .arg(where);
}

/// A candidate leads the set where it is made to and competition reps can follow.
int leadRepsOf(const Variation &variation, const Slot &slot, const Variation *competition)
{
    return competition && slot.reps > 1 && leadsWell(variation) ? 1 : 0;
}

} // namespace

Ranking rankVariations(const Slot &slot, const AdviceContext &context)
{
    if (slot.reps < 1)
        throw std::invalid_argument("a slot asks for at least one rep");
    const PainFlag *pain =
        context.checkIn && context.checkIn->pain ? &*context.checkIn->pain : nullptr;
    const Situation now = situationOf(slot, context);
    const Variation *competition = competitionOf(context.catalogue, slot.lift);

    Ranking ranking;
    for (const Variation &v : context.catalogue) {
        if (v.lift != slot.lift || v.retired || (pain && !isBearable(v, *pain)))
            continue;
        const int lead = leadRepsOf(v, slot, competition);
        // The reps that follow the lead are competition reps: they have to be bearable too.
        if (lead > 0 && pain && !isBearable(*competition, *pain))
            continue;
        Advice advice{v.id, lead, 0.0, termsFor({v, lead}, now)};
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
    if (pain)
        capAt(kMostRpeInPain, painCaution(*pain));
    if (mayBeMinor(context.lifter, context.day))
        capAt(kMostRpeWithoutMaximum,
            Text::tr("Under 18: technique first. No maximal attempts; leave two reps in reserve."));
    else if (isNewToTheLog(context.sessions, context.day))
        capAt(kMostRpeWithoutMaximum,
            Text::tr("Less than half a year of training is logged. No maximal attempts until it is "
                     "plain that the lifter is ready; leave two reps in reserve."));
    if (ranking.advice.empty() && !pain)
        ranking.cautions << Text::tr("The catalogue has no variation of this lift.");
    return ranking;
}

} // namespace core
