#include "core/strength/pull_trail.h"

#include "core/strength/lifter_fit.h"
#include "tests/core/strength/training_samples.h"

#include <functional>
#include <gtest/gtest.h>

// How far each set moved the last ln max, against running the updates anew without it.

using namespace samples;
using namespace strength;

namespace {

struct TrailStep
{
    int session, set;
    double atSlot; ///< the gradient by the level; 0.5 by the day form besides
    double shift, shrink, surprise;
};

const std::vector<TrailStep> kTrail{{0, 0, 1.0, 0.8, 30.0, 0.4}, {0, 1, 0.9, -0.5, 40.0, -0.2},
    {0, 1, 1.1, 0.3, 35.0, -0.9}, {1, 1, 1.0, 1.2, 25.0, 1.5}, {1, 2, 0.7, -0.4, 45.0, -0.3}};

/// The last ln max where only the updates of `kept` move the mean; fills the trail by all.
double lastLnMax(const std::function<bool(const TrailStep &)> &kept, PullTrail *trail = nullptr)
{
    StateBelief belief(ChainVector(4.6, 0.0, 0.0, 0.0), ChainVector(0.05, 0.01, 0.02, 0.3),
        publishedPriors(kVariations));
    ChainStep move;
    move.transition(level, slope) = 1.0;
    move.transition(layoff, layoff) = 0.7;
    Eigen::VectorXd mean = belief.mean();
    int session = -1;
    for (const TrailStep &step : kTrail) {
        if (step.session != session) {
            if (session >= 0) {
                belief.advance(move);
                mean.head<chainSlots>() = (move.transition * mean.head<chainSlots>()).eval();
                if (trail)
                    trail->addStep(move.transition);
            }
            session = step.session;
            belief.startSession(0.0004);
            mean[dayForm] = 0.0;
            if (trail)
                trail->startSession(10 + session);
        }
        Gradient gradient;
        gradient.add(level, step.atSlot);
        gradient.add(dayForm, 0.5);
        Eigen::VectorXd cross;
        belief.covarianceWith(gradient, cross);
        const Moments moments{step.shift, step.shrink, 1.0, step.surprise, 0.0};
        // A reading is a line in the mean: what was expected of it falls with its shrink.
        const double off = step.atSlot * (mean[level] - belief.mean()[level])
            + 0.5 * (mean[dayForm] - belief.mean()[dayForm]);
        if (trail)
            trail->addUpdate(step.set, gradient, cross, moments);
        mean += ((kept(step) ? step.shift : 0.0) - step.shrink * off) * cross;
        belief.update(cross, moments);
    }
    return lnMax(mean);
}

} // namespace

TEST(PullTrail, IsWhatTheLastMaxWouldLackWithoutTheSet)
{
    PullTrail trail;
    const double all = lastLnMax([](const TrailStep &) { return true; }, &trail);
    const auto pulls = trail.pulls(firstOwnSlot);
    ASSERT_EQ(pulls.size(), 4u);
    const std::pair<int, int> order[] = {{0, 0}, {0, 1}, {1, 1}, {1, 2}};
    for (size_t i = 0; i < pulls.size(); ++i) {
        const auto [session, set] = order[i];
        EXPECT_EQ(pulls[i].session, 10 + session);
        EXPECT_EQ(pulls[i].set, set);
        const double without = lastLnMax([=, s = session, n = set](const TrailStep &step) {
            return step.session != s || step.set != n;
        });
        EXPECT_NEAR(pulls[i].lnPull, all - without, 1e-12) << i;
    }
    EXPECT_EQ(pulls[0].surprise, 0.4);
    EXPECT_EQ(pulls[1].surprise, -0.9) << "the greater one of two";
    EXPECT_EQ(pulls[2].surprise, 1.5);
    EXPECT_EQ(pulls[3].surprise, -0.3);
}

TEST(PullTrail, ASessionThatIsReadOnceMoreIsToldOnce)
{
    PullTrail trail;
    Gradient gradient;
    gradient.add(level, 1.0);
    const Eigen::VectorXd cross = Eigen::VectorXd::Ones(firstOwnSlot);
    trail.startSession(3);
    trail.addUpdate(0, gradient, cross, {1.0, 0.1});
    trail.addUpdate(1, gradient, cross, {1.0, 0.1});
    trail.dropSession();
    trail.addUpdate(0, gradient, cross, {0.5, 0.1});
    const auto pulls = trail.pulls(firstOwnSlot);
    ASSERT_EQ(pulls.size(), 1u);
    EXPECT_EQ(pulls[0].session, 3);
    EXPECT_DOUBLE_EQ(pulls[0].lnPull, 2.0 * 0.5) << "level and layoff";
}

TEST(PullTrail, HoldsNinetySixMarks)
{
    const auto told = [](int updates) {
        PullTrail trail;
        Gradient gradient;
        gradient.add(level, 1.0);
        trail.startSession(0);
        for (int set = 0; set < updates; ++set)
            trail.addUpdate(set, gradient, Eigen::VectorXd::Zero(firstOwnSlot), {});
        return trail.pulls(firstOwnSlot).size();
    };
    EXPECT_EQ(told(95), 95u);
    EXPECT_EQ(told(96), 0u) << "its session's mark is gone";
}

TEST(PullTrail, GoesEightWeeksBack)
{
    LifterLog log;
    for (int week = 0; week < 20; ++week)
        log.sessions.push_back({7 * week + 4, {rated(87, 3, 8)}});
    const LifterFit fit = fitLifter(log, publishedPriors(kVariations), 0);
    const auto pulls = fit.trail.pulls(fit.filter.belief().size());
    ASSERT_FALSE(pulls.empty());
    EXPECT_EQ(pulls.front().session, 20 - 8);
    EXPECT_EQ(pulls.back().session, 19);
}
