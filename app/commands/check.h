#pragma once

#include "app/commands/console.h"

#include <QString>

namespace app {

/// Says what a file is, a roster, a log or people, and everything that is wrong with it. Changes
/// nothing; a log is judged by the catalogue that comes with the program.
/// @return exit code; throws StorageError when the file cannot be read
[[nodiscard]] int check(const QString &path, Console &console);

} // namespace app
