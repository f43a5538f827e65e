#pragma once

#include "core/domain/variation.h"
#include "core/loads/lift_estimate.h"

#include <QDate>
#include <vector>

/// A made-up bench season whose numbers are plain to check: the estimate rises by `risePerWeek` kg
/// from `startKg`, and each week holds one session of six sets, one of each kind of reading.
namespace sample {

inline constexpr core::VariationId kCompetition{1};
inline constexpr core::VariationId kOffChest{2};
inline constexpr core::VariationId kSink{3};
inline constexpr core::VariationId kFeetUp{4};

[[nodiscard]] std::vector<core::Variation> catalogue();

struct Season
{
    core::LiftEstimate lift;
    std::vector<core::LoggedSession> sessions;
};

/// @param lastSunday  the day that ends the last week
[[nodiscard]] Season season(QDate lastSunday, int weeks, double startKg, double risePerWeek);

} // namespace sample
