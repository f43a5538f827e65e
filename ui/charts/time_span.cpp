#include "ui/charts/time_span.h"

#include "core/domain/language.h"

#include <QDate>
#include <algorithm>
#include <cmath>

namespace ui {

namespace {

const QDate kEpoch(1970, 1, 1);

/// A distance between ticks: so many weeks, or so many months.
struct Step
{
    int weeks = 0;
    int months = 0;
};

constexpr Step kSteps[] = {
    {1, 0}, {2, 0}, {4, 0}, {0, 1}, {0, 2}, {0, 3}, {0, 6}, {0, 12}, {0, 24}, {0, 60}, {0, 120}};

/// The first tick of the step at or after `from`. Ticks lie on the same days whatever the span
/// begins with, so that they stand still while it is moved.
QDate firstTick(QDate from, const Step &step)
{
    if (step.weeks > 0) {
        const QDate monday(1970, 1, 5);
        const qint64 stride = 7 * step.weeks;
        const qint64 past = monday.daysTo(from);
        const qint64 strides = past >= 0 ? (past + stride - 1) / stride : -((-past) / stride);
        return monday.addDays(strides * stride);
    }
    const int month = from.year() * 12 + from.month() - 1;
    int tick = month - month % step.months;
    QDate date(tick / 12, tick % 12 + 1, 1);
    if (date < from)
        date = date.addMonths(step.months);
    return date;
}

QDate nextTick(QDate tick, const Step &step)
{
    return step.weeks > 0 ? tick.addDays(7 * step.weeks) : tick.addMonths(step.months);
}

QString labelOf(QDate tick, const Step &step, bool severalYears)
{
    if (step.months >= 12)
        return core::dateWords(tick, QStringLiteral("yyyy"));
    if (step.months > 0)
        return core::dateWords(tick, QStringLiteral("MMM yyyy"));
    return core::dateWords(
        tick, severalYears ? QStringLiteral("d MMM yyyy") : QStringLiteral("d MMM"));
}

QList<TimeTick> ticksOf(const TimeSpan &span, const Step &step, int mostTicks)
{
    QList<TimeTick> ticks;
    const QDate from = kEpoch.addDays(qint64(std::ceil(span.from)));
    const QDate to = kEpoch.addDays(qint64(std::floor(span.to)));
    for (QDate tick = firstTick(from, step); tick <= to; tick = nextTick(tick, step)) {
        if (ticks.size() > mostTicks)
            break;
        ticks.append({double(kEpoch.daysTo(tick)), labelOf(tick, step, from.year() != to.year())});
    }
    return ticks;
}

} // namespace

TimeSpan clamped(TimeSpan span, const TimeSpan &bounds)
{
    const double shortest = std::min(kShortestSpan, bounds.days());
    if (span.days() < shortest) {
        const double middle = (span.from + span.to) / 2.0;
        span = {middle - shortest / 2.0, middle + shortest / 2.0};
    }
    if (span.days() >= bounds.days())
        return bounds;
    if (span.from < bounds.from)
        return {bounds.from, bounds.from + span.days()};
    if (span.to > bounds.to)
        return {bounds.to - span.days(), bounds.to};
    return span;
}

TimeSpan zoomed(const TimeSpan &span, double factor, double anchor, const TimeSpan &bounds)
{
    const double shortest = std::min(kShortestSpan, bounds.days());
    const double days = std::max(span.days() * factor, shortest);
    const double share = (anchor - span.from) / span.days();
    const double from = anchor - share * days;
    return clamped({from, from + days}, bounds);
}

TimeSpan panned(const TimeSpan &span, double days, const TimeSpan &bounds)
{
    return clamped({span.from + days, span.to + days}, bounds);
}

TimeSpan lastDays(double days, const TimeSpan &bounds)
{
    return clamped({bounds.to - days, bounds.to}, bounds);
}

QList<TimeTick> timeTicks(const TimeSpan &span, int mostTicks)
{
    for (const Step &step : kSteps)
        if (QList<TimeTick> ticks = ticksOf(span, step, mostTicks); ticks.size() <= mostTicks)
            return ticks;
    return {};
}

} // namespace ui
