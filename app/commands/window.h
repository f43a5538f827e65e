#pragma once

#include "app/commands/console.h"

#include <QString>

namespace app {

/// Opens the window, on a roster unless `path` is empty, and returns when it is closed. Takes a
/// QApplication.
[[nodiscard]] int window(const QString &path, Console &console);

} // namespace app
