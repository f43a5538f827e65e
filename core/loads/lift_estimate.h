#pragma once

#include "core/domain/lifter.h"
#include "core/domain/session.h"
#include "core/domain/variation.h"
#include "core/strength/estimator.h"

#include <map>
#include <vector>

/// The bridge from the roster's values to the strength engine, which knows neither ids nor dates.
namespace core {

/// One lift of one lifter: the engine's estimate and the rows it speaks of.
struct LiftEstimate
{
    strength::LifterEstimate estimate;
    std::vector<VariationId> rows;                ///< row of the engine -> variation
    std::vector<strength::VariationPrior> priors; ///< one a row
    std::vector<LoggedSession> readings;          ///< the sessions behind it, this lift's sets only

    /// Row of a variation, -1 where it is of another lift.
    [[nodiscard]] int rowOf(VariationId variation) const;
};

/// Days since 1970-01-01, the engine's calendar.
[[nodiscard]] int engineDay(QDate day);
[[nodiscard]] QDate fromEngineDay(int day);

/// One lift of a roster in the engine's values.
struct LiftLogs
{
    std::vector<VariationId> rows;                    ///< row of the engine -> variation
    std::vector<strength::VariationPrior> priors;     ///< one a row
    std::vector<strength::LifterLog> logs;            ///< one a lifter, in order
    std::vector<std::vector<LoggedSession>> readings; ///< one a lifter, this lift's sets only
};

/// Without rows and logs where the catalogue has no competition variation of the lift.
[[nodiscard]] LiftLogs liftLogs(const std::vector<Lifter> &lifters,
    const std::vector<Variation> &variations, const std::vector<LoggedSession> &sessions,
    Lift lift);

using LiftEstimates = std::map<std::pair<LifterId, Lift>, LiftEstimate>;
/// What the lifters lend each other in each lift.
using LearntLifts = std::map<Lift, strength::RosterPriors>;

struct RosterFit
{
    LiftEstimates estimates;
    LearntLifts learnt;
};

/// Estimates for every lifter and every lift that has a competition variation in the catalogue, as
/// of `today`; see strength::estimateRoster(). A lifter without sets gets an estimate with
/// Standing::noData. Pure; may run on any thread.
/// @throws strength::Stopped once a stop is asked for
[[nodiscard]] RosterFit fitRoster(const std::vector<Lifter> &lifters,
    const std::vector<Variation> &variations, const std::vector<LoggedSession> &sessions,
    QDate today, const std::stop_token &stop = {});

/// The same of some lifters alone, by what was learnt of all; lifts that nothing was learnt of are
/// left out.
[[nodiscard]] LiftEstimates fitSome(const std::vector<Lifter> &lifters,
    const std::vector<Variation> &variations, const std::vector<LoggedSession> &sessions,
    const LearntLifts &learnt, QDate today);

/// fitRoster() without what was learnt.
[[nodiscard]] LiftEstimates estimateAll(const std::vector<Lifter> &lifters,
    const std::vector<Variation> &variations, const std::vector<LoggedSession> &sessions,
    QDate today);

} // namespace core
