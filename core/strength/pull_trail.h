#pragma once

#include "core/strength/state_belief.h"

#include <vector>

namespace strength {

/// The last updates of a filter, to tell afterwards how far each set moved the end: the gradient of
/// the last estimate runs back through the updates (the adjoint of the filter).
class PullTrail
{
public:
    struct Pull
    {
        int session = 0;
        int set = 0;
        double surprise = 0.0; ///< of the set's rating or miss, SD
        double lnPull = 0.0;   ///< move of the last ln max
    };

    void startSession(int session);
    /// Takes the updates of the session at hand back, before it is read once more.
    void dropSession();
    void addUpdate(
        int set, const Gradient &gradient, const Eigen::VectorXd &cross, const Moments &moments);
    void addStep(const ChainMatrix &transition);

    /// Sums by set, in the order done. `size` is the state's at the end.
    [[nodiscard]] std::vector<Pull> pulls(int size) const;

private:
    struct Mark
    {
        enum class Kind { session, update, step } kind = Kind::update;
        int session = 0;
        int set = 0;
        Gradient gradient;
        Moments moments;
        Eigen::VectorXd cross;
        ChainMatrix transition;
    };
    /// What lies further back than this has been outweighed long ago.
    static constexpr size_t kMost = 96;

    Mark &next();

    std::vector<Mark> m_ring; ///< grows to kMost and then turns
    size_t m_count = 0;       ///< marks ever made and not dropped
    size_t m_sessionStart = 0;
};

} // namespace strength
