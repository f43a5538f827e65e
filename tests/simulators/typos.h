#pragma once

#include "core/strength/training_log.h"
#include "tests/simulators/random.h"

namespace simulators {

/// Spoils one set as a tired hand does: the load in pounds, a digit too many or too few, or the
/// reps of the set beside it.
void mistype(strength::TrainingSet &set, Random &random);

} // namespace simulators
