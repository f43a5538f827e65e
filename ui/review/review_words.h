#pragma once

#include "core/domain/lifter.h"
#include "ui/review/strength_series.h"
#include "ui/review/work_series.h"

#include <QString>

/// What the review says in words.
namespace ui {

[[nodiscard]] QString words(ReadingKind kind, core::Lift lift);
[[nodiscard]] QString words(Knowledge knowledge);
/// A sentence that tells the two kinds of knowledge apart.
[[nodiscard]] QString explanation(Knowledge knowledge);

/// Values of one point for the box beside it, line by line.
[[nodiscard]] QString valueWords(const WeekPoint &week, Knowledge knowledge, core::Unit unit);
[[nodiscard]] QString valueWords(const ReadingPoint &reading, const core::LoggedSession &session,
    const core::Variation &variation, core::Unit unit);
[[nodiscard]] QString valueWords(const core::WeekLoad &week, core::Unit unit);

/// "3 x 120 kg @8", "1 x 140 kg, second rep missed", as a set was done.
[[nodiscard]] QString doneWords(const core::SetEntry &set, core::Unit unit);

/// The estimate of the last week and the change over the weeks within the span, as a paragraph.
/// Empty without weeks.
[[nodiscard]] QString trendWords(
    const std::vector<WeekPoint> &weeks, double fromDay, double toDay, core::Unit unit);

/// Why a page has nothing to show and what to do about it.
[[nodiscard]] QString noSetsWords(core::Lift lift);

/// "t" or "1000 lb".
[[nodiscard]] QString tonnageUnit(core::Unit unit);

} // namespace ui
