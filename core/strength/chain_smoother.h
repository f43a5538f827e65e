#pragma once

#include "core/strength/state_belief.h"

#include <vector>

/// Looks back over the weeks. Given the lifter's constants (the border), the chain is an ordinary
/// linear one, so that each week's belief is kept as a chain conditional on the border; a backward
/// pass costs four numbers a week and a border's worth of each, not a cube of the whole state.
/// Source of the smoother that runs inside: Rauch, Tung & Striebel (1965); Durbin & Koopman (2012),
/// Time Series Analysis by State Space Methods, 2nd ed., sec. 4.4.
namespace strength {

/// The filter's belief at the end of one week.
struct WeekNode
{
    ChainStep into;         ///< the step that led into this week; not looked at in the first one
    ChainVector chain;      ///< mean
    Eigen::VectorXd border; ///< mean; grows from week to week as new constants come up
    Eigen::Matrix<double, chainSlots, Eigen::Dynamic> onBorder; ///< regression of chain on border
    ChainMatrix conditional; ///< covariance of the chain given the border
};

[[nodiscard]] WeekNode weekNode(const StateBelief &belief, const ChainStep &into);

struct SmoothedWeek
{
    ChainVector chain; ///< mean
    ChainMatrix covariance;
    double levelStepSquare = 0.0; ///< expected square of the level's own move into this week
};

/// @param last  the filter's belief at the end of the last week
[[nodiscard]] std::vector<SmoothedWeek> smoothWeeks(
    const std::vector<WeekNode> &nodes, const StateBelief &last);

} // namespace strength
