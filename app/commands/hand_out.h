#pragma once

#include "app/commands/console.h"
#include "ui/print/hand_out_batch.h"

#include <QString>

namespace app {

struct HandOutOptions
{
    QString roster;
    QString lifter; ///< name; empty = everyone who has something planned
    QDate day;      ///< any day of the week
    ui::HandOutKinds kinds;
    ui::PaperSize paper = ui::PaperSize::a4;
    QString folder; ///< is made where it is not there
};

/// Writes what the lifters get for a week. Takes a QGuiApplication.
/// @return exit code; throws StorageError
[[nodiscard]] int handOut(const HandOutOptions &options, Console &console);

} // namespace app
