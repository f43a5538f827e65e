#pragma once

#include "core/domain/variation.h"
#include "core/loads/resolve.h"

#include <optional>
#include <span>
#include <vector>

namespace core {

/// What a set asks for, in the file's values. A lead-rep set begins with `leadReps` reps in
/// `leadCode`; the rest is done in `code`.
struct SetInValues
{
    QString code; ///< of the variation
    int reps = 1; ///< in all, expected; the fewest of as many as possible
    QString leadCode = {};
    int leadReps = 0;
    bool isExact = true;      ///< false: a range of reps or as many as possible
    bool isOpenEnded = false; ///< as many as possible
    std::optional<double> loadKg = {};
    std::optional<double> rpe = {}; ///< expected, to the half
    QString effort = {};            ///< asked and expected in words, see effortWords()
    bool isMaximal = false;         ///< as of the line, and the two below
    QString withheld = {};          ///< the load above is the planned one
    std::optional<double> lighterKg = {};

    friend bool operator==(const SetInValues &, const SetInValues &) = default;
};

/// The sets of one line of a card of the variation, in order.
[[nodiscard]] std::vector<SetInValues> setsInValues(
    const ResolvedLine &line, const Variation &variation, std::span<const Variation> catalogue);

} // namespace core
