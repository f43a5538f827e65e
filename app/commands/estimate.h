#pragma once

#include "app/commands/console.h"

#include <QString>

namespace app {

struct EstimateOptions
{
    QString log;    ///< "-" = standard input
    QString people; ///< may be empty
    QString out;    ///< "-" = standard output
};

/// Estimated maxima of a log by the catalogue that comes with the program.
/// @return exit code; throws StorageError
[[nodiscard]] int estimate(const EstimateOptions &options, Console &console);

} // namespace app
