#include "tests/simulators/touch_truth.h"

#include "tests/simulators/random.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace simulators {

namespace {

constexpr std::array<TouchTruth, 4> kTouchTruths{{
    {"odds", "proportional odds, sets independent", 0, 0.0, 0.25, 0.0, 0.0, 0.0},
    {"days", "proportional odds, sets of a day alike, estimates off by 1.5 %", 0, 0.0, 0.25, 0.02,
        0.0, 0.015},
    {"lapses", "normal noise, 4 % blind scores, steps of each lifter's own", 1, 0.04, 0.5, 0.015,
        0.0, 0.015},
    {"drift", "normal noise, sets of a day alike, a hold that wanders", 1, 0.02, 0.4, 0.015, 0.003,
        0.015},
}};

double normalBelow(double z)
{
    return 0.5 * std::erfc(-z / std::numbers::sqrt2);
}

/// One lifter's touch: where each step is passed, as shares of the max, and how much it scatters.
struct Touch
{
    std::array<double, 4> steps{};
    double scale = 0.02; ///< of the noise, share of the max

    [[nodiscard]] double chanceUpTo(const TouchTruth &truth, int wanted, double share) const
    {
        const double z = (steps[size_t(wanted - 1)] - share) / scale;
        // A day's touch and the error of the estimate are part of what spreads the scores; both
        // are symmetric, so that the half-way point stays where it is.
        const double sound = truth.link < 0.5 ? 1.0 / (1.0 + std::exp(-z)) : normalBelow(z);
        return (1.0 - truth.lapses) * sound + truth.lapses * wanted / 5.0;
    }

    [[nodiscard]] double hold(const TouchTruth &truth, int wanted) const
    {
        double low = 0.2, high = 2.0;
        for (int i = 0; i < 60; ++i) {
            const double middle = 0.5 * (low + high);
            (chanceUpTo(truth, wanted, middle) > 0.5 ? low : high) = middle;
        }
        return low;
    }

    [[nodiscard]] int score(const TouchTruth &truth, double share, Random &random) const
    {
        if (random.chance(truth.lapses))
            return random.whole(1, 5);
        double noise = random.normal();
        if (truth.link < 0.5) {
            const double u = std::clamp(random.uniform(), 1e-12, 1.0 - 1e-12);
            noise = std::log(u / (1.0 - u));
        }
        const double seen = share + scale * noise;
        return 1
            + int(std::count_if(steps.begin(), steps.end(), [seen](double s) { return s < seen; }));
    }
};

} // namespace

std::span<const TouchTruth> touchTruths()
{
    return kTouchTruths;
}

std::vector<TouchLifter> simulateTouch(const TouchTruth &truth, std::uint64_t seed, int lifters)
{
    Random luck(seed);
    std::vector<TouchLifter> all;
    for (int i = 0; i < lifters; ++i) {
        Random random = luck.fork();
        Touch touch;
        touch.scale = random.uniform(0.015, 0.04);
        touch.steps[0] = random.trait(0.78, 0.05);
        for (size_t k = 1; k < touch.steps.size(); ++k)
            touch.steps[k] =
                touch.steps[k - 1] + 0.045 * std::exp(random.trait(0.0, truth.gapSpread));
        const int weeks = random.whole(10, 50);
        const int setsADay = random.whole(2, 5);
        TouchLifter lifter;
        for (int week = 0; week < weeks; ++week) {
            const double step = truth.driftSd * random.normal();
            for (double &passed : touch.steps)
                passed += step;
            const double wave = 0.78 + 0.03 * (week % 5); // loads rise along a block
            for (const int weekday : {0, 4}) {
                const double dayTouch = truth.sessionSd * random.normal();
                const double off = truth.formSd * random.normal();
                for (int set = 0; set < setsADay; ++set) {
                    strength::TouchReading reading;
                    reading.day = 7 * week + weekday;
                    reading.session = 2 * week + weekday / 4;
                    reading.share = wave + random.uniform(-0.04, 0.06);
                    reading.score = touch.score(truth, reading.share + off - dayTouch, random);
                    lifter.readings.push_back(reading);
                }
            }
        }
        lifter.lastDay = lifter.readings.back().day;
        for (int wanted = 1; wanted <= 4; ++wanted)
            lifter.hold.push_back(touch.hold(truth, wanted));
        all.push_back(std::move(lifter));
    }
    return all;
}

} // namespace simulators
