#include "tests/simulators/bench_variations.h"

namespace simulators {

std::vector<strength::VariationPrior> benchVariations()
{
    return {
        {1.00, 0.000, 1.00}, // competition, paused
        {1.02, 0.020, 0.95}, // touch and go
        {1.00, 0.025, 1.10}, // off-chest pause, two counts
        {0.92, 0.040, 1.20}, // 4-2-0 tempo
        {0.95, 0.030, 1.00}, // feet up
        {0.96, 0.030, 1.10}, // long pause, three counts
        {0.95, 0.035, 1.00}, // close grip
        {0.93, 0.040, 1.05}, // dead stop from pins
        {0.81, 0.050, 1.00}, // incline
    };
}

std::vector<VariationTruth> drawVariations(Random &random)
{
    std::vector<VariationTruth> truths;
    for (const strength::VariationPrior &prior : benchVariations())
        truths.push_back(
            {random.trait(prior.ratio, prior.spread), prior.repCost * random.trait(1.0, 0.08)});
    truths[competition] = {1.0, 1.0};
    return truths;
}

} // namespace simulators
