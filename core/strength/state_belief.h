#pragma once

#include "core/strength/moments.h"
#include "core/strength/roster_priors.h"

#include <Eigen/Core>
#include <algorithm>
#include <array>
#include <cstdint>

namespace strength {

/// What the filter believes of one lifter: a chain that moves from week to week, the form of the
/// day, and a border of the lifter's own constants. Jointly normal.
enum Slot : int {
    level,      ///< ln kg; the competition max is exp(level + layoff)
    slope,      ///< ln units a week
    layoff,     ///< ln units lost to a layoff and not yet regained, <= 0 in the mean
    ratingBias, ///< reps said in reserve beyond the truth
    chainSlots,
    dayForm = chainSlots, ///< ln units, of the session at hand
    lnKappa,
    power,
    compression,
    fatigue,
    unratedReserve,
    firstOwnSlot ///< ratios, rep costs and bar speed follow as the log brings them up
};

using ChainVector = Eigen::Matrix<double, chainSlots, 1>;
using ChainMatrix = Eigen::Matrix<double, chainSlots, chainSlots>;

/// A move of the chain: z' = transition z + drift + w, Var w = noise.
struct ChainStep
{
    ChainMatrix transition = ChainMatrix::Identity();
    ChainVector drift = ChainVector::Zero();
    ChainMatrix noise = ChainMatrix::Zero();
};

/// A sparse gradient by the slots.
struct Gradient
{
    static constexpr int kMost = 12; ///< a lead-rep set's rating feels that many
    int size = 0;
    std::array<std::int16_t, kMost> slot{}; ///< no slot twice
    std::array<double, kMost> value{};

    /// @param atSlot  one that the gradient does not hold yet
    void add(int atSlot, double amount)
    {
        slot[size_t(size)] = std::int16_t(atSlot);
        value[size_t(size++)] = amount;
    }
    void scale(double factor)
    {
        for (int i = 0; i < size; ++i)
            value[size_t(i)] *= factor;
    }
    /// Adds `factor` times another gradient.
    void addScaled(const Gradient &other, double factor)
    {
        for (int i = 0; i < other.size; ++i) {
            const size_t at = size_t(i);
            const auto end = slot.begin() + size;
            const auto held = std::find(slot.begin(), end, other.slot[at]);
            if (held == end)
                add(other.slot[at], factor * other.value[at]);
            else
                value[size_t(held - slot.begin())] += factor * other.value[at];
        }
    }
};

class StateBelief
{
public:
    explicit StateBelief(
        const ChainVector &mean, const ChainVector &sd, const RosterPriors &priors);

    [[nodiscard]] const Eigen::VectorXd &mean() const { return m_mean; }
    [[nodiscard]] const Eigen::MatrixXd &covariance() const { return m_covariance; }
    [[nodiscard]] int size() const { return int(m_mean.size()); }

    /// Adds a constant of the lifter's own and returns its slot.
    int append(const Prior &prior);

    /// Covariance of all slots with the scalar gradient' x.
    void covarianceWith(const Gradient &gradient, Eigen::VectorXd &out) const;
    [[nodiscard]] double varianceOf(const Gradient &gradient) const;
    /// Takes in a reading of a scalar whose covariance with all slots is `cross`.
    void update(const Eigen::VectorXd &cross, const Moments &moments);

    /// Forgets the form of the last session and starts that of the next.
    void startSession(double formVariance);
    void advance(const ChainStep &step);
    /// Forgets the level and starts it anew, where the log has shown the belief to be wrong.
    void restartLevel(double mean, double sd);

private:
    Eigen::VectorXd m_mean;
    Eigen::MatrixXd m_covariance; ///< both triangles
};

/// ln of the competition max, and its variance.
[[nodiscard]] double lnMax(const Eigen::VectorXd &mean);
[[nodiscard]] double lnMaxVariance(const Eigen::MatrixXd &covariance);

} // namespace strength
