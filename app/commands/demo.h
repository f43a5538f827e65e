#pragma once

#include "app/commands/console.h"

#include <QString>

namespace app {

struct DemoOptions
{
    QString folder;
    bool force = false; ///< replace what an earlier run made
};

/// Writes the demo roster and its log and people as CSV: demo.benchwright, log.csv, people.csv.
/// @return exit code; throws StorageError
[[nodiscard]] int demo(const DemoOptions &options, Console &console);

} // namespace app
