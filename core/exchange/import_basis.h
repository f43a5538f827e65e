#pragma once

#include "core/domain/watch.h"
#include "core/exchange/log_csv.h"

namespace core {

class RosterReader;

/// What the roster holds before an import.
struct RosterRows
{
    std::vector<Lifter> lifters;
    std::vector<Variation> variations;
    std::vector<LoggedSession> sessions;
};

/// What the roster holds, of sessions only those of the lifters whom the log names. Throws
/// StorageError.
[[nodiscard]] RosterRows rowsFor(
    const LogTable &log, const RosterReader &roster, const Watch &watch = {});

} // namespace core
