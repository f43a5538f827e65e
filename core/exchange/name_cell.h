#pragma once

#include "core/csv/csv_table.h"

namespace core {

/// The lifter's name in the table's present row, in the form in which names are compared: composed
/// (Unicode NFC), single spaces. Signs that cannot be seen become a problem, since they would make
/// a second lifter of the same looks.
[[nodiscard]] QString readName(CsvTable &table, size_t column);

} // namespace core
