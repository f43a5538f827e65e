#pragma once

#include "core/csv/csv_table.h"
#include "core/domain/session.h"

namespace core {

/// Where the fields of a set are in a table, by the number of their column.
struct SetCells
{
    size_t loadKg;
    size_t repsPlanned;
    size_t repsDone;
    size_t rpe;
    size_t failed;
    size_t touch;
    size_t note;
    std::optional<size_t> velocityMs = {};
};

/// The set of the table's present row, without its variation. What cannot be read or is out of
/// bounds becomes a problem at the field that is to blame.
[[nodiscard]] SetEntry readSet(
    CsvTable &table, const SetCells &cells, const ProblemList &problemsOfTable);

} // namespace core
