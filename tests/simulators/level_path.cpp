#include "tests/simulators/level_path.h"

#include <cmath>
#include <numbers>

namespace simulators {

namespace {
/// Share of a block's rise that the deload leaves.
constexpr double kLeftAfterBlock = 0.6;
} // namespace

LevelPath together(std::vector<LevelPath> parts)
{
    return [parts = std::move(parts)](double dose, Random &random) {
        double sum = 0.0;
        for (const LevelPath &part : parts)
            sum += part(dose, random);
        return sum;
    };
}

LevelPath impulseResponse(const ImpulseResponse &traits)
{
    const double keepFitness = std::exp(-1.0 / traits.fitnessDays);
    const double keepFatigue = std::exp(-1.0 / traits.fatigueDays);
    double fitness = 1.0; // in multiples of the balance
    double fatigue = 1.0;
    return [=](double dose, Random &) mutable {
        const double impulse = dose / traits.usualDose;
        fitness = keepFitness * fitness + (1.0 - keepFitness) * impulse;
        fatigue = keepFatigue * fatigue + (1.0 - keepFatigue) * impulse;
        return traits.fitnessGain * (fitness - 1.0) - traits.fatigueLoss * (fatigue - 1.0);
    };
}

LevelPath towardCeiling(double gain, double halfLifeWeeks)
{
    const double keep = std::pow(0.5, 1.0 / (7.0 * halfLifeWeeks));
    double left = 1.0;
    return [=](double, Random &) mutable {
        left *= keep;
        return gain * (1.0 - left);
    };
}

LevelPath blockWaves(int weeks, double height)
{
    const double keep = std::pow(0.5, 1.0 / 70.0);
    int day = 0;
    double base = 0.0;
    double rise = height;
    return [=](double, Random &random) mutable {
        const int length = 7 * weeks;
        const int lastWeek = length - 7;
        if (day == length) {
            base += kLeftAfterBlock * rise;
            day = 0;
        }
        if (day == 0)
            rise = random.normal(height, 0.5 * height);
        base *= keep;
        const double wave = day < lastWeek ? std::sin(0.5 * std::numbers::pi * day / lastWeek)
                                           : 1.0 - (1.0 - kLeftAfterBlock) * (day - lastWeek) / 7.0;
        ++day;
        return base + rise * wave;
    };
}

LevelPath wander(double sd, double days)
{
    const double keep = std::exp(-1.0 / days);
    double level = 0.0;
    return [=](double, Random &random) mutable {
        level = keep * level + std::sqrt(1.0 - keep * keep) * random.normal(0.0, sd);
        return level;
    };
}

LevelPath layoffLoss(double most, double backDays)
{
    const double keep = std::pow(0.5, 1.0 / 35.0);
    const double keepBack = std::pow(0.5, 1.0 / backDays);
    double lost = 0.0; // share of `most`
    int daysOff = 0;
    return [=](double dose, Random &) mutable {
        daysOff = dose > 0.0 ? 0 : daysOff + 1;
        if (daysOff > 10)
            lost = 1.0 - keep * (1.0 - lost);
        else
            lost *= keepBack;
        return -most * lost;
    };
}

} // namespace simulators
