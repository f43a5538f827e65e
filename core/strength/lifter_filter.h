#pragma once

#include "core/strength/pull_trail.h"
#include "core/strength/set_readings.h"

#include <span>

namespace strength {

/// Reads one lifter's sessions in order and keeps what is believed by now; knows nothing of later
/// ones. See model.h. Copies are independent.
class LifterFilter
{
public:
    /// @param before  belief in ln of the competition max before any set
    LifterFilter(const RosterPriors &priors, const Prior &before);

    [[nodiscard]] bool hasStarted() const { return m_started; }
    /// Sunday that ends the week at hand; only after the start.
    [[nodiscard]] int sunday() const { return m_sunday; }

    /// Begins the next week, or the first one, and returns how the chain moved.
    /// @param day  of the week's first session; its Sunday where it has none
    ChainStep startWeek(int day);
    /// Begins weeks until `day` lies in the one at hand.
    void startWeeksUpTo(int day);
    /// Believes of the next session what is expected before any of its sets: a usual day form, and
    /// the priors of what its sets bring up for the first time. Only after the start.
    void expectSession(std::span<const TrainingSet> sets);
    /// Reads a session of the week at hand, not before the last one.
    /// @param trail  gets the updates, where they are to be told apart later; startSession() is
    /// done
    void addSession(int day, std::span<const TrainingSet> sets, PullTrail *trail = nullptr);

    [[nodiscard]] const StateBelief &belief() const { return m_belief; }
    [[nodiscard]] const OwnSlots &slots() const { return m_slots; }
    [[nodiscard]] const RosterPriors &priors() const { return m_priors; }
    [[nodiscard]] RatingWays ratingWays() const;
    /// Variance of the day form by what this lifter has shown.
    [[nodiscard]] double formVariance() const;
    /// Share of the sets of late that the model takes for gross, 0..1.
    [[nodiscard]] double conflict() const { return m_conflict; }

    /// What the estimate stands on.
    struct Footing
    {
        /// Reps that could be done in the rated and missed sets of late, on average: how far the
        /// curve has to reach from them to the max.
        double reach = 6.0;
        double toldOfLate = 0.0; ///< rated and missed sets, fading over eight weeks
    };
    [[nodiscard]] const Footing &footing() const { return m_footing; }

    /// Sum of the squared standardised surprises of the ratings, taken up by what they share, and
    /// how many.
    struct Surprises
    {
        double sum = 0.0;
        double count = 0.0;
    };
    [[nodiscard]] const Surprises &ratingSurprises() const { return m_ratings; }

private:
    struct Tally;

    /// Median over the sets of what each speaks for by the priors alone, ln kg.
    [[nodiscard]] double crudeMax(std::span<const TrainingSet> sets) const;
    void start(std::span<const TrainingSet> sets);
    /// A slot in the state for what the sets are the first to tell of.
    void makeRoomFor(int variation);
    void makeRoomFor(std::span<const TrainingSet> sets);
    Tally readSets(std::span<const TrainingSet> sets, PullTrail *trail);
    double readSet(
        const TrainingSet &set, int index, double hardBefore, Tally &tally, PullTrail *trail);

    RosterPriors m_priors;
    Prior m_before;
    StateBelief m_belief;
    OwnSlots m_slots;
    Eigen::VectorXd m_cross; ///< scratch
    Surprises m_ratings;
    Surprises m_forms;
    RatingWays m_ways;      ///< but for the scale
    int m_wholeRatings = 0; ///< in a row, without a half
    double m_conflict = 0.0;
    Footing m_footing;
    int m_sunday = 0;
    int m_lastDay = 0;
    bool m_started = false;
};

} // namespace strength
