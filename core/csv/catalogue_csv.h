#pragma once

#include "core/csv/problem.h"
#include "core/domain/variation.h"

#include <QIODevice>
#include <vector>

namespace core {

/// Reads a variation catalogue. The columns are the fields of Variation by name; see
/// resources/catalogue/variations.csv. Ids count from 1 in the order of the rows.
[[nodiscard]] std::vector<Variation> readCatalogueCsv(
    QIODevice &device, const QString &file, ProblemList &problems);

/// The catalogue that a new roster starts with, from resources.
[[nodiscard]] const std::vector<Variation> &builtInCatalogue();

} // namespace core
