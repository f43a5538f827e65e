#pragma once

#include "core/loads/week_sheet.h"

namespace sample {

/// A week of `days` days with `cards` cards of `sets` sets each, in kg.
[[nodiscard]] core::WeekSheet sheet(int days, int cards, int sets);

} // namespace sample
