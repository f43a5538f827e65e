#include "tests/simulators/coach.h"

#include "tests/simulators/bench_variations.h"

#include <cmath>

namespace simulators {

namespace {

/// Epley's line, the chart on many a wall: share of the max for reps to failure.
double chartShare(double reps)
{
    return 1.0 / (1.0 + (reps - 1.0) / 30.0);
}

double usualRatio(int variation)
{
    static const auto priors = benchVariations();
    return priors[size_t(variation)].ratio;
}

class ByRating final : public Coach
{
public:
    explicit ByRating(double beliefKg)
        : m_belief(beliefKg)
    {
    }

    double load(const Work &work) const override
    {
        return m_belief * usualRatio(work.variation) * chartShare(work.reps + work.rir);
    }

    void read(const Work &work, const strength::TrainingSet &set) override
    {
        if (set.missed) {
            m_belief *= 0.98;
            return;
        }
        if (!set.rpe)
            return;
        const double said =
            set.loadKg / usualRatio(work.variation) / chartShare(set.reps + 10.0 - *set.rpe);
        m_belief *= std::pow(said / m_belief, 0.2);
    }

    void passWeek() override {}

private:
    double m_belief;
};

class ByFormula final : public Coach
{
public:
    ByFormula(double assumedKg, double stepKg)
        : m_assumed(assumedKg)
        , m_step(stepKg)
    {
    }

    double load(const Work &work) const override
    {
        return m_assumed * usualRatio(work.variation) * chartShare(work.reps + work.rir);
    }

    void read(const Work &, const strength::TrainingSet &set) override
    {
        m_misses += set.missed ? 1 : 0;
    }

    void passWeek() override
    {
        if (m_misses >= 2)
            m_assumed *= 0.95;
        else if (++m_weeks % 3 == 0)
            m_assumed += m_step;
        m_misses = 0;
    }

private:
    double m_assumed;
    double m_step;
    int m_weeks = 0;
    int m_misses = 0;
};

} // namespace

std::unique_ptr<Coach> coachByRating(double beliefKg)
{
    return std::make_unique<ByRating>(beliefKg);
}

std::unique_ptr<Coach> coachByFormula(double assumedKg, double stepKg)
{
    return std::make_unique<ByFormula>(assumedKg, stepKg);
}

} // namespace simulators
