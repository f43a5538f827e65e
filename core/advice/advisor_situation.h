#pragma once

#include "core/advice/advisor.h"

/// What the context of a piece of advice comes down to, before any variation is looked at.
namespace core {

/// Up to this many reps a set is heavy, whatever the effort (common practice, no source).
inline constexpr int kMostHeavyReps = 3;
/// A variation that was not trained for so long counts as not trained.
inline constexpr int kLatelyDays = 28;

/// An area that is not fresh.
struct Tiredness
{
    BodyArea area = BodyArea::back;
    double weight = 1.0; ///< 1 = the lifter says so, less = guessed from yesterday's work
    QString words;       ///< where it is known from, a sentence
};

struct Situation
{
    Slot slot;
    bool heavy = false;
    std::vector<Tiredness> tired;
    std::optional<double> readiness; ///< 1..5
    std::optional<int> daysToMeet;   ///< >= 0
    /// Sets of the lift in this week, done and planned, as a share of the most in the last six
    /// weeks; empty where too little is logged.
    std::optional<double> weekShare;
    std::vector<Variation> catalogue;
    TouchStyle style = TouchStyle::undecided;
    const LiftEstimate *estimate = nullptr;

    /// Days since the variation was last done or planned before the day; empty = not lately.
    [[nodiscard]] std::optional<int> daysSince(VariationId variation) const;
    /// Days of the last six on which it was done or planned.
    [[nodiscard]] int usesInSixDays(VariationId variation) const;
    /// Whether anything at all is logged lately: without a log nothing can be said about habits.
    [[nodiscard]] bool hasLog() const { return m_hasLog; }

private:
    friend Situation situationOf(const Slot &slot, const AdviceContext &context);

    std::map<VariationId, std::vector<int>> m_daysAgo; ///< ascending, without duplicates
    bool m_hasLog = false;
};

[[nodiscard]] Situation situationOf(const Slot &slot, const AdviceContext &context);

/// Whether the bar is heavier in the variation than in the competition lift, by the usual ratio or
/// by the lifter's own.
[[nodiscard]] bool isHeavier(const Variation &variation, const LiftEstimate *estimate);

} // namespace core
