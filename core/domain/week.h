#pragma once

#include <QDate>

/// Weeks of the plan and of the log begin on Monday (ISO 8601).
namespace core {

inline constexpr int kWeekDays = 7;

/// Monday of the week.
[[nodiscard]] inline QDate mondayOf(QDate day)
{
    return day.addDays(1 - day.dayOfWeek());
}

} // namespace core
