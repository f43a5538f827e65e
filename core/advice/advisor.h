#pragma once

#include "core/domain/card.h"
#include "core/domain/check_in.h"
#include "core/domain/lifter.h"
#include "core/domain/session.h"
#include "core/domain/variation.h"
#include "core/loads/lift_estimate.h"
#include "core/safety/day_limits.h"

#include <QStringList>
#include <optional>
#include <vector>

/// Which variation a coach might put where there is still room, and why.
///
/// The score is a plain sum of named terms, each with the sentence a coach would say for it, so
/// that whoever disagrees sees with what. The points order the list and mean nothing else. The
/// rules are common practice without a published source; advisor_terms.cpp holds them one by one.
///
/// The advisor gives arithmetic, not medical advice: a pain that stands takes every variation that
/// works the painful area off the list, never yields anything heavier, and asks to stop and refer.
/// Soreness never speaks for a variation that is loaded heavier than the competition lift.
namespace core {

/// What the coach is about to fill.
struct Slot
{
    Lift lift = Lift::bench;
    int reps = 3; ///< a set, >= 1
    std::optional<double> rpe;
};

/// All that the advice depends on, of one lifter. More days than needed do no harm.
struct AdviceContext
{
    const Lifter &lifter;
    const std::vector<Variation> &catalogue;
    QDate day;
    const std::vector<Card> &cards;             ///< planned, from a week before to the week's end
    const std::vector<LoggedSession> &sessions; ///< done, from half a year before
    const std::vector<CheckIn> &checkIns;       ///< of the lifter, see PlanSources::checkIns
    const LiftEstimate *estimate = nullptr;     ///< of the slot's lift; null = none yet
};

struct AdviceTerm
{
    enum class About { touch, reps, freshness, fatigue, meet, lately, ownRatio };

    About about = About::touch;
    double points = 0.0; ///< above 0 speaks for it
    QString words;       ///< one sentence

    friend bool operator==(const AdviceTerm &, const AdviceTerm &) = default;
};

struct Advice
{
    VariationId variation;
    /// Of its max, where speed is the aim: the load goes by it and not by effort.
    std::optional<double> usualPercent;
    int leadReps = 0; ///< > 0: so many reps of each set in it, the rest in the competition lift
    double score = 0.0;
    std::vector<AdviceTerm> terms; ///< strongest first

    friend bool operator==(const Advice &, const Advice &) = default;
};

struct Ranking
{
    std::vector<Advice> advice; ///< best first; one a variation that may be used at all
    int reps = 3;               ///< a set: those asked for, or the fewest for those who get no max
    std::optional<double> mostRpe; ///< no set harder than this
    DayLimits limits;              ///< of the lifter on the day
    QStringList cautions;          ///< to be read before the list
};

/// @throws std::invalid_argument for reps < 1
[[nodiscard]] Ranking rankVariations(const Slot &slot, const AdviceContext &context);

/// Three sets of it as the slot asks, within the bounds of the ranking: "3x3 @8", with lead reps
/// "3x1+2 @8".
[[nodiscard]] QString adviceSetLine(const Advice &advice, const Slot &slot, const Ranking &ranking);

} // namespace core
