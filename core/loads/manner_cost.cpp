#include "core/loads/manner_cost.h"

#include <algorithm>

namespace core {

namespace {

constexpr double kPerLoweringCount = 0.03;
constexpr double kPerPauseCount = 0.02;
constexpr double kPerLiftingCount = 0.03;
constexpr int kFreeLowering = 2; ///< up to so many counts lowering costs nothing
constexpr double kLeast = 0.5;   ///< so that no tempo makes the load absurd

double cost(const Tempo &tempo)
{
    return kPerLoweringCount * std::max(tempo.lowering - kFreeLowering, 0)
        + kPerPauseCount * tempo.pause + kPerLiftingCount * tempo.lifting;
}

} // namespace

double mannerFactor(const Variation &variation, const Manner &manner)
{
    Tempo planned = variation.tempo;
    if (const auto *tempo = std::get_if<Tempo>(&manner))
        planned = *tempo;
    else if (const auto *pause = std::get_if<Pause>(&manner))
        planned.pause = pause->counts;
    return std::max(1.0 + cost(variation.tempo) - cost(planned), kLeast);
}

} // namespace core
