#include "core/strength/chain_smoother.h"

#include <Eigen/Cholesky>

namespace strength {

namespace {

using OnBorder = Eigen::Matrix<double, chainSlots, Eigen::Dynamic>;

constexpr int kBorder = dayForm + 1; ///< the form is over by the end of a week

} // namespace

WeekNode weekNode(const StateBelief &belief, const ChainStep &into)
{
    const int border = belief.size() - kBorder;
    const Eigen::MatrixXd &covariance = belief.covariance();
    WeekNode node;
    node.into = into;
    node.chain = belief.mean().head<chainSlots>();
    node.border = belief.mean().tail(border);
    const auto cross = covariance.bottomLeftCorner(border, int(chainSlots));
    const Eigen::LLT<Eigen::MatrixXd> factor(covariance.bottomRightCorner(border, border));
    node.onBorder = factor.solve(Eigen::MatrixXd(cross)).transpose();
    node.conditional = covariance.topLeftCorner<chainSlots, chainSlots>() - node.onBorder * cross;
    return node;
}

std::vector<SmoothedWeek> smoothWeeks(const std::vector<WeekNode> &nodes, const StateBelief &last)
{
    std::vector<SmoothedWeek> weeks(nodes.size());
    if (nodes.empty())
        return weeks;
    const int border = last.size() - kBorder;
    const Eigen::VectorXd constants = last.mean().tail(border);
    const Eigen::MatrixXd spread = last.covariance().bottomRightCorner(border, border);

    ChainVector mean = nodes.back().chain;
    ChainMatrix conditional = nodes.back().conditional;
    OnBorder onBorder = nodes.back().onBorder;
    weeks.back().chain = mean;
    weeks.back().covariance = conditional + onBorder * spread * onBorder.transpose();

    for (size_t t = nodes.size() - 1; t-- > 0;) {
        const WeekNode &now = nodes[t];
        const ChainStep &step = nodes[t + 1].into;
        const int known = int(now.border.size());
        OnBorder own = OnBorder::Zero(int(chainSlots), border);
        own.leftCols(known) = now.onBorder;
        const ChainVector told = now.chain + now.onBorder * (constants.head(known) - now.border);

        const ChainMatrix ahead =
            step.transition * now.conditional * step.transition.transpose() + step.noise;
        const ChainMatrix gain = ahead.ldlt().solve(step.transition * now.conditional).transpose();

        const ChainMatrix nextConditional = conditional;
        const OnBorder nextOnBorder = onBorder;
        const ChainVector next = mean;
        mean = told + gain * (next - step.transition * told - step.drift);
        onBorder = own + gain * (nextOnBorder - step.transition * own);
        conditional = now.conditional + gain * (nextConditional - ahead) * gain.transpose();
        weeks[t].chain = mean;
        weeks[t].covariance = conditional + onBorder * spread * onBorder.transpose();

        // The move w = z' - transition z - drift, looking at its level alone.
        const auto row = step.transition.row(level);
        const ChainMatrix together = nextConditional * gain.transpose(); // Cov(z', z | border)
        const double moveGivenBorder = nextConditional(level, level)
            + row * conditional * row.transpose() - 2.0 * row.dot(together.row(level));
        const Eigen::RowVectorXd moveOnBorder = nextOnBorder.row(level) - row * onBorder;
        const double move = next[level] - row.dot(mean) - step.drift[level];
        weeks[t + 1].levelStepSquare = move * move + moveGivenBorder
            + (moveOnBorder * spread * moveOnBorder.transpose()).value();
    }
    return weeks;
}

} // namespace strength
