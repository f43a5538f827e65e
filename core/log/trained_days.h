#pragma once

#include "core/domain/session.h"
#include "core/loads/resolved_cards.h"

#include <map>
#include <span>
#include <vector>

namespace core {

/// What one day holds: its plan, and what was done of it and besides, in order.
struct TrainedDay
{
    std::vector<ResolvedCard> cards;
    std::vector<SetEntry> done;
};

/// The days of one lifter from the first to the last, both included, that have either.
/// @param cards     by day and position
/// @param sessions  by day and number
[[nodiscard]] std::map<QDate, TrainedDay> trainedDays(std::span<const ResolvedCard> cards,
    std::span<const LoggedSession> sessions, QDate from, QDate to);

} // namespace core
