#include "tests/simulators/typos.h"

namespace simulators {

void mistype(strength::TrainingSet &set, Random &random)
{
    switch (random.whole(0, 3)) {
    case 0:
        set.loadKg /= 0.45359237;
        break;
    case 1:
        set.loadKg *= 10.0;
        break;
    case 2:
        set.loadKg /= 10.0;
        break;
    default:
        set.reps += random.whole(2, 5);
        break;
    }
}

} // namespace simulators
