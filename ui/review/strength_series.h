#pragma once

#include "core/domain/units.h"
#include "core/domain/variation.h"
#include "core/loads/lift_estimate.h"

#include <span>
#include <vector>

/// What the strength chart shows, as values in the lifter's unit.
namespace ui {

/// From where a week's estimate looks.
enum class Knowledge {
    now, ///< smoothed: with everything logged since
    then ///< filtered: with what was logged up to that week; loads were chosen from it
};

struct WeekPoint
{
    double day = 0.0; ///< the Sunday that ends the week, days since 1970-01-01
    double value = 0.0;
    double low90 = 0.0;
    double high90 = 0.0;
    int sets = 0; ///< sets of that week behind it

    friend bool operator==(const WeekPoint &, const WeekPoint &) = default;
};

/// What a set is drawn as.
enum class ReadingKind {
    competition, ///< rated, the competition lift
    soft,        ///< rated, a variation for a soft touch
    sinking,     ///< rated, a variation for a sinking touch
    both,        ///< rated, any other variation
    unrated,     ///< completed without a rating: at least this
    missed       ///< the next rep failed: at most this
};
inline constexpr int kReadingKinds = 6;

/// The competition max that one set speaks for.
struct ReadingPoint
{
    double day = 0.0;
    double value = 0.0;
    ReadingKind kind = ReadingKind::competition;
    int session = 0; ///< index into LiftEstimate::readings
    int set = 0;     ///< index into the session's sets

    friend bool operator==(const ReadingPoint &, const ReadingPoint &) = default;
};

struct StrengthSeries
{
    std::vector<WeekPoint> weeks;       ///< by day
    std::vector<ReadingPoint> readings; ///< by day
};

/// Series of one lift of one lifter. Sets of variations that `variations` lacks are left out.
[[nodiscard]] StrengthSeries strengthSeries(const core::LiftEstimate &lift,
    std::span<const core::Variation> variations, Knowledge knowledge, core::Unit unit);

} // namespace ui
