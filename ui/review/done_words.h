#pragma once

#include "core/log/given_score.h"
#include "core/log/outcome.h"

#include <QString>

/// What was done of the plan, and how far the chances that were given held, in words.
namespace ui {

/// "Sets done in the last 4 weeks that are over: 42 of 48 planned (88 %). Beside the plan: 3."
/// @param done  of late
[[nodiscard]] QString adherenceWords(const core::Adherence &done);

/// The score of one lifter beside that of the roster, a line for each tenth that has enough sets:
/// "70-80 %: made 14 of 18; all lifters 75 % of 270". Where none has, it says so.
[[nodiscard]] QString scoreWords(const core::GivenScore &lifter, const core::GivenScore &roster);

} // namespace ui
