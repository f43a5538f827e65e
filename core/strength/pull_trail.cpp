#include "core/strength/pull_trail.h"

#include <algorithm>
#include <cmath>

namespace strength {

PullTrail::Mark &PullTrail::next()
{
    m_ring.reserve(kMost);
    const size_t place = m_count++ % kMost;
    if (place >= m_ring.size())
        m_ring.emplace_back();
    return m_ring[place];
}

void PullTrail::startSession(int session)
{
    Mark &mark = next();
    mark.kind = Mark::Kind::session;
    mark.session = session;
    m_sessionStart = m_count;
}

void PullTrail::dropSession()
{
    m_count = m_sessionStart;
}

void PullTrail::addUpdate(
    int set, const Gradient &gradient, const Eigen::VectorXd &cross, const Moments &moments)
{
    Mark &mark = next();
    mark.kind = Mark::Kind::update;
    mark.set = set;
    mark.gradient = gradient;
    mark.cross = cross;
    mark.moments = moments;
}

void PullTrail::addStep(const ChainMatrix &transition)
{
    Mark &mark = next();
    mark.kind = Mark::Kind::step;
    mark.transition = transition;
}

std::vector<PullTrail::Pull> PullTrail::pulls(int size) const
{
    Eigen::VectorXd adjoint = Eigen::VectorXd::Zero(size);
    adjoint[level] = adjoint[layoff] = 1.0;
    std::vector<Pull> pulls;
    size_t open = 0; // sets of the session that is not begun yet, running back
    const size_t oldest = m_count > m_ring.size() ? m_count - m_ring.size() : 0;
    for (size_t i = m_count; i-- > oldest;) {
        const Mark &mark = m_ring[i % kMost];
        switch (mark.kind) {
        case Mark::Kind::session:
            for (size_t back = pulls.size() - open; back < pulls.size(); ++back)
                pulls[back].session = mark.session;
            open = 0;
            adjoint[dayForm] = 0.0;
            break;
        case Mark::Kind::step: {
            const ChainVector before = mark.transition.transpose() * adjoint.head<chainSlots>();
            adjoint.head<chainSlots>() = before;
            break;
        }
        case Mark::Kind::update: {
            const double gain = adjoint.head(mark.cross.size()).dot(mark.cross);
            if (open == 0 || pulls.back().set != mark.set) {
                pulls.push_back({0, mark.set, 0.0, 0.0});
                ++open;
            }
            Pull &pull = pulls.back();
            pull.lnPull += gain * mark.moments.shift;
            if (std::abs(mark.moments.surprise) > std::abs(pull.surprise))
                pull.surprise = mark.moments.surprise;
            for (int k = 0; k < mark.gradient.size; ++k)
                adjoint[mark.gradient.slot[size_t(k)]] -=
                    mark.moments.shrink * gain * mark.gradient.value[size_t(k)];
            break;
        }
        }
    }
    // The session that the ring has cut in two has lost its name.
    pulls.resize(pulls.size() - open);
    std::reverse(pulls.begin(), pulls.end());
    return pulls;
}

} // namespace strength
