#pragma once

#include "core/domain/lifter.h"
#include "core/loads/week_sheet.h"

#include <QByteArray>
#include <QDateTime>

namespace core {

/// The planned sessions of a week as iCalendar (RFC 5545), one all-day event a day, for the
/// lifter's own calendar. A day keeps its UID from export to export, so that a calendar that takes
/// the file again replaces the event and does not double it. The same input gives the same bytes.
/// @param stamp  when the plan was written out, for DTSTAMP
/// @throws std::runtime_error when libical refuses the calendar
[[nodiscard]] QByteArray writeCalendar(
    const Lifter &lifter, const WeekSheet &sheet, const QDateTime &stamp);

} // namespace core
