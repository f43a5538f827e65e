#pragma once

#include "core/csv/csv_table.h"

namespace core {

/// The form in which names are compared: composed (Unicode NFC), single spaces.
[[nodiscard]] QString comparableName(const QString &name);

/// The lifter's name in the table's present row, comparable. Signs that cannot be seen become a
/// problem, since they would make a second lifter of the same looks.
[[nodiscard]] QString readName(CsvTable &table, size_t column);

} // namespace core
