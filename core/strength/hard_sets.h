#pragma once

namespace strength {

/// Hard sets in a session once a set with `reserve` reps left has followed `before` of them; they
/// lower what the next set can do. A set counts 1 up to two reps left, then ever less: a
/// third of that at five reps left. A twelfth hard set is the last that costs anything.
/// Common practice, no source.
/// @param before   >= 0, fractions included; 0 at the start of a session
/// @param reserve  reps left in the set just done, as the model has it and not as it was said; 0 or
///                 less where it was missed
[[nodiscard]] double hardSetsAfter(double before, double reserve);

} // namespace strength
