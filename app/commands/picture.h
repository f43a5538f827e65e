#pragma once

#include "app/commands/console.h"

#include <QSize>
#include <QString>

namespace app {

struct PictureOptions
{
    QString roster;
    QString out;
    QString lifter; ///< name; empty = the first of the list
    int page = 1;   ///< which page of the window, from 1
    QSize size{1366, 768};
    bool dark = false;
};

/// Saves the window on a roster as a PNG, without a display.
/// @return exit code; throws StorageError
[[nodiscard]] int picture(const PictureOptions &options, Console &console);

} // namespace app
