#pragma once

#include "core/domain/card.h"
#include "core/domain/lifter.h"
#include "core/notation/set_line.h"

#include <QStringList>
#include <functional>
#include <span>
#include <variant>
#include <vector>

/// Carrying a week of cards forward by a rule, as rows to be looked at, edited and only then laid
/// out (core/plan/lay_out.h).
namespace core {

/// In what a load goes up. Percent are percent points of a share, and percent of a load.
using LoadIn = DropTarget::In;

/// More load every week. Drops follow their top set by themselves.
struct AddLoad
{
    double perWeek = 2.5; ///< in `in`; below 0 takes load off
    LoadIn in = LoadIn::kilogram;
    friend bool operator==(const AddLoad &, const AddLoad &) = default;
};

/// More reps a set every week; in lead-rep sets more of those that follow.
struct AddReps
{
    int perWeek = 1;
    int most = 12;
    friend bool operator==(const AddReps &, const AddReps &) = default;
};

/// Nearer to failure every week: RPE up or reps in reserve down.
struct RaiseRpe
{
    double perWeek = 0.5; ///< in halves
    double most = 9.5;
    friend bool operator==(const RaiseRpe &, const RaiseRpe &) = default;
};

/// Fewer sets every week.
struct DropSets
{
    int perWeek = 1;
    int fewest = 1;
    friend bool operator==(const DropSets &, const DropSets &) = default;
};

/// Steps that come again: {0, 5, 10} and a rise of 2.5 gives 0, 5, 10, 2.5, 7.5, 12.5 ... against
/// the first week, which is the first step.
struct Wave
{
    std::vector<double> steps = {0.0, 2.5, 5.0};
    double rise = 2.5; ///< from one wave to the next
    LoadIn in = LoadIn::percent;
    friend bool operator==(const Wave &, const Wave &) = default;
};

using ProgressionRule = std::variant<AddLoad, AddReps, RaiseRpe, DropSets, Wave>;

struct Progression
{
    std::vector<Card> rows; ///< of the weeks to come, by week and in the order of the first one
    QStringList remarks;    ///< where the rule could not act, a sentence each, none twice
};

/// The line `week` weeks on (1 = next week); the same line where the rule does not act on it.
/// Effort, reps and sets stop at the rule's bound and at those of the grammar; loads have at most
/// two decimals.
[[nodiscard]] SetLine progressed(const SetLine &line, const ProgressionRule &rule, int week);

/// The cards of one week carried `weeks` weeks forward, each on its weekday. A set line that cannot
/// be read is carried as it is, with a remark. Every row is reckoned from the first week, so that
/// rounding does not add up.
/// For a minor or a novice effort is raised to kMostRpeWithoutMaximal at most, and what would
/// become maximal, or is, comes down (withoutMaximal()), with a remark.
/// @param lifter  whose week it becomes
/// @param newId   gives a new id at each call
/// @throws std::invalid_argument for weeks < 0 or a wave without steps
[[nodiscard]] Progression progress(std::span<const Card> week, const ProgressionRule &rule,
    int weeks, const Lifter &lifter, const std::function<CardId()> &newId);

} // namespace core
