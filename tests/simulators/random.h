#pragma once

#include <cstdint>
#include <random>

namespace simulators {

/// Random numbers that are the same on every machine and standard library: the engine is
/// std::mt19937_64, which the standard pins down, and the distributions, which it does not, are
/// ours.
class Random
{
public:
    explicit Random(std::uint64_t seed);

    /// In [0, 1).
    double uniform();
    double uniform(double low, double high);
    double normal(double mean = 0.0, double sd = 1.0);
    /// Normal, but never further than two SD from the mean: for traits whose tails would be absurd.
    double trait(double mean, double sd);
    /// Student's t of `degrees` >= 3, scaled to one SD: heavy tails at a known spread.
    double heavyTailed(int degrees, double sd);
    [[nodiscard]] bool chance(double probability);
    /// A whole number in low..high, both included.
    int whole(int low, int high);
    /// A generator of its own, so that one more draw here shifts nothing there.
    Random fork();

private:
    std::mt19937_64 m_engine;
};

} // namespace simulators
