#pragma once

#include <QDateTime>
#include <optional>

namespace app {

/// When a command answers, given from outside: no command reads the clock.
struct Moment
{
    QDateTime clock;           ///< what the computer says
    std::optional<QDate> asOf; ///< the day to answer as of in its place: what is later is not seen

    [[nodiscard]] QDate today() const { return asOf.value_or(clock.date()); }
    /// Its start where a day was asked for, so that the same question gets the same answer.
    [[nodiscard]] QDateTime now() const { return asOf ? asOf->startOfDay() : clock; }
};

} // namespace app
