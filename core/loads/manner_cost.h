#pragma once

#include "core/domain/variation.h"
#include "core/notation/set_line.h"

/// What a planned tempo or pause costs.
namespace core {

/// Factor on the max of the variation when it is done in `manner` instead of its own way: below 1
/// for slower, above 1 for quicker. Counts above those of the variation cost 3 % each in lowering
/// beyond two counts, 2 % each in the pause and 3 % each in lifting; counts below give the same
/// back. Common practice, no source: the steps are those between the catalogue's own ratios
/// (competition with one count of pause 1.00, long pause with three 0.96, 4-2-0 tempo 0.92). Wilk
/// et al. (2020), J Hum Kinet 72:151-159, found no difference between free and two-count lowering,
/// and less from slower ones (from memory).
[[nodiscard]] double mannerFactor(const Variation &variation, const Manner &manner);

} // namespace core
