#pragma once

#include "core/log/given_score.h"
#include "core/log/outcome.h"

#include <QString>

/// What was done of the plan, and how far the chances that were given held, in words.
namespace ui {

/// "Of the sets planned in the last 4 weeks 42 of 48 were done (88 %), 3 more beside the plan."
/// Empty where nothing was planned or done.
[[nodiscard]] QString adherenceWords(const core::Adherence &done, int weeks);

/// The score of one lifter beside that of the roster, a line for each tenth that has sets:
/// "Given with 70-80 %: 14 of 18 made; all lifters 203 of 270". Empty where no tenth has enough.
[[nodiscard]] QString scoreWords(const core::GivenScore &lifter, const core::GivenScore &roster);

} // namespace ui
