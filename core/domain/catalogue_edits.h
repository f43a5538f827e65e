#pragma once

#include "core/domain/edit.h"

#include <QMap>
#include <vector>

/// What a coach does to the variation catalogue, as values.
namespace core {

/// Fields of a variation that can be typed wrong.
enum class VariationField { name, code, reps, other };
using VariationProblems = QMap<VariationField, QString>;

/// What is wrong, by field. Names and codes must be unique in `all`, which holds `variation`
/// itself.
[[nodiscard]] VariationProblems variationProblems(
    const Variation &variation, const std::vector<Variation> &all);

/// A code for files made from the name: "Board press, 5 cm" -> "board_press_5_cm"; with a number
/// behind it where that is taken.
[[nodiscard]] QString codeFromName(const QString &name, const QStringList &taken);

/// From the catalogue as it is to the catalogue as it shall be: changed and new rows only. None is
/// ever removed, since logs speak of them; off the shelf is `retired`.
[[nodiscard]] Edit changeCatalogue(
    const std::vector<Variation> &before, const std::vector<Variation> &after);

} // namespace core
