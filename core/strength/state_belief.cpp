#include "core/strength/state_belief.h"

namespace strength {

StateBelief::StateBelief(const ChainVector &mean, const ChainVector &sd, const RosterPriors &priors)
    : m_mean(Eigen::VectorXd::Zero(firstOwnSlot))
    , m_covariance(Eigen::MatrixXd::Zero(firstOwnSlot, firstOwnSlot))
{
    m_mean.head<chainSlots>() = mean;
    m_covariance.diagonal().head<chainSlots>() = sd.cwiseAbs2();
    const auto set = [&](int slot, const Prior &prior) {
        m_mean[slot] = prior.mean;
        m_covariance(slot, slot) = prior.sd * prior.sd;
    };
    set(lnKappa, priors.lnKappa);
    set(power, priors.power);
    set(compression, priors.compression);
    set(fatigue, priors.fatigue);
    set(unratedReserve, priors.unratedReserve);
}

int StateBelief::append(const Prior &prior)
{
    const int slot = size();
    m_mean.conservativeResize(slot + 1);
    m_covariance.conservativeResize(slot + 1, slot + 1);
    m_mean[slot] = prior.mean;
    m_covariance.row(slot).setZero();
    m_covariance.col(slot).setZero();
    m_covariance(slot, slot) = prior.sd * prior.sd;
    return slot;
}

void StateBelief::covarianceWith(const Gradient &gradient, Eigen::VectorXd &out) const
{
    out.setZero(size());
    for (int i = 0; i < gradient.size; ++i)
        out += gradient.value[size_t(i)] * m_covariance.col(gradient.slot[size_t(i)]);
}

double StateBelief::varianceOf(const Gradient &gradient) const
{
    double variance = 0.0;
    for (int i = 0; i < gradient.size; ++i)
        for (int j = 0; j < gradient.size; ++j)
            variance += gradient.value[size_t(i)] * gradient.value[size_t(j)]
                * m_covariance(gradient.slot[size_t(i)], gradient.slot[size_t(j)]);
    return variance;
}

void StateBelief::update(const Eigen::VectorXd &cross, const Moments &moments)
{
    m_mean += moments.shift * cross;
    for (int column = 0; column < size(); ++column)
        m_covariance.col(column) -= (moments.shrink * cross[column]) * cross;
}

void StateBelief::startSession(double formVariance)
{
    m_mean[dayForm] = 0.0;
    m_covariance.row(dayForm).setZero();
    m_covariance.col(dayForm).setZero();
    m_covariance(dayForm, dayForm) = formVariance;
}

void StateBelief::restartLevel(double mean, double sd)
{
    for (const int slot : {level, slope}) {
        const double variance = slot == level ? sd * sd : m_covariance(slope, slope);
        m_covariance.row(slot).setZero();
        m_covariance.col(slot).setZero();
        m_covariance(slot, slot) = variance;
    }
    m_mean[level] = mean - m_mean[layoff];
    m_mean[slope] = 0.0;
}

void StateBelief::advance(const ChainStep &step)
{
    startSession(0.0);
    const int rest = size() - chainSlots;
    m_mean.head<chainSlots>() = step.transition * m_mean.head<chainSlots>() + step.drift;
    const ChainMatrix chain = step.transition * m_covariance.topLeftCorner<chainSlots, chainSlots>()
            * step.transition.transpose()
        + step.noise;
    m_covariance.topLeftCorner<chainSlots, chainSlots>() = chain;
    for (int column = chainSlots; column < size(); ++column) {
        const ChainVector moved = step.transition * m_covariance.col(column).head<chainSlots>();
        m_covariance.col(column).head<chainSlots>() = moved;
    }
    m_covariance.bottomLeftCorner(rest, int(chainSlots)) =
        m_covariance.topRightCorner(int(chainSlots), rest).transpose();
}

double lnMax(const Eigen::VectorXd &mean)
{
    return mean[level] + mean[layoff];
}

double lnMaxVariance(const Eigen::MatrixXd &covariance)
{
    return covariance(level, level) + 2.0 * covariance(level, layoff) + covariance(layoff, layoff);
}

} // namespace strength
