#pragma once

#include "app/commands/console.h"

#include <QStringList>

namespace app {

struct ReturnOptions
{
    QString roster;
    QStringList sheets;
    bool dryRun = false;  ///< tell what would happen, change nothing
    bool oddOnes = false; ///< also those that are for the coach to judge, such as of an old plan
};

/// Reads return sheets into a roster, all that are accepted as one action. A sheet that cannot be
/// used does not hold up the others.
/// @return exit code: exitProblems where a sheet was left out; throws StorageError
[[nodiscard]] int returnSheets(const ReturnOptions &options, Console &console);

} // namespace app
