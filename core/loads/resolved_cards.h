#pragma once

#include "core/domain/check_in.h"
#include "core/domain/given_day.h"
#include "core/domain/week.h"
#include "core/loads/resolve.h"
#include "core/safety/day_limits.h"

#include <functional>
#include <span>
#include <vector>

namespace core {

/// When and how a card was given, and what its loads came from.
struct GivenMark
{
    GivenBy by = GivenBy::handOut;
    QDateTime at;
    std::optional<GivenEstimate> from;

    friend bool operator==(const GivenMark &, const GivenMark &) = default;
};

/// A card with its loads, ready to be shown or printed.
struct ResolvedCard
{
    Card card;
    ParsedSetLines parsed;           ///< with the error where the set line cannot be read
    std::vector<ResolvedLine> lines; ///< one a parsed line; empty on an error
    /// Where the card was given as it stands: then so are its lines. Else they follow the estimate.
    std::optional<GivenMark> given = {};
    bool changedSinceGiven = false; ///< it was given, as another variation or with other sets
};

/// Estimate of a lift of one lifter; null where there is none yet.
using EstimateOf = std::function<const LiftEstimate *(Lift)>;

/// What the loads of one lifter's cards depend on.
struct PlanSources
{
    const Lifter &lifter;
    std::span<const Variation> variations;
    EstimateOf estimateOf;
    /// Of the lifter, up to the last day that is resolved: pain stands until it is answered, so
    /// that an old one counts. A reference, so that nobody forgets them; others' do no harm.
    const std::vector<CheckIn> &checkIns;
    std::span<const GivenDay> given; ///< of the lifter; of others, too, does no harm
    QDate today;                     ///< what was given for earlier days is not compared any more
};

/// Where it is certain that nothing was ever said, as in a roster of a log alone.
[[nodiscard]] const std::vector<CheckIn> &noCheckIns();

/// Cards of one lifter, on any days, by day and position, each with its loads. The sets of a lift
/// that stand above a card on its day count as its fatigue. A card that was given as it stands has
/// the loads that were given. Lines that the lifter is not to be given on their day are marked
/// (core/loads/limited_lines.h).
[[nodiscard]] std::vector<ResolvedCard> resolveCards(
    std::vector<Card> cards, const PlanSources &sources);

/// The plates of the lifter; the usual ones of the lifter's unit where the gear is not sound.
[[nodiscard]] PlateTable platesOf(const Lifter &lifter);

/// How far back a suggested set line is looked for.
inline constexpr int kSuggestionDays = 12 * kWeekDays;

/// A set line to begin with: what the lifter last had for this variation among `earlier` cards in
/// the kSuggestionDays up to `day`, that day included; else three sets at RPE 8 of the reps that
/// the variation is usually done for, or, where speed is its aim, six at its usual share of the
/// max. Who gets no maximal work, or may not before the age is known, is not suggested any: of what
/// they last had, maximal lines come down as withoutMaximal() says.
[[nodiscard]] QString suggestedSetLine(const Variation &variation, const std::vector<Card> &earlier,
    QDate day, const DayLimits &limits);

} // namespace core
