#pragma once

#include <QList>
#include <QString>

/// Arithmetic of a chart's time axis. Time counts in days since 1970-01-01, so that a day is 1.
namespace ui {

/// What an axis shows.
struct TimeSpan
{
    double from = 0.0;
    double to = 1.0; ///< > from

    [[nodiscard]] double days() const { return to - from; }
    [[nodiscard]] bool contains(double day) const { return day >= from && day <= to; }
    friend bool operator==(const TimeSpan &, const TimeSpan &) = default;
};

/// The closest that a chart zooms in.
inline constexpr double kShortestSpan = 14.0;

/// `span` moved, and shortened where it must be, to lie within `bounds`; never shorter than
/// kShortestSpan or `bounds`, whichever is less.
[[nodiscard]] TimeSpan clamped(TimeSpan span, const TimeSpan &bounds);

/// The span `factor` times as long, with the day `anchor` staying where it is on the screen.
[[nodiscard]] TimeSpan zoomed(
    const TimeSpan &span, double factor, double anchor, const TimeSpan &bounds);

/// The span moved by `days`.
[[nodiscard]] TimeSpan panned(const TimeSpan &span, double days, const TimeSpan &bounds);

/// The last `days` of the bounds; all of them where they are shorter.
[[nodiscard]] TimeSpan lastDays(double days, const TimeSpan &bounds);

struct TimeTick
{
    double day = 0.0;
    QString label; ///< in the user's locale; no two alike
    friend bool operator==(const TimeTick &, const TimeTick &) = default;
};

/// Ticks on days that people think in: Mondays, first days of months, of years; at most
/// `mostTicks` >= 1, in order.
[[nodiscard]] QList<TimeTick> timeTicks(const TimeSpan &span, int mostTicks);

} // namespace ui
