#pragma once

#include "core/domain/check_in.h"
#include "core/domain/lifter.h"
#include "core/domain/variation.h"

#include <QDate>
#include <QString>
#include <optional>
#include <span>
#include <vector>

/// What may be suggested to a lifter on a day. The one rule, asked by everything that suggests or
/// shows a load: nothing for an area that hurts, and no maximal work for those who get none.
///
/// The rule withholds suggestions; it gives no medical advice, and does not forbid a coach
/// anything. The bounds are common practice without a published source; that young lifters learn
/// technique first and try no maximal singles without qualified supervision is general published
/// guidance for resistance training (from memory).
namespace core {

/// Why a lifter gets no maximal work.
enum class NoMaximal {
    pain,         ///< some pain was not answered with "no" since
    lowReadiness, ///< the check-in of the day, below kLowReadiness
    minor,        ///< see mayBeMinor()
    novice        ///< see isNovice()
};

/// A pain that stands.
struct StandingPain
{
    PainFlag flag;
    QDate said;

    friend bool operator==(const StandingPain &, const StandingPain &) = default;
};

struct DayLimits
{
    std::vector<StandingPain> pains;  ///< the latest first, one a place
    std::vector<NoMaximal> noMaximal; ///< most urgent first; empty = maximal work may be suggested
    bool isAgeUnknown = false;        ///< see isAgeUnknown(const Lifter &)

    [[nodiscard]] bool mayGoMaximal() const { return noMaximal.empty(); }
    /// Whether the program may write maximal work by itself: not before the age is known. What the
    /// coach writes is shown as for an adult.
    [[nodiscard]] bool mayWriteMaximal() const { return mayGoMaximal() && !isAgeUnknown; }
    /// A minor or a novice: no maximal work on whatever day.
    [[nodiscard]] bool isBeginner() const;

    friend bool operator==(const DayLimits &, const DayLimits &) = default;
};

/// @param checkIns  of the lifter, in any order; later ones and those of others do no harm
[[nodiscard]] DayLimits limitsOn(
    const Lifter &lifter, QDate day, std::span<const CheckIn> checkIns);

/// An effort above this RPE is maximal.
inline constexpr double kMaximalRpe = 9.0;
/// A load from this share of today's max of the variation on is maximal.
inline constexpr double kMaximalShare = 0.95;
/// Up to so many reps a set of which nothing is known how hard it is may be an attempt at a max.
inline constexpr int kMostRepsOfAnAttempt = 2;

/// What is suggested in place of maximal work: two reps in reserve, three reps and more.
inline constexpr double kMostRpeWithoutMaximal = 8.0;
inline constexpr int kFewestRepsWithoutMaximal = 3;

/// One set as the rule sees it.
struct SetEffort
{
    const Variation *variation = nullptr; ///< null = unknown, and it may work any area
    const Variation *lead = nullptr;      ///< of the first reps; null where the set has no lead
    int reps = 1;
    bool isOpenEnded = false;         ///< as many as possible without a cap
    std::optional<double> rpe;        ///< the highest that is asked for or expected
    std::optional<double> shareOfMax; ///< load / today's max of the variation; the larger of two
};

[[nodiscard]] bool isMaximal(const SetEffort &set);

/// Whether the set works the area, in its lead or in the reps after it.
[[nodiscard]] bool works(const SetEffort &set, BodyArea area);

/// Why nothing is suggested for the set, in a sentence or two; empty when something may be.
[[nodiscard]] QString whyWithheld(const DayLimits &limits, const SetEffort &set);

/// Why no maximal work is suggested, in a sentence; empty when it may be.
[[nodiscard]] QString whyNoMaximal(const DayLimits &limits);

} // namespace core
