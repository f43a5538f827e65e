#pragma once

#include "app/commands/console.h"
#include "ui/print/paper.h"

#include <QDate>
#include <QString>

namespace app {

struct PrintOptions
{
    QString roster;
    QString lifter; ///< name; empty = everyone who has something planned
    QDate day;      ///< any day of the week
    ui::PaperSize paper = ui::PaperSize::a4;
    QString folder; ///< is made where it is not there
};

/// Writes the plan of a week as one PDF a lifter. Takes a QGuiApplication.
/// @return exit code; throws StorageError
[[nodiscard]] int print(const PrintOptions &options, Console &console);

} // namespace app
