#pragma once

#include "core/strength/interval.h"
#include "core/strength/rep_curve.h"
#include "core/strength/roster_priors.h"
#include "core/strength/training_log.h"

#include <optional>
#include <span>
#include <stop_token>
#include <vector>

/// From training logs to estimated maxima with their intervals. The model is described in
/// core/strength/model.h.
namespace strength {

/// Estimated competition max at the end of one week.
struct WeekEstimate
{
    int sunday = 0; ///< the day that ends the week
    Band filtered;  ///< what was known then; prescriptions use this
    Band smoothed;  ///< what is known now; reviews draw this
    int sets = 0;   ///< sets of the week that told something
};

/// How far an estimate can be trusted. Words for the screen: core/loads/estimate_words.h.
enum class Standing {
    noData,      ///< no set of this lift: there is no estimate
    priorOnly,   ///< a guess from people like this one
    thin,        ///< a wide interval: a load from it is a first guess
    stale,       ///< the last set is longer ago than a pause in this lifter's rhythm
    conflicting, ///< the sets contradict each other more than noise explains
    enough
};

struct VariationEstimate
{
    Interval ratio;       ///< to the competition max
    Band max;             ///< at the end of the last week, or of `idle`
    int sets = 0;         ///< sets behind it; 0 = the prior alone
    double repCost = 1.0; ///< what a rep costs this lifter against a competition rep
    double withMax = 0.0; ///< covariance of ln ratio with ln competition max: where sets tell only
                          ///< their product, the one is high where the other is low
};

/// A session against the trend, as a factor: 1.02 = 2 % above.
struct DayForm
{
    int day = 0;
    Interval factor;
};

/// A lifter's way of rating.
struct RatingHabit
{
    Interval bias;      ///< reps; above 0 = says more in reserve than there was (rates too easy)
    double noise = 1.0; ///< one SD of a rating near failure, reps
    int ratings = 0;    ///< rated sets behind it
};

/// One set and how it moved the last filtered estimate.
struct SetPull
{
    int session = 0;       ///< index into the log's sessions
    int set = 0;           ///< index into the session's sets
    double surprise = 0.0; ///< reps above (+) or below (-) what was expected, in SD
    double pullKg = 0.0;   ///< change of the last estimate were the set left out, sign turned
};

/// Whole weeks without a set between a lifter's last one and today: what a layoff has left.
struct Idle
{
    int until = 0; ///< the last Sunday up to today
    Band max;      ///< competition max by then
};

struct LifterEstimate
{
    Standing standing = Standing::noData;
    int asOf = 0; ///< the day it is of: today, or the day of the last set where that is dated later
    std::optional<int> lastSet;      ///< its day; empty without data
    std::vector<WeekEstimate> weeks; ///< without gaps from the first to the last trained week
    std::optional<Idle> idle;
    std::vector<VariationEstimate> variations; ///< one a row of the variation table
    std::vector<DayForm> form;                 ///< one a session, by day
    RepCurve curve;
    RatingHabit rating;
    double setFatigue = 0.0;    ///< ln units of the max lost per hard set before
    double formSd = 0.0;        ///< SD of the day form, ln units
    double driftPerWeek = 0.0;  ///< SD of the level's step in a week, ln units
    std::vector<SetPull> pulls; ///< the strongest first, at most 5

    /// The competition max expected on `day`, carried forward from the last trained week, or from
    /// the end of `idle`, as if training went on; for a day gone by, what was known on the Sunday
    /// before. Empty without data. The interval widens with the distance.
    [[nodiscard]] std::optional<Band> maxOn(int day) const;
};

/// The day of the newest set of all; the lowest int without any. What a log on paper, which nobody
/// carries on, may be estimated as of.
[[nodiscard]] int lastDayOf(std::span<const LifterLog> logs);

/// What the lifters of a roster lend each other. One lifter's new sets hardly change it, so that
/// the lifter alone can be estimated anew from it.
/// @param variations  row 0 is the competition lift
/// @throws std::invalid_argument for input that core/strength/validation.h rejects; it names log,
///         session and set; here and below
/// @throws Stopped, see core/strength/pooling.h, once a stop is asked for; below too
[[nodiscard]] RosterPriors learnRoster(std::span<const LifterLog> logs,
    std::span<const VariationPrior> variations, const std::stop_token &stop = {});

/// Estimates of a whole roster, one a log, in order. Lifters lend each other strength where the
/// model pools; a lone lifter leans on the published values.
/// @param today  a day since 1970-01-01. A lifter without a set of late has been idle until then,
///               whatever the others did. A set that is dated later counts all the same, and its
///               lifter's estimate is of the day of the last one; here and below
[[nodiscard]] std::vector<LifterEstimate> estimateRoster(
    std::span<const LifterLog> logs, std::span<const VariationPrior> variations, int today);
/// @param learnt  from these logs
[[nodiscard]] std::vector<LifterEstimate> estimateRoster(std::span<const LifterLog> logs,
    std::span<const VariationPrior> variations, const RosterPriors &learnt, int today,
    const std::stop_token &stop = {});

/// One lifter of the roster, or of none: what was learnt then is from the literature alone.
[[nodiscard]] LifterEstimate estimateLifter(const LifterLog &log,
    std::span<const VariationPrior> variations, const RosterPriors &learnt, int today);
[[nodiscard]] LifterEstimate estimateLifter(
    const LifterLog &log, std::span<const VariationPrior> variations, int today);

} // namespace strength
