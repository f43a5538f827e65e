#pragma once

#include "app/commands/console.h"

#include <QString>

namespace app {

struct ScoreOptions
{
    QString log;    ///< "-" = standard input
    QString people; ///< may be empty
};

/// How well the sets of each week could be forecast from the weeks before it: the reps in reserve
/// that were said, and the misses. Needs no known max, so it works on any log.
/// @return exit code; throws StorageError
[[nodiscard]] int score(const ScoreOptions &options, Console &console);

} // namespace app
