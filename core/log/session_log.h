#pragma once

#include "core/domain/edit.h"

#include <functional>
#include <span>
#include <vector>

/// What a coach does to the log of one lifter on one day, as edits. `sessions` are those of the
/// lifter and the day by their number; a place counts their sets through, from 0.
namespace core {

/// All sets of the day in the order done.
[[nodiscard]] std::vector<SetEntry> setsOf(std::span<const LoggedSession> sessions);

/// Puts the set at `place` (at most the number of sets): into the session of the set before it, or
/// into a new one where the day has none.
[[nodiscard]] Edit addSet(std::span<const LoggedSession> sessions, LifterId lifter, QDate day,
    const SetEntry &set, size_t place, const std::function<SessionId()> &newId);

/// Empty where nothing changes.
/// @throws std::out_of_range for a place without a set, here and below
[[nodiscard]] Edit changeSet(
    std::span<const LoggedSession> sessions, const SetEntry &set, size_t place);

/// A session without sets goes too, unless its readiness was said.
[[nodiscard]] Edit removeSet(std::span<const LoggedSession> sessions, size_t place);

/// What is said of a day takes the place of what was said before. Without any answer left the
/// check-in goes.
/// @param before  of the same lifter and day; null where there was none
[[nodiscard]] Edit sayCheckIn(
    const CheckIn *before, CheckIn now, const std::function<CheckInId()> &newId);

} // namespace core
