#include "tests/simulators/random.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace simulators {

Random::Random(std::uint64_t seed)
    : m_engine(seed)
{
}

double Random::uniform()
{
    return double(m_engine() >> 11) * 0x1.0p-53;
}

double Random::uniform(double low, double high)
{
    return low + (high - low) * uniform();
}

double Random::normal(double mean, double sd)
{
    // Box and Muller (1958); the second value is dropped so that no state is carried.
    const double radius = std::sqrt(-2.0 * std::log1p(-uniform()));
    return mean + sd * radius * std::cos(2.0 * std::numbers::pi * uniform());
}

double Random::trait(double mean, double sd)
{
    return mean + sd * std::clamp(normal(), -2.0, 2.0);
}

double Random::heavyTailed(int degrees, double sd)
{
    double chiSquare = 0.0;
    for (int i = 0; i < degrees; ++i)
        chiSquare += std::pow(normal(), 2.0);
    const double t = normal() / std::sqrt(chiSquare / degrees);
    return sd * t * std::sqrt((degrees - 2.0) / degrees);
}

bool Random::chance(double probability)
{
    return uniform() < probability;
}

int Random::whole(int low, int high)
{
    return low + int(uniform() * (high - low + 1));
}

Random Random::fork()
{
    return Random(m_engine());
}

} // namespace simulators
