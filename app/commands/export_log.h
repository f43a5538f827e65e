#pragma once

#include "app/commands/console.h"

#include <QString>

namespace app {

struct ExportOptions
{
    QString roster;
    QString log; ///< training log CSV to write, - for standard output
};

/// Writes the training log of a roster as CSV, see core/exchange/log_csv.h.
/// @return exit code; throws StorageError
[[nodiscard]] int exportLog(const ExportOptions &options, Console &console);

} // namespace app
