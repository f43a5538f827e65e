#pragma once

#include "core/exchange/import_basis.h"

namespace core {

/// What an import would bring that is far above what the roster's own log speaks for, a line a set
/// with lifter and day, the first kMostFarLoads of them: slips of the keys more often than records.
/// Of lifters who are new to the roster nothing can be said. See core/loads/far_above_max.h.
/// @param before  sessions that are changed, as they were
/// @param after   sessions as the import leaves them
[[nodiscard]] QStringList farLoads(std::span<const LoggedSession> before,
    std::span<const LoggedSession> after, const RosterRows &roster);

inline constexpr int kMostFarLoads = 20;

} // namespace core
