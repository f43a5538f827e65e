#pragma once

#include "app/commands/console.h"

#include <QString>

namespace app {

struct ImportOptions
{
    QString roster;
    QString log; ///< this or people, or both
    QString people;
    bool create = false; ///< make the roster, which must not be there yet
    bool dryRun = false; ///< tell what would happen, change nothing
};

/// Imports a log and people into a roster, all or nothing.
/// @return exit code; throws StorageError
[[nodiscard]] int import(const ImportOptions &options, Console &console);

} // namespace app
